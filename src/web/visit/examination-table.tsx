import { EXAMINATION_MEASURES, type ExaminationMeasure } from "../../engine/protocol/examination-measures.js"
import type { ExaminationPlan } from "../../engine/protocol/examination-plan.js"
import type { RoomPlace } from "../../engine/protocol/question.js"
import { QUESTIONS } from "../../engine/protocol/questions.js"
import { msg, say } from "../../engine/say.js"
import type { RowProps } from "./eye-row.js"
import { CycloplegiaRow, MeasureRow } from "./measure-row.js"
import { MoreFold } from "./more-fold.js"
import { QuestionGroups } from "./question-group.js"

/** The room in the stretches that a person walks through. */
const SECTIONS: readonly (readonly [title: string, places: readonly RoomPlace[]])[] = [
  [msg("On arrival"), ["arrival"]],
  [
    msg("Before any drops"),
    ["distance-acuity", "near-acuity", "pupil", "accommodation", "length", "cornea", "pressure"],
  ],
  [msg("Cycloplegia and refraction"), ["cycloplegia", "refraction"]],
  [msg("Fundus"), ["fundus"]],
  [msg("Before they leave"), ["advice"]],
]

export interface ExaminationTableProps extends RowProps {
  readonly plan: ExaminationPlan
  readonly urgent: string | undefined
}

/** What the examination owes, in the order of the room; the rest under a fold. */
export function ExaminationTable(props: ExaminationTableProps) {
  const owed = new Set(
    props.plan.items.flatMap((item) => (item.kind === "measure" ? rowsOf(item.measure) : item.question.id)),
  )
  return (
    <div className="examination">
      <Sections {...props} isShown={(id) => owed.has(id)} />
      <MoreFold {...props} owed={owed}>
        <Sections {...props} isShown={(id) => !owed.has(id)} />
      </MoreFold>
    </div>
  )
}

function Sections(props: ExaminationTableProps & { readonly isShown: (id: string) => boolean }) {
  return SECTIONS.map(([title, places]) => {
    const questions = QUESTIONS.filter(({ id, place }) => places.includes(place) && props.isShown(id))
    const measures = EXAMINATION_MEASURES.filter(
      ({ measure, place }) => measure !== "refraction" && places.includes(place) && props.isShown(measure),
    )
    if (questions.length + measures.length === 0) return null
    const hasEyes = measures.some(({ measure }) => measure !== "symptoms")
    return (
      <div key={title} className="examination-section">
        <div className={hasEyes ? "examination-head" : undefined}>
          <h2>{say(title)}</h2>
          {hasEyes && <b aria-hidden="true">{say("Right")}</b>}
          {hasEyes && <b aria-hidden="true">{say("Left")}</b>}
        </div>
        {places.map((place) => {
          const here = measures.filter((row) => row.place === place)
          const isRefracted = place === "cycloplegia" && measures.some((row) => row.place === "refraction")
          return (
            <div key={place} className="place">
              {isRefracted && <CycloplegiaRow {...props} />}
              <QuestionGroups
                {...props}
                isHeaded={place === "arrival" || place === "advice"}
                questions={questions.filter((row) => row.place === place)}
              />
              {here.map(({ measure }) => (
                <MeasureRow key={measure} {...props} measure={measure} />
              ))}
            </div>
          )
        })}
      </div>
    )
  })
}

/** With cycloplegia or without, a refraction is one row of the form. */
const rowsOf = (measure: ExaminationMeasure): ExaminationMeasure =>
  measure === "refraction" ? "cycloplegic-refraction" : measure
