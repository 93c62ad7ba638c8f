import type { Check } from "../assessment.js"
import { centred } from "../growth/child-model.js"
import { type Posterior, posterior, withheldPrior } from "../growth/posterior.js"
import type { Study } from "../growth/study.js"
import { forwardSolve, type Whitened } from "../growth/whiten.js"
import { say } from "../say.js"

/** The eyes of this visit are likelier exchanged than not by this factor before it is said. */
const RATIO_TO_SAY = 500
/** Below this the exact ratio is not worked out. */
const WORTH_A_LOOK = 5

/**
 * Whether the lengths of a visit fit better with right and left exchanged: the likelihood of all lengths as
 * entered against the same with that visit exchanged, pace and treatment integrated out. Asked of every visit
 * that has two earlier ones with both eyes. Exchanging its neighbour also mends a series in part, so the likeliest
 * visit is named first, and others only if they still stand out once it is put right.
 *
 * With a threshold of 500 the false alarms stay below 1 in 500 (the chance that a likelihood ratio exceeds k when
 * it should not is at most 1 / k).
 */
export function exchangedEyes(study: Study): readonly Check[] {
  const pairs = againstTheRest(study, lengthPairs(study)).filter(({ place }) => place >= 2)
  const found: { visit: number; ratio: number }[] = []
  let figures: Float64Array = Float64Array.from(study.model.observations, centred)
  let evidence = study.posterior.logEvidence
  for (let open = pairs; open.length > 0; ) {
    const asEntered = atBestNode(study, figures)
    const tried = open
      .map((pair) => ({ pair, exchanged: exchange(figures, pair) }))
      .map((one) => ({ ...one, gain: atBestNode(study, one.exchanged) - asEntered }))
      .sort((a, b) => b.gain - a.gain)[0]
    if (!tried || tried.gain < Math.log(WORTH_A_LOOK)) break
    const mended = withFigures(study, tried.exchanged).logEvidence
    const ratio = Math.exp(mended - evidence)
    if (ratio < RATIO_TO_SAY) break
    found.push({ visit: tried.pair.visit, ratio })
    figures = tried.exchanged
    evidence = mended
    open = open.filter((pair) => pair !== tried.pair)
  }
  return found.toSorted((a, b) => a.visit - b.visit).map(({ visit, ratio }) => check(study, visit, ratio))
}

interface LengthPair {
  readonly visit: number
  /** Place among the visits at which both eyes were measured. */
  readonly place: number
  readonly rows: readonly [number, number]
}

/** Visits at which the other eye is the longer one than at most: no other exchange can make a series smoother. */
function againstTheRest({ model }: Study, pairs: readonly LengthPair[]): readonly LengthPair[] {
  const longer = ({ rows: [a, b] }: LengthPair) =>
    Math.sign((model.observations[a]?.value ?? 0) - (model.observations[b]?.value ?? 0))
  const most = Math.sign(pairs.reduce((sum, pair) => sum + longer(pair), 0))
  return pairs.filter((pair) => longer(pair) !== most)
}

/** The figures of visits at which both eyes were measured, in order of age. */
function lengthPairs({ model }: Study): LengthPair[] {
  const byVisit = new Map<number, number[]>()
  model.observations.forEach((figure, i) => {
    if (figure.kind === "length") byVisit.set(figure.visit, [...(byVisit.get(figure.visit) ?? []), i])
  })
  return [...byVisit]
    .filter(([, rows]) => rows.length === 2)
    .map(([visit, rows], place) => ({ visit, place, rows: rows as [number, number] }))
}

function exchange(figures: Float64Array, { rows: [a, b] }: LengthPair): Float64Array {
  const out = figures.slice()
  out[a] = figures[b] as number
  out[b] = figures[a] as number
  return out
}

function check({ course }: Study, visit: number, ratio: number): Check {
  const date = course.visits[visit]?.date ?? ""
  return {
    kind: "eyes-exchanged",
    path: `visits[${visit}]`,
    why:
      ratio > 1e6
        ? say(
            "right and left look exchanged on {date}: the lengths fit more than a million times better the other way round",
            { date },
          )
        : say(
            "right and left look exchanged on {date}: the lengths fit {times} times better the other way round",
            { date, times: Math.round(ratio) },
          ),
  }
}

/** Log likelihood, but for a constant, at the likeliest pace only: cheap, and enough to see what is worth a look. */
function atBestNode(study: Study, figures: Float64Array): number {
  const best = study.posterior.nodes.reduce((a, b) => (b.weight > a.weight ? b : a))
  const { whitened } = study.factored.parts[best.part] as { whitened: Whitened }
  const solved = forwardSolve(whitened, figures)
  let square = 0
  for (let i = 0; i < whitened.rows; i++) {
    const at = i * whitened.columns
    const expected = best.mean.reduce(
      (sum, w, j) => sum - best.multiple * w * (whitened.values[at + 2 + j] as number),
      best.multiple * (whitened.values[at + 1] as number),
    )
    square += ((solved[i] as number) - expected) ** 2
  }
  return -square / 2
}

function withFigures(study: Study, figures: Float64Array): Posterior {
  const parts = study.factored.parts.map((part) => {
    const { rows, columns, values } = part.whitened
    const replaced = values.slice()
    const solved = forwardSolve(part.whitened, figures)
    for (let i = 0; i < rows; i++) replaced[i * columns] = solved[i] as number
    const whitened = { ...part.whitened, values: replaced }
    return { ...part, whitened }
  })
  return posterior({ ...study.factored, parts }, withheldPrior(study.model), {
    rows: study.model.observations.length,
  })
}
