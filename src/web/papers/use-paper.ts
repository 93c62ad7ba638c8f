import { useQuery } from "@tanstack/react-query"
import { language } from "../../engine/say.js"
import type { ShownDocument } from "../../server/contract/documents.js"
import type { ProblemAnswer } from "../../server/contract/problem.js"
import { ask, Refused, Unreachable } from "../client.js"
import { saveAs } from "./keep-figure.js"
import { type PaperChoice, paperAddress } from "./paper-address.js"

/** A paper of a child as the record stands; made anew when `state`, what the record holds, changes. */
export function usePaper(childId: string, choice: PaperChoice, state: string) {
  const address = paperAddress(childId, choice, "content")
  return useQuery({
    queryKey: ["paper", address, state],
    queryFn: () => ask<ShownDocument>("GET", address),
    // What is read stays in view until the other is there, but never another child's.
    placeholderData: (before, query) => (String(query?.queryKey[1]).includes(childId) ? before : undefined),
  })
}

/** Fetches the paper as a PDF and hands it to the browser to keep. */
export async function downloadPaper(childId: string, choice: PaperChoice, date: string): Promise<void> {
  const response = await fetch(paperAddress(childId, choice, "pdf"), {
    credentials: "same-origin",
    headers: { "accept-language": language() },
  }).catch((cause: unknown) => {
    throw new Unreachable(cause)
  })
  if (!response.ok) {
    const { title, problems } = (await response.json()) as ProblemAnswer
    throw new Refused(response.status, title, problems)
  }
  await saveAs(await response.blob(), `${choice.kind}-${date}.pdf`)
}
