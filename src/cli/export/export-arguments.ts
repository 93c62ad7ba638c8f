import type { Language } from "../../engine/say.js"
import type { PaperSize } from "../../report/document.js"
import type { Place } from "../io.js"

export interface ExportArguments {
  /** A course file or a data folder. */
  readonly what: string
  readonly format: "fhir" | "ndjson" | "csv" | "archive" | "research"
  readonly out: string
  /** Whether an archive has the full record of each child on paper. */
  readonly papers?: boolean | undefined
  readonly language?: Language | undefined
  readonly paper?: PaperSize | undefined
  readonly json?: boolean | undefined
}

export type ExportFrom = ExportArguments & { readonly place: Place }
