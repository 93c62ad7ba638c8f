import type { FastifyInstance } from "fastify"
import type { BottleOfLot } from "../../record/index.js"
import type { Context } from "../context.js"
import { api } from "../contract/api.js"
import { serveRoute } from "../route.js"

/** Who had a bottle of a lot, for a recall. */
export function lotsRoutes(app: FastifyInstance, { record }: Context): void {
  serveRoute(app, api.lot, {
    answer: async ({ params: { lot } }) => {
      const found = new Map<string, BottleOfLot[]>()
      for (const bottle of await record.bottlesOfLot(lot))
        found.set(bottle.child, [...(found.get(bottle.child) ?? []), bottle])
      const children = await Promise.all([...found.keys()].map((id) => record.child(id)))
      return {
        lot,
        children: children
          .filter((child) => child !== null)
          .toSorted((a, b) => a.name.localeCompare(b.name, "en"))
          .map(({ id, name, number }) => ({
            id,
            name,
            number,
            bottles: (found.get(id) ?? []).map(({ supply }) => ({
              dispensed: supply.dispensed ?? null,
              opened: supply.opened ?? null,
              beyondUse: supply.beyondUse ?? null,
              concentrationPercent: supply.concentrationPercent ?? null,
              pharmacy: supply.pharmacy ?? null,
            })),
          })),
      }
    },
  })
}
