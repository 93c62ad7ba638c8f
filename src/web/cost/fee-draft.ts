import { decimalsOf } from "../../engine/cost/currencies.js"
import { feeScheduleProblems } from "../../engine/cost/fee-problems.js"
import { amountTyped, readAmount } from "../../engine/cost/money.js"
import { TREATMENT_KINDS, type TreatmentKind } from "../../engine/course.js"
import type { Coverage, Fee, FeeOccasion, FeeSchedule } from "../../engine/practice-rules.js"
import { MEASURES, type Measure, STAGES, type Stage } from "../../engine/protocol/protocol.js"
import { treatmentName } from "../../engine/treatment-name.js"
import { kindInWords } from "../format.js"
import { parseNumber } from "../visit/readings.js"

/** A fee schedule while it is typed. */
export interface FeeDraft {
  readonly title: string
  readonly currency: string
  readonly from: string
  readonly rows: readonly FeeRow[]
}

export interface FeeRow {
  /** Of the fee; kept when it is renamed. */
  readonly id: string
  readonly title: string
  readonly kind: FeeOccasion["kind"]
  readonly stages: readonly Stage[]
  readonly measure: Measure
  readonly strength: string
  readonly treatment: TreatmentKind
  readonly everyMonths: string
  readonly amount: string
  readonly coverage: Coverage
}

export const KIND_LABELS: readonly (readonly [FeeOccasion["kind"], string])[] = [
  ["examination", "examination"],
  ["measure", "measurement"],
  ["bottle", "bottle"],
  ["device", "device"],
]
export const STAGE_LABELS: readonly (readonly [Stage, string])[] = STAGES.map((stage) => [
  stage,
  stage === "washout" ? "after the stop" : kindInWords(stage),
])
export const MEASURE_LABELS: readonly (readonly [Measure, string])[] = MEASURES.map((measure) => [
  measure,
  kindInWords(measure),
])
export const DEVICE_LABELS: readonly (readonly [TreatmentKind, string])[] = TREATMENT_KINDS.filter(
  (kind) => kind !== "atropine" && kind !== "none",
).map((kind) => [kind, treatmentName({ kind })])

const BLANK: Omit<FeeRow, "id"> = {
  title: "",
  kind: "examination",
  stages: [],
  measure: "axial-length",
  strength: "",
  treatment: "defocus-spectacles",
  everyMonths: "12",
  amount: "",
  coverage: "uncertain",
}

/** An empty row with an id that no other has. */
export function newRow(rows: readonly FeeRow[]): FeeRow {
  const taken = new Set(rows.map(({ id }) => id))
  let number = rows.length + 1
  while (taken.has(`fee-${number}`)) number++
  return { ...BLANK, id: `fee-${number}` }
}

export function draftOf(schedule: FeeSchedule): FeeDraft {
  const { title, currency, from, fees } = schedule
  return { title, currency, from, rows: fees.map((fee) => rowOf(fee, currency)) }
}

function rowOf({ id, title, cents, coverage, charged }: Fee, currency: string): FeeRow {
  const known = decimalsOf(currency) !== null
  const row = { ...BLANK, id, title, coverage, amount: known ? amountTyped(cents, currency) : String(cents) }
  switch (charged.kind) {
    case "examination":
      return { ...row, kind: "examination", stages: charged.stages }
    case "measure":
      return { ...row, kind: "measure", measure: charged.measure }
    case "bottle":
      return { ...row, kind: "bottle", strength: String(charged.concentrationPercent ?? "") }
    case "device":
      return {
        ...row,
        kind: "device",
        treatment: charged.treatment,
        everyMonths: String(charged.everyMonths),
      }
  }
}

export interface ReadDraft {
  /** What can be read so far; null until every row can. */
  readonly schedule: FeeSchedule | null
  /** What is wrong, by the path it has in the schedule. */
  readonly faults: ReadonlyMap<string, string>
}

/** The schedule that was typed, or what is wrong with it and where. The server checks all of it once more. */
export function readDraft(draft: FeeDraft, others: readonly FeeSchedule[]): ReadDraft {
  const faults = new Map<string, string>()
  const currency = draft.currency.trim().toUpperCase()
  if (draft.title.trim() === "") faults.set("title", "must be given")
  if (draft.from === "") faults.set("from", "must be a day")
  if (decimalsOf(currency) === null)
    faults.set("currency", "must be the ISO 4217 code of a currency, such as EUR")
  const fees = draft.rows.map((row, index): Fee => {
    const path = `fees[${index}]`
    if (row.title.trim() === "") faults.set(`${path}.title`, "must be given")
    const amount =
      decimalsOf(currency) === null
        ? ({ kind: "amount", cents: 0 } as const)
        : readAmount(row.amount, currency)
    if (amount.kind === "refused") faults.set(`${path}.cents`, `must be ${amount.allowed}`)
    return {
      id: row.id,
      title: row.title.trim(),
      cents: amount.kind === "amount" ? amount.cents : 0,
      coverage: row.coverage,
      charged: occasionOf(row, (words) => faults.set(`${path}.charged`, words)),
    }
  })
  const schedule = { title: draft.title.trim(), currency, from: draft.from, fees }
  if (faults.size > 0) return { schedule: null, faults }
  for (const { path, allowed } of feeScheduleProblems({ schedule, others, paidIn: [] }))
    faults.set(path.replace(/\.charged\..*$/, ".charged"), `must be ${allowed}`)
  return { schedule: faults.size > 0 ? null : schedule, faults }
}

function occasionOf(row: FeeRow, say: (words: string) => void): FeeOccasion {
  switch (row.kind) {
    case "examination":
      if (row.stages.length === 0) say("must name at least one examination")
      return { kind: "examination", stages: row.stages }
    case "measure":
      return { kind: "measure", measure: row.measure }
    case "bottle": {
      const percent = row.strength.trim() === "" ? undefined : parseNumber(row.strength)
      if (percent === null || (percent !== undefined && !(percent > 0 && percent <= 1.5))) {
        say("must be a strength above 0 and up to 1.5 %, or empty for any")
      }
      return percent == null ? { kind: "bottle" } : { kind: "bottle", concentrationPercent: percent }
    }
    case "device": {
      const months = parseNumber(row.everyMonths)
      if (months === null || !Number.isInteger(months) || months < 1 || months > 60) {
        say("must be a whole number of months from 1 to 60")
      }
      return { kind: "device", treatment: row.treatment, everyMonths: months ?? 1 }
    }
  }
}
