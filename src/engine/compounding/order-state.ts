import type { BottleOrder } from "../course.js"

export type OrderState = "ordered" | "confirmed" | "received" | "cancelled"

/** How far an order has come. What was called off stays called off, whatever else is recorded of it. */
export function orderState({ confirmed, received, cancelled }: BottleOrder): OrderState {
  if (cancelled !== undefined) return "cancelled"
  if (received !== undefined) return "received"
  return confirmed === undefined ? "ordered" : "confirmed"
}

/** Whether bottles of it are still expected. */
export function isAwaited(order: BottleOrder): boolean {
  const state = orderState(order)
  return state === "ordered" || state === "confirmed"
}
