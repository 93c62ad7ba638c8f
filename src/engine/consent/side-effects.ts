import type { TreatmentChoice, TreatmentKind } from "../course.js"
import { listed, msg, say, withDecimalSign } from "../say.js"
import { fixed } from "../words.js"
import {
  allFacts,
  type ConsentEvidence,
  type EventRow,
  type Facts,
  fact,
  NO_FACTS,
} from "./consent-evidence.js"

/** Unwanted effects at this strength, each with the group without the drug beside it where the trial had one. */
export function sideEffects(treatment: TreatmentChoice, evidence: ConsentEvidence): Facts {
  const found =
    treatment.kind === "atropine"
      ? allFacts([
          pupilAndFocus(treatment, evidence),
          complaints(treatment, evidence),
          tinted(treatment, evidence),
        ])
      : infections(treatment.kind, evidence)
  return found.lines.length > 0 || treatment.kind !== "atropine"
    ? found
    : fact(say("No figures of side effects at this strength were read."))
}

function pupilAndFocus({ concentrationPercent }: TreatmentChoice, { physiology }: ConsentEvidence): Facts {
  return allFacts(
    physiology
      .filter(({ concentration_percent, trial }) => concentration_percent === concentrationPercent && trial)
      .flatMap((row) =>
        [pupilInWords(row), focusInWords(row, physiology)].flatMap((words) =>
          words === undefined ? [] : [fact(words, `treatments/${row.source}`)],
        ),
      ),
  )
}

type Physiology = ConsentEvidence["physiology"][number]

const since = ({ months }: Physiology) =>
  months === undefined ? { since: "start" } : { since: "months", months }

function pupilInWords(row: Physiology): string | undefined {
  const { photopic_pupil_increase_mm: wider } = row
  if (wider === undefined) return undefined
  return say(
    "{since, select, months {After {months} months} other {On these drops}} the pupil in bright light was {wider} mm wider, on average.",
    { ...since(row), wider: fixed(wider) },
  )
}

function focusInWords(row: Physiology, all: readonly Physiology[]): string | undefined {
  const { accommodation_loss_D: lost, accommodation_loss_D_range: range, trial } = row
  if (lost === undefined) {
    if (range === undefined) return undefined
    const [low, high] = range.map((dioptres) => withDecimalSign(String(dioptres)))
    return say(
      "{since, select, months {After {months} months} other {On these drops}} the power to focus near was {low} to {high} D weaker, on average.",
      { ...since(row), low: low ?? "", high: high ?? "" },
    )
  }
  const without = all.find(
    (other) => other.trial === trial && other.concentration_percent === 0,
  )?.accommodation_loss_D
  return say(
    "{since, select, months {After {months} months} other {On these drops}} the power to focus near was {lost} D weaker{beside, select, yes { ({without} D on drops without the drug)} other {}}, on average.",
    {
      ...since(row),
      lost: fixed(lost),
      ...(without === undefined ? { beside: "no" } : { beside: "yes", without: fixed(without) }),
    },
  )
}

const COMPLAINTS = [
  ["photophobia", msg("bothered by light")],
  ["blurred_near", msg("blurred sight near by")],
  ["blurred_vision", msg("blurred sight")],
  ["reading_problems", msg("trouble with reading")],
  ["headache", msg("headache")],
  ["allergic_conjunctivitis", msg("allergy of lids or eyes")],
  ["eye_irritation", msg("irritated eyes")],
  ["stopped_for_event", msg("stopped because of it")],
] as const satisfies readonly (readonly [keyof EventRow, string])[]

function complaints({ concentrationPercent }: TreatmentChoice, { events }: ConsentEvidence): Facts {
  const arms = events.filter(({ arm }) => arm === `atropine ${concentrationPercent}%`)
  return allFacts(
    arms.flatMap((row) => {
      const control = events.find(
        ({ trial, arm }) => trial === row.trial && (arm === "placebo" || arm === "vehicle"),
      )
      const parts = COMPLAINTS.flatMap(([field, complaint]) => {
        const [share, without] = [row[field], control?.[field]]
        return share == null ? [] : [complaintInWords({ complaint: say(complaint), share, without })]
      })
      if (parts.length === 0) return []
      const beside = control ? "yes" : "no"
      return [fact(groupInWords(row, { complaints: listed(parts), beside }), `treatments/${row.source}`)]
    }),
  )
}

function complaintInWords({
  complaint,
  share,
  without,
}: {
  readonly complaint: string
  readonly share: number
  readonly without: number | null | undefined
}): string {
  const percent = withDecimalSign(String(share))
  if (without == null) return say("{complaint} {percent} %", { complaint, percent })
  const other = withDecimalSign(String(without))
  return say("{complaint} {percent} % ({without} %)", { complaint, percent, without: other })
}

/** Months are a number, "48 (dosing)" or "year 3" in the evidence. */
function groupInWords(
  { months, n }: EventRow,
  told: { readonly complaints: string; readonly beside: "yes" | "no" },
): string {
  const year = typeof months === "string" ? /^year (\d+)/.exec(months)?.[1] : undefined
  const count = year === undefined ? Number.parseInt(String(months ?? ""), 10) : Number.NaN
  if (n === undefined) {
    if (Number.isNaN(count))
      return say(
        "In a trial{beside, select, yes {, in brackets on drops without the drug} other {}}: {complaints}.",
        told,
      )
    return say(
      "In a trial over {months} months{beside, select, yes {, in brackets on drops without the drug} other {}}: {complaints}.",
      { ...told, months: count },
    )
  }
  if (year !== undefined)
    return say(
      "In year {year} of a trial with {n} children on this strength{beside, select, yes {, in brackets on drops without the drug} other {}}: {complaints}.",
      { ...told, year, n },
    )
  if (Number.isNaN(count))
    return say(
      "In a group of {n} children on this strength{beside, select, yes {, in brackets on drops without the drug} other {}}: {complaints}.",
      { ...told, n },
    )
  return say(
    "In a trial over {months} months with {n} children on this strength{beside, select, yes {, in brackets on drops without the drug} other {}}: {complaints}.",
    { ...told, months: count, n },
  )
}

function tinted({ concentrationPercent }: TreatmentChoice, { events }: ConsentEvidence): Facts {
  const row = events.find(({ improved_with_photochromic }) => improved_with_photochromic !== undefined)
  if (row === undefined || ![0.05, 0.1].includes(concentrationPercent ?? 0)) return NO_FACTS
  const { n, photophobia, improved_with_photochromic: helped } = row
  if (n === undefined || photophobia === undefined || helped === undefined) return NO_FACTS
  return fact(
    say(
      "In a group of {n} children on {low} % or {high} %, {bothered} % were bothered by light; glasses that darken in the sun helped {helped} %.",
      { n, low: withDecimalSign("0.05"), high: withDecimalSign("0.1"), bothered: photophobia, helped },
    ),
    `treatments/${row.source}`,
  )
}

const ON_THE_EYE: readonly TreatmentKind[] = ["dual-focus-lens", "multifocal-lens", "orthokeratology"]

function infections(kind: TreatmentKind, { lensInfections }: ConsentEvidence): Facts {
  if (!ON_THE_EYE.includes(kind)) return fact(say("No figures of side effects of such glasses were read."))
  const [low = 0, high = 0] = lensInfections.microbial_keratitis_per_10000_patient_years
  return fact(
    say(
      "Contact lenses can lead to an infection of the cornea: in {low} to {high} of 10 000 wearers a year. About {percent} % of those lose some sight by it.",
      { low, high, percent: Math.round(100 * lensInfections.fraction_with_vision_loss) },
    ),
    `clinical/${lensInfections.source_id}`,
  )
}
