import { say } from "../../engine/say.js"
import type { Picture } from "../document.js"
import { pdfOf } from "./pdf.js"

export const LARGEST_LOGO_BYTES = 1_000_000

/** What is wrong with a picture for the head of a paper, as "what is allowed"; null when nothing is. Found out by setting one. */
export function pictureFault(logo: Picture, { practice }: { readonly practice: string }): string | null {
  if (logo.bytes.length > LARGEST_LOGO_BYTES) {
    return say("a picture of at most {megabytes} MB", { megabytes: LARGEST_LOGO_BYTES / 1_000_000 })
  }
  try {
    pdfOf(
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
    return null
  } catch {
    return say("a PNG or JPEG that can be read; its content is damaged")
  }
}
