import {
  type HeardInstrument,
  INSTRUMENT_EVENTS_PAGE,
  type InstrumentEvent,
  type InstrumentsQuery,
} from "../contract/instruments.js"

/** How many of each kind are remembered: weeks of a practice, and nothing that a flood could fill memory with. */
const MOST_EVENTS = 500
/** Titles that were heard; one more takes the place of the one not heard for longest. */
const MOST_TITLES = 100
/** Lines on the standard error output in a minute; a flood must not fill the disk that the log lies on. */
const LINES_PER_MINUTE = 60

const MINUTE_MS = 60_000

export interface Peer {
  readonly title: string
  readonly address: string
}

export type NewEvent = Peer & Pick<InstrumentEvent, "what" | "outcome" | "refusal" | "why">

type Remembered = Omit<HeardInstrument, "isAllowed">

/**
 * What the receiver took and refused, in memory only and bounded. The lines that it writes hold titles, addresses and
 * kinds of objects, and nothing out of an object.
 */
export function eventLog({
  nowMs,
  write,
}: {
  readonly nowMs: () => number
  readonly write: (line: string) => void
}) {
  const lists = { received: [] as InstrumentEvent[], refused: [] as InstrumentEvent[] }
  const counts = { received: 0, refused: 0 }
  const heard = new Map<string, Remembered>()
  let lastId = 0
  let minute = { startMs: 0, lines: 0 }
  const now = () => new Date(nowMs()).toISOString()

  const told = (line: string) => {
    if (nowMs() - minute.startMs >= MINUTE_MS) minute = { startMs: nowMs(), lines: 0 }
    minute = { ...minute, lines: minute.lines + 1 }
    if (minute.lines <= LINES_PER_MINUTE) write(line)
    if (minute.lines === LINES_PER_MINUTE) write("instruments: further lines of this minute are left out")
  }

  return {
    add: (event: NewEvent): void => {
      const kind = event.outcome === "refused" ? "refused" : "received"
      const list = lists[kind]
      counts[kind] += 1
      const last = list.at(-1)
      if (last && isAgain(last, event)) list[list.length - 1] = { ...last, at: now(), times: last.times + 1 }
      else {
        lastId += 1
        list.push({ ...event, id: lastId, at: now(), times: 1 })
        if (list.length > MOST_EVENTS) list.shift()
      }
      if (event.outcome === "refused")
        told(
          `instruments: ${event.refusal} ${event.what || "association"} of "${event.title}" at ${event.address}`,
        )
    },

    hear: ({ title, address }: Peer, what: "association" | "echo" | "object"): void => {
      const at = now()
      const before = heard.get(title) ?? { lastEchoAt: null, lastObjectAt: null }
      // Deleted and set again, so that the first of the map is the one not heard for longest.
      heard.delete(title)
      heard.set(title, {
        title,
        address,
        lastAt: at,
        lastEchoAt: what === "echo" ? at : before.lastEchoAt,
        lastObjectAt: what === "object" ? at : before.lastObjectAt,
      })
      const [oldest] = heard.keys()
      if (heard.size > MOST_TITLES && oldest !== undefined) heard.delete(oldest)
    },

    heard: (): readonly Remembered[] => [...heard.values()].reverse(),
    counts: () => ({ ...counts }),

    /** Latest first; `words` gives the words an event is found by, in the reader's language. */
    page: ({
      search,
      only,
      page,
      words,
    }: InstrumentsQuery & { readonly words: (event: InstrumentEvent) => string }) => {
      const wanted = search.toLowerCase().split(/\s+/).filter(Boolean)
      const all = only ? lists[only] : [...lists.received, ...lists.refused]
      const found = all
        .filter((event) => {
          const text = `${event.title} ${event.address} ${event.why ?? ""} ${words(event)}`.toLowerCase()
          return wanted.every((word) => text.includes(word))
        })
        .sort((a, b) => (a.at === b.at ? b.id - a.id : a.at < b.at ? 1 : -1))
      const from = (page - 1) * INSTRUMENT_EVENTS_PAGE
      return { total: found.length, events: found.slice(from, from + INSTRUMENT_EVENTS_PAGE) }
    },
  }
}

export type EventLog = ReturnType<typeof eventLog>

/** A flood of the same refusal is one line that counts; each object received stands for itself. */
const isAgain = (last: InstrumentEvent, event: NewEvent): boolean =>
  event.outcome === "refused" &&
  last.title === event.title &&
  last.address === event.address &&
  last.what === event.what &&
  last.refusal === event.refusal &&
  last.why === event.why
