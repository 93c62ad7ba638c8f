import { describe, expect, it } from "vitest"
import { consentInForce } from "../../../src/engine/consent/consent-in-force.js"
import { wordingsFor } from "../../../src/engine/consent/default-wording.js"
import { wordingProblems } from "../../../src/engine/consent/wording-problems.js"
import type { Consent } from "../../../src/engine/course.js"
import type { ConsentWording } from "../../../src/engine/practice-rules.js"
import { duties } from "../../../src/engine/protocol/duties.js"
import { standardProtocol } from "../../../src/engine/protocol/standard.js"

const treatment = { kind: "atropine", concentrationPercent: 0.05 } as const
const version = (name: string, from: string, more: Partial<ConsentWording> = {}): ConsentWording => ({
  id: "drops",
  version: name,
  from,
  language: "en",
  title: "Consent",
  sections: [{ heading: "What it may do", text: "{benefit}" }],
  isMaterial: true,
  ...more,
})
const on = (wording: Consent["wording"], date = "2025-01-10"): Consent => ({
  date,
  covers: treatment,
  ...(wording ? { wording } : {}),
})
const state = (consents: readonly Consent[], wordings: readonly ConsentWording[], day: string) =>
  consentInForce({ course: { consents }, treatment, on: day, wordings })

const first = version("A", "2024-06-01")
const second = version("B", "2025-03-01")

describe("A material new version asks families again", () => {
  const given = [on({ id: "drops", version: "A" })]

  it("from the day it comes into force", () => {
    expect(state(given, [first, second], "2025-02-28").kind).toBe("in-force")
    expect(state(given, [first, second], "2025-03-01")).toEqual({
      kind: "wording-renewed",
      since: "2025-03-01",
      why: "consent to atropine 0.05 % of 2025-01-10 was given on an earlier wording; version B holds since 2025-03-01",
    })
  })

  it("not when it is not material", () => {
    const wordings = [first, version("B", "2025-03-01", { isMaterial: false })]
    expect(state(given, wordings, "2025-04-01").kind).toBe("in-force")
  })

  it("not when it is of another wording", () => {
    const other = version("B", "2025-03-01", { id: "optical" })
    expect(state(given, [first, other], "2025-04-01").kind).toBe("in-force")
  })

  it("once: a consent to the new version is enough", () => {
    const again = on({ id: "drops", version: "B" }, "2025-03-05")
    expect(state([...given, again], [first, second], "2025-04-01")).toEqual({
      kind: "in-force",
      consent: again,
    })
  })

  it("also those who were handed the earlier version when the new one was already in force", () => {
    expect(state([on({ id: "drops", version: "A" }, "2025-03-05")], [first, second], "2025-03-05").kind).toBe(
      "wording-renewed",
    )
  })

  it("where the version signed is not the practice's own, the day of the consent counts", () => {
    expect(state([on({ id: "drops", version: "1" })], [second], "2025-04-01").kind).toBe("wording-renewed")
    expect(state([on({ id: "drops", version: "1" }, "2025-03-02")], [second], "2025-04-01").kind).toBe(
      "in-force",
    )
  })

  it("a consent without a wording is not asked for again for the wording's sake", () => {
    expect(state([on(undefined)], [first, second], "2025-04-01").kind).toBe("in-force")
  })
})

describe("A version is one content in as many languages as it is written in", () => {
  const inSpanish = (name: string, from: string, more: Partial<ConsentWording> = {}) =>
    version(name, from, { language: "es", ...more })

  it("a consent to its Spanish text is a consent to that version", () => {
    const wordings = [first, inSpanish("A", "2024-06-01"), second, inSpanish("B", "2025-03-01")]
    const [read, older] = ["B", "A"].map((name) => [on({ id: "drops", version: name, language: "es" })])
    expect(state(read ?? [], wordings, "2025-04-01").kind).toBe("in-force")
    expect(state(older ?? [], wordings, "2025-04-01").kind).toBe("wording-renewed")
  })

  it("a material version asks everyone again, in whatever language it or the earlier one was read", () => {
    const spanishOnly = [first, inSpanish("B", "2025-03-01")]
    expect(state([on({ id: "drops", version: "A" })], spanishOnly, "2025-04-01").kind).toBe("wording-renewed")
    const englishOnly = [inSpanish("A", "2024-06-01"), second]
    expect(state([on({ id: "drops", version: "A" })], englishOnly, "2025-04-01").kind).toBe("wording-renewed")
  })

  it("a translation that comes later asks nobody again who read that version", () => {
    const wordings = [first, second, inSpanish("B", "2025-06-01")]
    expect(state([on({ id: "drops", version: "B" }, "2025-03-05")], wordings, "2025-07-01").kind).toBe(
      "in-force",
    )
  })

  it("nor does the late translation of an earlier version ask those who read a later one", () => {
    const wordings = [first, second, inSpanish("A", "2025-06-01")]
    expect(state([on({ id: "drops", version: "B" }, "2025-03-05")], wordings, "2025-07-01").kind).toBe(
      "in-force",
    )
  })

  it("a name once used in a language is taken; in another it is the translation", () => {
    const paths = (wording: ConsentWording) =>
      wordingProblems(wording, { others: [first] }).map(({ path }) => path)
    expect(paths(first)).toEqual(["version"])
    expect(paths(inSpanish("A", "2025-06-01"))).toEqual([])
    // A version is found by its name to the letter, so a translation must bear it to the letter.
    expect(paths(inSpanish("a", "2025-06-01"))).toEqual(["version"])
  })
})

describe("What is read is the latest version in force, in the language the family reads", () => {
  const read = (day: string, wordings: readonly ConsentWording[]) =>
    wordingsFor({ kind: "atropine", on: day, wordings }).map(
      ({ version: name, language }) => `${language} ${name}`,
    )

  it("the one that ships, in three languages, while a practice has none", () => {
    const shipped = ["en 1", "es 1", "zh-Hans 1"]
    expect(read("2025-01-10", [])).toEqual(shipped)
    expect(read("2024-05-31", [first])).toEqual(shipped)
  })

  it("then the practice's own in its language, and in no other: there the one that ships stays", () => {
    expect(read("2025-02-01", [second, first])).toEqual(["en A", "es 1", "zh-Hans 1"])
    expect(read("2025-04-01", [second, first])).toEqual(["en B", "es 1", "zh-Hans 1"])
    const spanish = version("A", "2024-06-01", { language: "es" })
    expect(read("2025-02-01", [first, spanish])).toEqual(["en A", "es A", "zh-Hans 1"])
  })

  it("the practice's own of a country stands for the language, another language beside them", () => {
    const own = ["es-MX", "fr"].map((language) => version("A", "2024-06-01", { language }))
    expect(read("2025-02-01", own)).toEqual(["en 1", "es-MX A", "zh-Hans 1", "fr A"])
  })

  it("not a text that a material version in another language has overtaken", () => {
    const spanish = version("A", "2024-06-01", { language: "es" })
    expect(read("2025-04-01", [first, spanish, second])).toEqual(["en B", "es 1", "zh-Hans 1"])
    const slight = version("B", "2025-03-01", { isMaterial: false })
    expect(read("2025-04-01", [first, spanish, slight])).toEqual(["en B", "es A", "zh-Hans 1"])
  })

  it("so that whoever signs what they were handed is covered from that day", () => {
    const wordings = [first, version("A", "2024-06-01", { language: "es" }), second]
    for (const wording of wordingsFor({ kind: "atropine", on: "2025-04-01", wordings })) {
      const { id, version: name, language } = wording
      const consent = on({ id, version: name, language }, "2025-04-01")
      expect(state([consent], wordings, "2025-04-01").kind).toBe("in-force")
    }
  })
})

describe("What no longer holds is owed again while the treatment goes on", () => {
  const course = (consent: Consent, to?: string) => ({
    lengthwise: 1 as const,
    child: { born: "2016-05-02", sex: "female" as const },
    visits: [],
    treatments: [{ ...treatment, from: "2025-01-10", ...(to ? { to } : {}) }],
    consents: [consent],
  })
  const consentDuties = (consent: Consent, { day, to }: { readonly day: string; readonly to?: string }) =>
    duties({ course: course(consent, to), protocol: standardProtocol, today: day, wordings: [first, second] })
      .filter(({ kind }) => kind === "consent")
      .map(({ step, state: found, due }) => `${step}: ${found}, due ${due}`)
  const GIVEN = "consent to atropine 0.05 %: done, due 2025-01-10"

  it("a withdrawal is open on its day and overdue from the next", () => {
    const withdrawn = { ...on(undefined), until: "2025-06-01" }
    expect(consentDuties(withdrawn, { day: "2025-05-31" })).toEqual([GIVEN])
    expect(consentDuties(withdrawn, { day: "2025-06-01" })).toEqual([
      GIVEN,
      "consent to atropine 0.05 % again: open, due 2025-06-01",
    ])
    expect(consentDuties(withdrawn, { day: "2025-06-02" })[1]).toBe(
      "consent to atropine 0.05 % again: overdue, due 2025-06-01",
    )
  })

  it("so is a material new wording", () => {
    expect(consentDuties(on({ id: "drops", version: "A" }), { day: "2025-03-02" })).toEqual([
      GIVEN,
      "consent to atropine 0.05 % again: overdue, due 2025-03-01",
    ])
  })

  it("once the treatment has stopped nothing is owed", () => {
    const withdrawn = { ...on(undefined), until: "2025-06-01" }
    expect(consentDuties(withdrawn, { day: "2025-06-02", to: "2025-06-01" })).toEqual([GIVEN])
  })

  it("a consent withdrawn before the start does not count for the start", () => {
    const early = { ...on(undefined, "2025-01-02"), until: "2025-01-05" }
    expect(consentDuties(early, { day: "2025-01-12" })).toEqual([
      "consent to atropine 0.05 %: overdue, due 2025-01-10",
    ])
  })

  it("plain consents are asked about as ever: no wording is needed", () => {
    expect(consentDuties(on(undefined), { day: "2025-04-01" })).toEqual([GIVEN])
  })
})
