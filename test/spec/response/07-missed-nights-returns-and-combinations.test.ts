import { describe, expect, it } from "vitest"
import type { Treatment } from "../../../src/engine/course.js"
import { asked, drops, halfYearly, lengths, START } from "./child.js"

const before = [23, 23.27, 23.53, 23.77, 24]
const bottle = (opened: string, beyondUse: string) => ({ opened, beyondUse, concentrationPercent: 0.05 })

describe("Nights without a bottle in date", () => {
  const visits = halfYearly("2022-06-15", [...before, 24.24, 24.46, 24.67, 24.86])
  const onDrops = (...supplies: ReturnType<typeof bottle>[]) =>
    asked({ visits, treatments: [drops(0.05)], ...(supplies.length > 0 ? { supplies } : {}) }).finding

  it("are named when they are many: six months of bottles in two years", () => {
    expect(onDrops(bottle("2024-06-15", "2024-12-15")).reasons[0]).toBe(
      "only 25 % of nights had a bottle in date (proportion of days covered since the start; below 80 % counts as " +
        "poor in one trial's rules): missed nights may explain what is seen",
    )
  })

  it("are not named when the record is full, nor when there is no record", () => {
    expect(onDrops(bottle("2024-06-15", "2026-07-15")).reasons.join()).not.toMatch(/nights/)
    expect(onDrops().reasons.join()).not.toMatch(/nights/)
  })

  it("speak against a verdict on the drops: not slowed with every night covered, cannot tell with a quarter", () => {
    expect(onDrops(bottle("2024-06-15", "2026-07-15")).state).toBe("not-slowed")
    expect(onDrops(bottle("2024-06-15", "2024-12-15")).state).toBe("cannot-tell-yet")
  })

  // Faster than untreated for two years: against the drops whatever is made of the nights.
  const racing = halfYearly("2022-06-15", [...before, 24.29, 24.57, 24.84, 25.1])
  const threeQuarters = [bottle("2024-06-15", "2025-12-15")]

  it("and even figures against the drops are then no verdict on them", () => {
    const { finding } = asked({ visits: racing, treatments: [drops(0.05)], supplies: threeQuarters })
    expect(finding.likelihoodRatio).toBeLessThan(finding.lower)
    expect(finding).toMatchObject({ state: "cannot-tell-yet", lean: "not-slowed", earliestAnswer: null })
    expect(finding.reasons.at(-1)).toMatch(/no verdict on the drops$/)
  })

  it("while the growth itself is told as ever", () => {
    const { growth } = asked({ visits: racing, treatments: [drops(0.05)], supplies: threeQuarters })
    expect(growth.state).toBe("faster")
  })

  it("80 % and more is not poor", () => {
    const { finding } = asked({
      visits: racing,
      treatments: [drops(0.05)],
      supplies: [bottle("2024-06-15", "2026-02-15")],
    })
    expect(finding.state).toBe("not-slowed")
    expect(finding.reasons.join()).not.toMatch(/nights/)
  })
})

describe("Nights that the family told of", () => {
  const visits = halfYearly("2022-06-15", [...before, 24.24, 24.46, 24.67, 24.86])
  const told = (nights: number, from = "2024-06-15", to = "2026-06-14") =>
    asked({ visits, treatments: [drops(0.05)], missedNights: [{ from, to, nights }] })
  const withhold = (answer: ReturnType<typeof asked>) => answer.beliefs.at(-1)?.posterior.mean as number

  it("count against the coverage, though every bottle was fetched", () => {
    expect(told(365).finding.reasons[0]).toMatch(
      /^only 50 % of nights had a bottle in date and were not reported missed/,
    )
  })

  it("are spread evenly over their own span alone", () => {
    expect(told(30, "2026-05-15", "2026-06-13").finding.reasons.join()).not.toMatch(/only/)
    expect(told(30, "2026-05-15", "2026-06-13").finding.likelihoodRatio).toBeGreaterThan(
      told(0).finding.likelihoodRatio as number,
    )
  })

  it("every one of them missed: the drops were never tested, and nothing is learned of them", () => {
    const never = told(730)
    expect(never.finding.likelihoodRatio).toBeCloseTo(1, 9)
    expect(withhold(never)).toBeCloseTo(never.beliefs.at(-1)?.prior.mean as number, 9)
  })
})

describe("A taper", () => {
  const visits = halfYearly("2022-06-15", [...before, 24.11, 24.21, 24.3, 24.38])
  const tapered = (nightsPerWeek?: number) =>
    asked({ visits, treatments: [{ ...drops(0.05), ...(nightsPerWeek ? { nightsPerWeek } : {}) }] })

  it("of seven nights is no taper", () => {
    expect(tapered(7)).toEqual(tapered())
  })

  it("on fewer nights is expected to withhold less, so the same slow growth says more for the drops", () => {
    const share = (n: number) => tapered(n).beliefs.at(-1)?.posterior.mean as number
    expect(share(3)).toBeGreaterThan(share(7))
  })

  it("is not poor coverage: a night that was not meant to have a drop is not missed", () => {
    expect(tapered(3).finding.reasons.join()).not.toMatch(/nights/)
  })
})

describe("One eye treated", () => {
  // The right eye slows down to half, the left eye grows on.
  const one = [
    ...halfYearly("2022-06-15", before),
    lengths("2024-12-15", 24.22, 24.2),
    lengths("2025-06-15", 24.43, 24.3),
    lengths("2025-12-15", 24.62, 24.39),
    lengths("2026-06-15", 24.8, 24.47),
  ]
  const right: Treatment = { ...drops(0.05), eye: "right" }
  const answer = asked({ visits: one, treatments: [right] })

  it("is named, and the other eye shows the pace of the child", () => {
    expect(answer.finding).toMatchObject({
      state: "slowed",
      treatment: "atropine 0.05 % in the right eye",
      reasons: ["asked of the right eye, the only one treated; the left eye shows the child's own pace"],
    })
  })

  it("so the answer is surer than from both eyes slowed alike", () => {
    const both = one.map((visit, i) => (i < 5 ? visit : { ...visit, left: { ...visit.right } }))
    const alike = asked({ visits: both, treatments: [drops(0.05)] })
    expect(answer.finding.likelihoodRatio).toBeGreaterThan(alike.finding.likelihoodRatio as number)
  })

  it("growth is that of the eye that grows faster, never a mean that would hide it", () => {
    expect(answer.growth).toMatchObject({
      eye: "left",
      state: "as-untreated",
      reasons: ["the eyes are not treated alike: this is the left eye, the one that grows faster"],
    })
    expect(answer.growth.mmPerYear).toBeCloseTo(answer.eyes.left.rate?.mmPerYear as number, 9)
  })

  it("two eyes on two strengths: the one begun last is asked about, and the other is named", () => {
    const left: Treatment = { ...drops(0.01, "2025-06-15"), eye: "left" }
    expect(asked({ visits: one, treatments: [right, left] }).finding).toMatchObject({
      treatment: "atropine 0.01 % in the left eye",
      reasons: expect.arrayContaining([
        "asked of the left eye, whose treatment began last; the right eye has atropine 0.05 %",
      ]),
    })
  })
})

describe("A treatment that was stopped and came back", () => {
  // Drops for a year, a year without, drops again: slow, fast, slow.
  const visits = halfYearly("2024-06-15", [24, 24.11, 24.21, 24.4, 24.58, 24.66, 24.74])
  const treatments = [drops(0.05, "2024-06-15", "2025-06-15"), drops(0.05, "2026-06-15")]
  const back = asked({ visits, treatments })

  it("is one treatment, asked about over both stretches", () => {
    expect(back.finding.treatment).toBe("atropine 0.05 %")
    expect(back.beliefs).toHaveLength(2)
  })

  it("and growth that falls, rises and falls with it speaks louder than one fall", () => {
    const once = asked({ visits: visits.slice(0, 3), treatments: [drops(0.05)] })
    expect(back.finding.likelihoodRatio).toBeGreaterThan(1.5 * (once.finding.likelihoodRatio as number))
  })

  it("growth is asked about since it came back", () => {
    expect(back.growth.from).toBe("2026-06-15")
  })

  it("another strength in between is another treatment, and the last one is asked about", () => {
    const changed = [...treatments.slice(0, 1), drops(0.01, "2026-06-15")]
    const answer = asked({ visits, treatments: changed })
    expect(answer.finding.treatment).toBe("atropine 0.01 %")
    expect(answer.beliefs.map(({ what }) => what)).toEqual([
      expect.stringMatching(/^pace/),
      expect.stringMatching(/0\.05 %$/),
      expect.stringMatching(/0\.01 %$/),
    ])
  })

  it("and when the first strength comes back after another, it is asked about again", () => {
    const there = [
      drops(0.05, "2024-06-15", "2025-06-15"),
      drops(0.01, "2025-06-15", "2026-06-15"),
      drops(0.05, "2026-06-15"),
    ]
    expect(asked({ visits, treatments: there }).finding.treatment).toBe("atropine 0.05 %")
  })
})

describe("Two treatments at once are never added up", () => {
  const visits = halfYearly("2022-06-15", [...before, 24.11, 24.21])
  const together = (...treatments: Treatment[]) => {
    const { beliefs, finding } = asked({ visits, treatments })
    return { withheld: beliefs.at(-1)?.prior.mean, finding }
  }
  const glasses: Treatment = { kind: "lenslet-spectacles", from: START }

  it("drops with glasses are expected to withhold what the better of the two does alone", () => {
    const [dropsAlone, glassesAlone] = [together(drops(0.05)), together(glasses)]
    const both = together(drops(0.05), glasses)
    expect(both.withheld).toBe(Math.max(dropsAlone.withheld as number, glassesAlone.withheld as number))
  })

  it("and it is said that no trial of both was read", () => {
    expect(together(drops(0.05), glasses).finding).toMatchObject({
      treatment: "atropine 0.05 % with lenslet spectacles",
      reasons: expect.arrayContaining([expect.stringMatching(/never a sum$/)]),
    })
  })

  it("where a trial of both exists it is used: orthokeratology with 0.01 %", () => {
    const { withheld, finding } = together(drops(0.01), { kind: "orthokeratology", from: START })
    const alone = [together(drops(0.01)), together({ kind: "orthokeratology", from: START })]
    expect(withheld).not.toBe(Math.max(...alone.map((one) => one.withheld as number)))
    expect(finding.reasons.join()).not.toMatch(/sum/)
  })
})
