import type { TreatmentChoice } from "../../engine/course.js"
import type { Language } from "../../engine/say.js"
import type { DocumentKind, PaperSize } from "../../server/contract/documents.js"

/** Which paper of a child is looked at. */
export interface PaperChoice {
  readonly kind: DocumentKind
  /** The usual one of that paper when null: the family's, or the reader's. */
  readonly language: Language | null
  readonly paper: PaperSize
  /** Where it is read; as on paper when absent. */
  readonly on?: "screen" | "phone" | undefined
  /** Absent for the course as it is recorded, null for observation without treatment. */
  readonly treatment?: TreatmentChoice | null | undefined
  readonly months?: number | undefined
  readonly order?: number | undefined
  readonly concern?: number | undefined
}

/** Where the server answers with a paper. Only what that kind of paper depends on is asked. */
export function paperAddress(childId: string, choice: PaperChoice, as: "content" | "pdf"): string {
  const { kind, language, paper, on, treatment, months, order, concern } = choice
  const hasTreatment = kind === "consent" || kind === "estimate"
  const asked = {
    language,
    paper: as === "pdf" ? paper : undefined,
    on: as === "content" ? on : undefined,
    as: as === "pdf" ? as : undefined,
    treatment: hasTreatment ? (treatment === null ? "none" : treatment?.kind) : undefined,
    concentration: hasTreatment ? treatment?.concentrationPercent : undefined,
    months: kind === "estimate" ? months : undefined,
    order: kind === "order" ? order : undefined,
    concern: kind === "adverse-event" ? concern : undefined,
  }
  const filled = Object.entries(asked).flatMap(([name, value]) =>
    value == null ? [] : [[name, String(value)]],
  )
  const query = new URLSearchParams(filled).toString()
  return `/api/children/${childId}/documents/${kind}${query && `?${query}`}`
}
