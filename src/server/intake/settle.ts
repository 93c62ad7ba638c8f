import { figureName } from "../../engine/figure-names.js"
import { say } from "../../engine/say.js"
import type { Draft, InboxItem, Person } from "../../record/index.js"
import { currentOf } from "../../record/index.js"
import type { Problem } from "../contract/problem.js"
import { noSuch, Refusal, refusalOfSave } from "../refusal.js"
import { contentOf, type InboxResult } from "./inbox-content.js"
import { instrumentsPerson } from "./instruments-person.js"
import { type ChildAsked, newChild } from "./new-child.js"
import { contradictionsOf, hasWeighty, type PlannedDraft, planOf, type Settlement } from "./plan.js"
import type { IntakeContext } from "./taken.js"
import { undoOf } from "./undo.js"

/** What a person decides about an object that waits. */
export interface Decision {
  readonly child?: string | null | undefined
  readonly newChild?: ChildAsked | null | undefined
  readonly settle?: Settlement | null | undefined
  readonly reason?: string | null | undefined
}

interface Acting {
  readonly itemId: string
  readonly person: Person
}

/** Puts an object under a child because a person says so: with everything it holds, or not at all. */
export function takeItem(
  context: IntakeContext,
  { itemId, person, child, newChild: asked, settle, reason }: Acting & Decision,
): Promise<InboxItem> {
  return context.oneAtATime(async () => {
    const { record, clock } = context
    const item = await itemIn(context, itemId, "waiting")
    const content = contentOf(item)
    const today = clock.today()
    const id = child ?? crypto.randomUUID()
    const made = asked ? newChild(asked, { content, id, today }) : null
    if (made && "problems" in made) throw new Refusal(422, made.problems)
    const course = made?.course ?? (await record.courseOf(id))
    if (!course) throw noSuch("child", id)
    const plan = await planOf({
      record,
      child: id,
      current: made ? [] : currentOf(await record.entriesOf(id)),
      course,
      content,
      today,
      sentBy: item.sentBy,
      settle: settle ?? undefined,
      reason: reason ?? undefined,
    })
    if (plan.problems.length > 0) throw new Refusal(422, plan.problems)
    const contradictions = contradictionsOf(plan)
    if (contradictions.length > 0 && !settle)
      throw new Refusal(
        409,
        contradictions.map(({ date, path, recorded }) => unsettled({ date, path, recorded })),
      )
    if (contradictions.length > 0 && settle === "correct" && !reason?.trim())
      throw new Refusal(422, [
        {
          path: "reason",
          value: null,
          allowed: say("why it is corrected, in words"),
          message: say("a correction needs a reason"),
        },
      ])
    const first: readonly PlannedDraft[] = made ? [{ kind: "child", id, child: id, body: made.body }] : []
    const result: InboxResult = {
      entries: [...first.map(({ kind }) => ({ id, kind })), ...plan.parts],
    }
    await change(context, {
      item,
      person,
      drafts: [...first, ...plan.drafts],
      standing: { state: "taken", why: null, child: id, result, reason: reason ?? null },
    })
    await takeAlike(context, item, id)
    return itemAfter(context, itemId)
  })
}

/** Whether an object waits only because nobody knew whose it is. */
export const waitsForChild = ({ why }: Pick<InboxItem, "why">): boolean =>
  why === "no-child" || why === "near-child"

/** What else waits under exactly the same identity follows it, as what comes later does; what contradicts waits on. */
async function takeAlike(context: IntakeContext, item: InboxItem, child: string): Promise<void> {
  const { record, clock } = context
  if (item.identityKey === null) return
  const alike = (await record.inbox.waitingOf(item.identityKey)).filter(waitsForChild)
  for (const other of alike) {
    const course = await record.courseOf(child)
    if (!course) return
    const plan = await planOf({
      record,
      child,
      current: currentOf(await record.entriesOf(child)),
      course,
      content: contentOf(other),
      today: clock.today(),
      sentBy: other.sentBy,
    })
    const why =
      plan.problems.length > 0
        ? "rules"
        : contradictionsOf(plan).length > 0
          ? "contradiction"
          : hasWeighty(plan)
            ? "confirm"
            : null
    const result: InboxResult = { entries: plan.parts }
    const standing =
      why === null
        ? ({ state: "taken", why, child, result, reason: null } as const)
        : ({ state: "waiting", why, child: null, result: null, reason: null } as const)
    const author = await instrumentsPerson(record, new Date(clock.nowMs()).toISOString())
    await change(context, {
      item: other,
      person: null,
      author,
      drafts: why === null ? plan.drafts : [],
      standing,
    })
  }
}

/** Sets an object aside: it waits no more and nothing is recorded of it. */
export function setItemAside(
  context: IntakeContext,
  { itemId, person, reason }: Acting & { readonly reason: string },
): Promise<InboxItem> {
  return context.oneAtATime(async () => {
    const item = await itemIn(context, itemId, "waiting")
    const standing = { state: "set-aside", why: item.why, child: null, result: null, reason } as const
    await change(context, { item, person, drafts: [], standing })
    return itemAfter(context, itemId)
  })
}

/** Takes back what was done with an object: it waits again, and what was recorded of it is withdrawn or put back. */
export function undoItem(
  context: IntakeContext,
  { itemId, person, reason }: Acting & { readonly reason?: string | null | undefined },
): Promise<InboxItem> {
  return context.oneAtATime(async () => {
    const item = await itemIn(context, itemId, "taken", "set-aside")
    const why = reason?.trim() || say("{file} was taken back", { file: item.file })
    const lines = await undoOf(context.record, item, why)
    const blocked = lines.filter(({ blocks }) => blocks)
    if (blocked.length > 0)
      throw new Refusal(
        409,
        blocked.map(({ text }) => ({ path: "", value: null, allowed: "", message: text })),
      )
    const drafts = lines.flatMap(({ draft }) => (draft ? [draft] : []))
    const standing = { state: "waiting", why: "undone", child: null, result: null, reason: why } as const
    await change(context, { item, person, drafts, standing })
    return itemAfter(context, itemId)
  })
}

async function itemIn(
  { record }: IntakeContext,
  id: string,
  ...states: readonly InboxItem["state"][]
): Promise<InboxItem> {
  const item = await record.inbox.item(id)
  if (!item) throw noSuchObject(id)
  if (!states.includes(item.state))
    throw new Refusal(409, [
      {
        path: "",
        value: item.state,
        allowed: "",
        message: say("Somebody has decided about this object since; look at it again."),
      },
    ])
  return item
}

export const noSuchObject = (id: string): Refusal =>
  new Refusal(404, [
    {
      path: "",
      value: id,
      allowed: say("an object of this practice's Inbox"),
      message: say("no such object in the Inbox"),
    },
  ])

async function itemAfter({ record }: IntakeContext, id: string): Promise<InboxItem> {
  const item = await record.inbox.item(id)
  if (!item) throw noSuchObject(id)
  return item
}

async function change(
  { record, clock }: IntakeContext,
  {
    item,
    person,
    author = person ?? undefined,
    drafts,
    standing,
  }: {
    readonly item: InboxItem
    /** Who decides; null where the program follows what a person decided before. */
    readonly person: Person | null
    readonly author?: Person | undefined
    readonly drafts: readonly PlannedDraft[]
    readonly standing: Pick<InboxItem, "state" | "why" | "child" | "result" | "reason">
  },
): Promise<void> {
  const at = new Date(clock.nowMs()).toISOString()
  const signed = drafts.map((draft) => ({ ...draft, author: author?.id, recordedAt: at }) as Draft)
  const saved = await record.inbox.change(
    { ...standing, id: item.id, from: [item.state], changedAt: at, changedBy: person?.id ?? null },
    signed,
  )
  if (saved.kind !== "saved") throw refusalOfSave(saved)
}

function unsettled({
  date,
  path,
  recorded,
}: {
  readonly date: string
  readonly path: string
  readonly recorded: unknown
}): Problem {
  return {
    path: "settle",
    value: recorded,
    allowed: say("keep or correct"),
    message: say("{figure} of {date} is recorded otherwise: keep what is recorded, or correct it", {
      figure: figureName(path),
      date,
    }),
  }
}
