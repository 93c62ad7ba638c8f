import type { Treatment, Visit, VisitSource } from "../../engine/course.js"
import { say } from "../../engine/say.js"
import type { Fragment, Identity } from "../intake/fragment.js"
import { mergedVisit } from "../intake/merged-visit.js"
import type { RowReading, TableNote } from "./table-types.js"

/**
 * Rows by child, in the order in which each child first appears. What several rows say of one day becomes one visit;
 * where two contradict each other the first stays and a note says so. Two rows are of one child when number, name, birth
 * date and sex agree as far as both say; a row that fits two children is kept apart, since which of them is not ours to
 * guess. Time grows with the rows, not with their square.
 */
export function fragmentsOf(
  readings: Iterable<RowReading>,
  { source }: { readonly source: VisitSource },
): readonly Fragment[] {
  const children: Gathered[] = []
  const byName = new Map<string, Gathered[]>()
  for (const reading of readings) {
    const known = theOne(
      candidates(byName, reading.identity).filter((child) => agree(child.identity, reading.identity)),
    )
    const child = known ?? newChild(reading.identity)
    if (!known) children.push(child)
    child.identity = { ...reading.identity, ...child.identity }
    remember(byName, child)
    addRow(child, reading, source)
  }
  return children.map((child) => fragmentOf(child, source))
}

interface Gathered {
  identity: Identity
  child: RowReading["child"]
  /** By date; visits here and glasses of earlier years apart. */
  readonly visits: Map<string, Visit>
  readonly glasses: Map<string, Visit>
  readonly treatments: Treatment[]
  readonly notes: TableNote[]
}

const newChild = (identity: Identity): Gathered => ({
  identity,
  child: {},
  visits: new Map(),
  glasses: new Map(),
  treatments: [],
  notes: [],
})

const keysOf = ({ number, name }: Identity): readonly string[] => [
  ...(number === undefined ? [] : [`number ${number}`]),
  ...(name === undefined ? [] : [`name ${name}`]),
]

function candidates(
  byName: ReadonlyMap<string, readonly Gathered[]>,
  identity: Identity,
): readonly Gathered[] {
  return [...new Set(keysOf(identity).flatMap((key) => byName.get(key) ?? []))]
}

function remember(byName: Map<string, Gathered[]>, child: Gathered): void {
  for (const key of keysOf(child.identity)) {
    const known = byName.get(key)
    if (!known) byName.set(key, [child])
    else if (!known.includes(child)) known.push(child)
  }
}

const FIELDS = ["number", "name", "born", "sex"] as const

const agree = (a: Identity, b: Identity): boolean =>
  FIELDS.every((field) => a[field] === undefined || b[field] === undefined || a[field] === b[field])

const theOne = <T>(found: readonly T[]): T | undefined => (found.length === 1 ? found[0] : undefined)

function addRow(
  child: Gathered,
  { child: said, visits, treatments, notes, line }: RowReading,
  source: VisitSource,
): void {
  child.child = { ...said, ...child.child }
  child.notes.push(...notes)
  for (const visit of visits) addVisit(child, { visit: { ...visit, sources: [source] }, line })
  for (const treatment of treatments) addTreatment(child.treatments, treatment)
}

function addVisit(child: Gathered, { visit, line }: { readonly visit: Visit; readonly line: number }): void {
  const visits = visit.from === undefined ? child.visits : child.glasses
  const known = visits.get(visit.date)
  if (!known) {
    visits.set(visit.date, visit)
    return
  }
  const merged = mergedVisit(known, visit)
  visits.set(visit.date, merged.visit)
  for (const { path, recorded, offered } of merged.contradictions)
    child.notes.push({
      kind: "rows-contradict",
      path: `visits[${visit.date}].${path}`,
      why: say("an earlier row says {first}, line {line} says {second}; the first was kept", {
        line,
        first: JSON.stringify(recorded),
        second: JSON.stringify(offered),
      }),
    })
}

/** A treatment stands in every row of its visits: it is one, and it ends when one of the rows says so. */
function addTreatment(treatments: Treatment[], found: Treatment): void {
  const place = treatments.findIndex(
    (known) =>
      known.from === found.from &&
      known.kind === found.kind &&
      known.concentrationPercent === found.concentrationPercent &&
      (!known.to || !found.to || known.to === found.to),
  )
  const known = treatments[place]
  if (!known) treatments.push(found)
  else if (!known.to && found.to) treatments[place] = found
}

function fragmentOf(
  { identity, child, visits, glasses, treatments, notes }: Gathered,
  source: VisitSource,
): Fragment {
  const beside = [...glasses.values()].filter(({ date }) => !visits.has(date))
  const covered = [...glasses.keys()].filter((date) => visits.has(date))
  const all = [...visits.values(), ...beside].sort(byDay(({ date }) => date))
  const inOrder = treatments.toSorted(byDay(({ from }) => from))
  return {
    identity,
    course: {
      ...(Object.keys(child).length > 0 ? { child } : {}),
      ...(all.length > 0 ? { visits: all } : {}),
      ...(inOrder.length > 0 ? { treatments: inOrder } : {}),
    },
    documents: [],
    source,
    notes: [
      ...notes,
      ...covered.map((date) => ({
        kind: "glasses-on-a-visit",
        path: `visits[${date}]`,
        why: say("earlier glasses of this day were left out, since the eyes were examined on it"),
      })),
    ],
  }
}

const byDay =
  <T>(dayOf: (item: T) => string) =>
  (a: T, b: T): number =>
    dayOf(a) < dayOf(b) ? -1 : dayOf(a) > dayOf(b) ? 1 : 0
