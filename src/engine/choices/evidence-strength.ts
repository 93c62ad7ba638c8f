import type { TreatmentEffect } from "../../evidence/types.js"
import { counted } from "../words.js"

/** How well an effect is known, in words, never as a rank. */
export interface EvidenceStrength {
  /** Names of the trials that the effect is taken from, each once. */
  readonly trials: readonly string[]
  /** "good", "conflicting", "moderate, mostly East Asian", as the evidence has it. */
  readonly confidence: string
  readonly mayBeNil: boolean
}

/** A row of a register of trials: which trial, from which source. */
export interface TrialRow {
  readonly trial?: string | undefined
  readonly source: string | null
}

/** Rows named like a trial that are pooled from several. */
const POOLED = /\bmeta\b/i

export function evidenceStrength(effect: TreatmentEffect, rows: readonly TrialRow[]): EvidenceStrength {
  const trials = new Map<string, string>()
  for (const id of effect.source) {
    const own = id.slice(id.indexOf("/") + 1)
    const name = rows.find(({ source }) => source?.split(", ").includes(own))?.trial
    if (name === undefined || POOLED.test(name)) continue
    // One trial is told in several papers: what follows its first word is a phase, a year or a model.
    const first = name.split(/[ (]/)[0] ?? name
    if (!trials.has(first))
      trials.set(first, name.replace(/ (phase \d|\(.*\))$/, "").replace(/(\d)%/, "$1 %"))
  }
  return { trials: [...trials.values()], confidence: effect.confidence, mayBeNil: effect.mayBeNil }
}

/**
 * @example
 * // => "small, may be nil; conflicting; 6 trials: LAMP, WA-ATOM, ATOM-J, CHAMP, MOSAIC, PMC7530823"
 */
export function strengthInWords({ trials, confidence, mayBeNil }: EvidenceStrength): string {
  const behind =
    trials.length === 0 ? "pooled estimates only" : `${counted(trials.length, "trial")}: ${trials.join(", ")}`
  // "one trial" says by itself what the count would say again.
  const graded = confidence === "one trial" ? [] : [confidence]
  return [...(mayBeNil ? ["small, may be nil"] : []), ...graded, behind].join("; ")
}
