import { ageYears, yearsBetween } from "../../engine/calendar.js"
import {
  type Course,
  EYES,
  type Eye,
  type EyeExamination,
  type Treatment,
  type Visit,
} from "../../engine/course.js"
import { standardProtocol } from "../../engine/protocol/standard.js"
import { supplyReport } from "../../engine/supply/supply-report.js"
import type { Cell } from "../archive/csv-row.js"
import { instrumentCode, type KnownChild, type StudyChild, studyChild } from "./deidentified.js"

/** What a row of the table is made of: one examined eye at one visit. */
export interface StudyRow {
  readonly study: StudyChild
  readonly course: Course
  readonly visit: Visit
  readonly eye: Eye
  readonly examination: EyeExamination
  /** What this eye was treated with on the day of the visit, before anything was changed at it. */
  readonly treatment: Treatment | undefined
  /** Share of prescribed nights with a drop up to the visit; null where no bottle is recorded. */
  readonly nightsShare: number | null
  readonly instrument: (device: string | undefined) => Cell
}

/** The rows of one child, in order of their days. */
export function studyRows({ id, course }: KnownChild, secret: string): readonly StudyRow[] {
  const study = studyChild({ secret, child: id })
  const instrument = (device: string | undefined) => device && instrumentCode({ secret, device })
  return course.visits.flatMap((visit) => {
    const nightsShare = nightsWithDrop(course, visit)
    return EYES.flatMap((eye) => {
      const examination = visit[eye]
      if (!examination) return []
      const treatment = treatmentOn({ course, visit, eye })
      return [{ study, course, visit, eye, examination, treatment, nightsShare, instrument }]
    })
  })
}

/** A treatment that begins on the day of a visit began after its measurements. */
function treatmentOn({
  course: { treatments = [] },
  visit: { date },
  eye,
}: {
  readonly course: Course
  readonly visit: Visit
  readonly eye: Eye
}): Treatment | undefined {
  return treatments.findLast(
    (treatment) =>
      treatment.kind !== "none" &&
      treatment.from < date &&
      (treatment.to == null || treatment.to >= date) &&
      (treatment.eye === undefined || treatment.eye === eye),
  )
}

function nightsWithDrop(course: Course, { date }: Visit): number | null {
  if ((course.supplies ?? []).length === 0) return null
  return supplyReport({ course, asOf: date, protocol: standardProtocol }).proportionWithDrop
}

export const ageAtVisit = ({ course, visit }: StudyRow): number =>
  Number(ageYears({ born: course.child.born, on: visit.date }).toFixed(2))

export const monthsTreated = ({ treatment, visit }: StudyRow): number | undefined =>
  treatment && Number((yearsBetween({ from: treatment.from, to: visit.date }) * 12).toFixed(1))
