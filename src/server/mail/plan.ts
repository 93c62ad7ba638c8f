import { setImmediate as nextTurn } from "node:timers/promises"
import type { CalendarDate } from "../../engine/course.js"
import type { FamilyContact } from "../../engine/messages/family-contact.js"
import { type PlannedMessage, plannedMessages } from "../../engine/messages/planned-messages.js"
import type { PracticeRules } from "../../engine/practice-rules.js"
import type { ListedChild } from "../../record/index.js"
import type { ChildReadings } from "../child-readings.js"
import type { Context } from "../context.js"

/** What families are to be told, as of a day and a state of the record. */
export interface Plan {
  readonly today: CalendarDate
  /** In order of the day; what should be said by today and what comes. */
  readonly messages: readonly PlannedMessage[]
  readonly contacts: ReadonlyMap<string, FamilyContact>
  readonly children: ReadonlyMap<string, ListedChild>
}

/** Children read in one go, after which whoever else asks has a turn. */
const IN_ONE_GO = 25

/** The plan of the practice, made anew only when something was recorded, the rules or the day changed. */
export function messagePlan({ record, clock, rules }: Context, readings: () => ChildReadings) {
  let kept: { readonly head: string; readonly rules: PracticeRules; readonly plan: Plan } | null = null

  return {
    /** Empty while the practice has not turned messages on. */
    now: async (): Promise<Plan> => {
      const today = clock.today()
      const [inForce, head] = [await rules.now(), await record.head()]
      if (kept?.head === head && kept.rules === inForce && kept.plan.today === today) return kept.plan
      const plan = await planned({ record, readings: readings(), rules: inForce, today })
      kept = { head, rules: inForce, plan }
      return plan
    },
  }
}

async function planned({
  record,
  readings,
  rules,
  today,
}: Pick<Context, "record"> & {
  readonly readings: ChildReadings
  readonly rules: PracticeRules
  readonly today: CalendarDate
}): Promise<Plan> {
  const nothing = { today, messages: [], contacts: new Map(), children: new Map() }
  const { messages: messageRules } = rules
  if (!messageRules?.isOn) return nothing
  const contacts = await record.familyContacts()
  if (contacts.size === 0) return nothing
  const children = (await record.everyChild()).filter(({ id }) => contacts.get(id)?.agreed !== undefined)
  const day = { today, rules }
  const messages: PlannedMessage[] = []
  for (let at = 0; at < children.length; at += IN_ONE_GO) {
    const some = children.slice(at, at + IN_ONE_GO)
    await readings.read(some, day)
    for (const child of some) {
      const [contact, reading] = [contacts.get(child.id), readings.known(child, day)]
      if (!contact || !reading) continue
      const { ahead: duties, owed } = reading
      messages.push(
        ...plannedMessages({ child: child.id, contact, duties, owed, today, rules: messageRules }),
      )
    }
    await nextTurn()
  }
  return {
    today,
    messages: messages.toSorted((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0)),
    contacts,
    children: new Map(children.map((child) => [child.id, child])),
  }
}
