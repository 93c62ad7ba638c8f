import { createReadStream, mkdirSync, readdirSync, rmSync } from "node:fs"
import { join } from "node:path"
import type { Readable } from "node:stream"
import { language, say } from "../../engine/say.js"
import { inSnapshot, type Person } from "../../record/index.js"
import type { PaperSize } from "../../report/document.js"
import type { Context } from "../context.js"
import type { ArchivesAnswer, ShownArchive } from "../contract/leave.js"
import { noSuch, Refusal } from "../refusal.js"
import { wholeFile } from "./archive-file.js"
import type { Progress } from "./archive-options.js"
import { type Journal, type JournalLine, journalIn } from "./journal.js"
import { writePracticeArchive } from "./practice-archive.js"

/** An archive holds everything there is; nobody needs it to lie about. Common practice, no source. */
const KEPT_MS = 24 * 3_600_000

const SWEPT_EVERY_MS = 10 * 60_000

/** The last archives that are told of. */
const TOLD = 20

interface Running {
  readonly id: string
  readonly stop: AbortController
  readonly done: Promise<void>
  progress: Progress | null
}

export interface Shelf {
  readonly shown: () => ArchivesAnswer
  readonly start: (asked: {
    readonly person: Person
    readonly withPapers: boolean
    readonly paper: PaperSize
  }) => Promise<void>
  readonly remove: (asked: { readonly id: string; readonly person: Person }) => Promise<void>
  readonly open: (id: string) => { readonly stream: Readable; readonly bytes: number; readonly name: string }
  readonly fetched: (asked: { readonly id: string; readonly person: Person }) => void
  readonly close: () => Promise<void>
}

/** Archives of the practice in its data folder: made one at a time, and gone when fetched or after a day. */
export function archiveShelf(context: Context, log: (what: JournalLine) => void): Shelf {
  const { record, clock, papers: setter } = context
  const folder = join(record.folder, "archives")
  const journal = journalIn(folder)
  const fileOf = (id: string) => join(folder, `${id}.zip`)
  const now = () => new Date(clock.nowMs()).toISOString()
  let running: Running | null = null

  const note = (line: Omit<JournalLine, "at">) => {
    const whole = { ...line, at: now() }
    journal.note(whole)
    log(whole)
  }
  const sweep = () => {
    for (const { id, state, until } of shownOf(journal, null)) {
      // What was under way when the server ended will never be ready.
      if (state === "running" && id !== running?.id) note({ id, what: "interrupted", by: null })
      if (until === null || until > now()) continue
      rmSync(fileOf(id), { force: true })
      note({ id, what: "expired", by: null })
    }
  }
  sweepParts(folder)
  const timer = setInterval(sweep, SWEPT_EVERY_MS).unref()

  const shown = (): ArchivesAnswer => {
    sweep()
    return { archives: shownOf(journal, running).slice(0, TOLD) }
  }
  const readyOne = (id: string): ShownArchive => {
    const found = shown().archives.find((archive) => archive.id === id && archive.state === "ready")
    if (!found) throw noSuch("archive", id)
    return found
  }
  const make = async (
    job: Running,
    {
      withPapers,
      paper,
      spoken,
    }: { withPapers: boolean; paper: PaperSize; spoken: ReturnType<typeof language> },
  ) => {
    const { id, stop } = job
    try {
      mkdirSync(folder, { recursive: true, mode: 0o700 })
      const { result, bytes } = await wholeFile(fileOf(id), (destination) =>
        inSnapshot(record.folder, (database) =>
          writePracticeArchive({
            ...{ database, destination, madeAtMs: clock.nowMs(), today: clock.today(), signal: stop.signal },
            papers: withPapers ? { setter, language: spoken, paper } : null,
            onProgress: (progress) => {
              job.progress = progress
            },
          }),
        ),
      )
      // Cancelled in the last moment: what was made all the same is not kept.
      if (stop.signal.aborted) return rmSync(fileOf(id), { force: true })
      const problems = [...result.damage, ...result.papersNotMade.map(({ child, why }) => `${child}: ${why}`)]
      note({ id, what: "ready", by: null, bytes, head: result.head, problems: problems.slice(0, 50) })
    } catch (cause) {
      if (stop.signal.aborted) return
      const why = cause instanceof Error ? cause.message : String(cause)
      note({ id, what: "failed", by: null, problems: [why] })
    } finally {
      running = null
    }
  }
  return {
    shown,
    start: async ({ person, withPapers, paper }) => {
      // A cancelled one may still have a part in hand.
      if (running?.stop.signal.aborted) await running.done
      if (running)
        throw new Refusal(409, [
          {
            path: "",
            value: null,
            allowed: say("one archive at a time"),
            message: say("an archive is being made already; wait for it or cancel it"),
          },
        ])
      const id = crypto.randomUUID()
      note({ id, what: "started", by: person.name, withPapers })
      let begin = () => {}
      const begun = new Promise<void>((resolve) => {
        begin = resolve
      })
      const spoken = language()
      const job: Running = {
        id,
        stop: new AbortController(),
        progress: null,
        done: begun.then(() => make(job, { withPapers, paper, spoken })),
      }
      running = job
      begin()
    },
    remove: async ({ id, person }) => {
      if (running?.id === id) {
        const job = running
        note({ id, what: "cancelled", by: person.name })
        job.stop.abort(new Error("cancelled"))
        await job.done
        return
      }
      readyOne(id)
      rmSync(fileOf(id), { force: true })
      note({ id, what: "removed", by: person.name })
    },
    open: (id) => {
      const { bytes, startedAt } = readyOne(id)
      return {
        stream: createReadStream(fileOf(id)),
        bytes: bytes ?? 0,
        name: `lengthwise-archive-${startedAt.slice(0, 10)}.zip`,
      }
    },
    fetched: ({ id, person }) => {
      rmSync(fileOf(id), { force: true })
      note({ id, what: "fetched", by: person.name })
    },
    close: async () => {
      clearInterval(timer)
      running?.stop.abort(new Error("the server is being closed"))
      await running?.done
    },
  }
}

/** What a crash left of a file that was never whole. */
function sweepParts(folder: string): void {
  try {
    for (const name of readdirSync(folder))
      if (name.endsWith(".part")) rmSync(join(folder, name), { force: true })
  } catch {
    // No archive was ever made here.
  }
}

function shownOf(journal: Journal, running: Running | null): readonly ShownArchive[] {
  return journal.archives().flatMap((lines) => {
    const [started] = lines
    const last = lines.at(-1)
    if (started?.what !== "started" || !last) return []
    const ready = lines.find(({ what }) => what === "ready")
    return [
      {
        id: started.id,
        startedAt: started.at,
        by: started.by ?? "",
        withPapers: started.withPapers ?? false,
        state: last.what === "started" ? "running" : last.what,
        progress: running?.id === started.id ? running.progress : null,
        bytes: ready?.bytes ?? null,
        head: ready?.head ?? null,
        until: last.what === "ready" ? new Date(Date.parse(last.at) + KEPT_MS).toISOString() : null,
        problems: [...lines.flatMap(({ problems = [] }) => problems)],
      },
    ]
  })
}
