import type { CalendarDate, Course, Treatment, Visit, VisitSource } from "../../engine/course.js"
import { say } from "../../engine/say.js"
import { courseFrom } from "../../interop/course/read-course.js"
import type { Identity } from "../../interop/intake/fragment.js"
import { mergedVisit } from "../../interop/intake/merged-visit.js"
import { fragmentsOf } from "../../interop/table/fragments-of.js"
import type { RowReading } from "../../interop/table/table-types.js"
import type { ChildBody, Entry } from "../../record/index.js"
import type { ImportProblem } from "./problem.js"
import type { PlanCounts, PlannedEntry } from "./staging.js"

export interface ChildPlan {
  readonly entries: readonly PlannedEntry[]
  readonly problems: readonly ImportProblem[]
  readonly counts: PlanCounts
}

/** What all rows of one child add to what is recorded: they fill in and never change. */
export function planChild({
  child,
  identity,
  readings,
  recorded,
  today,
  source,
  file,
}: {
  /** Id of the child, whether or not it is recorded yet. */
  readonly child: string
  readonly identity: Identity
  readonly readings: readonly RowReading[]
  /** What holds of the child; empty for one that is new. */
  readonly recorded: readonly Entry[]
  readonly today: CalendarDate
  readonly source: VisitSource
  readonly file: string
}): ChildPlan {
  // The rows were found to be of one child; what some of them leave out others say.
  const [fragment] = fragmentsOf(
    readings.map((reading) => ({ ...reading, identity })),
    { source },
  )
  const problemAt = problemsOf(identity, readings)
  const problems: ImportProblem[] = (fragment?.notes ?? []).map(({ path, why }) => problemAt({ path, why }))
  const named = recorded.find((entry) => entry.kind === "child")
  const body: ChildBody | null =
    named?.kind === "child" ? named.body : newChild(identity, fragment?.course.child ?? {})
  if (!body || !fragment) return { entries: [], problems, counts: { ...NO_COUNTS, rows: readings.length } }
  const visits = plannedVisits({ offered: fragment.course.visits ?? [], recorded, problems, problemAt, file })
  const treatments = plannedTreatments({ offered: fragment.course.treatments ?? [], recorded })
  const sound = soundOf({ body, visits, treatments, today, problems, problemAt })
  if (!sound) return { entries: [], problems, counts: { ...NO_COUNTS, rows: readings.length } }
  const entries: PlannedEntry[] = [
    ...(named ? [] : [{ kind: "child", id: child, body } as const]),
    ...sound.visits,
    ...sound.treatments,
  ]
  // A child is not made for rows of which nothing can be taken.
  const isEmpty = !named && entries.length === 1 && readings.some(({ visits }) => visits.length > 0)
  const fresh = sound.visits.filter(({ supersedes }) => supersedes === undefined)
  return {
    entries: isEmpty ? [] : entries,
    problems,
    counts: {
      rows: readings.length,
      visitsNew: fresh.length,
      visitsAddedTo: sound.visits.length - fresh.length,
      glasses: fresh.filter(({ body: visit }) => (visit as Visit).from !== undefined).length,
      treatments: sound.treatments.length,
    },
  }
}

const NO_COUNTS: PlanCounts = { rows: 0, visitsNew: 0, visitsAddedTo: 0, glasses: 0, treatments: 0 }

type ProblemAt = (at: {
  readonly path: string
  readonly why: string
  readonly value?: unknown
}) => ImportProblem

/** Puts a fault of a visit back to the line of the file that it was read from. */
function problemsOf({ name, number }: Identity, readings: readonly RowReading[]): ProblemAt {
  const who = name ?? number ?? ""
  const lines = new Map(
    readings.flatMap(({ line, visits }) => visits.map(({ date }) => [date, line] as const)).reverse(),
  )
  return ({ path, why, value }) => {
    const date = /\d{4}-\d{2}-\d{2}/.exec(path)?.[0]
    const line = (date ? lines.get(date) : undefined) ?? readings[0]?.line ?? null
    return { line, heading: who, value: value === undefined ? "" : shown(value), why }
  }
}

const shown = (value: unknown): string => (typeof value === "object" ? JSON.stringify(value) : String(value))

function newChild(
  { name, number, born, sex }: Identity,
  more: Partial<Pick<Course["child"], "ancestry" | "myopicParents">>,
): ChildBody | null {
  const called = name ?? number
  if (born === undefined || sex === undefined || called === undefined) return null
  return {
    name: called,
    ...(number === undefined ? {} : { number }),
    born,
    sex,
    ...(more.ancestry === undefined ? {} : { ancestry: more.ancestry }),
    ...(more.myopicParents === undefined ? {} : { myopicParents: more.myopicParents }),
  }
}

function plannedVisits({
  offered,
  recorded,
  problems,
  problemAt,
  file,
}: {
  readonly offered: readonly Visit[]
  readonly recorded: readonly Entry[]
  readonly problems: ImportProblem[]
  readonly problemAt: ProblemAt
  readonly file: string
}): readonly PlannedEntry[] {
  const known = new Map(
    recorded.flatMap((entry) => (entry.kind === "visit" ? [[entry.body.date, entry] as const] : [])),
  )
  return offered.flatMap((visit): readonly PlannedEntry[] => {
    const there = known.get(visit.date)
    if (there?.kind !== "visit") return [{ kind: "visit", id: crypto.randomUUID(), body: visit }]
    const merged = mergedVisit(there.body, visit)
    for (const { path, recorded: was, offered: now } of merged.contradictions)
      problems.push(
        problemAt({
          path: visit.date,
          value: now,
          why: say("{path} of {date} is recorded as {recorded}; what is recorded stays", {
            path,
            date: visit.date,
            recorded: shown(was),
          }),
        }),
      )
    if (merged.added.length === 0) return []
    return [
      {
        kind: "visit",
        id: crypto.randomUUID(),
        body: merged.visit,
        supersedes: there.id,
        reason: say("filled in from {file}", { file }),
      },
    ]
  })
}

/** A treatment that is recorded already, whatever else is known of it, is no news. */
function plannedTreatments({
  offered,
  recorded,
}: {
  readonly offered: readonly Treatment[]
  readonly recorded: readonly Entry[]
}): { readonly known: readonly Treatment[]; readonly fresh: readonly PlannedEntry[] } {
  const known = recorded.flatMap((entry) => (entry.kind === "treatment" ? [entry.body] : []))
  const isKnown = (treatment: Treatment) =>
    known.some(
      ({ from, kind, concentrationPercent }) =>
        from === treatment.from &&
        kind === treatment.kind &&
        concentrationPercent === treatment.concentrationPercent,
    )
  const fresh = offered
    .filter((treatment) => !isKnown(treatment))
    .map((body): PlannedEntry => ({ kind: "treatment", id: crypto.randomUUID(), body }))
  return { known, fresh }
}

interface Sound {
  readonly visits: readonly PlannedEntry[]
  readonly treatments: readonly PlannedEntry[]
}

/** What is left when everything that breaks a rule of the course file is taken out; null when the child itself does. */
function soundOf({
  body: { name: _, number: __, ...child },
  visits,
  treatments: { known, fresh },
  today,
  problems,
  problemAt,
}: {
  readonly body: ChildBody
  readonly visits: readonly PlannedEntry[]
  readonly treatments: ReturnType<typeof plannedTreatments>
  readonly today: CalendarDate
  readonly problems: ImportProblem[]
  readonly problemAt: ProblemAt
}): Sound | null {
  let left: Sound = { visits, treatments: fresh }
  for (;;) {
    const file = {
      lengthwise: 1,
      child,
      visits: left.visits.map(({ body }) => body),
      treatments: [...known, ...left.treatments.map(({ body }) => body)],
    }
    const read = courseFrom(file, { today })
    if (!("problems" in read)) return withReadBodies(left, read.course)
    const bad = { visits: new Set<number>(), treatments: new Set<number>() }
    for (const { path, message, value } of read.problems) {
      const [, list, place] = /^(visits|treatments)\[(\d+)\]/.exec(path) ?? []
      const index = Number(place)
      const date = list === "visits" ? (left.visits[index]?.body as Visit | undefined)?.date : undefined
      problems.push(problemAt({ path: date ?? path, why: message, value: value ?? undefined }))
      if (list === "visits") bad.visits.add(index)
      else if (list === "treatments") bad.treatments.add(index - known.length)
      else return null
    }
    // A fault between a recorded treatment and a new one may be told of the recorded one.
    const dropsAll = [...bad.treatments].some((index) => index < 0)
    const next: Sound = {
      visits: left.visits.filter((_entry, index) => !bad.visits.has(index)),
      treatments: dropsAll ? [] : left.treatments.filter((_entry, index) => !bad.treatments.has(index)),
    }
    const isStuck =
      next.visits.length === left.visits.length && next.treatments.length === left.treatments.length
    if (isStuck) return null
    left = next
  }
}

/** The bodies as the course file reads them: an axis of 0 as 180. */
function withReadBodies({ visits, treatments }: Sound, course: Course): Sound {
  const byDate = new Map(course.visits.map((visit) => [visit.date, visit]))
  return {
    visits: visits.map(
      (entry) => ({ ...entry, body: byDate.get((entry.body as Visit).date) ?? entry.body }) as PlannedEntry,
    ),
    treatments,
  }
}
