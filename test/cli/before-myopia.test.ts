import { describe, expect, it } from "vitest"
import type { Course } from "../../src/engine/course.js"
import { commandLine, json } from "./fake-io.js"

const eye = {
  axialLength: { mm: 23.2 },
  refraction: { sphere: 0.25, cycloplegic: true },
}
const course: Course = {
  lengthwise: 1,
  child: { born: "2019-12-01", sex: "male", myopicParents: 2 },
  visits: [{ date: "2026-07-20", right: eye, left: eye }],
}
const files = { "child.json": course }

describe("lengthwise before-myopia", () => {
  it("tells length, refraction, parents, reviews and advice with their evidence", async () => {
    const { code, stdout } = await commandLine(["before-myopia", "child.json"], { files })
    expect(code).toBe(0)
    for (const words of [
      "Length",
      "Of 96 children of 6",
      "Both parents are myopic",
      "Seen every 6 months",
      "Not said",
    ])
      expect(stdout).toContain(words)
  })

  it("as JSON names every cut-off with the row and how it was obtained", async () => {
    const answer = json(await commandLine(["before-myopia", "child.json", "--json"], { files }))
    expect(answer.refraction.cutOffs[0]).toMatchObject({
      side: "at-risk",
      cutOff: { row: "f03", isSecondHand: true },
    })
    expect(answer.treatment.refused).toContain("no trial of a treatment was read")
  })

  it("refuses a myopic child in a sentence, and that is no fault", async () => {
    const myopic = { ...course, visits: [{ date: "2026-07-20", right: { refraction: { sphere: -2 } } }] }
    const { code, stdout } = await commandLine(["before-myopia", "child.json"], {
      files: { "child.json": myopic },
    })
    expect({ code, stdout }).toEqual({
      code: 0,
      stdout: "The child is myopic: an eye is at -0.50 D or beyond.\n",
    })
  })
})
