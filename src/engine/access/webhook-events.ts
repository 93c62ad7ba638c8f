/** What an address of another program can be told of. */
export const WEBHOOK_EVENTS = ["finding-new", "duty-open", "duty-overdue", "object-waiting"] as const
export type WebhookEvent = (typeof WEBHOOK_EVENTS)[number]

/** `off` by a person, `disabled` by the program after many failures. */
export const WEBHOOK_STATES = ["on", "off", "disabled", "removed"] as const
export type WebhookState = (typeof WEBHOOK_STATES)[number]

/**
 * `sending` is written to the disk before the receiver hears of it: what is found in it after a restart may have arrived,
 * and is sent again under the same id.
 */
export const DELIVERY_STATES = ["waiting", "sending", "delivered", "failed", "cancelled"] as const
export type DeliveryState = (typeof DELIVERY_STATES)[number]

export const DELIVERY_PROBLEMS = [
  /** The receiver answered with another status than 2xx. */
  "status",
  /** The receiver answered with a redirect, which is not followed. */
  "redirect",
  /** No answer in time. */
  "timeout",
  /** No connection, or one that was dropped. */
  "unreachable",
  /** The receiver's certificate is not to be trusted. */
  "tls",
  /** The name leads to an address inside a network, where nothing is sent. */
  "private-address",
  /** The program ended while it was under way. */
  "interrupted",
  /** A person asked for another delivery. */
  "again",
  /** The address was removed. */
  "removed",
] as const
export type DeliveryProblem = (typeof DELIVERY_PROBLEMS)[number]
