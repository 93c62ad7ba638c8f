import { figuresHeld } from "../../engine/figure-names.js"
import { say } from "../../engine/say.js"
import type { InboxItem } from "../../record/index.js"
import { currentOf, type PracticeRecord } from "../../record/index.js"
import type { InboxItemAnswer, InboxRow } from "../contract/inbox.js"
import type { InboxWhy } from "../contract/inbox-words.js"
import { KINDS } from "../record-items.js"
import { noSuch } from "../refusal.js"
import { contentOf, type InboxContent, identityOf, WEIGHTY_LISTS } from "./inbox-content.js"
import { type Plan, planOf } from "./plan.js"
import { waitsForChild } from "./settle.js"
import type { IntakeContext } from "./taken.js"
import { undoOf } from "./undo.js"
import { candidatesOf, whoIs } from "./who.js"
import { whyWords } from "./why-words.js"

/** One line of the list. */
export function rowOf(item: InboxItem, childName: string | null, plan: Plan | null = null): InboxRow {
  const { id, file, sentBy, receivedAt, state, day, child } = item
  const why = state === "waiting" ? (item.why as InboxWhy | null) : null
  return {
    id,
    file,
    sentBy,
    receivedAt,
    state,
    why,
    whyInWords: why && whyWords(why, plan),
    identity: identityOf(item),
    day,
    holds: holdsWords(contentOf(item)),
    child: child === null ? null : { id: child, name: childName ?? child },
  }
}

function holdsWords({ course, documents }: InboxContent): string {
  const count = course.visits?.length ?? 0
  return [
    ...figuresHeld(course.visits ?? []),
    ...WEIGHTY_LISTS.flatMap((list) => {
      const many = course[list]?.length ?? 0
      return many === 0 ? [] : [LIST_WORDS[list](many)]
    }),
    ...(documents.length > 0
      ? [say("{count, plural, one {# document} other {# documents}}", { count: documents.length })]
      : []),
    ...(count > 1 ? [say("{count, plural, one {# visit} other {# visits}}", { count })] : []),
  ].join(", ")
}

const LIST_WORDS: Readonly<Record<(typeof WEIGHTY_LISTS)[number], (count: number) => string>> = {
  treatments: (count) => say("{count, plural, one {# treatment} other {# treatments}}", { count }),
  supplies: (count) => say("{count, plural, one {# bottle} other {# bottles}}", { count }),
  consents: (count) => say("{count, plural, one {# consent} other {# consents}}", { count }),
  missedNights: (count) =>
    say("{count, plural, one {# span of missed nights} other {# spans of missed nights}}", { count }),
  decisions: (count) => say("{count, plural, one {# decision} other {# decisions}}", { count }),
  concerns: (count) => say("{count, plural, one {# concern} other {# concerns}}", { count }),
  orders: (count) => say("{count, plural, one {# order} other {# orders}}", { count }),
  explanations: (count) => say("{count, plural, one {# explanation} other {# explanations}}", { count }),
  payments: (count) => say("{count, plural, one {# payment} other {# payments}}", { count }),
}

/** An object opened, compared with a child where one is asked for. */
export async function itemView(
  { record, clock }: IntakeContext,
  { item, child }: { readonly item: InboxItem; readonly child: string | undefined },
): Promise<InboxItemAnswer> {
  const content = contentOf(item)
  const [found, undo, events, people, alike] = await Promise.all([
    item.state === "waiting" ? whoIs(record, identityOf(item)) : null,
    undoOf(record, item, ""),
    record.inbox.events(item.id),
    record.people(),
    item.state === "waiting" && item.identityKey !== null ? record.inbox.waitingOf(item.identityKey) : [],
  ])
  const candidates = found ? candidatesOf(found) : []
  const compare = child ?? (item.state === "waiting" ? undefined : item.child)
  const compared = compare ? await comparedWith(record, { item, child: compare, today: clock.today() }) : null
  const named = item.child === null ? null : await record.child(item.child)
  const names = new Map(people.map(({ id, name }) => [id, name]))
  return {
    ...rowOf(item, named?.name ?? null, compared?.plan ?? null),
    reason: item.reason,
    alike: alike.filter((other) => other.id !== item.id && waitsForChild(other)).length,
    notes: [...content.notes],
    device: content.source.device ?? null,
    childToo: childTooOf(content),
    visits: [...(content.course.visits ?? [])],
    documents: content.documents.map(({ date, title, file }) => ({ date, title, file })),
    others: othersOf(content.course),
    candidates: candidates.map(({ child: { id, name, number, born, sex }, why }) => ({
      id,
      name,
      number,
      born,
      sex,
      why,
    })),
    compared: compared?.answer ?? null,
    undo: undo.map(({ text, blocks }) => ({ text, blocks })),
    events: events.map(({ state, at, by, why, reason }) => ({
      state,
      at,
      by: by === null ? null : (names.get(by) ?? by),
      why,
      reason,
    })),
  }
}

function childTooOf({ course: { child = {} } }: InboxContent): InboxItemAnswer["childToo"] {
  const { ancestry, myopicParents } = child
  return {
    ...(ancestry === undefined ? {} : { ancestry }),
    ...(myopicParents === undefined ? {} : { myopicParents }),
  }
}

const othersOf = (lists: Plan["weighty"] | InboxContent["course"]) =>
  WEIGHTY_LISTS.flatMap((list) => (lists[list] ?? []).map((body: unknown) => ({ kind: KINDS[list], body })))

async function comparedWith(
  record: PracticeRecord,
  { item, child, today }: { readonly item: InboxItem; readonly child: string; readonly today: string },
) {
  const [listed, course, entries] = await Promise.all([
    record.child(child),
    record.courseOf(child),
    record.entriesOf(child),
  ])
  // A child that was withdrawn since: what was once under it is still shown without it.
  if (!listed || !course) {
    if (item.child === child) return null
    throw noSuch("child", child)
  }
  const plan = await planOf({
    record,
    child,
    current: currentOf(entries),
    course,
    content: contentOf(item),
    today,
    sentBy: item.sentBy,
  })
  const { id, name, number, born } = listed
  const answer = {
    child: { id, name, number, born },
    visits: plan.visits.map(({ contradictions, added, ...visit }) => ({
      ...visit,
      added: [...added],
      contradictions: [...contradictions],
    })),
    others: othersOf(plan.weighty),
    problems: [...plan.problems],
    entries: plan.drafts.length,
  }
  return { plan, answer }
}
