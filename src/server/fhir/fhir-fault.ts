import type { IssueType } from "./outcome.js"

/** A request that is turned down, in words that its sender can act on. */
export class FhirFault extends Error {
  override readonly name = "FhirFault"
  constructor(
    readonly status: 400 | 404 | 406 | 409 | 422,
    readonly code: IssueType,
    message: string,
  ) {
    super(message)
  }
}
