import type { TreatmentChoice, TreatmentKind } from "../course.js"
import { fixed } from "../words.js"
import { allFacts, type ConsentEvidence, type Facts, fact, type ReboundRow } from "./consent-evidence.js"

/** What follows a stop: growth in the months without, beside those who went on or never had it. */
export function afterStopping(treatment: TreatmentChoice, evidence: ConsentEvidence): Facts {
  const found =
    treatment.kind === "atropine" ? ofDrops(treatment, evidence) : ofOptics(treatment.kind, evidence)
  return found.lines.length > 0
    ? found
    : fact("For this treatment no figures of what follows a stop were read.")
}

function ofDrops({ concentrationPercent }: TreatmentChoice, { rebound }: ConsentEvidence): Facts {
  const rows = rebound.filter(
    (row) => row.concentration_percent === concentrationPercent && (row.off_months ?? 0) >= 12,
  )
  const wasInLamp = rows.some(({ trial }) => trial.startsWith("LAMP"))
  const later = rebound.filter(
    ({ trial, concentration_percent, retreated_percent }) =>
      wasInLamp &&
      trial.startsWith("LAMP") &&
      concentration_percent === undefined &&
      retreated_percent !== undefined,
  )
  return allFacts([
    ...rows.flatMap(grown),
    ...rows.flatMap(({ retreated_percent, off_months, source }) =>
      retreated_percent === undefined
        ? []
        : [
            fact(
              `Within ${off_months} months after stopping, ${retreated_percent} % of children became half a dioptre or more short-sighted on top.`,
              `treatments/${source}`,
            ),
          ],
    ),
    ...later.map(({ retreated_percent, source }) =>
      fact(
        `In the two years after stopping, ${retreated_percent} % of children became half a dioptre or more short-sighted on top within a year, the sign to treat again.`,
        `treatments/${source}`,
      ),
    ),
  ])
}

function grown(row: ReboundRow): readonly Facts[] {
  const {
    off_months,
    dAL_off,
    continued_dAL,
    control_dAL_off,
    diff_dAL_off,
    diff_dAL_ci95 = [],
    dSER_off,
    control_dSER_off,
  } = row
  const source = `treatments/${row.source}`
  const start = `In the ${off_months} months after stopping`
  if (dAL_off !== undefined) {
    const beside =
      continued_dAL !== undefined
        ? `, eyes of children who went on ${fixed(continued_dAL)} mm`
        : control_dAL_off !== undefined
          ? `, eyes that never had the drug ${fixed(control_dAL_off)} mm`
          : ""
    return [fact(`${start} eyes grew ${fixed(dAL_off)} mm${beside}.`, source)]
  }
  if (diff_dAL_off !== undefined) {
    const [low = 0, high = 0] = diff_dAL_ci95
    const words = `${fixed(Math.abs(diff_dAL_off))} mm ${diff_dAL_off > 0 ? "more" : "less"}`
    const unclear = low < 0 && high > 0 ? ", too little to be told from no difference" : ""
    return [fact(`${start} eyes grew ${words} than eyes that never had the drug${unclear}.`, source)]
  }
  if (dSER_off !== undefined && control_dSER_off !== undefined)
    return [
      fact(
        `${start} eyes became ${fixed(-dSER_off)} D more short-sighted, eyes that never had the drug ${fixed(-control_dSER_off)} D.`,
        source,
      ),
    ]
  return []
}

/** As a review of what follows the end of optical treatments put it, kind by kind. */
const REVIEWED: Readonly<Partial<Record<TreatmentKind, string>>> = {
  orthokeratology: "a strong return of growth",
  "multifocal-lens": "a weak return of growth",
  "dual-focus-lens": "a weak return of growth for soft lenses of this sort",
  "defocus-spectacles": "that what follows differs from study to study",
  "lenslet-spectacles": "that what follows differs from study to study",
}

function ofOptics(kind: TreatmentKind, { rebound }: ConsentEvidence): Facts {
  const review = rebound.find(({ source }) => source === "jcm_optical_cessation2024")
  const measured = rebound.filter(
    ({ extra_dAL_per_year }) => kind === "multifocal-lens" && extra_dAL_per_year !== undefined,
  )
  return allFacts([
    ...measured.map(({ extra_dAL_per_year = 0, extra_dAL_ci95: [low = 0, high = 0] = [], source }) =>
      fact(
        `In the year after stopping eyes grew ${fixed(extra_dAL_per_year)} mm more than expected (${fixed(low)} to ${fixed(high)} mm).`,
        `treatments/${source}`,
      ),
    ),
    ...(review && REVIEWED[kind]
      ? [
          fact(
            `A review of studies of stopping found ${REVIEWED[kind]}; what returns fades with time.`,
            `treatments/${review.source}`,
          ),
        ]
      : []),
  ])
}
