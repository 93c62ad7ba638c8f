import type { CalendarDate, Course } from "../course.js"
import { isInUse } from "../protocol/treatment-course.js"
import type { Option } from "./option-list.js"

/** The course if an option were taken up on a day: what is in use ends then, and what had been planned falls away. */
export function courseUnder(
  { kind, parts }: Pick<Option, "kind" | "parts">,
  { course, asOf }: { readonly course: Course; readonly asOf: CalendarDate },
): Course {
  if (kind === "as-now") return course
  const past = (course.treatments ?? [])
    .filter(({ from }) => from < asOf)
    .map((one) => (isInUse(one, asOf) ? { ...one, to: asOf } : one))
  return { ...course, treatments: [...past, ...parts.map((part) => ({ ...part, from: asOf }))] }
}
