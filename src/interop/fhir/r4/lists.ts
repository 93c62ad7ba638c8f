import type { Course } from "../../../engine/course.js"
import { order, supply } from "./bottles.js"
import { consent } from "./consent.js"
import { concern, decision, explanation, missedNights, payment } from "./programme.js"
import type { ItemCodec } from "./scope.js"
import { treatment } from "./treatment.js"

export type ListName = Exclude<keyof Course, "lengthwise" | "child" | "practice" | "visits">
type Item<Name extends ListName> = NonNullable<Course[Name]>[number]

/** The lists of a course beside its visits. A list that is missing here does not compile. */
export const LISTS: { readonly [Name in ListName]-?: ItemCodec<Item<Name>> } = {
  treatments: treatment,
  supplies: supply,
  consents: consent,
  missedNights,
  decisions: decision,
  concerns: concern,
  orders: order,
  explanations: explanation,
  payments: payment,
}
export const LIST_NAMES = Object.keys(LISTS) as readonly ListName[]

export const isListName = (name: string): name is ListName => Object.hasOwn(LISTS, name)
