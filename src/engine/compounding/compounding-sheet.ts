import { addDays } from "../calendar.js"
import type { CalendarDate, Eye } from "../course.js"
import type { Contacts, Pharmacy } from "../practice-rules.js"
import { counted, inDigits } from "../words.js"
import { bottleInWords, bottlesNeeded, rangeInWords } from "./bottles-needed.js"
import { type CompoundingOrder, FOR_A_PHARMACIST } from "./compounding-order.js"
import type { DilutionStep } from "./dilution.js"
import { labelText } from "./label-text.js"
import { benzalkoniumCarriedOver } from "./preservative.js"
import { OPENED_STUDIED_DAYS, type StabilityRow, stabilityLines } from "./stability.js"

export type SheetBlock =
  | { readonly kind: "pairs"; readonly pairs: readonly (readonly [label: string, value: string])[] }
  | {
      readonly kind: "table"
      readonly head: readonly string[]
      readonly rows: readonly (readonly string[])[]
    }
  | { readonly kind: "lines"; readonly lines: readonly string[] }
  /** To be seen first. */
  | { readonly kind: "caution"; readonly lines: readonly string[] }
  /** Small print: where figures come from. */
  | { readonly kind: "notes"; readonly lines: readonly string[] }
  | { readonly kind: "label"; readonly lines: readonly string[] }
  /** A line each to be signed and dated; the name is filled in where it is known. */
  | {
      readonly kind: "signatures"
      readonly lines: readonly { readonly role: string; readonly name: string }[]
    }

export interface SheetSection {
  readonly heading: string
  readonly blocks: readonly SheetBlock[]
}

/** What stands on an order's paper, in order; how it is set is left to page and document. Dates are ISO. */
export interface Sheet {
  readonly title: string
  readonly statement: string
  readonly sections: readonly SheetSection[]
}

export interface SheetInput {
  readonly order: CompoundingOrder
  /** The day it is ordered. */
  readonly on: CalendarDate
  readonly child: { readonly name: string; readonly born: CalendarDate; readonly number?: string | null }
  readonly practice: string
  readonly prescriber: string
  readonly pharmacy: Pharmacy
  readonly contacts: Contacts
  readonly isPreserved: boolean
  /** Set where one eye is treated. */
  readonly eye?: Eye | undefined
  /** For a taper; every night when absent. */
  readonly nightsPerWeek?: number | undefined
  /** The consent it rests on, or the reason why it goes out without one. */
  readonly consent: string
  readonly remarks?: readonly string[] | undefined
  readonly stability?: readonly StabilityRow[] | undefined
}

/** The order as a pharmacist receives it: to be checked line by line and signed by two people. */
export function compoundingSheet(input: SheetInput): Sheet {
  const { order, child } = input
  return {
    title: `Order: atropine sulfate eye drops ${inDigits(order.concentrationPercent)} % for ${child.name}`,
    statement: FOR_A_PHARMACIST,
    sections: [
      { heading: "What is ordered", blocks: [ordered(input), ...lines("caution", input.remarks ?? [])] },
      { heading: "Dilution", blocks: dilution(order) },
      { heading: "Content and caution", blocks: content(input) },
      { heading: "Preservative, storage, stability", blocks: keeping(input) },
      { heading: "On each label", blocks: [label(input)] },
      {
        heading: "Two people check",
        blocks: [
          {
            kind: "signatures",
            lines: [
              { role: "Prescribed", name: input.prescriber },
              { role: "Made and measured", name: "" },
              { role: "Checked by a second person", name: "" },
            ],
          },
        ],
      },
    ],
  }
}

function ordered(input: SheetInput): SheetBlock {
  const { order, on, child, pharmacy } = input
  return {
    kind: "pairs",
    pairs: [
      ["For", `${child.name}, born ${child.born}${child.number ? `, number ${child.number}` : ""}`],
      [
        "Bottles",
        `${counted(order.bottles, "bottle")} of ${inDigits(order.volumeMl)} mL, atropine sulfate ${inDigits(order.concentrationPercent)} % w/v (${inDigits(order.concentrationPercent * 10)} mg in 1 mL)`,
      ],
      ["Use", `one drop in ${eyesOf(input)} at bedtime`],
      ...lasting(input),
      ["Ordered by", `${input.prescriber}, ${input.practice}, on ${on}`],
      ["Pharmacy", [pharmacy.name, pharmacy.contact].filter((part) => part).join(", ")],
      ["Expected by", addDays(on, pharmacy.leadDays)],
      ["Consent", input.consent],
    ],
  }
}

/** How many nights what is ordered serves, from the drop sizes that were measured and the days of use after opening. */
function lasting(input: SheetInput): readonly (readonly [string, string])[] {
  const { order, pharmacy, eye, nightsPerWeek } = input
  const { daysAfterOpening } = pharmacy
  const answer = bottlesNeeded({
    volumeMl: order.volumeMl,
    eyes: eye === undefined ? 2 : 1,
    nights: 1,
    daysAfterOpening,
    nightsPerWeek,
  })
  if (answer.kind === "refused") return []
  const { low, high } = answer.nightsPerBottle
  const nights = rangeInWords({ low: low * order.bottles, high: high * order.bottles })
  return [["Lasting", `${nights} nights. ${bottleInWords({ daysAfterOpening }, answer)}`]]
}

/** Ids of the evidence as a pharmacist knows them. */
const SOURCES: Readonly<Record<string, string>> = { "usp.monograph": "USP monograph of the solution" }

function dilution(order: CompoundingOrder): readonly SheetBlock[] {
  const { finalPercent, low95Percent, high95Percent, limitsPercent, withinLimits } = order
  const interval = `${inDigits(low95Percent)} and ${inDigits(high95Percent)} %`
  const ofLabel = (percent: number) => inDigits((percent / order.concentrationPercent) * 100)
  const limits = `${inDigits(limitsPercent.low)} to ${inDigits(limitsPercent.high)} % (${ofLabel(limitsPercent.low)} to ${ofLabel(limitsPercent.high)} % of the label, ${SOURCES[limitsPercent.source] ?? limitsPercent.source})`
  const outside = [
    `The interval leaves the limits ${limits}.`,
    ...order.waysInside.map(({ words }) => `It would lie inside: ${words}.`),
    ...(order.waysInside.length === 0
      ? ["No larger batch, other stock or closer measuring that was tried brings it inside."]
      : []),
  ]
  return [
    {
      kind: "table",
      head: ["Step", "Take", "From", "Add diluent", "Gives"],
      rows: order.steps.map((step, index) => stepRow(step, index + 1)),
    },
    {
      kind: "lines",
      lines: [
        `Final strength ${inDigits(finalPercent)} %, 95 % between ${interval}${withinLimits ? `, within the limits ${limits}` : ""}. Worked back from the milligrams of each step: ${inDigits(order.checkPercent)} %.`,
      ],
    },
    ...(withinLimits ? [] : lines("caution", outside)),
  ]
}

function stepRow(step: DilutionStep, number: number): readonly string[] {
  const isDiluted = step.addDiluentMl > 0
  const volume = (of: { ml: number; low: number; high: number; device: string | undefined }) =>
    `${inDigits(of.ml)} mL${isDiluted ? ` (${inDigits(of.low)} to ${inDigits(of.high)})` : ""}${of.device ? `, ${of.device}` : ""}`
  return [
    String(number),
    volume({ ml: step.takeMl, low: step.takeLow95Ml, high: step.takeHigh95Ml, device: step.takeWith }),
    step.of,
    isDiluted
      ? volume({
          ml: step.addDiluentMl,
          low: step.diluentLow95Ml,
          high: step.diluentHigh95Ml,
          device: step.diluentWith,
        })
      : "none",
    `${inDigits(step.givesPercent)} %${step.discardMl > 0 ? `; discard the ${inDigits(step.discardMl)} mL left over` : ""}`,
  ]
}

function content({ order, contacts }: SheetInput): readonly SheetBlock[] {
  const line = `Each bottle holds ${inDigits(order.mgPerBottle)} mg of atropine sulfate; strengths are % w/v of the sulfate. All ${counted(order.bottles, "bottle")}: ${inDigits(order.mgPerBottle * order.bottles)} mg.`
  const poisonCentre = contacts.poisonCentre
    ? `Poison centre: ${contacts.poisonCentre}.`
    : "The practice has not set the number of its poison centre."
  const cautions = order.cautions.filter((caution) => caution !== FOR_A_PHARMACIST)
  return order.poisonCaution
    ? [{ kind: "lines", lines: [line] }, ...lines("caution", [...cautions, poisonCentre])]
    : [{ kind: "lines", lines: [line, ...cautions, poisonCentre] }]
}

function keeping({ order, pharmacy, isPreserved, stability = [] }: SheetInput): readonly SheetBlock[] {
  const carried = benzalkoniumCarriedOver(order)
  const unpreserved =
    carried === null
      ? "Without preservative."
      : `Without preservative. From a 1 % stock preserved with 0.01 % benzalkonium chloride ${inDigits(carried.percent)} % would be carried over${carried.countsAsUnpreserved ? ", which counts as unpreserved" : ""}.`
  const days = pharmacy.daysAfterOpening
  const afterOpening = `Thrown away ${days} days after opening.${
    days > OPENED_STUDIED_DAYS
      ? ` Opened bottles were followed for ${OPENED_STUDIED_DAYS} days in the studies read.`
      : ""
  }`
  return [
    {
      kind: "lines",
      lines: [
        isPreserved ? "With a preservative." : unpreserved,
        `Storage and beyond-use date as the pharmacist states them on the label. ${afterOpening}`,
      ],
    },
    ...lines("notes", stabilityLines(stability, order.concentrationPercent)),
  ]
}

function label(input: SheetInput): SheetBlock {
  const { order, child, pharmacy, contacts, isPreserved } = input
  const { concentrationPercent, volumeMl } = order
  return {
    kind: "label",
    lines: labelText({
      concentrationPercent,
      volumeMl,
      isPreserved,
      daysAfterOpening: pharmacy.daysAfterOpening,
      eyes: eyesOf(input),
      child,
      pharmacy: pharmacy.name,
      contacts,
    }),
  }
}

const eyesOf = ({ eye }: SheetInput) => (eye === undefined ? "each eye" : `the ${eye} eye`)

const lines = (kind: "caution" | "notes", said: readonly string[]): readonly SheetBlock[] =>
  said.length > 0 ? [{ kind, lines: said }] : []
