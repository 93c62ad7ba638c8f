import { EXAMINATION_MEASURES, type ExaminationMeasure } from "../../engine/protocol/examination-measures.js"
import type { ExaminationPlan } from "../../engine/protocol/examination-plan.js"
import type { RoomPlace } from "../../engine/protocol/question.js"
import { QUESTIONS } from "../../engine/protocol/questions.js"
import type { RowProps } from "./eye-row.js"
import { CycloplegiaRow, MeasureRow } from "./measure-row.js"
import { MoreFold } from "./more-fold.js"
import { QuestionGroups } from "./question-group.js"

/** The room in the stretches that a person walks through. */
const SECTIONS: readonly (readonly [title: string, places: readonly RoomPlace[]])[] = [
  ["On arrival", ["arrival"]],
  [
    "Before any drops",
    ["distance-acuity", "near-acuity", "pupil", "accommodation", "length", "cornea", "pressure"],
  ],
  ["Cycloplegia and refraction", ["cycloplegia", "refraction"]],
  ["Fundus", ["fundus"]],
  ["Before they leave", ["advice"]],
]

export interface ExaminationTableProps extends RowProps {
  readonly plan: ExaminationPlan
  readonly urgent: string | undefined
}

/** What the examination owes, in the order of the room; the rest under a fold. */
export function ExaminationTable(props: ExaminationTableProps) {
  const owed = new Set(
    props.plan.items.map((item) => (item.kind === "measure" ? item.measure : item.question.id)),
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
    const measures = measuresShown(props.isShown).filter(({ place }) => places.includes(place))
    if (questions.length + measures.length === 0) return null
    const hasEyes = measures.some(({ measure }) => measure !== "symptoms")
    return (
      <section key={title} className="examination-section" aria-label={title}>
        <div className={hasEyes ? "examination-head" : undefined}>
          <h2>{title}</h2>
          {hasEyes && <b aria-hidden="true">Right</b>}
          {hasEyes && <b aria-hidden="true">Left</b>}
        </div>
        {places.map((place) => {
          const here = measures.filter((row) => row.place === place)
          const isRefracted = place === "cycloplegia" && measures.some((row) => row.place === "refraction")
          return (
            <div key={place} className="place">
              {isRefracted && <CycloplegiaRow {...props} />}
              <QuestionGroups {...props} questions={questions.filter((row) => row.place === place)} />
              {here.map(({ measure }) => (
                <MeasureRow key={measure} {...props} measure={measure} />
              ))}
            </div>
          )
        })}
      </section>
    )
  })
}

/** One row for both refractions: the one that is owed, else the plain one. */
function measuresShown(isShown: (id: string) => boolean) {
  const rows = EXAMINATION_MEASURES.filter(({ measure }) => isShown(measure))
  const refractions = rows.filter(({ place }) => place === "refraction")
  const other: ExaminationMeasure = "refraction"
  if (refractions.length === 2) return rows.filter(({ measure }) => measure !== other)
  return rows
}
