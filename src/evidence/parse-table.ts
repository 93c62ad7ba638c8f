import type { Provenance, Table } from "./types.js"

/**
 * Reads a carried-in table: lines starting with `#` are comments, then one header row, then rows; cells quoted as in
 * RFC 4180, without line breaks inside a cell. Cells stay text, exactly as published.
 *
 * @example parseTable("a.csv", "# note\nage,mm\n6,22.4\n", provenance).rows[0] // { age: "6", mm: "22.4" }
 */
export function parseTable(file: string, text: string, provenance: Provenance): Table {
  const lines = text.split(/\r?\n/).filter((line) => line !== "" && !line.startsWith("#"))
  const [header, ...rows] = lines.map(cellsOf)
  if (header === undefined || rows.length === 0) throw new Error(`${file}: a table needs a header and a row`)
  return {
    file,
    provenance,
    header,
    rows: rows.map((cells, index) => {
      if (cells.length !== header.length) {
        throw new Error(`${file}: row ${index + 1} has ${cells.length} cells, the header ${header.length}`)
      }
      return Object.fromEntries(header.map((name, column) => [name, cells[column]!]))
    }),
  }
}

function cellsOf(line: string): string[] {
  return [...`,${line}`.matchAll(/,(?:"((?:[^"]|"")*)"|([^,]*))/g)].map((match) =>
    match[1] === undefined ? match[2]! : match[1].replaceAll('""', '"'),
  )
}

/** A cell that must hold a number. An empty cell means "not in the source" and must be asked for with `has`. */
export function numberIn(row: Readonly<Record<string, string>>, column: string): number {
  const cell = row[column]
  const value = Number(cell)
  if (cell === undefined || cell.trim() === "" || !Number.isFinite(value)) {
    throw new Error(`column ${column} needs a number, found "${cell}"`)
  }
  return value
}
