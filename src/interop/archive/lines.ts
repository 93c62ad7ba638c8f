import { ArchiveFault } from "./archive-fault.js"

const CHUNK_CHARACTERS = 65_536

/** Values as NDJSON: each on a line of its own, in pieces large enough to be worth passing on. */
export async function* ndjson(values: AsyncIterable<unknown> | Iterable<unknown>): AsyncGenerator<string> {
  let text = ""
  for await (const value of values) {
    text += `${JSON.stringify(value)}\n`
    if (text.length < CHUNK_CHARACTERS) continue
    yield text
    text = ""
  }
  if (text !== "") yield text
}

export interface NumberedLine {
  readonly number: number
  readonly text: string
}

/** The lines of a part, none of them longer than `most` bytes: a line without an end must not fill the memory. */
export async function* linesOf(
  pieces: AsyncIterable<Buffer>,
  { name, most }: { readonly name: string; readonly most: number },
): AsyncGenerator<NumberedLine> {
  let rest: Buffer[] = []
  let held = 0
  let number = 0
  const text = (bytes: Buffer): string => {
    try {
      return new TextDecoder("utf-8", { fatal: true }).decode(bytes)
    } catch {
      throw new ArchiveFault(`${name}, line ${number}: it is not UTF-8`)
    }
  }
  for await (const piece of pieces) {
    let from = 0
    for (let end = piece.indexOf(10); end !== -1; end = piece.indexOf(10, from)) {
      number += 1
      yield { number, text: text(Buffer.concat([...rest, piece.subarray(from, end)])) }
      rest = []
      held = 0
      from = end + 1
    }
    rest.push(piece.subarray(from))
    held += piece.length - from
    if (held > most) throw new ArchiveFault(`${name}, line ${number + 1}: it is longer than ${most} bytes`)
  }
  if (held > 0) throw new ArchiveFault(`${name}: its last line is cut short`)
}
