import type { CalendarDate, Course, Eye, VisitSource } from "../../../engine/course.js"
import { say } from "../../../engine/say.js"
import type { Loose } from "../../course/loose.js"
import type { CourseFragment, Fragment, Identity, ReceivedDocument } from "../../intake/fragment.js"
import type { EyeField } from "../r4/eye.js"
import type { ListName } from "../r4/lists.js"
import type { Held } from "./collected.js"

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

/** As other readers' fragments, with the practice's latitude where the file is one of ours. */
export interface FhirFragment extends Fragment {
  readonly course: CourseFragment & Pick<Course, "practice">
}

/** What a file holds of one child. */
export interface ChildInFile {
  readonly patient: Held | undefined
  /** What is known where the Patient is not in the file. */
  readonly identity: Identity
  readonly pieces: Piece[]
  readonly notes: Note[]
  readonly documents: ReceivedDocument[]
}

/** A value of the file in a sentence: short, whatever it is. */
export const shown = (value: unknown): string =>
  value === undefined
    ? say("missing|a status")
    : String(typeof value === "object" ? "{ }" : value).slice(0, 40)
