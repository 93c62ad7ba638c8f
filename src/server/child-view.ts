import { dayOf, type Entry, type PracticeRecord } from "../record/index.js"
import type { ChildEntryKind, ChildView } from "./contract/child.js"
import { noSuch } from "./refusal.js"

/** The child, its course and everything that was ever recorded about it. */
export async function childViewOf(record: PracticeRecord, childId: string): Promise<ChildView> {
  const [child, course, entries, people] = await Promise.all([
    record.child(childId),
    record.courseOf(childId),
    record.entriesOf(childId),
    record.people(),
  ])
  if (!child || !course) throw noSuch("child", childId)
  const names = new Map(people.map(({ id, name }) => [id, name]))
  const later = new Map(entries.map(({ supersedes, id }) => [supersedes, id]))
  const listed = (entry: Entry) => ({
    id: entry.id,
    kind: entry.kind as ChildEntryKind,
    body: entry.body,
    date: dayOf(entry),
    author: names.get(entry.author) ?? entry.author,
    recordedAt: entry.recordedAt,
    supersedes: entry.supersedes,
    supersededBy: later.get(entry.id) ?? null,
    reason: entry.reason,
  })
  return {
    child: { id: child.id, name: child.name, number: child.number, born: child.born, sex: child.sex },
    course,
    entries: entries.map(listed),
  }
}
