import type { FastifyInstance } from "fastify"
import type { Context } from "../context.js"

/** Everything out: the archive of the practice, and the table for research. */
export async function leaveRoutes(_app: FastifyInstance, _context: Context): Promise<void> {}
