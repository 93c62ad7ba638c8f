/** What the evidence scripts share: where the carried-in tables are and how their sources are read. */
import { readdirSync, readFileSync } from "node:fs"
import { join } from "node:path"
import { fileURLToPath } from "node:url"

export const root = fileURLToPath(new URL("..", import.meta.url))
export const tablesFolder = join(root, "src/evidence/tables")
export const folders = ["growth-references", "progression", "treatments", "clinical"]

/** "folder/name" of every carried-in file, without the provenance files beside them. */
export const tableNames = folders.flatMap((folder) =>
  readdirSync(join(tablesFolder, folder))
    .filter((name) => !name.endsWith(".source.json"))
    .sort()
    .map((name) => `${folder}/${name}`),
)

export const readTable = (name) => readFileSync(join(tablesFolder, name), "utf8")

/** "folder/table.csv" has its provenance in "folder/table.source.json"; "table.json" keeps its ending apart. */
export const provenancePath = (name) =>
  join(tablesFolder, name.endsWith(".csv") ? name.replace(/\.csv$/, ".source.json") : `${name}.source.json`)

export const readProvenance = (name) => JSON.parse(readFileSync(provenancePath(name), "utf8"))

/** Every source of every folder, keyed "folder/id" because two folders may have read different parts of one paper. */
export const sources = new Map(
  folders.flatMap((folder) => {
    const register = JSON.parse(readTable(`${folder}/sources.json`))
    return (Array.isArray(register) ? register : register.sources).map((source) => [
      `${folder}/${source.id}`,
      source,
    ])
  }),
)

/** The first comment lines of a CSV file, without "# ". */
export const commentLines = (text) =>
  text
    .split("\n")
    .filter((line) => line.startsWith("#"))
    .map((line) => line.replace(/^#\s*/, "").trim())

/** Cells of one CSV line; quotes as in RFC 4180, no line breaks inside cells. */
export function cellsOf(line) {
  const cells = []
  for (const match of `,${line}`.matchAll(/,(?:"((?:[^"]|"")*)"|([^,]*))/g)) {
    cells.push(match[1] === undefined ? match[2] : match[1].replaceAll('""', '"'))
  }
  return cells
}
