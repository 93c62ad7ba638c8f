/** One dilution: take so much of what stands before it and add diluent. */
export interface DilutionStep {
  readonly takeMl: number
  /** What is taken from, in words: "stock 1 %" or "step 1, 0.1 %". */
  readonly of: string
  readonly addDiluentMl: number
  readonly givesPercent: number
  /** Of what this step makes, the part the next one does not use. */
  readonly discardMl: number
}

export interface Transfers {
  readonly smallestVolumeMl: number
  readonly readableMl: number
}

interface Mixture {
  readonly takeMl: number
  readonly volumeMl: number
}

// Ten first, since it is the dilution easiest to check by eye; the others where ten would overshoot.
const FACTORS = [10, 5, 4, 2]

/**
 * Steps from stock to a volume at a strength (C1 V1 = C2 V2), every measured volume at least the smallest and read to the
 * graduation. Null where no such steps exist, because the whole volume is about as small as the smallest transfer.
 */
export function dilutionSteps({
  stockPercent,
  concentrationPercent,
  volumeMl,
  transfers,
}: {
  stockPercent: number
  concentrationPercent: number
  volumeMl: number
  transfers: Transfers
}): readonly DilutionStep[] | null {
  const intermediates = intermediateStrengths({ stockPercent, concentrationPercent, volumeMl, transfers })
  if (!intermediates) return null
  const mixtures = mixturesBackwards({
    strengths: [stockPercent, ...intermediates, concentrationPercent],
    volumeMl,
    transfers,
  })
  return mixtures && described({ mixtures, stockPercent })
}

/** Diluted once, is the smaller of the two volumes measurable? */
function isMeasurable(
  { takeMl, volumeMl }: Mixture,
  { smallestVolumeMl }: Pick<Transfers, "smallestVolumeMl">,
): boolean {
  const slack = 1e-9
  const diluentMl = volumeMl - takeMl
  const isUndiluted = Math.abs(diluentMl) < slack
  return takeMl >= smallestVolumeMl - slack && (isUndiluted || diluentMl >= smallestVolumeMl - slack)
}

function intermediateStrengths({
  stockPercent,
  concentrationPercent,
  volumeMl,
  transfers: { smallestVolumeMl },
}: {
  stockPercent: number
  concentrationPercent: number
  volumeMl: number
  transfers: Transfers
}): readonly number[] | null {
  const strengths: number[] = []
  let from = stockPercent
  const takeMl = () => (volumeMl * concentrationPercent) / from
  while (takeMl() < smallestVolumeMl - 1e-9) {
    // The next strength must leave room for diluent in the step after it.
    const factor = FACTORS.find((divisor) => takeMl() * divisor <= volumeMl - smallestVolumeMl + 1e-9)
    if (factor === undefined) return null
    from /= factor
    strengths.push(from)
  }
  return strengths
}

function mixturesBackwards({
  strengths,
  volumeMl,
  transfers,
}: {
  strengths: readonly number[]
  volumeMl: number
  transfers: Transfers
}): readonly Mixture[] | null {
  const mixtures: Mixture[] = []
  let neededMl = volumeMl
  for (let index = strengths.length - 1; index > 0; index--) {
    const share = strengths[index]! / strengths[index - 1]!
    const isLast = index === strengths.length - 1
    // An intermediate is made in at least the volume that makes its transfer measurable; its diluent is never less.
    const leastMl = transfers.smallestVolumeMl / share
    const madeMl = isLast ? neededMl : Math.max(neededMl, leastMl)
    const takeMl = (isLast ? roundTo : roundUpTo)(madeMl * share, transfers.readableMl)
    const mixture = { takeMl, volumeMl: isLast ? madeMl : roundTo(takeMl / share, transfers.readableMl) }
    if (!isMeasurable(mixture, transfers)) return null
    mixtures.unshift(mixture)
    neededMl = takeMl
  }
  return mixtures
}

function described({
  mixtures,
  stockPercent,
}: {
  mixtures: readonly Mixture[]
  stockPercent: number
}): readonly DilutionStep[] {
  let fromPercent = stockPercent
  return mixtures.map(({ takeMl, volumeMl }, index) => {
    const of = index === 0 ? `stock ${inDigits(stockPercent)} %` : `step ${index}, ${inDigits(fromPercent)} %`
    const givesPercent = (fromPercent * takeMl) / volumeMl
    fromPercent = givesPercent
    const next = mixtures[index + 1]
    return {
      takeMl,
      of,
      addDiluentMl: tidy(volumeMl - takeMl),
      givesPercent: tidy(givesPercent),
      discardMl: next ? tidy(volumeMl - next.takeMl) : 0,
    }
  })
}

const roundTo = (value: number, step: number) => tidy(Math.round(tidy(value / step)) * step)
const roundUpTo = (value: number, step: number) => tidy(Math.ceil(tidy(value / step)) * step)
/** Removes the noise of binary fractions (0.30000000000000004) far below anything measured. */
const tidy = (value: number) => Number(value.toPrecision(12))
const inDigits = (value: number) => String(Number(value.toPrecision(4)))
