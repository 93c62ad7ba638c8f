import { spawnSync } from "node:child_process"
import { mkdtempSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { AXIAL, dataSet, EXPLICIT, IMPLICIT } from "../../../test/app/dicom-raw.js"
import { hasTool } from "../../../test/report/outside-tools.js"
import { isUid, namesInDataSet, part10File } from "./stored-object.js"

const name = { sopClass: AXIAL, sopInstance: "2.25.1", transferSyntax: EXPLICIT }

describe("a received object", () => {
  it("is the same file whoever sent it", () => {
    const file = part10File(name, dataSet())
    expect(file.subarray(128, 132).toString()).toBe("DICM")
    expect(file.equals(part10File(name, dataSet()))).toBe(true)
  })

  it.skipIf(!hasTool("dcmdump"))("is a file that dcmtk reads (skipped where there is no dcmdump)", () => {
    const folder = mkdtempSync(join(tmpdir(), "lengthwise-dicom-"))
    try {
      const file = join(folder, "a.dcm")
      writeFileSync(file, part10File(name, dataSet()))
      const { status, stdout } = spawnSync("dcmdump", [file], { encoding: "utf8" })
      expect(status).toBe(0)
      expect(stdout).toContain("# Dicom-Meta-Information-Header")
      expect(stdout).toMatch(/\(0008,0018\) UI \[2\.25\.1\]/)
      expect(stdout).toMatch(/\(0002,0010\) UI =LittleEndianExplicit/)
      expect(stdout).toMatch(/\(0002,0013\) SH \[LENGTHWISE\]/)
    } finally {
      rmSync(folder, { recursive: true })
    }
  })

  it("says itself which object it is, in both transfer syntaxes", () => {
    expect(namesInDataSet(dataSet("2.25.7"), EXPLICIT)).toEqual({ sopClass: AXIAL, sopInstance: "2.25.7" })
    const implicit = Buffer.from("0800180006000000322e32352e37", "hex")
    expect(namesInDataSet(implicit, IMPLICIT)).toEqual({ sopInstance: "2.25.7" })
  })

  it("says nothing where it can't be followed, and never fails", () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), fc.constantFrom(EXPLICIT, IMPLICIT), (bytes, syntax) => {
        namesInDataSet(bytes, syntax)
      }),
      { numRuns: 2000 },
    )
  })

  it("has an identifier of digits and dots, so that it can name a file", () => {
    expect(["2.25.1", "1"].every(isUid)).toBe(true)
    expect(["", "../x", "1..2", ".1", "1.2\n", "1".repeat(65)].some(isUid)).toBe(false)
  })
})
