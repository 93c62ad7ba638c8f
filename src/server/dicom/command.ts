import { ascii, byteReader, paddedText, u16le, u32le } from "./bytes.js"

/** A command of PS3.7: which service is asked for, about what, and whether a data set follows. */
export interface Command {
  readonly field: number
  readonly messageId: number
  readonly sopClass: string
  readonly sopInstance: string
  readonly hasDataSet: boolean
}

export const FIELD = { store: 0x0001, echo: 0x0030, cancel: 0x0fff, response: 0x8000 } as const

/** Statuses we answer with: PS3.7 annex C, and PS3.4 table B.2-1 for storage. */
export const STATUS = {
  success: 0x0000,
  /** Stored, a part of it not. */
  elementsDiscarded: 0xb006,
  invalidInstance: 0x0117,
  noSuchClass: 0x0122,
  notAuthorized: 0x0124,
  unknownOperation: 0x0211,
  outOfResources: 0xa700,
  doesNotMatchClass: 0xa900,
  cannotUnderstand: 0xc000,
  failed: 0xc001,
} as const

const NO_DATA_SET = 0x0101
const ELEMENT = {
  groupLength: 0x0000,
  sopClass: 0x0002,
  field: 0x0100,
  messageId: 0x0110,
  repliedTo: 0x0120,
  dataSet: 0x0800,
  status: 0x0900,
  comment: 0x0902,
  sopInstance: 0x1000,
} as const

/** Reads a command set: implicit little endian whatever the context agreed on (PS3.7 6.3.1). */
export function readCommand(bytes: Uint8Array): Command {
  const reader = byteReader(bytes, "malformed-command")
  const texts = new Map<number, string>()
  const numbers = new Map<number, number>()
  while (reader.left() > 0) {
    const group = reader.u16le()
    const element = reader.u16le()
    const value = reader.take(reader.u32le())
    if (group !== 0) continue
    if (element === ELEMENT.sopClass || element === ELEMENT.sopInstance) texts.set(element, paddedText(value))
    else if (value.length === 2) numbers.set(element, byteReader(value).u16le())
  }
  return {
    field: numbers.get(ELEMENT.field) ?? 0,
    messageId: numbers.get(ELEMENT.messageId) ?? 0,
    sopClass: texts.get(ELEMENT.sopClass) ?? "",
    sopInstance: texts.get(ELEMENT.sopInstance) ?? "",
    hasDataSet: numbers.get(ELEMENT.dataSet) !== NO_DATA_SET,
  }
}

/** An Error Comment is a long string of at most 64 characters, with no backslash (PS3.5 6.2). */
const COMMENT_CHARACTERS = 64

/** The answer to a command; the comment says in English why something was not taken. */
export function commandAnswer(
  { field, messageId, sopClass, sopInstance }: Command,
  { status, comment }: { readonly status: number; readonly comment?: string | undefined },
): Buffer {
  const elements = [
    text(ELEMENT.sopClass, sopClass, "\0"),
    number(ELEMENT.field, field | FIELD.response),
    number(ELEMENT.repliedTo, messageId),
    number(ELEMENT.dataSet, NO_DATA_SET),
    number(ELEMENT.status, status),
    comment ? text(ELEMENT.comment, comment.replaceAll("\\", "/").slice(0, COMMENT_CHARACTERS), " ") : null,
    sopInstance ? text(ELEMENT.sopInstance, sopInstance, "\0") : null,
  ].filter((element) => element !== null)
  const set = Buffer.concat(elements)
  return Buffer.concat([header(ELEMENT.groupLength, 4), u32le(set.length), set])
}

const header = (element: number, length: number): Buffer =>
  Buffer.concat([u16le(0), u16le(element), u32le(length)])

const number = (element: number, value: number): Buffer => Buffer.concat([header(element, 2), u16le(value)])

/** Values have an even length (PS3.5 7.1.1). */
function text(element: number, value: string, padding: "\0" | " "): Buffer {
  const written = Buffer.concat([ascii(value), Buffer.from(value.length % 2 === 1 ? padding : "", "latin1")])
  return Buffer.concat([header(element, written.length), written])
}
