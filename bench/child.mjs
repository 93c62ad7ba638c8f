import { measurementPlan, randomFrom, virtualChild } from "../dist/engine/index.js"
import { evidence } from "../dist/evidence/index.js"

export { evidence }

const TREATMENTS = [
  { kind: "atropine", concentrationPercent: 0.01 },
  { kind: "atropine", concentrationPercent: 0.025 },
  { kind: "atropine", concentrationPercent: 0.05 },
]

/**
 * Twelve half-yearly visits of both eyes from 8.5 to 10.5 years on, from the first visit one treatment, or three in a
 * row; with old glasses of the two years before if asked.
 */
export function benchCourse({ seed, treatments, oldGlasses = false }) {
  const plan = measurementPlan({
    sex: seed % 2 === 0 ? "female" : "male",
    ancestry: "east-asian",
    startAgeYears: 8.5 + (seed % 5) / 2,
    ...(oldGlasses ? { earlierGlasses: [-24, -12] } : {}),
    start: "2020-03-10",
    latitude: 51.5,
    visitMonths: Array.from({ length: 12 }, (_, i) => 6 * i),
  })
  const months = treatments === 1 ? [0] : [0, 24, 48]
  const dates = months.map((month) => plan.visits[(oldGlasses ? 2 : 0) + month / 6].date)
  const given = (treatments === 1 ? TREATMENTS.slice(2) : TREATMENTS).map((treatment, i) => ({
    ...treatment,
    from: dates[i],
    to: dates[i + 1] ?? null,
  }))
  return virtualChild({ plan: { ...plan, treatments: given }, evidence, random: randomFrom(seed) }).course
}

export const lastVisit = (course) => course.visits.at(-1).date
