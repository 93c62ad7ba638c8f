import { describe, expect, it } from "vitest"
import duties from "../../evidence/tables/clinical/duties.json" with { type: "json" }
import norms from "../../evidence/tables/clinical/safety-norms.json" with { type: "json" }
import { questionOf } from "../protocol/questions.js"
import { usualComfortLimits } from "./comfort-limits.js"
import { RED_FLAG_QUESTIONS } from "./red-flags.js"
import { startCautions } from "./start-cautions.js"
import { SWITCHED_RULES } from "./switched-concerns.js"
import { SYSTEMIC_QUESTION } from "./systemic.js"

describe("the questions that safety reads", () => {
  it.each([...Object.keys(RED_FLAG_QUESTIONS), SYSTEMIC_QUESTION])("%s is asked", (id) => {
    expect(questionOf(id)).toBeDefined()
  })

  it("every question that is a red flag is read as one", () => {
    for (const id of Object.keys(RED_FLAG_QUESTIONS)) expect(questionOf(id)?.kind).toBe("red-flag")
  })

  it("every caution is asked, but for the one read from the pressure", () => {
    const cautions = startCautions({
      course: { lengthwise: 1, child: { born: "2012-01-01", sex: "female" }, visits: [] },
      today: "2025-01-10",
      treatment: { kind: "atropine" },
    })
    expect(cautions.filter(({ id }) => !questionOf(id)).map(({ id }) => id)).toEqual(["raised-pressure"])
  })

  it("no caution is named for a treatment without a drug", () => {
    const course = { lengthwise: 1, child: { born: "2012-01-01", sex: "female" }, visits: [] } as const
    expect(startCautions({ course, today: "2025-01-10", treatment: { kind: "orthokeratology" } })).toEqual([])
  })
})

describe("the rules that are off until turned on", () => {
  it("are those whose duty was not verified", () => {
    for (const { duty } of SWITCHED_RULES) {
      expect(duties.duties.find(({ id }) => id === duty)?.evidence_status).not.toBe("verified")
    }
  })
})

// Outside figures: evidence clinical/safety-norms.json, sources ATOM-CRITERIA, PALESTINE-2019 and PARK-2019.
describe("the figures they apply", () => {
  it("are those that were read", () => {
    const apart = norms.iop.find((row) => "asymmetry_flag_mmHg" in row)
    const entry = norms.iop.find((row) => row.source_id === "ATOM-CRITERIA")
    const park = norms.accommodation.children_measured.find(({ study }) => study === "PARK-2019")
    expect(usualComfortLimits.pressureDifferenceMmHg).toBe(apart?.asymmetry_flag_mmHg)
    expect(entry?.rule).toContain(`${usualComfortLimits.pressureMmHg} mmHg`)
    expect(usualComfortLimits.distanceLogMAR).toBe(norms.distance_acuity.trial_entry_BCVA_max_logMAR)
    const [low = 0, high = 0] = park?.range_over_day ?? []
    expect(usualComfortLimits.amplitudeOverDayD).toBeCloseTo(high - low, 9)
  })
})
