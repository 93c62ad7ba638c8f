import { pdu } from "./associate.js"
import { u32 } from "./bytes.js"
import { PDU } from "./pdu-reader.js"

/** Why a request to associate is rejected: result, source and reason of PS3.8 table 9-21. */
export const REJECTION = {
  "no-such-application": [1, 1, 2],
  "unknown-calling-title": [1, 1, 3],
  "unknown-called-title": [1, 1, 7],
  "unknown-protocol-version": [1, 2, 2],
  "too-many-associations": [2, 3, 2],
} as const
export type Rejection = keyof typeof REJECTION

export const associateReject = (rejection: Rejection): Buffer =>
  pdu(PDU.associateReject, [Uint8Array.of(0, ...REJECTION[rejection])])

export const releaseReply = (): Buffer => pdu(PDU.releaseReply, [new Uint8Array(4)])

/** Source 2 is the provider; the reasons are those of PS3.8 table 9-26. */
export const ABORT_REASON = { none: 0, unknownPdu: 1, unexpectedPdu: 2, invalidParameter: 6 } as const
export type AbortReason = (typeof ABORT_REASON)[keyof typeof ABORT_REASON]

export const providerAbort = (reason: AbortReason): Buffer => pdu(PDU.abort, [Uint8Array.of(0, 0, 2, reason)])

const COMMAND = 1
const LAST = 2
/** Length, context and control byte of a fragment, in a PDU of its own. */
const FRAGMENT_BYTES = 6
const SMALLEST_PDU_BYTES = 128

/** A command as the PDUs that carry it, none longer than the other side takes. */
export function commandPdus(
  command: Uint8Array,
  { contextId, mostBytes }: { readonly contextId: number; readonly mostBytes: number },
): Buffer {
  const room = mostBytes === 0 ? command.length : Math.max(mostBytes, SMALLEST_PDU_BYTES) - FRAGMENT_BYTES
  const pdus: Buffer[] = []
  for (let at = 0; at < command.length; at += room) {
    const part = command.subarray(at, at + room)
    const isLast = at + room >= command.length
    pdus.push(
      pdu(PDU.data, [
        u32(part.length + 2),
        Uint8Array.of(contextId, isLast ? COMMAND | LAST : COMMAND),
        part,
      ]),
    )
  }
  return Buffer.concat(pdus)
}
