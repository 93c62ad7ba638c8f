import { describe, expect, it } from "vitest"
import { compoundingOrder } from "./compounding-order.js"
import { compoundingSheet } from "./compounding-sheet.js"
import type { CompoundingRequest } from "./order-request.js"
import type { SheetInput } from "./sheet.js"
import { usualPharmacy } from "./usual-pharmacy.js"

const usual: CompoundingRequest = { concentrationPercent: 0.01, stockPercent: 1, bottles: 1, volumeMl: 10 }
const sheet = (changes: Partial<CompoundingRequest> = {}, more: Partial<SheetInput> = {}) => {
  const order = compoundingOrder({ ...usual, ...changes })
  if (order.kind === "refused") throw new Error("refused")
  return compoundingSheet({
    order,
    on: "2026-03-01",
    child: { name: "Mira Solberg", born: "2017-03-14", number: "E-7" },
    practice: "Quiet Harbour",
    prescriber: "Ada Lindqvist",
    pharmacy: usualPharmacy,
    contacts: {},
    isPreserved: false,
    consent: "of 2026-02-01, atropine 0.01 %",
    ...more,
  })
}
const section = ({ sections }: ReturnType<typeof sheet>, heading: string) => {
  const found = sections.find((one) => one.heading === heading)
  if (!found) throw new Error(`no section ${heading}`)
  return found
}
const text = (value: unknown) => JSON.stringify(value)
const cautions = (value: ReturnType<typeof sheet>) =>
  value.sections
    .flatMap(({ blocks }) => blocks.filter(({ kind }) => kind === "caution"))
    .map(text)
    .join("\n")

describe("the sheet a pharmacist receives", () => {
  it("says first that it is an order for a pharmacist and never to be made at home or in the practice", () => {
    expect(sheet().statement).toMatch(/order for a pharmacist.*not to be made at home or in the practice/)
  })

  it("has every step as a line with the limits of each volume", () => {
    const table = section(sheet(), "Dilution").blocks[0]
    expect(table).toEqual({
      kind: "table",
      head: ["Step", "Take", "From", "Add diluent", "Gives"],
      rows: [
        [
          "1",
          "0.5 mL (0.485 to 0.515)",
          "stock 1 %",
          "4.5 mL (4.365 to 4.635)",
          "0.1 %; discard the 4 mL left over",
        ],
        ["2", "1 mL (0.97 to 1.03)", "step 1, 0.1 %", "9 mL (8.73 to 9.27)", "0.01 %"],
      ],
    })
  })

  it("names who ordered, for whom, by when, and on which consent", () => {
    const ordered = text(section(sheet(), "What is ordered"))
    for (const words of [
      "Mira Solberg, born 2017-03-14, number E-7",
      "Ada Lindqvist, Quiet Harbour, on 2026-03-01",
    ])
      expect(ordered).toContain(words)
    expect(ordered).toContain('["Expected by","2026-03-15"]')
    expect(ordered).toContain("of 2026-02-01")
  })

  it("says how many nights the bottles serve, and why no longer", () => {
    const lasting = (more: Partial<SheetInput>) =>
      text(section(sheet({ bottles: 3, volumeMl: 5 }, more), "What is ordered"))
    expect(lasting({})).toMatch(/"Lasting","90 nights. The drops of one bottle last 39 to 102 nights/)
    expect(lasting({ pharmacy: { ...usualPharmacy, daysAfterOpening: 60 } })).toContain('"117 to 180 nights.')
    expect(lasting({ eye: "right", nightsPerWeek: 3 })).toContain("last 184 to 476 nights")
  })

  it("has a line to sign for two people beside the prescriber", () => {
    const [block] = section(sheet(), "Two people check").blocks
    expect(block).toEqual({
      kind: "signatures",
      lines: [
        { role: "Prescribed", name: "Ada Lindqvist" },
        { role: "Made and measured", name: "" },
        { role: "Checked by a second person", name: "" },
      ],
    })
  })

  it("carries the poison caution from 5 mg a bottle and not below", () => {
    expect(cautions(sheet())).toBe("")
    const strong = sheet({ concentrationPercent: 0.05 }, { contacts: { poisonCentre: "01 234" } })
    expect(cautions(strong)).toMatch(/5 mg of atropine.*Poison centre: 01 234/)
  })

  it("flags an interval outside the limits with what would bring it inside", () => {
    const flagged = cautions(sheet({ stockTolerance: 0.05 }))
    expect(flagged).toMatch(
      /leaves the limits 0.0093 to 0.0107 % \(93 to 107 % of the label, USP monograph of the solution\)/,
    )
    expect(flagged).toMatch(/It would lie inside: make 50 mL in one batch/)
  })

  it("says so when nothing that was tried brings it inside", () => {
    const devices = [
      { name: "a", smallestVolumeMl: 0.1, largestVolumeMl: 1, graduationMl: 0.01, toleranceFraction: 0.1 },
      { name: "b", smallestVolumeMl: 1, graduationMl: 0.1, toleranceFraction: 0.1 },
    ]
    expect(cautions(sheet({ devices }))).toMatch(/No larger batch, other stock or closer measuring/)
  })

  it("tells of preservative carried over from the usual stock, and of a long use after opening", () => {
    const pharmacy = { ...usualPharmacy, daysAfterOpening: 60 }
    const kept = text(section(sheet({}, { pharmacy }), "Preservative, storage, stability"))
    expect(kept).toContain("0.0001 % would be carried over, which counts as unpreserved")
    expect(kept).toContain("followed for 30 days")
  })

  it("gives the label for the eye that is treated", () => {
    expect(text(section(sheet({}, { eye: "left" }), "On each label"))).toContain("One drop in the left eye")
  })

  it("puts remarks where they are seen first", () => {
    const remarks = ["No drops are running for this child."]
    expect(text(sheet({}, { remarks }).sections[0])).toContain(
      '{"kind":"caution","lines":["No drops are running',
    )
  })
})
