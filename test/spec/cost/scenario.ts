import type { CostPlanInput } from "../../../src/engine/cost/cost-plan.js"
import { readAmount } from "../../../src/engine/cost/money.js"
import type {
  Course,
  Payment,
  Supply,
  Treatment,
  TreatmentChoice,
  TreatmentKind,
  Visit,
} from "../../../src/engine/course.js"
import type { Coverage, Fee, FeeOccasion, FeeSchedule, Pharmacy } from "../../../src/engine/practice-rules.js"
import type { Measure, Stage } from "../../../src/engine/protocol/protocol.js"
import { standardProtocol } from "../../../src/engine/protocol/standard.js"
import { fullVisit } from "../protocol/child.js"

/** A story about money as a person wrote it down: columns are parted by two blanks or more, `#` begins a remark. */
export interface Scenario {
  readonly title: string
  readonly input: CostPlanInput
  /** Lines under "expected", cell by cell. */
  readonly expected: readonly (readonly string[])[]
}

type Row = readonly string[]

export function scenario(text: string): Scenario {
  const [title = "", ...rest] = text.split("\n").filter((line) => !line.startsWith("#"))
  const lines = rest.filter((line) => line.trim() !== "")
  const sections: { readonly head: Row; readonly rows: Row[] }[] = []
  for (const line of lines) {
    const cells = line.trim().split(/ {2,}/)
    if (line.startsWith(" ")) sections.at(-1)?.rows.push(cells)
    else sections.push({ head: cells, rows: [] })
  }
  const heads = new Map(sections.map(({ head: [name = "", value = ""] }) => [name, value]))
  const rowsOf = (name: string) => sections.filter(({ head }) => head[0] === name).flatMap(({ rows }) => rows)
  const expected = rowsOf("expected")
  if (expected.length === 0) throw new Error(`nothing is expected of: ${title}`)
  const feeSchedules = sections.filter(({ head }) => head[0]?.startsWith("fees in")).map(scheduleOf)
  return {
    title,
    input: {
      course: courseOf(rowsOf("child")),
      treatment: optionOf(heads.get("option") ?? "as now"),
      today: heads.get("today") ?? "",
      months: Number(heads.get("months") ?? 30),
      protocol: standardProtocol,
      rules: { feeSchedules, pharmacies: rowsOf("pharmacy").map(pharmacyOf) },
    },
    expected,
  }
}

function optionOf(words: string): TreatmentChoice | null | undefined {
  if (words === "as now") return undefined
  return words === "observation" ? null : choiceOf(words)
}

function choiceOf(words: string): TreatmentChoice {
  const [, kind = "", strength] = /^([a-z-]+)(?: ([\d.]+) %)?$/.exec(words) ?? []
  return {
    kind: kind as TreatmentKind,
    ...(strength === undefined ? {} : { concentrationPercent: Number(strength) }),
  }
}

function scheduleOf({ head, rows }: { readonly head: Row; readonly rows: readonly Row[] }): FeeSchedule {
  const [, currency = "", from = ""] = /^fees in ([A-Z]{3}) from ([\d-]+)$/.exec(head[0] ?? "") ?? []
  return { title: `Fees ${from}`, currency, from, fees: rows.map((row) => feeOf(row, currency)) }
}

function feeOf([title = "", occasion = "", amount = "", coverage = ""]: Row, currency: string): Fee {
  return {
    id: title,
    title,
    cents: centsOf(amount, currency),
    coverage: coverage.replace("not covered", "not-covered") as Coverage,
    charged: occasionOf(occasion),
  }
}

function occasionOf(words: string): FeeOccasion {
  const [kind = "", rest = ""] = words.split(": ")
  if (kind === "visit") return { kind: "examination", stages: rest.split(", ") as Stage[] }
  if (kind === "measured") return { kind: "measure", measure: rest.replaceAll(" ", "-") as Measure }
  if (kind === "bottle of any strength") return { kind: "bottle" }
  if (kind === "bottle") return { kind: "bottle", concentrationPercent: Number.parseFloat(rest) }
  const [treatment = "", every = ""] = rest.split(", ")
  return {
    kind: "device",
    treatment: treatment as TreatmentKind,
    everyMonths: Number(/\d+/.exec(every)?.[0]),
  }
}

function courseOf(rows: readonly Row[]): Course {
  const visits: Visit[] = []
  const treatments: Treatment[] = []
  const supplies: Supply[] = []
  const payments: Payment[] = []
  for (const [what, first = "", second = "", third] of rows) {
    if (what === "seen, everything measured") visits.push(fullVisit(first))
    else if (what === "on") {
      const to = third?.replace("to ", "")
      treatments.push({ ...choiceOf(first), from: second.replace("from ", ""), ...(to ? { to } : {}) })
    } else if (what === "bottle opened") {
      supplies.push({ opened: first, beyondUse: second.replace("good until ", "") })
    } else if (what === "paid") {
      const [amount = "", currency = ""] = second.split(" ")
      payments.push({ date: first, cents: centsOf(amount, currency), currency })
    } else throw new Error(`not understood: ${what}`)
  }
  return {
    lengthwise: 1,
    child: { born: "2016-05-02", sex: "female" },
    visits,
    treatments,
    supplies,
    payments,
  }
}

const pharmacyOf = ([name = "", bottle = "", days = ""]: Row): Pharmacy => ({
  id: name,
  name,
  leadDays: 7,
  stockPercents: [1],
  smallestVolumeMl: 0.5,
  bottleMl: Number.parseFloat(bottle),
  isPreserved: true,
  daysAfterOpening: Number.parseInt(days, 10),
})

export function centsOf(amount: string, currency: string): number {
  const read = readAmount(amount, currency)
  if (read.kind === "refused") throw new Error(`${amount} is not ${read.allowed}`)
  return read.cents
}
