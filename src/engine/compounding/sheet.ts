import type { CalendarDate, Eye } from "../course.js"
import type { Contacts, Pharmacy } from "../practice-rules.js"
import type { CompoundingOrder } from "./compounding-order.js"
import type { StabilityRow } from "./stability.js"

export type SheetBlock =
  | { readonly kind: "pairs"; readonly pairs: readonly (readonly [label: string, value: string])[] }
  | {
      readonly kind: "table"
      readonly head: readonly string[]
      readonly rows: readonly (readonly string[])[]
    }
  | { readonly kind: "lines"; readonly lines: readonly string[] }
  /** To be seen first. */
  | { readonly kind: "caution"; readonly lines: readonly string[] }
  /** Small print: where figures come from. */
  | { readonly kind: "notes"; readonly lines: readonly string[] }
  | { readonly kind: "label"; readonly lines: readonly string[] }
  /** A line each to be signed and dated; the name is filled in where it is known. */
  | {
      readonly kind: "signatures"
      readonly lines: readonly { readonly role: string; readonly name: string }[]
    }

export const SHEET_PARTS = ["ordered", "dilution", "content", "keeping", "label", "checked"] as const

export interface SheetSection {
  readonly name: (typeof SHEET_PARTS)[number]
  readonly heading: string
  readonly blocks: readonly SheetBlock[]
}

/** What stands on an order's paper, in order; how it is set is left to page and document. Dates are ISO. */
export interface Sheet {
  readonly title: string
  readonly statement: string
  readonly sections: readonly SheetSection[]
}

export interface SheetInput {
  readonly order: CompoundingOrder
  /** The day it is ordered. */
  readonly on: CalendarDate
  /** False for one that nobody has ordered yet, worked out to be looked at. */
  readonly isOrdered?: boolean | undefined
  readonly child: {
    readonly name: string | null
    readonly born: CalendarDate
    readonly number?: string | null | undefined
  }
  readonly practice: string
  /** Empty where nobody is named. */
  readonly prescriber: string
  readonly pharmacy: Pharmacy
  readonly contacts: Contacts
  readonly isPreserved: boolean
  /** Set where one eye is treated. */
  readonly eye?: Eye | undefined
  /** For a taper; every night when absent. */
  readonly nightsPerWeek?: number | undefined
  /** The consent it rests on, or the reason why it goes out without one. */
  readonly consent: string
  readonly remarks?: readonly string[] | undefined
  readonly stability?: readonly StabilityRow[] | undefined
}
