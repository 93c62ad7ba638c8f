import { decimalsOf } from "../../engine/cost/currencies.js"
import { feeScheduleProblems } from "../../engine/cost/fee-problems.js"
import { amountTyped, readAmount } from "../../engine/cost/money.js"
import type { TreatmentKind } from "../../engine/course.js"
import type { Coverage, Fee, FeeOccasion, FeeSchedule } from "../../engine/practice-rules.js"
import type { Measure, Stage } from "../../engine/protocol/protocol.js"
import { say, withDecimalSign } from "../../engine/say.js"
import { fixed } from "../../engine/words.js"
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
  const row = {
    ...BLANK,
    id,
    title,
    coverage,
    amount: known ? withDecimalSign(amountTyped(cents, currency)) : String(cents),
  }
  switch (charged.kind) {
    case "examination":
      return { ...row, kind: "examination", stages: charged.stages }
    case "measure":
      return { ...row, kind: "measure", measure: charged.measure }
    case "bottle":
      return { ...row, kind: "bottle", strength: withDecimalSign(String(charged.concentrationPercent ?? "")) }
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
  if (draft.title.trim() === "") faults.set("title", say("must be given"))
  if (draft.from === "") faults.set("from", say("must be a day"))
  if (decimalsOf(currency) === null)
    faults.set("currency", say("must be the ISO 4217 code of a currency, such as EUR"))
  const fees = draft.rows.map((row, index): Fee => {
    const path = `fees[${index}]`
    if (row.title.trim() === "") faults.set(`${path}.title`, say("must be given"))
    const amount =
      decimalsOf(currency) === null
        ? ({ kind: "amount", cents: 0 } as const)
        : readAmount(row.amount, currency)
    if (amount.kind === "refused")
      faults.set(`${path}.cents`, say("must be {allowed}", { allowed: amount.allowed }))
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
    faults.set(path.replace(/\.charged\..*$/, ".charged"), say("must be {allowed}", { allowed }))
  return { schedule: faults.size > 0 ? null : schedule, faults }
}

function occasionOf(row: FeeRow, fault: (words: string) => void): FeeOccasion {
  switch (row.kind) {
    case "examination":
      if (row.stages.length === 0) fault(say("must name at least one examination"))
      return { kind: "examination", stages: row.stages }
    case "measure":
      return { kind: "measure", measure: row.measure }
    case "bottle": {
      const percent = row.strength.trim() === "" ? undefined : parseNumber(row.strength)
      if (percent === null || (percent !== undefined && !(percent > 0 && percent <= 1.5))) {
        fault(say("must be a strength above 0 and up to {most} %, or empty for any", { most: fixed(1.5, 1) }))
      }
      return percent == null ? { kind: "bottle" } : { kind: "bottle", concentrationPercent: percent }
    }
    case "device": {
      const months = parseNumber(row.everyMonths)
      if (months === null || !Number.isInteger(months) || months < 1 || months > 60) {
        fault(say("must be a whole number of months from 1 to 60"))
      }
      return { kind: "device", treatment: row.treatment, everyMonths: months ?? 1 }
    }
  }
}
