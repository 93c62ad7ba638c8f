import type { TreatmentChoice, TreatmentKind } from "../course.js"
import { msg, say, withDecimalSign } from "../say.js"
import { fixed } from "../words.js"
import { allFacts, type ConsentEvidence, type Facts, fact, type ReboundRow } from "./consent-evidence.js"

/** What follows a stop: growth in the months without, beside those who went on or never had it. */
export function afterStopping(treatment: TreatmentChoice, evidence: ConsentEvidence): Facts {
  const found =
    treatment.kind === "atropine" ? ofDrops(treatment, evidence) : ofOptics(treatment.kind, evidence)
  return found.lines.length > 0
    ? found
    : fact(say("For this treatment no figures of what follows a stop were read."))
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
              say(
                "Within {months} months after stopping, {percent} % of children became more short-sighted by half a dioptre (0.5 D) or more.",
                { months: off_months ?? 12, percent: withDecimalSign(String(retreated_percent)) },
              ),
              `treatments/${source}`,
            ),
          ],
    ),
    ...later.map(({ retreated_percent, source }) =>
      fact(
        say(
          "In the two years after stopping, {percent} % of children became more short-sighted by half a dioptre (0.5 D) or more within a year, the sign to treat again.",
          { percent: withDecimalSign(String(retreated_percent)) },
        ),
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
  const months = off_months ?? 12
  if (dAL_off !== undefined) {
    const other = continued_dAL ?? control_dAL_off
    const grownMm = fixed(dAL_off)
    if (other === undefined)
      return [
        fact(
          say("In the {months} months after stopping eyes grew {grownMm} mm.", { months, grownMm }),
          source,
        ),
      ]
    const words = say(
      "In the {months} months after stopping eyes grew {grownMm} mm, {group, select, continued {eyes of children who went on} other {eyes that never had the drug}} {otherMm} mm.",
      {
        months,
        grownMm,
        group: continued_dAL === undefined ? "never" : "continued",
        otherMm: fixed(other),
      },
    )
    return [fact(words, source)]
  }
  if (diff_dAL_off !== undefined) {
    const [low = 0, high = 0] = diff_dAL_ci95
    const words = say(
      "In the {months} months after stopping eyes grew {side, select, more {{differenceMm} mm more} other {{differenceMm} mm less}} than eyes that never had the drug{clear, select, no {, too little to be told from no difference} other {}}.",
      {
        months,
        differenceMm: fixed(Math.abs(diff_dAL_off)),
        side: diff_dAL_off > 0 ? "more" : "less",
        clear: low < 0 && high > 0 ? "no" : "yes",
      },
    )
    return [fact(words, source)]
  }
  if (dSER_off !== undefined && control_dSER_off !== undefined)
    return [
      fact(
        say(
          "In the {months} months after stopping eyes became {dioptres} D more short-sighted, eyes that never had the drug {control} D.",
          { months, dioptres: fixed(-dSER_off), control: fixed(-control_dSER_off) },
        ),
        source,
      ),
    ]
  return []
}

const FOUND_FOR_SPECTACLES = msg(
  "A review of studies of stopping found that what follows differs from study to study; what returns fades with time.",
)
/** As a review of what follows the end of optical treatments put it, kind by kind. */
const REVIEWED: Readonly<Partial<Record<TreatmentKind, string>>> = {
  orthokeratology: msg(
    "A review of studies of stopping found a strong return of growth; what returns fades with time.",
  ),
  "multifocal-lens": msg(
    "A review of studies of stopping found a weak return of growth; what returns fades with time.",
  ),
  "dual-focus-lens": msg(
    "A review of studies of stopping found a weak return of growth for soft lenses of this sort; what returns fades with time.",
  ),
  "defocus-spectacles": FOUND_FOR_SPECTACLES,
  "lenslet-spectacles": FOUND_FOR_SPECTACLES,
}

function ofOptics(kind: TreatmentKind, { rebound }: ConsentEvidence): Facts {
  const review = rebound.find(({ source }) => source === "jcm_optical_cessation2024")
  const measured = rebound.filter(
    ({ extra_dAL_per_year }) => kind === "multifocal-lens" && extra_dAL_per_year !== undefined,
  )
  const reviewed = REVIEWED[kind]
  return allFacts([
    ...measured.map(({ extra_dAL_per_year = 0, extra_dAL_ci95: [low = 0, high = 0] = [], source }) =>
      fact(
        say("In the year after stopping eyes grew {extra} mm more than expected ({low} to {high} mm).", {
          extra: fixed(extra_dAL_per_year),
          low: fixed(low),
          high: fixed(high),
        }),
        `treatments/${source}`,
      ),
    ),
    ...(review && reviewed ? [fact(say(reviewed), `treatments/${review.source}`)] : []),
  ])
}
