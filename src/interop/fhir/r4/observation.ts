import type { CodeableConcept, Coding, Observation, ObservationComponent, Reference } from "fhir/r4.js"
import type { CalendarDate, Eye } from "../../../engine/course.js"
import { type Loose, record, records } from "../../course/loose.js"
import { eyeSite, hl7, OWN, own } from "./codes.js"
import { inUnit, quantity, type Unit } from "./units.js"

/** Parts of an Observation, written and read. */

export interface Where {
  readonly patient: Reference
  readonly encounter?: Reference | undefined
  readonly date: CalendarDate
  readonly deviceOf: (name: string) => Reference | undefined
}
export interface WhereInEye extends Where {
  readonly eye: Eye
}
/** An Observation that has no id yet, and the word for its id. */
export type Draft = Omit<Observation, "id">

export function draft(
  { patient, encounter, date, eye }: Where & { readonly eye?: Eye | undefined },
  { code, text, category = "exam" }: { code: readonly Coding[]; text: string; category?: "exam" | "survey" },
): Draft {
  return {
    resourceType: "Observation",
    status: "final",
    category: [{ coding: [hl7("observation-category", category)] }],
    code: { coding: [...code], text },
    subject: patient,
    ...(encounter === undefined ? {} : { encounter }),
    effectiveDateTime: date,
    ...(eye === undefined ? {} : { bodySite: eyeSite(eye) }),
  }
}

/** Given parts only: an absent figure has no component. */
export function components(
  ...parts: readonly (ObservationComponent | undefined)[]
): Pick<Observation, "component"> {
  const present = parts.filter((part) => part !== undefined)
  return present.length === 0 ? {} : { component: present }
}

export const figure = (
  value: number | undefined,
  unit: Unit,
  ...coding: readonly Coding[]
): ObservationComponent | undefined =>
  value === undefined ? undefined : { code: { coding: [...coding] }, valueQuantity: quantity(value, unit) }

export const deviceIn = (name: string | undefined, { deviceOf }: Where): Pick<Observation, "device"> => {
  const device = name === undefined ? undefined : deviceOf(name)
  return device === undefined ? {} : { device }
}

export const methodIn = (
  method: string | undefined,
  words: { readonly text?: string | undefined; readonly codes?: readonly Coding[] | undefined } = {},
): Pick<Observation, "method"> => {
  if (method === undefined) return {}
  const { text = method.replaceAll("-", " "), codes = [] } = words
  const concept: CodeableConcept = { coding: [...codes, own(method)], text }
  return { method: concept }
}

export const codings = (concept: unknown): readonly Loose[] => records(record(concept).coding)

export const hasCode = (concept: unknown, { system, code }: Coding): boolean =>
  codings(concept).some((coding) => coding.system === system && coding.code === code)

/** One of the values that a field can have, by our code for it. */
export const ownOneOf = <T extends string>(concept: unknown, values: readonly T[]): T | undefined =>
  values.find((value) => codings(concept).some(({ system, code }) => system === OWN && code === value))

export const partsWith = (observation: Loose, coding: Coding): readonly Loose[] =>
  records(observation.component).filter(({ code }) => hasCode(code, coding))

/** The figure of a component; undefined where there is none, or it is in no unit that is understood. */
export function partIn(observation: Loose, unit: Unit, ...wanted: readonly Coding[]): number | undefined {
  const part = records(observation.component).find(({ code }) => wanted.some((each) => hasCode(code, each)))
  return part === undefined ? undefined : inUnit(record(part.valueQuantity), unit)
}

/** Only the fields that have a value. */
export function present<T extends object>(fields: T): { [Key in keyof T]?: Exclude<T[Key], undefined> } {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as never
}
