import type {
  Grade,
  GrowthParameterName,
  GrowthParameters,
  Parameter,
  Provenance,
} from "../../evidence/types.js"
import { capitalised } from "../format.js"

/** The answer to "why?" beside a figure: everything that went into it. */
export interface Why {
  readonly title: string
  /** What was measured or set, as label and value. */
  readonly inputs: readonly (readonly [label: string, value: string])[]
  /** The computation in words, one step each. */
  readonly steps: readonly string[]
  readonly parameters: readonly NamedParameter[]
  readonly tables: readonly WhyTable[]
  /** Version of the program's method and of its parameters. */
  readonly method?: string
}

export interface NamedParameter {
  readonly name: string
  readonly parameter: Parameter
}

/** A published table or curve that was read, with how far it may be trusted. */
interface WhyTable {
  readonly provenance: Provenance
  readonly grade: Grade
}

const GRADE_WORDS: Readonly<Record<Grade, string>> = {
  A: "grade A, fit to show",
  B: "grade B, to be read with its limits",
  C: "grade C, approximate",
  D: "grade D, for plausibility only",
}

export const gradeInWords = (grade: Grade): string => GRADE_WORDS[grade]

/** Parameters of the growth model by name, each with its name in words: "rateAt10MmPerYear" is "rate at 10 mm per year". */
export function namedParameters(
  growth: GrowthParameters,
  names: readonly GrowthParameterName[],
): readonly NamedParameter[] {
  return names.map((name) => ({ name: parameterInWords(name), parameter: growth.values[name] }))
}

export function parameterInWords(name: string): string {
  const words = name
    .replace(/([a-z])([A-Z])/g, "$1 $2")
    .replace(/([a-zA-Z])(\d)/g, "$1 $2")
    .replace(/(\d)([a-zA-Z])/g, "$1 $2")
    .toLowerCase()
  return capitalised(words)
}

/** "0.272 mm/a, known to ±0.019" */
export function valueInWords({ value, unit, sd }: Parameter): string {
  const shown = `${value}${unit === "1" || unit === "" ? "" : ` ${unit}`}`
  return sd === null ? shown : `${shown}, known to ± ${sd} (1 SD)`
}

/** Every source that the parameters cite, once, in the order of citing. */
export function citedSources(parameters: readonly NamedParameter[]): readonly string[] {
  const ids = parameters.flatMap(({ parameter }) => parameter.source)
  return [...new Set(ids)].filter((id) => id !== ASSUMPTION)
}

/** Where a value comes from: the numbers of its sources in a list, or that it is assumed, and what range was tried. */
export function sourceInWords({ source, rangeTried }: Parameter, listed: readonly string[]): string {
  const numbers = source.filter((id) => id !== ASSUMPTION).map((id) => listed.indexOf(id) + 1)
  const cited = numbers.length === 0 ? [] : [`source ${numbers.join(", ")}`]
  const tried = rangeTried ? `, tried from ${rangeTried[0]} to ${rangeTried[1]}` : ""
  const assumed = source.includes(ASSUMPTION) ? [`assumption${tried}`] : []
  return [...assumed, ...cited].join("; ")
}

const ASSUMPTION = "assumption"
