import type { Study } from "../growth/study.js"
import { say } from "../say.js"
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
    say(
      "treated until 18: the same treatment to that age; no trial lasted so long, and effects tend to fade",
    ),
    say(
      "treated as planned: to the stop that the protocol plans for this course, then nothing; faster growth after a stop is not counted in",
    ),
    coverage === null
      ? say(
          "drops every night, spectacles and lenses as in the trials; no bottle is recorded that could tell",
        )
      : say(
          "drops on {share} of the nights, as covered by bottles so far; spectacles and lenses as in the trials",
          { share: percent(coverage) },
        ),
    say(
      "withheld in the next year: growth that the treatment takes away, at this child's own pace; a negative figure would be growth added",
    ),
    say(
      "what this child's own figures say counts for a treatment that the child has had; otherwise what the trials report",
    ),
    say("two treatments together only where a trial of both was read; effects are never added up"),
    ...(child.myopia === "unknown"
      ? [say("no refraction is recorded: the child is taken to be myopic")]
      : []),
    say(
      "beyond {years} years the natural curve is run on from younger ages; the doubt about the average curve is not in the intervals",
      { years: oldestFittedAgeYears.value },
    ),
  ]
}
