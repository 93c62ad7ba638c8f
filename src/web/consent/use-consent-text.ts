import { useMemo } from "react"
import { type ConsentText, consentText } from "../../engine/consent/consent-text.js"
import { costLines } from "../../engine/consent/cost-lines.js"
import { isShipped, wordingIdOf, wordingsFor } from "../../engine/consent/default-wording.js"
import { spokenFor } from "../../engine/consent/wording-language.js"
import type { TreatmentChoice } from "../../engine/course.js"
import type { ConsentWording } from "../../engine/practice-rules.js"
import { language as readingLanguage } from "../../engine/say.js"
import { consentEvidence } from "../../evidence/consent.js"
import type { CourseReading } from "../reading.js"
import { useTextLanguage } from "./text-language.js"

interface TextToRead {
  /** One for each language there is. */
  readonly wordings: readonly ConsentWording[]
  readonly wording: ConsentWording | undefined
  /** True where the practice has a wording of its own, and not in this language. */
  readonly isStandIn: boolean
  /** None while the strength of drops is missing, or the words of the language are. */
  readonly text: ConsentText | null
  /** Why the words of the language could not be had. */
  readonly failure: unknown
}

/** What the family reads for a treatment: in the language chosen, in that of the page while none is. */
export function useConsentText({
  covers: { kind, concentrationPercent },
  language,
  reading,
}: {
  readonly covers: TreatmentChoice
  readonly language: string | null
  readonly reading: CourseReading
}): TextToRead {
  const { rules, today } = reading
  const wordings = wordingsFor({ kind, on: today, wordings: rules.consentWordings })
  const wording =
    wordings.find((each) => each.language === language) ??
    wordings.find((each) => spokenFor(each.language) === readingLanguage()) ??
    wordings[0]
  const { isKnown, failure } = useTextLanguage((wording && spokenFor(wording.language)) ?? "en")
  const text = useMemo(() => {
    // What was typed for a strength and is no number is the server's to refuse; there is nothing to read for it.
    if (!isKnown || !wording || (kind === "atropine" && typeof concentrationPercent !== "number")) return null
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
  }, [isKnown, wording, kind, concentrationPercent, rules, reading])
  const hasOwn = rules.consentWordings.some(({ id, from }) => id === wordingIdOf(kind) && from <= today)
  const isStandIn = hasOwn && wording !== undefined && isShipped(wording)
  return { wordings, wording, isStandIn, text, failure }
}
