import { consentTo, type OrderAbout, orderPaper } from "../../engine/compounding/order-paper.js"
import { dropsToSupply, orderRemarks } from "../../engine/compounding/order-remarks.js"
import {
  type NoPlannedOrder,
  type PlannedOrder,
  plannedOrder,
} from "../../engine/compounding/planned-order.js"
import type { SheetBlock, SheetSection } from "../../engine/compounding/sheet.js"
import { pharmacyInWords } from "../../engine/compounding/usual-pharmacy.js"
import type { BottleOrder } from "../../engine/course.js"
import type { Problem } from "../../engine/problem.js"
import { dayInWords, say } from "../../engine/say.js"
import { treatmentName } from "../../engine/treatment-name.js"
import { inDigits } from "../../engine/words.js"
import { compounding } from "../../evidence/generated/compounding.js"
import { datesInWords } from "../dates-in-words.js"
import type { Block, DocumentContent, DocumentPart, DocumentRefused } from "../document.js"
import type { DocumentInput } from "../document-input.js"

/** An order of bottles for the compounding pharmacist: the sheet of the page, on paper. */
export function compoundingOrderPaper(input: DocumentInput): DocumentContent | DocumentRefused {
  const found = orderOf(input)
  if (found.kind === "refused") return found
  const { order, planned } = found
  const about = aboutOf(input)
  const paper = orderPaper(order, planned ? { ...about, ...notOrdered(input, planned) } : about)
  if (paper.kind === "refused") return refused(notWorkedOut(paper.problems))
  const { sheet, pharmacy } = paper
  return {
    title: sheet.title,
    parts: [
      { name: "statement", blocks: [{ kind: "caution", lines: [sheet.statement] }] },
      ...(planned ? [plannedPart(planned, input)] : []),
      ...sheet.sections.map(partOf),
    ],
    values: {
      child: input.childName ?? "",
      practice: input.practice.name,
      today: dayInWords(input.today),
      ordered: planned ? "" : dayInWords(order.date),
      prescriber: input.author ?? "",
      pharmacy: pharmacyInWords(pharmacy.name),
      strength: inDigits(order.concentrationPercent),
      bottles: String(order.bottles),
      volume: inDigits(order.volumeMl),
    },
    foot: say(
      "An order for a pharmacist to check; the prescriber answers for it. Local law, product licences and the pharmacist decide. Not a medical device.",
    ),
  }
}

interface Found {
  readonly kind: "found"
  readonly order: BottleOrder
  readonly planned?: PlannedOrder | undefined
}

/** The order asked for, else the latest that stands, else one worked out from the drops in use. */
function orderOf({ course, orderIndex, today, rules }: DocumentInput): Found | DocumentRefused {
  const { orders = [] } = course
  if (orderIndex !== undefined) {
    const order = orders[orderIndex]
    if (order) return { kind: "found", order }
    return refused(
      say("there is no order {number}; {count, plural, =0 {none is} one {# is} other {# are}} recorded", {
        number: orderIndex + 1,
        count: orders.length,
      }),
    )
  }
  const latest = orders
    .filter(({ cancelled }) => cancelled === undefined)
    .reduce<BottleOrder | undefined>((last, one) => (last && last.date > one.date ? last : one), undefined)
  if (latest) return { kind: "found", order: latest }
  const planned = plannedOrder({ course, today, rules })
  return planned.kind === "planned"
    ? { kind: "found", order: planned.order, planned }
    : refused(whyNone(planned))
}

function whyNone(none: NoPlannedOrder): string {
  switch (none.kind) {
    case "no-drops":
      return say("nothing is on order, and no drops are in use or decided on for this child")
    case "no-strength":
      return say("nothing is on order, and the strength of the drops in use is not recorded")
    case "refused":
      return notWorkedOut(none.problems)
  }
}

const notWorkedOut = (problems: readonly Problem[]): string =>
  say("the order cannot be worked out with what its pharmacy states it has: {why}", {
    why: problems.map(({ message }) => message).join("; "),
  })

const refused = (why: string): DocumentRefused => ({ kind: "refused", why })

const aboutOf = (input: DocumentInput): OrderAbout => ({
  course: input.course,
  child: { name: input.childName, born: input.course.child.born, number: input.childNumber },
  practice: input.practice.name,
  rules: input.rules,
  prescriber: input.author ?? "",
  stability: compounding.stability,
})

const notOrdered = ({ course, today }: DocumentInput, { order: { concentrationPercent } }: PlannedOrder) => ({
  isOrdered: false,
  remarks: orderRemarks({ course, concentrationPercent, on: today }),
})

/** What a paper that nobody ordered yet rests on, to be seen before it is taken for an order. */
function plannedPart(planned: PlannedOrder, { course, today, rules }: DocumentInput): DocumentPart {
  const { drops } = planned
  const treatment = treatmentName(drops)
  const { concentrationPercent } = planned.order
  const consent = consentTo({ concentrationPercent, on: today }, { course, rules })
  const others = dropsToSupply(course, today).filter(
    (other) => other.concentrationPercent !== concentrationPercent,
  )
  const lines = [
    drops.from > today
      ? say("Not yet ordered: worked out for {treatment}, which begins on {date}.", {
          treatment,
          date: drops.from,
        })
      : say("Not yet ordered: worked out for the treatment in use, {treatment}.", { treatment }),
    spanOf(planned),
    ...(consent.kind === "in-force"
      ? []
      : [say("It is not to go out before a consent is in force: {why}.", { why: consent.why })]),
    ...others.map((other) =>
      say("{treatment} is given or decided on as well: it needs a sheet of its own.", {
        treatment: treatmentName(other),
      }),
    ),
  ]
  return { name: "not-ordered", blocks: [{ kind: "caution", lines: lines.map(datesInWords) }] }
}

function spanOf({ nights, from, until }: PlannedOrder): string {
  switch (until.kind) {
    case "review":
      return say(
        "The bottles are counted from {from} to the next review after delivery, on {date}: {nights, plural, one {# night} other {# nights}}. Bottles in hand are not taken off.",
        { from, date: until.date, nights },
      )
    case "stop":
      return say(
        "The bottles are counted from {from} to the end of the treatment on {date}: {nights, plural, one {# night} other {# nights}}. Bottles in hand are not taken off.",
        { from, date: until.date, nights },
      )
    case "usual":
      return say(
        "No review is planned: the bottles are counted for {nights, plural, one {# night} other {# nights}} from {from}. Bottles in hand are not taken off.",
        { from, nights },
      )
  }
}

const partOf = ({ name, heading, blocks }: SheetSection): DocumentPart => ({
  name,
  blocks: [{ kind: "heading", level: 1, text: heading }, ...blocks.flatMap(blocksOf)],
})

function blocksOf(block: SheetBlock): readonly Block[] {
  switch (block.kind) {
    case "pairs":
      return [{ kind: "pairs", pairs: block.pairs.map(([label, value]) => [label, datesInWords(value)]) }]
    case "lines":
      return block.lines.map((line) => ({ kind: "text", text: datesInWords(line) }))
    case "caution":
    case "notes":
    case "label":
      return [{ kind: block.kind, lines: block.lines.map(datesInWords) }]
    case "table":
    case "signatures":
      return [block]
  }
}
