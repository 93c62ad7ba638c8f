import type { Check } from "../assessment.js"
import type { Eye } from "../course.js"
import type { Observation } from "../growth/observations.js"
import { withheldPrior } from "../growth/posterior.js"
import type { Study } from "../growth/study.js"
import type { Whitened } from "../growth/whiten.js"
import { say } from "../say.js"
import { fixed } from "../words.js"

/**
 * How far a figure may lie from what all the child's other figures lead to expect, in SDs, before it is doubted.
 * A normal figure does so about once in 16,000. Our own cut.
 */
const DOUBT_SD = 4
/** Two figures of a visit are blamed together only if that explains more than blaming one: a price for the second. */
const PRICE_OF_SECOND = 8
/** More doubtful figures than this and the course as a whole needs a look, not its figures one by one. */
const MOST_DOUBTS = 5

/**
 * Figures that do not fit the course of their own child: the length or refraction of an eye, or both lengths of a
 * visit (another child's, another unit, another eye pair). Each is judged by all the others, the worst is named and
 * put where they expect it, and the rest are judged again, so that one wrong figure does not accuse its neighbours.
 */
export function implausibleChanges(study: Study): readonly Check[] {
  const { observations } = study.model
  const whitened = study.factored.parts[0]?.whitened
  if (!whitened || observations.length < 2) return []
  const { precision, residual } = predictive(study, whitened)
  const candidates = candidatesOf(observations)
  const doubted: Candidate[] = []
  while (doubted.length < MOST_DOUBTS) {
    const pull = times(precision, residual)
    const worst = candidates
      .filter((candidate) => !doubted.some((d) => d.rows.some((row) => candidate.rows.includes(row))))
      .map((candidate) => ({ candidate, ...surprise(candidate, pull, precision) }))
      .sort((a, b) => (Math.abs(b.score - a.score) > 1e-6 ? b.score - a.score : lastRow(b) - lastRow(a)))[0]
    if (!worst || worst.score < DOUBT_SD ** 2) break
    doubted.push(worst.candidate)
    worst.candidate.rows.forEach((row, i) => {
      residual[row] = (residual[row] as number) - (worst.shift[i] as number)
    })
  }
  return doubted
    .map((candidate) => told(study, candidate))
    .toSorted((a, b) => a.visit - b.visit)
    .map((one) => one.check)
}

interface Candidate {
  readonly rows: readonly number[]
}

/** Of two visits that disagree equally, the later one is named: it is the one just entered. */
const lastRow = ({ candidate }: { candidate: Candidate }): number => candidate.rows.at(-1) ?? 0

function candidatesOf(observations: readonly Observation[]): Candidate[] {
  const pairs = observations.flatMap((figure, i) => {
    const other = observations.findIndex(
      (b, j) => j > i && figure.kind === "length" && b.kind === "length" && b.visit === figure.visit,
    )
    return other < 0 ? [] : [{ rows: [i, other] }]
  })
  return [...observations.map((_, i) => ({ rows: [i] })), ...pairs]
}

/** Square matrix, row by row. */
type Matrix = { readonly size: number; readonly values: Float64Array }

/**
 * What is expected before the figures are seen, so that no figure bends what it is judged by: figures less growth at
 * the prior means, and the inverse of their covariance with the doubt about pace (as if normal) and effects in it.
 */
function predictive(study: Study, whitened: Whitened): { precision: Matrix; residual: Float64Array } {
  const { mean, sd } = withheldPrior(study.model)
  const atMean = mean.map((w) => -w)
  const paceSd = Math.sqrt(Math.exp(study.factored.logPaceSd ** 2) - 1)
  const doubts = [
    [0, paceSd, ...atMean.map((w) => paceSd * w)],
    ...sd.map((own, j) => [0, 0, ...sd.map((_, i) => (i === j ? own : 0))]),
  ]
  const precision = precisionOf(whitened)
  for (const weights of doubts) {
    const direction = figuresOf(whitened, weights)
    const pulled = times(precision, direction)
    const scale = 1 + direction.reduce((sum, d, i) => sum + d * (pulled[i] as number), 0)
    for (let i = 0; i < precision.size; i++) {
      for (let j = 0; j < precision.size; j++) {
        const at = i * precision.size + j
        precision.values[at] =
          (precision.values[at] as number) - ((pulled[i] as number) * (pulled[j] as number)) / scale
      }
    }
  }
  return { precision, residual: figuresOf(whitened, [1, -1, ...mean]) }
}

/** A weighted sum of the whitened columns [y | N | C_1 .. C_k], turned back into figures. */
function figuresOf({ factor, rows, columns, values }: Whitened, weights: readonly number[]): Float64Array {
  const plain = new Float64Array(rows)
  const out = new Float64Array(rows)
  for (let i = 0; i < rows; i++) {
    for (let c = 0; c < columns; c++) {
      plain[i] = (plain[i] as number) + (weights[c] as number) * (values[i * columns + c] as number)
    }
    const start = (i * (i + 1)) / 2
    for (let p = 0; p <= i; p++)
      out[i] = (out[i] as number) + (factor[start + p] as number) * (plain[p] as number)
  }
  return out
}

/** Inverse of the covariance of the figures, from its Cholesky factor. */
function precisionOf({ factor, rows }: Whitened): Matrix {
  const inverse = new Float64Array(rows * rows)
  for (let c = 0; c < rows; c++) {
    for (let i = c; i < rows; i++) {
      const start = (i * (i + 1)) / 2
      let sum = i === c ? 1 : 0
      for (let p = c; p < i; p++) sum -= (factor[start + p] as number) * (inverse[p * rows + c] as number)
      inverse[i * rows + c] = sum / (factor[start + i] as number)
    }
  }
  const values = new Float64Array(rows * rows)
  for (let a = 0; a < rows; a++) {
    for (let b = 0; b <= a; b++) {
      let sum = 0
      for (let i = a; i < rows; i++)
        sum += (inverse[i * rows + a] as number) * (inverse[i * rows + b] as number)
      values[a * rows + b] = sum
      values[b * rows + a] = sum
    }
  }
  return { size: rows, values }
}

function times({ size, values }: Matrix, vector: Float64Array): Float64Array {
  const out = new Float64Array(size)
  for (let i = 0; i < size; i++) {
    let sum = 0
    for (let j = 0; j < size; j++) sum += (values[i * size + j] as number) * (vector[j] as number)
    out[i] = sum
  }
  return out
}

/** Squared distance of some figures from what the others expect, less the price of a second, and that distance itself. */
function surprise({ rows }: Candidate, pull: Float64Array, { size, values }: Matrix) {
  const [i, j] = rows as [number, number | undefined]
  const [a, x] = [values[i * size + i] as number, pull[i] as number]
  if (j === undefined) return { score: (x * x) / a, shift: [x / a] }
  const [b, d, y] = [values[i * size + j] as number, values[j * size + j] as number, pull[j] as number]
  const determinant = a * d - b * b
  const shift = [(d * x - b * y) / determinant, (a * y - b * x) / determinant] as const
  return { score: shift[0] * x + shift[1] * y - PRICE_OF_SECOND, shift }
}

function told(study: Study, { rows }: Candidate): { visit: number; check: Check } {
  const figures = rows.map((row) => study.model.observations[row] as Observation)
  const { visit, kind } = figures[0] as Observation
  const date = study.course.visits[visit]?.date ?? ""
  const length = kind === "length"
  const [one, other] = figures as [Observation, Observation | undefined]
  const why = other
    ? say(
        "the lengths of {one} mm ({oneEye, select, right {right} other {left}}) and {other} mm ({otherEye, select, right {right} other {left}}) on {date} do not go with this child's other figures: check the entry, the eye, the child and the instrument",
        {
          one: fixed(one.value),
          oneEye: eyeName(one),
          other: fixed(other.value),
          otherEye: eyeName(other),
          date,
        },
      )
    : say(
        "the {eye, select, right {right} other {left}} eye's {measure, select, length {length of {value} mm} other {refraction of {value} D}} on {date} does not go with this child's other figures: check the entry, the eye, the child and the instrument",
        { eye: eyeName(one), measure: kind, value: fixed(one.value), date },
      )
  return {
    visit,
    check: {
      kind: "implausible-change",
      path: `visits[${visit}]${other ? "" : `.${eyeName(one)}.${length ? "axialLength" : "refraction"}`}`,
      why,
    },
  }
}

const eyeName = ({ eye }: Observation): Eye => (eye === 0 ? "right" : "left")
