import { say } from "../../engine/say.js"
import type { Fragment } from "../../interop/intake/fragment.js"
import { canonicalJson } from "../../record/canonical-json.js"
import type { InboxItem, InboxStanding, NewInboxItem, Person } from "../../record/index.js"
import { currentOf } from "../../record/index.js"
import type { InboxWhy } from "../contract/inbox-words.js"
import { refusalOfSave } from "../refusal.js"
import {
  dayOfContent,
  type InboxContent,
  type InboxResult,
  identityKey,
  sha256Of,
  WEIGHTY_LISTS,
} from "./inbox-content.js"
import { newChild } from "./new-child.js"
import { contradictionsOf, hasWeighty, type Plan, type PlannedDraft, planOf } from "./plan.js"
import type { IntakeContext, Taken } from "./taken.js"
import { whoIs } from "./who.js"
import { knownWords, whyWords } from "./why-words.js"

/** One fragment of a received file that is stored under `sha256`. */
export interface Received {
  readonly file: string
  readonly sha256: string
  readonly mediaType: string
  readonly fragment: Fragment
  /** What tells it from all other objects. */
  readonly key: string
  readonly sentBy: string
  readonly author: Person
  /** Whether a child nobody knows is made, where the file says enough. */
  readonly makesChildren: boolean
}

/** Takes one fragment: records it with its row, or puts it to wait. To be called by one at a time. */
export async function takeFragment(context: IntakeContext, received: Received): Promise<Taken> {
  const { record } = context
  const { file, fragment, key, sha256 } = received
  const contentHash = hashOf(fragment)
  const isSame = (item: InboxItem) => item.sha256 === sha256 || item.contentHash === contentHash
  const before = await record.inbox.byKey(key)
  if (before && isSame(before)) return known(file, before)
  const ownKey = before ? `${key} ${contentHash}` : key
  const again = before && (await record.inbox.byKey(ownKey))
  if (again) return known(file, again)
  if (isEmpty(fragment)) return { file, outcome: "skipped", why: say("nothing in it can be recorded") }
  const content = await kept(context, received)
  const intake = { context, received, content, key: ownKey, contentHash }
  if (before) return waiting(intake, "other-content")
  const found = await whoIs(record, fragment.identity)
  if (found.kind === "near") return waiting(intake, "near-child")
  if (found.kind === "none") return received.makesChildren ? madeChild(intake) : waiting(intake, "no-child")
  const [entries, course] = await Promise.all([
    record.entriesOf(found.child.id),
    record.courseOf(found.child.id),
  ])
  if (!course) return waiting(intake, "no-child")
  const plan = await planOf({
    record,
    child: found.child.id,
    current: currentOf(entries),
    course,
    content,
    today: context.clock.today(),
    sentBy: received.sentBy,
  })
  if (plan.problems.length > 0) return waiting(intake, "rules", plan)
  if (contradictionsOf(plan).length > 0) return waiting(intake, "contradiction", plan)
  if (hasWeighty(plan)) return waiting(intake, "confirm", plan)
  return taken(intake, { child: found.child.id, plan })
}

interface Intake {
  readonly context: IntakeContext
  readonly received: Received
  readonly content: InboxContent
  readonly key: string
  readonly contentHash: string
}

const known = (file: string, item: InboxItem): Taken => ({
  file,
  outcome: "known",
  why: knownWords(item),
  inboxId: item.id,
  ...(item.child ? { child: item.child } : {}),
})

export const isEmpty = ({ course, documents }: Fragment): boolean =>
  documents.length === 0 &&
  (["visits", ...WEIGHTY_LISTS] as const).every((list) => (course[list] ?? []).length === 0)

/** The content as it is kept: papers become stored files. */
async function kept({ record, clock }: IntakeContext, { fragment, author }: Received): Promise<InboxContent> {
  const recordedAt = new Date(clock.nowMs()).toISOString()
  const documents = []
  for (const { bytes, ...document } of fragment.documents) {
    const { mediaType } = document
    const stored = { mediaType, bytes: Buffer.from(bytes), author: author.id, recordedAt }
    documents.push({ ...document, file: await record.addFile(stored) })
  }
  const { course, source, notes } = fragment
  return { course, documents, source, notes }
}

/** The same object in another encoding has the same hash. */
function hashOf({ identity, course, documents }: Fragment): string {
  const papers = documents.map(({ bytes, ...document }) => ({ ...document, sha256: sha256Of(bytes) }))
  return sha256Of(canonicalJson({ identity, course, papers }))
}

function itemOf(
  { context, received, content, key, contentHash }: Intake,
  standing: Partial<InboxStanding>,
): NewInboxItem {
  const { file, sha256, mediaType, sentBy, fragment } = received
  const { identity } = fragment
  const at = new Date(context.clock.nowMs()).toISOString()
  return {
    id: crypto.randomUUID(),
    key,
    file,
    sha256,
    mediaType,
    contentHash,
    sentBy,
    receivedAt: at,
    identity,
    identityKey: identityKey(identity),
    content,
    day: dayOfContent(content),
    search: [file, sentBy, identity.name, identity.number, identity.born, content.source.device]
      .filter(Boolean)
      .join(" "),
    state: "waiting",
    why: null,
    child: null,
    result: null,
    reason: null,
    changedAt: at,
    changedBy: null,
    ...standing,
  }
}

async function waiting(intake: Intake, why: InboxWhy, plan: Plan | null = null): Promise<Taken> {
  const item = itemOf(intake, { why })
  await intake.context.record.inbox.add(item)
  return { file: intake.received.file, outcome: "waiting", why: whyWords(why, plan), inboxId: item.id }
}

async function taken(
  intake: Intake,
  { child, plan, made }: { readonly child: string; readonly plan: Plan; readonly made?: PlannedDraft },
): Promise<Taken> {
  const { context, received } = intake
  const drafts = [...(made ? [made] : []), ...plan.drafts]
  const result: InboxResult = {
    entries: [...(made ? [{ id: made.id, kind: made.kind }] : []), ...plan.parts],
  }
  const item = itemOf(intake, { state: "taken", child, result })
  const signed = drafts.map((draft) => ({
    ...draft,
    author: received.author.id,
    recordedAt: item.receivedAt,
  }))
  const saved = await context.record.inbox.add(item, signed)
  if (saved.kind !== "saved") throw refusalOfSave(saved)
  const { file } = received
  if (drafts.length === 0)
    return { file, outcome: "known", why: say("all of it was recorded before"), child, inboxId: item.id }
  const name = made?.kind === "child" ? made.body.name : null
  const why =
    name === null
      ? undefined
      : received.fragment.identity.name
        ? say("made the child {name}", { name })
        : say("made the child {name}: the file gives no name, so its number stands for it", { name })
  return { file, outcome: "recorded", child, inboxId: item.id, ...(why ? { why } : {}) }
}

/** A child that nobody knows, made of what a file of records says of it; what an instrument says is never enough. */
async function madeChild(intake: Intake): Promise<Taken> {
  const { context, received, content } = intake
  const { record, clock } = context
  const { identity, source } = received.fragment
  if (source.kind !== "fhir" && source.kind !== "course-file") return waiting(intake, "no-child")
  const id = crypto.randomUUID()
  const made = newChild(identity, { content, id, today: clock.today() })
  if ("problems" in made) return waiting(intake, "no-child")
  const plan = await planOf({
    record,
    child: id,
    current: [],
    course: made.course,
    content,
    today: clock.today(),
    sentBy: received.sentBy,
  })
  if (plan.problems.length > 0) return waiting(intake, "rules", plan)
  if (contradictionsOf(plan).length > 0) return waiting(intake, "contradiction", plan)
  return taken(intake, { child: id, plan, made: { kind: "child", id, child: id, body: made.body } })
}
