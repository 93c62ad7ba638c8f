import { createHash } from "node:crypto"
import type { CalendarDate } from "../../engine/course.js"
import type { Fragment, ReadFile } from "../intake/fragment.js"
import { readCourse } from "./read-course.js"

/** A course file as a file of another program: whole, or not at all and every fault said. */
export async function readCourseFile({
  file,
  text,
  today,
}: {
  readonly file: string
  readonly text: string
  readonly today?: CalendarDate | undefined
}): Promise<ReadFile> {
  const read = readCourse(text, { today })
  if ("problems" in read) {
    const skipped = read.problems.map(({ path, message }) => ({ file, where: path, why: message }))
    return { file, fragments: [], skipped }
  }
  const { lengthwise: _, practice: __, child, ...course } = read.course
  const { id, born, sex, ...more } = child
  const fragment: Fragment = {
    identity: { ...(id === undefined ? {} : { number: id }), born, sex },
    course: { ...course, ...(Object.keys(more).length > 0 ? { child: more } : {}) },
    documents: [],
    source: { kind: "course-file", id: createHash("sha256").update(text).digest("hex") },
    notes: read.notes,
  }
  return { file, fragments: [fragment], skipped: [] }
}
