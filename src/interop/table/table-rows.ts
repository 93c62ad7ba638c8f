import { say } from "../../engine/say.js"
import { type PieceDecoder, pieceDecoder } from "./encoding.js"
import { RowSplitter } from "./row-splitter.js"
import { type Delimiter, type TableEncoding, TableFault, type TableRow } from "./table-types.js"

interface TableForm {
  readonly encoding: TableEncoding
  readonly delimiter: Delimiter
}

/** Bytes that are turned into text at once, so that a source of one large piece is still read a little at a time. */
const PIECE_BYTES = 64 * 1024

/**
 * The rows of a table of text, the row of headings included, read as they are asked for and never more than one piece
 * ahead. Throws a `TableFault` where the table cannot be read on.
 *
 * @example
 * for await (const { line, cells } of tableRows(createReadStream(file), { encoding: "utf-8", delimiter: ";" }))
 */
export async function* tableRows(
  source: AsyncIterable<Uint8Array>,
  { encoding, delimiter }: TableForm,
): AsyncGenerator<TableRow> {
  const reader = new RowReader({ encoding, delimiter })
  for await (const bytes of source) {
    for (let at = 0; at < bytes.length; at += PIECE_BYTES)
      yield* reader.rows(bytes.subarray(at, at + PIECE_BYTES))
  }
  yield* reader.end()
}

/** The rows of bytes that are held whole, or of the beginning of a file: then a row cut short is left out. */
export function rowsOfBytes(
  bytes: Uint8Array,
  form: TableForm & { readonly isCutShort?: boolean; readonly most?: number },
): readonly TableRow[] {
  const reader = new RowReader(form)
  const rows: TableRow[] = []
  for (
    let at = 0;
    at < bytes.length && rows.length < (form.most ?? Number.POSITIVE_INFINITY);
    at += PIECE_BYTES
  )
    for (const row of reader.rows(bytes.subarray(at, at + PIECE_BYTES))) rows.push(row)
  if (!form.isCutShort) for (const row of reader.end()) rows.push(row)
  return form.most === undefined ? rows : rows.slice(0, form.most)
}

class RowReader {
  readonly #decoder: PieceDecoder
  readonly #splitter: RowSplitter
  readonly #form: TableForm
  #isFirst = true

  constructor(form: TableForm) {
    this.#form = form
    this.#decoder = pieceDecoder(form.encoding)
    this.#splitter = new RowSplitter(form)
  }

  rows(bytes: Uint8Array): readonly TableRow[] {
    return this.#split(this.#decoded(() => this.#decoder.decode(bytes)))
  }

  end(): readonly TableRow[] {
    const rows = [...this.#split(this.#decoded(() => this.#decoder.end()))]
    this.#splitter.end(rows)
    return this.#withoutHint(rows)
  }

  #split(text: string): readonly TableRow[] {
    const zero = text.indexOf("\0")
    const rows: TableRow[] = []
    this.#splitter.push(zero === -1 ? text : text.slice(0, zero), rows)
    if (zero !== -1) {
      const line = this.#splitter.line
      throw new TableFault(say("Line {line} holds what is no text.", { line }), { line })
    }
    return this.#withoutHint(rows)
  }

  /** Spreadsheets write their delimiter into a first line "sep=;", which is no row. */
  #withoutHint(rows: readonly TableRow[]): readonly TableRow[] {
    const [first] = rows
    if (!this.#isFirst || !first) return rows
    this.#isFirst = false
    return isDelimiterHint(first.cells, this.#form.delimiter) ? rows.slice(1) : rows
  }

  #decoded(decode: () => string): string {
    try {
      return decode()
    } catch {
      const line = this.#splitter.line
      throw new TableFault(
        say("After line {line} the text is no longer {encoding}.", { line, encoding: this.#form.encoding }),
        { line },
      )
    }
  }
}

const isDelimiterHint = (cells: readonly string[], delimiter: Delimiter): boolean =>
  cells.length === 2
    ? cells[0] === "sep=" && cells[1] === ""
    : cells.length === 1 && cells[0] === `sep=${delimiter}`
