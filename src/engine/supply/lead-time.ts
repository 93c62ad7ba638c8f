import type { Supply, Treatment } from "../course.js"
import type { Pharmacy } from "../practice-rules.js"
import type { Protocol } from "../protocol/protocol.js"
import { isOfStrength } from "./bottle-span.js"

/** Days from order to bottle, and whose figure that is. */
export interface LeadTime {
  readonly days: number
  readonly from: { readonly kind: "pharmacy"; readonly name: string } | { readonly kind: "protocol" }
}

/**
 * The pharmacy's own lead time: of the one that made the last bottle of this strength, else of the only one the
 * practice has; the protocol's where neither is known.
 */
export function leadTime({
  supplies,
  drops,
  pharmacies,
  protocol,
}: {
  readonly supplies: readonly Supply[]
  readonly drops: Pick<Treatment, "concentrationPercent">
  readonly pharmacies: readonly Pharmacy[]
  readonly protocol: Protocol
}): LeadTime {
  const last = supplies
    .filter((supply) => supply.pharmacy !== undefined && isOfStrength(supply, drops))
    .toSorted((a, b) => ((a.dispensed ?? a.opened ?? "") < (b.dispensed ?? b.opened ?? "") ? -1 : 1))
    .at(-1)?.pharmacy
  const named = pharmacies.find(
    ({ id, name }) => last !== undefined && (isSame(id, last) || isSame(name, last)),
  )
  const pharmacy = named ?? (last === undefined && pharmacies.length === 1 ? pharmacies[0] : undefined)
  return pharmacy
    ? { days: pharmacy.leadDays, from: { kind: "pharmacy", name: pharmacy.name } }
    : { days: protocol.bottleLeadDays, from: { kind: "protocol" } }
}

const isSame = (a: string, b: string): boolean => a.trim().toLowerCase() === b.trim().toLowerCase()
