import { GRADE_WORDS } from "../engine/reference/grade-words.js"
import type { NamedParameter, NamedTable, SourceOf, Why } from "../engine/why/why.js"
import { inDigits } from "../engine/words.js"
import { section } from "./words.js"

/** The full registers of sources: a hundred kilobytes, so only loaded when something is asked why. */
export const sourceRegister = async (): Promise<SourceOf> =>
  (await import("../evidence/sources.js")).sourceById

export function whyText({ title, inputs, formula, parameters, tables, sources }: Why): string {
  return [
    `\n${title}\n\n`,
    section(
      "Inputs",
      inputs.map(([what, value]) => `${what}: ${value}`),
    ),
    section(
      "How it is worked out",
      formula.map((step, index) => `${index + 1}. ${step}`),
    ),
    section("Parameters", parameters.map(parameterText)),
    section("Tables", tables.map(tableText)),
    section("Sources", sources.map(sourceText)),
  ].join("")
}

/** "seasonAmplitude: 0.25 (no SD given). Source: ... Note." */
export function parameterText({ name, value, unit, sd, source, rangeTried, note }: NamedParameter): string {
  const spread = sd === null ? "no SD given" : `SD ${inDigits(sd)}`
  const range = rangeTried === undefined ? "" : ` Tried from ${rangeTried[0]} to ${rangeTried[1]}.`
  return `${name}: ${inDigits(value)}${unit === "1" ? "" : ` ${unit}`} (${spread}). Source: ${source.join(", ")}.${range} ${note}`
}

export function tableText(table: NamedTable): string {
  const { id, grade, title, authors, year, doi, where, obtained, population, n, ageRange, device, notes } =
    table
  const paper = `${authors}${year === null ? "" : `, ${year}`}${doi === null ? "" : `, doi ${doi}`}`
  return (
    `${id}, grade ${grade} (${GRADE_WORDS[grade]}): ${title}. ${paper}. ${where}. Read: ${obtained}. ` +
    `${population}; n ${n}; ages ${ageRange}; ${device}. ${notes}`
  )
}

export function sourceText({ id, citation, doi, obtained, caveats }: Why["sources"][number]): string {
  return `${id}: ${citation}${doi === null ? "" : `. doi ${doi}`}. Read: ${obtained}.${caveats && ` ${caveats}`}`
}
