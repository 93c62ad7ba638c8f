import { describe, expect, it } from "vitest"
import { steadyCourse, studyOf } from "../../../test/steady-child.js"
import { evidence } from "../../evidence/index.js"
import type { Course, Treatment, Visit } from "../course.js"
import { defaultSettings } from "../settings.js"
import { refusal } from "./study.js"

const course = steadyCourse({ months: [0, 6, 12], shareAfter: 1 })
const on = (asOf: string) => refusal({ course, asOf, evidence, settings: defaultSettings })

describe("ages of the growth model", () => {
  it.each(["2021-01-01", "2036-01-01"])(
    "refuse a child of another age, with the ages and the child's own: %s",
    (asOf) => {
      expect(on(asOf)).toMatch(
        /covers children of 6 to 18 years; this child is (4|19) years and (5|6) months old/,
      )
    },
  )

  it.each(["2022-07-01", "2034-05-01"])("take a child of 6 to 18: %s", (asOf) => expect(on(asOf)).toBeNull())
})

describe("myopic or not", () => {
  const refracted = (date: string, sphere: number): Visit => ({
    date,
    right: { refraction: { sphere, cycloplegic: true, method: "autorefraction" } },
  })
  const drops: Treatment = { from: "2024-06-15", kind: "atropine", concentrationPercent: 0.05 }
  const of = (visits: readonly Visit[], treatments: readonly Treatment[] = [drops]) =>
    studyOf({ ...course, visits, treatments } satisfies Course, "2025-12-15")

  it("is not known without a refraction, and growth is set against natural growth", () => {
    const study = of([{ date: "2024-06-15", right: { axialLength: { mm: 24 } } }])
    expect(study.myopia).toBe("unknown")
    expect(study.expected).toBe(study.natural)
  })

  it("is told by the last refraction before treatment, not by one the drug has changed", () => {
    expect(of([refracted("2024-06-15", -0.5), refracted("2025-06-15", 0.25)]).myopia).toBe("myopic")
    expect(of([refracted("2024-06-15", 0.25), refracted("2025-06-15", -0.75)]).myopia).toBe("not-myopic")
  })

  it("is told by the last one when there is none from before treatment", () => {
    expect(of([refracted("2025-06-15", -0.75)]).myopia).toBe("myopic")
  })

  it("takes no account of an entry of no treatment", () => {
    const visits = [refracted("2023-01-01", 0.25), refracted("2024-06-15", -0.75)]
    expect(of(visits, [{ from: "2023-06-01", kind: "none" }, drops]).myopia).toBe("myopic")
  })

  it("sets a child who is not myopic against emmetropic growth", () => {
    const study = of([refracted("2024-06-15", 0.5)])
    expect(study.expected).toBe(study.emmetropic)
  })

  it("needs one eye only", () => {
    const visit = refracted("2024-06-15", 0.25)
    const left = { refraction: { sphere: -0.5, cycloplegic: true } } as const
    expect(of([{ ...visit, left }]).myopia).toBe("myopic")
  })
})

describe("the treatment asked about", () => {
  const drops = (from: string, to: string | null, concentrationPercent: number): Treatment => ({
    kind: "atropine",
    from,
    to,
    concentrationPercent,
  })
  const twoStrengths = {
    ...course,
    treatments: [drops("2024-06-15", "2024-12-15", 0.01), drops("2024-12-15", null, 0.05)],
  }

  it("is the last that has begun", () => {
    expect(studyOf(twoStrengths, "2025-06-15").tested?.label).toBe("atropine 0.05 %")
  })

  it("is not one that is only planned", () => {
    expect(studyOf(twoStrengths, "2024-12-01").tested?.label).toBe("atropine 0.01 %")
  })

  it("is none before any has begun", () => expect(studyOf(twoStrengths, "2024-06-01").tested).toBeNull())
})
