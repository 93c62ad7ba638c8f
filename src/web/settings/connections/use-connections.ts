import { useMutation, useQuery, useQueryClient } from "@tanstack/react-query"
import type { DeliveryState } from "../../../engine/access/webhook-events.js"
import type { AddTokenAnswer, NewTokenBody, TokensAnswer } from "../../../server/contract/tokens.js"
import type {
  AddWebhookAnswer,
  DeliveriesAnswer,
  NewsLookAnswer,
  NewWebhookBody,
  WebhooksAnswer,
} from "../../../server/contract/webhooks.js"
import { ask } from "../../client.js"

/** How often the deliveries are asked for again by themselves: they leave without anybody pressing anything. */
const AGAIN_MS = 20_000

export const useTokens = () =>
  useQuery({ queryKey: ["connections", "tokens"], queryFn: () => ask<TokensAnswer>("GET", "/api/tokens") })

export const useWebhooks = () =>
  useQuery({
    queryKey: ["connections", "webhooks"],
    queryFn: () => ask<WebhooksAnswer>("GET", "/api/webhooks"),
    refetchInterval: AGAIN_MS,
  })

export function useDeliveries(query: {
  readonly search: string
  readonly state: DeliveryState | ""
  readonly page: number
}) {
  const { search, state, page } = query
  const asked = new URLSearchParams({ search, page: String(page), ...(state ? { state } : {}) })
  return useQuery({
    queryKey: ["connections", "deliveries", asked.toString()],
    queryFn: () => ask<DeliveriesAnswer>("GET", `/api/webhooks/deliveries?${asked}`),
    placeholderData: (before) => before,
    refetchInterval: AGAIN_MS,
  })
}

/** Something done about connections; everything shown of them is asked for anew. */
function useDoing<Asked, Answer>(doing: (asked: Asked) => Promise<Answer>) {
  const client = useQueryClient()
  return useMutation({
    mutationFn: doing,
    onSuccess: () => client.invalidateQueries({ queryKey: ["connections"] }),
  })
}

export const useAddToken = () =>
  useDoing((body: NewTokenBody) => ask<AddTokenAnswer>("POST", "/api/tokens", body))

export const useRevokeToken = () => useDoing((id: string) => ask<TokensAnswer>("DELETE", `/api/tokens/${id}`))

export const useAddWebhook = () =>
  useDoing((body: NewWebhookBody) => ask<AddWebhookAnswer>("POST", "/api/webhooks", body))

export const useSetWebhook = () =>
  useDoing(({ id, state }: { readonly id: string; readonly state: "on" | "off" }) =>
    ask<WebhooksAnswer>("POST", `/api/webhooks/${id}/state`, { state }),
  )

export const useRemoveWebhook = () =>
  useDoing((id: string) => ask<WebhooksAnswer>("DELETE", `/api/webhooks/${id}`))

export const useLookForNews = () =>
  useDoing((_: undefined) => ask<NewsLookAnswer>("POST", "/api/webhooks/look"))

export const useDeliverAgain = () =>
  useDoing((id: string) => ask<DeliveriesAnswer>("POST", `/api/webhooks/deliveries/${id}/again`))
