/** One fault of an input that a person can put right. */
export interface Problem {
  /** Where it stands, such as `axis` or `readings[1].axis`. */
  readonly path: string
  /** What stands there; null when nothing does. */
  readonly value: unknown
  /** What may stand there, in words. */
  readonly allowed: string
  /** The whole sentence: the thing, the rule, the value. */
  readonly message: string
}
