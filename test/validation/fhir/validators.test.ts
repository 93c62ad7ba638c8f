import { readdirSync, readFileSync } from "node:fs"
import * as fc from "fast-check"
import { beforeAll, describe, expect, it } from "vitest"
import { assess } from "../../../src/engine/assess.js"
import { noRules } from "../../../src/engine/practice-rules.js"
import { protocolFor } from "../../../src/engine/protocol/choose-protocol.js"
import { demoCourses } from "../../../src/engine/simulate/demo.js"
import { evidence } from "../../../src/evidence/index.js"
import type { FhirContext } from "../../../src/interop/fhir/context.js"
import { type Bundle, fhirBundle } from "../../../src/interop/fhir/write-fhir.js"
import { fullCourseArbitrary } from "../../generative/full-course-arbitrary.js"
import { allFaults, faultsOf } from "./validators.js"

const TODAY = "2026-11-25"
const PDF = new TextEncoder().encode("%PDF-1.7 invented")
const EXAMPLES = new URL("./examples/", import.meta.url)
const example = (name: string) => JSON.parse(readFileSync(new URL(name, EXAMPLES), "utf8"))

/**
 * A resource with its figures, ids and days taken out. Two that are equal then have the same elements, types and codes
 * and as many digits of the same kind, so a validator has nothing more to say of the second.
 */
const shape = (resource: object) =>
  JSON.stringify(resource, (field, value) =>
    field === "id" || field === "reference" || field === "fullUrl" ? "" : value,
  ).replace(/\d+/g, "0")
const seen = new Set<string>()

function faultsOfBundle(bundle: Bundle): readonly string[] {
  return (bundle.entry ?? []).flatMap(({ resource = {} }) => {
    const key = shape(resource)
    if (seen.has(key)) return []
    seen.add(key)
    return allFaults(resource).map((fault) => `${fault} in ${JSON.stringify(resource)}`)
  })
}

beforeAll(() => {
  allFaults(example("patient.json"))
}, 120_000)

describe("the validators", () => {
  it("find no fault with the hand-written examples", () => {
    for (const name of readdirSync(EXAMPLES)) expect(allFaults(example(name)), name).toEqual([])
  }, 120_000)

  const length = () => example("observation-axial-length-right.json")
  it.each([
    ["a missing status", () => ({ ...length(), status: undefined }), "structure"],
    ["an unknown element", () => ({ ...length(), eyeLength: 24 }), "structure"],
    ["a value of the wrong type", () => ({ ...length(), valueQuantity: { value: "24.1" } }), "structure"],
    ["a date that is none", () => ({ ...length(), effectiveDateTime: "16.03.2026" }), "structure"],
    [
      "half a degree of a prescription's axis",
      () => {
        const glasses = example("vision-prescription.json")
        glasses.lensSpecification[0].axis = 175.5
        return glasses
      },
      "structure",
    ],
    ["a status that R4 has not", () => ({ ...length(), status: "done" }), "codes"],
    [
      "an eye that R4 has not",
      () => {
        const glasses = example("vision-prescription.json")
        glasses.lensSpecification[0].eye = "OD"
        return glasses
      },
      "codes",
    ],
    [
      "a unit code without its system",
      () => ({ ...length(), valueQuantity: { value: 24.1, unit: "mm", code: "mm" } }),
      "constraints",
    ],
    ["two values at once", () => ({ ...length(), valueString: "24.1 mm" }), "constraints"],
    [
      "a period that ends before it starts",
      () => ({ ...example("care-plan.json"), period: { start: "2026-02-01", end: "2026-01-01" } }),
      "constraints",
    ],
    [
      "a booked appointment without a time",
      () => ({ ...example("appointment.json"), start: undefined, end: undefined }),
      "constraints",
    ],
    [
      "a unit that UCUM has not",
      () => ({
        ...length(),
        valueQuantity: { value: -2, unit: "D", system: "http://unitsofmeasure.org", code: "D" },
      }),
      "units",
    ],
  ] as const)("catch %s", (_, broken, by) => {
    const resource = JSON.parse(JSON.stringify(broken()))
    expect(faultsOf(resource)[by]).not.toEqual([])
  })
})

describe("what is written", () => {
  it("has no fault for any child of the demo practice, with all that stands around its course", () => {
    for (const { course, name, number } of demoCourses({ today: TODAY, seed: 7, evidence })) {
      const about: FhirContext = {
        identity: { name, number },
        practice: { id: "p1", name: "Invented practice" },
        people: { d1: "Dr Invented" },
        protocol: protocolFor({ course, today: TODAY, rules: noRules }),
        asOf: TODAY,
        assessment: assess({ course, asOf: TODAY, evidence }),
        report: { title: "Report", pdf: PDF },
        documents: [{ date: "2026-01-02", title: "Letter", pdf: PDF }],
      }
      expect(faultsOfBundle(fhirBundle(course, about)), course.child.id).toEqual([])
    }
  }, 600_000)

  it("has no fault for courses that fill every field with awkward values", () => {
    const courses = fc.sample(fullCourseArbitrary, { numRuns: 40, seed: 3 })
    for (const course of courses) expect(faultsOfBundle(fhirBundle(course))).toEqual([])
  }, 600_000)

  it("is a Bundle without fault", () => {
    const [child] = demoCourses({ today: TODAY, seed: 7, evidence }).toReversed()
    if (!child) throw new RangeError("the demo practice has no child")
    expect(allFaults(fhirBundle(child.course))).toEqual([])
  }, 600_000)
})
