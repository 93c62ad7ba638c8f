import type { Treatment } from "../engine/course.js"
import type { Evidence, Grade, Parameter, Provenance, Source, TreatmentEffect } from "../evidence/types.js"
import { GRADES } from "./grades.js"
import { inDigits, section } from "./words.js"

/** What stands behind a figure: the inputs, the formula in words, the parameters, the sources, the grade. */
export interface Why {
  readonly title: string
  readonly inputs: readonly (readonly [what: string, value: string])[]
  readonly formula: readonly string[]
  readonly parameters: readonly NamedParameter[]
  readonly tables: readonly NamedTable[]
  readonly sources: readonly NamedSource[]
}

export interface NamedParameter extends Parameter {
  readonly name: string
}

export interface NamedTable {
  readonly id: string
  readonly grade: Grade
  readonly title: string
  readonly where: string
  readonly obtained: string
  readonly population: string
  readonly n: string
  readonly device: string
}

export type NamedSource = Pick<Source, "id" | "citation" | "doi" | "obtained">

/** Every parameter of the growth model under its own name, then the trial effects of the treatments given. */
export function growthParameters(
  { growth }: Evidence,
  treatments: readonly Pick<Treatment, "kind" | "concentrationPercent">[] = [],
): readonly NamedParameter[] {
  const given = growth.effects.filter((effect) =>
    treatments.some(
      ({ kind, concentrationPercent }) =>
        kind === effect.kind && (concentrationPercent ?? null) === effect.concentrationPercent,
    ),
  )
  return [
    ...Object.entries(growth.values).map(([name, parameter]) => ({ name, ...parameter })),
    ...given.map(effectAsParameter),
  ]
}

export function effectAsParameter(effect: TreatmentEffect): NamedParameter {
  const nil = effect.mayBeNil ? " The effect may be nil." : ""
  return {
    name: `withheldFraction of ${effect.id}`,
    value: effect.withheldFraction,
    unit: "1",
    sd: effect.withheldFractionSd,
    source: effect.source,
    note: `${effect.derivation} Confidence: ${effect.confidence}.${nil}`,
  }
}

export function tableOf({
  id,
  grade,
  provenance,
}: {
  readonly id: string
  readonly grade: Grade
  readonly provenance: Provenance
}): NamedTable {
  const { title, where, obtained, population, n, device } = provenance
  return { id, grade, title, where, obtained, population, n, device }
}

/** The citations behind source ids, each once; the one word "assumption" has none. */
export async function citations(ids: readonly string[]): Promise<readonly NamedSource[]> {
  // A hundred kilobytes of sources, so only when they are asked for.
  const { sourceById } = await import("../evidence/sources.js")
  return [...new Set(ids)].flatMap((id) => {
    const source = sourceById(id)
    if (source === undefined) return []
    const { citation, doi, obtained } = source
    return [{ id, citation, doi, obtained }]
  })
}

/** A `Why` with the sources of its parameters, and of whatever else it rests on, looked up. */
export async function withSources(
  why: Omit<Why, "sources">,
  otherSources: readonly string[] = [],
): Promise<Why> {
  const ids = [...why.parameters.flatMap(({ source }) => source), ...otherSources]
  return { ...why, sources: await citations(ids) }
}

export function whyText(why: Why): string {
  return [
    `\n${why.title}\n\n`,
    section(
      "Inputs",
      why.inputs.map(([what, value]) => `${what}: ${value}`),
    ),
    section("How it is worked out", why.formula),
    section("Parameters", why.parameters.map(parameterText)),
    section("Tables", why.tables.map(tableText)),
    section("Sources", why.sources.map(sourceText)),
  ].join("")
}

/** "seasonAmplitude: 0.25 (unit 1, SD not given). Source ... Note." */
export function parameterText({ name, value, unit, sd, source, rangeTried, note }: NamedParameter): string {
  const spread = sd === null ? "no SD given" : `SD ${inDigits(sd)}`
  const range = rangeTried === undefined ? "" : ` Tried from ${rangeTried[0]} to ${rangeTried[1]}.`
  return `${name}: ${inDigits(value)}${unit === "1" ? "" : ` ${unit}`} (${spread}). Source: ${source.join(", ")}.${range} ${note}`
}

export function tableText({ id, grade, title, where, obtained, population, n, device }: NamedTable): string {
  return `${id}, grade ${grade} (${GRADES[grade]}): ${title}. ${where}. Read: ${obtained}. ${population}; n ${n}; ${device}.`
}

export function sourceText({ id, citation, doi, obtained }: NamedSource): string {
  return `${id}: ${citation}${doi === null ? "" : `. doi ${doi}`}. Read: ${obtained}.`
}
