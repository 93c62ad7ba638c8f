import { readFileSync } from "node:fs"
import { describe, expect, it } from "vitest"
import type { Course } from "../../src/engine/course.js"
import { EYES } from "../../src/engine/course.js"
import { exposedGrowth, naturalSinceOrigin } from "../../src/engine/growth/child-model.js"
import { givenPace } from "../../src/engine/growth/given-pace.js"
import { eyeIndex } from "../../src/engine/growth/observations.js"
import { distributionOf, factored, usualNodes } from "../../src/engine/growth/posterior.js"
import { type Study, study } from "../../src/engine/growth/study.js"
import { mixtureCdf, mixtureMean, mixtureSd } from "../../src/engine/numeric/mixture.js"
import { weighing } from "../../src/engine/response/finding.js"
import { defaultSettings } from "../../src/engine/settings.js"
import { type Evidence, evidence, type Parameter } from "../../src/evidence/index.js"
import fixture from "./fixtures/growth-brute-force.json" with { type: "json" }

/*
 * The growth model against R: dense covariance, solve() and determinant(), growth by integrate(), posterior on a dense
 * grid, written from the mathematics alone (r/brute-force.R, apart from the engine). Seven invented children.
 */
interface Length {
  readonly mean: number
  readonly sd: number
  readonly past26: number
}
interface Mixed {
  readonly logEvidence: number
  readonly logEvidenceNil: number
  readonly pace: number
  readonly withheld: readonly number[]
  readonly lengths: Readonly<Record<string, Length>>
}
interface Answer {
  readonly lastLength: string
  readonly growthAtFigures: readonly (readonly [number, readonly number[]])[]
  readonly fixed: readonly {
    readonly u: number
    readonly withheld: readonly number[]
    readonly kappa: number
    readonly logLikelihood: number
  }[]
  readonly sameNodes: Mixed
  readonly denseKappa: Mixed
}
const answers = fixture.children as unknown as Readonly<Record<string, Answer>>
const names = Object.keys(answers)

/** The engine gets the parameters that R had, so that a new parameter file leaves this comparison as it is. */
const asInR: Evidence = {
  ...evidence,
  growth: {
    ...evidence.growth,
    values: Object.fromEntries(
      Object.entries(evidence.growth.values).map(([name, parameter]: [string, Parameter]) => [
        name,
        {
          ...parameter,
          value: (fixture.parameters as Record<string, number>)[name] ?? parameter.value,
          sd: (fixture.parameterSds as Record<string, number>)[name] ?? parameter.sd,
        },
      ]),
    ) as Evidence["growth"]["values"],
    effects: fixture.effects.map(({ kind, concentrationPercent, mean, sd }) => ({
      ...(evidence.growth.effects[0] as Evidence["growth"]["effects"][number]),
      kind: kind as "atropine",
      concentrationPercent,
      withheldFraction: mean,
      withheldFractionSd: sd,
    })),
  },
}

const read = (name: string) => readFileSync(new URL(`./r/courses/${name}`, import.meta.url), "utf8")
const courseOf = (name: string) => JSON.parse(read(`${name}.json`)) as Course
const studies = new Map(
  names.map((name) => [
    name,
    study({
      course: courseOf(name),
      asOf: (answers[name] as Answer).lastLength,
      evidence: asInR,
      settings: defaultSettings,
    }),
  ]),
)
const studyOf = (name: string) => studies.get(name) as Study

function withDioptresPerMm(value: number) {
  const { growth } = asInR
  return { ...growth, values: { ...growth.values, dioptresPerMm: { ...growth.values.dioptresPerMm, value } } }
}

function lengthAt(child: Study, target: string) {
  const [eye, when] = target.split(" ") as [(typeof EYES)[number], string]
  const last = child.lengths.at(-1)?.ageYears as number
  return distributionOf(
    child.posterior,
    [{ eye: eyeIndex(eye), ageYears: when === "last" ? last : 18, coefficient: 1 }],
    when === "untreated18" ? { scenario: { treatmentEndsAge: last } } : {},
  )
}

describe("what R was given", () => {
  it("is what the course files say", () => {
    const courses = names.map(courseOf)
    const lines = (header: string, rows: (course: Course) => readonly (readonly unknown[])[]) =>
      `${[header, ...courses.flatMap((c) => rows(c).map((row) => [c.child.id, ...row.map((v) => v ?? "")].join(",")))].join("\n")}\n`
    expect(read("children.csv")).toBe(
      lines("child,born,sex,ancestry,latitude", ({ child, practice }) => [
        [child.born, child.sex, child.ancestry, practice?.latitude],
      ]),
    )
    expect(read("figures.csv")).toBe(
      lines("child,date,eye,what,value,cylinder,readings,method,device,cycloplegic", ({ visits }) =>
        visits.flatMap((visit) =>
          EYES.flatMap((eye) => {
            const { axialLength: l, refraction: r } = visit[eye] ?? {}
            return [
              ...(l ? [[visit.date, eye, "length", l.mm, "", l.readings, l.method, l.device, ""]] : []),
              ...(r
                ? [[visit.date, eye, "refraction", r.sphere, r.cylinder, "", r.method, "", r.cycloplegic]]
                : []),
            ]
          }),
        ),
      ),
    )
    expect(read("treatments.csv")).toBe(
      lines("child,from,to,kind,concentration,eye,nightsPerWeek", ({ treatments = [] }) =>
        treatments.map((t) => [t.from, t.to, t.kind, t.concentrationPercent, t.eye, t.nightsPerWeek]),
      ),
    )
    expect(read("supplies.csv")).toBe(
      lines("child,opened,beyondUse,concentration", ({ supplies = [] }) =>
        supplies.map((s) => [s.opened, s.beyondUse, s.concentrationPercent]),
      ),
    )
    expect(read("missed-nights.csv")).toBe(
      lines("child,from,to,nights", ({ missedNights = [] }) =>
        missedNights.map((m) => [m.from, m.to, m.nights]),
      ),
    )
  })
})

describe.each(names)("%s", (name) => {
  const child = studyOf(name)
  const answer = answers[name] as Answer

  it("has the natural and the treated growth of every figure that integrate() finds", () => {
    expect(child.model.observations).toHaveLength(answer.growthAtFigures.length)
    const byHand = answer.growthAtFigures.map(([n, c]) => [n, ...c])
    const found = child.model.observations.map(({ ageYears, eye }) => [
      naturalSinceOrigin(child.model, ageYears),
      ...child.model.columns.map((column) => exposedGrowth(child.model, column, ageYears, { eye })),
    ])
    found.forEach((row, i) => {
      row.forEach((mm, j) => {
        expect(Math.abs(mm - (byHand[i]?.[j] as number))).toBeLessThan(1e-9)
      })
    })
  })

  it("has the log likelihood of the dense covariance at fixed pace, shares and dioptres per mm, to 1e-6", () => {
    for (const { u, withheld, kappa, logLikelihood } of answer.fixed) {
      const { parts } = factored(child.model, withDioptresPerMm(kappa), { ...usualNodes, kappa: 1 })
      const gram = parts[0]?.gram as (typeof parts)[number]["gram"]
      const given = givenPace(gram, { mean: withheld, sd: withheld.map(() => 0) })
      const multiple = Math.exp(u - asInR.growth.values.logPaceSd.value ** 2 / 2)
      expect(Math.abs(given.logLikelihood(multiple) - logLikelihood)).toBeLessThan(1e-6)
    }
  })

  it("has the likelihood ratio to 1e-6, and the log evidence of both hypotheses to 1e-5", () => {
    // A child with one refraction an eye is taken at one value of dioptres per mm: 2e-6 off, its start being not quite open.
    const weighed = weighing(child)
    const { logEvidence, logEvidenceNil } = answer.sameNodes
    expect(Math.abs((weighed?.logRatio as number) - (logEvidence - logEvidenceNil))).toBeLessThan(1e-6)
    expect(Math.abs((weighed?.works.logEvidence as number) - logEvidence)).toBeLessThan(1e-5)
    expect(Math.abs((weighed?.doesNothing.logEvidence as number) - logEvidenceNil)).toBeLessThan(1e-5)
  })

  it.each(Object.keys(answer.sameNodes.lengths))("%s: mean and SD of the length to 1e-4 mm", (target) => {
    const { mean, sd, past26 } = answer.sameNodes.lengths[target] as Length
    const found = lengthAt(child, target)
    expect(Math.abs(mixtureMean(found) - mean)).toBeLessThan(1e-4)
    expect(Math.abs(mixtureSd(found) - sd)).toBeLessThan(1e-4)
    expect(Math.abs(1 - mixtureCdf(found, 26) - past26)).toBeLessThan(1e-4)
  })

  it("has the posterior mean of pace and of the withheld shares to 1e-4", () => {
    const { nodes } = child.posterior
    const mean = (pick: (node: (typeof nodes)[number]) => number) =>
      nodes.reduce((sum, node) => sum + node.weight * pick(node), 0)
    expect(Math.abs(mean(({ multiple }) => multiple) - answer.sameNodes.pace)).toBeLessThan(1e-4)
    answer.sameNodes.withheld.forEach((share, j) => {
      expect(Math.abs(mean((node) => node.mean[j] as number) - share)).toBeLessThan(1e-4)
    })
  })

  it("shows the same figures as with dioptres per mm on a grid of 61 values", () => {
    const weighed = weighing(child)
    const { logEvidence, logEvidenceNil, lengths } = answer.denseKappa
    expect(Math.abs(Math.exp((weighed?.logRatio as number) - logEvidence + logEvidenceNil) - 1)).toBeLessThan(
      0.005,
    )
    for (const [target, { mean, past26 }] of Object.entries(lengths)) {
      const found = lengthAt(child, target)
      expect(Math.abs(mixtureMean(found) - mean)).toBeLessThan(0.005)
      expect(Math.abs(1 - mixtureCdf(found, 26) - past26)).toBeLessThan(0.005)
    }
  })
})
