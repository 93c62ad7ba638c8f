import type { Evidence } from "../../evidence/types.js"
import { assess } from "../assess.js"
import { dayNumber } from "../calendar.js"
import type { CalendarDate, Course } from "../course.js"
import { demoMeasured } from "./demo-measured.js"
import { demoNamer } from "./demo-names.js"
import { demoPlan } from "./demo-plan.js"
import { withProgramme } from "./demo-programme.js"
import { type Scenario, scenarios } from "./demo-scenarios.js"
import { showsItsStory } from "./demo-stories.js"
import { randomFrom } from "./random.js"

/** An invented child of the invented practice. `course.child.id` names its story and number, e.g. "slowed-1". */
export interface DemoChild {
  readonly name: string
  readonly number: string
  readonly course: Course
}

/** Chance may hide a story (a treatment that works can look as if it did not), so another child is drawn then. */
const MOST_DRAWS = 60

/**
 * The children of an invented practice, as they would stand in its records today. Invented throughout: measurements
 * are drawn from the growth model over the plans in `demo-scenarios.ts`, and a child is drawn again until it
 * shows its story, so nothing may be concluded from them as a group.
 *
 * The same day and seed give the same children. Nothing that has happened is dated after `today`.
 *
 * @example
 * demoCourses({ today: "2026-11-25", seed: 7, evidence })[0]?.number // => "LW-0001"
 */
export function demoCourses({
  today,
  seed,
  evidence,
}: {
  readonly today: CalendarDate
  readonly seed: number
  readonly evidence: Evidence
}): readonly DemoChild[] {
  const name = demoNamer()
  const told = new Map<string, number>()
  const children = scenarios.map((scenario, index) => {
    const own = seed * 1_000_003 + index * 1009
    const course = withProgramme(demoCourse({ scenario, today, seed: own, evidence }), {
      story: scenario.story,
      index,
      today,
      random: randomFrom(own + MOST_DRAWS + 1),
    })
    const count = (told.get(scenario.story) ?? 0) + 1
    told.set(scenario.story, count)
    const child = { ...course.child, id: `${scenario.story}-${count}` }
    const { sex } = child
    return { name: name({ ancestry: scenario.ancestry, sex }), course: { ...course, child } }
  })
  // Numbers are given in the order in which children first came, as a practice does.
  return children
    .toSorted((a, b) => dayNumber(firstDay(a.course)) - dayNumber(firstDay(b.course)))
    .map((child, index) => ({ ...child, number: `LW-${String(index + 1).padStart(4, "0")}` }))
}

function demoCourse({
  scenario,
  today,
  seed,
  evidence,
}: {
  scenario: Scenario
  today: CalendarDate
  seed: number
  evidence: Evidence
}): Course {
  const plan = demoPlan({ scenario, today, random: randomFrom(seed) })
  let course = plan
  for (let draw = 1; draw <= MOST_DRAWS; draw++) {
    course = demoMeasured({ plan, scenario, evidence, random: randomFrom(seed + draw) })
    if (showsItsStory(scenario.story, assess({ course, asOf: today, evidence }))) break
  }
  return course
}

const firstDay = ({ visits, child }: Course): CalendarDate =>
  visits.find((visit) => visit.from === undefined)?.date ?? child.born
