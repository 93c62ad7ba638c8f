import { describe, expect, it } from "vitest"
import table from "../../../src/evidence/tables/treatments/adverse-effects.json" with { type: "json" }
import { child, drops } from "./child.js"

const treated = (percent: number) => child({ treatments: [drops("2025-01-10", percent)] }).on("2025-03-01")
const KINDS = [
  "red-flag",
  "contraindication",
  "systemic-effects",
  "light-sensitivity",
  "pupil",
  "near-blur",
  "accommodation",
  "near-acuity",
  "redness",
  "itching",
  "stinging",
  "headache",
  "distance-acuity",
  "intraocular-pressure",
]

describe("For each concern", () => {
  it.each(KINDS)("%s: what can be considered, with the duty behind it and how far it was read", (kind) => {
    const offers = treated(0.05).offers(kind)
    expect(offers.length).toBeGreaterThan(0)
    for (const { grade, duty } of offers)
      expect(grade).toMatch(new RegExp(`^${duty}, (verified|read in part): `))
  })

  it("nothing is offered where the evidence holds nothing", () => {
    expect(treated(0.05).offers("other")).toEqual([])
  })

  it("only care on the same day is not put as something to consider", () => {
    const others = KINDS.filter((kind) => kind !== "red-flag").flatMap((kind) => treated(0.05).offers(kind))
    for (const { what } of others) expect(what).toMatch(/can be considered$/)
  })
})

describe("Light sensitivity and a wide pupil", () => {
  it("tinted or photochromic lenses come first, with their one study (PHOTOCHROMIC-2016)", () => {
    const [first] = treated(0.05).offers("light-sensitivity")
    expect(first?.what).toMatch(/^Tinted or photochromic lenses/)
    expect(first?.words[0]).toMatch(/Of 24 children .* 75 % .* 63 % .* No control group/)
  })

  it("then a lower strength, with what it would give up and the rates of each trial by itself (CHAMP: ZADNIK-2023, table 3)", () => {
    const lower = treated(0.05).offers("light-sensitivity")[1]
    expect(lower?.words[0]).toContain("atropine 0.05 %: 45 % (SD 15 %")
    expect(lower?.words[0]).toContain("atropine 0.01 %: 15 % (SD 8 %, may be nil")
    expect(lower?.words).toContain(
      "CHAMP, 36 months: light sensitivity in 3.1 % on placebo, 2.4 % on 0.01 %, 4.5 % on 0.02 % (zadnik2023, full text table 3).",
    )
    expect(lower?.words).toContain("The trials asked in different ways: rates compare only within one trial.")
  })

  it("no lower strength below the lowest that was studied", () => {
    const offers = treated(0.01)
      .offers("light-sensitivity")
      .map(({ what }) => what)
    expect(offers.some((what) => what.startsWith("A lower strength"))).toBe(false)
    expect(offers.at(-1)).toMatch(/^A treatment without drops/)
  })

  it("neither of the two when no drops are in use", () => {
    const offers = child({}).on("2025-03-01").offers("light-sensitivity")
    expect(offers.map(({ duty }) => duty)).toEqual(["CD-085"])
  })
})

describe("Blurred near vision and low accommodation", () => {
  it("an addition for reading comes first, as expert opinion", () => {
    expect(treated(0.05).offers("near-blur")[0]).toMatchObject({
      what: "An addition for reading can be considered",
      words: ["Expert opinion; no figure was read."],
    })
  })

  it("the loss of accommodation by strength is that of LAMP (YAM-2019, abstract)", () => {
    expect(treated(0.05).offers("accommodation")[1]?.words).toContain(
      "LAMP phase 1, 12 months: accommodation fell by 1.98 D on 0.05 %, 1.61 D on 0.025 %, 0.26 D on 0.01 %, 0.32 D on placebo on average (yam2019, abstract).",
    )
  })
})

describe("What was only remembered", () => {
  it("is never said: no rate of a row from memory, no duty's remembered action", () => {
    const said = KINDS.flatMap((kind) => [0.05, 0.1, 0.5].flatMap((percent) => treated(percent).offers(kind)))
    const text = JSON.stringify(said)
    expect(text).not.toMatch(/from memory/i)
    const remembered = table.events_percent.filter(({ how_obtained }) => /memory/.test(how_obtained))
    expect(remembered.length).toBeGreaterThan(0)
    for (const row of remembered)
      if ("photophobia_2wk" in row) expect(text).not.toContain(`${row.photophobia_2wk} %`)
    expect(text).not.toContain("0.76 mm")
  })
})
