import { say } from "../../engine/say.js"
import type { Picture } from "../document.js"
import { logoFault } from "./logo.js"
import { pdfOf } from "./pdf.js"

/** What is wrong with a picture for the head of a paper, as "what is allowed"; null when nothing is. Found out by setting one. */
export function pictureFault(logo: Picture, { practice }: { readonly practice: string }): string | null {
  const fault = logoFault(logo)
  if (fault !== null) return fault
  const paper = pdfOf(
    [
      {
        kind: "letter",
        title: practice,
        language: "en",
        date: "2000-01-01",
        letterhead: { practice, lines: [], logo },
        blocks: [],
        foot: "",
      },
    ],
    "a4",
  )
  return paper.kind === "refused" && paper.about === "logo"
    ? say("a PNG or JPEG that can be read; its content is damaged")
    : null
}
