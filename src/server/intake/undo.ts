import type { Visit } from "../../engine/course.js"
import { figureName } from "../../engine/figure-names.js"
import { say } from "../../engine/say.js"
import { withoutChange } from "../../interop/intake/changed-visit.js"
import type { Entry, InboxItem, PracticeRecord } from "../../record/index.js"
import { currentOf } from "../../record/index.js"
import { type RecordedPart, resultOf } from "./inbox-content.js"
import type { PlannedDraft } from "./plan.js"

/** What taking an object back would do, line by line; a line that blocks keeps all of it from being done. */
export interface UndoLine {
  readonly text: string
  readonly blocks: boolean
  readonly draft?: PlannedDraft | undefined
}

/** Works out how everything that was recorded of an object is withdrawn or put back as it was. */
export async function undoOf(
  record: PracticeRecord,
  item: InboxItem,
  reason: string,
): Promise<readonly UndoLine[]> {
  if (item.state === "set-aside")
    return [{ text: say("it waits again; nothing was recorded of it"), blocks: false }]
  if (item.state !== "taken" || item.child === null) return []
  const entries = await record.entriesOf(item.child)
  const { entries: parts } = resultOf(item)
  if (parts.length === 0)
    return [{ text: say("it waits again; it had added nothing to the record"), blocks: false }]
  const others = parts.filter(({ kind }) => kind !== "child")
  const lines = others.flatMap((part) => lineOf(part, { entries, child: item.child ?? "", reason }))
  const made = parts.find(({ kind }) => kind === "child")
  return made ? [...lines, childLine(made, { entries, lines, child: item.child, reason })] : lines
}

interface Undoing {
  readonly entries: readonly Entry[]
  readonly child: string
  readonly reason: string
}

function lineOf(part: RecordedPart, { entries, child, reason }: Undoing): readonly UndoLine[] {
  const recorded = entries.find(({ id }) => id === part.id)
  const now = recorded && latest(recorded, entries)
  // Withdrawn since: there is nothing left to take back.
  if (!recorded || !now || now.kind === "withdrawal") return []
  const withdrawn = (text: string): UndoLine => ({
    text,
    blocks: false,
    draft: { kind: "withdrawal", id: crypto.randomUUID(), child, body: {}, supersedes: now.id, reason },
  })
  if (part.visit && now.kind === "visit") {
    const { date } = now.body
    const undone = withoutChange({ now: now.body as Visit, ...part.visit })
    if (undone.kind === "empty") return [withdrawn(say("the visit of {date} is withdrawn", { date }))]
    if (undone.kind === "changed-since")
      return [
        {
          text: say("the visit of {date} was changed since ({figures}): correct it on the child's page", {
            date,
            figures: undone.paths.map(figureName).join(", "),
          }),
          blocks: true,
        },
      ]
    const { change } = part.visit
    const touched = [...change.added, ...change.corrected.map(({ path }) => path)]
    return [
      {
        text: say("the visit of {date} is put back as it was without {figures}", {
          date,
          figures: touched.map(figureName).join(", "),
        }),
        blocks: false,
        draft: {
          kind: "visit",
          id: crypto.randomUUID(),
          child,
          body: undone.visit,
          supersedes: now.id,
          reason,
        },
      },
    ]
  }
  if (now.id !== recorded.id)
    return [{ text: say("an entry was changed since: withdraw it on the child's page"), blocks: true }]
  if (now.kind === "document")
    return [withdrawn(say("the document {title} is withdrawn", { title: now.body.title }))]
  return [withdrawn(say("an entry that came with it is withdrawn ({kind})", { kind: now.kind }))]
}

/** A child that was made for the object goes too, unless it has become more than that. */
function childLine(
  made: RecordedPart,
  { entries, lines, child, reason }: Undoing & { readonly lines: readonly UndoLine[] },
): UndoLine {
  const going = new Set(lines.map(({ draft }) => draft?.supersedes))
  const stays = currentOf(entries).some(({ id, kind }) => kind !== "child" && !going.has(id))
  const isReplaced = entries.some(({ supersedes }) => supersedes === made.id)
  if (stays || isReplaced || lines.some(({ draft }) => draft?.kind === "visit"))
    return { text: say("the child that was made for it stays, since more is recorded of it"), blocks: false }
  return {
    text: say("the child that was made for it is withdrawn"),
    blocks: false,
    draft: { kind: "withdrawal", id: crypto.randomUUID(), child, body: {}, supersedes: made.id, reason },
  }
}

/** What stands in the place of an entry now. */
function latest(entry: Entry, entries: readonly Entry[]): Entry {
  const next = entries.find(({ supersedes }) => supersedes === entry.id)
  return next ? latest(next, entries) : entry
}
