import { describe, expect, it } from "vitest"
import { choices } from "../../engine/choices/choices.js"
import { choicesTable } from "../../engine/choices/choices-table.js"
import type { Course } from "../../engine/course.js"
import { noRules } from "../../engine/practice-rules.js"
import { evidence } from "../../evidence/index.js"
import * as treatmentEvidence from "../../evidence/treatments.js"
import { decisionFields } from "../../server/contract/course-pieces.js"
import { figuresShown } from "./shown.js"

const eye = { axialLength: { mm: 24 }, refraction: { sphere: -2, cycloplegic: true } }
const course: Course = {
  lengthwise: 1,
  child: { born: "2017-06-15", sex: "female" },
  visits: [{ date: "2026-06-15", right: eye, left: eye }],
}
const told = choices({ course, asOf: "2026-06-15", evidence, treatmentEvidence, rules: noRules })
const rows = choicesTable(told)
const kept = figuresShown({ options: told.options, rows, chosenId: "atropine-0.05" })

describe("the figures kept with a decision", () => {
  it("are those of every option that was shown", () => {
    for (const { name } of told.options) {
      const words = `${name.charAt(0).toUpperCase()}${name.slice(1)}: length of the right eye`
      expect(kept.some(({ label }) => label.startsWith(words))).toBe(true)
    }
  })
  it("of the option decided on everything is kept", () => {
    const ofChosen = kept.filter(({ label }) => label.startsWith("Atropine 0.05 %: "))
    expect(ofChosen).toHaveLength(rows.length)
  })
  it("fit into a course file", () => {
    expect(decisionFields.shape.figures.safeParse(kept).error).toBeUndefined()
  })
  it("are worded as on the page, with a true minus sign", () => {
    const { value } =
      kept.find(({ label }) => label === "Atropine 0.01 %: growth withheld in the next year") ?? {}
    expect(value).toMatch(/\(−0\.\d\d to 0\.\d\d\); small, may be nil$/)
  })
})
