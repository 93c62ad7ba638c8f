import { assess } from "../engine/assess.js"
import type { Duty, PracticeSettings } from "../engine/assessment.js"
import type { CalendarDate, Course } from "../engine/course.js"
import type { PracticeRules } from "../engine/practice-rules.js"
import { protocolFor } from "../engine/protocol/choose-protocol.js"
import { duties, nextDuty } from "../engine/protocol/duties.js"
import { type Owed, owed } from "../engine/today/owed.js"
import { treatmentName } from "../engine/treatment-name.js"
import { evidence } from "../evidence/index.js"
import type { ListedChild, PracticeRecord } from "../record/index.js"
import type { ChildSummary } from "./contract/child.js"

/** What the engine says of a child on a day: a line for the list of children, and what is owed. */
export interface ChildReading {
  readonly summary: ChildSummary
  readonly owed: readonly Owed[]
  /** Duties that are still to be done, now or later: what families are reminded of. */
  readonly ahead: readonly Duty[]
}

/** The day and the rules that a reading holds for. */
export interface ReadingDay {
  readonly today: CalendarDate
  readonly rules: PracticeRules
}

/** Reads a course once for everything that is said of it in lists. */
export function childReading(
  course: Course,
  { today, rules, settings }: ReadingDay & { readonly settings: PracticeSettings },
): ChildReading {
  const protocol = protocolFor({ course, today, rules })
  const assessment = assess({ course, asOf: today, evidence, settings, protocol })
  const dutiesNow = duties({
    course,
    protocol,
    today,
    wordings: rules.consentWordings,
    pharmacies: rules.pharmacies,
  })
  const inUse = (course.treatments ?? []).filter(({ from, to }) => from <= today && (!to || to > today))
  return {
    summary: {
      ageYears: assessment.ageYears,
      growth: { state: assessment.growth.state, mmPerYear: assessment.growth.mmPerYear },
      finding: { state: assessment.finding.state },
      nextDuty: dutyInShort(dutiesNow),
      treatment: inUse.length === 0 ? null : inUse.map(treatmentName).join(", "),
    },
    owed: owed({ course, today, protocol, assessment, duties: dutiesNow, rules }),
    ahead: dutiesNow.filter(({ state }) => state === "upcoming" || state === "open" || state === "overdue"),
  }
}

function dutyInShort(all: readonly Duty[]): ChildSummary["nextDuty"] {
  const next = nextDuty(all)
  if (next?.state !== "overdue" && next?.state !== "open" && next?.state !== "upcoming") return null
  return { step: next.step, due: next.due, state: next.state }
}

export type ChildReadings = ReturnType<typeof childReadings>

/** Readings kept until the child's entries, the practice's rules or the day change. */
export function childReadings({
  record,
  settings,
}: {
  readonly record: PracticeRecord
  readonly settings: PracticeSettings
}) {
  const kept = new Map<string, { readonly key: string; readonly reading: ChildReading }>()
  let under: PracticeRules | null = null
  const keyOf = ({ lastHash }: ListedChild, today: CalendarDate) => `${lastHash} ${today}`

  /** What is known already; undefined for a child that has to be read first. */
  const known = (child: ListedChild, { today, rules }: ReadingDay): ChildReading | undefined => {
    if (rules !== under) kept.clear()
    under = rules
    const found = kept.get(child.id)
    return found?.key === keyOf(child, today) ? found.reading : undefined
  }

  const read = async (children: readonly ListedChild[], day: ReadingDay): Promise<void> => {
    const missing = children.filter((child) => known(child, day) === undefined)
    if (missing.length === 0) return
    const courses = await record.coursesOf(missing.map(({ id }) => id))
    for (const child of missing) {
      const course = courses.get(child.id)
      if (!course) continue
      const reading = childReading(course, { ...day, settings })
      kept.set(child.id, { key: keyOf(child, day.today), reading })
    }
  }

  return { known, read }
}
