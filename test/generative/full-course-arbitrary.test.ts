import * as fc from "fast-check"
import { expect, it } from "vitest"
import { courseJsonSchema } from "../../src/interop/course/course-json-schema.js"
import { fullCourseArbitrary } from "./full-course-arbitrary.js"

/** Every field of a value, with the places in lists left out: "visits[].right.axialLength.mm". */
function fieldsOf(value: unknown, at = ""): readonly string[] {
  if (Array.isArray(value)) return value.flatMap((item) => fieldsOf(item, `${at}[]`))
  if (typeof value !== "object" || value === null) return []
  return Object.entries(value).flatMap(([name, inside]) => {
    const here = at === "" ? name : `${at}.${name}`
    return [here, ...fieldsOf(inside, here)]
  })
}

interface Schema {
  readonly properties?: Readonly<Record<string, Schema>>
  readonly items?: Schema
  readonly anyOf?: readonly Schema[]
}

function fieldsOfSchema({ properties = {}, items, anyOf = [] }: Schema, at = ""): readonly string[] {
  const own = Object.entries(properties).flatMap(([name, inside]) => {
    const here = at === "" ? name : `${at}.${name}`
    return [here, ...fieldsOfSchema(inside, here)]
  })
  return [
    ...own,
    ...(items ? fieldsOfSchema(items, `${at}[]`) : []),
    ...anyOf.flatMap((schema) => fieldsOfSchema(schema, at)),
  ]
}

it("fills every field that the schema of the course file has, and no other", () => {
  const made = fc.sample(fullCourseArbitrary, { numRuns: 200, seed: 5 }).flatMap((course) => fieldsOf(course))
  const wanted = fieldsOfSchema(courseJsonSchema() as Schema)
  expect(wanted.length).toBeGreaterThan(120)
  expect([...new Set(made)].toSorted()).toEqual([...new Set(wanted)].toSorted())
})
