import { readdirSync, readFileSync } from "node:fs"
import { fileURLToPath } from "node:url"
import fc from "fast-check"
import { courseFrom } from "../../../src/interop/course/read-course.js"
import { readDicom } from "../../../src/interop/dicom/read-dicom.js"
import { madeFile } from "../dicom/made.js"
import { remadeFile } from "../dicom/remade.js"
import type { FuzzTarget } from "../frame/target.js"

const objects = fileURLToPath(new URL("../../validation/dicom/objects/", import.meta.url))

const seeds = readdirSync(objects).map((file) => new Uint8Array(readFileSync(`${objects}${file}`)))

/** Whatever is read must fit into a course file, and whatever is not must say why. */
export const target: FuzzTarget = {
  name: "dicom",
  share: 3,
  seeds: async () => seeds,
  async read(bytes) {
    const { fragments, skipped } = await readDicom({ file: "input", bytes, today: "2026-11-26" })
    if (fragments.length === 0 && skipped.length === 0) throw new Error("nothing was read and nothing said")
    if (skipped.some(({ why }) => why.trim() === "")) throw new Error("skipped without a reason")
    for (const { identity, course, documents } of fragments) {
      const child = {
        born: identity.born ?? "1900-01-01",
        sex: identity.sex ?? "female",
        id: identity.number,
      }
      const read = courseFrom({ lengthwise: 1, child, ...course }, { today: "2026-11-26" })
      if ("problems" in read) throw new Error(`no course: ${JSON.stringify(read.problems)}`)
      const unknown = read.notes.filter(({ kind }) => kind === "unknown-field")
      if (unknown.length > 0) throw new Error(`no field of a course: ${JSON.stringify(unknown)}`)
      if (documents.some(({ bytes: paper }) => paper.length > bytes.length))
        throw new Error("a paper is larger than the file it came in")
    }
    return fragments
  },
  generated: fc.oneof(madeFile(), remadeFile(seeds)),
}
