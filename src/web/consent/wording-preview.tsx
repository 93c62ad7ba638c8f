import { useMemo, useState } from "react"
import { consentText } from "../../engine/consent/consent-text.js"
import { spokenFor } from "../../engine/consent/wording-language.js"
import { TREATMENT_KINDS, type TreatmentChoice } from "../../engine/course.js"
import type { ConsentWording, PracticeRules } from "../../engine/practice-rules.js"
import { say } from "../../engine/say.js"
import { treatmentName } from "../../engine/treatment-name.js"
import { consentEvidence } from "../../evidence/consent.js"
import { failureInWords } from "../client.js"
import { capitalised } from "../format.js"
import { Field } from "../parts/field.js"
import { ConsentSheet } from "./consent-sheet.js"
import { useTextLanguage } from "./text-language.js"

// Samples to look at, not advice: the strengths for which trials gave most figures.
const SAMPLE_PERCENTS = [0.01, 0.025, 0.05]

/** A wording as a family would read it, filled in for a sample treatment. */
export function WordingPreview({
  wording,
  rules,
}: {
  readonly wording: ConsentWording
  readonly rules: PracticeRules
}) {
  const samples: readonly TreatmentChoice[] =
    wording.id === "drops"
      ? SAMPLE_PERCENTS.map((concentrationPercent) => ({ kind: "atropine", concentrationPercent }))
      : TREATMENT_KINDS.filter((kind) => kind !== "atropine" && kind !== "none").map((kind) => ({ kind }))
  const [at, setAt] = useState(0)
  const treatment = samples[at] ?? samples[0]
  const { isKnown, failure } = useTextLanguage(spokenFor(wording.language) ?? "en")
  const text = useMemo(() => {
    if (!treatment || !isKnown) return null
    const { pharmacies, contacts } = rules
    const bottles = pharmacies.length > 0 ? { bottlesMl: pharmacies.map(({ bottleMl }) => bottleMl) } : {}
    return consentText({ wording, treatment, evidence: consentEvidence, contacts, ...bottles })
  }, [isKnown, wording, treatment, rules])
  return (
    <div className="wording-preview">
      <Field label={say("Preview for")}>
        {(control) => (
          <select {...control} value={at} onChange={(event) => setAt(Number(event.target.value))}>
            {samples.map((sample, index) => (
              <option key={treatmentName(sample)} value={index}>
                {capitalised(treatmentName(sample))}
              </option>
            ))}
          </select>
        )}
      </Field>
      {failure !== null && <p className="form-fault">{failureInWords(failure)}</p>}
      {text && <ConsentSheet text={text} />}
    </div>
  )
}
