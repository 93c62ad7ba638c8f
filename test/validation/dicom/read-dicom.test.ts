import { spawnSync } from "node:child_process"
import { readdirSync, readFileSync } from "node:fs"
import { fileURLToPath } from "node:url"
import { describe, expect, it } from "vitest"
import { EYES, type EyeExamination } from "../../../src/engine/course.js"
import { minusCylinder } from "../../../src/engine/optics/transposed.js"
import { readDicom } from "../../../src/interop/dicom/read-dicom.js"

/** The DICOM reader against objects made by dcmtk and pydicom, and against what pydicom reads in them. */

const here = fileURLToPath(new URL(".", import.meta.url))
const bytesOf = (name: string) => readFileSync(`${here}objects/${name}.dcm`)
const read = (name: string) => readDicom({ file: `${name}.dcm`, bytes: bytesOf(name) })
const onlyVisit = async (name: string) => (await read(name)).fragments[0]?.course.visits?.[0]
const notesOf = async (name: string) => (await read(name)).fragments[0]?.notes ?? []

const invented = [
  "axial-optical-both",
  "axial-optical-selected-type-inside",
  "axial-optical-right-only-low-quality",
  "axial-ultrasound-left",
  "keratometry-both",
  "autorefraction-both",
  "autorefraction-vertex-distance",
  "subjective-refraction-both",
  "visual-acuity-both",
  "lensometry-both",
]

describe("axial measurements", () => {
  it("takes the chosen length and keeps every reading with its quality", async () => {
    const visit = await onlyVisit("axial-optical-both")
    expect(visit).toMatchObject({
      date: "2026-03-16",
      right: {
        axialLength: {
          mm: 24.12,
          readings: 3,
          method: "optical-biometry",
          device: "Demo Model 1 SN-0001",
          signalToNoise: 210.4,
          each: [
            { mm: 24.11, signalToNoise: 212.4, byHand: false },
            { mm: 24.13, signalToNoise: 198.7, byHand: false },
            { mm: 24.12, signalToNoise: 220.1, byHand: false },
          ],
        },
        lensStatus: "phakic",
        dilation: {
          dilated: true,
          pupilMm: 7,
          drops: [{ drop: "cyclopentolate", concentrationPercent: 1 }],
        },
      },
      left: { axialLength: { mm: 24.04, signalToNoise: 192.9 } },
      sources: [
        { kind: "dicom", id: "2.25.3141592653589793238462643383101", device: "Demo Model 1 SN-0001" },
      ],
    })
    expect(await notesOf("axial-optical-both")).toEqual([])
  })

  it.each(["axial-optical-selected-type-inside", "axial-selected-without-total"])(
    "reads the same figures in another layout of the standard (%s)",
    async (name) => {
      const [one, other] = [await onlyVisit("axial-optical-both"), await onlyVisit(name)]
      for (const eye of EYES) expect(other?.[eye]).toEqual(one?.[eye])
    },
  )

  it("marks a signal-to-noise ratio of 4.2, and makes no row of the eye that was not measured", async () => {
    const name = "axial-optical-right-only-low-quality"
    expect(await onlyVisit(name)).not.toHaveProperty("left")
    expect(await notesOf(name)).toMatchObject([
      { kind: "low-quality", path: "visits[2026-03-16].right.axialLength" },
    ])
  })

  it("says that a length is by ultrasound", async () => {
    const name = "axial-ultrasound-left"
    expect(await onlyVisit(name)).toMatchObject({
      left: { axialLength: { mm: 23.4, readings: 1, method: "ultrasound", sdMm: 0.12 } },
    })
    expect(await notesOf(name)).toMatchObject([{ kind: "ultrasound" }])
  })

  it("takes the mean of the readings that nobody changed by hand when none was chosen", async () => {
    const visit = await onlyVisit("axial-nothing-chosen")
    expect(visit?.right?.axialLength).toMatchObject({ mm: 24.12, readings: 2 })
    expect(visit?.right?.axialLength?.each?.map(({ byHand }) => byHand)).toEqual([false, false, true])
    expect((await notesOf("axial-nothing-chosen")).map(({ kind }) => kind)).toEqual([
      "mean-of-readings",
      "by-hand",
      "mean-of-readings",
    ])
  })

  it("refuses two chosen lengths that differ, and one that no eye has", async () => {
    expect(await read("axial-contradicting")).toMatchObject({
      fragments: [],
      skipped: [
        { why: "Right eye: the file gives two chosen lengths, 24.12 mm and 25.12 mm." },
        {
          where: "(0022,1008).(0022,1255).(0022,1260).(0022,1019)",
          why: "Left eye: axial length must be a number from 15 to 40 mm, not 240.4.",
        },
      ],
    })
  })

  it("reads drops by their older codes and in mg/ml, and asks what atropine was given for", async () => {
    expect((await onlyVisit("axial-atropine-mg"))?.right?.dilation?.drops).toEqual([
      { drop: "atropine", concentrationPercent: 0.5 },
    ])
    expect((await notesOf("axial-atropine-mg")).map(({ kind }) => kind)).toContain("atropine")
  })
})

describe("refraction, cornea, acuity and glasses", () => {
  it("reads both meridians of the cornea", async () => {
    expect((await onlyVisit("keratometry-both"))?.right?.corneaRadius).toEqual({
      flat: 7.85,
      steep: 7.67,
      flatAxis: 2,
      steepAxis: 92,
      flatD: 43,
      steepD: 44,
      device: "Demo Model 1 SN-0001",
    })
  })

  it("takes a missing cylinder as none and leaves out a pupil of unknown light", async () => {
    const visit = await onlyVisit("autorefraction-vertex-distance")
    expect(visit?.right?.refraction).toMatchObject({ sphere: -2.75, cylinder: -0.5, vertexDistanceMm: 12 })
    expect(visit?.left?.refraction).not.toHaveProperty("cylinder")
    expect(visit?.right).not.toHaveProperty("pupil")
    const kinds = (await notesOf("autorefraction-both")).map(({ kind }) => kind)
    expect(kinds).toContain("pupil-light-not-stated")
    expect(kinds).toContain("cycloplegia-not-stated")
  })

  it("writes a plus cylinder as the same lens with a minus cylinder, and says so", async () => {
    const visit = await onlyVisit("subjective-plus-cylinder")
    expect(visit?.right?.refraction).toMatchObject({ sphere: -2.5, cylinder: -0.5, axis: 180 })
    expect(visit?.left?.refraction?.axis).toBe(180)
    expect((await notesOf("subjective-plus-cylinder")).map(({ kind }) => kind)).toContain("cylinder-turned")
  })

  it("takes no refraction whose cylinder has no axis", async () => {
    const { fragments, skipped } = await read("subjective-half-cylinder")
    expect(fragments[0]?.course.visits?.[0]).not.toHaveProperty("left")
    expect(fragments[0]?.course.visits?.[0]?.right?.refraction).not.toHaveProperty("cylinder")
    expect(skipped).toMatchObject([{ where: "(0046,0098).(0046,0018)" }])
  })

  it("turns decimal acuity into logMAR and says what the child looked through", async () => {
    expect(await onlyVisit("visual-acuity-both")).toMatchObject({
      right: { acuity: { distanceLogMAR: 0.6, distanceCorrection: "uncorrected" } },
      left: { acuity: { distanceLogMAR: 0.49, distanceCorrection: "uncorrected" } },
    })
    expect((await onlyVisit("acuity-old-code"))?.right?.acuity?.distanceCorrection).toBe("uncorrected")
    expect((await onlyVisit("acuity-near-best"))?.right?.acuity).toEqual({ nearLogMAR: 0.6 })
  })

  it.each(["acuity-pinhole", "acuity-near-uncorrected"])(
    "takes no acuity of another kind (%s)",
    async (name) => {
      expect(await read(name)).toMatchObject({ fragments: [], skipped: [{ where: "(0046,0121)" }] })
    },
  )

  it("reads glasses with addition and prism, and no lens of an unknown side", async () => {
    expect((await onlyVisit("lensometry-addition-prism"))?.right?.spectaclesWorn).toEqual({
      sphere: -2,
      cylinder: -0.5,
      axis: 170,
      addD: 1.5,
      prism: "1.5 base in, 0.5 base up",
    })
    expect((await read("lensometry-addition-prism")).skipped).toMatchObject([{ where: "(0046,0016)" }])
  })

  it("takes a paper out whole", async () => {
    const { fragments } = await read("parent-report")
    const [paper] = fragments[0]?.documents ?? []
    expect(paper).toMatchObject({ date: "2026-03-16", title: "Parent report", mediaType: "application/pdf" })
    expect(Buffer.from(paper?.bytes ?? [])).toEqual(readFileSync(`${here}parent-report.pdf`))
  })
})

describe("whose and when", () => {
  it.each([
    ["name-japanese", "Tarou Yamada"],
    ["name-japanese-katakana", "ﾀﾛｳ ﾔﾏﾀﾞ"],
    ["name-japanese-only", "太郎 山田"],
    ["name-korean", "Gildong Hong"],
    ["name-korean-only", "길동 홍"],
    ["name-chinese", "小东 王"],
    ["name-chinese-2022", "小东 张"],
    ["name-chinese-unescaped", "XiaoDong Zhang"],
    ["name-german", "Jörg Müller"],
    ["name-russian", "Анна Люкceмбypг"],
    ["name-hebrew", "סשל קבני"],
    ["name-arabic", "لنزار قباني"],
    ["name-thai", "ใจดี สมชาย"],
    ["name-unicode", "José Nuñez"],
    ["name-five-parts", "Child Marie Sample"],
  ])("reads %s", async (file, name) => {
    expect((await read(file)).fragments[0]?.identity).toEqual({
      number: "LW-DEMO-0001",
      name,
      born: "2017-09-05",
      sex: "female",
    })
  })

  it("leaves out a name whose letters the file's character set does not hold", async () => {
    const { fragments } = await read("name-undeclared")
    expect(fragments[0]?.identity).not.toHaveProperty("name")
    expect(fragments[0]?.notes).toMatchObject([{ kind: "name-not-read" }])
  })

  it("takes the study's day when there is no other, and no day before birth or still to come", async () => {
    expect((await onlyVisit("date-of-study"))?.date).toBe("2026-03-16")
    for (const name of ["date-before-birth", "date-missing"])
      expect(await read(name)).toMatchObject({ fragments: [], skipped: [{ where: "(0008,0023)" }] })
    const bytes = bytesOf("keratometry-both")
    const early = await readDicom({ file: "k.dcm", bytes, today: "2026-03-15" })
    expect(early.skipped).toMatchObject([
      { why: "The file says it was measured on 2026-03-16, a day that is still to come." },
    ])
  })
})

describe("what is not read", () => {
  it.each([
    ["class-lens-calculation", "Intraocular Lens Calculations"],
    ["class-prescription-report", "Spectacle Prescription Report"],
    ["class-photograph", "Ophthalmic Photography 8 Bit Image"],
    ["keratometry-both.big-endian", "big endian"],
    ["keratometry-both.deflated", "compressed"],
  ])("%s is skipped with its name", async (name, words) => {
    const { fragments, skipped } = await read(name)
    expect(fragments).toEqual([])
    expect(skipped[0]?.why).toContain(words)
  })

  it("a file cut off inside a figure is skipped; after the last figure nothing tells, and they are the same", async () => {
    const whole = bytesOf("axial-optical-right-only-low-quality")
    const figures = await onlyVisit("axial-optical-right-only-low-quality")
    for (let length = 0; length < whole.length; length++) {
      const { fragments, skipped } = await readDicom({ file: "cut.dcm", bytes: whole.subarray(0, length) })
      if (fragments.length === 0) expect(skipped.length, `${length} bytes`).toBeGreaterThan(0)
      else expect(fragments[0]?.course.visits, `${length} bytes`).toEqual([figures])
    }
  })

  it("a data set without the header of a file is named as such", async () => {
    const bytes = bytesOf("keratometry-both").subarray(132)
    const { skipped } = await readDicom({ file: "bare", bytes })
    expect(skipped[0]?.why).toContain("without the header")
  })
})

describe("held against pydicom", () => {
  type Figures = Readonly<Record<string, unknown>> | null | undefined
  interface Found {
    readonly id: string
    readonly number: string
    readonly name: string
    readonly date: string | null
    readonly device: string
    readonly right?: Figures
    readonly left?: Figures
  }
  const committed: Readonly<Record<string, Found>> = JSON.parse(
    readFileSync(`${here}fixtures/read-with-pydicom.json`, "utf8"),
  )
  const pydicom = spawnSync("/usr/bin/python3", ["-c", "import pydicom"]).status === 0

  it("every figure of the objects as they came is the same", async () => {
    let compared = 0
    for (const name of invented.flatMap((found) => [found, `${found}.implicit`])) {
      const theirs = committed[`${name}.dcm`]
      const fragment = (await read(name)).fragments[0]
      expect(fragment?.source.id).toBe(theirs?.id)
      expect(fragment?.identity).toMatchObject({ number: theirs?.number, name: theirs?.name })
      expect(fragment?.source.device).toBe(theirs?.device)
      const visit = fragment?.course.visits?.[0]
      expect(visit?.date.replaceAll("-", "")).toBe(theirs?.date)
      for (const eye of EYES) {
        expect(comparable(visit?.[eye]), `${name} ${eye}`).toEqual(theirs?.[eye] ?? null)
        compared++
      }
    }
    expect(compared).toBe(40)
  })

  it("every name is the same, but the one whose letters are not declared", async () => {
    for (const [file, theirs] of Object.entries(committed).filter(([file]) => file.startsWith("name-"))) {
      if (file === "name-undeclared.dcm") continue
      const { fragments } = await read(file.replace(/\.dcm$/, ""))
      expect(fragments[0]?.identity.name, file).toBe(theirs.name)
    }
  })

  it.skipIf(!pydicom)("what is committed is what pydicom reads today (skipped: no pydicom)", () => {
    const files = readdirSync(`${here}objects`).map((file) => `${here}objects/${file}`)
    const { stdout } = spawnSync("/usr/bin/python3", [`${here}read-with-pydicom.py`, ...files], {
      encoding: "utf8",
      maxBuffer: 10_000_000,
    })
    expect(JSON.parse(stdout)).toEqual(committed)
  })

  /** One eye in the words of the Python script. */
  function comparable(eye: EyeExamination | undefined): Figures {
    if (!eye) return null
    const { axialLength, corneaRadius, acuity } = eye
    if (axialLength)
      return {
        chosen: axialLength.mm,
        readings: axialLength.each?.map(({ mm, signalToNoise, byHand }) => ({
          mm,
          ratio: signalToNoise ?? null,
          byHand,
        })),
      }
    if (corneaRadius) {
      const { flat, steep, flatD, steepD, flatAxis, steepAxis } = corneaRadius
      return { flat: [flat, flatD, flatAxis], steep: [steep, steepD, steepAxis] }
    }
    if (acuity) return { logMAR: acuity.distanceLogMAR }
    const lens = eye.refraction ?? eye.spectaclesWorn
    if (!lens) return null
    expect(minusCylinder(lens).cylinder).toBe(lens.cylinder ?? 0)
    const { sphere, cylinder, axis } = lens
    const vertex = eye.refraction?.vertexDistanceMm
    return {
      sphere,
      ...(cylinder === undefined ? {} : { cylinder, axis }),
      ...(vertex === undefined ? {} : { vertex }),
    }
  }
})

describe("the fixtures are what the standard's validator says they are", () => {
  const validator = spawnSync("dciodvfy", ["-version"]).error === undefined
  it.skipIf(!validator).each([
    ["axial-optical-both", 0],
    ["axial-optical-right-only-low-quality", 0],
    ["axial-optical-selected-type-inside", 2],
    ["axial-ultrasound-left", 0],
    ["keratometry-both", 0],
    ["autorefraction-both", 0],
    ["autorefraction-vertex-distance", 2],
    ["subjective-refraction-both", 0],
    ["visual-acuity-both", 0],
    ["lensometry-both", 0],
  ])("%s has %i errors (skipped: no dciodvfy)", (name, errors) => {
    const { stderr } = spawnSync("dciodvfy", [`${here}objects/${name}.dcm`], { encoding: "utf8" })
    expect(stderr.split("\n").filter((line) => line.startsWith("Error"))).toHaveLength(errors)
  })
})
