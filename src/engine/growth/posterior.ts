import type { GrowthParameters } from "../../evidence/types.js"
import { normalRule } from "../numeric/gauss-hermite.js"
import { condensed, type Mixture } from "../numeric/mixture.js"
import {
  type ChildModel,
  exposedGrowth,
  type LengthTerm,
  placesOf,
  startLengthMm,
  termsFigureCovariance,
  termsVariance,
} from "./child-model.js"
import { type GivenPace, givenPace, type WithheldGivenPace, type WithheldPrior } from "./given-pace.js"
import { forwardSolve, type Gram, gram, unwhitened, type Whitened, whiten } from "./whiten.js"

/** One child's figures factored at each node of kappa, with the prior weight of the node. */
export interface Factored {
  readonly model: ChildModel
  readonly parts: readonly { readonly whitened: Whitened; readonly gram: Gram; readonly weight: number }[]
  readonly logPaceSd: number
}

export interface Nodes {
  /** Steps of the pace rule per SD of the log pace; the rule reaches 5 SD to either side. */
  readonly stepsPerSd: number
  readonly kappa: number
}

/** Enough that doubling either moves no figure that is shown (test/validation/quadrature.test.ts). */
export const usualNodes: Nodes = { stepsPerSd: 3, kappa: 5 }
const REACH_SD = 5
/** Nodes below this share of the posterior cannot move a shown figure and are left out of forecasts. */
const NEGLIGIBLE = 1e-6

/**
 * Factors a child once per node of kappa. Until an eye has two refractions kappa does not matter and one node is
 * exact: a refraction alone only says where that eye started, which is left open.
 */
export function factored(
  model: ChildModel,
  parameters: GrowthParameters,
  nodes: Nodes = usualNodes,
): Factored {
  const { dioptresPerMm, logPaceSd } = parameters.values
  const refracted = model.observations.filter((figure) => figure.kind === "refraction").map(({ eye }) => eye)
  const witnessed = new Set(refracted).size < refracted.length
  const rule = normalRule(witnessed ? nodes.kappa : 1)
  const raw = unwhitened(model)
  return {
    model,
    logPaceSd: logPaceSd.value,
    parts: rule.nodes.map((node, i) => {
      const whitened = whiten(raw, dioptresPerMm.value + node * (dioptresPerMm.sd ?? 0))
      return { whitened, gram: gram(whitened), weight: rule.weights[i] as number }
    }),
  }
}

export interface PosteriorNode extends WithheldGivenPace {
  readonly weight: number
  /** exp(u - tau^2 / 2): the child's own multiple of natural growth. */
  readonly multiple: number
  readonly part: number
}

export interface Posterior {
  readonly factored: Factored
  readonly logEvidence: number
  readonly nodes: readonly PosteriorNode[]
}

/**
 * Posterior of pace, withheld fractions and kappa from the first `rows` figures (all by default).
 *
 * Pace: an equally spaced rule on u ~ N(0, tau^2), which for such a smooth integrand converges faster than
 * Gauss-Hermite on the prior, whose nodes lie too far apart once several years of figures have narrowed the pace.
 * Withheld fractions: closed form. Kappa: Gauss-Hermite.
 */
export function posterior(
  factored: Factored,
  prior: WithheldPrior,
  { rows, nodes = usualNodes }: { rows?: number; nodes?: Nodes } = {},
): Posterior {
  const { multiples, logWeights } = paceRule(factored.logPaceSd, nodes.stepsPerSd)
  const given = factored.parts.map((part) =>
    givenPace(rows === undefined ? part.gram : gram(part.whitened, rows), prior),
  )
  const size = multiples.length
  const logs = new Float64Array(given.length * size)
  let highest = Number.NEGATIVE_INFINITY
  for (let p = 0; p < given.length; p++) {
    const ofPart = Math.log(factored.parts[p]?.weight ?? 0)
    const { logLikelihood } = given[p] as GivenPace
    for (let i = 0; i < size; i++) {
      const log = ofPart + (logWeights[i] as number) + logLikelihood(multiples[i] as number)
      logs[p * size + i] = log
      if (log > highest) highest = log
    }
  }
  const weights = logs.map((log) => Math.exp(log - highest))
  const total = weights.reduce((sum, weight) => sum + weight, 0)
  const kept: PosteriorNode[] = []
  const share = weights.reduce((sum, weight) => (weight < NEGLIGIBLE * total ? sum : sum + weight), 0)
  for (let at = 0; at < weights.length; at++) {
    const weight = weights[at] as number
    if (weight < NEGLIGIBLE * total) continue
    const part = Math.floor(at / size)
    const multiple = multiples[at - part * size] as number
    const { mean, covariance } = (given[part] as GivenPace).withheld(multiple)
    kept.push({ weight: weight / share, multiple, part, mean, covariance })
  }
  return { factored, logEvidence: highest + Math.log(total), nodes: kept }
}

interface PaceRule {
  readonly multiples: Float64Array
  readonly logWeights: Float64Array
}

const rules = new Map<string, PaceRule>()

function paceRule(logPaceSd: number, stepsPerSd: number): PaceRule {
  const key = `${logPaceSd}/${stepsPerSd}`
  const known = rules.get(key)
  if (known) return known
  const count = Math.round(REACH_SD * stepsPerSd)
  const zs = Float64Array.from({ length: 2 * count + 1 }, (_, i) => (i - count) / stepsPerSd)
  const rule = {
    multiples: zs.map((z) => paceMultiple(z, logPaceSd)),
    logWeights: zs.map((z) => -(z * z) / 2 - Math.log(stepsPerSd * Math.sqrt(2 * Math.PI))),
  }
  rules.set(key, rule)
  return rule
}

/** exp(u - tau^2 / 2) at u = z tau; its prior mean is 1. */
export const paceMultiple = (z: number, logPaceSd: number): number =>
  Math.exp(z * logPaceSd - (logPaceSd * logPaceSd) / 2)

/** Priors of the treatments of a model; `nothing` names the one that is taken to withhold nothing. */
export function withheldPrior(model: ChildModel, nothing?: string): WithheldPrior {
  return {
    mean: model.columns.map((column) => (column.key === nothing ? 0 : column.prior.mean)),
    sd: model.columns.map((column) => (column.key === nothing ? 0 : column.prior.sd)),
  }
}

export interface Scenario {
  /** Age at which every treatment is taken to end; never when absent. */
  readonly treatmentEndsAge?: number
}

/** What the figures say of a sum of lengths (mm): a length at an age, the growth of one eye, the mean of both. */
export function distributionOf(
  { factored, nodes }: Posterior,
  terms: readonly LengthTerm[],
  { scenario = {}, rows }: { scenario?: Scenario; rows?: number } = {},
): Mixture {
  const { model } = factored
  const k = model.columns.length
  const ofTerms = placesOf(model, terms)
  const sum = (pick: (term: LengthTerm, index: number) => number) =>
    terms.reduce((total, term, i) => total + term.coefficient * pick(term, i), 0)
  const start = sum(() => startLengthMm)
  const natural = sum((_, i) => ofTerms.natural[i] as number)
  const exposed = model.columns.map((column) =>
    sum((term) =>
      exposedGrowth(model, column, term.ageYears, { eye: term.eye, endingAt: scenario.treatmentEndsAge }),
    ),
  )
  const own = termsVariance(model, terms, ofTerms)

  // Per node of kappa: what is left of the sum once the figures are known, as weights on [y | N | C_1 .. C_k].
  const parts = factored.parts.map(({ whitened }) => {
    const n = rows ?? whitened.rows
    const cross = termsFigureCovariance({
      model,
      terms,
      ofTerms,
      ofFigures: whitened.places,
      dioptresPerMm: whitened.dioptresPerMm,
      rows: n,
    })
    const solved = forwardSolve(whitened, cross, n)
    const onColumn = new Array<number>(k + 2).fill(0)
    let explained = 0
    for (let i = 0; i < n; i++) {
      const weight = solved[i] as number
      explained += weight * weight
      for (let c = 0; c < k + 2; c++) {
        onColumn[c] = (onColumn[c] as number) + weight * (whitened.values[i * (k + 2) + c] as number)
      }
    }
    return {
      constant: start + (onColumn[0] as number),
      perMultiple: natural - (onColumn[1] as number),
      perWithheld: exposed.map((e, j) => e - (onColumn[j + 2] as number)),
      variance: Math.max(0, own - explained),
    }
  })

  const means: number[] = []
  const sds: number[] = []
  for (const node of nodes) {
    const part = parts[node.part] as (typeof parts)[number]
    let mean = part.constant + node.multiple * part.perMultiple
    let variance = part.variance
    for (let i = 0; i < k; i++) {
      const a = -node.multiple * (part.perWithheld[i] as number)
      mean += a * (node.mean[i] as number)
      for (let j = 0; j < k; j++) {
        const b = -node.multiple * (part.perWithheld[j] as number)
        variance += a * b * (node.covariance[i * k + j] as number)
      }
    }
    means.push(mean)
    sds.push(Math.sqrt(variance))
  }
  return condensed({ weights: nodes.map((node) => node.weight), means, sds })
}
