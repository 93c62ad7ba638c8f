import {
  type BottlesNeeded,
  type BottlesQuestion,
  bottlesInWords,
  bottlesNeeded,
  USUAL_DAYS_AFTER_OPENING,
} from "../../engine/compounding/bottles-needed.js"
import { type CompoundingOrder, compoundingOrder } from "../../engine/compounding/compounding-order.js"
import type { CompoundingRequest } from "../../engine/compounding/order-request.js"
import { benzalkoniumCarriedOver } from "../../engine/compounding/preservative.js"
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
  readonly graduationMl?: number | undefined
  /** Per cent of a measured volume. */
  readonly tolerance?: number | undefined
  /** Per cent of the stock's label. */
  readonly stockTolerance?: number | undefined
  readonly nights?: number | undefined
  readonly eyes?: number | undefined
  readonly daysAfterOpening?: number | undefined
  readonly preserved?: boolean | undefined
  readonly json?: boolean | undefined
  readonly why?: boolean | undefined
}

/** How a strength is made from stock, line by line, for a pharmacist to check; and how many bottles a span needs. */
export async function run(args: OrderArguments, io: Io): Promise<ExitCode> {
  const { json = false, preserved = false } = args
  const request = requestOf(args)
  const order = compoundingOrder(request)
  const need = needOf(args)
  const problems = [
    ...(order.kind === "refused" ? order.problems : []),
    ...(need && "problems" in need ? need.problems : []),
  ]
  if (problems.length > 0 || order.kind === "refused" || (need && "problems" in need))
    return toldProblems(onceEach(problems.map((fault) => asOption(fault, args))), { io, json })

  const why = args.why ? orderWhy({ ...request, nights: args.nights }, await sourceRegister()) : undefined
  if (json) {
    const more = { preserved, ...(need && { bottlesNeeded: need.answer }), ...(why && { why }) }
    return toldJson({ ...order, ...more }, io)
  }
  io.out(orderText(order, preserved))
  if (need) io.out(`\n${section("Bottles", bottlesText(need, args.bottles))}`)
  io.out(`\n${section("Cautions", order.cautions)}`)
  if (why) io.out(whyText(why))
  return 0
}

function requestOf(args: OrderArguments): CompoundingRequest {
  const share = (perCent: number | undefined) => (perCent === undefined ? undefined : perCent / 100)
  return {
    concentrationPercent: args.concentration,
    stockPercent: args.stock,
    bottles: args.bottles,
    volumeMl: args.volumeMl,
    smallestVolumeMl: args.smallestVolumeMl,
    graduationMl: args.graduationMl,
    transferTolerance: share(args.tolerance),
    stockTolerance: share(args.stockTolerance),
  }
}

type Need = { readonly question: BottlesQuestion; readonly answer: BottlesNeeded }

/** How many bottles the nights asked for need; undefined when no nights were named. */
function needOf(args: OrderArguments): Need | { readonly problems: readonly Problem[] } | undefined {
  const { nights, eyes = 2, volumeMl, preserved = false, daysAfterOpening } = args
  if (nights === undefined) {
    if (args.eyes === undefined && daysAfterOpening === undefined) return undefined
    return { problems: [nightsMissing] }
  }
  if (preserved && daysAfterOpening === undefined) return { problems: [daysOfPreserved] }
  const question = {
    volumeMl,
    nights,
    eyes: eyes as 1 | 2,
    daysAfterOpening: daysAfterOpening ?? USUAL_DAYS_AFTER_OPENING,
  }
  const answer = bottlesNeeded(question)
  return answer.kind === "refused" ? answer : { question, answer }
}

const nightsMissing: Problem = {
  path: "nights",
  value: null,
  allowed: "given, with eyes or days after opening, so that the bottles can be counted",
  message: "nights must be given where eyes or days after opening are, so that the bottles can be counted",
}

const daysOfPreserved: Problem = {
  path: "daysAfterOpening",
  value: null,
  allowed: "the days of use after opening that the pharmacy states for its preserved bottle",
  message:
    "daysAfterOpening must be given for a bottle with a preservative, as the pharmacy states it; the usual month is that of a bottle without",
}

function orderText(order: CompoundingOrder, preserved: boolean): string {
  const { steps, finalPercent, low95Percent, high95Percent, withinLimits, limitsPercent } = order
  const { concentrationPercent, stockPercent, bottles, volumeMl } = order
  const kept = preserved ? "with" : "without"
  const within = withinLimits ? "within" : "NOT within"
  return [
    paragraph(
      `${counted(bottles, "bottle")} of ${inDigits(volumeMl)} mL atropine ${inDigits(concentrationPercent)} %, ${kept} preservative, from stock of ${inDigits(stockPercent)} %.`,
      0,
    ),
    "\n",
    ...steps.map((step, index) =>
      paragraph(
        step.addDiluentMl === 0
          ? `${index + 1}. Take ${inDigits(step.takeMl)} mL of ${step.of}, undiluted: this gives ${inDigits(step.givesPercent)} %.`
          : `${index + 1}. Take ${inDigits(step.takeMl)} mL (${inDigits(step.takeLow95Ml)} to ${inDigits(step.takeHigh95Ml)} mL) of ${step.of}, add ${inDigits(step.addDiluentMl)} mL (${inDigits(step.diluentLow95Ml)} to ${inDigits(step.diluentHigh95Ml)} mL) of diluent: this gives ${inDigits(step.givesPercent)} %.${step.discardMl > 0 ? ` Discard the ${inDigits(step.discardMl)} mL left over.` : ""}`,
      ),
    ),
    "\n",
    paragraph(
      `Final strength ${inDigits(finalPercent)} % (95 % between ${inDigits(low95Percent)} and ${inDigits(high95Percent)} %), ${within} the limits ${inDigits(limitsPercent.low)} to ${inDigits(limitsPercent.high)} %.`,
      0,
    ),
    ...order.waysInside.map(({ words }) => paragraph(`It would lie within them: ${words}.`)),
    paragraph(`Worked backwards from the milligrams: ${inDigits(order.checkPercent)} %.`, 0),
    paragraph(`Each bottle holds ${inDigits(order.mgPerBottle)} mg of atropine sulfate.`, 0),
    preserved ? "" : carriedOver(order),
  ].join("")
}

function carriedOver(order: CompoundingOrder): string {
  const carried = benzalkoniumCarriedOver(order)
  if (carried === null) return ""
  const counts = carried.countsAsUnpreserved ? ", which counts as without preservative" : ""
  return paragraph(
    `From a 1 % stock preserved with 0.01 % benzalkonium chloride ${inDigits(carried.percent)} % is carried over${counts}.`,
    0,
  )
}

function bottlesText({ question, answer }: Need, bottles: number): readonly string[] {
  const enough =
    bottles >= answer.bottles.high
      ? "enough"
      : bottles >= answer.bottles.low
        ? "enough if the drops are small"
        : "too few"
  return [...bottlesInWords(question, answer), `${counted(bottles, "bottle")} ordered: ${enough}.`]
}

/** A fault told by the option that was typed and its value as typed, not by the engine's name for it. */
function asOption(fault: Problem, args: OrderArguments): Problem {
  const { path } = fault
  const option = OPTIONS[path]
  if (option === undefined) return fault
  if (path === "transferTolerance" || path === "stockTolerance") {
    const value = path === "stockTolerance" ? args.stockTolerance : args.tolerance
    const allowed = "a number from 0 to below 100 (per cent)"
    return { path: option, value, allowed, message: `${option} must be ${allowed}; it is ${value}` }
  }
  return { ...fault, path: option, message: fault.message.replace(path, option) }
}

/** The order and the count of bottles may find the same fault. */
const onceEach = (problems: readonly Problem[]): readonly Problem[] =>
  problems.filter(({ path }, index) => problems.findIndex((other) => other.path === path) === index)

/** The options by the names the engine's faults use. */
const OPTIONS: Readonly<Record<string, string>> = {
  concentrationPercent: "--concentration",
  stockPercent: "--stock",
  bottles: "--bottles",
  volumeMl: "--volume-ml",
  smallestVolumeMl: "--smallest-volume-ml",
  graduationMl: "--graduation-ml",
  transferTolerance: "--tolerance",
  stockTolerance: "--stock-tolerance",
  nights: "--nights",
  eyes: "--eyes",
  daysAfterOpening: "--days-after-opening",
}
