import { createHmac } from "node:crypto"
import { addDays } from "../../engine/calendar.js"
import type { CalendarDate, Course } from "../../engine/course.js"

/** Days are moved by at most so many: half a year either way hides the season of every visit. */
const MOST_DAYS = 182

/** What stands for a child in a table without names. */
export interface StudyChild {
  /** Stands for the child in every table of this practice. */
  readonly studyId: string
  /** A day of this child as it is written. */
  readonly moved: (day: CalendarDate) => CalendarDate
}

/**
 * A child without its name: an id and a shift of all its days, both worked out of the practice's secret, so that two
 * tables of one practice fit together, intervals and ages stay exact, and nobody without the secret finds the way back.
 * The shift is never 0.
 *
 * @example
 * const { moved } = studyChild({ secret: "s", child: "c1" })
 * daysBetween(moved("2026-01-01"), moved("2026-01-31")) // => 30, as before
 */
export function studyChild({
  secret,
  child,
}: {
  readonly secret: string
  readonly child: string
}): StudyChild {
  const bytes = keyed(secret, `child ${child}`)
  const steps = bytes.readUInt32BE(16) % (2 * MOST_DAYS)
  const shift = steps < MOST_DAYS ? steps - MOST_DAYS : steps - MOST_DAYS + 1
  return { studyId: bytes.toString("hex", 0, 6), moved: (day) => addDays(day, shift) }
}

/** A name of an instrument as a code: the same one everywhere, without the maker or the serial number. */
export const instrumentCode = ({
  secret,
  device,
}: {
  readonly secret: string
  readonly device: string
}): string => `instrument-${keyed(secret, `device ${device}`).toString("hex", 0, 3)}`

const keyed = (secret: string, of: string): Buffer => createHmac("sha256", secret).update(of).digest()

/** A child as the practice knows it, with the course to be told of. */
export interface KnownChild {
  readonly id: string
  readonly course: Course
}
