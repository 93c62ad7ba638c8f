import { beforeAll, describe, expect, it } from "vitest"
import { said } from "../../test/spec/before-myopia/child.js"
import { beforeMyopiaEvidence } from "../evidence/before-myopia.js"
import { evidence } from "../evidence/index.js"
import { sourceById } from "../evidence/sources.js"
import * as treatmentEvidence from "../evidence/treatments.js"
import { learnEveryLanguage } from "../words/index.js"
import { assess } from "./assess.js"
import { beforeMyopiaInWords } from "./before-myopia/in-words.js"
import { isSaidOfEvidence } from "./before-myopia/said-evidence.js"
import { choices } from "./choices/choices.js"
import { choicesTable } from "./choices/choices-table.js"
import { decisionPlan } from "./choices/decision-plan.js"
import { CONFIDENCE } from "./choices/evidence-strength.js"
import type { Course } from "./course.js"
import { forecast } from "./forecast.js"
import { refractionSummary } from "./optics/refraction-summary.js"
import { noRules } from "./practice-rules.js"
import { duties } from "./protocol/duties.js"
import { standardProtocol } from "./protocol/standard.js"
import { ownReference } from "./reference/own-table.js"
import { AGAINST } from "./response/after-stop.js"
import { inLanguage, isSaidIn } from "./say.js"
import { defaultSettings } from "./settings.js"
import { demoCourses } from "./simulate/demo.js"
import { choicesWhy } from "./why/choices.js"
import { dutiesWhy } from "./why/duties.js"
import { findingWhy } from "./why/finding.js"
import { forecastWhy } from "./why/forecast.js"
import { growthWhy } from "./why/growth.js"
import { orderWhy } from "./why/order.js"
import { eyesPositionWhy } from "./why/position.js"
import { refractionWhy } from "./why/refraction.js"

beforeAll(learnEveryLanguage)

const asOf = "2026-11-25"
const protocol = standardProtocol

/** Everything the engine answers of one child, with the whys. Sources and tables stand as published. */
function answersOf(course: Course) {
  const question = { course, asOf, evidence, settings: defaultSettings }
  const assessment = assess(question)
  const { beliefs } = assessment
  const told = choices({ ...question, treatmentEvidence, rules: noRules, withStrong: true })
  const ahead = forecast({ ...question, toAgeYears: 18 })
  const assessed = { ...question, assessment, sourceOf: sourceById }
  const whys = [
    growthWhy(assessed),
    findingWhy(assessed),
    forecastWhy({ ...assessed, forecast: ahead, toAgeYears: 18, beliefs }),
    eyesPositionWhy(assessed),
    choicesWhy({ ...assessed, choices: told, beliefs }),
    dutiesWhy({ duties: duties({ course, protocol, today: asOf }), protocol, asOf }),
  ].map(({ title, inputs, formula }) => ({ title, inputs, formula }))
  return { assessment, ahead, table: choicesTable(told), assumptions: told.assumptions, whys }
}

const COURSES = demoCourses({ today: asOf, seed: 7, evidence })
  .filter((_, index) => index % 6 === 0)
  .map(({ course }) => course)

/** What both hold where they are not texts. */
function figures(answer: unknown): unknown {
  if (typeof answer === "string") return "text"
  if (Array.isArray(answer)) return answer.map(figures)
  if (answer === null || typeof answer !== "object") return answer
  return Object.fromEntries(Object.entries(answer).map(([name, value]) => [name, figures(value)]))
}

function texts(answer: unknown): readonly string[] {
  if (typeof answer === "string") return [answer]
  if (answer === null || typeof answer !== "object") return []
  return Object.values(answer).flatMap(texts)
}

describe("the answers in Spanish", () => {
  it("have the figures of the English", () => {
    for (const course of COURSES) {
      const spanish = inLanguage("es", () => answersOf(course))
      expect(figures(spanish)).toEqual(figures(answersOf(course)))
    }
  })

  it("hold no English sentence, but for what a reference says of itself", () => {
    const all = new Set(inLanguage("es", () => COURSES.flatMap((course) => texts(answersOf(course)))))
    const english = [...all].filter((text) => / /.test(text) && ENGLISH.test(text))
    expect(english.filter((text) => !text.startsWith("Referencia "))).toEqual([])
  })
})

/** What the practice asks for beside the answers about a child on treatment. */
const asked = () => [
  [0.25, 0.5, 0.62, 1.5].map((sphere) =>
    beforeMyopiaInWords(
      said({ born: "2018-03-01", seen: asOf, refraction: { sphere }, lengthMm: 23.6, myopicParents: 2 }),
    ),
  ),
  beforeMyopiaInWords(
    said({ born: "2020-03-01", seen: asOf, refraction: { sphere: 0.25 }, lengthMm: 22.1, myopicParents: 1 }),
  ),
  refractionWhy({ readings: ["-2.00 DS"], vertexMm: 12, sourceOf: sourceById }).formula,
  orderWhy(
    { concentrationPercent: 0.05, stockPercent: 1, bottles: 2, volumeMl: 5, nights: 60 },
    sourceById,
  ).parameters.map(({ note, source }) => [note, source]),
  decisionPlan({ kind: "add", treatments: [], from: asOf, ends: [] }, []),
  refractionSummary(["2.00 -0.50"], { vertexMm: 40 }),
  ownReference({ csv: "sex,L,M\nF,1,22\n", provenance: {} }),
]

it("what is asked for beside them holds no English sentence either", () => {
  const all = new Set(inLanguage("es", () => texts(asked())))
  const english = [...all].filter((text) => / /.test(text) && ENGLISH.test(text))
  expect(english.filter((text) => !/Orinda Longitudinal Study/.test(text))).toEqual([])
})

const ENGLISH = /\b(the|of|and|with|is|are|was|not|from|per|eye|growth)\b(?!-)/

describe("texts of the evidence that stand within sentences", () => {
  it("are known to the languages", () => {
    const { cutOffs, shares, parents, advice, keptOff } = beforeMyopiaEvidence
    const all = [
      ...cutOffs.flatMap(({ grade, outcome, population, obtained }) => [
        ...(grade === undefined ? [] : [grade]),
        outcome,
        population,
        obtained,
      ]),
      ...[shares.outcome, shares.population, shares.cited],
      ...parents.map(({ obtained }) => obtained),
      ...advice.flatMap(({ what, findings }) => [
        what,
        ...findings.flatMap(({ words, kind, people, obtained }) => [words, kind, people, obtained]),
      ]),
      ...keptOff.flatMap(({ what, why }) => [what, why]),
    ]
    expect(all.filter((text) => !isSaidOfEvidence(text))).toEqual([])
  })

  it("so is how sure the evidence is of an effect", () => {
    const known = evidence.growth.effects.map(({ confidence }) => CONFIDENCE[confidence])
    expect(known.filter((message) => message === undefined || !isSaidIn(message, "es"))).toEqual([])
  })

  it("so is what speaks against a report of rebound", () => {
    const against = (evidence.rebound ?? []).flatMap((effect) => effect.against ?? [])
    expect(against).toEqual(AGAINST)
    expect(AGAINST.filter((message) => !isSaidIn(message, "es"))).toEqual([])
  })
})
