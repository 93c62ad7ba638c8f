import { beforeAll, describe, expect, it } from "vitest"
import { spanish } from "../../words/es/index.js"
import type { Course } from "../course.js"
import { noRules } from "../practice-rules.js"
import { inLanguage, learn } from "../say.js"
import { owed } from "../today/owed.js"
import { dutiesWhy } from "../why/duties.js"
import { duties } from "./duties.js"
import { standardProtocol } from "./standard.js"

beforeAll(() => learn("es", spanish))

describe("what rests on a duty", () => {
  const eye = { axialLength: { mm: 24 } }
  const course: Course = {
    lengthwise: 1,
    child: { born: "2016-05-20", sex: "female" },
    visits: [{ date: "2026-01-09", right: eye, left: eye }],
    treatments: [{ from: "2026-01-10", kind: "atropine", concentrationPercent: 0.05 }],
  }
  const today = "2026-02-05"
  const read = () => {
    const found = duties({ course, protocol: standardProtocol, today })
    const assessment = {
      finding: { state: "no-treatment" },
      growth: { state: "unclear", mmPerYear: null },
    } as unknown as Parameters<typeof owed>[0]["assessment"]
    const rows = owed({
      course,
      today,
      protocol: standardProtocol,
      assessment,
      duties: found,
      rules: noRules,
    })
    const check = found.filter(({ kind, state }) => kind === "examination" && state === "open")
    const why = dutiesWhy({ duties: check, protocol: standardProtocol, asOf: today })
    return { found, rows, why }
  }
  it("is the same in every language: a lacking consent says itself once, a step is found again", () => {
    for (const language of ["en", "es"] as const) {
      const { rows, why } = inLanguage(language, read)
      expect(rows.find(({ group }) => group === "sign")?.why).toBe("")
      // The day, the protocol, the duty and what it is counted as, before the steps.
      expect(why.inputs).toHaveLength(standardProtocol.steps.length + 4)
    }
  })
  it("stands in no duty: its keys are a contract", () => {
    for (const duty of read().found)
      expect(Object.keys(duty).toSorted()).toEqual([
        "closes",
        "due",
        "kind",
        "needs",
        "opens",
        "state",
        "step",
      ])
  })
  it("is said in Spanish", () => {
    const { found } = inLanguage("es", read)
    expect(found.find(({ kind }) => kind === "consent")).toMatchObject({
      step: "consentimiento para atropina al 0,05 %",
      needs: ["un consentimiento que abarque atropina al 0,05 %"],
    })
  })
})
