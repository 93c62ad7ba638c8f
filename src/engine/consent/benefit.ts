import type { TreatmentChoice, TreatmentKind } from "../course.js"
import { msg, say, withDecimalSign } from "../say.js"
import { treatmentName } from "../treatment-name.js"
import { capitalised, fixed } from "../words.js"
import { allFacts, type ConsentEvidence, type Facts, fact } from "./consent-evidence.js"

/** Growth of the two arms of one trial over the same months, mm. */
interface Pair {
  readonly months: number
  readonly treatedMm: number
  readonly controlMm: number
  readonly source: string
}

/** What trials found that the treatment holds back, in mm with the control group beside it, then as a share. */
export function benefit(treatment: TreatmentChoice, evidence: ConsentEvidence): Facts {
  const isDrops = treatment.kind === "atropine"
  const pairs = longestOfEachTrial(pairsOf(treatment, evidence))
  return allFacts([
    ...pairs.map((pair) => fact(pairInWords(treatment, pair), `treatments/${pair.source}`)),
    ...(isDrops ? [joint(treatment, evidence)] : []),
    summary(treatment, evidence),
  ])
}

function pairInWords(treatment: TreatmentChoice, { months, treatedMm, controlMm }: Pair): string {
  const gain = controlMm - treatedMm
  const values = {
    months,
    treated: grownMm(treatedMm),
    control: grownMm(controlMm),
    side: gain < 0 ? "more" : "less",
    difference: fixed(Math.abs(gain)),
  }
  if (treatment.kind === "atropine")
    return say(
      "In a trial over {months} months eyes on {percent} % drops grew {treated} mm on average, eyes on drops without the drug {control} mm: {side, select, more {{difference} mm more} other {a difference of {difference} mm}}.",
      { ...values, percent: withDecimalSign(String(treatment.concentrationPercent)) },
    )
  return say(
    "In a trial over {months} months eyes with {treatment} grew {treated} mm on average, eyes with ordinary glasses or lenses {control} mm: {side, select, more {{difference} mm more} other {a difference of {difference} mm}}.",
    { ...values, treatment: treatmentName(treatment) },
  )
}

/** One line for each treatment that could be chosen instead, from trials only; the one asked about is left out. */
export function alternatives(
  { kind, concentrationPercent }: TreatmentChoice,
  evidence: ConsentEvidence,
): Facts {
  const others: readonly TreatmentChoice[] = [
    ...USUAL_PERCENTS.map((percent) => ({ kind: "atropine" as const, concentrationPercent: percent })),
    ...OPTICAL_KINDS.map((optical) => ({ kind: optical })),
  ].filter(
    (other: TreatmentChoice) => other.kind !== kind || other.concentrationPercent !== concentrationPercent,
  )
  return allFacts(
    others.flatMap((other) => {
      const pair = pairsOf(other, evidence)[0]
      if (!pair) return []
      const { months, treatedMm, controlMm, source } = pair
      const words = say(
        "{treatment}: {treated} mm of growth against {control} mm in the group without, over {months} months in one trial.",
        {
          treatment: capitalised(treatmentName(other)),
          treated: grownMm(treatedMm),
          control: grownMm(controlMm),
          months,
        },
      )
      return [fact(words, `treatments/${source}`)]
    }),
  )
}

// The strengths in use for the eyes of children; stronger ones were studied, and are not offered by default.
const USUAL_PERCENTS = [0.01, 0.025, 0.05]

/** The class of the evidence that a kind of optical treatment is, and the one of its control arm where that differs. */
const CLASSES: Readonly<
  Partial<Record<TreatmentKind, { readonly treated: string; readonly control?: string }>>
> = {
  "defocus-spectacles": { treated: "spectacles, peripheral defocus, multi-segment" },
  "lenslet-spectacles": {
    treated: "spectacles, aspherical lenslets (high)",
    control: "spectacles, aspherical lenslets",
  },
  "dual-focus-lens": { treated: "soft contact lens, dual-focus daily" },
  "multifocal-lens": {
    treated: "soft contact lens, multifocal high add (+2.50)",
    control: "soft contact lens, multifocal",
  },
  orthokeratology: { treated: "orthokeratology" },
}
const OPTICAL_KINDS = Object.keys(CLASSES) as TreatmentKind[]

function pairsOf(
  { kind, concentrationPercent }: TreatmentChoice,
  evidence: ConsentEvidence,
): readonly Pair[] {
  if (kind === "atropine") {
    const arms = evidence.trials.filter(({ interval, months }) => interval === `baseline to month ${months}`)
    return arms.flatMap((arm) => {
      const isStrength = arm.concentration_percent === concentrationPercent && arm.class === "atropine"
      const control = arms.find(
        (other) => other.class === "placebo" && other.trial === arm.trial && other.months === arm.months,
      )
      return isStrength ? pairOf(arm, control) : []
    })
  }
  const classes = CLASSES[kind]
  if (!classes) return []
  return evidence.opticalArms.flatMap((arm) => {
    if (arm.class !== classes.treated || arm.arm !== "treated") return []
    const control = evidence.opticalArms.find(
      (other) =>
        other.class === (classes.control ?? classes.treated) &&
        other.arm.includes("control") &&
        other.trial === arm.trial &&
        other.months === arm.months,
    )
    return pairOf(arm, control)
  })
}

interface Arm {
  readonly months: number | null
  readonly dAL_mean?: number | null
  readonly source: string
}

function pairOf(treated: Arm, control: Arm | undefined): readonly Pair[] {
  const { months, dAL_mean: treatedMm, source } = treated
  const controlMm = control?.dAL_mean
  if (months === null || treatedMm == null || controlMm == null) return []
  return [{ months, treatedMm, controlMm, source }]
}

// Two looks at the same children are one trial; the later one says more.
function longestOfEachTrial(pairs: readonly Pair[]): readonly Pair[] {
  return pairs
    .filter(({ source, months }) => !pairs.some((other) => other.source === source && other.months > months))
    .toSorted((a, b) => a.months - b.months)
}

// Eyes may come out shorter, by the method's error or the lens and choroid: a true minus sign, which is read aloud.
const grownMm = (mm: number): string => fixed(mm).replace("-", "\u2212")

function joint({ concentrationPercent }: TreatmentChoice, evidence: ConsentEvidence): Facts {
  const row = evidence.networkRows.find((each) => each.concentration_percent === concentrationPercent)
  if (row?.dAL === undefined || row.dAL_cri95 === undefined) return { lines: [], sources: [] }
  const [most = 0, least = 0] = row.dAL_cri95.map((mm) => -mm)
  return fact(
    say(
      "A joint evaluation of many trials of different length puts the difference at {difference} mm; it may be anything from {least} to {most} mm.",
      { difference: fixed(-row.dAL), least: fixed(least), most: fixed(most) },
    ),
    "treatments/bayes_nma2024",
  )
}

/** The mean share held back, as the growth model of this program takes it, with where that mean may lie (95 %). */
function summary({ kind, concentrationPercent }: TreatmentChoice, evidence: ConsentEvidence): Facts {
  const effect = evidence.effects.find(
    (each) => each.kind === kind && (each.concentrationPercent ?? undefined) === concentrationPercent,
  )
  if (!effect)
    return fact(
      say(
        "For this strength the trials give no figure; what was found at other strengths may not hold for it.",
      ),
    )
  const { withheldFraction: mean, withheldFractionSd: sd, confidence, mayBeNil, source } = effect
  const [low = 0, high = 0] = [Math.max(0, mean - 1.96 * sd), Math.min(1, mean + 1.96 * sd)].map((share) =>
    Math.round(100 * share),
  )
  const told = say(
    "All in all we reckon that {mean} % of the growth is held back on average; that average may lie anywhere from {low} to {high} %. How good the evidence is: {confidence}.",
    { mean: Math.round(100 * mean), low, high, confidence: confidenceInWords(confidence) },
  )
  const nil = mayBeNil
    ? [say("At this strength the effect is small and may be nothing at all: the trials disagree.")]
    : []
  return { lines: [told, ...nil], sources: source }
}

/** How good the evidence is, as its parameters put it. */
const CONFIDENCE: Readonly<Record<string, string>> = {
  conflicting: msg("the trials contradict each other"),
  weak: msg("weak|evidence"),
  "one trial": msg("one trial only|evidence"),
  moderate: msg("moderate|evidence"),
  "moderate, mostly East Asian": msg("moderate, mostly from children of East Asia"),
  "moderate; not for routine use": msg("moderate; this strength is not for routine use"),
  good: msg("good|evidence"),
}

/** @throws RangeError when the evidence says it in words that have no translation. */
function confidenceInWords(confidence: string): string {
  const words = CONFIDENCE[confidence]
  if (words === undefined) throw new RangeError(`no words for the confidence "${confidence}"`)
  return say(words)
}
