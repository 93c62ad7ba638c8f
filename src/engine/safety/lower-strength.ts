import type { TreatmentEffect } from "../../evidence/types.js"
import { msg, say } from "../say.js"
import { treatmentName } from "../treatment-name.js"
import { percent as inPercent } from "../words.js"
import type { SafetyEvidence } from "./safety-evidence.js"

interface Named {
  readonly what: string
  readonly words: readonly string[]
  readonly duty: string
}

type Effects = Pick<SafetyEvidence, "effects">

/** How many lower strengths are named, the nearest first. */
const NAMED = 3

/**
 * A lower strength, with the share of natural growth that it is expected to withhold on average beside that of the one in
 * use: what a change would give up belongs beside what it would spare. Null when none was studied below it.
 */
export function lowerStrength({
  percent,
  evidence: { effects },
}: {
  /** The strength in use, % w/v. */
  readonly percent: number | undefined
  readonly evidence: Effects
}): Named | null {
  if (percent === undefined) return null
  const strengths = effects
    .filter((effect) => effect.kind === "atropine" && (effect.concentrationPercent ?? percent) <= percent)
    .toSorted((a, b) => (b.concentrationPercent ?? 0) - (a.concentrationPercent ?? 0))
  const lower = strengths.filter(({ concentrationPercent }) => concentrationPercent !== percent)
  if (lower.length === 0) return null
  const now = strengths.filter(({ concentrationPercent }) => concentrationPercent === percent)
  return {
    what: say("A lower strength can be considered"),
    words: [
      sharesInWords([...now, ...lower.slice(0, NAMED)]),
      say(
        "The product text of 1 % drops asks for the lowest dose that achieves the aim in a child (CD-062).",
      ),
    ],
    duty: "CD-085",
  }
}

/** Treatments without drops, with the share of natural growth that each is expected to withhold. */
export function withoutDrops({ effects }: Effects): readonly Named[] {
  const optical = effects.filter(({ kind }) => kind !== "atropine" && kind !== "atropine+orthokeratology")
  if (optical.length === 0) return []
  return [
    {
      what: say("A treatment without drops can be considered"),
      words: [sharesInWords(optical)],
      duty: "CD-040",
    },
  ]
}

const sharesInWords = (effects: readonly TreatmentEffect[]): string =>
  say("Expected share of growth withheld: {shares}.", { shares: effects.map(shareInWords).join("; ") })

/** How sure the evidence is of an effect, as its table says it. */
const CONFIDENCE: Readonly<Record<string, string>> = {
  conflicting: msg("conflicting|evidence"),
  weak: msg("weak|evidence"),
  "one trial": msg("one trial|evidence"),
  good: msg("good|evidence"),
  moderate: msg("moderate|evidence"),
  "moderate, mostly East Asian": msg("moderate, mostly East Asian|evidence"),
  "moderate; not for routine use": msg("moderate; not for routine use|evidence"),
}

function shareInWords(effect: TreatmentEffect): string {
  const { kind, concentrationPercent, withheldFraction, withheldFractionSd, mayBeNil, confidence } = effect
  if (kind === "atropine+orthokeratology") throw new RangeError("a combination is not one treatment")
  const name = treatmentName({ kind, concentrationPercent: concentrationPercent ?? undefined })
  const known = CONFIDENCE[confidence]
  const values = {
    name,
    share: inPercent(withheldFraction),
    sd: inPercent(withheldFractionSd),
    confidence: known === undefined ? confidence : say(known),
  }
  return mayBeNil
    ? say("{name}: {share} (SD {sd}, may be nil, evidence {confidence})", values)
    : say("{name}: {share} (SD {sd}, evidence {confidence})", values)
}
