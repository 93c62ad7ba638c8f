import { dropsPerMl, dropVolume } from "../compounding/drop-volume.js"
import { uspSolutionLimits, usualTransfers } from "../compounding/limits.js"
import { type CompoundingRequest, devicesOf } from "../compounding/order-request.js"
import { msg, say } from "../say.js"
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
      title: say("Why these steps?"),
      inputs: [
        [say("Strength ordered"), say("{percent} % w/v", { percent: concentrationPercent })],
        [say("Strength of the stock"), say("{percent} % w/v", { percent: stockPercent })],
        [say("Bottles"), say("{bottles} of {volume} mL", { bottles, volume: volumeMl })],
        [say("Smallest volume measured"), smallestVolume(request)],
        [
          say("Tolerance of the stock"),
          stockTolerance === undefined
            ? say("not stated|tolerance")
            : say("{percent} % of its label", { percent: inDigits(100 * stockTolerance) }),
        ],
        ...(nights === undefined ? [] : [[say("Nights to be covered"), String(nights)] as const]),
      ],
      formula: [
        say("Strength times volume is the same before and after diluting (C1 V1 = C2 V2)."),
        say(
          "Where one transfer would be smaller than the measuring device allows, an intermediate strength is made first.",
        ),
        say(
          "Every measured volume may be off by the tolerance of its device; the errors are independent, each weighs with the diluent's share of its step, and with the stock's own they add as squares to the interval of the final strength.",
        ),
        say(
          "The check follows the milligrams that each step carries over, another way to the same strength.",
        ),
        say("Limits: {low} to {high} % of the label (evidence {source}).", {
          low: limits.lowPercentOfLabel,
          high: limits.highPercentOfLabel,
          source: limits.source,
        }),
        ...(nights === undefined
          ? []
          : [
              say(
                "A bottle serves until its drops are used up or its days after opening are over, whichever comes first; the bottles are the nights divided by that, rounded up.",
              ),
            ]),
      ],
      parameters: [...devicesOf(request).flatMap(measuring), ...(nights === undefined ? [] : drops())],
      restsOn: nights === undefined ? [] : dropVolume.sources,
    },
    sourceOf,
  )
}

function smallestVolume({ devices, smallestVolumeMl }: CompoundingRequest): string {
  if (devices && devices.length > 0) return say("by device, below")
  return smallestVolumeMl === undefined
    ? say("{volume} mL ({source})", {
        volume: usualTransfers.smallestVolumeMl,
        source: say(usualTransfers.source),
      })
    : say("{volume} mL", { volume: smallestVolumeMl })
}

function measuring(device: ReturnType<typeof devicesOf>[number]): readonly NamedParameter[] {
  const { name, smallestVolumeMl, graduationMl, toleranceFraction } = device
  const noted = (note: string): string =>
    name === undefined ? say(note) : say("{note} Device: {name}.", { note: say(note), name })
  return [
    setting({
      name: "smallestVolumeMl",
      value: smallestVolumeMl,
      unit: "mL",
      note: noted(msg("What is measured at the least.")),
    }),
    setting({
      name: "toleranceFraction",
      value: toleranceFraction,
      unit: "1",
      note: noted(msg("95 % limit of the error of one measured volume, as a share of it.")),
    }),
    setting({
      name: "graduationMl",
      value: graduationMl,
      unit: "mL",
      note: noted(msg("Volumes are given to this graduation.")),
    }),
  ]
}

/** A pharmacy's own, or common practice where it sets nothing. */
const setting = (of: Pick<NamedParameter, "name" | "value" | "unit" | "note">): NamedParameter => ({
  ...of,
  sd: null,
  source: [say(usualTransfers.source)],
})

const drops = (): readonly NamedParameter[] =>
  [
    [
      "dropsPerMlLow",
      dropsPerMl.low,
      dropVolume.sources[0],
      msg("The largest drop of 19 bottles, 63.4 microlitres."),
    ] as const,
    [
      "dropsPerMlHigh",
      dropsPerMl.high,
      dropVolume.sources[1],
      msg("The smallest drops of a second study."),
    ] as const,
  ].map(([name, value, source, note]) => ({
    name,
    value,
    unit: "1/mL",
    sd: null,
    source: [source],
    note: say("{note} Other eye drops, read in the abstract; none was compounded atropine.", {
      note: say(note),
    }),
  }))
