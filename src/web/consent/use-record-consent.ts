import { useMutation } from "@tanstack/react-query"
import type { ConsentBody } from "../../server/contract/entry.js"
import type { FileType } from "../../server/contract/file-types.js"
import { useRecord } from "../queries.js"
import { storeFile } from "./stored-file.js"

export interface ConsentToRecord {
  /** Without the hash of the text and the signature's file, which are known once both are stored. */
  readonly consent: ConsentBody
  /** The text that was signed, to the letter; null where the signed paper says something else. */
  readonly text: string | null
  readonly signature:
    | { readonly kind: "drawn"; readonly svg: string }
    | { readonly kind: "typed"; readonly name: string }
    | { readonly kind: "scan"; readonly file: Blob; readonly mediaType: FileType }
    | null
}

/** Stores the text and the signature, then records the consent that names them: never one that names what is not there. */
export function useRecordConsent(childId: string) {
  const record = useRecord<ConsentBody>(childId, "consents")
  return useMutation({
    mutationFn: async ({ consent, text, signature }: ConsentToRecord) => {
      const sha256 = text === null ? undefined : await storeFile(text, "text/plain")
      const signed = await storedSignature(signature)
      const { wording, ...rest } = consent
      return record.mutateAsync({
        ...rest,
        ...(wording && sha256 !== undefined ? { wording: { ...wording, sha256 } } : {}),
        ...(signed ? { signature: signed } : {}),
      })
    },
  })
}

async function storedSignature(signature: ConsentToRecord["signature"]): Promise<ConsentBody["signature"]> {
  if (signature === null) return undefined
  if (signature.kind === "typed") return signature
  if (signature.kind === "drawn")
    return { kind: "drawn", file: await storeFile(signature.svg, "image/svg+xml") }
  return { kind: "scan", file: await storeFile(signature.file, signature.mediaType) }
}
