import { ageYears } from "../../engine/calendar.js"
import { ANCESTRIES, type Course, SEXES } from "../../engine/course.js"

/** Fewer children than this in a cell can be recognised by who knows them. Common practice, no source. */
export const SMALLEST_CELL = 5

/** Children who are alike in what an acquaintance would know. */
export interface Cell {
  readonly sex: string
  readonly ancestry: string
  /** Whole years at the first visit. */
  readonly ageAtFirstVisit: number
  readonly children: number
}

/**
 * The cells with fewer than `SMALLEST_CELL` children, the smallest first: whoever hands the table on leaves these children
 * out or joins their ages, or hands it to nobody who could know them.
 */
export function smallCells(courses: Iterable<Course>): readonly Cell[] {
  const count = new Map<string, Cell>()
  for (const { child, visits } of courses) {
    const [first] = visits
    if (!first) continue
    const cell = {
      sex: child.sex,
      ancestry: child.ancestry ?? "unstated",
      ageAtFirstVisit: Math.floor(ageYears({ born: child.born, on: first.date })),
    }
    const key = `${cell.sex} ${cell.ancestry} ${cell.ageAtFirstVisit}`
    count.set(key, { ...cell, children: (count.get(key)?.children ?? 0) + 1 })
  }
  return [...count.values()].filter(({ children }) => children < SMALLEST_CELL).toSorted(bySize)
}

function bySize(a: Cell, b: Cell): number {
  return (
    a.children - b.children ||
    SEXES.indexOf(a.sex as never) - SEXES.indexOf(b.sex as never) ||
    ANCESTRIES.indexOf(a.ancestry as never) - ANCESTRIES.indexOf(b.ancestry as never) ||
    a.ageAtFirstVisit - b.ageAtFirstVisit
  )
}
