import { readFileSync } from "node:fs"
import fastify from "fastify"
import { describe, expect, it } from "vitest"
import { protocolProblems } from "../../../src/engine/protocol/protocol-problems.js"
import { protocolJsonSchema } from "../../../src/engine/protocol/protocol-schema.js"
import { shippedProtocols } from "../../../src/engine/protocol/shipped.js"
import { standardProtocol } from "../../../src/engine/protocol/standard.js"

// The judge is not ours: the JSON Schema validator that comes with the web server, told to repair nothing.
const judge = fastify({
  ajv: { customOptions: { coerceTypes: false, removeAdditional: false, useDefaults: false } },
})
const { $schema: _, ...body } = protocolJsonSchema
judge.post("/", { schema: { body } }, async () => "sound")
const isSound = async (value: unknown) =>
  (await judge.inject({ method: "POST", url: "/", payload: value as object })).statusCode === 200

describe("The published schema of a protocol", () => {
  it("is the one in docs (written anew by: ./lengthwise protocol schema > docs/protocol.schema.json)", () => {
    const published = new URL("../../../docs/protocol.schema.json", import.meta.url)
    expect(JSON.parse(readFileSync(published, "utf8"))).toEqual(protocolJsonSchema)
  })

  it.each(shippedProtocols.map((protocol) => [protocol.id, protocol]))(
    "%s, which ships, is sound by it and by the program's own reading",
    async (_id, protocol) => {
      expect(await isSound(protocol)).toBe(true)
      expect(protocolProblems(protocol)).toEqual([])
    },
  )

  it("describes every field in words", () => {
    const { properties } = protocolJsonSchema
    const fields = { ...properties, ...properties.steps.items.properties, steps: { description: "steps" } }
    expect(Object.entries(fields).filter(([, field]) => !field.description)).toEqual([])
  })
})

const index = { baseline: 0, review: 2, decision: 6, goingOn: 13 }

/** The standard protocol with one step changed, as a practice might slip. */
function slip(step: keyof typeof index, change: Record<string, unknown>): Record<string, unknown> {
  const steps = standardProtocol.steps.map((one, place) =>
    place === index[step] ? { ...one, ...change } : one,
  )
  return { ...standardProtocol, steps }
}

describe("What the program refuses, the schema refuses", () => {
  it.each([
    ["a step before its anchor", slip("review", { offsetMonths: -6 })],
    ["half a month", slip("review", { offsetMonths: 0.5 })],
    ["days before the anchor", slip("review", { offsetDays: -1 })],
    ["a window given as text", slip("review", { windowDaysAfter: "30" })],
    ["a window of more than a year", slip("review", { windowDaysAfter: 367 })],
    ["an anchor nobody knows", slip("review", { anchor: "birthday" })],
    ["a stage nobody knows", slip("review", { stage: "party" })],
    ["a measure nobody knows", slip("review", { measures: ["shoe-size"] })],
    ["a treatment nobody knows", slip("review", { onlyFor: ["carrots"] })],
    ["a step for no treatment at all", slip("review", { onlyFor: [] })],
    ["a title left empty", slip("review", { title: " " })],
    ["an unknown field", slip("review", { color: "red" })],
    ["an examination that measures nothing", slip("review", { measures: [], measuresOnAtropine: [] })],
    ["a baseline after the start", slip("baseline", { offsetMonths: 1 })],
    ["a baseline days after the start", slip("baseline", { offsetDays: 1 })],
    ["a step from the last visit without an interval", slip("goingOn", { offsetMonths: 0 })],
    ["a decision that measures", slip("decision", { measures: ["axial-length"] })],
    ["a decision that restarts", slip("decision", { restartsOnChange: true })],
    ["a decision about nothing", slip("decision", { decides: undefined })],
    ["a decision without a fixed day", slip("decision", { anchor: "last-visit-on-treatment" })],
    ["a step down without its nights", slip("decision", { decides: "step-down" })],
    ["a step down to every night", slip("decision", { decides: "step-down", nightsPerWeek: 7 })],
    [
      "a step down after the stop",
      slip("decision", { decides: "step-down", nightsPerWeek: 3, anchor: "stop" }),
    ],
    ["nights where nothing is stepped down", slip("decision", { nightsPerWeek: 3 })],
    ["a protocol without steps", { ...standardProtocol, steps: [] }],
    ["a protocol without a source", { ...standardProtocol, source: undefined }],
    ["a pause of half a day", { ...standardProtocol, longestPauseDays: 0.5 }],
  ])("%s", async (_slip, value) => {
    // As a file holds it: what is undefined is not there.
    const file = JSON.parse(JSON.stringify(value))
    expect(protocolProblems(file)).not.toEqual([])
    expect(await isSound(file)).toBe(false)
  })

  it("an id used twice is told by the program alone, for no schema can say it", async () => {
    const file = slip("review", { id: "baseline" })
    expect(protocolProblems(file).map(({ path }) => path)).toEqual(["steps[2].id"])
    expect(await isSound(file)).toBe(true)
  })
})
