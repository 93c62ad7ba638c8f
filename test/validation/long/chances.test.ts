import { describe, expect, it } from "vitest"
import { addMonths } from "../../../src/engine/calendar.js"
import { study } from "../../../src/engine/growth/study.js"
import { chances } from "../../../src/engine/response/chances.js"
import { finding, type Weighing, weighing } from "../../../src/engine/response/finding.js"
import { defaultSettings } from "../../../src/engine/settings.js"
import { measurementPlan } from "../../../src/engine/simulate/plan.js"
import { randomFrom } from "../../../src/engine/simulate/random.js"
import { virtualChild } from "../../../src/engine/simulate/virtual-child.js"
import { evidence } from "../../../src/evidence/index.js"

/** Of the children told a chance of 40 %, about 40 % get an answer by that review. */
const CHILDREN = 1500
const MONTHS = [0, 6, 12, 18, 24]

interface Forecasted {
  readonly said: number
  readonly answered: boolean
}

function forecasted(works: boolean): Forecasted[] {
  const out: Forecasted[] = []
  for (let i = 0; i < CHILDREN; i++) {
    const random = randomFrom(120_000 + i)
    const key = "atropine 0.05 %"
    const plan = measurementPlan({
      sex: random.pick(["female", "male"] as const),
      ancestry: "east-asian",
      startAgeYears: 6.5 + 4 * random.uniform(),
      treatment: { kind: "atropine", concentrationPercent: 0.05 },
      visitMonths: MONTHS,
      ...(random.uniform() < 0.5 ? { earlierGlasses: [-24, -12] } : {}),
      ...(random.uniform() < 0.5 ? { earlierLengths: [-12] } : {}),
    })
    const { course } = virtualChild({
      plan,
      evidence,
      random,
      fixed: works ? {} : { withheld: { [key]: 0 } },
    })
    const start = plan.treatments?.[0]?.from ?? ""
    const seenMonth = random.pick([0, 6, 12])
    const at = (month: number) => addMonths(start, month)
    const known = study({ course, asOf: at(seenMonth), evidence, settings: defaultSettings })
    const weighed = weighing(known) as Weighing
    if (finding(known, weighed).state !== "cannot-tell-yet") continue
    const coming = MONTHS.filter((month) => month > seenMonth)
    const said = chances({
      study: known,
      weighed,
      reviews: coming.map((month) => ({ step: "review", date: at(month) })),
      plannedStop: null,
    })
    let answered = false
    coming.forEach((month, r) => {
      const later = study({ course, asOf: at(month), evidence, settings: defaultSettings })
      answered ||= finding(later, weighing(later)).state !== "cannot-tell-yet"
      const chance = said[r]
      if (chance) out.push({ said: works ? chance.ifItWorks : chance.ifNot, answered })
    })
  }
  return out
}

const BANDS = [0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.8, 1.001]

describe("chances of an answer hold", () => {
  it.each([
    ["if it works", true],
    ["if it does nothing", false],
  ] as const)("%s", (_, works) => {
    const all = forecasted(works)
    let bands = 0
    BANDS.slice(0, -1).forEach((low, b) => {
      const band = all.filter(({ said }) => said >= low && said < (BANDS[b + 1] as number))
      if (band.length < 150) return
      bands++
      const said = band.reduce((sum, one) => sum + one.said, 0) / band.length
      const answered = band.filter((one) => one.answered).length / band.length
      const noise = 2.5 * Math.sqrt((said * (1 - said)) / band.length)
      expect(Math.abs(answered - said), `told ${said.toFixed(2)}, got ${answered.toFixed(2)}`).toBeLessThan(
        0.04 + noise,
      )
    })
    expect(bands).toBeGreaterThanOrEqual(4)
  })
})
