import { createHash } from "node:crypto"
import { addDays } from "../../engine/calendar.js"
import { messageText } from "../../engine/messages/message-text.js"
import type { PlannedMessage } from "../../engine/messages/planned-messages.js"
import type { MessageRules, PracticeRules } from "../../engine/practice-rules.js"
import type { OutboxMessage, PracticeRecord } from "../../record/index.js"
import type { Plan } from "./plan.js"

/** A duty that moves by up to this many days is still the one the family was told of. Ours; common practice, no source. */
const SAME_DUTY_DAYS = 14

export interface Filled {
  readonly added: number
  readonly cancelled: number
}

/**
 * Brings the outbox in line with the plan: what is to be said by now goes in, once; what waits and has nothing left to
 * say is called off; what waits is worded by the contact that holds now. What was sent, failed or a person called off is
 * left alone.
 */
export async function fillOutbox({
  record,
  plan,
  rules,
  at,
}: {
  readonly record: PracticeRecord
  readonly plan: Plan
  readonly rules: PracticeRules & { readonly messages: MessageRules }
  /** ISO instant. */
  readonly at: string
}): Promise<Filled> {
  const { outbox, practice } = record
  const due = new Map(
    plan.messages.filter(({ on }) => on <= plan.today).map((message) => [message.key, message]),
  )
  let [added, cancelled] = [0, 0]

  for (const { id, key } of await outbox.waiting()) {
    if (due.has(key)) continue
    const off = { id, from: ["waiting"], state: "cancelled", problem: "no-longer-due", at } as const
    if (await outbox.change(off)) cancelled++
  }
  for (const message of due.values()) {
    const wording = worded(message, { plan, rules })
    if (wording === null) continue
    const before = await outbox.ofChild(message.child)
    const same = before.find(({ key }) => key === message.key)
    if (same?.state === "waiting") {
      if (differs(same, wording)) await outbox.rewrite({ id: same.id, wording })
    } else if (same && isCalledOffByProgram(same)) {
      const again = { id: same.id, from: ["cancelled"], state: "waiting", problem: "due-again", at } as const
      if (await outbox.change(again)) {
        // Only what waits may be worded.
        await outbox.rewrite({ id: same.id, wording })
        added++
      }
    } else if (!same && !before.some((earlier) => isAboutSameDuty(earlier, message))) {
      const { key, child, kind, due: dueOn, on } = message
      const messageId = messageIdOf({ key, practice: practice.id, from: rules.messages.from })
      const isNew = { key, child, kind, due: dueOn, plannedFor: on, messageId, ...wording }
      if (await outbox.add(isNew, at)) added++
    }
  }
  return { added, cancelled }
}

function worded(
  message: PlannedMessage,
  {
    plan,
    rules,
  }: { readonly plan: Plan; readonly rules: PracticeRules & { readonly messages: MessageRules } },
) {
  const contact = plan.contacts.get(message.child)
  if (!contact) return null
  const { channel, to: recipient, name, language } = message
  const { today } = plan
  const text = messageText({ message, contact, today, rules: rules.messages, contacts: rules.contacts })
  return { channel, recipient, name, language, ...text }
}

const differs = (known: OutboxMessage, wording: NonNullable<ReturnType<typeof worded>>): boolean =>
  (Object.keys(wording) as (keyof typeof wording)[]).some((field) => known[field] !== wording[field])

const isCalledOffByProgram = ({ state, changedBy }: OutboxMessage): boolean =>
  state === "cancelled" && changedBy === null

/** A review that moves by some days with a visit, or a bottle opened a day later, is no reason to write again. */
function isAboutSameDuty(earlier: OutboxMessage, message: PlannedMessage): boolean {
  if (earlier.kind !== message.kind || isCalledOffByProgram(earlier)) return false
  return (
    addDays(earlier.due, SAME_DUTY_DAYS) >= message.due && earlier.due <= addDays(message.due, SAME_DUTY_DAYS)
  )
}

/** The same for the same message in every attempt; tells nobody who it is about. */
function messageIdOf(of: { readonly key: string; readonly practice: string; readonly from: string }): string {
  const hash = createHash("sha256").update(`${of.practice} ${of.key}`).digest("hex").slice(0, 32)
  return `<${hash}@${of.from.split("@").at(-1)}>`
}
