import { ageWords, dateWords, knownWords } from "../../chart/words.js"
import { completedMonths } from "../../engine/calendar.js"
import { EYES } from "../../engine/course.js"
import { GRADE_WORDS } from "../../engine/reference/grade-words.js"
import { listed, say } from "../../engine/say.js"
import { treatmentName } from "../../engine/treatment-name.js"
import { evidence } from "../../evidence/index.js"
import type { ChildView } from "../../server/contract/child.js"
import { PageHeading } from "../parts/page-heading.js"
import type { CourseReading } from "../reading.js"
import { populationInWords } from "../reference-words.js"
import { treatmentsAfter, treatmentsOn } from "../treatments-on.js"
import { WhyButton } from "../why/why-button.js"

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
  const told = { day: dateWords(child.born), age: ageWords({ born: child.born, on: today }) }
  const facts = [
    child.sex === "female" ? say("girl, born {day}, {age}", told) : say("boy, born {day}, {age}", told),
    treatmentFact(reading),
    ...(child.number ? [say("number {number}", { number: child.number })] : []),
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
          ? say("reference: {population}, grade {grade}, {words}", {
              population: populationInWords(reference),
              grade: reference.grade,
              words: knownWords(GRADE_WORDS[reference.grade]),
            })
          : isMeasured
            ? say("no reference for a position among peers")
            : say("no length to place among peers yet")}{" "}
        <WhyButton about={say("The position among peers")} question="position" reading={reading} />
        {course.child.ancestry === undefined || course.child.ancestry === "unstated"
          ? ` · ${say("ancestry not stated")}`
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
    return coming
      ? say("not treated yet, {treatment} from {day}", {
          treatment: treatmentName(coming),
          day: dateWords(coming.from),
        })
      : say("not treated")
  return listed(
    running.map((treatment) =>
      say("{treatment}, month {month}", {
        treatment: treatmentName(treatment),
        month: completedMonths({ from: treatment.from, to: today }),
      }),
    ),
  )
}
