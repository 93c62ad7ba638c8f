import type { ReadFile } from "../intake/fragment.js"

/** Reads one DICOM object. */
export async function readDicom({
  file,
}: {
  readonly file: string
  readonly bytes: Uint8Array
}): Promise<ReadFile> {
  return { file, fragments: [], skipped: [] }
}
