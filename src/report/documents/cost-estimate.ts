import { type CostPlan, costPlan, PLAN_MONTHS } from "../../engine/cost/cost-plan.js"
import { type CostRow, costRows, rowInWords } from "../../engine/cost/cost-rows.js"
import { coverageInShort, coverageInWords } from "../../engine/cost/coverage.js"
import { amountInWords, moneyInWords } from "../../engine/cost/money.js"
import { type Paid, paidSoFar } from "../../engine/cost/payments.js"
import type { Coverage } from "../../engine/practice-rules.js"
import { dayInWords, say, shortDayInWords } from "../../engine/say.js"
import { capitalised } from "../../engine/words.js"
import type { Block, DocumentContent, DocumentPart, DocumentRefused } from "../document.js"
import type { DocumentInput } from "../document-input.js"
import { daysInWords } from "../iso-days.js"

/** The last children leave a course within ten years of it; what is asked for beyond is a slip of the pen. */
const MOST_MONTHS = 120

/** What the coming months cost, for the family to take home: three sums kept apart, and what falls due when. */
export function costEstimate(input: DocumentInput): DocumentContent | DocumentRefused {
  const { course, rules, today, treatment, months = PLAN_MONTHS } = input
  if (!Number.isInteger(months) || months < 1 || months > MOST_MONTHS) {
    const allowed = { months: String(months), most: MOST_MONTHS }
    return {
      kind: "refused",
      why: say("months must be a whole number from 1 to {most}, not {months}", allowed),
    }
  }
  const plan = costPlan({
    course,
    treatment: treatment?.kind === "none" ? null : treatment,
    rules,
    today,
    months,
  })
  if (plan.kind === "refused") return { kind: "refused", why: daysInWords(plan.why) }
  const paid = paidSoFar({ course, currency: plan.currency, today })
  return {
    title: say("Estimate of costs"),
    parts: partsOf({ input, plan, paid }),
    values: valuesOf({ input, plan, paid }),
    foot: say("An estimate made on {date}, not an invoice.", { date: dayInWords(today) }),
  }
}

interface Estimate {
  readonly input: DocumentInput
  readonly plan: CostPlan
  readonly paid: Paid
}

const partsOf = ({ input, plan, paid }: Estimate): readonly DocumentPart[] => [
  { name: "child", blocks: [childAndPlan(input, plan)] },
  { name: "no-invoice", blocks: [noInvoice(plan)] },
  { name: "sums", blocks: sums(plan) },
  { name: "paid", blocks: paidBlocks(paid, plan) },
  { name: "no-fee", blocks: withoutFee(plan) },
  { name: "by-date", blocks: byDate(plan) },
  { name: "taken-for-granted", blocks: takenForGranted(plan) },
]

function childAndPlan({ childName, course }: DocumentInput, { option, from, to }: CostPlan): Block {
  return {
    kind: "pairs",
    pairs: [
      [say("For|the child"), childName ?? say("your child")],
      [say("Born|day of birth"), dayInWords(course.child.born)],
      [say("Plan"), capitalised(option)],
      [say("Time"), say("{from} to {to}", { from: dayInWords(from), to: dayInWords(to) })],
    ],
  }
}

const noInvoice = ({ from }: CostPlan): Block => ({
  kind: "caution",
  lines: [
    say("This is an estimate made on {date}, not an invoice.", { date: dayInWords(from) }),
    say("What is paid in the end depends on the visits that take place and on the fees of their day."),
  ],
})

/** The sums side by side, never added up; what the family pays is said from one to the other. */
function sums({ totals, currency, months }: CostPlan): readonly Block[] {
  const money = (cents: number) => moneyInWords(cents, currency)
  const { notCoveredCents, uncertainCents, coveredCents } = totals
  const sum = money(notCoveredCents)
  return [
    {
      kind: "heading",
      level: 1,
      text: say("Still to come in {months, plural, one {# month} other {# months}}", { months }),
    },
    {
      kind: "pairs",
      pairs: [
        [capitalised(coverageInWords("not-covered")), sum],
        [capitalised(coverageInWords("uncertain")), money(uncertainCents)],
        [capitalised(coverageInWords("covered")), money(coveredCents)],
      ],
    },
    {
      kind: "text",
      text:
        uncertainCents > 0
          ? say("You pay {sum}, and up to {more} more if nothing uncertain is paid for.", {
              sum,
              more: money(uncertainCents),
            })
          : say("You pay {sum}.", { sum }),
    },
  ]
}

function paidBlocks({ cents, payments, problems }: Paid, { currency }: CostPlan): readonly Block[] {
  const sum = moneyInWords(cents, currency)
  return [
    ...(payments.length > 0
      ? [text(say("Paid so far: {sum}. The sums above are what is still to come.", { sum }))]
      : []),
    ...(problems.length > 0
      ? [
          text(
            say(
              "{count, plural, one {One payment in another currency ({currencies}) is not counted here.} other {# payments in another currency ({currencies}) are not counted here.}}",
              {
                count: problems.length,
                currencies: [...new Set(problems.map(({ value }) => String(value)))].join(", "),
              },
            ),
          ),
        ]
      : []),
  ]
}

/** What is planned but has no fee: without it the sums are too small. */
const withoutFee = ({ withoutFee: what }: CostPlan): readonly Block[] =>
  what.length === 0
    ? []
    : [
        { kind: "text", text: say("Not counted, because no fee is set for it:") },
        { kind: "list", items: what.map(capitalised) },
        { kind: "text", text: say("The sums are too small by that.") },
      ]

/** Each amount stands in the column of who bears it, so that what adds up stands under each other and nothing else does. */
function byDate(plan: CostPlan): readonly Block[] {
  const { currency, totals } = plan
  const amount = (cents: number) => amountInWords(cents, currency)
  const rows = costRows(plan)
  if (rows.length === 0) {
    return [
      { kind: "heading", level: 1, text: say("What falls due when") },
      text(say("Nothing falls due in these months.")),
    ]
  }
  return [
    { kind: "heading", level: 1, text: say("What falls due when, in {currency}", { currency }) },
    {
      kind: "table",
      head: [say("Day"), say("What"), ...COLUMNS.map((coverage) => capitalised(coverageInShort(coverage)))],
      rows: [
        ...rows.map((row) => [
          daysOf(row),
          whatOf(row),
          ...COLUMNS.map((coverage) => (row.cents > 0 && row.coverage === coverage ? amount(row.cents) : "")),
        ]),
        [
          "",
          say("Sum of each column"),
          amount(totals.notCoveredCents),
          amount(totals.uncertainCents),
          amount(totals.coveredCents),
        ],
      ],
      figures: [2, 3, 4],
    },
  ]
}

const COLUMNS: readonly Coverage[] = ["not-covered", "uncertain", "covered"]

function whatOf(row: CostRow): string {
  const what = capitalised(rowInWords(row))
  return row.cents === 0 ? say("{what}, free of charge", { what }) : what
}

const daysOf = ({ from, to }: CostRow): string =>
  from === to
    ? shortDayInWords(from)
    : say("{from} to {to}", { from: shortDayInWords(from), to: shortDayInWords(to) })

const takenForGranted = ({ assumptions }: CostPlan): readonly Block[] => [
  { kind: "heading", level: 1, text: say("Taken for granted") },
  { kind: "list", items: assumptions.map(daysInWords) },
]

const text = (words: string): Block => ({ kind: "text", text: words })

/** What a practice's template may put into sentences of its own. */
function valuesOf({ input, plan, paid }: Estimate): Readonly<Record<string, string>> {
  const money = (cents: number) => moneyInWords(cents, plan.currency)
  const { notCoveredCents, uncertainCents, coveredCents } = plan.totals
  return {
    child: input.childName ?? "",
    practice: input.practice.name,
    today: dayInWords(input.today),
    plan: plan.option,
    from: dayInWords(plan.from),
    to: dayInWords(plan.to),
    months: String(plan.months),
    notCovered: money(notCoveredCents),
    uncertain: money(uncertainCents),
    covered: money(coveredCents),
    paid: money(paid.cents),
  }
}
