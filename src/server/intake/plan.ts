import type { CalendarDate, Course, Visit } from "../../engine/course.js"
import { figuresOf } from "../../engine/figure-names.js"
import type { Problem } from "../../engine/problem.js"
import { say } from "../../engine/say.js"
import { correctedVisit } from "../../interop/intake/changed-visit.js"
import { type Contradiction, mergedVisit, same } from "../../interop/intake/merged-visit.js"
import type { Draft, Entry, PracticeRecord } from "../../record/index.js"
import { checkItems, type List } from "../course-check.js"
import { paymentCurrencyProblems } from "../payment-currency.js"
import { KINDS } from "../record-items.js"
import { type InboxContent, type RecordedPart, WEIGHTY_LISTS, type WeightyList } from "./inbox-content.js"

type Unsigned<D> = D extends Draft ? Omit<D, "author" | "recordedAt"> : never
export type PlannedDraft = Unsigned<Draft> & { readonly id: string }

/** How a person settles figures that are recorded otherwise. */
export type Settlement = "keep" | "correct"

/** One visit of the object beside what is recorded on its day. */
export interface PlannedVisit {
  readonly date: CalendarDate
  readonly recorded: Visit | null
  readonly offered: Visit
  readonly added: readonly string[]
  readonly contradictions: readonly Contradiction[]
}

/** What putting an object under a child would record. */
export interface Plan {
  readonly drafts: readonly PlannedDraft[]
  readonly parts: readonly RecordedPart[]
  readonly visits: readonly PlannedVisit[]
  /** What only a person may take: by list, what is not recorded yet. */
  readonly weighty: Readonly<Partial<Record<WeightyList, readonly unknown[]>>>
  readonly documents: number
  readonly problems: readonly Problem[]
}

export interface Planning {
  readonly record: PracticeRecord
  /** Id of the child; its entries that still hold, and its course. */
  readonly child: string
  readonly current: readonly Entry[]
  readonly course: Course
  readonly content: InboxContent
  readonly today: CalendarDate
  readonly settle?: Settlement | undefined
  /** Why a recorded visit is corrected, where a person said so. */
  readonly reason?: string | undefined
  /** Who or what sent it, for the reason of what is filled in. */
  readonly sentBy: string
}

/** Works out what would be recorded; nothing is. */
export async function planOf(planning: Planning): Promise<Plan> {
  const { content, course, today } = planning
  const visits = plannedVisits(planning)
  const visitDrafts = draftsOfVisits(visits, planning)
  const lists = await draftsOfLists({ ...planning, course: { ...course, visits: visitDrafts.visits } })
  const documents = draftsOfDocuments(planning)
  const documentProblems = content.documents.flatMap(({ date }) =>
    date >= course.child.born && date <= today
      ? []
      : [
          {
            path: "document",
            value: date,
            allowed: say("a day from birth to today"),
            message: say("The document is dated {day}: it must be a day from birth to today.", { day: date }),
          },
        ],
  )
  return {
    drafts: [...visitDrafts.drafts, ...lists.drafts, ...documents],
    parts: [...visitDrafts.parts, ...[...lists.drafts, ...documents].map(({ id, kind }) => ({ id, kind }))],
    visits,
    weighty: lists.weighty,
    documents: documents.length,
    problems: [...visitDrafts.problems, ...lists.problems, ...documentProblems],
  }
}

export const contradictionsOf = ({
  visits,
}: Plan): readonly (Contradiction & { readonly date: CalendarDate })[] =>
  visits.flatMap(({ date, contradictions }) => contradictions.map((found) => ({ date, ...found })))

export const hasWeighty = ({ weighty }: Plan): boolean => Object.keys(weighty).length > 0

/** The visits of the object by day, each beside the recorded one. */
function plannedVisits({ content, current }: Planning): readonly PlannedVisit[] {
  const { source } = content
  return (content.course.visits ?? []).reduce<readonly PlannedVisit[]>((planned, visit) => {
    const hasSource = visit.sources?.some(({ id }) => id === source.id)
    const offered = hasSource ? visit : { ...visit, sources: [...(visit.sources ?? []), source] }
    const before = planned.find(({ date }) => date === visit.date)
    // Two visits of one day in one file: what they say differently is for a person to settle.
    const joined = before ? mergedVisit(before.offered, offered) : null
    const recorded =
      (current.find(({ kind, body }) => kind === "visit" && (body as Visit).date === visit.date)?.body as
        | Visit
        | undefined) ?? null
    const whole = joined?.visit ?? offered
    const { added, contradictions } = mergedVisit(recorded ?? { date: visit.date }, whole)
    const found = {
      date: visit.date,
      recorded,
      offered: whole,
      added,
      contradictions: [...contradictions, ...(joined?.contradictions ?? [])],
    }
    return [...planned.filter((other) => other !== before), found]
  }, [])
}

function draftsOfVisits(visits: readonly PlannedVisit[], planning: Planning) {
  const { child, current, course, today, settle, reason, sentBy, content } = planning
  const changing = visits.flatMap(({ date, recorded, offered, added, contradictions }) => {
    const merged = mergedVisit(recorded ?? { date }, offered).visit
    const isCorrected = settle === "correct" && contradictions.length > 0
    if (added.length === 0 && !isCorrected) return []
    const body = isCorrected ? correctedVisit(merged, contradictions) : merged
    return [{ date, recorded, body, added, corrected: isCorrected ? contradictions : [] }]
  })
  const replaced = new Set(changing.map(({ date }) => date))
  const rest = course.visits.filter(({ date }) => !replaced.has(date))
  const checked = checkItems("visits", {
    course: { ...course, visits: rest },
    items: changing.map(({ body }) => body),
    today,
    place: (index) => say("the visit of {date}", { date: changing[index]?.date ?? "" }),
  })
  if ("problems" in checked)
    return { drafts: [], parts: [], problems: checked.problems, visits: course.visits }
  const device = content.source.device ?? sentBy
  const drafted = changing.map(({ date, recorded, added, corrected }, index) => {
    const body = checked.items[index] as Visit
    const before = recorded && current.find(({ kind, body: held }) => kind === "visit" && held === recorded)
    const id = crypto.randomUUID()
    const why = reason ?? say("{figures} from {device}", { figures: figuresOf(added), device })
    const known = new Set((recorded?.sources ?? []).map((source) => source.id))
    const sources = (body.sources ?? []).map((source) => source.id).filter((source) => !known.has(source))
    return {
      date,
      draft: {
        kind: "visit",
        id,
        child,
        body,
        ...(before ? { supersedes: before.id, reason: why } : {}),
      } as const,
      part: {
        id,
        kind: "visit",
        visit: { asRecorded: body, change: { added, corrected, sources } },
      } as const,
    }
  })
  return {
    drafts: drafted.map(({ draft }) => draft),
    parts: drafted.map(({ part }) => part),
    problems: [],
    visits: [...rest, ...drafted.map(({ draft }) => draft.body)].sort((a, b) => (a.date < b.date ? -1 : 1)),
  }
}

/**
 * What of the other lists is not recorded yet, held to the rules for what is typed. Orders are not asked for a consent
 * in force: that guards a bottle that goes out, and nothing goes out by reading what was ordered elsewhere.
 */
async function draftsOfLists({ record, child, current, course, content, today }: Planning) {
  const drafts: PlannedDraft[] = []
  const problems: Problem[] = []
  const weighty: Partial<Record<WeightyList, readonly unknown[]>> = {}
  let whole = course
  for (const list of WEIGHTY_LISTS) {
    const kind = KINDS[list]
    const recorded = current.filter((entry) => entry.kind === kind).map(({ body }) => bare(body))
    const fresh = (content.course[list] ?? []).filter(
      (item) => !recorded.some((known) => same(known, bare(item))),
    )
    if (fresh.length === 0) continue
    weighty[list] = fresh
    const place = (index: number) => `${list}[${index}]`
    const checked = checkItems<List>(list, { course: whole, items: fresh, today, place })
    if ("problems" in checked) {
      problems.push(...checked.problems)
      continue
    }
    if (list === "payments") {
      const items = fresh.map((fields, index) => ({ fields, place: place(index) }))
      problems.push(...(await paymentCurrencyProblems({ rules: { now: () => record.rules() } }, items)))
    }
    whole = { ...whole, [list]: [...(whole[list] ?? []), ...checked.items] }
    for (const body of checked.items)
      drafts.push({ kind, id: crypto.randomUUID(), child, body } as PlannedDraft)
  }
  return { drafts, problems, weighty }
}

/** An item as the course file has it, without what only the record keeps and without fields that say nothing. */
function bare(item: object): unknown {
  const { signature: _, ...rest } = item as Readonly<Record<string, unknown>>
  return Object.fromEntries(Object.entries(rest).filter(([, value]) => value !== undefined && value !== null))
}

function draftsOfDocuments({ child, current, content }: Planning): readonly PlannedDraft[] {
  return content.documents.flatMap(({ date, title, mediaType, file }) => {
    const isKnown = current.some(
      (entry) => entry.kind === "document" && entry.body.file === file && entry.body.date === date,
    )
    if (isKnown) return []
    const body = { date, title, file, mediaType, source: content.source }
    return [{ kind: "document", id: crypto.randomUUID(), child, body } as const]
  })
}
