import { useMutation, useQuery, useQueryClient } from "@tanstack/react-query"
import type { ArchivesAnswer } from "../../server/contract/leave.js"
import { ask } from "../client.js"

const KEY = ["archives"]

/** The last archives; asked again by itself while one is being made. */
export function useArchives() {
  return useQuery({
    queryKey: KEY,
    queryFn: () => ask<ArchivesAnswer>("GET", "/api/archives"),
    refetchInterval: ({ state: { data } }) =>
      data?.archives.some(({ state }) => state === "running") ? 700 : false,
  })
}

function useKeepArchives() {
  const client = useQueryClient()
  return (answer: ArchivesAnswer) => client.setQueryData(KEY, answer)
}

export function useMakeArchive() {
  const onSuccess = useKeepArchives()
  return useMutation({
    mutationFn: (body: { readonly withPapers: boolean; readonly password: string }) =>
      ask<ArchivesAnswer>("POST", "/api/archives", body),
    onSuccess,
  })
}

export function useRemoveArchive() {
  const onSuccess = useKeepArchives()
  return useMutation({
    mutationFn: (id: string) => ask<ArchivesAnswer>("DELETE", `/api/archives/${id}`),
    onSuccess,
  })
}

/** A download says nothing to the page: what became of the file is asked a little later. */
export function useLookAgain() {
  const client = useQueryClient()
  return () => setTimeout(() => void client.invalidateQueries({ queryKey: KEY }), 1500)
}
