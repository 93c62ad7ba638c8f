import { describe, expect, it } from "vitest"
import table from "../../../src/evidence/tables/clinical/duties.json" with { type: "json" }
import { child, no, visit, yes } from "./child.js"

const START = "2025-01-10"
const answered = (answer: ReturnType<typeof yes | typeof no>) =>
  child({ visits: [visit(START, {}, { answers: [answer] })] }).on("2025-03-01")

describe("Every caution is answered, or named as not asked", () => {
  it("nothing asked: every one is not asked yet", () => {
    const { cautions } = child({}).on(START)
    expect(cautions.length).toBeGreaterThan(10)
    expect(cautions.every(({ state }) => state === "not-asked")).toBe(true)
  })

  it("a yes says what the source says of it, when it was told and what was noted", () => {
    expect(answered(yes("heart-condition", "fast rhythm")).caution("heart-condition")).toMatchObject({
      state: "asked-yes",
      weight: "caution",
      on: START,
      note: "fast rhythm",
      duty: "CD-059",
    })
  })

  it("a no has its day", () => {
    expect(answered(no("down-syndrome")).caution("down-syndrome")).toMatchObject({
      state: "asked-no",
      on: START,
    })
  })

  it("the last answer counts, and one left out takes none away", () => {
    const story = child({
      visits: [
        visit("2024-01-10", {}, { answers: [yes("respiratory-disease")] }),
        visit("2024-07-10", {}, { answers: [no("respiratory-disease")] }),
        visit("2025-01-10", {}, { answers: [{ question: "respiratory-disease", answer: "not-done" }] }),
      ],
    })
    expect(story.on("2024-02-01").caution("respiratory-disease")?.state).toBe("asked-yes")
    expect(story.on("2025-02-01").caution("respiratory-disease")).toMatchObject({
      state: "asked-no",
      on: "2024-07-10",
    })
  })
})

describe("What a yes means", () => {
  it("a narrow angle and an allergy to an ingredient: atropine is not given (CD-058)", () => {
    const { cautions } = child({}).on(START)
    const never = cautions.filter(({ weight }) => weight === "contraindicated").map(({ id }) => id)
    expect(never).toEqual(["narrow-angle", "allergy-drops"])
  })

  it("Down syndrome, spastic paralysis and brain injury: a specialist decides (CD-012)", () => {
    const { caution } = child({}).on(START)
    for (const id of ["down-syndrome", "spastic-paralysis", "brain-injury"])
      expect(caution(id)).toMatchObject({ weight: "specialist", duty: "CD-012" })
  })
})

describe("What is read from the figures or the age", () => {
  it("raised pressure from 21 mmHg, the entry limit of a trial", () => {
    const at = (mmHg: number) =>
      child({ visits: [visit(START, { intraocularPressure: { mmHg } })] })
        .on(START)
        .caution("raised-pressure")
    expect(at(20)).toMatchObject({ state: "asked-no", note: "right 20 mmHg, left 20 mmHg" })
    expect(at(21)).toMatchObject({ state: "asked-yes", weight: "caution" })
  })

  it("no atropine under 3 months of age (CD-064)", () => {
    expect(child({ born: "2025-01-01" }).on("2025-03-20").caution("under-3-months")?.weight).toBe(
      "contraindicated",
    )
    expect(child({ born: "2025-01-01" }).on("2025-05-01").caution("under-3-months")).toBeUndefined()
  })

  // From 11 years: ours, common practice, no source.
  it("a girl is asked about a pregnancy once that makes sense", () => {
    expect(child({}).on("2027-05-01").caution("pregnancy")).toBeUndefined()
    expect(child({}).on("2027-06-01").caution("pregnancy")).toMatchObject({
      state: "not-asked",
      duty: null,
      grade: "common practice, no source",
    })
  })
})

describe("Every caution with a duty", () => {
  it("rests on a row of the evidence that was verified", () => {
    const status = new Map(table.duties.map(({ id, evidence_status }) => [id, evidence_status]))
    const rows = child({})
      .on(START)
      .cautions.flatMap(({ duty }) => duty ?? [])
    expect(rows.map((id) => [id, status.get(id)])).toEqual(rows.map((id) => [id, "verified"]))
  })
})
