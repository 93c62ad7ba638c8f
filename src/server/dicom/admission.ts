import type { InstrumentRules } from "../../engine/practice-rules.js"

/** Who may send to us under which of our titles. */
export interface Admission {
  readonly title: string
  readonly isCalled: (title: string) => boolean
  readonly isAllowed: (title: string) => boolean
}

/** Ours until a practice names its own. */
export const OWN_TITLE = "LENGTHWISE"
/** What senders call who has not been named to them. */
const ANY_TITLE = "ANY-SCP"

/**
 * A practice's settings alone decide once there are any. Without them, and where only this machine can reach us,
 * programs of this machine may send under any title, so that the receiver can be tried before anything is set.
 */
export function admission(
  rules: InstrumentRules | undefined,
  {
    isFromHere,
    isForThisMachineOnly,
  }: { readonly isFromHere: boolean; readonly isForThisMachineOnly: boolean },
): Admission {
  if (rules)
    return {
      title: rules.title,
      isCalled: (title) => title === rules.title,
      isAllowed: (title) => rules.isOn && rules.allowed.includes(title),
    }
  return {
    title: OWN_TITLE,
    isCalled: (title) => title === OWN_TITLE || title === ANY_TITLE,
    isAllowed: () => isFromHere && isForThisMachineOnly,
  }
}

/** Whether an address or host name is of this machine alone. */
export const isLoopback = (address: string): boolean =>
  address === "localhost" || address === "::1" || /^127\.\d+\.\d+\.\d+$/.test(plainAddress(address))

/** An IPv4 address that came over IPv6, as people write it. */
export const plainAddress = (address: string): string => address.replace(/^::ffff:(?=\d+\.)/i, "")
