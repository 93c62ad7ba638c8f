/**
 * Writes src/evidence/generated (tables, documents and sources as modules, so that the evidence needs no files at run
 * time) and docs/generated/evidence.md. With --check it writes nothing and fails when a file on disk differs.
 */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs"
import { dirname, join } from "node:path"
import { tsImport } from "tsx/esm/api"
import { readProvenance, readTable, root, sources, tableNames } from "./evidence-files.mjs"
import { evidencePage } from "./evidence-page.mjs"
import { citationRead, readPart } from "./read-part.mjs"

const header = "// Written by scripts/evidence.mjs from src/evidence/tables. Do not edit.\n"
const json = (value) => JSON.stringify(value, null, 2)
const camel = (text) => text.replace(/[^A-Za-z0-9]+(.)?/g, (_, next) => (next ?? "").toUpperCase())

/** What a screen needs at once; everything else stays out of the browser unless asked for. */
const needed = tableNames.filter((name) =>
  /^growth-references\/(al_(centiles|lms|mean_sd|emmetrope_curve|se_mean)|se_)/.test(name),
)

/** Documents with rows that screens show; the growth model and the priors live on in src/evidence/parameters. */
const documents = tableNames.filter(
  (name) => /^(treatments|clinical)\/.*\.json$/.test(name) && !/\/(sources|checks|priors)\.json$/.test(name),
)

const textModule = (constant, names) => `${header}import type { CarriedTable } from "../types.js"

export const ${constant}: readonly CarriedTable[] = ${json(
  names.map((name) => ({
    file: name,
    provenance: readProvenance(name),
    text: readTable(name),
  })),
)}
`

const documentModule = (name) => {
  const constant = camel(name.split("/")[1].replace(/\.json$/, ""))
  return `${header}// What the document marks as coming from memory is left out: scripts/read-part.mjs.
import type { Provenance } from "../types.js"

export const ${constant} = ${json(readPart(name, JSON.parse(readTable(name))))}

export const ${constant}Provenance: Provenance = ${json(readProvenance(name))}
`
}

const sourceModule = (constant, ids) => `${header}import type { Source } from "../types.js"

export const ${constant}: readonly Source[] = ${json(
  ids.map((id) => {
    const source = sources.get(id)
    if (source === undefined) throw new Error(`no source ${id} in any register`)
    return {
      id,
      citation: citationRead(source.citation),
      doi: source.doi ?? null,
      where: source.table ?? source.table_figure ?? "not stated",
      obtained: source.how_obtained,
      caveats: source.caveats ?? source.note ?? "",
    }
  }),
)}
`

const check = process.argv.includes("--check")
const differing = []
function put(path, contents) {
  const full = join(root, path)
  if (existsSync(full) && readFileSync(full, "utf8") === contents) return
  differing.push(path)
  if (check) return
  mkdirSync(dirname(full), { recursive: true })
  writeFileSync(full, contents)
}

put("src/evidence/generated/tables.ts", textModule("carriedTables", needed))
for (const name of documents) {
  put(`src/evidence/generated/${name.split("/")[1].replace(/\.json$/, "")}.ts`, documentModule(name))
}
put("src/evidence/generated/sources.ts", sourceModule("sources", [...sources.keys()]))

// The rest is made from the typed evidence, which reads the modules written above.
const { growthParameters } = await tsImport(
  "../src/evidence/parameters/growth-2026-11-25.ts",
  import.meta.url,
)
const used = [...Object.values(growthParameters.values), ...growthParameters.effects].flatMap(
  ({ source }) => source,
)
put(
  "src/evidence/generated/citations.ts",
  sourceModule("citations", [...new Set(used)].filter((id) => id !== "assumption").sort()),
)
const { references, emmetropicCurve, infancyMean } = await tsImport(
  "../src/evidence/references.ts",
  import.meta.url,
)
put(
  "docs/generated/evidence.md",
  evidencePage({
    growthParameters,
    references,
    emmetropicCurve,
    infancyMean,
    tableNames,
    readProvenance,
    sources,
  }),
)

if (check && differing.length > 0) {
  console.error(`differs from its source, run node scripts/evidence.mjs: ${differing.join(", ")}`)
  process.exit(1)
}
console.log(differing.length === 0 ? "evidence is in step" : `written: ${differing.join(", ")}`)
