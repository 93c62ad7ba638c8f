import { useMemo, useState } from "react"
import { isShipped } from "../../engine/consent/default-wording.js"
import { languageName, spokenFor } from "../../engine/consent/wording-language.js"
import type { TreatmentChoice } from "../../engine/course.js"
import type { ConsentWording } from "../../engine/practice-rules.js"
import { say } from "../../engine/say.js"
import { treatmentName } from "../../engine/treatment-name.js"
import { limitInWords, limits } from "../../server/contract/limits.js"
import type { ChildPartProps } from "../child/child-part-props.js"
import { failureInWords } from "../client.js"
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
  const { wordings, wording, isStandIn, text, failure } = useConsentText({ covers, language, reading })
  const isReady = strength === undefined && text !== null && wording !== undefined
  const lacksStrength = covers.kind === "atropine" && typeof covers.concentrationPercent !== "number"
  return (
    <div className="consent-new">
      <section className="card consent-what" aria-labelledby="new-consent">
        <div className="consent-head">
          <h2 id="new-consent">{say("New consent")}</h2>
          <button type="button" onClick={onClose}>
            {say("Close without recording")}
          </button>
        </div>
        <div className="form-row">
          <TreatmentAsked likely={likely} value={asked} onChange={setAsked} strengthFault={strength} />
          {wordings.length > 1 && (
            <Choices
              legend={say("Language the family reads")}
              options={wordings.map((each) => [each.language, optionName(each, wordings)] as const)}
              value={wording?.language ?? null}
              onChange={setLanguage}
              note={wording && languageNote(wording, isStandIn)}
            />
          )}
        </div>
        {failure !== null && <p className="form-fault">{failureInWords(failure)}</p>}
        {lacksStrength && (
          <p className="soft">{say("The text is shown here once the strength is entered.")}</p>
        )}
      </section>
      {isReady && (
        <>
          <div className="card">
            <ConsentSheet text={text}>
              <PaperLines
                text={text}
                practice={practice.name}
                childName={view.child.name}
                born={view.child.born}
              />
            </ConsentSheet>
          </div>
          <SignForm
            // Another treatment, wording or language is another text, which is signed anew.
            key={`${treatmentName(covers)} ${wording.version} ${wording.language}`}
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

/** Where a practice has its own wording in one language only, the others are told apart from it. */
function optionName(wording: ConsentWording, all: readonly ConsentWording[]): string {
  const name = languageName(wording.language)
  const isOther = isShipped(wording) && all.some((each) => !isShipped(each))
  return isOther ? say("{language}, as it ships", { language: name }) : name
}

function languageNote(wording: ConsentWording, isStandIn: boolean): string | undefined {
  if (spokenFor(wording.language) === null)
    return say("The figures in this text are told in English: this language is not spoken here.")
  return isStandIn
    ? say("The practice has no wording of its own in force in this language: this is the one that ships.")
    : undefined
}

/** What is wrong with the strength of drops once something is typed. */
function strengthFault({ kind, concentrationPercent: percent }: TreatmentChoice): string | undefined {
  if (kind !== "atropine" || percent === undefined) return undefined
  const limit = limits.concentrationPercent
  const fits = typeof percent === "number" && percent > limit.low && percent <= limit.high
  return fits ? undefined : say("must be {limit}", { limit: limitInWords(limit) })
}
