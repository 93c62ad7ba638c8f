import type { CalendarDate, Course, Sex, VisitSource } from "../../engine/course.js"

/**
 * What a file of another program or of an instrument holds, in the fields of the course file. Nothing in it was checked
 * against a practice: whose it is, is asked of `sameChild`.
 */
export interface ReadFile {
  readonly file: string
  readonly fragments: readonly Fragment[]
  readonly skipped: readonly Skipped[]
}

/** Something that was not taken, and why, in words a receptionist can act on. */
export interface Skipped {
  readonly file: string
  readonly why: string
  /** Where in the file: a line, a path, a tag. */
  readonly where?: string | undefined
}

/** What one file says of one child. */
export interface Fragment {
  readonly identity: Identity
  readonly course: CourseFragment
  readonly documents: readonly ReceivedDocument[]
  readonly source: VisitSource
  /** What was assumed or looks doubtful, by the path in `course`. */
  readonly notes: readonly { readonly kind: string; readonly path: string; readonly why: string }[]
}

/** Everything of a course but whose it is. */
export type CourseFragment = Partial<Omit<Course, "lengthwise" | "child" | "practice">> & {
  /** What the file says of the child beyond its identity. */
  readonly child?: Partial<Pick<Course["child"], "ancestry" | "myopicParents" | "protocol">> | undefined
}

/** Who the file says that it is about. */
export interface Identity {
  /** The number or id the other side knows the child by. */
  readonly number?: string | undefined
  /** Given name first, one blank between names. */
  readonly name?: string | undefined
  readonly born?: CalendarDate | undefined
  readonly sex?: Sex | undefined
}

export interface ReceivedDocument {
  readonly date: CalendarDate
  readonly title: string
  readonly mediaType: "application/pdf"
  readonly bytes: Uint8Array
}
