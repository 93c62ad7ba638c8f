import { type Choices, choices } from "../../../src/engine/choices/choices.js"
import { choicesTable } from "../../../src/engine/choices/choices-table.js"
import type { CalendarDate, Course, Treatment } from "../../../src/engine/course.js"
import { noRules, type PracticeRules } from "../../../src/engine/practice-rules.js"
import { evidence } from "../../../src/evidence/index.js"
import * as treatmentEvidence from "../../../src/evidence/treatments.js"

export const TODAY = "2026-06-15"

/** A girl of nine with a year of lengths. */
export function girl({
  born = "2017-06-15",
  sphere = -2,
  growthMm = 0.36,
  treatments = [],
  ...rest
}: {
  readonly born?: CalendarDate
  readonly sphere?: number
  readonly growthMm?: number
  readonly treatments?: readonly Treatment[]
} & Partial<Course> = {}): Course {
  const visit = (date: CalendarDate, mm: number) => {
    const eye = (of: number) => ({
      axialLength: { mm: of, method: "optical-biometry" as const, device: "A" },
      refraction: { sphere, cycloplegic: true, method: "autorefraction" as const },
    })
    return { date, right: eye(mm), left: eye(mm - 0.1) }
  }
  return {
    lengthwise: 1,
    child: { born, sex: "female", ancestry: "east-asian" },
    visits: [visit("2025-06-15", 24), visit(TODAY, 24 + growthMm)],
    treatments,
    ...rest,
  }
}

export const drops = (concentrationPercent: number, more: Partial<Treatment> = {}): Treatment => ({
  from: "2025-12-15",
  kind: "atropine",
  concentrationPercent,
  ...more,
})

export const optionsFor = (
  course: Course,
  { rules = noRules, withStrong = false }: { rules?: PracticeRules; withStrong?: boolean } = {},
): Choices => choices({ course, asOf: TODAY, evidence, treatmentEvidence, rules, withStrong })

export const names = ({ options }: Choices): readonly string[] => options.map(({ name }) => name)

/** What one cell of the table says. */
export function cell(told: Choices, rowId: string, optionName: string): string {
  const row = choicesTable(told).find(({ id }) => id === rowId)
  const index = names(told).indexOf(optionName)
  if (!row || index < 0) throw new Error(`no ${rowId} of ${optionName}`)
  return (row.cells[index] ?? []).join("; ")
}
