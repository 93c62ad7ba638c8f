import type { CodeableConcept, Medication } from "fhir/r4.js"
import { type Loose, record, records } from "../../course/loose.js"
import { ATROPINE, own } from "./codes.js"
import type { Look } from "./look.js"
import { hasCode } from "./observation.js"
import { inUnit, quantity, shifted } from "./units.js"

/** Atropine eye drops as a Medication: 0.025 % w/v stands as 0.25 mg in 1 mL. */

const OWN_ATROPINE = own("atropine", "Atropine")
export const ATROPINE_CONCEPT: CodeableConcept = { coding: [ATROPINE, OWN_ATROPINE], text: "Atropine" }

export function atropine({
  id,
  percent,
  volumeMl,
  lot,
  lastDay,
}: {
  readonly id: string
  readonly percent: number | undefined
  readonly volumeMl?: number | undefined
  readonly lot?: string | undefined
  readonly lastDay?: string | undefined
}): Medication {
  const batch = {
    ...(lot === undefined ? {} : { lotNumber: lot }),
    ...(lastDay === undefined ? {} : { expirationDate: lastDay }),
  }
  return {
    resourceType: "Medication",
    id,
    code: {
      coding: [own("atropine-eye-drops", "Atropine eye drops")],
      text: percent === undefined ? "Atropine eye drops" : `Atropine ${percent} % eye drops`,
    },
    ...(volumeMl === undefined
      ? {}
      : { amount: { numerator: quantity(volumeMl, "mL"), denominator: quantity(1, "bottle") } }),
    ingredient: [
      {
        itemCodeableConcept: ATROPINE_CONCEPT,
        isActive: true,
        ...(percent === undefined
          ? {}
          : { strength: { numerator: quantity(shifted(percent, 1), "mg"), denominator: quantity(1, "mL") } }),
      },
    ],
    ...(Object.keys(batch).length === 0 ? {} : { batch }),
  }
}

export interface MedicationRead {
  readonly isAtropine: boolean
  readonly percent?: number
  readonly volumeMl?: number
  readonly lot?: string
  readonly lastDay?: string
}

/** What a request or a dispense is of. */
export function medicationOf(resource: Loose, look: Look): MedicationRead {
  const medication = look.follow(resource.medicationReference)
  const isNamed = isAtropine(resource.medicationCodeableConcept)
  if (medication === undefined) return { isAtropine: isNamed }
  const ingredients = records(medication.ingredient)
  const active = ingredients.find(({ itemCodeableConcept }) => isAtropine(itemCodeableConcept))
  const percent = active && percentOf(record(active.strength))
  const bottle = record(medication.amount)
  const volumeMl = record(bottle.denominator).value === 1 ? inUnit(record(bottle.numerator), "mL") : undefined
  const { lotNumber: lot, expirationDate: lastDay } = record(medication.batch)
  return {
    isAtropine: isNamed || active !== undefined || isAtropine(medication.code),
    ...(percent === undefined ? {} : { percent }),
    ...(volumeMl === undefined ? {} : { volumeMl }),
    ...(typeof lot === "string" ? { lot } : {}),
    ...(typeof lastDay === "string" ? { lastDay } : {}),
  }
}

const isAtropine = (concept: unknown): boolean => hasCode(concept, ATROPINE) || hasCode(concept, OWN_ATROPINE)

/** Per cent w/v of milligrams in so many millilitres. */
function percentOf({ numerator, denominator }: Loose): number | undefined {
  const [mg, mL] = [inUnit(record(numerator), "mg"), inUnit(record(denominator), "mL")]
  if (mg === undefined || mL === undefined || mL <= 0) return undefined
  return shifted(mL === 1 ? mg : Number((mg / mL).toPrecision(12)), -1)
}
