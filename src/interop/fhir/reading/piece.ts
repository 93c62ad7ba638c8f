import type { CalendarDate, Eye, VisitSource } from "../../../engine/course.js"
import type { Loose } from "../../course/loose.js"
import type { EyeField } from "../r4/eye.js"
import type { ListName } from "../r4/lists.js"

/** What one resource adds to a course, and where. */
export type Piece = { readonly origin: string } & (
  | {
      readonly kind: "eye"
      readonly date: CalendarDate
      readonly eye: Eye
      readonly field: EyeField
      readonly value: unknown
      readonly place?: number | undefined
      /** Another program's prescription, which is no refraction of that day. */
      readonly isOldGlasses?: boolean
    }
  | {
      readonly kind: "asked"
      readonly date: CalendarDate
      readonly field: "symptoms" | "answers"
      readonly value: readonly unknown[]
    }
  | {
      readonly kind: "source"
      readonly date: CalendarDate
      readonly place: number
      readonly value: VisitSource
    }
  /** The visit itself, with whatever no other resource has. */
  | { readonly kind: "base"; readonly date: CalendarDate; readonly resource: Loose }
  | {
      readonly kind: "item"
      readonly list: ListName
      readonly place: number | undefined
      readonly value: unknown
    }
)

export interface Note {
  readonly kind: string
  readonly path: string
  readonly why: string
}

/** What a resource comes to. */
export type Outcome =
  | { readonly pieces: readonly Piece[]; readonly notes?: readonly Note[] }
  | { readonly why: string }
  /** Understood, and nothing of a course by itself. */
  | "nothing"
