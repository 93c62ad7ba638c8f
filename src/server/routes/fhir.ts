import type { FastifyInstance } from "fastify"
import type { Context } from "../context.js"

/** The record as FHIR R4, to be read only. */
export async function fhirRoutes(_app: FastifyInstance, _context: Context): Promise<void> {}
