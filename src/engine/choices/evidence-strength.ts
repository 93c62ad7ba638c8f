import type { TreatmentEffect } from "../../evidence/types.js"
import { msg, say } from "../say.js"

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
    trials.length === 0
      ? say("pooled estimates only")
      : say("{count, plural, one {# trial} other {# trials}}: {trials}", {
          count: trials.length,
          trials: trials.join(", "),
        })
  // "one trial" says by itself what the count would say again.
  const graded = confidence === "one trial" ? [] : [confidenceInWords(confidence)]
  return [...(mayBeNil ? [say("small, may be nil")] : []), ...graded, behind].join("; ")
}

/** How sure the evidence is of an effect, as its parameters put it; a test holds this to them. */
export const CONFIDENCE: Readonly<Record<string, string>> = {
  conflicting: msg("conflicting|evidence"),
  weak: msg("weak|evidence"),
  "one trial": msg("one trial|evidence"),
  good: msg("good|evidence"),
  moderate: msg("moderate|evidence"),
  "moderate, mostly East Asian": msg("moderate, mostly East Asian|evidence"),
  "moderate; not for routine use": msg("moderate; not for routine use|evidence"),
  "moderate; extra over orthokeratology 0.06 (0.03) mm/a": msg(
    "moderate; extra over orthokeratology 0.06 (0.03) mm/a|evidence",
  ),
}

/** Words that the evidence may get one day stand as they are. */
export function confidenceInWords(confidence: string): string {
  const known = CONFIDENCE[confidence]
  return known === undefined ? confidence : say(known)
}
