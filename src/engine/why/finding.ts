import { say } from "../say.js"
import { odds, percent } from "../words.js"
import { beliefInputs, lengthInputs, refractionInput, treatmentInputs } from "./course-inputs.js"
import type { AssessedCourse } from "./growth.js"
import { methodInput, modelParameters } from "./model-parameters.js"
import { type Why, whyOf } from "./why.js"

/** Why the treatment is, is not, or cannot yet be said to slow the growth; and how the chances were got. */
export function findingWhy({ course, assessment, evidence, settings, sourceOf }: AssessedCourse): Why {
  const { finding, beliefs, asOf } = assessment
  const { likelihoodRatio, upper, lower, reasons } = finding
  return whyOf(
    {
      title: say("Why this answer about the treatment?"),
      inputs: [
        ...treatmentInputs({ course }),
        ...lengthInputs({ course, asOf }),
        refractionInput({ course, asOf }),
        [say("Likelihood ratio"), ratioInWords(likelihoodRatio)],
        [say("Said to be slowed at"), say("{odds} or more for the treatment", { odds: odds(upper) })],
        [say("Said not to be slowed at"), say("{odds} or more against it", { odds: odds(lower) })],
        ...beliefInputs(beliefs),
        methodInput(evidence.growth),
      ],
      formula: [
        say(
          "Two accounts of the same measurements are compared: in one the treatment withholds what the trials report, in the other it withholds nothing. Each allows for the child's own pace, the irregularity of growth, the season and the noise of the instrument.",
        ),
        say(
          "The likelihood ratio says how many times likelier the measurements are under the first account than under the second (Wald's sequential test).",
        ),
        say(
          "The limits follow from the accepted error rates, settings of the practice: alpha {alpha} to call a treatment effective that does nothing, beta {beta} to call one useless that works. The upper limit is (1 - beta) / alpha, the lower beta / (1 - alpha).",
          { alpha: percent(settings.alpha), beta: percent(settings.beta) },
        ),
        say(
          "Between the limits nothing is claimed. A lean is only mentioned beyond 3 : 1 (Kass and Raftery 1995).",
        ),
        say(
          "The chances are computed from the same model: how often the ratio would pass a limit by each planned review, if the treatment works and if it does not.",
        ),
        say(
          "Once treatment has begun refraction is shown but does not count; under atropine above all, since the drug changes refraction more than length.",
        ),
        ...reasons,
      ],
      parameters: modelParameters({ course, asOf, parameters: evidence.growth }),
    },
    sourceOf,
  )
}

const ratioInWords = (ratio: number | null): string =>
  ratio === null
    ? say("none|ratio")
    : say("{odds} {side, select, for {for the treatment} other {against the treatment}}", {
        odds: odds(ratio),
        side: ratio >= 1 ? "for" : "against",
      })
