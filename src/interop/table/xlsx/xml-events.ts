import { SaxesParser } from "saxes"
import { TableFault } from "../table-types.js"
import { unsound } from "./package.js"

/** What is told of a part: names without their prefix, texts as they stand. */
export interface XmlHandlers {
  readonly open?: (name: string, attributes: Readonly<Record<string, string>>) => void
  readonly text?: (text: string) => void
  readonly close?: (name: string) => void
}

/** Deeper and wider than any part of a workbook. */
const DEEPEST = 64
const MOST_ATTRIBUTES = 100

/** Unpacked bytes go to the reader in pieces of this size, so that what one piece gives is small. */
const PIECE = 65_536

/**
 * Reads XML in pieces; after each piece the caller may take what it gathered. A document type is refused, so there are no
 * entities but the five of XML itself; nothing is ever fetched.
 */
export async function* xmlEvents(
  source: AsyncIterable<Uint8Array>,
  handlers: XmlHandlers,
): AsyncGenerator<void> {
  const parser = new SaxesParser({ xmlns: false, position: false })
  let depth = 0
  let attributes = 0
  const refuse = (): never => {
    throw unsound()
  }
  parser.on("error", refuse)
  parser.on("doctype", refuse)
  parser.on("opentagstart", () => {
    attributes = 0
  })
  parser.on("attribute", () => {
    attributes += 1
    if (attributes > MOST_ATTRIBUTES) refuse()
  })
  parser.on("opentag", ({ name, attributes: held }) => {
    depth += 1
    if (depth > DEEPEST) refuse()
    handlers.open?.(localName(name), held)
  })
  parser.on("closetag", ({ name }) => {
    depth -= 1
    handlers.close?.(localName(name))
  })
  const { text } = handlers
  if (text) {
    parser.on("text", text)
    parser.on("cdata", text)
  }
  const decoder = new TextDecoder("utf-8", { fatal: true })
  try {
    for await (const bytes of source) {
      for (let at = 0; at < bytes.length; at += PIECE) {
        parser.write(decoder.decode(bytes.subarray(at, at + PIECE), { stream: true }))
        yield
      }
    }
    parser.write(decoder.decode()).close()
    yield
  } catch (error) {
    throw error instanceof TableFault ? error : unsound()
  }
}

/** Reads a whole part for what its handlers gather. */
export async function readXml(source: AsyncIterable<Uint8Array>, handlers: XmlHandlers): Promise<void> {
  for await (const _ of xmlEvents(source, handlers));
}

const localName = (name: string): string => name.slice(name.indexOf(":") + 1)
