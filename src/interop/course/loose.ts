import { type DayNumber, dayNumberOrNull } from "../../engine/calendar.js"

/** A file read loosely, before it is known to be sound: what is not readable is empty. */
export type Loose = Readonly<Record<string, unknown>>

export const record = (value: unknown): Loose =>
  typeof value === "object" && value !== null && !Array.isArray(value) ? (value as Loose) : {}
export const records = (value: unknown): readonly Loose[] => (Array.isArray(value) ? value.map(record) : [])
export const dayOf = (value: unknown): DayNumber | null =>
  typeof value === "string" ? dayNumberOrNull(value) : null
