import { ageWords, dateWords } from "../../chart/words.js"
import { completedMonths } from "../../engine/calendar.js"
import { EYES } from "../../engine/course.js"
import { GRADE_WORDS } from "../../engine/reference/grade-words.js"
import { treatmentName } from "../../engine/treatment-name.js"
import { evidence } from "../../evidence/index.js"
import type { ChildView } from "../../server/contract/child.js"
import { PageHeading } from "../parts/page-heading.js"
import type { CourseReading } from "../reading.js"
import { treatmentsAfter, treatmentsOn } from "../treatments-on.js"
import { WhyButton } from "../why/why-button.js"
import { girlOrBoy } from "../words.js"

/** Who it is: name, girl or boy, age, treatment and its month, and the reference used with its grade. */
export function ChildHeading({
  view,
  reading,
}: {
  readonly view: ChildView
  readonly reading: CourseReading
}) {
  const { child } = view
  const { course, today, assessment } = reading
  const facts = [
    `${girlOrBoy(child.sex)}, born ${dateWords(child.born)}, ${ageWords({ born: child.born, on: today })}`,
    treatmentFact(reading),
    ...(child.number ? [`number ${child.number}`] : []),
  ]
  const position = EYES.map((eye) => assessment.eyes[eye].position).find((p) => p.reference !== undefined)
  const isMeasured = EYES.some((eye) => course.visits.some((visit) => visit[eye]?.axialLength))
  const reference = evidence.references.find(({ id }) => id === position?.reference)
  return (
    <div className="who">
      <PageHeading title={child.name}>
        <bdi>{child.name}</bdi>
      </PageHeading>
      <p className="soft">
        {facts.join(" · ")} ·{" "}
        {reference
          ? `reference: ${reference.population}, grade ${reference.grade}, ${GRADE_WORDS[reference.grade]}`
          : isMeasured
            ? "no reference for a position among peers"
            : "no length to place among peers yet"}{" "}
        <WhyButton about="The position among peers" question="position" reading={reading} />
        {course.child.ancestry === undefined || course.child.ancestry === "unstated"
          ? " · ancestry not stated"
          : ""}
      </p>
    </div>
  )
}

/** "atropine 0.05 %, month 20", counting begun months; "not treated" before and between treatments, with what is decided on. */
function treatmentFact({ course, today }: CourseReading): string {
  const running = treatmentsOn(course, today)
  const [coming] = treatmentsAfter(course, today)
  if (running.length === 0)
    return coming ? `not treated yet, ${treatmentName(coming)} from ${dateWords(coming.from)}` : "not treated"
  return running
    .map((treatment) => {
      const month = completedMonths({ from: treatment.from, to: today })
      return `${treatmentName(treatment)}, month ${month}`
    })
    .join(" and ")
}
