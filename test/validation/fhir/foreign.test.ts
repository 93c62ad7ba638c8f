import { readdirSync, readFileSync } from "node:fs"
import { describe, expect, it } from "vitest"
import { courseFromFhir } from "../../../src/interop/fhir/course-from-fhir.js"
import { readFhir } from "../../../src/interop/fhir/read-fhir.js"

/** Files of other programs: read as far as they are understood, and what is not is said with its place. */

const EXAMPLES = new URL("./examples/", import.meta.url)
const text = (name: string) => readFileSync(new URL(name, EXAMPLES), "utf8")
const example = (name: string) => JSON.parse(text(name))
const read = (value: unknown) => courseFromFhir(value, { file: "other.json", id: "other" })
const only = (value: unknown) => {
  const { fragments, skipped } = read(value)
  expect(fragments).toHaveLength(1)
  return { fragment: fragments[0]!, skipped }
}
const why = (value: unknown) => read(value).skipped.map((each) => `${each.where}: ${each.why}`)

const patient = example("patient.json")
const length = () => example("observation-axial-length-right.json")
const refraction = () => example("observation-refraction-right.json")
const acuity = () => example("observation-visual-acuity-right.json")
const bundle = (type: string, ...resources: readonly object[]) => ({
  resourceType: "Bundle",
  type,
  entry: resources.map((resource) => ({ resource })),
})
/** What the one right eye of the one visit has. */
const right = (...resources: readonly object[]) =>
  only(bundle("collection", patient, ...resources)).fragment.course.visits?.[0]?.right

describe("the hand-written examples together", () => {
  it("give the child with its figures, its drops and what was not understood", () => {
    const names = readdirSync(EXAMPLES).filter((name) => name !== "bundle-transaction.json")
    const { fragment, skipped } = only(bundle("collection", ...names.map(example)))
    expect(fragment.identity).toEqual({
      number: "LW-DEMO-0001",
      name: "Child Sample",
      born: "2017-09-05",
      sex: "female",
    })
    expect(fragment.course).toEqual({
      visits: [
        {
          date: "2026-03-16",
          right: {
            axialLength: {
              mm: 24.12,
              device: "Optical biometer, demo model 1",
              signalToNoise: 210.4,
            },
            refraction: { sphere: -2.75, cylinder: -0.5, axis: 175, method: "autorefraction" },
            acuity: { distanceLogMAR: 0.02 },
          },
          left: { axialLength: { mm: 24.04, device: "Optical biometer, demo model 1" } },
        },
      ],
      treatments: [{ from: "2026-03-16", kind: "atropine", concentrationPercent: 0.025 }],
      concerns: [
        {
          opened: "2026-02-10",
          kind: "Glare in sunlight",
          what: "Glare in sunlight",
          seriousness: "mild",
          adverseEvent: true,
        },
      ],
    })
    const places = skipped.map(({ where }) => where).join("\n")
    for (const type of [
      "Condition",
      "Consent",
      "CarePlan",
      "Appointment",
      "VisionPrescription",
      "Questionnaire",
    ])
      expect(places).toContain(`${type}/`)
    for (const id of ["k-od-v3", "pupil-od-v3", "acc-od-v3"]) expect(places).toContain(`Observation/${id}`)
  })

  it("give something or a reason, each by itself", async () => {
    for (const name of readdirSync(EXAMPLES)) {
      const { fragments, skipped } = await readFhir({ file: name, text: text(name) })
      expect(fragments.length + skipped.length, name).toBeGreaterThan(0)
    }
  })

  it("are read from a transaction with addresses", () => {
    const { fragment, skipped } = only(example("bundle-transaction.json"))
    expect(fragment.course.visits?.[0]?.left?.axialLength?.mm).toBe(24.04)
    expect(skipped).toEqual([])
  })
})

describe("a bundle of another kind", () => {
  it.each(["searchset", "collection", "document", "batch", "history"])("is read: %s", (type) => {
    expect(only(bundle(type, patient, length())).fragment.course.visits).toHaveLength(1)
  })

  it("may refer by urn:uuid", () => {
    const address = "urn:uuid:9f1c7c1e-3c1d-4a0e-9d4f-000000000001"
    const value = {
      resourceType: "Bundle",
      type: "collection",
      entry: [
        { fullUrl: address, resource: { ...patient, id: undefined } },
        { resource: { ...length(), subject: { reference: address } } },
      ],
    }
    expect(only(value).fragment.identity.number).toBe("LW-DEMO-0001")
  })

  it("may name a version of a resource", () => {
    const subject = { reference: "https://clinic.example/fhir/Patient/sample-child/_history/2" }
    expect(only(bundle("collection", patient, { ...length(), subject })).fragment.identity.born).toBe(
      "2017-09-05",
    )
  })

  it("may contain the patient in the observation", () => {
    const value = { ...length(), contained: [{ ...patient, id: "p" }], subject: { reference: "#p" } }
    expect(only(value).fragment.identity.name).toBe("Child Sample")
  })

  it("keeps two children apart, and takes neither where an address could mean both", () => {
    const sister = { ...patient, id: "sister", birthDate: "2015-01-01" }
    const hers = { ...length(), id: "b", subject: { reference: "Patient/sister" } }
    const both = read(bundle("collection", patient, sister, length(), hers)).fragments
    expect(both.map(({ identity, course }) => [identity.born, course.visits?.length])).toEqual([
      ["2017-09-05", 1],
      ["2015-01-01", 1],
    ])
    const twice = read(bundle("collection", patient, { ...sister, id: patient.id }, length()))
    expect(twice.fragments.filter(({ course }) => course.visits)).toMatchObject([{ identity: {} }])
  })

  it("gives no figure to a child that the figure does not name", () => {
    expect(why(bundle("collection", patient, { ...length(), subject: undefined }))).toEqual([
      "entry[1].resource (Observation/al-od-v3): It does not say whose it is.",
    ])
  })
})

describe("a figure of another program", () => {
  it("has its side by the body site alone, where its code has none", () => {
    const { bodySite, ...none } = refraction()
    expect(right({ ...none, bodySite })).toHaveProperty("refraction.sphere", -2.75)
    expect(why(bundle("collection", none))).toEqual([
      "entry[0].resource (Observation/rx-od-v3): It does not say by a code which eye it is of.",
    ])
    const inWords = { ...none, bodySite: { text: "Right eye" } }
    expect(why(bundle("collection", inWords))[0]).toContain("by a code")
  })

  it("is refused where the code says one eye and the site the other", () => {
    const bodySite = { coding: [{ system: "http://snomed.info/sct", code: "362503005" }] }
    expect(why(bundle("collection", { ...length(), bodySite }))[0]).toContain("names both eyes")
  })

  it.each([
    [{ value: 2.412, system: "http://unitsofmeasure.org", code: "cm" }, 24.12],
    [{ value: 24120, system: "http://unitsofmeasure.org", code: "um" }, 24.12],
    [{ value: 24.12, unit: "mm" }, 24.12],
  ])("is read in its unit: %j", (valueQuantity, mm) => {
    expect(right({ ...length(), valueQuantity })).toHaveProperty("axialLength.mm", mm)
  })

  it.each([
    { value: 24.12 },
    { value: 24.12, comparator: "<", system: "http://unitsofmeasure.org", code: "mm" },
    { value: 0.95, system: "http://unitsofmeasure.org", code: "[in_i]" },
    { value: "24.12", unit: "mm" },
  ])("is refused in no unit, as a bound or as text: %j", (valueQuantity) => {
    expect(why(bundle("collection", { ...length(), valueQuantity }))[0]).toContain("no figure in a unit")
  })

  it("is refused by the rules of the course file, with the rule", () => {
    const valueQuantity = { value: 241.2, system: "http://unitsofmeasure.org", code: "mm" }
    const { fragment, skipped } = only(
      bundle("collection", patient, { ...length(), valueQuantity }, acuity()),
    )
    expect(fragment.course.visits?.[0]?.right).toEqual({ acuity: { distanceLogMAR: 0.02 } })
    expect(skipped[0]?.why).toContain("must be a number from 15 to 40 mm, not 241.2")
    expect(skipped[0]?.where).toBe("entry[1].resource (Observation/al-od-v3)")
  })

  it("of acuity is logMAR or a decimal that says so; a bare number is neither", () => {
    const decimal = { value: 0.5, system: "http://unitsofmeasure.org", code: "{decimal}" }
    expect(right({ ...acuity(), valueQuantity: decimal })).toHaveProperty("acuity.distanceLogMAR", 0.301)
    const bare = { value: 0.5, system: "http://unitsofmeasure.org", code: "1" }
    expect(why(bundle("collection", { ...acuity(), valueQuantity: bare }))[0]).toContain("no figure")
  })

  it("with an axis of 0 is read as 180", () => {
    const observation = refraction()
    observation.component[2].valueQuantity.value = 0
    expect(right(observation)).toHaveProperty("refraction.axis", 180)
  })

  it("by another method stands beside the first; one that contradicts it is left out", () => {
    const subjective = {
      ...refraction(),
      id: "b",
      method: { coding: [{ system: "http://snomed.info/sct", code: "397277005" }] },
    }
    expect(right(refraction(), subjective)?.otherRefractions).toMatchObject([{ method: "subjective" }])
    const other = { ...length(), id: "b", valueQuantity: { value: 24.5, unit: "mm" } }
    const { fragment, skipped } = only(bundle("collection", patient, length(), other))
    expect(fragment.course.visits?.[0]?.right?.axialLength?.mm).toBe(24.12)
    expect(skipped[0]?.why).toContain("they differ")
  })

  it.each(["preliminary", "entered-in-error", "cancelled", undefined])("is not taken while %s", (status) => {
    expect(why(bundle("collection", { ...length(), status }))[0]).toContain("not final")
  })

  it("is not taken when something unknown may change its meaning", () => {
    const modifierExtension = [{ url: "https://other.example/not-really", valueBoolean: true }]
    expect(why({ ...length(), modifierExtension })[0]).toContain("modifier")
    expect(why({ ...length(), implicitRules: "https://other.example/rules" })[0]).toContain("rules")
  })

  it("may have extensions that nobody knows", () => {
    const extension = [{ url: "https://other.example/colour", valueString: "blue" }]
    expect(right({ ...length(), extension })).toHaveProperty("axialLength.mm", 24.12)
  })

  it("needs a day, and a moment has the day of its writer's clock", () => {
    expect(why({ ...length(), effectiveDateTime: "2026-03" })).toEqual(["Observation: It names no day."])
    const late = { ...length(), effectiveDateTime: "2026-03-16T23:50:00-05:00" }
    expect(only(late).fragment.course.visits?.[0]?.date).toBe("2026-03-16")
  })
})

describe("prescriptions of another program", () => {
  it("of glasses are old glasses on their day, unless figures were taken on it", () => {
    const glasses = { ...example("vision-prescription.json"), dateWritten: "2024-05-02" }
    const { fragment } = only(bundle("collection", patient, glasses, length()))
    expect(fragment.course.visits?.map(({ date, from }) => [date, from])).toEqual([
      ["2024-05-02", "old glasses"],
      ["2026-03-16", undefined],
    ])
    expect(fragment.course.visits?.[0]?.left?.refraction).toEqual({ sphere: -2.25, cylinder: -0.25, axis: 5 })
    const sameDay = { ...glasses, dateWritten: "2026-03-16" }
    expect(why(bundle("collection", patient, sameDay, length())).join()).toContain(
      "prescribed on a day with figures",
    )
  })

  it("of drops need a coded atropine with its strength", () => {
    const asked = example("medication-request.json")
    expect(why(bundle("collection", patient, asked)).join()).toContain("not coded as atropine")
    const drops = example("medication-atropine.json")
    delete drops.ingredient[0].strength
    expect(why(bundle("collection", patient, asked, drops)).join()).toContain("strength")
  })

  it("that overlap are not both taken, and the reason is the rule", () => {
    const drops = example("medication-atropine.json")
    const [first, second] = ["2026-03-16", "2026-06-16"].map((authoredOn, index) => ({
      ...example("medication-request.json"),
      id: `r${index}`,
      authoredOn,
    }))
    const { fragment, skipped } = only(bundle("collection", patient, drops, first!, second!))
    expect(fragment.course.treatments).toHaveLength(1)
    expect(skipped[0]?.why).toContain("on or after the end of treatments[0]")
  })
})

describe("papers", () => {
  it("come with the child where they are inside the file", () => {
    const data = Buffer.from("%PDF-1.4 invented").toString("base64")
    const report = {
      ...example("diagnostic-report.json"),
      presentedForm: [{ contentType: "application/pdf", data, title: "Letter" }],
    }
    const { fragment } = only(bundle("collection", patient, report))
    expect(fragment.documents).toMatchObject([{ date: "2026-03-16", title: "Letter" }])
    expect(Buffer.from(fragment.documents[0]!.bytes).toString()).toBe("%PDF-1.4 invented")
    const elsewhere = {
      ...report,
      presentedForm: [{ contentType: "application/pdf", url: "https://x.example" }],
    }
    expect(why(bundle("collection", patient, elsewhere))[0]).toContain("no paper as PDF")
  })
})

describe("a hostile file", () => {
  const reading = (body: string) => readFhir({ file: "bad.json", text: body })
  it.each([
    ["empty", "", "empty"],
    ["cut off", '{"resourceType":"Bundle","entry":[', "not JSON"],
    ["nested without end", `${"[".repeat(200_000)}${"]".repeat(200_000)}`, "levels deep"],
    ["a number", "7", "no resourceType"],
    ["null", "null", "no resourceType"],
    ["no FHIR", '{"a":1}', "no resourceType"],
    ["a million nothings", `[${"0,".repeat(1_000_000)}0]`, "more than 50000 resources"],
  ])("is refused cleanly: %s", async (_, body, why) => {
    const { fragments, skipped } = await reading(body)
    expect(fragments).toEqual([])
    expect(skipped[0]?.why).toContain(why)
    expect(skipped.length).toBeLessThanOrEqual(1001)
  })

  it("cannot reach a prototype", async () => {
    const value = `{"resourceType":"Patient","id":"a","__proto__":{"polluted":1},"constructor":{"prototype":{"polluted":1}},
      "extension":[{"url":"urn:lengthwise:fhir:remainder","extension":[
        {"url":"set","extension":[{"url":"path","valueString":"__proto__.polluted"},{"url":"value","valueDecimal":1}]},
        {"url":"set","extension":[{"url":"path","valueString":"child.__proto__"},{"url":"value","extension":[{"url":"polluted","valueDecimal":1}]}]}]}]}`
    await reading(value)
    expect({}).not.toHaveProperty("polluted")
  })

  it("may refer in a circle", () => {
    const circle = [
      { resourceType: "Observation", id: "a", subject: { reference: "Observation/b" }, status: "final" },
      { resourceType: "Provenance", id: "p", target: [{ reference: "Provenance/p" }] },
      { ...length(), subject: { reference: "Observation/a" }, device: { reference: "Observation/al-od-v3" } },
    ]
    expect(read(bundle("collection", ...circle)).fragments).toEqual([])
  })

  it("of Bundles in Bundles ends", () => {
    let value: object = length()
    for (let depth = 0; depth < 30; depth++) value = bundle("collection", value)
    expect(why(value)[0]).toContain("too deep")
  })

  it("of tens of thousands of resources is read or refused within seconds", () => {
    const many = Array.from({ length: 30_000 }, (_, index) => ({
      ...length(),
      id: `o${index}`,
      effectiveDateTime: `20${10 + (index % 15)}-0${1 + (index % 9)}-1${index % 10}`,
      valueQuantity: { value: index, unit: "mm" },
    }))
    const { fragments, skipped } = read(bundle("collection", patient, ...many))
    expect(fragments).toEqual([])
    expect(skipped[0]?.why).toContain("more than 10000 figures")
    const fewer = read(bundle("collection", patient, ...many.slice(0, 3000)))
    expect(fewer.skipped.length).toBeLessThanOrEqual(1001)
    expect(fewer.fragments[0]?.course.visits).not.toEqual([])
  }, 60_000)
})
