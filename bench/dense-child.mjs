import { centred, slope } from "../dist/engine/growth/child-model.js"
import { withheldPrior } from "../dist/engine/growth/posterior.js"
import { unwhitened } from "../dist/engine/growth/whiten.js"

/** One child as numbers for R: per node of kappa its weight, figures, columns and covariance; a line each, by commas. */
export function denseChild(study) {
  const { model, factored } = study
  const prior = withheldPrior(model)
  const raw = unwhitened(model)
  const at = (i, j) => (i >= j ? (i * (i + 1)) / 2 + j : (j * (j + 1)) / 2 + i)
  const lines = [`head,${factored.logPaceSd},${prior.mean[0]},${prior.sd[0]}`]
  for (const { whitened, weight } of factored.parts) {
    const gains = model.observations.map((figure) => slope(figure, whitened.dioptresPerMm))
    lines.push(`part,${weight}`)
    model.observations.forEach((figure, i) => {
      const covariance = gains.map((gain, j) => gains[i] * gain * raw.growth[at(i, j)] + raw.rest[at(i, j)])
      const columns = [1, 2].map((c) => gains[i] * raw.values[i * raw.columns + c])
      lines.push(`row,${[centred(figure), ...columns, ...covariance].join(",")}`)
    })
  }
  return `${lines.join("\n")}\n`
}
