import { assess } from "../../engine/assess.js"
import type { Assessment, Check, Duty } from "../../engine/assessment.js"
import type { Visit } from "../../engine/course.js"
import { duties } from "../../engine/protocol/duties.js"
import { sourceOf } from "../../engine/protocol/duty-source.js"
import type { Unmeasured } from "../../engine/protocol/measured.js"
import { evidence } from "../../evidence/index.js"
import { type CourseReading, visitIndex, withVisit } from "../reading.js"

/** What the page would say if the draft were saved as it stands. */
export interface IfSaved {
  readonly assessment: Assessment
  /** Checks that speak of this visit, with the path inside it, such as "right.refraction"; "" for the whole of it. */
  readonly checks: readonly Check[]
  /** Whether an exchange of the eyes could be told at all: both lengths, and two earlier pairs to compare with. */
  readonly exchangeTold: boolean
  /** What the examination owed now would still need. */
  readonly stillOwed: {
    readonly step: string
    readonly unmeasured: readonly Unmeasured[]
    readonly notInForce: readonly string[]
  } | null
}

/** `without` is the date of the visit being corrected, which the draft replaces. */
export function ifSaved(reading: CourseReading, visit: Visit, without?: string): IfSaved {
  const others = reading.course.visits.filter((other) => other.date !== without)
  const course = withVisit({ ...reading.course, visits: others }, visit)
  const asOf = reading.today
  const assessment = assess({ course, asOf, evidence, settings: reading.settings })
  const place = `visits[${visitIndex(course, visit.date)}]`
  const checks = assessment.checks.flatMap((check) => {
    if (check.path !== place && !check.path.startsWith(`${place}.`)) return []
    return [{ ...check, path: check.path.slice(place.length + 1) }]
  })
  return {
    assessment,
    checks,
    exchangeTold: hasBothLengths(visit) && others.filter(hasBothLengths).length >= 2,
    stillOwed: owed(reading.duties, duties({ course, protocol: reading.protocol, today: asOf })),
  }
}

const hasBothLengths = (visit: Visit): boolean =>
  visit.right?.axialLength !== undefined && visit.left?.axialLength !== undefined

/** The examination that can be done now, and what it lacks once the draft is in; null when nothing is owed or lacking. */
function owed(before: readonly Duty[], after: readonly Duty[]): IfSaved["stillOwed"] {
  const now = before.find(
    ({ kind, state }) => kind === "examination" && (state === "open" || state === "overdue"),
  )
  const then =
    now &&
    after.find(
      (duty) =>
        duty.kind === now.kind &&
        duty.opens === now.opens &&
        sourceOf(duty).step?.id === sourceOf(now).step?.id,
    )
  if (!then || then.state === "done" || then.needs.length === 0) return null
  const { unmeasured = [], notInForce = [] } = sourceOf(then)
  return { step: then.step, unmeasured, notInForce }
}
