import type { Bundle, FhirResource } from "fhir/r4.js"
import { afterAll, beforeAll, expect, it } from "vitest"
import { type TestApp, testApp } from "../../app/test-app.js"
import { allFaults } from "./validators.js"

let practice: TestApp

beforeAll(async () => {
  practice = await testApp()
  await practice.logIn()
  const { child } = await practice.addChild({ name: "Mira Hållow", number: "17" })
  const eye = {
    axialLength: { mm: 24.12, device: "Model 1" },
    refraction: { sphere: -2, cylinder: -0.5, axis: 90 },
  }
  const body = { date: "2025-11-20", right: eye, left: eye }
  await practice.ask("POST", `/api/children/${child.id}/visits`, { body })
}, 120_000)
afterAll(() => practice.close())

it.each([
  "/fhir/metadata",
  "/fhir/Patient",
  "/fhir/Observation?_count=3",
  "/fhir/PlanDefinition",
  "/fhir/CarePlan",
  "/fhir/Slot",
  "/fhir/Patient?_count=none",
])(
  "the validators find no fault with the answer to %s",
  async (url) => {
    const answer = (await practice.ask("GET", url)).json<FhirResource>()
    expect(allFaults(answer)).toEqual([])
    if (answer.resourceType !== "Bundle") return
    for (const { resource } of (answer as Bundle).entry ?? [])
      expect(allFaults(resource as object)).toEqual([])
  },
  120_000,
)
