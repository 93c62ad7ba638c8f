import { type QueryClient, useMutation, useQuery, useQueryClient } from "@tanstack/react-query"
import type {
  ImportAtWork,
  ImportsAnswer,
  MappingBody,
  SettleBody,
  TakeBackAnswer,
} from "../../server/contract/imports.js"
import { ask, Refused, Unreachable } from "../client.js"

const BUSY = ["checking", "recording", "taking-back"]
export const isBusy = (work: ImportAtWork | null | undefined): boolean =>
  work != null && BUSY.includes(work.state)

/** Earlier imports, and the one that somebody is at; asked again by itself while that one is under way. */
export function useImports({ search, page }: { readonly search: string; readonly page: number }) {
  const query = new URLSearchParams({ search, page: String(page) })
  return useQuery({
    queryKey: ["imports", search, page],
    queryFn: () => ask<ImportsAnswer>("GET", `/api/imports?${query}`),
    placeholderData: (before) => before,
    refetchInterval: ({ state: { data } }) => (isBusy(data?.atWork) ? 500 : false),
  })
}

/** What is asked for within a step and has no answer after it. */
const isOfOneStep = ([area, what]: readonly unknown[]): boolean =>
  area === "imports" && (what === "questions" || what === "undo")

const askAnew = (client: QueryClient) =>
  client.invalidateQueries({ predicate: ({ queryKey }) => !isOfOneStep(queryKey) })

/** Any step of the import at work. Everything that may have changed by it is asked for anew. */
export function useStep<Body>(
  path: (body: Body) => string,
  bodyOf: (body: Body) => unknown = () => undefined,
) {
  const client = useQueryClient()
  return useMutation({
    mutationFn: (body: Body) => ask<ImportAtWork>("POST", path(body), bodyOf(body)),
    onSettled: () => askAnew(client),
  })
}

export const useCheck = (id: string) =>
  useStep<MappingBody>(
    () => `/api/imports/${id}/check`,
    (body) => body,
  )
export const useSettle = (id: string) =>
  useStep<SettleBody>(
    () => `/api/imports/${id}/settle`,
    (body) => body,
  )

export function useQuestions(id: string, body: MappingBody) {
  return useQuery({
    queryKey: ["imports", "questions", id, body],
    queryFn: () =>
      ask<{ readonly questions: ImportAtWork["questions"] }>("POST", `/api/imports/${id}/questions`, body),
    placeholderData: (before) => before,
  })
}

export function useUndoing(id: string) {
  return useQuery({
    queryKey: ["imports", "undo", id],
    queryFn: () => ask<TakeBackAnswer>("GET", `/api/imports/${id}/undo`),
    gcTime: 0,
  })
}

export function useDiscard() {
  const client = useQueryClient()
  return useMutation({
    mutationFn: (id: string) => ask<void>("DELETE", `/api/imports/${id}`),
    onSettled: () => askAnew(client),
  })
}

/** Sends the file as it is; the browser reads it piece by piece. */
export function useUpload() {
  const client = useQueryClient()
  return useMutation({
    mutationFn: async (file: File): Promise<ImportAtWork> => {
      const url = `/api/imports?name=${encodeURIComponent(file.name.slice(-200))}`
      const headers = {
        "content-type": "application/octet-stream",
        "accept-language": document.documentElement.lang,
      }
      const response = await fetch(url, {
        method: "POST",
        credentials: "same-origin",
        headers,
        body: file,
      }).catch((cause: unknown) => {
        throw new Unreachable(cause)
      })
      const answer = await response.json()
      if (!response.ok) throw new Refused(response.status, answer.title, answer.problems ?? [])
      return answer
    },
    onSettled: () => client.invalidateQueries({ queryKey: ["imports"] }),
  })
}
