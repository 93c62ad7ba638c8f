import type { Check } from "../engine/assessment.js"
import type { CalendarDate, Course } from "../engine/course.js"
import type { Problem } from "../engine/problem.js"
import { problem } from "../interop/course/problem.js"
import { readCourse } from "../interop/course/read-course.js"
import type { Io } from "./io.js"

export interface CourseInput {
  readonly course: Course
  readonly asOf: CalendarDate
  readonly notes: readonly Check[]
  /** A check of the engine with its path as the file counts its visits, which need not be in order of date. */
  readonly inFile: (check: Check) => Check
}

/**
 * The course of a file, asked about as of a day. Visits after that day are left out by the engine, which says so; a
 * visit after both that day and today has not happened, and is a fault.
 */
export async function courseInput(
  { file, asOf: asked }: { readonly file: string; readonly asOf?: CalendarDate | undefined },
  io: Io,
): Promise<CourseInput | { readonly problems: readonly Problem[] }> {
  const source = await io.read(file)
  if ("problem" in source) return { problems: [source.problem] }
  const today = io.today()
  const asOf = asked ?? today
  const read = readCourse(source.text, { today: [asOf, today].toSorted()[1] })
  if ("problems" in read) return read
  const { course, notes, visitOrder } = read
  const { born } = course.child
  if (asOf < born) {
    const allowed = `on or after the day of birth (${born})`
    return { problems: [problem({ path: "--as-of", value: asOf, allowed })] }
  }
  return {
    course,
    asOf,
    notes,
    inFile: (check) => ({
      ...check,
      path: check.path.replace(/^visits\[(\d+)\]/, (whole, index) => {
        const place = visitOrder[Number(index)]
        return place === undefined ? whole : `visits[${place}]`
      }),
    }),
  }
}
