import type { FastifyInstance } from "fastify"
import type { Context } from "../context.js"

/** What instruments and files sent, waiting for a person, and files dropped on the page. */
export async function inboxRoutes(_app: FastifyInstance, _context: Context): Promise<void> {}
