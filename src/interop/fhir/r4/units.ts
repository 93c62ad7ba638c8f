import type { Quantity } from "fhir/r4.js"
import type { Loose } from "../../course/loose.js"
import { UCUM } from "./codes.js"

/** Units that are written, and what else is read as them: the power of ten that turns the other into ours. */
const UNITS = {
  mm: { code: "mm", unit: "mm", others: { cm: 1, m: 3, um: -3 } },
  dioptre: { code: "[diop]", unit: "diopter", others: {} },
  degree: { code: "deg", unit: "deg", others: {} },
  logMAR: { code: "{logMAR}", unit: "logMAR", others: {} },
  mmHg: { code: "mm[Hg]", unit: "mmHg", others: {} },
  mg: { code: "mg", unit: "mg", others: { g: 3, ug: -3 } },
  mL: { code: "mL", unit: "mL", others: { L: 3 } },
  percent: { code: "%", unit: "%", others: {} },
  one: { code: "1", unit: "1", others: {} },
  bottle: { code: "{bottle}", unit: "bottle", others: {} },
  month: { code: "mo", unit: "month", others: {} },
} as const satisfies Record<
  string,
  { readonly code: string; readonly unit: string; readonly others: Readonly<Record<string, number>> }
>
export type Unit = keyof typeof UNITS

/** Written where no code is given, and read as that unit all the same. */
const SPELT: Readonly<Record<string, Unit>> = {
  mm: "mm",
  diopter: "dioptre",
  diopters: "dioptre",
  dioptre: "dioptre",
  dioptres: "dioptre",
  deg: "degree",
  degrees: "degree",
  logmar: "logMAR",
  mmhg: "mmHg",
}

export const quantity = (value: number, unit: Unit): Quantity => ({
  value,
  unit: UNITS[unit].unit,
  system: UCUM,
  code: UNITS[unit].code,
})

/** A quantity in a unit of ours; undefined when it has another unit, none, or is only a bound. */
export function inUnit({ value, unit, system, code, comparator }: Loose, wanted: Unit): number | undefined {
  if (typeof value !== "number" || !Number.isFinite(value) || comparator !== undefined) return undefined
  if (code === undefined)
    return typeof unit === "string" && SPELT[unit.trim().toLowerCase()] === wanted ? value : undefined
  if (system !== UCUM || typeof code !== "string") return undefined
  if (code === UNITS[wanted].code) return value
  const others: Readonly<Record<string, number>> = UNITS[wanted].others
  return Object.hasOwn(others, code) ? shifted(value, others[code] ?? 0) : undefined
}

/** A figure with its decimal point moved: 0.07 by 1 is 0.7, which a multiplication would not give. */
export function shifted(value: number, places: number): number {
  const [digits = "0", exponent = "0"] = String(value).split("e")
  return Number(`${digits}e${Number(exponent) + places}`)
}
