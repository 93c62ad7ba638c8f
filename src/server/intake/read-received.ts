import { readDicom } from "../../interop/dicom/read-dicom.js"
import { readFhir } from "../../interop/fhir/read-fhir.js"
import type { ReadFile } from "../../interop/intake/fragment.js"

export async function readFile({
  file,
  bytes,
}: {
  readonly file: string
  readonly bytes: Uint8Array
}): Promise<ReadFile> {
  const text = new TextDecoder().decode(bytes.subarray(0, 20))
  return text.trimStart().startsWith("{")
    ? readFhir({ file, text: new TextDecoder().decode(bytes) })
    : readDicom({ file, bytes })
}
