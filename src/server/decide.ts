import type { FastifyRequest } from "fastify"
import { type DecisionPlan, decisionPlan, type RecordedTreatment } from "../engine/choices/decision-plan.js"
import type { Treatment, TreatmentChoice } from "../engine/course.js"
import { say } from "../engine/say.js"
import type { Entry, Person } from "../record/index.js"
import { childViewOf } from "./child-view.js"
import type { Context } from "./context.js"
import type { ChildView } from "./contract/child.js"
import { decidePlanFields } from "./contract/decide.js"
import type { Problem } from "./contract/problem.js"
import { checkItems } from "./course-check.js"
import { sentItem } from "./record-items.js"
import { noSuch, Refusal } from "./refusal.js"
import { authored, problemsOf, save } from "./save.js"

const LONGEST_REASON = 500

/**
 * Records a decision and the treatment entries it implies in one transaction: all or none, with every fault at once.
 * Sent again with the same `id`, it is recorded once.
 */
export function decide(
  context: Context,
  asked: {
    readonly child: string
    readonly sent: unknown
    readonly person: Person
    readonly request: FastifyRequest
  },
): Promise<ChildView> {
  const { child, person, request } = asked
  return context.oneAtATime(async () => {
    const { id, fields } = sentItem(asked.sent)
    const sent = (fields ?? {}) as Readonly<Record<string, unknown>>
    const entries = await context.record.entriesOf(child)
    const before = entries.find((entry) => entry.id === id)
    if (before) return repeated(context, { child, before, sent })

    const planned = planOf(sent, recordedTreatments(entries))
    const plan = "problems" in planned ? { ends: [], starts: [] } : planned
    const course = await context.record.courseOf(child, { without: plan.ends.map((ended) => ended.id) })
    if (!course) throw noSuch("child", child)
    const today = context.clock.today()
    const treatments = checkItems("treatments", {
      course,
      items: [...plan.ends.map(({ treatment }) => ({ ...treatment, to: fromOf(sent) })), ...plan.starts],
      today,
      place: (index) => (index < plan.ends.length ? "ends" : `starts[${index - plan.ends.length}]`),
    })
    const decisions = checkItems("decisions", {
      course,
      items: [decisionOf(sent, plan)],
      today,
      place: () => "",
    })
    const found = [
      ...("problems" in planned ? planned.problems : []),
      ...("problems" in treatments ? treatments.problems.map(asSent) : []),
      ...("problems" in decisions ? decisions.problems : []),
    ]
    const sound = problemsOf(
      request,
      found.length > 0 || "problems" in treatments || "problems" in decisions
        ? { problems: onceEach(found) }
        : { treatments: treatments.items, decision: decisions.items[0] },
    )
    if (!sound.decision) throw new RangeError("a decision was checked and none came back")
    const { date, reason } = sound.decision
    const why = say("decided on {date}: {reason}", { date, reason }).slice(0, LONGEST_REASON)
    return save(context, child, [
      authored(context, person, { kind: "decision", child, body: sound.decision, id }),
      ...sound.treatments.map((body, index) => {
        const ended = plan.ends[index]
        const superseding = ended ? { supersedes: ended.id, reason: why } : {}
        return authored(context, person, { kind: "treatment", child, body, ...superseding })
      }),
    ])
  })
}

/** The first day on which the decision holds. */
const fromOf = ({ from, date }: Readonly<Record<string, unknown>>): unknown => from ?? date

function repeated(
  { record }: Context,
  {
    child,
    before,
    sent,
  }: { readonly child: string; readonly before: Entry; readonly sent: Readonly<Record<string, unknown>> },
): Promise<ChildView> {
  const isSame =
    before.kind === "decision" && before.body.kind === sent.kind && before.body.date === sent.date
  if (isSame) return childViewOf(record, child)
  const message = say("something else was recorded under this id; load the page again")
  throw new Refusal(409, [{ path: "id", value: before.id, allowed: say("an id not used yet"), message }])
}

function recordedTreatments(entries: readonly Entry[]): readonly RecordedTreatment[] {
  const superseded = new Set(entries.map(({ supersedes }) => supersedes))
  return entries.flatMap((entry) =>
    entry.kind === "treatment" && !superseded.has(entry.id) ? [{ id: entry.id, treatment: entry.body }] : [],
  )
}

/** Nothing is planned from what the contract turns down: it says so itself, at its field. */
function planOf(
  sent: Readonly<Record<string, unknown>>,
  recorded: readonly RecordedTreatment[],
): ReturnType<typeof decisionPlan> {
  const read = decidePlanFields.safeParse({ ...sent, from: fromOf(sent) })
  if (!read.success) return { ends: [], starts: [] }
  const { kind, treatments, from, ends, nightsPerWeek } = read.data
  if (!from) return { ends: [], starts: [] }
  const request = {
    kind,
    from,
    treatments: (treatments ?? []).map(choiceOf),
    ends: ends ?? [],
    nightsPerWeek: nightsPerWeek ?? undefined,
  }
  return decisionPlan(request, recorded)
}

const choiceOf = ({
  kind,
  concentrationPercent,
}: {
  readonly kind: Treatment["kind"]
  readonly concentrationPercent?: number | null | undefined
}): TreatmentChoice => ({
  kind,
  ...(concentrationPercent == null ? {} : { concentrationPercent }),
})

/** What is kept of the decision: what it is about is what begins, or else what ends. */
function decisionOf(
  { date, kind, reason, treatments, offered, figures }: Readonly<Record<string, unknown>>,
  plan: DecisionPlan,
): object {
  const named: unknown = Array.isArray(treatments) ? treatments[0] : undefined
  const moved = plan.starts[0] ?? plan.ends[0]?.treatment
  const treatment = named ?? (moved ? choiceOf(moved) : undefined)
  return {
    date,
    kind,
    reason,
    ...(treatment === undefined ? {} : { treatment }),
    ...(offered == null ? {} : { offered }),
    ...(figures == null ? {} : { figures }),
  }
}

/** The request has one day for what ends and what begins, and calls what begins by its place in `treatments`. */
function asSent(fault: Problem): Problem {
  const path = fault.path
    .replace(/^ends\.to$/, "from")
    .replace(/^starts\[\d+\]\.(from|nightsPerWeek)$/, "$1")
    .replace(/^starts\[/, "treatments[")
  return { ...fault, path, message: fault.message.replace(fault.path, path) }
}

function onceEach(problems: readonly Problem[]): readonly Problem[] {
  return problems.filter(
    ({ path, allowed }, index) =>
      problems.findIndex((other) => other.path === path && other.allowed === allowed) === index,
  )
}
