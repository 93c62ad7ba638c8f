import type { Check } from "../assessment.js"
import { centred } from "../growth/child-model.js"
import { type Posterior, posterior, withheldPrior } from "../growth/posterior.js"
import type { Study } from "../growth/study.js"
import { forwardSolve, type Whitened } from "../growth/whiten.js"

/** The eyes of this visit are likelier exchanged than not by this factor before it is said. */
const RATIO_TO_SAY = 500
/** Below this the exact ratio is not worked out. */
const WORTH_A_LOOK = 5

/**
 * Whether the lengths of a visit fit better with right and left exchanged: the likelihood of all lengths as
 * entered against the same with that visit exchanged, pace and treatment integrated out. Asked of every visit
 * that has two earlier ones with both eyes.
 *
 * With a threshold of 500 the false alarms stay below 1 in 500 (the chance that a likelihood ratio exceeds k when
 * it should not is at most 1 / k).
 */
export function exchangedEyes(study: Study): readonly Check[] {
  const { observations } = study.model
  const visits = [...new Set(study.lengths.map((figure) => figure.visit))].filter((visit) => {
    const eyes = study.lengths.filter((figure) => figure.visit === visit)
    return eyes.length === 2
  })
  return visits.slice(2).flatMap((visit) => {
    const pair = observations.flatMap((figure, i) =>
      figure.kind === "length" && figure.visit === visit ? [i] : [],
    )
    const exchanged = Float64Array.from(observations, centred)
    const [a, b] = pair as [number, number]
    exchanged[a] = centred(observations[b] as (typeof observations)[number])
    exchanged[b] = centred(observations[a] as (typeof observations)[number])
    if (atBestNode(study, exchanged) < Math.log(WORTH_A_LOOK)) return []
    const ratio = Math.exp(withFigures(study, exchanged).logEvidence - study.posterior.logEvidence)
    if (ratio < RATIO_TO_SAY) return []
    const odds = ratio > 1e6 ? "more than a million" : String(Math.round(ratio))
    return [
      {
        kind: "eyes-exchanged",
        path: `visits[${visit}]`,
        why:
          `right and left look exchanged on ${study.course.visits[visit]?.date}: ` +
          `the lengths fit ${odds} times better the other way round`,
      },
    ]
  })
}

/** The log ratio at the likeliest pace only: cheap, and enough to see that there is nothing to look at. */
function atBestNode(study: Study, figures: Float64Array): number {
  const best = study.posterior.nodes.reduce((a, b) => (b.weight > a.weight ? b : a))
  const { whitened } = study.factored.parts[best.part] as { whitened: Whitened }
  const other = forwardSolve(whitened, figures)
  let gain = 0
  for (let i = 0; i < whitened.rows; i++) {
    const at = i * whitened.columns
    const expected = best.mean.reduce(
      (sum, w, j) => sum - best.multiple * w * (whitened.values[at + 2 + j] as number),
      best.multiple * (whitened.values[at + 1] as number),
    )
    gain += ((whitened.values[at] as number) - expected) ** 2 - ((other[i] as number) - expected) ** 2
  }
  return gain / 2
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
