import type { FastifyRequest } from "fastify"
import type { Treatment } from "../engine/course.js"
import { say } from "../engine/say.js"
import { treatmentName } from "../engine/treatment-name.js"
import { problem } from "../interop/course/problem.js"
import type { Entry, Person } from "../record/index.js"
import type { Context } from "./context.js"
import type { ChildView } from "./contract/child.js"
import type { Problem } from "./contract/problem.js"
import { checkItems } from "./course-check.js"
import { sentItem } from "./record-items.js"
import { noSuch, Refusal } from "./refusal.js"
import { authored, problemsOf, save } from "./save.js"

/**
 * Ends the running treatment on a day and starts another on the same day, in one transaction: both are recorded or
 * neither, so no child is ever left between two strengths. Sent again with the same `id`, it is recorded once.
 */
export function changeTreatment(
  context: Context,
  asked: {
    readonly child: string
    readonly entryId: string
    readonly sent: unknown
    readonly person: Person
    readonly request: FastifyRequest
  },
): Promise<ChildView> {
  const { child, entryId, person, request } = asked
  return context.oneAtATime(async () => {
    const entries = await context.record.entriesOf(child)
    const running = entries.find(({ id }) => id === entryId)
    if (running?.kind !== "treatment") throw noSuch("treatment", entryId)
    const { id, fields } = sentItem(asked.sent)
    // A repeated request finds its own stop by what it superseded, and is answered as it was the first time.
    const stopped = entries.find(({ supersedes }) => supersedes === entryId)
    if (stopped && !entries.some((entry) => entry.id === id)) throw alreadyDone(stopped)
    const { to, reason, ...started } = (fields ?? {}) as Readonly<Record<string, unknown>>
    const course = await context.record.courseOf(child, { without: [entryId, id] })
    if (!course) throw noSuch("child", child)
    const checked = checkItems("treatments", {
      course,
      items: [
        { ...running.body, to },
        { ...started, from: to },
      ],
      today: context.clock.today(),
      place: () => "",
    })
    const found = [
      ...("problems" in checked ? onceEach(checked.problems.map(asSent)) : []),
      ...noChange(running.body, started),
      ...endedBefore(running.body, to),
    ]
    const sound = problemsOf(request, found.length > 0 ? { problems: found } : checked)
    const [ended, begun] = sound.items
    if (!ended || !begun) throw new RangeError("two treatments were checked and not two came back")
    const why =
      typeof reason === "string"
        ? reason
        : say("changed to {treatment} on {day}", { treatment: treatmentName(begun), day: begun.from })
    return save(context, child, [
      authored(context, person, {
        kind: "treatment",
        child,
        body: ended,
        id: stopped?.id,
        supersedes: entryId,
        reason: why,
      }),
      authored(context, person, { kind: "treatment", child, body: begun, id }),
    ])
  })
}

function alreadyDone({ id, recordedAt }: Entry): Refusal {
  const message = say(
    "this treatment was stopped, changed or corrected meanwhile, on {day}; load the page again",
    { day: recordedAt.slice(0, 10) },
  )
  return new Refusal(409, [{ path: "", value: id, allowed: say("a treatment as it stands now"), message }])
}

/** One day is the end of the one and the start of the other: the request calls it `to`. */
function asSent(fault: Problem): Problem {
  if (fault.path !== "from") return fault
  return { ...fault, path: "to", message: fault.message.replace(/^from\b/, "to") }
}

function onceEach(problems: readonly Problem[]): readonly Problem[] {
  return problems.filter(
    ({ path, allowed }, index) =>
      problems.findIndex((other) => other.path === path && other.allowed === allowed) === index,
  )
}

function noChange(running: Treatment, started: Readonly<Record<string, unknown>>): readonly Problem[] {
  const { kind, concentrationPercent } = running
  if (started.kind !== kind || (started.concentrationPercent ?? undefined) !== concentrationPercent) return []
  const path = concentrationPercent === undefined ? "kind" : "concentrationPercent"
  return [
    problem({
      path,
      value: started[path],
      allowed: say("another than the {treatment} of now", { treatment: treatmentName(running) }),
    }),
  ]
}

function endedBefore({ to: end }: Treatment, to: unknown): readonly Problem[] {
  if (!end || typeof to !== "string" || to < end) return []
  return [
    problem({
      path: "to",
      value: to,
      allowed: say("before {end}, when the treatment ends already", { end }),
    }),
  ]
}
