import type { Study } from "../growth/study.js"
import { percent } from "../words.js"

/** What the figures of the options take for granted: whoever decides should be able to say where it will not hold. */
export function assumptionsOf({
  child,
  coverage,
}: {
  readonly child: Study
  /** Share of nights covered so far; null where no bottle is recorded. */
  readonly coverage: number | null
}): readonly string[] {
  const { oldestFittedAgeYears } = child.evidence.growth.values
  return [
    "treated until 18: the same treatment to that age; no trial lasted so long, and effects tend to fade",
    "treated as planned: to the stop that the protocol plans for this course, then nothing; faster growth after a stop is not counted in",
    coverage === null
      ? "drops every night, spectacles and lenses as in the trials; no bottle is recorded that could tell"
      : `drops on ${percent(coverage)} of the nights, as covered by bottles so far; spectacles and lenses as in the trials`,
    "withheld in the next year: growth that the treatment takes away, at this child's own pace; a negative figure would be growth added",
    "what this child's own figures say counts for a treatment that the child has had; otherwise what the trials report",
    "two treatments together only where a trial of both was read; effects are never added up",
    ...(child.myopia === "unknown" ? ["no refraction is recorded: the child is taken to be myopic"] : []),
    `beyond ${oldestFittedAgeYears.value} years the natural curve is run on from younger ages; the doubt about the average curve is not in the intervals`,
  ]
}
