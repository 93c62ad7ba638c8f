import { ConversationFault, type Fault } from "./fault.js"

/** Reads forward through bytes; asking for more than there is, is a fault of who sent them. */
export function byteReader(bytes: Uint8Array, fault: Fault = "malformed-pdu") {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  let at = 0
  const forward = (count: number): number => {
    if (count > bytes.length - at) throw new ConversationFault(fault)
    const from = at
    at += count
    return from
  }
  return {
    left: () => bytes.length - at,
    skip: (count: number): void => {
      forward(count)
    },
    u8: () => view.getUint8(forward(1)),
    u16: () => view.getUint16(forward(2)),
    u32: () => view.getUint32(forward(4)),
    u16le: () => view.getUint16(forward(2), true),
    u32le: () => view.getUint32(forward(4), true),
    /** A view of the same memory, no copy. */
    take: (count: number): Uint8Array => {
      const from = forward(count)
      return bytes.subarray(from, from + count)
    },
  }
}

const latin1 = new TextDecoder("latin1")

/** Text of the default repertoire, without the blanks and zeros that pad it. */
export const paddedText = (bytes: Uint8Array): string => latin1.decode(bytes).replace(/[\0 ]+$|^ +/g, "")

/** What can be printed of text that anyone may have sent: no control characters, nothing beyond ASCII. */
export const printable = (text: string): string => text.replace(/[^\x20-\x7e]/g, "?")

export const ascii = (text: string): Buffer => Buffer.from(printable(text), "latin1")

export const u16 = (value: number): Buffer => {
  const bytes = Buffer.alloc(2)
  bytes.writeUInt16BE(value)
  return bytes
}

export const u32 = (value: number): Buffer => {
  const bytes = Buffer.alloc(4)
  bytes.writeUInt32BE(value)
  return bytes
}

export const u16le = (value: number): Buffer => {
  const bytes = Buffer.alloc(2)
  bytes.writeUInt16LE(value)
  return bytes
}

export const u32le = (value: number): Buffer => {
  const bytes = Buffer.alloc(4)
  bytes.writeUInt32LE(value)
  return bytes
}
