import type { Assessment } from "../../engine/assessment.js"
import type { CalendarDate } from "../../engine/course.js"
import type { Protocol } from "../../engine/protocol/protocol.js"

/** What is known around a course and stands in no course file. Everything is optional; what is absent is left out. */
export interface FhirContext {
  /** The record's own id of the child; the Patient has it. Without it the child's id or chart number serves. */
  readonly id?: string | undefined
  readonly identity?: { readonly name?: string | undefined; readonly number?: string | undefined } | undefined
  readonly practice?: { readonly id: string; readonly name: string } | undefined
  /** Names of the people of the practice, by their ids. */
  readonly people?: Readonly<Record<string, string>> | undefined
  /** The protocol that the child follows. With `asOf` its duties are told as well. */
  readonly protocol?: Protocol | undefined
  /** The day on which duties are asked for and treatments run. */
  readonly asOf?: CalendarDate | undefined
  /** What the engine says of the course; its sentences stand in a DiagnosticReport. */
  readonly assessment?: Assessment | undefined
  /** The assessment as a paper. */
  readonly report?: { readonly title: string; readonly pdf: Uint8Array } | undefined
  /** Papers that were received. */
  readonly documents?: readonly FhirDocument[] | undefined
  /** False leaves the codes of SNOMED CT out, for a practice without a licence; ours stand beside each of them. */
  readonly snomed?: boolean | undefined
}

export interface FhirDocument {
  readonly date: CalendarDate
  readonly title: string
  readonly pdf: Uint8Array
}
