import { readdirSync, readFileSync } from "node:fs"
import { fileURLToPath } from "node:url"
import fc from "fast-check"
import { readCourse } from "../../../src/interop/course/read-course.js"
import { writeCourse } from "../../../src/interop/course/write-course.js"
import { courseArbitrary } from "../../generative/course-arbitrary.js"
import type { FuzzTarget } from "../frame/target.js"

const examples = fileURLToPath(new URL("../../../examples/", import.meta.url))

/** A course file is read whole, or every fault is said; what was read can be written and is read back the same. */
export const target: FuzzTarget = {
  name: "course",
  seeds: async () =>
    readdirSync(examples)
      .filter((file) => file.endsWith(".json"))
      .map((file) => new Uint8Array(readFileSync(`${examples}${file}`))),
  async read(bytes) {
    const read = readCourse(new TextDecoder().decode(bytes), { today: "2026-11-26" })
    if ("problems" in read) {
      if (read.problems.length === 0) throw new Error("refused without a reason")
      return read.problems
    }
    const text = writeCourse(read.course)
    const again = readCourse(text, { today: "2026-11-26" })
    if ("problems" in again || writeCourse(again.course) !== text) throw new Error("not read back the same")
    return read.course
  },
  generated: fc
    .oneof(
      courseArbitrary.map((course) => JSON.stringify(course)),
      fc.json({ maxDepth: 6 }),
      fc.string({ maxLength: 500 }),
    )
    .map((text) => new TextEncoder().encode(text)),
}
