import { describe, expect, it } from "vitest"
import norms from "../../evidence/tables/clinical/safety-norms.json" with { type: "json" }
import type { Course, EyeExamination, Symptom, Treatment, Visit } from "../course.js"
import { usualComfortLimits } from "./comfort-limits.js"
import { concerns } from "./concerns.js"

const START = "2025-01-10"
const CHECK = "2025-02-10"
const drops: Treatment = { kind: "atropine", concentrationPercent: 0.05, from: START }

const both = (date: string, eye: EyeExamination, symptoms?: readonly Symptom[]): Visit => ({
  date,
  right: eye,
  left: eye,
  ...(symptoms ? { symptoms } : {}),
})
const course = (visits: readonly Visit[], treatments: readonly Treatment[] = [drops]): Course => ({
  lengthwise: 1,
  child: { born: "2016-05-02", sex: "female" },
  visits,
  treatments,
})
const found = (visits: readonly Visit[], treatments?: readonly Treatment[], today = "2025-03-01") =>
  concerns({ course: course(visits, treatments), today })
const kinds = (...args: Parameters<typeof found>) => found(...args).map(({ kind }) => kind)

const push = (dioptres: number): EyeExamination => ({ accommodation: { dioptres, method: "push-up" } })
const pupil = (photopic: number): EyeExamination => ({ pupil: { photopic } })
const near = (nearLogMAR: number): EyeExamination => ({ acuity: { nearLogMAR } })

describe("symptoms at the latest visit", () => {
  it("are a concern from grade 2, with kind, grade and date", () => {
    const symptoms: Symptom[] = [
      { kind: "light-sensitivity", grade: 2 },
      { kind: "stinging", grade: 1 },
      { kind: "headache", grade: 3 },
    ]
    expect(found([both(CHECK, {}, symptoms)])).toEqual([
      { kind: "symptom", why: "Light sensitivity grade 2 of 3 on 2025-02-10." },
      { kind: "symptom", why: "Headache grade 3 of 3 on 2025-02-10." },
    ])
  })

  it("stand beside what the child had before the drops", () => {
    const headache: Symptom = { kind: "headache", grade: 2 }
    expect(found([both(START, {}, [headache]), both(CHECK, {}, [headache])])[0]?.why).toBe(
      "Headache grade 2 of 3 on 2025-02-10; before the drops, on 2025-01-10, grade 2.",
    )
  })

  it("count without any treatment as well", () => {
    expect(kinds([both(CHECK, {}, [{ kind: "other", grade: 2 }])], [])).toEqual(["symptom"])
  })

  it("of an earlier visit are over", () => {
    expect(kinds([both(START, {}, [{ kind: "redness", grade: 3 }]), both(CHECK, {}, [])])).toEqual([])
  })
})

describe("the photopic pupil", () => {
  it("is a concern when 3 mm wider than before the drops, in each eye", () => {
    const [right, left] = found([both(START, pupil(3.8)), both(CHECK, pupil(6.8))])
    expect(right?.kind).toBe("pupil")
    expect(right?.why).toContain(
      "Right photopic pupil 6.8 mm on 2025-02-10, 3.0 mm wider than 3.8 mm on 2025-01-10",
    )
    expect(left?.why).toContain("Left photopic pupil")
  })

  it("says that the limit is of one small study and that pupils are measured to 0.25 mm", () => {
    const why = found([both(START, pupil(3.8)), both(CHECK, pupil(7))])[0]?.why
    expect(why).toContain("one small study, n = 12, known from a news summary only")
    expect(why).toContain("may differ by 0.25 mm")
  })

  it("is none when it widened less, which is what the drops do", () => {
    expect(kinds([both(START, pupil(3.8)), both(CHECK, pupil(6.7))])).toEqual([])
  })

  it("is not judged without a baseline", () => {
    expect(kinds([both(CHECK, pupil(8))])).toEqual([])
  })

  it("is compared with the last measurement before the drops, also when a later visit measured none", () => {
    const visits = [
      both("2024-06-01", pupil(5)),
      both("2024-12-01", pupil(3.5)),
      both(START, {}),
      both(CHECK, pupil(6.6)),
    ]
    expect(found(visits)[0]?.why).toContain("3.5 mm on 2024-12-01")
  })

  it("is not compared with a visit under the drops", () => {
    expect(kinds([both("2025-01-20", pupil(3.5)), both(CHECK, pupil(7))])).toEqual([])
  })

  it("is not looked at in a child never on atropine", () => {
    const lenses: Treatment = { kind: "dual-focus-lens", from: START }
    expect(kinds([both(START, pupil(3.5)), both(CHECK, pupil(7))], [lenses])).toEqual([])
  })
})

describe("the amplitude of accommodation", () => {
  it("is a concern below 5 D, beside the baseline by the same method", () => {
    const why = found([both(START, push(12)), both(CHECK, push(4.5))])[0]?.why
    expect(why).toContain("Right amplitude of accommodation 4.5 D on 2025-02-10 by push-up, below the 5 D")
    expect(why).toContain("It was 12.0 D on 2025-01-10 before the drops, by the same method.")
  })

  it("is none at 5 D", () => {
    expect(kinds([both(START, push(12)), both(CHECK, push(5))])).toEqual([])
  })

  it("is never compared between methods", () => {
    const visits = [
      both(START, { accommodation: { dioptres: 8, method: "retinoscopy" } }),
      both(CHECK, push(4.5)),
    ]
    const why = found(visits)[0]?.why
    expect(why).toContain("is not compared")
    expect(why).not.toContain("8.0 D")
  })

  it("is not compared when no method is stated", () => {
    const visits = [
      both(START, { accommodation: { dioptres: 8 } }),
      both(CHECK, { accommodation: { dioptres: 4 } }),
    ]
    expect(found(visits)[0]?.why).toContain("is not compared")
  })

  it("says so when there is no baseline", () => {
    expect(found([both(CHECK, push(4))])[0]?.why).toContain("It was not measured before the drops.")
  })
})

describe("near acuity", () => {
  it("is a concern when 0.2 logMAR worse than before the drops", () => {
    const [right] = found([both(START, near(0.1)), both(CHECK, near(0.3))])
    expect(right?.kind).toBe("near-acuity")
    expect(right?.why).toContain("0.30 logMAR on 2025-02-10, 0.20 worse than 0.10 on 2025-01-10")
    expect(right?.why).toContain("common practice, no source")
  })

  it("is none when 0.18 worse", () => {
    expect(kinds([both(START, near(0.1)), both(CHECK, near(0.28))])).toEqual([])
  })
})

describe("which visits count", () => {
  const visits = [both(START, pupil(3.8)), both(CHECK, pupil(7)), both("2025-04-01", pupil(4))]

  it("only those up to the day of the question", () => {
    expect(kinds(visits)).toEqual(["pupil", "pupil"])
    expect(kinds(visits, [drops], "2025-04-01")).toEqual([])
  })

  it("none when the child was never seen", () => {
    expect(
      kinds([{ ...both("2024-01-01", pupil(8), [{ kind: "other", grade: 3 }]), from: "referring practice" }]),
    ).toEqual([])
  })

  it("none of the comparisons on the day of the start itself", () => {
    expect(kinds([both("2024-10-01", pupil(3)), both(START, pupil(7))], [drops], START)).toEqual([])
  })

  it("the baseline before a second course is the last one off the drops", () => {
    const treatments = [
      { ...drops, to: "2025-03-01" },
      { ...drops, from: "2026-01-10" },
    ]
    const later = [both(START, pupil(3)), both("2026-01-10", pupil(4)), both("2026-02-10", pupil(6.5))]
    expect(kinds(later, treatments, "2026-03-01")).toEqual([])
  })
})

// Outside figures: evidence clinical/safety-norms.json, sources COOPER-2013 and HVIDHANSEN-2023.
describe("the limits of comfort", () => {
  it("are those of the evidence", () => {
    const { residual_amplitude_min_D, pupil_difference_max_mm } = norms.comfort_limits_on_atropine
    expect(usualComfortLimits.residualAmplitudeD).toBe(residual_amplitude_min_D)
    expect(usualComfortLimits.pupilWideningMm).toBe(pupil_difference_max_mm)
    expect(usualComfortLimits.pupilRetestMm).toBe(
      Math.max(...norms.pupil.test_retest.photopic.loa.map(Math.abs)),
    )
  })
})
