import { appendFileSync, mkdirSync, readFileSync } from "node:fs"
import { join } from "node:path"

/** What happened to an archive, kept beside the record: who took the practice's data out, and when. */
export interface JournalLine {
  readonly id: string
  readonly at: string
  readonly what:
    | "started"
    | "ready"
    | "fetched"
    | "cancelled"
    | "failed"
    | "interrupted"
    | "removed"
    | "expired"
  /** Name of the person; null for the program. */
  readonly by: string | null
  readonly withPapers?: boolean | undefined
  readonly bytes?: number | undefined
  readonly head?: string | null | undefined
  readonly problems?: readonly string[] | undefined
}

export interface Journal {
  readonly note: (line: JournalLine) => void
  /** The lines of each archive in their order, the newest archive first. */
  readonly archives: () => readonly (readonly JournalLine[])[]
}

/** Lines are only ever added; one that a crash cut short is passed over. */
export function journalIn(folder: string): Journal {
  const file = join(folder, "journal.ndjson")
  const lines = read(file)
  return {
    note: (line) => {
      mkdirSync(folder, { recursive: true, mode: 0o700 })
      appendFileSync(file, `${JSON.stringify(line)}\n`, { mode: 0o600 })
      lines.push(line)
    },
    archives: () => {
      const found = new Map<string, JournalLine[]>()
      for (const line of lines) found.set(line.id, [...(found.get(line.id) ?? []), line])
      return [...found.values()].reverse()
    },
  }
}

function read(file: string): JournalLine[] {
  let text: string
  try {
    text = readFileSync(file, "utf8")
  } catch {
    return []
  }
  return text.split("\n").flatMap((line) => {
    try {
      return line === "" ? [] : [JSON.parse(line) as JournalLine]
    } catch {
      return []
    }
  })
}
