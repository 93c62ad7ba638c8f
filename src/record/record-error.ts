/** The record can't be used as it stands on disk, or is in use elsewhere. `cause` has the database's own words. */
export class RecordError extends Error {
  override readonly name = "RecordError"
}
