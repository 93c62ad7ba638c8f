import fc from "fast-check"
import { describe, expect, it } from "vitest"
import type { Visit } from "../../engine/course.js"
import { correctedVisit, withoutChange } from "./changed-visit.js"
import { joined } from "./joined.js"
import { mergedVisit } from "./merged-visit.js"

const date = "2026-03-16"
const SOURCE = { kind: "dicom", id: "1.2.3" } as const
const length = (mm: number): Visit => ({ date, right: { axialLength: { mm } }, sources: [SOURCE] })

describe("two accounts of a visit", () => {
  it("fill each other in", () => {
    const recorded: Visit = { date, right: { intraocularPressure: { mmHg: 15 } } }
    const { visit, added, contradictions } = mergedVisit(recorded, length(24.12))
    expect(visit).toEqual({
      date,
      right: { intraocularPressure: { mmHg: 15 }, axialLength: { mm: 24.12 } },
      sources: [SOURCE],
    })
    expect(added).toEqual(["right.axialLength"])
    expect(contradictions).toEqual([])
  })

  it("never change what is recorded", () => {
    const { visit, added, contradictions } = mergedVisit(length(24.1), length(24.4))
    expect(visit).toEqual(length(24.1))
    expect(added).toEqual([])
    expect(contradictions).toEqual([
      { path: "right.axialLength", recorded: { mm: 24.1 }, offered: { mm: 24.4 } },
    ])
  })

  it("agree when one only tells more of the same figure", () => {
    const told = { date, right: { axialLength: { mm: 24.1, readings: 5, device: "Biometer" } } }
    expect(mergedVisit(length(24.1), told)).toMatchObject({ added: [], contradictions: [] })
  })

  it("keep a refraction by another method beside the first, and one of unknown method as a contradiction", () => {
    const recorded: Visit = { date, left: { refraction: { sphere: -2, method: "subjective" } } }
    const other = { sphere: -2.5, method: "autorefraction" } as const
    expect(mergedVisit(recorded, { date, left: { refraction: other } })).toMatchObject({
      visit: { left: { refraction: { sphere: -2 }, otherRefractions: [other] } },
      added: ["left.otherRefractions"],
      contradictions: [],
    })
    expect(
      mergedVisit(recorded, { date, left: { refraction: { sphere: -2.5 } } }).contradictions,
    ).toHaveLength(1)
    const wide: Visit = { date, left: { refraction: { ...other, cycloplegic: true } } }
    const narrow: Visit = { date, left: { refraction: { ...other, sphere: -3, cycloplegic: false } } }
    expect(mergedVisit(wide, narrow)).toMatchObject({ contradictions: [] })
  })

  it("are the same whatever the order of their fields", () => {
    const a: Visit = { date, symptoms: [{ kind: "stinging", grade: 1 }] }
    const b = { date, symptoms: [{ grade: 1, kind: "stinging" }] } as Visit
    expect(mergedVisit(a, b)).toMatchObject({ added: [], contradictions: [] })
  })
})

const figure = fc.integer({ min: 2200, max: 2600 }).map((hundredths) => ({ mm: hundredths / 100 }))
const eye = fc.record(
  {
    axialLength: figure,
    refraction: fc.record({ sphere: fc.integer({ min: -24, max: 8 }).map((steps) => steps / 4) }),
    intraocularPressure: fc.record({ mmHg: fc.integer({ min: 10, max: 22 }) }),
  },
  { requiredKeys: [] },
)
const anyVisit: fc.Arbitrary<Visit> = fc
  .record({ right: eye, left: eye }, { requiredKeys: [] })
  .map((eyes) => ({ date, ...eyes }))

/** An eye of which nothing is known is no eye. */
const withoutEmptyEyes = (visit: Visit): Visit =>
  Object.fromEntries(
    Object.entries(visit).filter(([, held]) => typeof held !== "object" || Object.keys(held).length > 0),
  ) as unknown as Visit

describe("for any two accounts", () => {
  it("taking the same twice adds nothing the second time", () => {
    fc.assert(
      fc.property(anyVisit, anyVisit, (recorded, offered) => {
        const once = mergedVisit(recorded, offered)
        expect(mergedVisit(once.visit, offered)).toMatchObject({
          visit: once.visit,
          added: [],
          contradictions: once.contradictions,
        })
      }),
    )
  })

  it("what was added or corrected can be taken out again", () => {
    fc.assert(
      fc.property(anyVisit, anyVisit, (before, offered) => {
        const recorded = withoutEmptyEyes(before)
        const { visit, added, contradictions } = mergedVisit(recorded, { ...offered, sources: [SOURCE] })
        const then = correctedVisit(visit, contradictions)
        const change = { added, corrected: contradictions, sources: [SOURCE.id] }
        const back = withoutChange({ now: then, asRecorded: then, change })
        if (back.kind === "empty") expect(recorded).toEqual({ date })
        else expect(back).toEqual({ kind: "visit", visit: recorded })
      }),
    )
  })
})

it("does not take out what somebody has changed since", () => {
  const then = length(24.1)
  const change = { added: ["right.axialLength"], corrected: [], sources: [SOURCE.id] }
  expect(withoutChange({ now: length(24.2), asRecorded: then, change })).toEqual({
    kind: "changed-since",
    paths: ["right.axialLength"],
  })
})

describe("fragments by child", () => {
  const fragment = (identity: object, visit: Visit) => ({
    identity,
    course: { visits: [visit] },
    documents: [],
    source: SOURCE,
    notes: [],
  })

  it("join where they name the same child, and part where anything differs", () => {
    const both = joined([
      fragment({ number: "7", born: "2017-03-04" }, length(24.1)),
      fragment({ number: "7", name: "Mira Solberg" }, { date, left: { axialLength: { mm: 24 } } }),
      fragment({ number: "7", name: "Ivo Brandt" }, length(23)),
    ])
    expect(both).toHaveLength(2)
    expect(both[0]).toMatchObject({
      identity: { number: "7", born: "2017-03-04", name: "Mira Solberg" },
      course: { visits: [{ right: { axialLength: { mm: 24.1 } }, left: { axialLength: { mm: 24 } } }] },
    })
  })

  it("say where two files of one visit contradict each other", () => {
    const [child] = joined([fragment({ number: "7" }, length(24.1)), fragment({ number: "7" }, length(24.4))])
    expect(child?.notes).toMatchObject([
      {
        kind: "files-contradict",
        path: "visits[2026-03-16].right.axialLength",
        why: "axial length of the right eye: one file says 24.1 mm, another 24.4 mm; the first was kept",
      },
    ])
  })

  it("join nobody who is not named", () => {
    expect(
      joined([fragment({ born: "2017-03-04" }, length(24)), fragment({ born: "2017-03-04" }, length(23))]),
    ).toHaveLength(2)
  })
})

describe("figures from elsewhere", () => {
  const glasses: Visit = { date, right: { refraction: { sphere: -1 } }, from: "old glasses" }

  it("do not join figures measured here without a person's word, nor the other way round", () => {
    const paths = (a: Visit, b: Visit) => mergedVisit(a, b).contradictions.map(({ path }) => path)
    expect(paths(length(24.1), glasses)).toEqual(["from"])
    expect(paths(glasses, length(24.1))).toEqual(["from"])
    expect(mergedVisit(length(24.1), glasses).visit.from).toBeUndefined()
  })

  it("are taken as they are where nothing is recorded", () => {
    expect(mergedVisit({ date }, glasses)).toMatchObject({ visit: glasses, contradictions: [] })
  })
})
