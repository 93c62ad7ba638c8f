/** How a measure is distributed among children of one age and sex, as far as a reference says. */
export interface Distribution {
  /** Outermost centiles that may be named, percent; beyond them only "below p3" or "above p95" is said. */
  readonly lowest: number
  readonly highest: number
  /** z of a value; null where the reference defines none. */
  zAt(value: number): number | null
  /** Value at a z; null where the reference defines none. */
  valueAt(z: number): number | null
}

export type FoundDistribution = { readonly distribution: Distribution } | { readonly refused: string }
