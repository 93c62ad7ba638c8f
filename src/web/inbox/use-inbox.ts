import { useMutation, useQuery, useQueryClient } from "@tanstack/react-query"
import type {
  InboxAnswer,
  InboxCountsAnswer,
  InboxItemAnswer,
  TakeInboxBody,
} from "../../server/contract/inbox.js"
import { ask } from "../client.js"
import type { InboxSearch } from "./inbox-search.js"

/** How often the page asks again by itself: instruments send without anybody pressing anything. */
const AGAIN_MS = 20_000

export function useInbox({ state = "waiting", search, page = 1 }: InboxSearch) {
  const asked = new URLSearchParams({ state, ...(search ? { search } : {}), page: String(page) })
  return useQuery({
    queryKey: ["inbox", asked.toString()],
    queryFn: () => ask<InboxAnswer>("GET", `/api/inbox?${asked}`),
    placeholderData: (before) => before,
    refetchInterval: AGAIN_MS,
  })
}

export function useInboxCounts() {
  return useQuery({
    queryKey: ["inbox", "counts"],
    queryFn: () => ask<InboxCountsAnswer>("GET", "/api/inbox/counts"),
    refetchInterval: AGAIN_MS,
  })
}

export function useInboxItem(id: string, child: string | null) {
  return useQuery({
    queryKey: ["inbox", "one", id, child],
    queryFn: () => ask<InboxItemAnswer>("GET", `/api/inbox/${id}${child ? `?child=${child}` : ""}`),
    placeholderData: (before) => (before?.id === id ? before : undefined),
  })
}

type Deciding =
  | { readonly to: "take"; readonly body: TakeInboxBody }
  | { readonly to: "set-aside"; readonly body: { readonly reason: string } }
  | { readonly to: "undo"; readonly body: { readonly reason?: string } }

/** Something decided about an object; whatever the page shows of children may have changed with it. */
export function useDecide(id: string) {
  const client = useQueryClient()
  return useMutation({
    mutationFn: ({ to, body }: Deciding) => ask<InboxItemAnswer>("POST", `/api/inbox/${id}/${to}`, body),
    // Not waited for: with the fresh object the part of the page that asked may be gone before it can say what was done.
    onSuccess: () => {
      void client.invalidateQueries({ predicate: ({ queryKey }) => queryKey[0] !== "session" })
    },
  })
}
