import type { TreatmentChoice } from "../../engine/course.js"
import { listed, say } from "../../engine/say.js"
import { treatmentName } from "../../engine/treatment-name.js"
import { POSSIBLE_TREATMENTS } from "../child/possible-treatment.js"
import { capitalised } from "../format.js"
import type { CourseReading } from "../reading.js"
import { treatmentsOn } from "../treatments-on.js"

export interface PlanOption {
  readonly label: string
  /** As `costPlan` takes it: absent for the course as it is recorded. */
  readonly treatment: TreatmentChoice | null | undefined
}

/** What a plan can be made for: the course as it is, observation, and every treatment that trials tell something of. */
export function planOptions({
  course,
  today,
}: Pick<CourseReading, "course" | "today">): readonly PlanOption[] {
  const running = treatmentsOn(course, today).map(treatmentName)
  const asNow = {
    label: say("As now: {plan}", {
      plan: running.length > 0 ? listed(running) : say("observation without treatment"),
    }),
    treatment: undefined,
  }
  const observation = { label: capitalised(say("observation without treatment")), treatment: null }
  const others = POSSIBLE_TREATMENTS.map((treatment) => ({
    label: capitalised(treatmentName(treatment)),
    treatment,
  }))
  if (running.length === 0) return [asNow, ...others]
  return [
    asNow,
    observation,
    ...others.filter(({ treatment }) => !isAllOf(running, treatmentName(treatment))),
  ]
}

const isAllOf = (running: readonly string[], name: string) => running.length === 1 && running[0] === name
