import { ConversationFault } from "./fault.js"

/** Types of the units of the upper layer (PS3.8 9.3.1). */
export const PDU = {
  associateRequest: 1,
  associateAccept: 2,
  associateReject: 3,
  data: 4,
  releaseRequest: 5,
  releaseReply: 6,
  abort: 7,
} as const

export interface Pdu {
  readonly type: number
  readonly body: Uint8Array
}

const HEADER_BYTES = 6

/**
 * Cuts a stream of bytes into PDUs, however it was split on the way. The length that a PDU claims is judged before
 * anything of it is kept, so never more than one PDU of the allowed length is held.
 *
 * @example
 * const reader = pduReader(1024)
 * ;[...reader.push(Uint8Array.of(5, 0, 0, 0))] // []
 * ;[...reader.push(Uint8Array.of(0, 4, 0, 0, 0, 0))] // [{ type: 5, body: 4 zeros }]
 */
export function pduReader(mostBytes: number) {
  const header = new Uint8Array(HEADER_BYTES)
  let headed = 0
  let body: Uint8Array | null = null
  let filled = 0

  const begun = (): Uint8Array => {
    const type = header[0] ?? 0
    if (type < PDU.associateRequest || type > PDU.abort) throw new ConversationFault("unknown-pdu")
    const length = new DataView(header.buffer).getUint32(2)
    if (length > mostBytes) throw new ConversationFault("pdu-too-long")
    return new Uint8Array(length)
  }

  return {
    /** Whether a PDU has begun and not ended. */
    isWithin: () => headed > 0,

    /** The PDUs that end within these bytes. To be read to the end before the next bytes. */
    *push(bytes: Uint8Array): Generator<Pdu> {
      let at = 0
      for (;;) {
        if (body === null) {
          const part = bytes.subarray(at, at + HEADER_BYTES - headed)
          header.set(part, headed)
          headed += part.length
          at += part.length
          if (headed < HEADER_BYTES) return
          body = begun()
          filled = 0
        }
        const part = bytes.subarray(at, at + body.length - filled)
        body.set(part, filled)
        filled += part.length
        at += part.length
        if (filled < body.length) return
        const pdu = { type: header[0] ?? 0, body }
        headed = 0
        body = null
        yield pdu
      }
    },
  }
}
