import { setImmediate as nextTurn } from "node:timers/promises"
import { OWED_GROUPS, type Owed, type Role } from "../engine/today/owed.js"
import type { ListedChild } from "../record/index.js"
import type { ChildReadings, ReadingDay } from "./child-readings.js"
import type { Context } from "./context.js"
import { FIRST_ROWS, GROUP_PAGE, type OwedRow, type TodayAnswer } from "./contract/today.js"

/** Children read in one go: about 20 ms of work, after which whoever else asks has a turn. */
const IN_ONE_GO = 25

interface TodayQuestion {
  readonly role?: Role | undefined
  readonly search: string
  readonly group?: Owed["group"] | undefined
  readonly page: number
}

interface Row {
  readonly child: ListedChild
  readonly owed: Owed
}

/** The practice as it was last read: what it holds for, and every row in order. */
interface Sorted {
  readonly head: string
  readonly today: ReadingDay["today"]
  readonly rules: ReadingDay["rules"]
  readonly children: readonly ListedChild[]
  readonly read: number
  readonly rows: readonly Row[]
}

/**
 * Who is owed what today. The children's readings are kept, so that after the first time only those whose entries
 * changed are read again. At a start and at midnight they are read in the background, a few at a time, and the
 * list says how far it has come.
 */
export function todayList({ record, clock, rules }: Context, readings: ChildReadings) {
  let reading: Promise<void> | null = null
  let kept: Sorted | null = null
  let warming: Promise<void> | null = null
  let isStopped = false

  const readAll = async (children: readonly ListedChild[], day: ReadingDay): Promise<void> => {
    for (let at = 0; at < children.length && !isStopped; at += IN_ONE_GO) {
      await readings.read(children.slice(at, at + IN_ONE_GO), day)
      await nextTurn()
    }
  }

  const startReading = (children: readonly ListedChild[], day: ReadingDay): Promise<void> => {
    reading ??= readAll(children, day).finally(() => {
      reading = null
    })
    return reading
  }

  /** Everything in order; asked for again only when something was recorded, the day or the rules changed. */
  const everything = async (): Promise<Sorted> => {
    const day = { today: clock.today(), rules: await rules.now() }
    const head = await record.head()
    const isSame = kept?.head === head && kept.today === day.today && kept.rules === day.rules
    if (kept && isSame && kept.read === kept.children.length) return kept
    const children = isSame && kept ? kept.children : await record.everyChild()
    const missing = children.filter((child) => readings.known(child, day) === undefined)
    // A few changed children are read at once; a whole practice is not waited for.
    if (missing.length <= 2 * IN_ONE_GO) await readings.read(missing, day)
    else void startReading(missing, day)
    let read = 0
    const rows = children.flatMap((child) => {
      const found = readings.known(child, day)
      if (found) read++
      return (found?.owed ?? []).map((owed) => ({ child, owed }))
    })
    kept = { head, ...day, children, read, rows: rows.sort(byUrgency) }
    return kept
  }

  return {
    /** Reads every child in the background, so that the first question of the day need not wait. */
    warm(): Promise<void> {
      const read = async () => {
        const day = { today: clock.today(), rules: await rules.now() }
        await startReading(await record.everyChild(), day)
      }
      warming = read()
      return warming
    },

    /** Ends what goes on in the background: once it answers, the record may be closed. */
    async stop(): Promise<void> {
      isStopped = true
      await Promise.allSettled([warming, reading])
    },

    async ask({ role, search, group, page }: TodayQuestion): Promise<TodayAnswer> {
      const { today, children, read, rows } = await everything()
      const found = search.trim() === "" ? null : await record.childrenMatching(search)
      const shown = rows.filter(
        ({ child, owed }) => (role === undefined || owed.role === role) && (!found || found.has(child.id)),
      )
      return {
        today,
        read,
        total: children.length,
        things: shown.length,
        children: new Set(shown.map(({ child }) => child.id)).size,
        groups: OWED_GROUPS.map((name) => {
          const all = shown.filter(({ owed }) => owed.group === name)
          const [from, to] =
            group === undefined
              ? [0, FIRST_ROWS]
              : group === name
                ? [(page - 1) * GROUP_PAGE, page * GROUP_PAGE]
                : [0, 0]
          return { group: name, count: all.length, rows: all.slice(from, to).map(rowOf) }
        }),
      }
    },
  }
}

function rowOf({ child, owed }: Row): OwedRow {
  const { id, name, number, born } = child
  return { child: { id, name, number, born }, ...owed }
}

/** What is overdue first, then by the day it is due or waits since; the name settles what is left. */
function byUrgency(a: Row, b: Row): number {
  const late = Number(b.owed.state === "overdue") - Number(a.owed.state === "overdue")
  if (late !== 0) return late
  const [dayA, dayB] = [a.owed.due ?? a.owed.since, b.owed.due ?? b.owed.since]
  return dayA < dayB ? -1 : dayA > dayB ? 1 : a.child.name < b.child.name ? -1 : 1
}
