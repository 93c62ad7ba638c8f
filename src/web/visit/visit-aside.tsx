import type { Finding } from "../../engine/assessment.js"
import type { MissingItem } from "../../engine/protocol/examination-plan.js"
import { questionOf } from "../../engine/protocol/questions.js"
import { msg, say } from "../../engine/say.js"
import { isDoubt } from "../child/checks.js"
import { Reasons } from "../child/growth-card.js"
import { capitalised, odds, sentence } from "../format.js"
import type { CourseReading } from "../reading.js"
import { certaintyInWords, findingInWords, growthInWords, growthSentence } from "../words.js"
import type { AnswerFault } from "./answer-drafts.js"
import type { DraftFault } from "./examination.js"
import type { IfSaved } from "./if-saved.js"
import { MissingCard } from "./missing-card.js"
import { SaveActions } from "./save-actions.js"

interface AsideProps {
  readonly reading: CourseReading
  /** Null while there is nothing to say. */
  readonly consequence: IfSaved | null
  /** Then, what it waits for. */
  readonly waitsFor: string
  readonly faults: readonly DraftFault[]
  readonly answerFaults: readonly AnswerFault[]
  /** Signs that need care the same day, and cautions answered with yes, by name. */
  readonly signs: readonly string[]
  readonly cautions: readonly string[]
  /** What the examination is called, and what it still owes. */
  readonly title: string
  readonly missing: readonly MissingItem[]
  /** Whether saving was tried although something is missing. */
  readonly asking: boolean
  readonly saving: boolean
  readonly onGo: (id: string) => void
  readonly onSaveAnyway: () => void
  readonly onExchangeLengths: () => void
  readonly onDiscard: () => void
}

/** Checks of what is typed, what the page would say if it were saved, and the way to save it. */
export function VisitAside(props: AsideProps) {
  const { reading, consequence, waitsFor, title, missing } = props
  return (
    <aside className="aside visit-aside" aria-label={say("Checks and result")}>
      <section className="card answer" aria-labelledby="checks-title">
        <h2 id="checks-title">{say("Checks")}</h2>
        {props.signs.length > 0 && (
          <p className="form-fault">
            {say("Care the same day: {signs}.", { signs: props.signs.join(", ") })}
          </p>
        )}
        <Checks {...props} />
      </section>
      <section className="card answer" aria-labelledby="saved-title">
        <h2 id="saved-title">{say("If saved now")}</h2>
        <div aria-live="polite">
          {consequence ? (
            <Result reading={reading} consequence={consequence} />
          ) : (
            <p className="soft">{waitsFor}</p>
          )}
        </div>
        <SaveActions
          saving={props.saving}
          askedFor={props.asking && missing.length > 0 ? missing : null}
          onSaveAnyway={props.onSaveAnyway}
          onGo={props.onGo}
          onDiscard={props.onDiscard}
        />
        <p className="soft small">{say("Kept on this computer until saved.")}</p>
      </section>
      <MissingCard title={title} missing={missing} onGo={props.onGo} />
    </aside>
  )
}

function Checks(props: AsideProps) {
  const { consequence, waitsFor, faults, answerFaults, cautions, onExchangeLengths } = props
  const typed = (
    <>
      <Faults faults={faults} />
      {answerFaults.map(({ question, message }) => (
        <li className="field-fault" key={question}>
          {say("{field}: {message}", { field: capitalised(questionName(question)), message })}
        </li>
      ))}
      {cautions.length > 0 && (
        <li className="caution">
          {say("Caution before any drop, for the clinician: {cautions}", {
            cautions: sentence(cautions.join(", ")),
          })}
        </li>
      )}
    </>
  )
  if (!consequence) {
    return (
      <>
        <p className="soft">{waitsFor}</p>
        <ul className="check-list">{typed}</ul>
      </>
    )
  }
  const { checks, stillOwed, assessment } = consequence
  // What the card of missing entries names is not said twice.
  const isNamed = (measure: string) =>
    props.missing.some(({ kind, id }) => kind === "measure" && id === measure)
  const alsoOwed = stillOwed
    ? [
        ...stillOwed.unmeasured.filter(({ measure }) => !isNamed(measure)).map(({ name }) => name),
        ...stillOwed.notInForce,
      ]
    : []
  const doubts = checks.filter(isDoubt)
  const exchanged = doubts.some(({ kind }) => kind === "eyes-exchanged")
  const others = checks.filter((check) => !isDoubt(check))
  const isQuiet =
    checks.length + faults.length + answerFaults.length + cautions.length + assessment.concerns.length ===
      0 &&
    !consequence.exchangeTold &&
    !(stillOwed && alsoOwed.length > 0)
  if (isQuiet) return <p className="soft">{say("Nothing to look at again.")}</p>
  return (
    <ul className="check-list">
      {typed}
      {doubts.map(({ kind, path, why }) => (
        <li key={`${kind} ${path}`} className="caution">
          {say("Look again: {text}", { text: sentence(why) })}{" "}
          {kind === "eyes-exchanged" && (
            <button type="button" className="link" onClick={onExchangeLengths}>
              {say("exchange the lengths")}
            </button>
          )}
        </li>
      ))}
      {consequence.exchangeTold && !exchanged && <li>{say("The eyes do not look exchanged.")}</li>}
      {others.map(({ kind, path, why }) => (
        <li key={`${kind} ${path}`} className="soft">
          {sentence(why)}
        </li>
      ))}
      {stillOwed && alsoOwed.length > 0 && (
        <li>
          {capitalised(
            say("{examination} also needs: {needs}.", {
              examination: stillOwed.step,
              needs: alsoOwed.join(", "),
            }),
          )}
        </li>
      )}
      {assessment.concerns.map(({ kind, why }) => (
        <li key={`${kind} ${why}`} className="caution">
          {say("Concern for the clinician: {why}", { why: sentence(why) })}
        </li>
      ))}
    </ul>
  )
}

function Faults({ faults }: Pick<AsideProps, "faults">) {
  return faults.map(({ eye, field, message }) => {
    const told = { field: say(FIELD_WORDS[field]), message }
    const text =
      eye === "right" ? say("Right {field}: {message}", told) : say("Left {field}: {message}", told)
    return (
      <li className="field-fault" key={`${eye} ${field}`}>
        {capitalised(text)}
      </li>
    )
  })
}

function Result({
  reading,
  consequence,
}: {
  readonly reading: CourseReading
  readonly consequence: IfSaved
}) {
  const { growth, finding } = consequence.assessment
  const certainty = certaintyInWords(growth)
  return (
    <>
      <p className="middle">{growthInWords(growth.state)}</p>
      {growth.mmPerYear === null ? (
        <Reasons reasons={growth.reasons} />
      ) : (
        <p className="small">
          {growthSentence(growth, reading.course.child.sex)} {certainty && `${capitalised(certainty)}.`}
        </p>
      )}
      {growth.mmPerYear !== null && growth.state === "unclear" && <Reasons reasons={growth.reasons} />}
      {finding.state !== "no-treatment" && <p className="small">{treatmentInWords(finding)}</p>}
    </>
  )
}

function treatmentInWords({ state, likelihoodRatio }: Finding): string {
  const finding = findingInWords(state)
  if (likelihoodRatio === null) return say("Is it the treatment? {finding}.", { finding })
  const told = { finding, odds: odds(likelihoodRatio) }
  if (told.odds === odds(1)) return say("Is it the treatment? {finding}, even so far.", { finding })
  return likelihoodRatio >= 1
    ? say("Is it the treatment? {finding}, {odds} for it.", told)
    : say("Is it the treatment? {finding}, {odds} against it.", told)
}

function questionName(id: string): string {
  const name = questionOf(id)?.name
  return name === undefined ? id : say(name)
}

const FIELD_WORDS = {
  length: msg("length"),
  refraction: msg("refraction"),
  pupil: msg("pupil"),
  accommodation: msg("accommodation"),
  acuityFar: msg("far acuity"),
  acuityNear: msg("near acuity"),
  cornea: msg("cornea"),
  pupilDim: msg("pupil in dim light"),
  pressure: msg("pressure"),
} as const
