import { isDoubt } from "../child/checks.js"
import { Reasons } from "../child/growth-card.js"
import { capitalised, odds, sentence } from "../format.js"
import type { CourseReading } from "../reading.js"
import { certaintyInWords, findingInWords, growthInWords, growthSentence } from "../words.js"
import type { DraftFault } from "./examination.js"
import type { IfSaved } from "./if-saved.js"

interface AsideProps {
  readonly reading: CourseReading
  /** Null while there is nothing to say. */
  readonly consequence: IfSaved | null
  /** Then, what it waits for. */
  readonly waitsFor: string
  readonly faults: readonly DraftFault[]
  readonly saving: boolean
  readonly onExchangeLengths: () => void
  readonly onDiscard: () => void
}

/** Checks of what is typed, what the page would say if it were saved, and the way to save it. */
export function VisitAside({
  reading,
  consequence,
  waitsFor,
  faults,
  saving,
  onExchangeLengths,
  onDiscard,
}: AsideProps) {
  return (
    <aside className="aside visit-aside" aria-label="Checks and result">
      <section className="card answer" aria-labelledby="checks-title">
        <h2 id="checks-title">Checks</h2>
        <Checks
          consequence={consequence}
          waitsFor={waitsFor}
          faults={faults}
          onExchangeLengths={onExchangeLengths}
        />
      </section>
      <section className="card answer" aria-labelledby="saved-title">
        <h2 id="saved-title">If saved now</h2>
        <div aria-live="polite">
          {consequence ? (
            <Result reading={reading} consequence={consequence} />
          ) : (
            <p className="soft">{waitsFor}</p>
          )}
        </div>
        <div className="form-actions">
          {/* Pressing it leaves the focus where it is: what a left field has to say would move the button away
              from under the pointer before the click is done. */}
          <button
            type="submit"
            className="primary"
            disabled={saving}
            onMouseDown={(event) => event.preventDefault()}
          >
            Save visit
          </button>
          <button type="button" onClick={onDiscard}>
            Discard
          </button>
        </div>
        <p className="soft small">Kept on this computer until saved.</p>
      </section>
    </aside>
  )
}

function Checks({
  consequence,
  waitsFor,
  faults,
  onExchangeLengths,
}: Pick<AsideProps, "consequence" | "waitsFor" | "faults" | "onExchangeLengths">) {
  if (!consequence) {
    return (
      <>
        <p className="soft">{waitsFor}</p>
        <ul className="check-list">
          <Faults faults={faults} />
        </ul>
      </>
    )
  }
  const { checks, stillOwed, assessment } = consequence
  const doubts = checks.filter(isDoubt)
  const exchanged = doubts.some(({ kind }) => kind === "eyes-exchanged")
  const others = checks.filter((check) => !isDoubt(check))
  return (
    <ul className="check-list">
      <Faults faults={faults} />
      {doubts.map(({ kind, path, why }) => (
        <li key={`${kind} ${path}`} className="caution">
          Look again: {sentence(why)}{" "}
          {kind === "eyes-exchanged" && (
            <button type="button" className="link" onClick={onExchangeLengths}>
              exchange the lengths
            </button>
          )}
        </li>
      ))}
      {consequence.exchangeTold && !exchanged && <li>The eyes do not look exchanged.</li>}
      {others.map(({ kind, path, why }) => (
        <li key={`${kind} ${path}`} className="soft">
          {sentence(why)}
        </li>
      ))}
      {stillOwed && (
        <li>
          {capitalised(stillOwed.step)} would still need: {stillOwed.needs.join(", ")}.
        </li>
      )}
      {assessment.concerns.map(({ kind, why }) => (
        <li key={`${kind} ${why}`} className="caution">
          Concern for the clinician: {sentence(why)}
        </li>
      ))}
    </ul>
  )
}

function Faults({ faults }: Pick<AsideProps, "faults">) {
  return faults.map(({ eye, field, message }) => (
    <li className="field-fault" key={`${eye} ${field}`}>
      {capitalised(eye)} {FIELD_WORDS[field]}: {message}
    </li>
  ))
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
      {finding.state !== "no-treatment" && (
        <p className="small">
          Is it the treatment? {findingInWords(finding.state)}
          {finding.likelihoodRatio === null ? "." : `, ${side(finding.likelihoodRatio)}.`}
        </p>
      )}
    </>
  )
}

function side(likelihoodRatio: number): string {
  const figure = odds(likelihoodRatio)
  if (figure === "1 : 1") return "even so far"
  return `${figure} ${likelihoodRatio >= 1 ? "for it" : "against it"}`
}

const FIELD_WORDS = {
  length: "length",
  refraction: "refraction",
  pupil: "pupil",
  accommodation: "accommodation",
  acuityFar: "far acuity",
  acuityNear: "near acuity",
  cornea: "cornea",
  pupilDim: "pupil in dim light",
} as const
