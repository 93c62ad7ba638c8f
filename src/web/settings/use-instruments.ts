import { useQuery } from "@tanstack/react-query"
import type { InstrumentsAnswer } from "../../server/contract/instruments.js"
import { ask } from "../client.js"

/** How often the page asks again by itself: somebody stands at the instrument and presses its button. */
const AGAIN_MS = 4000

export interface AskedInstruments {
  readonly search: string
  readonly only: "received" | "refused" | null
  readonly page: number
}

/** Whether the receiver listens, who was heard, what was taken and refused. */
export function useInstruments({ search, only, page }: AskedInstruments) {
  const asked = new URLSearchParams({
    ...(search ? { search } : {}),
    ...(only ? { only } : {}),
    page: String(page),
  })
  return useQuery({
    queryKey: ["instruments", asked.toString()],
    queryFn: () => ask<InstrumentsAnswer>("GET", `/api/instruments?${asked}`),
    placeholderData: (before) => before,
    refetchInterval: AGAIN_MS,
  })
}
