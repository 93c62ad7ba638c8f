import type { Bundle, CapabilityStatement, OperationOutcome, Patient } from "fhir/r4.js"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { type TestApp, testApp } from "./test-app.js"

let practice: TestApp
let mira: string
let noor: string

beforeAll(async () => {
  practice = await testApp()
  await practice.logIn()
  mira = (await practice.addChild({ name: "Mira Hållow", number: "17", born: "2016-05-04" })).child.id
  noor = (await practice.addChild({ name: "Noor Quill", number: "18", born: "2015-02-01", sex: "male" }))
    .child.id
  for (const [child, mm] of [
    [mira, 24.12],
    [noor, 25.3],
  ] as const)
    for (const date of ["2025-05-20", "2025-11-20"]) {
      const eye = { axialLength: { mm, device: "Model 1" }, refraction: { sphere: -2 } }
      const body = { date, right: eye, left: eye }
      const added = await practice.ask("POST", `/api/children/${child}/visits`, { body })
      expect(added.statusCode).toBe(201)
    }
})
afterAll(() => practice.close())

const asked = async <T>(url: string, status = 200): Promise<T> => {
  const answer = await practice.ask("GET", url)
  expect(answer.statusCode, answer.body).toBe(status)
  expect(answer.headers["content-type"]).toMatch(/^application\/fhir\+json/)
  return answer.json<T>()
}
const idsOf = ({ entry = [] }: Bundle) =>
  entry.map(({ resource }) => `${resource?.resourceType}/${resource?.id}`)
const fault = async (url: string, status: number) =>
  (await asked<OperationOutcome>(url, status)).issue.map(({ diagnostics }) => diagnostics).join()

/** Every page from the first, by the links alone. */
async function allPages(url: string): Promise<readonly Bundle[]> {
  const pages: Bundle[] = []
  for (let next: string | undefined = url; next !== undefined && pages.length < 100; ) {
    const page: Bundle = await asked<Bundle>(next)
    pages.push(page)
    next = page.link?.find(({ relation }) => relation === "next")?.url.replace(/^https?:\/\/[^/]+/, "")
  }
  return pages
}

describe("metadata", () => {
  it("says what can be asked, to whoever asks", async () => {
    const statement = await asked<CapabilityStatement>("/fhir/metadata")
    expect(statement.fhirVersion).toBe("4.0.1")
    const types = statement.rest?.[0]?.resource?.map(({ type }) => type)
    expect(types).toEqual(expect.arrayContaining(["Patient", "Observation", "VisionPrescription"]))
    const open = await practice.app.inject({ method: "GET", url: "/fhir/metadata" })
    expect(open.statusCode).toBe(200)
  })

  it("is the only thing that is open", async () => {
    const answer = await practice.app.inject({ method: "GET", url: "/fhir/Patient" })
    expect(answer.statusCode).toBe(401)
    expect(answer.json<OperationOutcome>()).toMatchObject({
      resourceType: "OperationOutcome",
      issue: [{ code: "login" }],
    })
  })
})

describe("a search", () => {
  it.each([
    ["name=hallow", "Mira Hållow"],
    ["identifier=18", "Noor Quill"],
    ["birthdate=2016-05-04", "Mira Hållow"],
    ["birthdate=lt2016-01-01", "Noor Quill"],
    ["gender=male", "Noor Quill"],
  ])("for a Patient by %s finds %s alone", async (query, name) => {
    const { total, entry = [] } = await asked<Bundle>(`/fhir/Patient?${query}`)
    expect(total).toBe(1)
    expect(entry).toMatchObject([{ resource: { name: [{ text: name }] } }])
  })

  it("by patient answers with nobody else's", async () => {
    const bundle = await asked<Bundle>(`/fhir/Observation?patient=Patient/${mira}&_count=200`)
    expect(idsOf(bundle).length).toBeGreaterThan(3)
    for (const { resource } of bundle.entry ?? [])
      expect(JSON.stringify(resource)).toContain(`Patient/${mira}`)
  })

  it("by code and day finds the length of that visit", async () => {
    const code = encodeURIComponent("http://loinc.org|64742-0")
    const bundle = await asked<Bundle>(`/fhir/Observation?patient=${mira}&code=${code}&date=ge2025-11-01`)
    expect(bundle.entry).toMatchObject([{ resource: { valueQuantity: { value: 24.12, code: "mm" } } }])
  })

  it("comes in pages that hold everything once", async () => {
    const whole = await asked<Bundle>("/fhir/Observation?_count=200")
    const pages = await allPages("/fhir/Observation?_count=3")
    expect(pages.length).toBeGreaterThan(2)
    for (const page of pages) expect(page.entry?.length).toBeLessThanOrEqual(3)
    expect(pages.flatMap(idsOf)).toEqual(idsOf(whole))
    expect(new Set(idsOf(whole)).size).toBe(whole.total)
  })

  it("finds an instrument once, however many children were measured with it", async () => {
    expect((await asked<Bundle>("/fhir/Device")).total).toBe(1)
  })

  it("that is not understood is refused and not widened", async () => {
    expect(await fault("/fhir/Observation?status=final", 400)).toMatch(
      /not searched by status; it is searched by _id/,
    )
    expect(await fault("/fhir/Patient?birthdate=May", 400)).toMatch(/YYYY-MM-DD.*May/)
    expect(await fault("/fhir/Patient?_count=0", 400)).toMatch(/_count.*1 to 200/)
    expect(await fault("/fhir/Patient?_page=x", 400)).toMatch(/_page/)
    expect(await fault("/fhir/Slot", 404)).toMatch(/no Slot here/)
  })
})

describe("one resource", () => {
  it("is read by its id, and everything of a child as well", async () => {
    expect(await asked<Patient>(`/fhir/Patient/${mira}`)).toMatchObject({ id: mira, birthDate: "2016-05-04" })
    const all = (await allPages(`/fhir/Patient/${mira}/$everything?_count=7`)).flatMap(idsOf)
    expect(all[0]).toBe(`Patient/${mira}`)
    expect(new Set(all).size).toBe(all.length)
    for (const id of all) expect((await asked<{ id: string }>(`/fhir/${id}`)).id).toBe(id.split("/")[1])
  })

  it("that is not there is not found", async () => {
    expect(await fault("/fhir/Patient/nobody", 404)).toMatch(/no Patient\/nobody/)
  })

  it("is not written in another form", async () => {
    const answer = await practice.ask("GET", `/fhir/Patient/${noor}`, {
      headers: { accept: "application/fhir+xml" },
    })
    expect(answer.statusCode).toBe(406)
  })

  it("cannot be changed", async () => {
    const answer = await practice.ask("POST", "/fhir/Patient", { body: {} })
    expect(answer.statusCode).toBe(404)
  })
})

describe("a bulk export", () => {
  const begun = async (query = "") => {
    const answer = await practice.ask("GET", `/fhir/$export${query}`, {
      headers: { prefer: "respond-async" },
    })
    expect(answer.statusCode, answer.body).toBe(202)
    return String(answer.headers["content-location"]).replace(/^https?:\/\/[^/]+/, "")
  }
  const ready = async (place: string) => {
    for (let tries = 0; tries < 200; tries++) {
      const answer = await practice.ask("GET", place)
      if (answer.statusCode === 200)
        return answer.json<{ output: { type: string; url: string; count: number }[] }>()
      expect(answer.headers["x-progress"]).toMatch(/^\d+ of \d+ children$/)
      await new Promise((resolve) => setTimeout(resolve, 20))
    }
    throw new Error("the export did not end")
  }

  it("is made in the background: one file a type, one resource a line, everything once", async () => {
    const { output } = await ready(await begun())
    expect(output.map(({ type }) => type)).toEqual(expect.arrayContaining(["Patient", "Observation"]))
    for (const { type, url, count } of output) {
      const file = await practice.ask("GET", url.replace(/^https?:\/\/[^/]+/, ""))
      expect(file.headers["content-type"]).toBe("application/fhir+ndjson")
      const lines = file.body
        .trim()
        .split("\n")
        .map((line) => JSON.parse(line))
      expect(lines).toHaveLength(count)
      expect(new Set(lines.map(({ id }) => id)).size).toBe(count)
      expect(lines.every(({ resourceType }) => resourceType === type)).toBe(true)
    }
    expect(output.find(({ type }) => type === "Patient")?.count).toBe(2)
    expect(output.find(({ type }) => type === "Device")?.count).toBe(1)
  })

  it("holds only the types that were asked for", async () => {
    const { output } = await ready(await begun("?_type=Patient,Consent"))
    expect(output.map(({ type }) => type)).toEqual(["Patient"])
  })

  it("can be taken back, and is then gone", async () => {
    const place = await begun()
    expect((await practice.ask("DELETE", place)).statusCode).toBe(202)
    expect((await practice.ask("GET", place)).statusCode).toBe(404)
  })

  it("refuses what it would not do", async () => {
    expect(await fault("/fhir/$export?_since=2026-01-01", 400)).toMatch(/_since/)
    expect(await fault("/fhir/$export?_type=Slot", 400)).toMatch(/no Slot here/)
  })
})
