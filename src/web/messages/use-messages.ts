import { useMutation, useQuery, useQueryClient } from "@tanstack/react-query"
import type {
  LookAnswer,
  MessageAnswer,
  MessagesAnswer,
  NewListAnswer,
  PlanAnswer,
  TestMailAnswer,
} from "../../server/contract/messages.js"
import { ask } from "../client.js"
import type { MessagesSearch } from "./messages-search.js"

/** How often the page asks again by itself: messages leave without anybody pressing anything. */
const AGAIN_MS = 20_000

export function useMessages({ state, search, page = 1 }: MessagesSearch) {
  const asked = new URLSearchParams({
    ...(state ? { state } : {}),
    ...(search ? { search } : {}),
    page: String(page),
  })
  return useQuery({
    queryKey: ["messages", asked.toString()],
    queryFn: () => ask<MessagesAnswer>("GET", `/api/messages?${asked}`),
    placeholderData: (before) => before,
    refetchInterval: AGAIN_MS,
  })
}

export function useMessagePlan() {
  return useQuery({
    queryKey: ["messages", "plan"],
    queryFn: () => ask<PlanAnswer>("GET", "/api/messages/plan"),
  })
}

export function useMessage(id: string) {
  return useQuery({
    queryKey: ["messages", "one", id],
    queryFn: () => ask<MessageAnswer>("GET", `/api/messages/${id}`),
  })
}

/** Something done about messages; everything shown of them is asked for anew. */
function useDoing<Asked, Answer>(doing: (asked: Asked) => Promise<Answer>) {
  const client = useQueryClient()
  return useMutation({
    mutationFn: doing,
    onSuccess: () => client.invalidateQueries({ queryKey: ["messages"] }),
  })
}

type Move =
  | { readonly to: "cancel" | "retry" }
  | { readonly to: "resolution"; readonly was: "sent" | "not-sent" }

export const useMoveMessage = (id: string) =>
  useDoing((move: Move) =>
    ask<MessageAnswer>(
      "POST",
      `/api/messages/${id}/${move.to}`,
      move.to === "resolution" ? { was: move.was } : undefined,
    ),
  )

export const useLook = () => useDoing((_: undefined) => ask<LookAnswer>("POST", "/api/messages/look"))

export const useTestMail = () =>
  useDoing((to: string) => ask<TestMailAnswer>("POST", "/api/messages/test", { to }))

export const useHandOver = () =>
  useDoing((channel: "sms" | "post") => ask<NewListAnswer>("POST", "/api/messages/lists", { channel }))

export const useTakeBack = () =>
  useDoing((list: string) => ask<{ readonly count: number }>("POST", `/api/messages/lists/${list}/return`))
