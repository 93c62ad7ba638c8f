import { useMemo } from "react"
import { type ConsentText, consentText } from "../../engine/consent/consent-text.js"
import { costLines } from "../../engine/consent/cost-lines.js"
import { wordingsFor } from "../../engine/consent/default-wording.js"
import type { TreatmentChoice } from "../../engine/course.js"
import type { ConsentWording } from "../../engine/practice-rules.js"
import { consentEvidence } from "../../evidence/consent.js"
import type { CourseReading } from "../reading.js"

/** What the family reads for a treatment, in the language chosen; no text while the strength of drops is missing. */
export function useConsentText({
  covers: { kind, concentrationPercent },
  language,
  reading,
}: {
  readonly covers: TreatmentChoice
  readonly language: string | null
  readonly reading: CourseReading
}): {
  readonly wordings: readonly ConsentWording[]
  readonly wording: ConsentWording | undefined
  readonly text: ConsentText | null
} {
  const { rules, today } = reading
  const wordings = wordingsFor({ kind, on: today, wordings: rules.consentWordings })
  const wording = wordings.find((each) => each.language === language) ?? wordings[0]
  const text = useMemo(() => {
    // What was typed for a strength and is no number is the server's to refuse; there is nothing to read for it.
    if (!wording || (kind === "atropine" && typeof concentrationPercent !== "number")) return null
    const treatment = { kind, ...(concentrationPercent === undefined ? {} : { concentrationPercent }) }
    const { pharmacies, contacts } = rules
    return consentText({
      wording,
      treatment,
      evidence: consentEvidence,
      cost: () => costLines({ treatment, ...reading }),
      contacts,
      ...(pharmacies.length > 0 ? { bottlesMl: pharmacies.map(({ bottleMl }) => bottleMl) } : {}),
    })
  }, [wording, kind, concentrationPercent, rules, reading])
  return { wordings, wording, text }
}
