import { compoundingOrder } from "../../engine/compounding/compounding-order.js"
import { uspSolutionLimits, usualTransfers } from "../../engine/compounding/limits.js"
import type { Problem } from "../../engine/problem.js"
import type { ExitCode, Io } from "../io.js"
import { toldJson, toldProblems } from "../told.js"
import { whyText, withSources } from "../why.js"
import { counted, inDigits, paragraph, section } from "../words.js"

export interface OrderArguments {
  readonly concentration: number
  readonly stock: number
  readonly bottles: number
  readonly volumeMl: number
  readonly smallestVolumeMl?: number | undefined
  readonly json?: boolean | undefined
  readonly why?: boolean | undefined
}

/** How a strength is made from stock, line by line, for a pharmacist to check. */
export async function run(args: OrderArguments, io: Io): Promise<ExitCode> {
  const { json = false } = args
  const order = compoundingOrder({
    concentrationPercent: args.concentration,
    stockPercent: args.stock,
    bottles: args.bottles,
    volumeMl: args.volumeMl,
    smallestVolumeMl: args.smallestVolumeMl,
  })
  if (order.kind === "refused") {
    return toldProblems(order.problems.map(asOption), { io, json })
  }
  const why = args.why ? await orderWhy(args) : undefined
  if (json) return toldJson({ ...order, ...(why && { why }) }, io)
  const { steps, finalPercent, low95Percent, high95Percent, withinLimits, limitsPercent } = order
  io.out(
    paragraph(
      `${counted(args.bottles, "bottle")} of ${inDigits(args.volumeMl)} mL atropine ${inDigits(args.concentration)} % from stock of ${inDigits(args.stock)} %.`,
      0,
    ),
  )
  io.out("\n")
  steps.forEach(({ takeMl, of, addDiluentMl, givesPercent }, index) => {
    io.out(
      paragraph(
        `${index + 1}. Take ${inDigits(takeMl)} mL of ${of}, add ${inDigits(addDiluentMl)} mL of diluent: this gives ${inDigits(givesPercent)} %.`,
      ),
    )
  })
  io.out("\n")
  const within = withinLimits ? "within" : "NOT within"
  io.out(
    paragraph(
      `Final strength ${inDigits(finalPercent)} % (95 % between ${inDigits(low95Percent)} and ${inDigits(high95Percent)} %), ${within} the limits ${inDigits(limitsPercent.low)} to ${inDigits(limitsPercent.high)} %.`,
      0,
    ),
  )
  io.out(paragraph(`Worked backwards from the milligrams: ${inDigits(order.checkPercent)} %.`, 0))
  io.out(paragraph(`Each bottle holds ${inDigits(order.mgPerBottle)} mg of atropine sulfate.`, 0))
  io.out(`\n${section("Cautions", order.cautions)}`)
  if (why) io.out(whyText(why))
  return 0
}

/** A fault told by the option that was typed, and not by the engine's name for it. */
function asOption(fault: Problem): Problem {
  const option = OPTIONS[fault.path]
  if (option === undefined) return fault
  return { ...fault, path: option, message: fault.message.replace(fault.path, option) }
}

/** The options by the names the engine's faults use. */
const OPTIONS: Readonly<Record<string, string>> = {
  concentrationPercent: "--concentration",
  stockPercent: "--stock",
  bottles: "--bottles",
  volumeMl: "--volume-ml",
  smallestVolumeMl: "--smallest-volume-ml",
}

const orderWhy = ({ concentration, stock, bottles, volumeMl, smallestVolumeMl }: OrderArguments) =>
  withSources({
    title: "Why these steps?",
    inputs: [
      ["Strength ordered", `${concentration} % w/v`],
      ["Strength of the stock", `${stock} % w/v`],
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
      `Limits: ${uspSolutionLimits.lowPercentOfLabel} to ${uspSolutionLimits.highPercentOfLabel} % of the label (evidence ${uspSolutionLimits.source}).`,
    ],
    parameters: [
      {
        name: "smallestVolumeMl",
        value: usualTransfers.smallestVolumeMl,
        unit: "mL",
        sd: null,
        source: [usualTransfers.source],
        note: "A pharmacy's own setting, by --smallest-volume-ml.",
      },
      {
        name: "toleranceFraction",
        value: usualTransfers.toleranceFraction,
        unit: "1",
        sd: null,
        source: [usualTransfers.source],
        note: "95 % limit of the error of one measured volume, as a share of it.",
      },
      {
        name: "readableMl",
        value: usualTransfers.readableMl,
        unit: "mL",
        sd: null,
        source: [usualTransfers.source],
        note: "Volumes are given to this graduation.",
      },
    ],
    tables: [],
  })
