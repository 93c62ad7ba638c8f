import { compoundingOrder } from "../../engine/compounding/compounding-order.js"
import type { Problem } from "../../engine/problem.js"
import { orderWhy } from "../../engine/why/order.js"
import { counted, inDigits } from "../../engine/words.js"
import type { ExitCode, Io } from "../io.js"
import { toldJson, toldProblems } from "../told.js"
import { sourceRegister, whyText } from "../why-text.js"
import { paragraph, section } from "../words.js"

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
  const {
    concentration: concentrationPercent,
    stock: stockPercent,
    bottles,
    volumeMl,
    smallestVolumeMl,
  } = args
  const request = { concentrationPercent, stockPercent, bottles, volumeMl, smallestVolumeMl }
  const order = compoundingOrder(request)
  if (order.kind === "refused") {
    return toldProblems(order.problems.map(asOption), { io, json })
  }
  const why = args.why ? orderWhy(request, await sourceRegister()) : undefined
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
