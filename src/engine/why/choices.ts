import type { Evidence } from "../../evidence/types.js"
import type { Belief } from "../assessment.js"
import type { Choices } from "../choices/choices.js"
import { choicesTable } from "../choices/choices-table.js"
import { AUTHORISED_SOURCE, isHeldToRegulator } from "../choices/start-remarks.js"
import type { Course } from "../course.js"
import { say } from "../say.js"
import { fixed } from "../words.js"
import { beliefInputs, lengthInputs, treatmentInputs } from "./course-inputs.js"
import { effectParameter, growthParameters, methodInput } from "./model-parameters.js"
import { type SourceOf, type Why, type WhyInput, whyOf } from "./why.js"

/** Why the options have the figures they have. */
export function choicesWhy({
  course,
  choices,
  beliefs,
  evidence,
  sourceOf,
}: {
  readonly course: Course
  readonly choices: Choices
  /** What the assessment of the same day believes of the child's pace and treatments. */
  readonly beliefs: readonly Belief[]
  readonly evidence: Evidence
  readonly sourceOf: SourceOf
}): Why {
  const { asOf, options, untreatedNextYearMm, assumptions, refused } = choices
  const shown = options.flatMap(({ parts, name }) => (parts.length === 0 ? [] : [name]))
  const effects = [...new Set(options.flatMap(({ effect }) => effect ?? []))]
  return whyOf(
    {
      title: say("Why these figures?"),
      inputs: [
        ...lengthInputs({ course, asOf }),
        ...treatmentInputs({ course }),
        ...beliefInputs(beliefs),
        [say("Options"), shown.length === 0 ? say("none|options") : shown.join("; ")],
        ...(untreatedNextYearMm === null
          ? []
          : [
              [
                say("Growth expected in the next year without treatment"),
                say("{mm} mm", { mm: fixed(untreatedNextYearMm) }),
              ] as const,
            ]),
        ...withheldInputs(choices),
        methodInput(evidence.growth),
      ],
      formula: [
        say(
          "Every option starts from the same study of this child: the lengths, the own pace and what was learned of treatments already given.",
        ),
        say(
          "Under an option everything in use ends today and the option begins; going on leaves the record as it is. From then on the eye grows its natural growth times the pace times (1 - share withheld x share of nights).",
        ),
        say(
          "The share withheld is what this child's figures say of a treatment already given, otherwise what the trials report, with the doubt about the average and the spread between children.",
        ),
        say(
          "Growth withheld in the next year = pace x natural growth of that year x share withheld x share of nights; the interval holds the doubt about pace and share.",
        ),
        say(
          "Length at 18: the distribution of the length, wobble included; its middle and where 95 % of such children fall. The chance of 26 mm is the part of it beyond 26 mm, of the likelier eye.",
        ),
        say(
          "The bracket of a chance: what the chance would be if pace and share were known and lay at the ends of their 95 % interval.",
        ),
        say(
          "Cost: the plan of the coming months by the fee schedule; cost of each {tenth} mm: that sum divided by the growth withheld over the same months.",
          { tenth: fixed(0.1, 1) },
        ),
        say(
          "Unwanted effects are the rows that were read at exactly this strength, each beside its own comparison; rates of two trials cannot be compared.",
        ),
        ...assumptions,
        ...(refused === undefined ? [] : [refused]),
      ],
      parameters: [...effects.map(effectParameter), ...growthParameters(evidence.growth)],
      restsOn: [
        ...options.flatMap(({ unwanted }) => unwanted.flatMap(({ source }) => source ?? [])),
        ...(options.some(isHeldToRegulator) ? [AUTHORISED_SOURCE] : []),
      ],
    },
    sourceOf,
  )
}

function withheldInputs(choices: Choices): readonly WhyInput[] {
  const row = choicesTable(choices).find(({ id }) => id === "withheld")
  return choices.options.flatMap(({ name, kind }, index) =>
    kind === "nothing"
      ? []
      : [
          [
            say("Withheld in the next year by {treatment}", { treatment: name }),
            (row?.cells[index] ?? []).join("; "),
          ] as const,
        ],
  )
}
