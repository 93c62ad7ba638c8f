import type { Course } from "../../engine/course.js"
import { type CourseTable, headerRow, tableRows } from "../../interop/archive/course-tables.js"
import type { ListedChild, PracticeRecord } from "../../record/index.js"

/** Children whose courses are in memory at one time. */
const CHILDREN_AT_ONCE = 50

export interface ChildCourse {
  readonly child: ListedChild
  readonly course: Course
}

/** Goes through the children with their courses, a few at a time, as often as it is asked to. */
export function courseBatches({
  record,
  children,
  signal,
}: {
  readonly record: PracticeRecord
  readonly children: readonly ListedChild[]
  readonly signal?: AbortSignal | undefined
}): (onDone?: (done: number) => void) => AsyncGenerator<ChildCourse> {
  return async function* (onDone = () => {}) {
    for (let from = 0; from < children.length; from += CHILDREN_AT_ONCE) {
      signal?.throwIfAborted()
      const batch = children.slice(from, from + CHILDREN_AT_ONCE)
      const courses = await record.coursesOf(batch.map(({ id }) => id))
      for (const child of batch) {
        const course = courses.get(child.id)
        if (course) yield { child, course }
      }
      onDone(from + batch.length)
    }
  }
}

/** A table of the whole practice as text, child after child. */
export async function* tableText(
  table: CourseTable,
  courses: AsyncIterable<ChildCourse>,
): AsyncGenerator<string> {
  yield headerRow(table)
  for await (const { child, course } of courses) yield tableRows(table, course, child)
}
