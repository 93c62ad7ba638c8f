/** One thing a person can put right. Paths are written as in `right.axialLength.mm` and `visits[2].date`. */
export interface Problem {
  readonly path: string
  readonly value: unknown
  readonly allowed: string
  readonly message: string
}
