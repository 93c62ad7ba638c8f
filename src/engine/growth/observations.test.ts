import { describe, expect, it } from "vitest"
import { growthParameters as parameters } from "../../evidence/index.js"
import type { AxialLength, Course, Refraction, Treatment, Visit } from "../course.js"
import { lengthSdMm, observations } from "./observations.js"

const { values } = parameters
const length = (mm: number, more: Partial<AxialLength> = {}) => ({ axialLength: { mm, ...more } })
const glasses = (sphere: number, more: Partial<Refraction> = {}) => ({ refraction: { sphere, ...more } })
const seen = (visits: readonly Visit[], treatments: readonly Treatment[] = [], asOf = "2026-01-01") => {
  const course: Course = { lengthwise: 1, child: { born: "2016-01-01", sex: "male" }, visits, treatments }
  return observations({ course, asOf, parameters })
}
/** Which instrument each length is told by: the same letter, the same instrument; "-" the first. */
const instruments = (names: readonly (string | undefined)[]) => {
  const visits = names.map((device, i) => ({ date: `2024-0${i + 1}-01`, right: length(24, { device }) }))
  return seen(visits)
    .map(({ group }) => (group === -1 ? "-" : String(group)))
    .join(" ")
}
const started: Treatment = { from: "2024-06-01", kind: "atropine", concentrationPercent: 0.05 }

describe("what the growth model may learn from", () => {
  it("leaves out glasses from after the start of treatment and keeps those of its first day", () => {
    const visits = ["2024-05-31", "2024-06-01", "2024-06-02"].map((date) => ({ date, right: glasses(-2) }))
    expect(seen(visits, [started]).map(({ visit }) => visit)).toEqual([0, 1])
  })

  it("keeps lengths from after the start of treatment", () => {
    expect(seen([{ date: "2025-01-01", right: length(24) }], [started])).toHaveLength(1)
  })

  it("does not take an entry of no treatment for a start", () => {
    const none: Treatment = { from: "2023-01-01", kind: "none" }
    expect(seen([{ date: "2024-05-31", right: glasses(-2) }], [none])).toHaveLength(1)
  })

  it("leaves out what was measured after the day asked about", () => {
    expect(seen([{ date: "2025-01-02", right: length(24) }], [], "2025-01-01")).toEqual([])
  })

  it("leaves out what was measured before 6 and after 18 years", () => {
    const visits = ["2021-12-30", "2034-01-02"].map((date) => ({ date, right: length(24) }))
    expect(seen(visits, [], "2036-01-01")).toEqual([])
  })

  it("comes in order of age whatever the order of the file", () => {
    const visits = ["2025-01-01", "2023-01-01", "2024-01-01"].map((date) => ({ date, left: length(24) }))
    expect(seen(visits).map(({ visit }) => visit)).toEqual([1, 2, 0])
  })
})

describe("instruments", () => {
  it.each([
    { names: ["A", "A"], told: "- -", why: "the same name is the same instrument" },
    { names: ["A", "B", "A"], told: "- 1 -", why: "another name is another instrument" },
    { names: ["A", "B", "C"], told: "- 1 2", why: "each further name has an offset of its own" },
    { names: ["A", undefined], told: "- -", why: "one without a name is the one used before" },
    {
      names: ["A", "B", "A", undefined],
      told: "- 1 - -",
      why: "the one used before, not the one named last",
    },
    { names: [undefined, "A", "B"], told: "- - 1", why: "the first name given to it names a nameless one" },
  ])("$names: $why", ({ names, told }) => expect(instruments(names)).toBe(told))

  it("take the earliest date as the first, whatever the order of the file", () => {
    const visits = [
      { date: "2025-01-01", right: length(24, { device: "B" }) },
      { date: "2024-01-01", right: length(24, { device: "A" }) },
    ]
    expect(seen(visits).map(({ group }) => group)).toEqual([-1, 1])
  })

  it("are two when ultrasound is followed by optical biometry, named or not", () => {
    const visits = [
      { date: "2024-01-01", right: length(24, { method: "ultrasound" }) },
      { date: "2025-01-01", right: length(24, { method: "optical-biometry" }) },
    ]
    expect(seen(visits).map(({ group }) => group)).toEqual([-1, 1])
  })

  it("other than the first carry the variance of a change of instrument", () => {
    const visits = ["A", "B"].map((device, i) => ({
      date: `2024-0${i + 1}-01`,
      right: length(24, { device }),
    }))
    expect(seen(visits).map(({ groupVariance }) => groupVariance)).toEqual([
      0,
      values.deviceChangeSdMm.value ** 2,
    ])
  })
})

describe("noise of a length", () => {
  it("is the session's and the reading's, the latter less the more readings", () => {
    const variance = (readings: number) => lengthSdMm({ readings }, parameters) ** 2
    expect(variance(1) - variance(4)).toBeCloseTo(0.75 * values.opticalReadingSdMm.value ** 2, 12)
    expect(variance(1e9)).toBeCloseTo(values.opticalSessionSdMm.value ** 2, 9)
  })

  it("takes the usual number of readings where none is stated", () => {
    expect(lengthSdMm({}, parameters)).toBe(
      lengthSdMm({ readings: values.opticalUsualReadings.value }, parameters),
    )
  })

  it("of ultrasound does not fall with readings", () => {
    const sd = (readings: number) => lengthSdMm({ method: "ultrasound", readings }, parameters)
    expect(sd(20)).toBe(sd(1))
    expect(sd(1)).toBe(values.ultrasoundSessionSdMm.value)
  })
})

describe("noise and offset of a refraction", () => {
  const way = (refraction: Omit<Refraction, "sphere">) => {
    const [figure] = seen([{ date: "2024-01-01", right: glasses(-2, refraction) }])
    const { value, ownVariance = 0, sharedVariance = 0, group, groupVariance } = figure ?? {}
    return { value, sd: Math.sqrt(ownVariance + sharedVariance), grouped: group !== -1, groupVariance }
  }

  it("counts the spherical equivalent", () => {
    const right = {
      refraction: { sphere: -2, cylinder: -0.5, axis: 90, method: "subjective", cycloplegic: true },
    } as const
    expect(seen([{ date: "2024-01-01", right }])[0]?.value).toBe(-2.25)
  })

  it.each(["autorefraction", "subjective", "retinoscopy"] as const)(
    "has no offset with cycloplegia: %s",
    (method) => {
      expect(way({ method, cycloplegic: true })).toMatchObject({
        value: -2,
        grouped: false,
        groupVariance: 0,
      })
    },
  )

  it("of autorefraction without cycloplegia is freed of its mean bias, with the bias of the child left open", () => {
    const { value, groupVariance, grouped } = way({ method: "autorefraction" })
    expect(value).toBeCloseTo(-2 - values.dryAutorefractionBiasD.value, 12)
    expect(grouped).toBe(true)
    expect(groupVariance).toBe((values.dryAutorefractionBiasD.sd ?? 0) ** 2)
  })

  it("of a method not stated is taken as subjective without cycloplegia", () => {
    expect(way({})).toEqual(way({ method: "subjective", cycloplegic: false }))
    expect(way({}).groupVariance).toBe(values.methodChangeSdD.value ** 2)
  })

  it("keeps offsets of different ways apart", () => {
    const visits = [glasses(-2, { method: "autorefraction" }), glasses(-2, { method: "subjective" })].map(
      (right, i) => ({ date: `2024-0${i + 1}-01`, right }),
    )
    const [dry, subjective] = seen(visits)
    expect(dry?.group).not.toBe(subjective?.group)
  })

  it("is larger without cycloplegia", () => {
    expect(way({ method: "autorefraction" }).sd).toBeGreaterThan(
      way({ method: "autorefraction", cycloplegic: true }).sd,
    )
  })

  it("is shared with the other eye of the visit by the stated share of its variance", () => {
    const [right, left] = seen([{ date: "2024-01-01", right: glasses(-2), left: glasses(-1) }])
    expect(right?.sharedVariance).toBe(left?.sharedVariance)
    expect(right?.sharedVariance).toBeCloseTo(
      values.refractionSharedShare.value * values.subjectiveSdD.value ** 2,
      12,
    )
  })
})
