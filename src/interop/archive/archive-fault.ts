/** Why an archive is not taken, in words for whoever wants to restore it. */
export class ArchiveFault extends Error {
  override readonly name = "ArchiveFault"
}
