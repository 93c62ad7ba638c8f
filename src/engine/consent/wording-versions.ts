import type { CalendarDate } from "../course.js"
import type { ConsentWording } from "../practice-rules.js"

type Version = Pick<ConsentWording, "id" | "version">

const isOf = ({ id, version }: Version, other: Version): boolean =>
  other.id === id && other.version === version

/**
 * The first day a version was in force in any language: what bears one name is one content, however many languages
 * it was written in, and a late translation does not make it younger. Undefined for a version that is not among these.
 */
export const firstDayOf = (version: Version, wordings: readonly ConsentWording[]): CalendarDate | undefined =>
  wordings
    .filter((each) => isOf(version, each))
    .map(({ from }) => from)
    .toSorted()[0]

/**
 * The first later version of a wording that is material and in force on a day, in whatever language it is written: a
 * change that matters to one family matters to all. Where the version that was read is not among the wordings, the day
 * it was read stands for it.
 */
export function laterMaterial({
  read,
  date,
  on,
  wordings,
}: {
  readonly read: Version
  readonly date: CalendarDate
  readonly on: CalendarDate
  readonly wordings: readonly ConsentWording[]
}): ConsentWording | undefined {
  const since = firstDayOf(read, wordings) ?? date
  return wordings
    .filter(
      (each) =>
        each.id === read.id &&
        each.version !== read.version &&
        each.isMaterial &&
        each.from <= on &&
        (firstDayOf(each, wordings) ?? each.from) > since,
    )
    .toSorted((a, b) => (a.from < b.from ? -1 : 1))[0]
}
