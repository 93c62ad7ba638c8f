import {
  MutationCache,
  QueryCache,
  QueryClient,
  useMutation,
  useQuery,
  useQueryClient,
} from "@tanstack/react-query"
import type { ChildList, ChildView, NewChildBody } from "../server/contract/child.js"
import type { PracticeAnswer } from "../server/contract/practice.js"
import type { PaperBody, RulesAnswer } from "../server/contract/rules.js"
import type { SessionAnswer } from "../server/contract/session.js"
import type { TodayAnswer } from "../server/contract/today.js"
import { ask, Refused } from "./client.js"

/** What the pages ask of the server, and what is remembered of its answers. */

export function queryClient(): QueryClient {
  // A session that has run out shows the log-in in place of the page; what was typed is kept with the page's address.
  const onError = (error: Error) => {
    if (error instanceof Refused && error.status === 401) client.setQueryData(["session"], null)
  }
  const client = new QueryClient({
    queryCache: new QueryCache({ onError }),
    mutationCache: new MutationCache({ onError }),
    defaultOptions: {
      queries: {
        staleTime: 30_000,
        // A refusal will be the same again; only what went wrong on the way is tried once more.
        retry: (failures, error) => !(error instanceof Refused) && failures < 1,
      },
    },
  })
  return client
}

/** Who is logged in; null when nobody is. */
export function useSession() {
  return useQuery({
    queryKey: ["session"],
    staleTime: Number.POSITIVE_INFINITY,
    queryFn: async (): Promise<SessionAnswer | null> => {
      try {
        return await ask<SessionAnswer>("GET", "/api/session")
      } catch (error) {
        if (error instanceof Refused && error.status === 401) return null
        throw error
      }
    },
  })
}

export function useLogIn() {
  const client = useQueryClient()
  return useMutation({
    mutationFn: (body: { name: string; password: string }) =>
      ask<SessionAnswer>("POST", "/api/session", body),
    onSuccess: (session) => client.setQueryData(["session"], session),
  })
}

export function useLogOut() {
  const client = useQueryClient()
  return useMutation({
    mutationFn: () => ask<void>("DELETE", "/api/session"),
    // Nothing of any child may stay behind in the page once the person has left.
    onSettled: () => {
      client.setQueryData(["session"], null)
      client.removeQueries({ predicate: ({ queryKey }) => queryKey[0] !== "session" })
    },
  })
}

export function usePractice() {
  return useQuery({
    queryKey: ["practice"],
    queryFn: () => ask<PracticeAnswer>("GET", "/api/practice"),
  })
}

/** The practice's own papers, with every version there was. */
export function useRules() {
  return useQuery({ queryKey: ["rules"], queryFn: () => ask<RulesAnswer>("GET", "/api/rules") })
}

/** Records a paper of the practice; everything worked out under the former rules is asked for anew. */
export function useRecordPaper(kind: string) {
  const client = useQueryClient()
  return useMutation({
    mutationFn: (body: PaperBody) => ask<RulesAnswer>("POST", `/api/rules/${kind}`, body),
    onSuccess: (answer) => {
      client.setQueryData(["rules"], answer)
      return client.invalidateQueries({ predicate: ({ queryKey }) => queryKey[0] !== "rules" })
    },
  })
}

export function useChildren({ search, page }: { search: string; page: number }) {
  const query = new URLSearchParams({ search, page: String(page) })
  return useQuery({
    queryKey: ["children", search, page],
    queryFn: () => ask<ChildList>("GET", `/api/children?${query}`),
    placeholderData: (before) => before,
  })
}

/** Who is owed what; asked again by itself while the server is still reading the children. */
export function useToday(query: {
  readonly role: string | undefined
  readonly search: string
  readonly group: string | undefined
  readonly page: number
}) {
  const filled = Object.entries(query).filter(([, value]) => value !== undefined && value !== "")
  const asked = new URLSearchParams(filled.map(([name, value]) => [name, String(value)]))
  return useQuery({
    queryKey: ["today", asked.toString()],
    queryFn: () => ask<TodayAnswer>("GET", `/api/today?${asked}`),
    placeholderData: (before) => before,
    refetchInterval: ({ state: { data } }) => (data && data.read < data.total ? 1000 : false),
  })
}

export function useChild(id: string) {
  return useQuery({
    queryKey: ["child", id],
    queryFn: () => ask<ChildView>("GET", `/api/children/${id}`),
  })
}

export function useAddChild() {
  const keep = useKeepChild()
  return useMutation({
    mutationFn: (body: NewChildBody) => ask<ChildView>("POST", "/api/children", body),
    onSuccess: keep,
  })
}

/**
 * Records something about a child. `path` stands below the child's own, such as "visits" or "treatments/ID/end".
 * The answer is the child as it then stands, so the page shows it at once.
 */
export function useRecord<Body>(childId: string, path: string) {
  const keep = useKeepChild()
  return useMutation({
    mutationFn: (body: Body) => ask<ChildView>("POST", `/api/children/${childId}/${path}`, body),
    onSuccess: keep,
  })
}

function useKeepChild() {
  const client = useQueryClient()
  return (view: ChildView) => {
    client.setQueryData(["child", view.child.id], view)
    return client.invalidateQueries({
      predicate: ({ queryKey }) => queryKey[0] === "children" || queryKey[0] === "today",
    })
  }
}
