import { describe, expect, it } from "vitest"
import { DEEPEST_NESTING, MOST_ELEMENTS, MOST_ITEMS } from "./bounds.js"
import { asWritten } from "./data-set.js"
import { dayOf, personName } from "./identity.js"
import { readDicom } from "./read-dicom.js"

const META = "\u0002\u0000\u0010\u0000UI\u0014\u00001.2.840.10008.1.2.1\u0000" as const
/** A DICOM file in explicit little endian around these bytes. */
const file = (...parts: readonly (Buffer | string)[]) =>
  Buffer.concat([
    Buffer.alloc(128),
    Buffer.from("DICM"),
    Buffer.from(META, "latin1"),
    ...parts.map((part) => (typeof part === "string" ? Buffer.from(part, "hex") : part)),
  ])
const whyOf = async (bytes: Uint8Array) => {
  const { fragments, skipped } = await readDicom({ file: "x.dcm", bytes })
  expect(fragments).toEqual([])
  return skipped[0]
}
const length = (bytes: number) => {
  const four = Buffer.alloc(4)
  four.writeUInt32LE(bytes)
  return four
}

describe("bytes that do not add up", () => {
  it("a value longer than the file", async () => {
    // (0042,0011) OB that says it has four thousand million bytes.
    expect((await whyOf(file("420011004f420000f0ffffff", "00")))?.why).toContain("middle of a value")
    expect((await whyOf(file("08001800554910003132")))?.why).toContain("middle of a value")
  })

  it("a sequence that never ends, and one longer than what it stands in", async () => {
    expect((await whyOf(file("460070005351 0000ffffffff".replace(/ /g, ""))))?.why).toContain(
      "middle of a value",
    )
    const outer = "4600700053510000" + "0c000000" + "feff00e004000000" + "46007400"
    expect((await whyOf(file(outer)))?.why).toContain("middle of a value")
  })

  it("the same attribute twice in one place", async () => {
    const sex = "100040004353020046 20".replace(/ /g, "")
    expect(await whyOf(file(sex, sex))).toMatchObject({ where: "(0010,0040)" })
  })

  it("letters that are no value representation, and a delimiter out of place", async () => {
    expect((await whyOf(file("100040003f3f02004620")))?.why).toContain("do not add up")
    expect((await whyOf(file("feff0de000000000")))?.why).toContain("do not add up")
  })
})

describe("bytes that are too many", () => {
  const open = Buffer.from("4600700053510000ffffffff" + "feff00e0ffffffff", "hex")

  it("sequences inside sequences, however deep", async () => {
    const skipped = await whyOf(file(Buffer.alloc(open.length * 200_000, open)))
    expect(skipped?.why).toContain("far more than a measurement")
    expect(DEEPEST_NESTING).toBeLessThan(100)
  })

  it("items and elements without number", async () => {
    const item = Buffer.from("feff00e000000000", "hex")
    const items = Buffer.alloc(item.length * (MOST_ITEMS + 1), item)
    const sequence = Buffer.concat([Buffer.from("4600700053510000", "hex"), length(items.length), items])
    expect((await whyOf(file(sequence)))?.why).toContain("far more")
    const elements = Buffer.concat(
      Array.from({ length: MOST_ELEMENTS + 1 }, (_, index) => {
        const element = Buffer.from("0000000053480000", "hex")
        element.writeUInt16LE(0x1001 + 2 * (index >>> 15), 0)
        element.writeUInt16LE(index & 0x7fff, 2)
        return element
      }),
    )
    expect((await whyOf(file(elements)))?.why).toContain("far more")
  })

  it("a file larger than any measurement", async () => {
    expect((await whyOf(Buffer.alloc(50_000_001)))?.why).toContain("50 MB")
  })
})

describe("what values mean", () => {
  it("a 32-bit float is the figure that the instrument showed", () => {
    expect(asWritten(Math.fround(24.12))).toBe(24.12)
    expect(asWritten(Math.fround(212.4))).toBe(212.4)
    expect(asWritten(0)).toBe(0)
    expect(asWritten(Number.NaN)).toBeNaN()
    expect(asWritten(Number.POSITIVE_INFINITY)).toBe(Number.POSITIVE_INFINITY)
  })

  it("a name is written in reading order, without titles", () => {
    expect(personName("Sample^Child^Marie^Dr^Jr")).toBe("Child Marie Sample")
    expect(personName("Sample")).toBe("Sample")
    expect(personName("^^=山田^太郎")).toBe("太郎 山田")
    expect(personName(" ^ ")).toBeUndefined()
  })

  it("a date is a day of the calendar, in either form of the standard", () => {
    expect(dayOf("20260316")).toBe("2026-03-16")
    expect(dayOf("2026.03.16")).toBe("2026-03-16")
    for (const text of ["20260230", "2026031", "20260316-20260317", ""]) expect(dayOf(text)).toBeUndefined()
  })
})
