import { readFileSync } from "node:fs"
import { describe, expect, it } from "vitest"
import { courseFrom } from "../../src/interop/course/read-course.js"
import { commandLine, json } from "./fake-io.js"

const EXAMPLE = "examples/slowed.json"
const asText = (content: string | Uint8Array | undefined) =>
  typeof content === "string" ? content : Buffer.from(content ?? []).toString("utf8")

/** The course alone, as a course file holds it. */
const courseOf = (value: unknown) => {
  const read = courseFrom(value)
  return "course" in read ? read.course : read.problems
}

async function exported(format: "fhir" | "ndjson") {
  const { code, stderr, written } = await commandLine(["export", EXAMPLE, "--format", format, "--out", "kim"])
  expect({ code, stderr }).toEqual({ code: 0, stderr: "" })
  return asText(written.kim)
}

describe("lengthwise export --format fhir", () => {
  it("writes one transaction in which every entry is a PUT by its own id", async () => {
    const bundle = JSON.parse(await exported("fhir"))
    expect(bundle).toMatchObject({ resourceType: "Bundle", type: "transaction" })
    for (const { resource, request } of bundle.entry) {
      expect(request).toEqual({ method: "PUT", url: `${resource.resourceType}/${resource.id}` })
    }
  })

  it("gives the same bytes again", async () => {
    expect(await exported("fhir")).toBe(await exported("fhir"))
  })

  it("tells what is owed and what the figures say, beside the course", async () => {
    const types = JSON.parse(await exported("fhir")).entry.map(
      ({ resource }: { resource: { resourceType: string } }) => resource.resourceType,
    )
    for (const type of ["PlanDefinition", "CarePlan", "DiagnosticReport"]) expect(types).toContain(type)
  })

  it.each(["fhir", "ndjson"] as const)(
    "comes back through read as the same course, of which assess says the same: %s",
    async (format) => {
      const bytes = new TextEncoder().encode(await exported(format))
      const read = json(await commandLine(["read", "kim", "--json"], { files: { kim: bytes } }))
      expect(read.skipped).toEqual([])
      const { notes: _, skipped: __, ...back } = read
      const original = JSON.parse(readFileSync(new URL(`../../${EXAMPLE}`, import.meta.url), "utf8"))
      expect(courseOf(back)).toStrictEqual(courseOf(original))
      const asked = async (course: unknown) =>
        json(
          await commandLine(["assess", "kim.json", "--as-of", "2026-08-01", "--json"], {
            files: { "kim.json": course },
          }),
        )
      expect(await asked(back)).toEqual(await asked(original))
    },
  )

  it("as NDJSON has a resource a line", async () => {
    const lines = (await exported("ndjson")).trimEnd().split("\n")
    expect(lines.length).toBeGreaterThan(10)
    for (const line of lines) expect(JSON.parse(line)).toHaveProperty("resourceType")
  })
})
