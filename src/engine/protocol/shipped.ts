import { opticalProtocol } from "./optical.js"
import type { Protocol } from "./protocol.js"
import { standardProtocol } from "./standard.js"
import { stepDownProtocol } from "./step-down.js"
import { watchfulProtocol } from "./watchful.js"

/** The protocols that ship, in the order of a list. */
export const shippedProtocols: readonly Protocol[] = [
  standardProtocol,
  opticalProtocol,
  watchfulProtocol,
  stepDownProtocol,
]
