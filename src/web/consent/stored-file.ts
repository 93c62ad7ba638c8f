import type { FileType } from "../../server/contract/file-types.js"
import type { FileAnswer } from "../../server/contract/files.js"
import type { ProblemAnswer } from "../../server/contract/problem.js"
import { Refused, Unreachable } from "../client.js"

/** Stores a file and gives the SHA-256 it is known by from then on. The same file again is the one that is there. */
export async function storeFile(content: Blob | string, mediaType: FileType): Promise<string> {
  const response = await fetch(`/api/files?mediaType=${encodeURIComponent(mediaType)}`, {
    method: "POST",
    credentials: "same-origin",
    headers: { "content-type": "application/octet-stream" },
    body: content,
  }).catch((cause: unknown) => {
    throw new Unreachable(cause)
  })
  const answer: unknown = await response.json().catch((cause: unknown) => {
    throw new Unreachable(cause)
  })
  if (response.ok) return (answer as FileAnswer).sha256
  const { title, problems } = answer as ProblemAnswer
  throw new Refused(response.status, title, problems)
}

/** The text of a stored file, to the letter. */
export async function storedText(sha256: string): Promise<string> {
  const response = await fetch(fileUrl(sha256), { credentials: "same-origin" }).catch((cause: unknown) => {
    throw new Unreachable(cause)
  })
  if (response.ok) return response.text()
  const { title, problems } = (await response.json()) as ProblemAnswer
  throw new Refused(response.status, title, problems)
}

export const fileUrl = (sha256: string): string => `/api/files/${sha256}`
