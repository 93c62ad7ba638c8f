import { readFileSync } from "node:fs"
import { describe, expect, it } from "vitest"
import { EXAMINATION_MEASURES } from "./examination-measures.js"
import { examinationSwitches } from "./examination-switches.js"
import { MEASURES, STAGES } from "./protocol.js"
import { QUESTIONS, questionOf } from "./questions.js"

// The document as carried in, the rows from memory included: evidence/clinical/duties.json.
const carried: { readonly duties: readonly { readonly id: string; readonly evidence_status: string }[] } =
  JSON.parse(readFileSync("src/evidence/tables/clinical/duties.json", "utf8"))
const statusOf = (duty: string) => carried.duties.find(({ id }) => id === duty)?.evidence_status
const rows = [...QUESTIONS, ...EXAMINATION_MEASURES].flatMap(({ owed }) => owed)

describe("the catalogue of questions", () => {
  it("gives every question an id of its own", () => {
    expect(new Set(QUESTIONS.map(({ id }) => id)).size).toBe(QUESTIONS.length)
  })

  it("names no duty that the evidence does not have, and each with the status of its row", () => {
    expect(rows.map(({ duty, status }) => `${duty} ${status}`)).toEqual(
      rows.map(({ duty }) => `${duty} ${statusOf(duty)}`),
    )
  })

  it("finds a question by its id, and none for an id it does not know", () => {
    expect(questionOf("missed-drops")?.value?.unit).toBe("nights a week")
    expect(questionOf("unheard-of")).toBeUndefined()
  })

  it("owes pregnancy to no examination, since no duty of the evidence speaks of it", () => {
    expect(questionOf("pregnancy")?.owed).toEqual([])
  })

  it("lets a value be the answer only where there is a value", () => {
    expect(QUESTIONS.filter(({ byValue, value }) => byValue && !value)).toEqual([])
  })

  it("has a place in the room for everything that a protocol can measure", () => {
    const placed = EXAMINATION_MEASURES.map(({ measure }) => measure)
    expect(MEASURES.filter((measure) => !placed.includes(measure))).toEqual([])
  })
})

describe("the switches of the examinations", () => {
  const switches = examinationSwitches()

  it("are one for each duty", () => {
    expect(new Set(switches.map(({ duty }) => duty)).size).toBe(switches.length)
  })

  it("stand in the order of the stages", () => {
    const firsts = switches.map(({ stages }) => STAGES.indexOf(stages[0] ?? "baseline"))
    expect(firsts).toEqual(firsts.toSorted((a, b) => a - b))
  })

  it("have words of their own for every row that rests on memory alone, and no figure in them", () => {
    const unread = switches.filter(({ status }) => status === "unverified")
    expect(unread.length).toBeGreaterThan(0)
    for (const { words } of unread) expect(words).toMatch(/^[^\d]+\.$/)
  })

  it("do not include the signs that are asked about at every visit anyway", () => {
    expect(switches.map(({ duty }) => duty)).not.toContain("CD-112")
  })
})
