import type { FastifyInstance } from "fastify"
import type { Context } from "../context.js"

/** The DICOM receiver: whether it listens, what it took and refused. */
export async function instrumentsRoutes(_app: FastifyInstance, _context: Context): Promise<void> {}
