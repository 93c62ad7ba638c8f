import {
  type BottlesNeeded,
  type BottlesQuestion,
  bottlesNeeded,
} from "../../engine/compounding/bottles-needed.js"
import { type CompoundingOrder, compoundingOrder } from "../../engine/compounding/compounding-order.js"
import { dosingOf, dropsToSupply } from "../../engine/compounding/order-remarks.js"
import {
  pharmaciesOf,
  pharmacyRequest,
  stockFor,
  USUAL_NIGHTS,
} from "../../engine/compounding/usual-pharmacy.js"
import type { CalendarDate, Course, Eye } from "../../engine/course.js"
import type { Pharmacy, PracticeRules } from "../../engine/practice-rules.js"
import type { Problem } from "../../engine/problem.js"
import { withDecimalSign } from "../../engine/say.js"
import type { OrderBody } from "../../server/contract/entry.js"
import { parseNumber } from "../visit/readings.js"

/** What is typed into the form of a new order. */
export interface OrderDraft {
  readonly date: CalendarDate
  readonly pharmacyId: string
  readonly strength: string
  /** Null while the stock that fits the strength is taken. */
  readonly stock: string | null
  readonly bottleMl: string
  readonly nights: string
  /** Null while the count that is worked out is taken. */
  readonly bottles: string | null
  readonly eyes: "both" | Eye
  readonly preserved: boolean
  readonly override: string
}

/** A new order for the drops in use or about to begin, from the practice's first pharmacy. */
export function newDraft({
  course,
  today,
  rules,
}: {
  readonly course: Course
  readonly today: CalendarDate
  readonly rules: PracticeRules
}): OrderDraft {
  const [drops] = dropsToSupply(course, today)
  const [pharmacy] = pharmaciesOf(rules.pharmacies)
  const { eye } = dosingOf(course, {
    concentrationPercent: drops?.concentrationPercent ?? Number.NaN,
    on: today,
  })
  return {
    date: today,
    ...fromPharmacy(pharmacy!),
    strength: withDecimalSign(String(drops?.concentrationPercent ?? "")),
    nights: String(USUAL_NIGHTS),
    eyes: eye ?? "both",
    override: "",
  }
}

/** What follows from the choice of a pharmacy. */
export function fromPharmacy({
  id,
  bottleMl,
  isPreserved,
}: Pharmacy): Pick<OrderDraft, "pharmacyId" | "bottleMl" | "preserved" | "stock" | "bottles"> {
  return {
    pharmacyId: id,
    bottleMl: withDecimalSign(String(bottleMl)),
    preserved: isPreserved,
    stock: null,
    bottles: null,
  }
}

export interface ReadDraft {
  readonly pharmacy: Pharmacy
  readonly stockPercent: number
  readonly need: { readonly question: BottlesQuestion; readonly answer: BottlesNeeded } | undefined
  /** As typed, or as worked out; empty when neither. */
  readonly bottles: string
  /** Absent while something is missing or wrong; `problems` then says what. */
  readonly order: CompoundingOrder | undefined
  readonly problems: readonly Problem[]
}

/** What a draft comes to: the bottles needed and the order worked out, or what keeps it from being worked out. */
export function readDraft(draft: OrderDraft, rules: PracticeRules, nightsPerWeek?: number): ReadDraft {
  const pharmacies = pharmaciesOf(rules.pharmacies)
  const pharmacy = pharmacies.find(({ id }) => id === draft.pharmacyId) ?? pharmacies[0]!
  const number = (text: string) => parseNumber(text) ?? Number.NaN
  const concentrationPercent = number(draft.strength)
  const stockPercent = draft.stock === null ? stockFor(pharmacy, concentrationPercent) : number(draft.stock)
  const volumeMl = number(draft.bottleMl)
  const question: BottlesQuestion = {
    volumeMl,
    eyes: draft.eyes === "both" ? 2 : 1,
    nights: number(draft.nights),
    daysAfterOpening: pharmacy.daysAfterOpening,
    nightsPerWeek,
  }
  const answer = bottlesNeeded(question)
  const need = answer.kind === "needed" ? { question, answer } : undefined
  const bottles = draft.bottles ?? String(need?.answer.bottles.high ?? "")
  const request = { concentrationPercent, stockPercent, volumeMl, bottles: number(bottles) }
  const order = compoundingOrder(pharmacyRequest(pharmacy, request))
  return {
    pharmacy,
    stockPercent,
    need,
    bottles,
    order: order.kind === "order" ? order : undefined,
    problems: order.kind === "refused" ? order.problems : [],
  }
}

/** What is sent; a figure that is no number is sent as typed, so that the server refuses it at its field. */
export function orderBody(draft: OrderDraft, { pharmacy, stockPercent, bottles }: ReadDraft): OrderBody {
  const typed = (text: string) => parseNumber(text) ?? (text.trim() as unknown as number)
  return {
    date: draft.date,
    concentrationPercent: typed(draft.strength),
    bottles: typed(bottles),
    volumeMl: typed(draft.bottleMl),
    stockPercent,
    pharmacy: pharmacy.name,
    preserved: draft.preserved,
    ...(draft.override.trim() === "" ? {} : { override: draft.override.trim() }),
  }
}
