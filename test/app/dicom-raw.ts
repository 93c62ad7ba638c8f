import { connect, type Socket } from "node:net"
import { pdu } from "../../src/server/dicom/associate.js"
import { ascii, u16, u16le, u32, u32le } from "../../src/server/dicom/bytes.js"

/** A sender that says exactly what a test wants said, right or wrong. */

export const AXIAL = "1.2.840.10008.5.1.4.1.1.78.7"
export const PDF = "1.2.840.10008.5.1.4.1.1.104.1"
export const VERIFICATION = "1.2.840.10008.1.1"
export const EXPLICIT = "1.2.840.10008.1.2.1"
export const IMPLICIT = "1.2.840.10008.1.2"

const item = (type: number, ...parts: readonly Uint8Array[]): Buffer => {
  const content = Buffer.concat(parts)
  return Buffer.concat([Uint8Array.of(type, 0), u16(content.length), content])
}

export interface Proposal {
  readonly called?: string
  readonly calling?: string
  readonly contexts?: readonly (readonly [id: number, abstract: string, ...transfers: string[]])[]
  readonly version?: number
  readonly application?: string
  readonly mostBytes?: number
}

export const associateRequest = ({
  called = "LENGTHWISE",
  calling = "BIOMETER",
  contexts = [[1, AXIAL, EXPLICIT]],
  version = 1,
  application = "1.2.840.10008.3.1.1.1",
  mostBytes = 16384,
}: Proposal = {}): Buffer =>
  pdu(1, [
    u16(version),
    u16(0),
    ascii(called.padEnd(16)),
    ascii(calling.padEnd(16)),
    Buffer.alloc(32),
    item(0x10, ascii(application)),
    ...contexts.map(([id, abstract, ...transfers]) =>
      item(
        0x20,
        Uint8Array.of(id, 0, 0, 0),
        item(0x30, ascii(abstract)),
        ...transfers.map((uid) => item(0x40, ascii(uid))),
      ),
    ),
    item(0x50, item(0x51, u32(mostBytes))),
  ])

const even = (text: string) => Buffer.concat([ascii(text), Buffer.alloc(text.length % 2)])
const element = (number: number, value: Uint8Array) =>
  Buffer.concat([u16le(0), u16le(number), u32le(value.length), value])

/** The command of a C-STORE (1), C-ECHO (30H) or anything else. */
export function command({
  field = 1,
  sopClass = AXIAL,
  instance = "2.25.1",
  hasDataSet = true,
}: {
  readonly field?: number
  readonly sopClass?: string
  readonly instance?: string
  readonly hasDataSet?: boolean
} = {}): Buffer {
  const set = Buffer.concat([
    element(0x0002, even(sopClass)),
    element(0x0100, u16le(field)),
    element(0x0110, u16le(7)),
    element(0x0800, u16le(hasDataSet ? 1 : 0x0101)),
    ...(field === 1 ? [element(0x1000, even(instance))] : []),
  ])
  return Buffer.concat([element(0, u32le(set.length)), set])
}

/** A fragment in a P-DATA unit of its own. */
export const fragment = (part: Uint8Array, { context = 1, isCommand = false, isLast = true } = {}): Buffer =>
  pdu(4, [u32(part.length + 2), Uint8Array.of(context, (isCommand ? 1 : 0) | (isLast ? 2 : 0)), part])

/** A whole C-STORE. */
export const store = (dataSet: Uint8Array, options: Parameters<typeof command>[0] = {}): Buffer =>
  Buffer.concat([fragment(command(options), { isCommand: true }), fragment(dataSet)])

/** A data set with a class and an instance and nothing else, explicit little endian. */
export function dataSet(instance = "2.25.1", sopClass = AXIAL): Buffer {
  const short = (number: number, value: Buffer) =>
    Buffer.concat([u16le(8), u16le(number), ascii("UI"), u16le(value.length), value])
  return Buffer.concat([short(0x16, even(sopClass)), short(0x18, even(instance))])
}

export interface RawAnswer {
  readonly type: number
  readonly body: Buffer
  /** Of an answer to a command. */
  readonly status: number | null
}

/** Sends bytes and gathers what comes back until the other side closes, or for `ms`. */
export async function say(
  port: number,
  bytes: readonly (Uint8Array | number)[],
  { ms = 15_000, hangUp = false } = {},
): Promise<readonly RawAnswer[]> {
  const socket = connect(port, "127.0.0.1")
  socket.on("error", () => {})
  const got: Buffer[] = []
  socket.on("data", (part) => got.push(part))
  const closed = new Promise<void>((resolve) => socket.once("close", () => resolve()))
  for (const part of bytes) {
    if (typeof part === "number") await new Promise((resolve) => setTimeout(resolve, part))
    else await written(socket, part)
  }
  if (hangUp) socket.destroy()
  await Promise.race([closed, new Promise((resolve) => setTimeout(resolve, ms).unref())])
  socket.destroy()
  return answers(Buffer.concat(got))
}

const written = (socket: Socket, part: Uint8Array) =>
  new Promise<void>((resolve) => {
    if (socket.destroyed) return resolve()
    socket.write(part, () => resolve())
  })

function answers(bytes: Buffer): readonly RawAnswer[] {
  const found: RawAnswer[] = []
  for (let at = 0; at + 6 <= bytes.length; ) {
    const length = bytes.readUInt32BE(at + 2)
    const body = bytes.subarray(at + 6, at + 6 + length)
    found.push({ type: bytes[at] ?? 0, body, status: statusOf(bytes[at] ?? 0, body) })
    at += 6 + length
  }
  return found
}

function statusOf(type: number, body: Buffer): number | null {
  if (type !== 4) return null
  // Group 0, element 0900, two bytes: behind length, context and control byte.
  const at = body.indexOf(Buffer.from([0, 0, 0, 9, 2, 0, 0, 0]), 6)
  return at < 0 ? null : body.readUInt16LE(at + 8)
}

export const release = (): Buffer => pdu(5, [new Uint8Array(4)])
