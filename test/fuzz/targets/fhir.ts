import { readdirSync, readFileSync } from "node:fs"
import { demoCourses } from "../../../src/engine/simulate/demo.js"
import { evidence } from "../../../src/evidence/index.js"
import { writeCourse } from "../../../src/interop/course/write-course.js"
import { courseFromFhir } from "../../../src/interop/fhir/course-from-fhir.js"
import { jsonOfText } from "../../../src/interop/fhir/json-of-text.js"
import { readFhir } from "../../../src/interop/fhir/read-fhir.js"
import { fhirBundle, fhirLines, fhirResources } from "../../../src/interop/fhir/write-fhir.js"
import type { FuzzTarget } from "../frame/target.js"

const EXAMPLES = new URL("../../validation/fhir/examples/", import.meta.url)

/**
 * FHIR files as they come from outside: hand-written ones, and ours of the shortest course of the demo practice.
 * Whatever is read is sound: it can be written as a course file, goes out as FHIR and comes back the same.
 */
export const target: FuzzTarget = {
  name: "fhir",
  seeds: async (): Promise<Uint8Array[]> => {
    const courses = demoCourses({ today: "2026-11-25", seed: 7, evidence })
      .map(({ course }) => course)
      .toSorted((a, b) => a.visits.length - b.visits.length)
    const own = courses.slice(0, 1).flatMap((course) => {
      const short = { ...course, visits: course.visits.slice(0, 2) }
      return [JSON.stringify(fhirBundle(short)), fhirLines(fhirResources(short))]
    })
    const theirs = readdirSync(EXAMPLES).map((name) => readFileSync(new URL(name, EXAMPLES), "utf8"))
    return [...own, ...theirs].map((text) => new TextEncoder().encode(text))
  },
  read: async (bytes: Uint8Array): Promise<unknown> => {
    const text = new TextDecoder().decode(bytes)
    const read = await readFhir({ file: "fuzz.json", text, today: "2026-11-26" })
    if (read.fragments.length + read.skipped.length === 0) throw new Error("nothing read, and no reason")
    const parsed = jsonOfText(text)
    if ("why" in parsed) return read
    for (const whole of courseFromFhir(parsed.value, { file: "fuzz", id: "fuzz" }).wholes) {
      if (whole === undefined) continue
      const [again] = courseFromFhir(fhirBundle(whole), { file: "fuzz", id: "fuzz" }).wholes
      if (again === undefined || writeCourse(again) !== writeCourse(whole))
        throw new Error("not the same again")
    }
    return read
  },
}
