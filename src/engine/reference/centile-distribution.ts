import type { CentileReference } from "../../evidence/types.js"
import { normalQuantile } from "../numeric/normal.js"
import { say } from "../say.js"
import type { FoundDistribution } from "./distribution.js"
import { cubicAtAge, neighbours } from "./rows-at-age.js"

type Row = CentileReference["rows"][number]
interface Point {
  readonly centile: number
  readonly z: number
  readonly value: number
}

/**
 * A printed centile table at an age. Each nominal centile is a z, and between two neighbouring centiles z runs straight
 * with the value. Between ages each centile runs on its own monotone cubic; centiles that cross there give no answer.
 */
export function centileDistribution({
  rows,
  ageYears,
  agesAreCells,
}: {
  rows: readonly Row[]
  ageYears: number
  agesAreCells: boolean
}): FoundDistribution {
  const at = agesAreCells ? Math.floor(ageYears) : ageYears
  const points = pointsAtAge(rows, at)
  if (points.length < 2)
    return { refused: say("fewer than two centiles are printed for age {age}", { age: at }) }
  const crossing = points.find((point, i) => i > 0 && !(point.value > points[i - 1]!.value))
  if (crossing !== undefined)
    return {
      refused: say("centiles cross at age {age}, at centile {centile}", {
        age: at,
        centile: crossing.centile,
      }),
    }
  return {
    distribution: {
      lowest: points[0]!.centile,
      highest: points.at(-1)!.centile,
      zAt: (value) => straight(points, value, { from: "value", to: "z" }),
      valueAt: (z) => straight(points, z, { from: "z", to: "value" }),
    },
  }
}

/** The centiles that are printed on both sides of an age, lowest first. */
export function pointsAtAge(rows: readonly Row[], ageYears: number): readonly Point[] {
  const { before, after } = neighbours(rows, ageYears)
  return Object.keys(rows[before]!.values)
    .filter((key) => key in rows[after]!.values)
    .map((key) => ({
      centile: Number(key),
      z: normalQuantile(Number(key) / 100),
      value: cubicAtAge(runAround({ rows, before, after, key }), ageYears, (row) => row.values[key]!),
    }))
    .toSorted((a, b) => a.centile - b.centile)
}

/** The unbroken run of rows around an age that all print a centile: a curve must not bridge a blank cell. */
function runAround({
  rows,
  before,
  after,
  key,
}: {
  rows: readonly Row[]
  before: number
  after: number
  key: string
}): readonly Row[] {
  const isBlank = (row: Row) => !(key in row.values)
  const blankBefore = rows.slice(0, before).findLastIndex(isBlank)
  const blankAfter = rows.findIndex((row, i) => i > after && isBlank(row))
  return rows.slice(blankBefore + 1, blankAfter === -1 ? rows.length : blankAfter)
}

function straight(
  points: readonly Point[],
  x: number,
  { from, to }: { from: "value" | "z"; to: "value" | "z" },
): number | null {
  const above = points.findIndex((point) => point[from] >= x)
  if (above === -1 || (above === 0 && points[0]![from] !== x)) return null
  const right = points[above]!
  if (above === 0) return right[to]
  const left = points[above - 1]!
  return left[to] + ((x - left[from]) / (right[from] - left[from])) * (right[to] - left[to])
}
