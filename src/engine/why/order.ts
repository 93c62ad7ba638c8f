import type { CompoundingRequest } from "../compounding/compounding-order.js"
import { uspSolutionLimits, usualTransfers } from "../compounding/limits.js"
import { type NamedParameter, type SourceOf, type Why, whyOf } from "./why.js"

/** Why an order for drops has these steps, this interval and these limits. */
export function orderWhy(request: CompoundingRequest, sourceOf: SourceOf): Why {
  const {
    concentrationPercent,
    stockPercent,
    bottles,
    volumeMl,
    smallestVolumeMl,
    transferTolerance = usualTransfers.toleranceFraction,
    limits = uspSolutionLimits,
  } = request
  return whyOf(
    {
      title: "Why these steps?",
      inputs: [
        ["Strength ordered", `${concentrationPercent} % w/v`],
        ["Strength of the stock", `${stockPercent} % w/v`],
        ["Bottles", `${bottles} of ${volumeMl} mL`],
        [
          "Smallest volume measured",
          smallestVolumeMl === undefined
            ? `${usualTransfers.smallestVolumeMl} mL (${usualTransfers.source})`
            : `${smallestVolumeMl} mL`,
        ],
      ],
      formula: [
        "Strength times volume is the same before and after diluting (C1 V1 = C2 V2).",
        "Where one transfer would be smaller than the measuring device allows, an intermediate strength is made first.",
        "Every measured volume may be off by its tolerance; the errors are independent, each weighs with the diluent's share of its step, and they add as squares to the interval of the final strength.",
        "The check follows the milligrams that each step carries over, another way to the same strength.",
        `Limits: ${limits.lowPercentOfLabel} to ${limits.highPercentOfLabel} % of the label (evidence ${limits.source}).`,
      ],
      parameters: [
        setting({
          name: "smallestVolumeMl",
          value: usualTransfers.smallestVolumeMl,
          unit: "mL",
          note: "What a pharmacy measures at the least, where it sets nothing else.",
        }),
        setting({
          name: "toleranceFraction",
          value: transferTolerance,
          unit: "1",
          note: "95 % limit of the error of one measured volume, as a share of it.",
        }),
        setting({
          name: "readableMl",
          value: usualTransfers.readableMl,
          unit: "mL",
          note: "Volumes are given to this graduation.",
        }),
      ],
    },
    sourceOf,
  )
}

const setting = (of: Pick<NamedParameter, "name" | "value" | "unit" | "note">): NamedParameter => ({
  ...of,
  sd: null,
  source: [usualTransfers.source],
})
