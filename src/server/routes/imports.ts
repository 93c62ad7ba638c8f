import type { FastifyInstance } from "fastify"
import type { Context } from "../context.js"

/** Tables of other programs, read into the record as one step that can be taken back. */
export async function importsRoutes(_app: FastifyInstance, _context: Context): Promise<void> {}
