import { spawnSync } from "node:child_process"
import { fileURLToPath } from "node:url"

/** Debian's own, since its python3-icalendar is there and nowhere else. */
const PYTHON = "/usr/bin/python3"
const SCRIPT = fileURLToPath(new URL("read-calendar.py", import.meta.url))

export const hasIcalendar = (): boolean => spawnSync(PYTHON, ["-c", "import icalendar"]).status === 0

export interface ReadEntry {
  readonly uid: string
  readonly start: string
  readonly summary: string
  readonly languages: readonly string[]
  readonly description: string
  readonly location: string | null
  readonly transparency: string
  readonly class: string
  readonly sequence: number
  readonly stamp: string
  readonly alarms: readonly { readonly action: string; readonly secondsBefore: number }[]
  readonly errors: readonly string[]
}

export interface ReadCalendar {
  readonly version: string
  readonly producer: string
  readonly method: string
  readonly errors: readonly string[]
  readonly entries: readonly ReadEntry[]
}

/** What python3-icalendar reads in each calendar; all in one run, since starting it is what takes time. */
export function readCalendars(calendars: readonly string[]): readonly ReadCalendar[] {
  const { status, stdout, stderr } = spawnSync(PYTHON, [SCRIPT], {
    input: JSON.stringify(calendars),
    encoding: "utf8",
    env: { PYTHONIOENCODING: "utf-8" },
    maxBuffer: 256_000_000,
  })
  if (status !== 0) throw new Error(`python3-icalendar could not read a calendar: ${stderr}`)
  return JSON.parse(stdout)
}
