import { ascii, byteReader, paddedText, u16, u32 } from "./bytes.js"
import { ConversationFault } from "./fault.js"
import { PDU } from "./pdu-reader.js"

/** A request to associate (PS3.8 9.3.2), as far as we ask for it. */
export interface AssociateRequest {
  readonly protocolVersion: number
  readonly called: string
  readonly calling: string
  /** Both titles as they came: they go back unchanged. */
  readonly titleBytes: Uint8Array
  readonly application: string
  readonly contexts: readonly ProposedContext[]
  /** Longest PDU that the other side takes; 0 for any. */
  readonly mostBytes: number
}

export interface ProposedContext {
  readonly id: number
  readonly abstractSyntax: string
  readonly transferSyntaxes: readonly string[]
}

/** What became of a proposed context (PS3.8 9.3.3.2). */
export interface AnsweredContext {
  readonly id: number
  readonly result: ContextResult
  readonly transferSyntax: string
}

export const CONTEXT_RESULT = {
  accepted: 0,
  noSuchAbstractSyntax: 3,
  noSuchTransferSyntax: 4,
} as const
export type ContextResult = (typeof CONTEXT_RESULT)[keyof typeof CONTEXT_RESULT]

/** The one application context there is (PS3.7 A.2.1). */
export const APPLICATION_CONTEXT = "1.2.840.10008.3.1.1.1"

const ITEM = {
  application: 0x10,
  context: 0x20,
  answeredContext: 0x21,
  abstractSyntax: 0x30,
  transferSyntax: 0x40,
  user: 0x50,
  mostBytes: 0x51,
  implementationClass: 0x52,
  implementationVersion: 0x55,
} as const
const MOST_CONTEXTS = 128
/** Two titles of 16 characters and 32 reserved bytes follow the version (PS3.8 table 9-11). */
const TITLES_BYTES = 32
const RESERVED_BYTES = 32

/** Made up once for Lengthwise, from a UUID (PS3.5 B.2). */
export const IMPLEMENTATION_CLASS = "2.25.147706451640079714034446349586801850897"
export const IMPLEMENTATION_VERSION = "LENGTHWISE"

export function readAssociateRequest(body: Uint8Array): AssociateRequest {
  const reader = byteReader(body)
  const protocolVersion = reader.u16()
  reader.skip(2)
  const titleBytes = reader.take(TITLES_BYTES)
  reader.skip(RESERVED_BYTES)
  const contexts: ProposedContext[] = []
  let application = ""
  let mostBytes = 0
  for (const { type, content } of items(reader.take(reader.left()))) {
    if (type === ITEM.application) application = paddedText(content)
    else if (type === ITEM.context) contexts.push(contextOf(content))
    else if (type === ITEM.user) mostBytes = mostBytesOf(content)
    if (contexts.length > MOST_CONTEXTS) throw new ConversationFault("malformed-pdu")
  }
  return {
    protocolVersion,
    called: paddedText(titleBytes.subarray(0, 16)),
    calling: paddedText(titleBytes.subarray(16)),
    titleBytes,
    application,
    contexts,
    mostBytes,
  }
}

function* items(bytes: Uint8Array): Generator<{ readonly type: number; readonly content: Uint8Array }> {
  const reader = byteReader(bytes)
  while (reader.left() > 0) {
    const type = reader.u8()
    reader.skip(1)
    yield { type, content: reader.take(reader.u16()) }
  }
}

function contextOf(content: Uint8Array): ProposedContext {
  const reader = byteReader(content)
  const id = reader.u8()
  reader.skip(3)
  // Odd numbers only (PS3.8 9.3.2.2).
  if (id % 2 === 0) throw new ConversationFault("malformed-pdu")
  let abstractSyntax = ""
  const transferSyntaxes: string[] = []
  for (const item of items(reader.take(reader.left()))) {
    if (item.type === ITEM.abstractSyntax) abstractSyntax = paddedText(item.content)
    if (item.type === ITEM.transferSyntax) transferSyntaxes.push(paddedText(item.content))
  }
  return { id, abstractSyntax, transferSyntaxes }
}

function mostBytesOf(user: Uint8Array): number {
  for (const { type, content } of items(user)) if (type === ITEM.mostBytes) return byteReader(content).u32()
  return 0
}

/** The answer that accepts (PS3.8 9.3.3): what became of each context, and the longest PDU that we take. */
export function associateAccept({
  request,
  contexts,
  mostBytes,
}: {
  readonly request: AssociateRequest
  readonly contexts: readonly AnsweredContext[]
  readonly mostBytes: number
}): Buffer {
  return pdu(PDU.associateAccept, [
    u16(1),
    u16(0),
    request.titleBytes,
    Buffer.alloc(RESERVED_BYTES),
    item(ITEM.application, [ascii(APPLICATION_CONTEXT)]),
    ...contexts.map(({ id, result, transferSyntax }) =>
      item(ITEM.answeredContext, [
        Uint8Array.of(id, 0, result, 0),
        item(ITEM.transferSyntax, [ascii(transferSyntax)]),
      ]),
    ),
    item(ITEM.user, [
      item(ITEM.mostBytes, [u32(mostBytes)]),
      item(ITEM.implementationClass, [ascii(IMPLEMENTATION_CLASS)]),
      item(ITEM.implementationVersion, [ascii(IMPLEMENTATION_VERSION)]),
    ]),
  ])
}

function item(type: number, parts: readonly Uint8Array[]): Buffer {
  const content = Buffer.concat(parts)
  return Buffer.concat([Uint8Array.of(type, 0), u16(content.length), content])
}

/** A PDU of these parts. */
export function pdu(type: number, parts: readonly Uint8Array[]): Buffer {
  const body = Buffer.concat(parts)
  return Buffer.concat([Uint8Array.of(type, 0), u32(body.length), body])
}
