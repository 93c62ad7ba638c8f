import type { LengthTerm } from "../growth/child-model.js"
import { exposedGrowth } from "../growth/child-model.js"
import { distributionOf, factored, type Posterior, posterior, withheldPrior } from "../growth/posterior.js"
import type { Study } from "../growth/study.js"
import type { TreatmentColumn } from "../growth/treatment-columns.js"
import { type Mixture, mixtureQuantile } from "../numeric/mixture.js"
import { normalCdf } from "../numeric/normal.js"

/** A treatment from the day of the study on, in place of whatever is used now. */
export interface Future {
  /** As `treatmentColumns` names it: a treatment that this child has had keeps what its measurements said of it. */
  readonly key: string
  /** Withheld fraction where the child never had it. */
  readonly prior: { readonly mean: number; readonly sd: number }
  /** Share of the nights that are expected to be covered. */
  readonly share: number
  /** Infinity while it goes on. */
  readonly toAge: number
}

/** What may become of the child under one option. */
export interface Outlook {
  readonly lengthAt: (eye: 0 | 1, ageYears: number) => Mixture
  /** Mm that are not grown because of the treatment, between two ages; the same for both eyes. */
  readonly withheld: (span: Span) => Mixture
  /** Chance that an eye reaches a length by an age, and its 95 % interval over pace and effect. */
  readonly chanceOf: (asked: {
    readonly eye: 0 | 1
    readonly ageYears: number
    readonly mm: number
    readonly length: Mixture
  }) => { readonly low95: number; readonly high95: number }
}

/** Stands in the model for whatever treatment is asked about; nothing measured so far depends on it. */
const BLANK: TreatmentColumn = {
  key: "what if",
  name: "what if",
  label: "what if",
  prior: { mean: 0, sd: 0 },
  effect: null,
  stretches: [],
  startAge: Number.POSITIVE_INFINITY,
  endAge: Number.POSITIVE_INFINITY,
  exposures: [],
  coverage: null,
}

/**
 * The outlooks of one child: the child is worked out once, with one more column that nothing measured depends on. An
 * option then only says what that column is believed to withhold and when, so that a dozen options cost little more
 * than one.
 */
export function outlooks(child: Study): Outlooks {
  const model = { ...child.model, columns: [...child.model.columns, BLANK] }
  const open = posterior(factored(model, child.evidence.growth), withheldPrior(model))
  const outlook = outlookWith(residualVariances(open))
  return {
    asNow: (endsAge) => outlook(withColumns(open, ended(model.columns, endsAge))),
    under: (future) => outlook(posteriorUnder(open, { future, fromAge: child.ageYears })),
    untreatedMm: ({ fromAge, toAge }) => {
      const natural = model.growth.cumulativeMm(toAge) - model.growth.cumulativeMm(fromAge)
      return natural * open.nodes.reduce((sum, { weight, multiple }) => sum + weight * multiple, 0)
    },
  }
}

interface Outlooks {
  /** What is recorded goes on as it is until an age; Infinity for no end. */
  readonly asNow: (endsAge: number) => Outlook
  /** Everything in use ends on the day of the study; null starts nothing in its place. */
  readonly under: (future: Future | null) => Outlook
  /** Expected growth at the child's own pace without treatment, mm. */
  readonly untreatedMm: (span: Span) => number
}

interface Span {
  readonly fromAge: number
  readonly toAge: number
}

const ended = (columns: readonly TreatmentColumn[], atAge: number): readonly TreatmentColumn[] =>
  columns.map((column) => ({
    ...column,
    exposures: column.exposures
      .filter((exposure) => exposure.fromAge < atAge)
      .map((exposure) => ({ ...exposure, toAge: Math.min(exposure.toAge, atAge) })),
  }))

const withColumns = (open: Posterior, columns: readonly TreatmentColumn[]): Posterior => ({
  ...open,
  factored: { ...open.factored, model: { ...open.factored.model, columns } },
})

function posteriorUnder(
  open: Posterior,
  { future, fromAge }: { readonly future: Future | null; readonly fromAge: number },
): Posterior {
  const before = ended(open.factored.model.columns, fromAge)
  const known = before.findIndex(({ key }) => key === future?.key)
  const at = known < 0 ? before.length - 1 : known
  const columns = before.map((column, index) =>
    future !== null && index === at
      ? {
          ...column,
          exposures: [...column.exposures, { fromAge, toAge: future.toAge, share: future.share }],
        }
      : column,
  )
  const believed = withColumns(open, columns)
  if (future === null || known >= 0) return believed
  const size = columns.length
  return {
    ...believed,
    nodes: open.nodes.map((node) => {
      const mean = [...node.mean]
      const covariance = [...node.covariance]
      mean[at] = future.prior.mean
      covariance[at * size + at] = future.prior.sd ** 2
      return { ...node, mean, covariance }
    }),
  }
}

const termsOf = (eye: 0 | 1, ageYears: number): readonly LengthTerm[] => [{ eye, ageYears, coefficient: 1 }]

type ResidualVariance = (eye: 0 | 1, ageYears: number) => number

/**
 * What is left of the spread of a length when pace and effects are taken as known: wobble and measurement. It is the
 * same under every option, so it is worked out once for each eye and age.
 */
function residualVariances(open: Posterior): ResidualVariance {
  const known = new Map<string, number>()
  const nodes = open.nodes.map((node) => ({ ...node, covariance: node.covariance.map(() => 0) }))
  return (eye, ageYears) => {
    const key = `${eye} ${ageYears}`
    const variance =
      known.get(key) ?? meanVariance(distributionOf({ ...open, nodes }, termsOf(eye, ageYears)))
    known.set(key, variance)
    return variance
  }
}

const outlookWith =
  (residual: ResidualVariance) =>
  (believed: Posterior): Outlook => {
    const { model } = believed.factored
    return {
      lengthAt: (eye, ageYears) => distributionOf(believed, termsOf(eye, ageYears)),
      withheld: ({ fromAge, toAge }) => {
        const exposed = model.columns.map(
          (column) => exposedGrowth(model, column, toAge) - exposedGrowth(model, column, fromAge),
        )
        return withheldMixture(believed, exposed)
      },
      chanceOf: ({ eye, ageYears, mm, length }) => {
        const rest = residual(eye, ageYears)
        const expected = smoothed({
          ...length,
          sds: length.sds.map((sd) => Math.sqrt(Math.max(0, sd * sd - rest))),
        })
        const chance = (p: number) => normalCdf((mixtureQuantile(expected, p) - mm) / Math.sqrt(rest))
        return { low95: chance(0.025), high95: chance(0.975) }
      },
    }
  }

const meanVariance = ({ weights, sds }: Mixture): number =>
  weights.reduce((sum, weight, i) => sum + weight * (sds[i] as number) ** 2, 0)

/**
 * Each part spread evenly over the gap to its neighbours: without a treatment only the pace is in doubt, and its nodes
 * alone would make the distribution a staircase. Means are in order, as `condensed` leaves them.
 */
function smoothed({ weights, means, sds }: Mixture): Mixture {
  const gap = (i: number): number => {
    const [before, here, after] = [means[i - 1], means[i] as number, means[i + 1]]
    if (before === undefined || after === undefined) return (after ?? here) - (before ?? here)
    return (after - before) / 2
  }
  return { weights, means, sds: sds.map((sd, i) => Math.hypot(sd, gap(i) / Math.sqrt(12))) }
}

function withheldMixture(believed: Posterior, exposed: readonly number[]): Mixture {
  const size = exposed.length
  const means: number[] = []
  const sds: number[] = []
  for (const { multiple, mean, covariance } of believed.nodes) {
    let sum = 0
    let variance = 0
    for (let i = 0; i < size; i++) {
      sum += (exposed[i] as number) * (mean[i] as number)
      for (let j = 0; j < size; j++) {
        variance += (exposed[i] as number) * (exposed[j] as number) * (covariance[i * size + j] as number)
      }
    }
    means.push(multiple * sum)
    sds.push(multiple * Math.sqrt(Math.max(0, variance)))
  }
  return { weights: believed.nodes.map(({ weight }) => weight), means, sds }
}
