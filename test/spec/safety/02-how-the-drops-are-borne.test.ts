import { describe, expect, it } from "vitest"
import { child, drops, visit, yes } from "./child.js"

// 3 mm and 5 D: COOPER-2013, a small study known from a news summary. 0.2 logMAR and grade 2: common practice, no source.
const START = "2025-01-10"
const CHECK = "2025-02-10"
const treatments = [drops(START, 0.05)]
const on = (now: Parameters<typeof visit>[1], before: Parameters<typeof visit>[1]) =>
  child({ treatments, visits: [visit(START, before), visit(CHECK, now)] }).on(CHECK)

describe("Under the drops a child is compared with itself", () => {
  it("the pupil in daylight: 3 mm wider is a concern, for both eyes one", () => {
    const { open } = on({ pupil: { photopic: 6.8 } }, { pupil: { photopic: 3.8 } })
    expect(open).toHaveLength(1)
    expect(open[0]?.what).toMatch(/^Right photopic pupil 6.8 mm .* Left photopic pupil 6.8 mm/)
  })

  it("a pupil measured in dim light is never taken for one in daylight", () => {
    expect(on({ pupil: { photopic: 6.8 } }, { pupil: { mesopic: 3.8 } }).open).toEqual([])
  })

  it("accommodation: under 5 D is a concern, compared within one method only", () => {
    const push = (dioptres: number) => ({ accommodation: { dioptres, method: "push-up" as const } })
    const retinoscopy = { accommodation: { dioptres: 8, method: "retinoscopy" as const } }
    expect(on(push(4.5), push(12)).open[0]?.what).toContain("It was 12.0 D on 2025-01-10 before the drops")
    expect(on(push(4.5), retinoscopy).open[0]?.what).toContain("is not compared: the method is another")
  })

  it("near acuity: 0.2 logMAR worse is a concern", () => {
    expect(on({ acuity: { nearLogMAR: 0.3 } }, { acuity: { nearLogMAR: 0.1 } }).kinds).toEqual([
      "near-acuity",
    ])
  })

  it("a value taken under the drops of an earlier course is no baseline", () => {
    const story = child({
      treatments: [drops("2023-01-10", 0.05, "2024-06-01"), drops(START, 0.05)],
      visits: [
        visit("2023-01-10", { pupil: { photopic: 3.6 } }),
        visit("2024-01-10", { pupil: { photopic: 6 } }),
        visit(CHECK, { pupil: { photopic: 6.7 } }),
      ],
    })
    expect(story.on(CHECK).open[0]?.what).toContain("3.1 mm wider than 3.6 mm on 2023-01-10")
  })
})

describe("Symptoms are graded 0 to 3", () => {
  it("grade 2 is a concern of its own kind, beside the grade before the drops", () => {
    const visits = [
      visit(START, {}, { symptoms: [] }),
      visit(
        CHECK,
        {},
        {
          symptoms: [
            { kind: "light-sensitivity", grade: 2 },
            { kind: "headache", grade: 1 },
          ],
        },
      ),
    ]
    const { open } = child({ treatments, visits }).on(CHECK)
    expect(open.map(({ kind, what }) => `${kind}: ${what}`)).toEqual([
      "light-sensitivity: Light sensitivity grade 2 of 3 on 2025-02-10; before the drops, on 2025-01-10, grade 0.",
    ])
  })
})

describe("Effects outside the eye", () => {
  it("are a concern at any yes (CD-076)", () => {
    const visits = [visit(CHECK, {}, { answers: [yes("systemic-effects", "dry mouth")] })]
    expect(child({ treatments, visits }).on(CHECK).open[0]?.what).toMatch(
      /^Effects outside the eye \(dry mouth\) told on 2025-02-10/,
    )
  })
})

describe("A contraindication that turns up while drops are in use", () => {
  const visits = [visit(CHECK, {}, { answers: [yes("narrow-angle", "van Herick grade 1")] })]

  it("is a concern (CD-058)", () => {
    expect(child({ treatments, visits }).on(CHECK).open[0]).toMatchObject({
      kind: "contraindication",
      what: expect.stringContaining("while atropine 0.05 % is in use"),
    })
  })

  it("is none once the drops are stopped: then it is a caution before they are started again", () => {
    const stopped = child({ treatments: [drops(START, 0.05, "2025-03-01")], visits }).on("2025-03-01")
    expect(stopped.kinds).toEqual([])
    expect(stopped.caution("narrow-angle")?.state).toBe("asked-yes")
  })
})

describe("What the evidence holds in part only is off until the practice turns its duty on", () => {
  const pressure = (right: number, left: number) => ({
    date: CHECK,
    right: { intraocularPressure: { mmHg: right } },
    left: { intraocularPressure: { mmHg: left } },
  })
  const open = (visits: Parameters<typeof child>[0]["visits"], switches = {}) =>
    child({ treatments, ...(visits ? { visits } : {}), switches }).on("2025-12-01").open

  it("pressure from 21 mmHg, or more than 5 mmHg apart (CD-118)", () => {
    expect(open([pressure(21, 20)])).toEqual([])
    expect(open([pressure(21, 20)], { "CD-118": true })[0]?.what).toContain("right 21 mmHg, left 20 mmHg")
    expect(open([pressure(18, 12.5)], { "CD-118": true })[0]?.what).toContain("the eyes differ by 5.5 mmHg")
    expect(open([pressure(20, 15)], { "CD-118": true })).toEqual([])
  })

  it("distance acuity worse than 0.20 logMAR (CD-119)", () => {
    const seen = (distanceLogMAR: number) => [visit(CHECK, { acuity: { distanceLogMAR } })]
    expect(open(seen(0.3))).toEqual([])
    expect(open(seen(0.3), { "CD-119": true })[0]?.what).toContain("0.30 logMAR")
    expect(open(seen(0.2), { "CD-119": true })).toEqual([])
  })

  it("the return to the values before the drops once they are stopped (CD-097)", () => {
    const stopped = {
      treatments: [drops(START, 0.05, "2025-06-01")],
      visits: [visit(START, { pupil: { photopic: 3.8 } }), visit("2025-11-01", { pupil: { photopic: 4.3 } })],
    }
    expect(child(stopped).on("2025-11-01").open).toEqual([])
    const { open } = child({ ...stopped, switches: { "CD-097": true } }).on("2025-11-01")
    expect(open[0]?.what).toContain("has not come back to photopic pupil 3.8 mm")
  })
})
