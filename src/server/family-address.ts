import type { FastifyRequest } from "fastify"
import type { Context } from "./context.js"

/** The address at which families reach this server: as its operator gave it, else as the practice itself reached it. */
export function familyAddress({ protocol, host }: FastifyRequest, { publicAddress }: Context): string {
  return publicAddress ?? `${protocol}://${host}`
}
