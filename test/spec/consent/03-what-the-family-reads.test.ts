import { describe, expect, it } from "vitest"
import { consentPlainText, consentText, unknownNames } from "../../../src/engine/consent/consent-text.js"
import { defaultWordings, wordingIdOf } from "../../../src/engine/consent/default-wording.js"
import { wordingProblems } from "../../../src/engine/consent/wording-problems.js"
import { TREATMENT_KINDS, type TreatmentChoice } from "../../../src/engine/course.js"
import { consentEvidence } from "../../../src/evidence/consent.js"

const read = (treatment: TreatmentChoice, more: object = {}) => {
  const wording = defaultWordings.find(({ id }) => id === wordingIdOf(treatment.kind))
  if (!wording) throw new Error("no wording")
  const text = consentPlainText(consentText({ wording, treatment, evidence: consentEvidence, ...more }))
  return text.replaceAll("\u00a0", " ")
}
const drops = (concentrationPercent: number) => read({ kind: "atropine", concentrationPercent })
const optical = TREATMENT_KINDS.filter((kind) => kind !== "atropine" && kind !== "none")

describe("The text for drops", () => {
  it("covers what a consent has to cover", () => {
    const text = drops(0.05)
    for (const words of [
      "It is unlikely to stop it", // CD-047
      "can't be known afterwards", // CD-047: growth without treatment
      "called off-label", // CD-049
      "made to order by a pharmacy", // CD-049
      "Regulators do not agree", // CD-050
      "No treatment: ordinary glasses",
      "What it costs",
      "Atropine is a poison when swallowed",
      "You may stop at any time, without giving a reason",
      "Would you like to try it? You may say no", // CD-051, the fourth step
    ])
      expect(text).toContain(words)
  })

  // LAMP, 12 months: 0.20, 0.29, 0.36 and 0.41 mm (Yam et al. 2019, abstract).
  it.each([
    [0.05, "0.20 mm on average, eyes on drops without the drug 0.41 mm: a difference of 0.21 mm"],
    [0.025, "0.29 mm on average, eyes on drops without the drug 0.41 mm: a difference of 0.12 mm"],
    [0.01, "0.36 mm on average, eyes on drops without the drug 0.41 mm: a difference of 0.05 mm"],
  ])("gives the benefit of %d %% in mm as the trial found it", (percent, words) => {
    expect(drops(percent)).toContain(words)
  })

  it("says of 0.01 % that it may be nothing, and not of 0.05 %", () => {
    expect(drops(0.01)).toContain("may be nothing at all")
    expect(drops(0.05)).not.toContain("may be nothing at all")
  })

  it("gives side effects with the group without the drug beside them", () => {
    // CHAMP, 36 months: photophobia 2.4 % on 0.01 %, 3.1 % on placebo (Zadnik et al. 2023, full text table 3).
    expect(drops(0.01)).toContain("bothered by light 2.4 % (3.1 %)")
  })

  it("gives what follows a stop in figures", () => {
    // LAMP, third year: 0.33 mm stopped, 0.17 mm continued (Yam et al. 2022, abstract).
    expect(drops(0.05)).toContain("eyes grew 0.33 mm, eyes of children who went on 0.17 mm")
  })

  it("names the milligrams in the practice's own bottles", () => {
    const text = read({ kind: "atropine", concentrationPercent: 0.05 }, { bottlesMl: [10] })
    expect(text).toContain("a bottle of 10 mL holds 5 mg of it; from 5 mg a child may be severely poisoned")
  })

  it("names the practice's numbers and costs", () => {
    const contacts = { poisonCentre: "00 000", urgent: "00 111" }
    const text = read(
      { kind: "atropine", concentrationPercent: 0.05 },
      { contacts, cost: () => ["In all 100.00 EUR."] },
    )
    for (const words of ["call 00 000", "Call 00 111", "In all 100.00 EUR."]) expect(text).toContain(words)
  })

  it("says where no figure was found for a strength, and borrows none", () => {
    const text = drops(0.3)
    expect(text).toContain("For this strength the trials give no figure")
    expect(text).toContain("No figures of side effects at this strength were read")
    expect(text).toContain("no figures of what follows a stop were read")
  })

  it("is not made for drops without a strength", () => {
    expect(() => read({ kind: "atropine" })).toThrow("names their strength")
  })
})

describe("The text for glasses and lenses", () => {
  it.each(optical)("of %s has figures of its benefit, and no braces left", (kind) => {
    const text = read({ kind })
    expect(text).toMatch(/In a trial over \d+ months eyes with .* grew \d\.\d\d mm on average/)
    expect(text).not.toMatch(/[{}]/)
  })

  it("warns of infection only where something is worn on the eye", () => {
    // Bullimore et al. 2021, abstract: 1 to 25 of 10 000 patient-years, 15 % with loss of sight.
    const words = "in 1 to 25 of 10 000 wearers a year. About 15 %"
    expect(read({ kind: "orthokeratology" })).toContain(words)
    expect(read({ kind: "defocus-spectacles" })).not.toContain(words)
  })
})

describe("Every text", () => {
  const all: readonly TreatmentChoice[] = [
    ...[0.01, 0.02, 0.025, 0.03, 0.05, 0.1, 0.5, 1].map((concentrationPercent) => ({
      kind: "atropine" as const,
      concentrationPercent,
    })),
    ...optical.map((kind) => ({ kind })),
  ]

  it("names its sources, none of them from memory", () => {
    for (const treatment of all) {
      expect(read(treatment)).toContain("Where the figures come from")
      expect(read(treatment)).not.toContain("memory")
    }
  })

  it("has nothing unread in it", () => {
    for (const treatment of all) expect(read(treatment)).not.toMatch(/undefined|NaN|null|\{|\}/)
  })

  it("is the same to the letter for the same input, so that its hash says what was read", () => {
    for (const treatment of all) expect(read(treatment)).toBe(read({ ...treatment }))
  })

  it("is plain text with one line feed at its end", () => {
    expect(drops(0.05)).toMatch(/[^\n]\n$/)
    expect(drops(0.05)).not.toContain("\r")
  })
})

describe("A practice's own wording", () => {
  const wording = {
    id: "drops",
    version: "A",
    from: "2025-01-10",
    language: "en",
    title: "Consent to {treatment}",
    sections: [{ heading: "{treatment}", text: "{benefit}\n\nIn our own words." }],
    isMaterial: true,
  }

  it("is filled in everywhere, blank lines left out", () => {
    const text = consentText({
      wording,
      treatment: { kind: "atropine", concentrationPercent: 0.05 },
      evidence: consentEvidence,
    })
    expect(text.title).toBe("Consent to atropine 0.05\u00a0%")
    expect(text.sections[0]?.heading).toBe("atropine 0.05\u00a0%")
    expect(text.sections[0]?.paragraphs.at(-1)).toBe("In our own words.")
    expect(text.sections[0]?.paragraphs).not.toContain("")
  })

  it("may not name what nothing is known for", () => {
    const slipped = { ...wording, sections: [{ heading: "{Treatment}", text: "{benefits}" }] }
    expect(unknownNames(slipped)).toEqual(["Treatment", "benefits"])
    expect(wordingProblems(slipped, { others: [] }).map(({ path }) => path)).toEqual(["sections"])
  })

  it("takes no version twice, however it is spelled", () => {
    expect(
      wordingProblems({ ...wording, version: " a " }, { others: [wording] }).map(({ path }) => path),
    ).toEqual(["version"])
  })

  it("the shipped wordings would pass as a practice's own under a new version", () => {
    for (const shipped of defaultWordings)
      expect(wordingProblems({ ...shipped, version: "mine" }, { others: [] })).toEqual([])
  })
})
