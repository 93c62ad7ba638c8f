import { describe, expect, it } from "vitest"
import { inLanguage, learn } from "../../engine/say.js"
import type { ChildView } from "../../server/contract/child.js"
import { spanish } from "../../words/es/index.js"
import { entryWords } from "./entry-words.js"
import { listedEntries } from "./listed-entries.js"

type Entry = ChildView["entries"][number]
const entry = (kind: Entry["kind"], body: object, more: Partial<Entry> = {}): Entry => ({
  id: `${kind} ${JSON.stringify(body)}`,
  kind,
  body,
  date: "2026-03-10",
  author: "Ada Lindqvist",
  recordedAt: "2026-03-10T09:00:00Z",
  supersedes: null,
  supersededBy: null,
  reason: null,
  ...more,
})

const drops = { kind: "atropine", concentrationPercent: 0.05 }

describe("what an entry says", () => {
  it.each<[Entry["kind"], object, string]>([
    [
      "child",
      { name: "Mira Solberg", born: "2017-03-14", sex: "female", ancestry: "east-asian", number: "17" },
      "Mira Solberg, girl, born 14 Mar 2017, number 17, ancestry east asian",
    ],
    [
      "visit",
      {
        date: "2026-03-10",
        right: {
          axialLength: { mm: 24.12 },
          refraction: { sphere: -2.25, cylinder: -0.5, axis: 180 },
          pupil: { photopic: 3.9 },
          accommodation: { dioptres: 12.5 },
          acuity: { distanceLogMAR: 0, nearLogMAR: 0.1 },
          intraocularPressure: { mmHg: 15 },
        },
        left: { axialLength: { mm: 24 } },
        symptoms: [{ kind: "light-sensitivity", grade: 1 }],
        answers: [{ question: "heart-condition", answer: "no" }],
      },
      "right 24.12 mm, −2.50 D, pupil 3.9 mm, accommodation 12.5 D, distance 0.00 logMAR, near 0.10 logMAR, pressure 15 mmHg; left 24.00 mm; symptoms: light sensitivity grade 1; 1 answer",
    ],
    [
      "treatment",
      { ...drops, from: "2026-03-10", to: null, eye: "right", nightsPerWeek: 3 },
      "atropine 0.05 % from 10 Mar 2026, right eye only, 3 nights of the week, going on",
    ],
    [
      "consent",
      {
        date: "2026-03-10",
        covers: drops,
        by: { name: "Nora Solberg", relation: "mother" },
        form: "screen",
        wording: { id: "drops", version: "2" },
        assent: "given",
      },
      "to atropine 0.05 %, by Nora Solberg, mother, on screen, wording version 2, assent of the child given",
    ],
    [
      "supply",
      { concentrationPercent: 0.05, volumeMl: 5, lot: "L7", opened: "2026-03-10", beyondUse: "2026-04-09" },
      "atropine 0.05 %, 5 mL, lot L7, opened 10 Mar 2026, use until 9 Apr 2026",
    ],
    [
      "missed-nights",
      { from: "2026-03-01", to: "2026-03-10", nights: 1 },
      "1 night missed, 1 Mar 2026 to 10 Mar 2026",
    ],
    [
      "decision",
      { date: "2026-03-10", kind: "switch", treatment: { kind: "orthokeratology" }, reason: "glare" },
      "switch to another treatment, orthokeratology, because: glare",
    ],
    [
      "concern",
      { opened: "2026-03-10", kind: "near-blur", what: "cannot read", seriousness: "mild", owner: "Ada" },
      "near blur: cannot read, mild, looked after by Ada, open",
    ],
    [
      "order",
      { date: "2026-03-10", concentrationPercent: 0.05, bottles: 3, volumeMl: 5, received: "2026-03-20" },
      "3 bottles of atropine 0.05 %, 5 mL each, received 20 Mar 2026",
    ],
    ["explanation", { date: "2026-03-10", to: "both parents" }, "results explained, to both parents"],
    ["payment", { date: "2026-03-10", cents: 4500, currency: "EUR", what: "visit" }, "45.00 EUR, visit"],
    ["withdrawal", {}, "an entry that no longer holds"],
  ])("%s", (kind, body, words) => {
    expect(entryWords(entry(kind, body))).toBe(words)
  })
})

describe("what an entry says in Spanish", () => {
  learn("es", spanish)
  it.each<[Entry["kind"], object, string]>([
    [
      "child",
      { name: "Mira Solberg", born: "2017-03-14", sex: "female", ancestry: "east-asian", myopicParents: 1 },
      "Mira Solberg, niña, nacimiento: 14 mar 2017, ascendencia de Asia oriental, 1 progenitor miope",
    ],
    [
      "visit",
      {
        date: "2026-03-10",
        right: { axialLength: { mm: 24.12 }, refraction: { sphere: -2.25, cylinder: -0.5, axis: 180 } },
        symptoms: [{ kind: "near-blur", grade: 1 }],
        from: "old glasses",
      },
      "OD 24,12 mm, −2,50 D; síntomas: visión borrosa de cerca, grado 1; procedencia: gafas previas",
    ],
    [
      "treatment",
      { ...drops, from: "2026-03-10", to: null, eye: "left", nightsPerWeek: 1 },
      "atropina al 0,05 % desde el 10 mar 2026, solo ojo izquierdo, 1 noche por semana, en curso",
    ],
    [
      "supply",
      { concentrationPercent: 0.05, volumeMl: 2.5, lot: "L7", opened: "2026-03-10" },
      "atropina al 0,05 %, 2,5 mL, lote L7, abierto el 10 mar 2026",
    ],
    [
      "family",
      { name: "Nora Solberg", relation: "madre", language: "es", reachedBy: "sms" },
      "Nora Solberg, madre, Español, contacto por SMS",
    ],
  ])("%s", (kind, body, words) => {
    expect(inLanguage("es", () => entryWords(entry(kind, body)))).toBe(words)
  })
  it("a reason that holds braces stands as it was typed", () => {
    const decision = { date: "2026-03-10", kind: "continue", reason: "see {file}" }
    expect(inLanguage("es", () => entryWords(entry("decision", decision)))).toContain("see {file}")
  })
})

describe("entries that are looked for", () => {
  const treatment = entry("treatment", { ...drops, from: "2026-03-10" })
  const order = entry(
    "order",
    { date: "2026-03-12", concentrationPercent: 0.05, bottles: 3, volumeMl: 5 },
    { date: "2026-03-12", author: "Ben Osei" },
  )
  const all = [treatment, order]

  it("stand with the latest day first", () => {
    expect(listedEntries(all, { search: "", kind: "" })).toEqual([order, treatment])
  })
  it("may be of one kind", () => {
    expect(listedEntries(all, { search: "", kind: "treatment" })).toEqual([treatment])
  })
  it("hold every word, in any order and case", () => {
    expect(listedEntries(all, { search: "BOTTLES osei", kind: "" })).toEqual([order])
  })
  it("are found by their day as it is written and as it is read", () => {
    expect(listedEntries(all, { search: "2026-03-12", kind: "" })).toEqual([order])
    expect(listedEntries(all, { search: "12 Mar 2026", kind: "" })).toEqual([order])
  })
})
