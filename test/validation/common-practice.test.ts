import { describe, expect, it } from "vitest"
import { addMonths } from "../../src/engine/calendar.js"
import { commandLine, json } from "../cli/fake-io.js"

/** What people who run such a service say of it, through the command line: common practice, no source. */

const asked = async (words: string, file?: object) =>
  json(await commandLine([...words.split(" "), "--json"], file ? { files: { "child.json": file } } : {}))

const start = "2023-01-10"
const child = { born: "2015-03-14", sex: "female", ancestry: "european" }
const drops = { from: start, kind: "atropine", concentrationPercent: 0.05 }
const consents = [{ date: start, covers: { kind: "atropine", concentrationPercent: 0.05 } }]

interface Duty {
  readonly kind: string
  readonly step: string
  readonly due: string
  readonly state: string
}
const owed = async (course: object, asOf: string): Promise<readonly Duty[]> =>
  (await asked(`due child.json --as-of ${asOf}`, { lengthwise: 1, child, consents, visits: [], ...course }))
    .duties

/** Everything a step may ask for on drops. */
const everything = {
  axialLength: { mm: 24.1 },
  refraction: { sphere: -2, cycloplegic: true },
  pupil: { photopic: 3.8 },
  accommodation: { dioptres: 12, method: "push-up" },
  acuity: { nearLogMAR: 0 },
}
const seen = (...dates: string[]) =>
  dates.map((date) => ({ date, right: everything, left: everything, symptoms: [] }))
const months = (...counts: number[]) => counts.map((count) => addMonths(start, count))

describe("drops (common practice, no source)", () => {
  it("a 1 % stock diluted 1 : 100 gives 0.01 %", async () => {
    const order = await asked("order --concentration 0.01 --stock 1 --bottles 1 --volume-ml 100")
    expect(order.steps).toMatchObject([{ takeMl: 1, addDiluentMl: 99, givesPercent: 0.01 }])
    expect(order.checkPercent).toBeCloseTo(0.01, 9)
  })

  it.each([
    [720, 24],
    [730, 25],
  ])("a bottle thrown away after a month, two years (%i nights) need %i bottles", async (nights, bottles) => {
    const words = `order --concentration 0.05 --stock 1 --bottles 1 --volume-ml 5 --nights ${nights}`
    const { bottlesNeeded } = await asked(words)
    expect(bottlesNeeded).toMatchObject({ bottles: { low: bottles, high: bottles }, binding: "beyond-use" })
  })
})

describe("the course (common practice, no source)", () => {
  const stopped = { treatments: [{ ...drops, to: addMonths(start, 24) }] }

  it("is seven visits: baseline, 1, 6, 12, 18, 24 months, and 6 months after the stop", async () => {
    const visits = seen(...months(0, 1, 6, 12, 18, 24))
    const examinations = (await owed({ ...stopped, visits }, addMonths(start, 24))).filter(
      ({ kind }) => kind === "examination",
    )
    expect(examinations.map(({ due }) => due)).toEqual(months(0, 1, 6, 12, 18, 24, 30))
    expect(examinations.map(({ state }) => state)).toEqual([...Array(6).fill("done"), "upcoming"])
  })

  it("goes on for one more year where growth returns after the stop", async () => {
    const again = { ...drops, from: addMonths(start, 30) }
    const visits = seen(...months(0, 1, 6, 12, 18, 24, 30))
    const ahead = (await owed({ treatments: [...stopped.treatments, again], visits }, again.from)).filter(
      ({ kind, state }) => state === "upcoming" && kind !== "bottle",
    )
    expect(ahead.map(({ step, due }) => [step, due])).toEqual([
      ["1-month check", addMonths(start, 31)],
      ["6-month review", addMonths(start, 36)],
      ["12-month review", addMonths(start, 42)],
      ["decision to stop after 12 more months", addMonths(start, 42)],
    ])
  })
})

describe("figures (common practice, no source)", () => {
  it("from -2.00 to -2.50 D is a half dioptre of progression", async () => {
    const [before, after] = [await asked("refraction -2.00"), await asked("refraction -2.50")]
    expect(after.sphericalEquivalent - before.sphericalEquivalent).toBe(-0.5)
  })

  it("a child who stands still or goes back by a hair is a result, not an error", async () => {
    const eye = (mm: number) => ({
      axialLength: { mm, readings: 5, method: "optical-biometry", device: "A" },
    })
    const visit = (date: string, right: number, left: number) => ({
      date,
      right: eye(right),
      left: eye(left),
    })
    const course = {
      lengthwise: 1,
      child,
      practice: { latitude: 51.5 },
      visits: [
        { ...visit(start, 23.62, 23.6), right: { ...eye(23.62), refraction: { sphere: -2 } } },
        visit(addMonths(start, 6), 23.61, 23.6),
        visit(addMonths(start, 12), 23.6, 23.6),
      ],
      treatments: [drops],
    }
    const { growth, eyes, checks } = await asked(`assess child.json --as-of ${addMonths(start, 12)}`, course)
    expect(checks).toEqual([])
    expect(growth.state).toBe("near-normal")
    expect(eyes.right.rate.mmPerYear).toBeLessThan(0)
    expect(eyes.right.rate.high95).toBeGreaterThan(0)
  })
})
