/** Something of a table that is not taken, and why, for a person to look up in the file. */
export interface ImportProblem {
  /** Line of the file; null for what is about a child or the file as a whole. */
  readonly line: number | null
  /** The column, or whose rows they are. */
  readonly heading: string
  readonly value: string
  readonly why: string
}

/** More than a person reads on a page. */
const MOST_LISTED = 500
/** More than a person works off in a table; the rest is counted. */
const MOST_KEPT = 10_000

export interface ProblemList {
  readonly listed: readonly ImportProblem[]
  readonly count: number
}

/** Problems as they turn up: the first ones kept, all of them counted. */
export class Problems {
  private readonly kept: ImportProblem[] = []
  private readonly known = new Set<string>()
  private total = 0

  add(problem: ImportProblem): void {
    const key = JSON.stringify(problem)
    // A child that is planned anew finds the same again.
    if (this.known.has(key)) return
    this.total += 1
    if (this.kept.length >= MOST_KEPT) return
    this.kept.push(problem)
    this.known.add(key)
  }

  list(): ProblemList {
    return { listed: this.all().slice(0, MOST_LISTED), count: this.total }
  }

  /** As many as are kept, in the order of the file. */
  all(): readonly ImportProblem[] {
    return this.kept.toSorted((a, b) => (a.line ?? 0) - (b.line ?? 0))
  }
}
