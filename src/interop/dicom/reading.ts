import type { CalendarDate, Eye, EyeExamination } from "../../engine/course.js"
import { msg, say, withDecimalSign } from "../../engine/say.js"
import { type Limit, limitInWords } from "../course/limits.js"
import type { Fragment, Skipped } from "../intake/fragment.js"
import { type DataSet, firstItem, itemsOf, numberOf, textOf } from "./data-set.js"
import { type Attribute, placeOf } from "./tags.js"

type Note = Fragment["notes"][number]

/** One object being read: what is known of all of it, and what could not be taken so far. */
export interface Reading {
  readonly file: string
  readonly date: CalendarDate
  readonly device: string | undefined
  readonly notes: Note[]
  readonly skipped: Skipped[]
}

/** One eye, or one item of it, in the object. */
export interface Place {
  readonly reading: Reading
  readonly eye: Eye
  readonly set: DataSet
  /** Tags on the way there. */
  readonly path: string
}

export const EYE_NAMES = { right: msg("Right eye"), left: msg("Left eye") } as const

/** Both eyes of an object, each read from the one item of its sequence. */
export function eyesOf(
  set: DataSet,
  {
    reading,
    sequences,
    read,
  }: {
    readonly reading: Reading
    readonly sequences: Readonly<Record<Eye, Attribute>>
    readonly read: (place: Place) => EyeExamination
  },
): Partial<Record<Eye, EyeExamination>> {
  const eyes = (["right", "left"] as const).flatMap((eye) => {
    const attribute = sequences[eye]
    const items = itemsOf(set, attribute)
    const [item] = items
    if (!item) return []
    const place = { reading, eye, set: item, path: placeOf(attribute) }
    if (items.length > 1) {
      skip(place, say("{eye}: the file gives it twice, which the standard does not allow.", eyeName(eye)))
      return []
    }
    const found = Object.entries(read(place)).filter(([, value]) => value !== undefined)
    return found.length === 0 ? [] : [[eye, Object.fromEntries(found)] as const]
  })
  return Object.fromEntries(eyes)
}

/** The place of the first item of a sequence inside. */
export function inside(place: Place, attribute: Attribute): Place | undefined {
  const set = firstItem(place.set, attribute)
  return set && { ...place, set, path: `${place.path}.${placeOf(attribute)}` }
}

export const eyeName = (eye: Eye) => ({ eye: say(EYE_NAMES[eye]) })

export function skip({ reading, path }: Place, why: string, attribute?: Attribute): void {
  const where = attribute === undefined ? path : `${path}.${placeOf(attribute)}`
  reading.skipped.push({ file: reading.file, where, why })
}

/** A note on what was taken; `field` as the course file names it within the eye. */
export function note(
  { reading, eye }: Place,
  { kind, field, why }: { readonly kind: string; readonly field: string; readonly why: string },
): void {
  reading.notes.push({ kind, path: `visits[${reading.date}].${eye}.${field}`, why })
}

/**
 * A number inside its limit, rounded; undefined when it is absent, or when it was skipped because it cannot be.
 */
export function quantity(
  place: Place,
  {
    attribute,
    limit,
    what,
    decimals,
  }: {
    readonly attribute: Attribute
    readonly limit: Limit
    /** What it is, as it stands after the eye's name. */
    readonly what: string
    readonly decimals?: number
  },
): number | undefined {
  const value = numberOf(place.set, attribute)
  if (value === undefined) return undefined
  const rounded = decimals === undefined ? value : roundedTo(value, decimals)
  if (isWithin(rounded, limit)) return rounded
  skip(place, outside(place.eye, { what, value, limit }), attribute)
  return undefined
}

export function outside(
  eye: Eye,
  { what, value, limit }: { readonly what: string; readonly value: number; readonly limit: Limit },
): string {
  const figure = Number.isFinite(value) ? withDecimalSign(String(value)) : say("a figure that cannot be read")
  const values = { ...eyeName(eye), what, allowed: limitInWords(limit), value: figure }
  return say("{eye}: {what} must be {allowed}, not {value}.", values)
}

export const isWithin = (value: number, { low, high, aboveLow }: Limit): boolean =>
  value >= low && value <= high && !(aboveLow && value === low)

/** @example roundedTo(24.1200008392334, 2) // => 24.12 */
export function roundedTo(value: number, decimals: number): number {
  const factor = 10 ** decimals
  return Math.round(value * factor) / factor + 0
}

/** Figures stand in sentences as the reader writes them. */
export const figure = (value: number): string => withDecimalSign(String(value))

/** Text of a code string: YES and NO come in any case from some writers. */
export const wordOf = (set: DataSet, attribute: Attribute): string | undefined =>
  textOf(set, attribute)?.toUpperCase()
