import type { CalendarDate, Treatment } from "../engine/course.js"
import type { DemoChild } from "../engine/simulate/demo.js"
import { demoFees } from "../engine/simulate/demo-fees.js"
import { demoContacts, demoPharmacy } from "../engine/simulate/demo-practice.js"
import { type Draft, dayOf, type PracticeRecord } from "../record/index.js"

type Event = Pick<Draft, "child" | "kind" | "body" | "id" | "supersedes" | "reason"> & {
  readonly on: CalendarDate
}

/** Who is named beside the invented entries; nobody can log in as this person. */
const AUTHOR = "Demo staff"

/**
 * Records the invented children as if day by day, all in one transaction. Does nothing when the practice has
 * children already, so that it may be called at every start. Returns how many children it recorded.
 */
export async function loadDemo({
  record,
  children,
  nowMs,
}: {
  readonly record: PracticeRecord
  /** Asked only when they are needed. */
  readonly children: () => readonly DemoChild[]
  readonly nowMs: number
}): Promise<number> {
  const { total } = await record.children({ page: 1, pageSize: 1 })
  if (total > 0) return 0
  const author = await demoAuthor(record, nowMs)
  const invented = children()
  const events = invented.flatMap(eventsOf)
  // The sort is stable: what happened on one day stays in the order it is told in.
  events.sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0))
  const now = new Date(nowMs).toISOString()
  const drafts = events.map(({ on, ...event }) => {
    const endOfDay = `${on}T16:00:00.000Z`
    return { ...event, author, recordedAt: endOfDay < now ? endOfDay : now } as Draft
  })
  // The practice set its rules before the first child came.
  const recordedAt = drafts[0]?.recordedAt ?? now
  const papers = practicePapers(record.practice.id).map(
    (paper) => ({ ...paper, author, recordedAt }) as Draft,
  )
  const saved = await record.append([...papers, ...drafts])
  if (saved.kind !== "saved")
    throw new Error(`the demo contradicts itself: ${saved.problems.map(({ message }) => message).join("; ")}`)
  return invented.length
}

/** Fees, a pharmacy and contacts of the invented practice. */
function practicePapers(practice: string) {
  return [
    { kind: "fees", child: practice, body: demoFees },
    { kind: "pharmacy", child: practice, body: demoPharmacy },
    { kind: "contacts", child: practice, body: demoContacts },
  ] as const
}

/** Whether the practice is the invented one. */
export async function isDemo(record: PracticeRecord): Promise<boolean> {
  return (await record.people()).some(({ name }) => name === AUTHOR)
}

async function demoAuthor(record: PracticeRecord, nowMs: number): Promise<string> {
  const known = (await record.people()).find(({ name }) => name === AUTHOR)
  if (known) return known.id
  const id = crypto.randomUUID()
  const createdAt = new Date(nowMs).toISOString()
  await record.addPerson({
    id,
    name: AUTHOR,
    logIn: AUTHOR,
    role: "clinician",
    passwordHash: null,
    createdAt,
  })
  return id
}

function eventsOf({ name, number, course }: DemoChild): readonly Event[] {
  const { id: _, ...person } = course.child
  const child = crypto.randomUUID()
  const visits = course.visits.map((body) => ({ kind: "visit", child, body, on: body.date }) as const)
  const dated = [
    ...(course.supplies ?? []).map((body) => ({ kind: "supply", child, body }) as const),
    ...(course.missedNights ?? []).map((body) => ({ kind: "missed-nights", child, body }) as const),
    ...(course.consents ?? []).map((body) => ({ kind: "consent", child, body }) as const),
    ...(course.decisions ?? []).map((body) => ({ kind: "decision", child, body }) as const),
    ...(course.concerns ?? []).map((body) => ({ kind: "concern", child, body }) as const),
    ...(course.orders ?? []).map((body) => ({ kind: "order", child, body }) as const),
    ...(course.explanations ?? []).map((body) => ({ kind: "explanation", child, body }) as const),
    ...(course.payments ?? []).map((body) => ({ kind: "payment", child, body }) as const),
  ].map((entry): Event => ({ ...entry, on: dayOf(entry) ?? course.child.born }))
  const treatments = (course.treatments ?? []).flatMap((treatment) => treatmentEvents(child, treatment))
  const all: readonly Event[] = [...visits, ...treatments, ...dated]
  const firstDay = all.map(({ on }) => on).sort()[0] ?? course.child.born
  return [{ kind: "child", id: child, child, body: { ...person, name, number }, on: firstDay }, ...all]
}

/** A treatment is started on one day and its end recorded on another. */
function treatmentEvents(child: string, { to, ...started }: Treatment): readonly Event[] {
  const id = crypto.randomUUID()
  const start = { kind: "treatment", id, child, body: started, on: started.from } as const
  if (!to) return [start]
  const reason = `ended on ${to}`
  return [start, { kind: "treatment", child, body: { ...started, to }, supersedes: id, reason, on: to }]
}
