import { z } from "zod"
import { courseSchema } from "./schema.js"

/** The course file as JSON Schema 2020-12; published at docs/course-file.schema.json. */
export function courseJsonSchema(): Readonly<Record<string, unknown>> {
  const { $schema, ...rest } = z.toJSONSchema(courseSchema, {
    target: "draft-2020-12",
    io: "input",
    // The pattern of a date is a page long and says no more than its format does.
    override: ({ jsonSchema }) => {
      if (jsonSchema.format === "date") delete jsonSchema.pattern
    },
  })
  return {
    $schema,
    $id: "urn:lengthwise:course-file:1",
    title: "Lengthwise course file, version 1",
    description:
      "One child's course of myopia control: measurements, treatments, bottles and consents. Dates are plain ISO days; `unit` gives the UCUM code of a number.",
    ...rest,
  }
}
