import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { fileURLToPath } from "node:url"
import { describe, expect, it } from "vitest"
import { processIo } from "../../src/cli/process-io.js"
import { commandLine, json } from "./fake-io.js"

const objects = fileURLToPath(new URL("../validation/dicom/objects/", import.meta.url))
const object = (name: string): Uint8Array => new Uint8Array(readFileSync(`${objects}${name}.dcm`))
/** The objects of one visit, as an instrument's folder. */
const visit = Object.fromEntries(
  ["axial-optical-both", "keratometry-both", "autorefraction-both", "parent-report"].map((name) => [
    `export/${name}`,
    object(name),
  ]),
)
const later = "2026-11-26"

describe("lengthwise read", () => {
  it("gives a course file that assess takes, with what was skipped and why", async () => {
    const files = {
      ...visit,
      "export/photo": object("class-photograph"),
      "export/DICOMDIR": object("name-thai"),
    }
    const read = await commandLine(["read", "export", "--json"], { files, today: later })
    expect(read.code).toBe(0)
    const found = json(read)
    expect(found).toMatchObject({
      lengthwise: 1,
      child: { id: "LW-DEMO-0001", born: "2017-09-05", sex: "female" },
      visits: [
        {
          date: "2026-03-16",
          right: { axialLength: { mm: 24.12 }, corneaRadius: { flat: 7.85 }, refraction: { sphere: -2.75 } },
        },
      ],
      identity: { name: "Child Sample" },
      documents: [{ date: "2026-03-16", title: "Parent report", mediaType: "application/pdf", bytes: 615 }],
      skipped: [{ file: "export/photo" }],
    })
    expect(found.visits[0].sources).toHaveLength(3)
    const assessed = await commandLine(["assess", "-", "--json"], {
      files: { "-": read.stdout },
      today: later,
    })
    expect(assessed.code).toBe(0)
    expect(json(assessed).checks.map(({ path }: { path: string }) => path)).toContain("skipped")
  })

  it("says who, when, what of each eye with units, and that nothing was stored", async () => {
    const { code, stdout } = await commandLine(["read", "export"], { files: visit, today: later })
    expect(code).toBe(0)
    expect(stdout).toContain("Child Sample, number LW-DEMO-0001, born 5 September 2017, female")
    expect(stdout).toContain("16 March 2026\n  Right eye\n    axial length 24.12 mm; by light")
    expect(stdout).toContain("refraction -2.75 -0.50 x 175; autorefraction")
    expect(stdout).toContain("Parent report, 16 March 2026 (PDF, 1 kB)")
    expect(stdout.endsWith("Nothing was stored.\n")).toBe(true)
  })

  it("tells what two files contradict each other in", async () => {
    const files = { "a.dcm": object("axial-optical-both"), "b.dcm": object("axial-ultrasound-left") }
    const { stdout } = await commandLine(["read", "a.dcm", "b.dcm"], { files, today: later })
    const words = stdout.replace(/\s+/g, " ")
    expect(words).toContain("axial length of the left eye: one file says 24.04 mm, another 23.4 mm")
    expect(words).not.toContain('{"')
  })

  it("keeps children apart: the others stand beside the first", async () => {
    const other = {
      lengthwise: 1,
      child: { id: "8", born: "2018-01-01", sex: "male" },
      visits: [{ date: "2026-01-05", left: { axialLength: { mm: 23.5 } } }],
    }
    const files = { "a.dcm": object("keratometry-both"), "b.json": Buffer.from(JSON.stringify(other)) }
    const found = json(await commandLine(["read", "a.dcm", "b.json", "--json"], { files, today: later }))
    expect(found.child.id).toBe("LW-DEMO-0001")
    expect(found.others).toMatchObject([{ child: { id: "8", sex: "male" }, visits: other.visits }])
  })

  it("ends with 1 and every reason when nothing was read", async () => {
    const files = { "x/photo": object("class-photograph"), "x/old": object("keratometry-both.big-endian") }
    const { code, stdout, stderr } = await commandLine(["read", "x", "nowhere", "--json"], { files })
    expect(code).toBe(1)
    expect(stderr).toContain("big endian")
    expect(JSON.parse(stdout).problems.map(({ value }: { value: string }) => value)).toEqual([
      "nowhere",
      "x/old",
      "x/photo",
    ])
  })

  it("says how far it is when there are many files, and reads each once", async () => {
    const files = Object.fromEntries(
      Array.from({ length: 120 }, (_, index) => [`many/${index}`, object("keratometry-both")]),
    )
    const { stderr, stdout } = await commandLine(["read", "many", "many/7", "--json"], {
      files,
      today: later,
    })
    expect(stderr).toContain("120 of 120 files read")
    expect(json({ stdout }).visits[0].sources).toHaveLength(1)
  })

  it("finds files below a folder, follows no circle of links and leaves out what is hidden", async () => {
    const folder = mkdtempSync(join(tmpdir(), "lengthwise-read-"))
    try {
      mkdirSync(join(folder, "below"))
      symlinkSync(folder, join(folder, "below", "around"))
      for (const name of ["b", "below/a", ".hidden"])
        writeFileSync(join(folder, name), object("keratometry-both"))
      const found = await processIo.files(folder)
      expect(found).toEqual({ files: [join(folder, "b"), join(folder, "below", "a")] })
      expect(readdirSync(folder)).toHaveLength(3)
      expect(await processIo.files(join(folder, "nothing"))).toHaveProperty("problem")
    } finally {
      rmSync(folder, { recursive: true })
    }
  })
})
