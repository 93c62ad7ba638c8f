import type { Grade, Parameter, Provenance, Source } from "../../evidence/types.js"
import { sentence } from "../words.js"

/** The answer to "why?" beside a figure: everything that went into it, in words that a terminal and a page both show. */
export interface Why {
  readonly title: string
  /** What was measured, set or asked for. */
  readonly inputs: readonly WhyInput[]
  /** The computation in words, one sentence each, in order. */
  readonly formula: readonly string[]
  readonly parameters: readonly NamedParameter[]
  /** Published tables and curves that were read. */
  readonly tables: readonly NamedTable[]
  /** What the parameters and the formula rest on, each once, in order of naming. */
  readonly sources: readonly Omit<Source, "where">[]
}

export type WhyInput = readonly [label: string, value: string]

export interface NamedParameter extends Parameter {
  readonly name: string
}

export interface NamedTable
  extends Pick<
    Provenance,
    | "title"
    | "authors"
    | "year"
    | "doi"
    | "where"
    | "obtained"
    | "population"
    | "n"
    | "ageRange"
    | "device"
    | "notes"
  > {
  /** The reference or curve as an answer names it. */
  readonly id: string
  readonly grade: Grade
}

/** Looks up a source by its id; undefined for what is none, such as the word "assumption". */
export type SourceOf = (id: string) => Source | undefined

interface WhyDraft
  extends Pick<Why, "title" | "inputs" | "formula">,
    Partial<Pick<Why, "parameters" | "tables">> {
  /** Ids of sources of the formula itself. */
  readonly restsOn?: readonly string[]
}

/** A whole `Why`: sentences ended, the sources of its parameters and formula looked up. */
export function whyOf(draft: WhyDraft, sourceOf: SourceOf): Why {
  const { title, inputs, formula, parameters = [], tables = [], restsOn = [] } = draft
  const ids = [...parameters.flatMap(({ source }) => source), ...restsOn]
  return {
    title,
    inputs,
    formula: formula.map(sentence),
    parameters,
    tables,
    sources: citations(ids, sourceOf),
  }
}

/** The citations behind source ids, each once. */
export function citations(ids: readonly string[], sourceOf: SourceOf): Why["sources"] {
  return [...new Set(ids)].flatMap((id) => {
    const source = sourceOf(id)
    if (source === undefined) return []
    const { citation, doi, obtained, caveats } = source
    return [{ id, citation, doi, obtained, caveats }]
  })
}

export function tableOf(table: {
  readonly id: string
  readonly grade: Grade
  readonly provenance: Provenance
}): NamedTable {
  const { id, grade, provenance } = table
  const { title, authors, year, doi, where, obtained, population, n, ageRange, device, notes } = provenance
  return { id, grade, title, authors, year, doi, where, obtained, population, n, ageRange, device, notes }
}
