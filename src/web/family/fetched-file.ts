import { language } from "../../engine/say.js"
import type { ProblemAnswer } from "../../server/contract/problem.js"
import { Refused, Unreachable } from "../client.js"

/** What is fetched by a request with a body, and the name it is kept under: nothing of the child stands in either. */
export interface FetchedFile {
  readonly url: string
  readonly body: object
  readonly name: string
}

/** Fetches a file and hands it to the browser to keep. */
export async function fetchedFile({ url, body, name }: FetchedFile): Promise<void> {
  const response = await fetch(url, {
    method: "POST",
    credentials: "same-origin",
    headers: { "content-type": "application/json", "accept-language": language() },
    body: JSON.stringify(body),
  }).catch((cause: unknown) => {
    throw new Unreachable(cause)
  })
  if (!response.ok) {
    const { title, problems } = (await response.json()) as ProblemAnswer
    throw new Refused(response.status, title, problems)
  }
  const address = URL.createObjectURL(await response.blob())
  const link = document.createElement("a")
  link.href = address
  link.download = name
  link.click()
  // The browser has taken it by then.
  setTimeout(() => URL.revokeObjectURL(address), 10_000)
}
