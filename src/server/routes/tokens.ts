import type { FastifyInstance } from "fastify"
import type { Context } from "../context.js"

/** Keys of other programs, and where they are told of what is new. */
export async function tokensRoutes(_app: FastifyInstance, _context: Context): Promise<void> {}
