import fastifySwagger from "@fastify/swagger"
import type { FastifyInstance } from "fastify"
import { createJsonSchemaTransform } from "fastify-type-provider-zod"

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
    transform: createJsonSchemaTransform({
      zodToJsonConfig: {
        override: ({ jsonSchema }) => {
          // The pattern of a date is a page long and says no more than its format does.
          if (jsonSchema.format === "date" || jsonSchema.format === "date-time") delete jsonSchema.pattern
        },
      },
    }),
  })
  app.get("/api/openapi.json", { config: { open: true }, schema: { hide: true } }, async () => app.swagger())
}
