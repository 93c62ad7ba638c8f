import type { TreatmentChoice, TreatmentKind } from "../course.js"
import { capitalised, fixed } from "../words.js"
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
    : fact("No figures of side effects at this strength were read.")
}

function pupilAndFocus({ concentrationPercent }: TreatmentChoice, { physiology }: ConsentEvidence): Facts {
  const parts = physiology.flatMap((row) => {
    if (row.concentration_percent !== concentrationPercent || row.trial === undefined) return []
    const range = row.accommodation_loss_D_range
    const placebo = physiology.find((other) => other.trial === row.trial && other.concentration_percent === 0)
    const lost =
      row.accommodation_loss_D !== undefined
        ? `the power to focus near was ${fixed(row.accommodation_loss_D)} D weaker${placebo?.accommodation_loss_D === undefined ? "" : ` (${fixed(placebo.accommodation_loss_D)} D on drops without the drug)`}`
        : range && `the power to focus near was ${range.join(" to ")} D weaker`
    const wider =
      row.photopic_pupil_increase_mm !== undefined &&
      `the pupil in bright light was ${fixed(row.photopic_pupil_increase_mm)} mm wider`
    const words = [wider, lost].filter((part) => typeof part === "string").join(", and ")
    if (words === "") return []
    const when = row.months === undefined ? "On these drops" : `After ${row.months} months`
    return [fact(`${when} ${words}, on average.`, `treatments/${row.source}`)]
  })
  return allFacts(parts)
}

const COMPLAINTS = [
  ["photophobia", "bothered by light"],
  ["blurred_near", "blurred sight near by"],
  ["blurred_vision", "blurred sight"],
  ["reading_problems", "trouble with reading"],
  ["headache", "headache"],
  ["allergic_conjunctivitis", "allergy of lids or eyes"],
  ["eye_irritation", "irritated eyes"],
  ["stopped_for_event", "stopped because of it"],
] as const satisfies readonly (readonly [keyof EventRow, string])[]

function complaints({ concentrationPercent }: TreatmentChoice, { events }: ConsentEvidence): Facts {
  const arms = events.filter(({ arm }) => arm === `atropine ${concentrationPercent}%`)
  return allFacts(
    arms.flatMap((row) => {
      const control = events.find(
        ({ trial, arm }) => trial === row.trial && (arm === "placebo" || arm === "vehicle"),
      )
      const parts = COMPLAINTS.flatMap(([field, words]) => {
        const [share, without] = [row[field], control?.[field]]
        if (share == null) return []
        return [`${words} ${share} %${without == null ? "" : ` (${without} %)`}`]
      })
      if (parts.length === 0) return []
      const beside = control ? ", in brackets on drops without the drug" : ""
      return [fact(`${capitalised(whenOf(row))}${beside}: ${parts.join(", ")}.`, `treatments/${row.source}`)]
    }),
  )
}

/** Months are a number, "48 (dosing)" or "year 3" in the evidence. */
function whenOf({ months, n }: EventRow): string {
  const children = n === undefined ? "" : ` with ${n} children on this strength`
  if (typeof months === "string" && months.startsWith("year")) return `in ${months} of a trial${children}`
  const count = Number.parseInt(String(months ?? ""), 10)
  return Number.isNaN(count)
    ? `in a group of ${n} children on this strength`
    : `in a trial over ${count} months${children}`
}

function tinted({ concentrationPercent }: TreatmentChoice, { events }: ConsentEvidence): Facts {
  const row = events.find(({ improved_with_photochromic }) => improved_with_photochromic !== undefined)
  if (row === undefined || ![0.05, 0.1].includes(concentrationPercent ?? 0)) return NO_FACTS
  return fact(
    `In a group of ${row.n} children on 0.05 % or 0.1 %, ${row.photophobia} % were bothered by light; glasses that darken in the sun helped ${row.improved_with_photochromic} %.`,
    `treatments/${row.source}`,
  )
}

const ON_THE_EYE: readonly TreatmentKind[] = ["dual-focus-lens", "multifocal-lens", "orthokeratology"]

function infections(kind: TreatmentKind, { lensInfections }: ConsentEvidence): Facts {
  if (!ON_THE_EYE.includes(kind)) return fact("No figures of side effects of such glasses were read.")
  const [low, high] = lensInfections.microbial_keratitis_per_10000_patient_years
  return fact(
    `Contact lenses can lead to an infection of the cornea: in ${low} to ${high} of 10 000 wearers a year. About ${Math.round(100 * lensInfections.fraction_with_vision_loss)} % of those lose some sight by it.`,
    `clinical/${lensInfections.source_id}`,
  )
}
