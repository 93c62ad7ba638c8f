import type { Writable } from "node:stream"
import type { CalendarDate } from "../../engine/course.js"
import type { Language } from "../../engine/say.js"
import type { OpenDatabase } from "../../record/index.js"
import type { PaperSize } from "../../report/document.js"
import type { PaperSetter } from "../paper-setter.js"

export const PHASES = ["record", "files", "courses", "tables", "papers"] as const
export type Phase = (typeof PHASES)[number]

export interface Progress {
  readonly phase: Phase
  readonly done: number
  readonly total: number
}

export interface PracticeArchiveOptions {
  /** As it stands at one moment: see `inSnapshot`. */
  readonly database: OpenDatabase
  readonly destination: Writable
  readonly madeAtMs: number
  readonly today: CalendarDate
  /** The full record of every child on paper; slow, so it can be left out. */
  readonly papers: {
    readonly setter: PaperSetter
    readonly language: Language
    readonly paper: PaperSize
  } | null
  readonly signal?: AbortSignal | undefined
  readonly onProgress?: ((progress: Progress) => void) | undefined
}
