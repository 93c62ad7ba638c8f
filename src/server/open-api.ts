import fastifySwagger from "@fastify/swagger"
import type { FastifyInstance } from "fastify"
import { createJsonSchemaTransform, createJsonSchemaTransformObject } from "fastify-type-provider-zod"

/** Describes every route registered after it, as OpenAPI 3.1 at `/api/openapi.json`. */
export async function documentApi(app: FastifyInstance): Promise<void> {
  await app.register(fastifySwagger, {
    openapi: {
      openapi: "3.1.0",
      info: {
        title: "Lengthwise",
        description: "One practice's record and its children's courses.",
        version: "1",
      },
    },
    transform: createJsonSchemaTransform(TO_JSON_SCHEMA),
    transformObject: (document) => withoutInputs(componentsOf(document)),
  })
  app.get("/api/openapi.json", { config: { open: true }, schema: { hide: true } }, async () => app.swagger())
}

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

const componentsOf = createJsonSchemaTransformObject(TO_JSON_SCHEMA)
