import type { TreatmentChoice, TreatmentKind } from "../course.js"
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
  const name = isDrops ? `${treatment.concentrationPercent} % drops` : treatmentName(treatment)
  const control = isDrops ? "on drops without the drug" : "with ordinary glasses or lenses"
  const pairs = longestOfEachTrial(pairsOf(treatment, evidence))
  return allFacts([
    ...pairs.map(({ months, treatedMm, controlMm, source }) =>
      fact(
        `In a trial over ${months} months eyes ${isDrops ? "on" : "with"} ${name} grew ${grownMm(treatedMm)} mm on average, eyes ${control} ${grownMm(controlMm)} mm: ${difference(controlMm - treatedMm)}.`,
        `treatments/${source}`,
      ),
    ),
    ...(isDrops ? [joint(treatment, evidence)] : []),
    summary(treatment, evidence),
  ])
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
      const words = `${capitalised(treatmentName(other))}: ${grownMm(treatedMm)} mm of growth against ${grownMm(controlMm)} mm in the group without, over ${months} months in one trial.`
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

const difference = (mm: number): string =>
  mm < 0 ? `${fixed(-mm)} mm more` : `a difference of ${fixed(mm)} mm`

function joint({ concentrationPercent }: TreatmentChoice, evidence: ConsentEvidence): Facts {
  const row = evidence.networkRows.find((each) => each.concentration_percent === concentrationPercent)
  if (row?.dAL === undefined || row.dAL_cri95 === undefined) return { lines: [], sources: [] }
  const [most = 0, least = 0] = row.dAL_cri95.map((mm) => -mm)
  return fact(
    `A joint evaluation of many trials of different length puts the difference at ${fixed(-row.dAL)} mm; it may be anything from ${fixed(least)} to ${fixed(most)} mm.`,
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
      "For this strength the trials give no figure; what was found at other strengths may not hold for it.",
    )
  const { withheldFraction: mean, withheldFractionSd: sd, confidence, mayBeNil, source } = effect
  const [low, high] = [Math.max(0, mean - 1.96 * sd), Math.min(1, mean + 1.96 * sd)].map((share) =>
    Math.round(100 * share),
  )
  const nil = mayBeNil
    ? " At this strength the effect is small and may be nothing at all: the trials disagree."
    : ""
  return fact(
    `All in all we reckon that ${Math.round(100 * mean)} % of the growth is held back on average; that average may lie anywhere from ${low} to ${high} %. How good the evidence is: ${confidence}.${nil}`,
    ...source,
  )
}
