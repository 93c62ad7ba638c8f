import { assess } from "../../engine/assess.js"
import type { Assessment } from "../../engine/assessment.js"
import { dayNumberOrNull } from "../../engine/calendar.js"
import type { EyeExamination, Visit } from "../../engine/course.js"
import { EYES } from "../../engine/course.js"
import { parsePrescription } from "../../engine/optics/parse-prescription.js"
import { say } from "../../engine/say.js"
import { treatmentName } from "../../engine/treatment-name.js"
import { evidence } from "../../evidence/index.js"
import { assessedAsIfTreated, POSSIBLE_TREATMENTS, USUAL_TREATMENT } from "../child/possible-treatment.js"
import { monthAndYear, percent } from "../format.js"
import { type CourseReading, withVisit } from "../reading.js"
import { prescriptionFault } from "../visit/examination.js"
import { findingInWords } from "../words.js"

/** One pair of old glasses as typed. */
export interface GlassesRow {
  readonly date: string
  readonly right: string
  readonly left: string
  readonly from: string
}

export const EMPTY_ROW: GlassesRow = { date: "", right: "", left: "", from: "" }

export const isEmptyRow = (row: GlassesRow): boolean =>
  [row.date, row.right, row.left].every((text) => text.trim() === "")

export interface GlassesFault {
  readonly row: number
  readonly field: "date" | "right" | "left"
  readonly message: string
}

/** The filled rows as visits with nothing but refractions, as the record keeps them; and what cannot be read. */
export function readGlasses(rows: readonly GlassesRow[]): {
  readonly visits: readonly Visit[]
  readonly faults: readonly GlassesFault[]
} {
  const faults: GlassesFault[] = []
  const visits = rows.flatMap((row, index): Visit[] => {
    if (isEmptyRow(row)) return []
    const before = faults.length
    if (dayNumberOrNull(row.date) === null) {
      faults.push({ row: index, field: "date", message: say("the day of the prescription is needed") })
    }
    const eyes: Partial<Record<"right" | "left", EyeExamination>> = {}
    for (const eye of EYES) {
      if (row[eye].trim() === "") continue
      const parsed = parsePrescription(row[eye], "refraction")
      if ("problems" in parsed) {
        faults.push({
          row: index,
          field: eye,
          message: prescriptionFault(parsed.problems),
        })
        continue
      }
      const { sphere, cylinder, axis } = parsed.refraction
      // Glasses are what somebody settled on with the child: a subjective refraction, without cycloplegia unless known.
      eyes[eye] = {
        refraction: { sphere, ...(cylinder === 0 ? {} : { cylinder, axis }), method: "subjective" },
      }
    }
    if (row.right.trim() === "" && row.left.trim() === "") {
      faults.push({ row: index, field: "right", message: say("one eye's prescription is needed at least") })
    }
    if (faults.length > before) return []
    return [{ date: row.date, ...eyes, ...(row.from.trim() ? { from: row.from.trim() } : {}) }]
  })
  return { visits, faults }
}

/**
 * What earlier glasses add to the chance of an answer about the treatment: chances with and without them, worked out
 * anew. Before any treatment, for one that would begin today.
 */
export function glassesEffect(reading: CourseReading, glasses: readonly Visit[]): string {
  if (glasses.length === 0)
    return say("Enter a date and a prescription to see what it adds to the chance of an answer.")
  const course = glasses.reduce(withVisit, reading.course)
  const first = POSSIBLE_TREATMENTS[USUAL_TREATMENT]
  if (reading.assessment.finding.state === "no-treatment" && first) {
    const before = assessedAsIfTreated(reading.course, first, reading)
    const after = assessedAsIfTreated(course, first, reading)
    return say("If {treatment} began today: {effect}", {
      treatment: treatmentName(first),
      effect: effectInWords(before, after),
    })
  }
  const input = { asOf: reading.today, evidence, settings: reading.settings }
  return effectInWords(reading.assessment, assess({ ...input, course }))
}

/** @example "with these glasses the chance of an answer by Sep 2027 goes from 31 % to 44 % if it works, ..." */
export function effectInWords(before: Assessment, after: Assessment): string {
  if (after.refused) return `${after.refused}.`
  if (after.finding.state !== before.finding.state) {
    return say("With these glasses the answer changes at once, from “{before}” to “{after}”.", {
      before: findingInWords(before.finding.state),
      after: findingInWords(after.finding.state),
    })
  }
  if (after.finding.state === "slowed" || after.finding.state === "not-slowed") {
    return say("There is an answer already; these glasses do not change it.")
  }
  const [was, is] = [before.chances.at(-1), after.chances.at(-1)]
  if (!was || !is) {
    const [reason] = after.finding.reasons
    return reason
      ? say("There is no chance to tell yet: {reason}.", { reason })
      : say("No review is planned by which an answer could come.")
  }
  const change = (from: string, to: string) => (from === to ? "same" : "other")
  const [works, nowWorks] = [percent(was.ifItWorks), percent(is.ifItWorks)]
  const [fails, nowFails] = [percent(was.ifNot), percent(is.ifNot)]
  return say(
    "With these glasses the chance of an answer by {month} {ifItWorks, select, same {stays at {nowWorks}} other {goes from {works} to {nowWorks}}} if it works, and {ifNot, select, same {stays at {nowFails}} other {goes from {fails} to {nowFails}}} if not.",
    {
      month: monthAndYear(is.review),
      ifItWorks: change(works, nowWorks),
      ifNot: change(fails, nowFails),
      works,
      nowWorks,
      fails,
      nowFails,
    },
  )
}
