import { dropsPerMl, dropVolume } from "../compounding/drop-volume.js"
import { uspSolutionLimits, usualTransfers } from "../compounding/limits.js"
import { type CompoundingRequest, devicesOf } from "../compounding/order-request.js"
import { inDigits } from "../words.js"
import { type NamedParameter, type SourceOf, type Why, whyOf } from "./why.js"

/** Why an order for drops has these steps, this interval, these limits and, where nights are asked for, so many bottles. */
export function orderWhy(
  request: CompoundingRequest & { readonly nights?: number | undefined },
  sourceOf: SourceOf,
): Why {
  const { concentrationPercent, stockPercent, bottles, volumeMl, stockTolerance, nights } = request
  const limits = request.limits ?? uspSolutionLimits
  return whyOf(
    {
      title: "Why these steps?",
      inputs: [
        ["Strength ordered", `${concentrationPercent} % w/v`],
        ["Strength of the stock", `${stockPercent} % w/v`],
        ["Bottles", `${bottles} of ${volumeMl} mL`],
        ["Smallest volume measured", smallestVolume(request)],
        [
          "Tolerance of the stock",
          stockTolerance === undefined ? "not stated" : `${inDigits(100 * stockTolerance)} % of its label`,
        ],
        ...(nights === undefined ? [] : [["Nights to be covered", String(nights)] as const]),
      ],
      formula: [
        "Strength times volume is the same before and after diluting (C1 V1 = C2 V2).",
        "Where one transfer would be smaller than the measuring device allows, an intermediate strength is made first.",
        "Every measured volume may be off by the tolerance of its device; the errors are independent, each weighs with the diluent's share of its step, and with the stock's own they add as squares to the interval of the final strength.",
        "The check follows the milligrams that each step carries over, another way to the same strength.",
        `Limits: ${limits.lowPercentOfLabel} to ${limits.highPercentOfLabel} % of the label (evidence ${limits.source}).`,
        ...(nights === undefined
          ? []
          : [
              "A bottle serves until its drops are used up or its days after opening are over, whichever comes first; the bottles are the nights divided by that, rounded up.",
            ]),
      ],
      parameters: [...devicesOf(request).flatMap(measuring), ...(nights === undefined ? [] : DROPS)],
      restsOn: nights === undefined ? [] : dropVolume.sources,
    },
    sourceOf,
  )
}

function smallestVolume({ devices, smallestVolumeMl }: CompoundingRequest): string {
  if (devices && devices.length > 0) return "by device, below"
  return smallestVolumeMl === undefined
    ? `${usualTransfers.smallestVolumeMl} mL (${usualTransfers.source})`
    : `${smallestVolumeMl} mL`
}

function measuring(device: ReturnType<typeof devicesOf>[number]): readonly NamedParameter[] {
  const { name, smallestVolumeMl, graduationMl, toleranceFraction } = device
  const of = name === undefined ? "" : ` Device: ${name}.`
  return [
    setting({
      name: "smallestVolumeMl",
      value: smallestVolumeMl,
      unit: "mL",
      note: `What is measured at the least.${of}`,
    }),
    setting({
      name: "toleranceFraction",
      value: toleranceFraction,
      unit: "1",
      note: `95 % limit of the error of one measured volume, as a share of it.${of}`,
    }),
    setting({
      name: "graduationMl",
      value: graduationMl,
      unit: "mL",
      note: `Volumes are given to this graduation.${of}`,
    }),
  ]
}

/** A pharmacy's own, or common practice where it sets nothing. */
const setting = (of: Pick<NamedParameter, "name" | "value" | "unit" | "note">): NamedParameter => ({
  ...of,
  sd: null,
  source: [usualTransfers.source],
})

const DROPS: readonly NamedParameter[] = [
  [
    "dropsPerMlLow",
    dropsPerMl.low,
    dropVolume.sources[0],
    "The largest drop of 19 bottles, 63.4 microlitres.",
  ] as const,
  [
    "dropsPerMlHigh",
    dropsPerMl.high,
    dropVolume.sources[1],
    "The smallest drops of a second study.",
  ] as const,
].map(([name, value, source, note]) => ({
  name,
  value,
  unit: "1/mL",
  sd: null,
  source: [source],
  note: `${note} Other eye drops, read in the abstract; none was compounded atropine.`,
}))
