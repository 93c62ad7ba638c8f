import type { PracticeRules } from "../practice-rules.js"
import type { Protocol } from "./protocol.js"
import { shippedProtocols } from "./shipped.js"

/** Every protocol a practice can choose from: those that ship, its own copies in their place, then its own others. */
export function protocolsOf({ protocols }: Pick<PracticeRules, "protocols">): readonly Protocol[] {
  const shipped = shippedProtocols.map((one) => protocols.find(({ id }) => id === one.id) ?? one)
  return [...shipped, ...protocols.filter(({ id }) => !shipped.some((one) => one.id === id))]
}
