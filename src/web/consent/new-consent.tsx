import { useMemo, useState } from "react"
import type { TreatmentChoice } from "../../engine/course.js"
import { treatmentName } from "../../engine/treatment-name.js"
import { limitInWords, limits } from "../../server/contract/limits.js"
import type { ChildPartProps } from "../child/child-part-props.js"
import { treatmentBody } from "../enter/treatment-fields.js"
import { Choices } from "../parts/field.js"
import { askedTreatments } from "./asked-treatments.js"
import { ConsentSheet, PaperLines } from "./consent-sheet.js"
import { SignForm } from "./sign-form.js"
import { type Asked, TreatmentAsked } from "./treatment-asked.js"
import { useConsentText } from "./use-consent-text.js"

/** What is consented to, the text for it with its figures, and then the signature. */
export function NewConsent(props: ChildPartProps & { readonly onClose: () => void }) {
  const { view, reading, practice, onDone, onClose } = props
  const likely = useMemo(() => askedTreatments(reading), [reading])
  const [asked, setAsked] = useState<Asked>(
    likely.length > 0 ? { at: 0 } : { typed: { kind: "atropine", strength: "" } },
  )
  const [language, setLanguage] = useState<string | null>(null)
  const covers: TreatmentChoice =
    "at" in asked ? (likely[asked.at]?.treatment ?? { kind: "atropine" }) : treatmentBody(asked.typed)
  const strength = strengthFault(covers)
  const { wordings, wording, text } = useConsentText({ covers, language, reading })
  const isReady = strength === undefined && text !== null && wording !== undefined
  return (
    <div className="consent-new">
      <section className="card consent-what" aria-labelledby="new-consent">
        <div className="consent-head">
          <h2 id="new-consent">New consent</h2>
          <button type="button" onClick={onClose}>
            Close without recording
          </button>
        </div>
        <div className="form-row">
          <TreatmentAsked likely={likely} value={asked} onChange={setAsked} strengthFault={strength} />
          {wordings.length > 1 && (
            <Choices
              legend="Language of the text"
              options={wordings.map((each) => [each.language, each.language] as const)}
              value={wording?.language ?? null}
              onChange={setLanguage}
            />
          )}
        </div>
        {!isReady && <p className="soft">The text is shown here once the strength is entered.</p>}
      </section>
      {isReady && (
        <>
          <div className="card">
            <ConsentSheet text={text}>
              <PaperLines practice={practice.name} childName={view.child.name} born={view.child.born} />
            </ConsentSheet>
          </div>
          <SignForm
            // Another treatment or wording is another text, which is signed anew.
            key={`${treatmentName(covers)} ${wording.version}`}
            childId={view.child.id}
            today={reading.today}
            text={text}
            wording={wording}
            onDone={onDone}
          />
        </>
      )}
    </div>
  )
}

/** What is wrong with the strength of drops once something is typed. */
function strengthFault({ kind, concentrationPercent: percent }: TreatmentChoice): string | undefined {
  if (kind !== "atropine" || percent === undefined) return undefined
  const limit = limits.concentrationPercent
  const fits = typeof percent === "number" && percent > limit.low && percent <= limit.high
  return fits ? undefined : `must be ${limitInWords(limit)}`
}
