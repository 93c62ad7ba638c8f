import type { FastifyRequest } from "fastify"
import type { BottleOrder, Course } from "../engine/course.js"
import type { Draft, EntryKind, Person } from "../record/index.js"
import type { Context } from "./context.js"
import type { ChildView } from "./contract/child.js"
import type { Problem } from "./contract/problem.js"
import { checkItems, type List } from "./course-check.js"
import { refuseUnconsented } from "./order-check.js"
import { paymentCurrencyProblems } from "./payment-currency.js"
import { noSuch } from "./refusal.js"
import { authored, problemsOf, save } from "./save.js"

export const KINDS = {
  visits: "visit",
  treatments: "treatment",
  supplies: "supply",
  consents: "consent",
  missedNights: "missed-nights",
  decisions: "decision",
  concerns: "concern",
  orders: "order",
  explanations: "explanation",
  payments: "payment",
} as const satisfies Readonly<Record<List, EntryKind>>

/** The list of the course file that entries of a kind stand in; undefined for who the child is, and for papers. */
export const listOf = (kind: EntryKind): List | undefined =>
  (Object.keys(KINDS) as List[]).find((list) => KINDS[list] === kind)

/** What the record keeps of an item beside the course file, and what is wrong with that. */
export interface KeptBeside {
  readonly fields: object
  readonly problems: readonly Problem[]
}

/** One item of a course as it was sent. */
export interface SentItem {
  readonly fields: unknown
  /** Where it stands in the request. */
  readonly place: string
  readonly id?: string | undefined
  readonly supersedes?: string | undefined
  readonly reason?: string | undefined
  readonly beside?: KeptBeside | undefined
}

/** Checks the items against the child's course and records them: all, or none and every fault at once. */
export function recordItems(
  context: Context,
  {
    list,
    child,
    items,
    person,
    request,
  }: {
    readonly list: keyof typeof KINDS
    readonly child: string
    readonly items: readonly SentItem[]
    readonly person: Person
    readonly request: FastifyRequest
  },
): Promise<ChildView> {
  return context.oneAtATime(async () => {
    // What is about to be superseded, or was recorded by this same request before, does not stand in its own way.
    const without = items.flatMap(({ id, supersedes }) => [id, supersedes])
    const course: Course | null = await context.record.courseOf(child, { without })
    if (!course) throw noSuch("child", child)
    const checked = checkItems(list, {
      course,
      items: items.map(({ fields }) => fields),
      today: context.clock.today(),
      place: (index) => items[index]?.place ?? "",
    })
    const besides = [
      ...items.flatMap(({ beside }) => beside?.problems ?? []),
      ...(list === "payments" ? await paymentCurrencyProblems(context, items) : []),
    ]
    const found = "problems" in checked ? checked.problems : []
    const all = besides.length > 0 ? { problems: [...found, ...besides] } : checked
    const sound = problemsOf(request, all).items
    if (list === "orders") {
      const superseded = items.map(({ supersedes }) => supersedes)
      await refuseUnconsented(sound as readonly BottleOrder[], { context, child, course, superseded })
    }
    const drafts = sound.map((read, index) => {
      const { id, supersedes, reason, beside } = items[index] ?? {}
      const body = { ...read, ...beside?.fields }
      return authored(context, person, { kind: KINDS[list], child, body, id, supersedes, reason } as Draft)
    })
    return save(context, child, drafts)
  })
}

/** What was sent parted into the entry's id and the fields of the course file. */
export function sentItem(sent: unknown): SentItem {
  if (typeof sent !== "object" || sent === null || Array.isArray(sent)) return { fields: sent, place: "" }
  const { id, ...fields } = sent as Readonly<Record<string, unknown>>
  return { fields, place: "", id: typeof id === "string" ? id.toLowerCase() : undefined }
}
