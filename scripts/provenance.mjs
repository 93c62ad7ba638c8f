/**
 * Writes the provenance file beside every carried-in table, from the registers of sources, the comment lines of the
 * tables and scripts/provenance-facts.json. Nothing is made up: authors and titles typed in the facts must stand word
 * for word in the register's citation.
 */
import { createHash } from "node:crypto"
import { readFileSync, writeFileSync } from "node:fs"
import { join } from "node:path"
import {
  cellsOf,
  commentLines,
  provenancePath,
  readTable,
  root,
  sources,
  tableNames,
} from "./evidence-files.mjs"

const facts = JSON.parse(readFileSync(join(root, "scripts/provenance-facts.json"), "utf8"))

const text = (value) =>
  value === null || value === undefined
    ? "not stated"
    : typeof value === "object"
      ? Object.entries(value)
          .map(([name, count]) => `${name} ${count}`)
          .join(", ")
      : String(value)

/** Ids named in the table itself: a source column, or every "source" or "source_id" of a JSON file. */
function idsNamedIn(name, contents, sourceKey) {
  const found = new Set()
  if (name.endsWith(".csv")) {
    const lines = contents.split("\n").filter((line) => line !== "" && !line.startsWith("#"))
    const column = cellsOf(lines[0]).findIndex((header) => header === "source" || header === "source_id")
    if (column >= 0) for (const line of lines.slice(1)) found.add(cellsOf(line)[column])
    return found
  }
  const visit = (value) => {
    if (Array.isArray(value)) value.forEach(visit)
    else if (value !== null && typeof value === "object") {
      for (const [key, inner] of Object.entries(value)) {
        if (["source", "source_id", "sources", "source_ids", sourceKey].includes(key)) {
          for (const id of [inner].flat()) if (typeof id === "string") found.add(id)
        }
        visit(inner)
      }
    }
  }
  visit(JSON.parse(contents))
  return found
}

function sourcesOf(name, contents, fact) {
  if (fact.sources !== undefined) return fact.sources
  if (fact.own !== undefined) return []
  const [folder, file] = name.split("/")
  const listed = [...sources].filter(([id, source]) => id.startsWith(folder) && source.files?.includes(file))
  if (listed.length > 0) return listed.map(([id]) => id)
  return [...idsNamedIn(name, contents, fact.sourceKey)]
    .map((id) => `${folder}/${id}`)
    .filter((id) => sources.has(id))
}

function checkedBy(name, contents) {
  if (
    name.startsWith("progression/") &&
    readTable("progression/verification.csv").includes(`\n${name.split("/")[1]},`)
  ) {
    return "second search from scratch by this project, row by row in progression/verification.csv"
  }
  return contents.includes('"verified_again": true')
    ? "second search from scratch by this project, rows marked verified_again"
    : null
}

function provenanceOf(name) {
  const fact = facts.tables[name]
  if (fact === undefined) throw new Error(`${name}: no entry in scripts/provenance-facts.json`)
  const contents = readTable(name)
  const comments = name.endsWith(".csv") ? commentLines(contents) : []
  const ids = sourcesOf(name, contents, fact)
  if (ids.length === 0 && fact.own === undefined) throw new Error(`${name}: no source found`)
  const one = ids.length === 1 ? sources.get(ids[0]) : undefined
  const paper = one === undefined ? undefined : facts.papers[ids[0]]
  if (one !== undefined && paper === undefined) throw new Error(`${name}: no authors typed for ${ids[0]}`)
  for (const words of paper === undefined ? [] : [paper.authors, paper.title]) {
    if (!one.citation.includes(words))
      throw new Error(`${name}: "${words}" is not in the citation of ${ids[0]}`)
  }
  const perRow = fact.own === undefined ? "several; see the rows" : "not applicable"
  const obtainedLine = comments.find((line) => /^How obtained:/.test(line))
  return {
    id: comments[0]?.match(/^id: ([\w-]+)/)?.[1] ?? name.replace(/\.(csv|json)$/, ""),
    title: fact.title ?? paper.title,
    authors:
      paper?.authors ??
      (fact.own === undefined
        ? `several sources: ${ids.join(", ")}`
        : `own work of this project: ${fact.own}`),
    year: paper?.year ?? null,
    doi: one?.doi ?? null,
    where:
      one === undefined
        ? fact.own === undefined
          ? "one source id per row or statement, in the register of the folder"
          : "not applicable"
        : `${text(one.table ?? one.table_figure)} (${ids[0]})`,
    obtained:
      obtainedLine?.replace(/^How obtained:\s*/, "") ?? one?.how_obtained ?? fact.own ?? "stated per row",
    population: fact.population ?? (one === undefined ? perRow : text(one.population)),
    n: one === undefined ? perRow : text(one.n),
    ageRange: fact.ageRange ?? (one === undefined ? perRow : text(one.age_range)),
    device: fact.device ?? (one === undefined ? perRow : text(one.instrument)),
    units: fact.units,
    licence:
      one?.licence_of_article === undefined
        ? "facts and figures only; the licences of the articles were not read"
        : `of the article: ${one.licence_of_article}`,
    transcribedBy: "this project",
    checkedBy: checkedBy(name, contents),
    checkedOn: null,
    sha256: createHash("sha256").update(contents).digest("hex"),
    supersedes: null,
    notes: [...comments.filter((line) => line !== obtainedLine), one?.caveats].filter(Boolean).join(" "),
    ...fact.fields,
  }
}

for (const name of tableNames) {
  writeFileSync(provenancePath(name), `${JSON.stringify(provenanceOf(name), null, 2)}\n`)
}
console.log(`${tableNames.length} provenance files written`)
