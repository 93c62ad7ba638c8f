import { createHash } from "node:crypto"
import { setImmediate as nextTurn } from "node:timers/promises"
import type { WebhookEvent } from "../../engine/access/webhook-events.js"
import type { ListedChild, NewDelivery, Telling, Told, Webhook } from "../../record/index.js"
import { childReading, type ReadingDay } from "../child-readings.js"
import type { Context } from "../context.js"
import { newsOf, type ToldChild, toldChild } from "./news.js"

/** Children read in one go, after which whoever else asks has a turn. */
const IN_ONE_GO = 25

/**
 * Compares what the engine says of each child with what was last told, and plans what is new for every address that is
 * on. What was told is kept with it, so that a restart tells nothing again. Where nothing was ever told, what is so now is
 * only kept: an address that is added learns of nothing old.
 */
export function newsTeller({ record, clock, rules, settings, publicAddress }: Context) {
  const { webhooks, practice } = record
  let lastLook = ""

  const planned = (
    news: readonly WebhookEvent[],
    about: {
      readonly child: string | null
      readonly link: string
      readonly key: string
      readonly to: readonly Webhook[]
    },
  ): readonly NewDelivery[] =>
    about.to.flatMap((webhook) =>
      news
        .filter((event) => webhook.events.includes(event))
        .map((event) => {
          const id = crypto.randomUUID()
          const { child, link } = about
          const at = new Date(clock.nowMs()).toISOString()
          const body = JSON.stringify({ id, event, child, at, link: (publicAddress ?? "") + link })
          return { id, webhook: webhook.id, event, child, body, key: `${event} ${child ?? ""} ${about.key}` }
        }),
    )

  const tellChildren = async (
    children: readonly ListedChild[],
    day: ReadingDay & {
      readonly rulesKey: string
      readonly told: ReadonlyMap<string, Told>
      readonly to: readonly Webhook[]
    },
  ): Promise<number> => {
    const courses = await record.coursesOf(children.map(({ id }) => id))
    const tellings = children.flatMap(({ id, lastHash }): readonly Telling[] => {
      const course = courses.get(id)
      if (!course) return []
      const now = toldChild(childReading(course, { today: day.today, rules: day.rules, settings }))
      const before = (day.told.get(id)?.told ?? null) as ToldChild | null
      const readFrom = keyOf(lastHash, day)
      const about = { child: id, link: `/children/${id}`, key: readFrom, to: day.to }
      return [{ child: id, readFrom, told: now, deliveries: planned(newsOf(before, now), about) }]
    })
    return webhooks.deliveries.tell(tellings, new Date(clock.nowMs()).toISOString())
  }

  /** What waits in the Inbox of the whole practice; kept under the practice's own id. */
  const tellInbox = async (told: Told | null, to: readonly Webhook[]): Promise<number> => {
    const waiting = await webhooks.waitingInInbox()
    const known = new Set((told?.told as { readonly waiting?: readonly string[] } | undefined)?.waiting)
    const isNew = told !== null && waiting.some((id) => !known.has(id))
    const key = shortHash(waiting.join(" "))
    if (told?.readFrom === key) return 0
    const news = isNew ? (["object-waiting"] as const) : []
    const deliveries = planned(news, { child: null, link: "/inbox", key: `${key} ${clock.nowMs()}`, to })
    const telling = { child: practice.id, readFrom: key, told: { waiting }, deliveries }
    return webhooks.deliveries.tell([telling], new Date(clock.nowMs()).toISOString())
  }

  /** Looks for what is new; returns how much was planned. */
  return async (): Promise<number> => {
    const known = await webhooks.list()
    if (known.length === 0) {
      await webhooks.forgetTold()
      lastLook = ""
      return 0
    }
    const [head, inForce] = [await record.head(), await rules.now()]
    const day = { today: clock.today(), rules: inForce, rulesKey: shortHash(JSON.stringify(inForce)) }
    const practiceTold = await webhooks.toldOf(practice.id)
    const isFirst = practiceTold === null
    const to = isFirst ? [] : known.filter(({ state }) => state === "on")
    let added = 0
    const look = `${head} ${day.today} ${day.rulesKey}`
    if (isFirst || look !== lastLook) {
      const told = await webhooks.told()
      const children = (await record.everyChild()).filter(
        ({ id, lastHash }) => told.get(id)?.readFrom !== keyOf(lastHash, day),
      )
      for (let at = 0; at < children.length; at += IN_ONE_GO) {
        added += await tellChildren(children.slice(at, at + IN_ONE_GO), { ...day, told, to })
        await nextTurn()
      }
      lastLook = look
    }
    // Kept last of all: until it is there, a first look that was cut short is begun anew.
    return added + (await tellInbox(practiceTold, to))
  }
}

const keyOf = (lastHash: string, day: { readonly today: string; readonly rulesKey: string }): string =>
  `${lastHash} ${day.today} ${day.rulesKey}`

const shortHash = (text: string): string => createHash("sha256").update(text).digest("hex").slice(0, 16)
