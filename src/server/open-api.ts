import fastifySwagger from "@fastify/swagger"
import type { FastifyInstance } from "fastify"
import { createJsonSchemaTransform, createJsonSchemaTransformObject } from "fastify-type-provider-zod"
import { z } from "zod"
import { describedLine, SECURITY_SCHEMES } from "./open-api/described.js"
import { withExamples } from "./open-api/with-examples.js"

/** Describes every route registered after it, as OpenAPI 3.1 at `/api/openapi.json`. */
export async function documentApi(app: FastifyInstance): Promise<void> {
  await app.register(fastifySwagger, {
    openapi: {
      openapi: "3.1.0",
      info: {
        title: "Lengthwise",
        description:
          "One practice's record and its children's courses. How to ask, with examples: docs/api.md. The engine advises licensed clinicians and decides nothing.",
        version: "1",
      },
      // Relative: it is served by whatever server it describes.
      servers: [{ url: "/" }],
      components: { securitySchemes: SECURITY_SCHEMES },
    },
    transform: (given) => {
      const transformed = toJsonSchema({ ...given, schema: withWordsOnly(given.schema) })
      const said = describedLine({ method: String(given.route.method), url: given.url })
      return said ? { ...transformed, schema: { ...transformed.schema, ...said } } : transformed
    },
    transformObject: (document) => withExamples(withoutInputs(componentsOf(document))),
  })
  app.get("/api/openapi.json", { config: { open: true }, schema: { hide: true } }, async () => app.swagger())
}

/** An answer that is said in words only, such as a file, has no schema that could be shown: it is bytes. */
function withWordsOnly<Schema>(schema: Schema): Schema {
  const { response } = (schema ?? {}) as { readonly response?: Readonly<Record<string, object>> }
  if (!response) return schema
  const shown = Object.entries(response).map(([status, answer]) => {
    const isWordsOnly = !(answer instanceof z.ZodType) && !("content" in answer)
    return [status, isWordsOnly ? { ...answer, content: BYTES } : answer]
  })
  return { ...schema, response: Object.fromEntries(shown) }
}

const BYTES = { "application/octet-stream": { schema: z.string().meta({ format: "binary" }) } }

/** Each named answer would be described once more as something that could be sent. */
function withoutInputs(document: ReturnType<typeof componentsOf>): ReturnType<typeof componentsOf> {
  const { components } = document as { readonly components?: { readonly schemas?: Record<string, unknown> } }
  const schemas = components?.schemas ?? {}
  for (const name of Object.keys(schemas)) if (name.endsWith("Input")) delete schemas[name]
  return document
}

const TO_JSON_SCHEMA: Parameters<typeof createJsonSchemaTransform>[0] = {
  zodToJsonConfig: {
    override: ({ jsonSchema }) => {
      // The pattern of a date or a UUID is a page long and says no more than its format does.
      if (jsonSchema.format) delete jsonSchema.pattern
    },
  },
}

const toJsonSchema = createJsonSchemaTransform(TO_JSON_SCHEMA)
const componentsOf = createJsonSchemaTransformObject(TO_JSON_SCHEMA)
