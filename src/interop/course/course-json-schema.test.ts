import { readFileSync } from "node:fs"
import { describe, expect, it } from "vitest"
import { courseJsonSchema } from "./course-json-schema.js"

const published = new URL("../../../docs/course-file.schema.json", import.meta.url)

describe("the published schema of the course file", () => {
  it("is the one the program reads by (written anew by: ./lengthwise schema > docs/course-file.schema.json)", () => {
    expect(JSON.parse(readFileSync(published, "utf8"))).toEqual(courseJsonSchema())
  })

  it("describes every field in words", () => {
    const silent: string[] = []
    const visit = (node: unknown, path: string): void => {
      if (typeof node !== "object" || node === null) return
      const { properties } = node as { properties?: Record<string, { title?: string; description?: string }> }
      for (const [name, field] of Object.entries(properties ?? {})) {
        if (!field.title || !field.description) silent.push(`${path}.${name}`)
      }
      for (const [key, inside] of Object.entries(node)) visit(inside, `${path}.${key}`)
    }
    visit(courseJsonSchema(), "")
    expect(silent).toEqual([])
  })

  it("names the unit of a length", () => {
    expect(JSON.stringify(courseJsonSchema())).toContain('"title":"Axial length, mm","description"')
    expect(JSON.stringify(courseJsonSchema())).toContain('"unit":"mm"')
  })

  it("asks for nothing but the day of birth, the sex, and the day of a visit", () => {
    const { required, properties } = courseJsonSchema() as {
      required: string[]
      properties: { child: { required: string[] } }
    }
    expect(required).toEqual(["child"])
    expect(properties.child.required).toEqual(["born", "sex"])
  })
})
