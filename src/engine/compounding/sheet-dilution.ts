import { msg, say } from "../say.js"
import { inDigits } from "../words.js"
import type { CompoundingOrder } from "./compounding-order.js"
import type { DilutionStep } from "./dilution.js"
import type { SheetBlock } from "./sheet.js"

/** Ids of the evidence as a pharmacist knows them. */
const SOURCES: Readonly<Record<string, string>> = { "usp.monograph": msg("USP monograph of the solution") }

/** The steps as a table, the strength they come to, and what to do where it may lie outside the limits. */
export function dilutionBlocks(order: CompoundingOrder): readonly SheetBlock[] {
  return [
    {
      kind: "table",
      head: [say("Step"), say("Take"), say("From|stock"), say("Add diluent"), say("Gives")],
      rows: order.steps.map((step, index) => stepRow(step, index + 1)),
    },
    { kind: "lines", lines: [strength(order)] },
    ...(order.withinLimits ? [] : [{ kind: "caution" as const, lines: outside(order) }]),
  ]
}

function strength(order: CompoundingOrder): string {
  const told = {
    final: inDigits(order.finalPercent),
    low: inDigits(order.low95Percent),
    high: inDigits(order.high95Percent),
    check: inDigits(order.checkPercent),
  }
  return order.withinLimits
    ? say(
        "Final strength {final} %, 95 % between {low} and {high} %, within the limits {lowest} to {highest} % ({lowOfLabel} to {highOfLabel} % of the label, {source}). Worked back from the milligrams of each step: {check} %.",
        { ...told, ...limitsOf(order) },
      )
    : say(
        "Final strength {final} %, 95 % between {low} and {high} %. Worked back from the milligrams of each step: {check} %.",
        told,
      )
}

function outside(order: CompoundingOrder): readonly string[] {
  return [
    say(
      "The interval leaves the limits {lowest} to {highest} % ({lowOfLabel} to {highOfLabel} % of the label, {source}).",
      limitsOf(order),
    ),
    ...order.waysInside.map(({ words }) => say("It would lie inside: {words}.", { words })),
    ...(order.waysInside.length === 0
      ? [say("No larger batch, other stock or closer measuring that was tried brings it inside.")]
      : []),
  ]
}

function limitsOf({ limitsPercent: { low, high, source }, concentrationPercent }: CompoundingOrder) {
  const ofLabel = (percent: number) => inDigits((percent / concentrationPercent) * 100)
  const known = SOURCES[source]
  return {
    lowest: inDigits(low),
    highest: inDigits(high),
    lowOfLabel: ofLabel(low),
    highOfLabel: ofLabel(high),
    source: known === undefined ? source : say(known),
  }
}

interface Volume {
  readonly ml: number
  readonly low: number
  readonly high: number
  readonly device: string | undefined
}

function stepRow(step: DilutionStep, number: number): readonly string[] {
  const isDiluted = step.addDiluentMl > 0
  const taken = { ml: step.takeMl, low: step.takeLow95Ml, high: step.takeHigh95Ml, device: step.takeWith }
  const diluent = {
    ml: step.addDiluentMl,
    low: step.diluentLow95Ml,
    high: step.diluentHigh95Ml,
    device: step.diluentWith,
  }
  return [
    String(number),
    isDiluted ? measured(taken) : say("{volume} mL", { volume: inDigits(step.takeMl) }),
    step.of,
    isDiluted ? measured(diluent) : say("none|diluent"),
    gives(step),
  ]
}

function measured({ ml, low, high, device }: Volume): string {
  const told = { volume: inDigits(ml), low: inDigits(low), high: inDigits(high) }
  return device === undefined
    ? say("{volume} mL ({low} to {high})", told)
    : say("{volume} mL ({low} to {high}), {device}", { ...told, device })
}

function gives({ givesPercent, discardMl }: DilutionStep): string {
  const percent = inDigits(givesPercent)
  if (discardMl <= 0) return say("{percent} %", { percent })
  return say("{percent} %; discard the {volume} mL left over", { percent, volume: inDigits(discardMl) })
}
