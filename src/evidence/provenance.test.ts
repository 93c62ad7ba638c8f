import { execFileSync } from "node:child_process"
import { createHash } from "node:crypto"
import { existsSync, readdirSync, readFileSync } from "node:fs"
import { fileURLToPath } from "node:url"
import { describe, expect, it } from "vitest"

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url))
const folders = ["growth-references", "progression", "treatments", "clinical"]
const keys = [
  "id",
  "title",
  "authors",
  "year",
  "doi",
  "where",
  "obtained",
  "population",
  "n",
  "ageRange",
  "device",
  "units",
  "licence",
  "transcribedBy",
  "checkedBy",
  "checkedOn",
  "sha256",
  "supersedes",
  "notes",
]
const mayBeNull = ["year", "doi", "checkedBy", "checkedOn", "supersedes"]

const names = folders.flatMap((folder) =>
  readdirSync(here(`tables/${folder}`))
    .filter((name) => !name.endsWith(".source.json"))
    .map((name) => `${folder}/${name}`),
)
const provenanceOf = (name: string) =>
  here(`tables/${name.endsWith(".csv") ? name.replace(/\.csv$/, ".source.json") : `${name}.source.json`}`)

describe("every table carried in", () => {
  it("is there at all", () => {
    expect(names.length).toBe(49)
  })

  it.each(names)("%s has a provenance file with every key and the right checksum", (name) => {
    expect(existsSync(provenanceOf(name))).toBe(true)
    const provenance = JSON.parse(readFileSync(provenanceOf(name), "utf8"))
    expect(Object.keys(provenance).sort()).toEqual([...keys].sort())
    for (const key of keys) {
      if (provenance[key] === null) expect(mayBeNull).toContain(key)
      else if (key !== "notes" && key !== "year") expect(provenance[key]).toMatch(/\S/)
    }
    const sum = createHash("sha256")
      .update(readFileSync(here(`tables/${name}`)))
      .digest("hex")
    expect(provenance.sha256).toBe(sum)
  })

  it("has an id of its own", () => {
    const ids = names.map((name) => JSON.parse(readFileSync(provenanceOf(name), "utf8")).id)
    expect(new Set(ids).size).toBe(ids.length)
  })
})

describe("what the scripts write", () => {
  it("is in step with the tables: generated modules and the evidence page", () => {
    const script = here("../../scripts/evidence.mjs")
    expect(execFileSync(process.execPath, [script, "--check"], { encoding: "utf8" })).toContain("in step")
  })
})
