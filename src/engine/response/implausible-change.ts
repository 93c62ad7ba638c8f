import type { Check } from "../assessment.js"
import { EYES } from "../course.js"
import type { Study } from "../growth/study.js"

/**
 * How far a figure may lie from what the child's other figures lead to expect, in SDs, before it is doubted.
 * A normal figure does so about once in 16,000. Our own cut.
 */
const DOUBT_SD = 4

/**
 * Figures that do not fit the course of their own child. Each whitened figure is its surprise in SDs once all
 * earlier ones are known; the return from a wrong figure is as surprising as the figure itself, so a surprise in
 * the other direction right after one is not reported again.
 */
export function implausibleChanges(study: Study): readonly Check[] {
  const best = study.posterior.nodes.reduce(
    (a, b) => (b.weight > a.weight ? b : a),
    study.posterior.nodes[0] as never,
  )
  if (!best) return []
  const part = study.factored.parts[best.part]
  if (!part) return []
  const { values, columns } = part.whitened
  const before = new Map<string, number>()
  return study.model.observations.flatMap((figure, i) => {
    const at = i * columns
    const expected = best.mean.reduce(
      (sum, w, j) => sum - best.multiple * w * (values[at + 2 + j] as number),
      best.multiple * (values[at + 1] as number),
    )
    const surprise = (values[at] as number) - expected
    const series = `${figure.kind}/${figure.eye}`
    const last = before.get(series)
    before.set(series, surprise)
    if (last === undefined || Math.abs(surprise) < DOUBT_SD) return []
    if (Math.abs(last) >= DOUBT_SD && Math.sign(last) !== Math.sign(surprise)) return []
    const eye = EYES[figure.eye] as string
    const visit = study.course.visits[figure.visit]
    const length = figure.kind === "length"
    const value = length ? `${figure.value.toFixed(2)} mm` : `${figure.value.toFixed(2)} D`
    return [
      {
        kind: "implausible-change",
        path: `visits[${figure.visit}].${eye}.${length ? "axialLength" : "refraction"}`,
        why:
          `the ${eye} eye's ${length ? "length" : "refraction"} of ${value} on ${visit?.date} does not follow ` +
          "from its earlier figures: check the entry, the eye and the instrument",
      },
    ]
  })
}
