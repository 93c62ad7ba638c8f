/** Why an object cannot be read, in words, and where it stands. Thrown inside this folder; `readDicom` says it. */
export class DicomFault extends Error {
  constructor(
    readonly why: string,
    readonly where?: string,
  ) {
    super(why)
  }
}
