import { assess } from "../engine/assess.js"
import type { Duty, PracticeSettings } from "../engine/assessment.js"
import type { CalendarDate, Course } from "../engine/course.js"
import type { PracticeRules } from "../engine/practice-rules.js"
import { protocolFor } from "../engine/protocol/choose-protocol.js"
import { duties, nextDuty } from "../engine/protocol/duties.js"
import { treatmentName } from "../engine/treatment-name.js"
import { evidence } from "../evidence/index.js"
import type { ListedChild } from "../record/index.js"
import type { ChildSummary } from "./contract/child.js"

/** What the list of children says of a child. */
function childSummary({
  course,
  today,
  settings,
  rules,
}: {
  readonly course: Course
  readonly today: CalendarDate
  readonly settings: PracticeSettings
  readonly rules: PracticeRules
}): ChildSummary {
  const protocol = protocolFor({ course, today, rules })
  const { ageYears, growth, finding } = assess({ course, asOf: today, evidence, settings, protocol })
  const inUse = (course.treatments ?? []).filter(({ from, to }) => from <= today && (!to || to > today))
  return {
    ageYears,
    growth: { state: growth.state, mmPerYear: growth.mmPerYear },
    finding: { state: finding.state },
    nextDuty: dutyInShort(duties({ course, protocol, today })),
    treatment: inUse.length === 0 ? null : inUse.map(treatmentName).join(", "),
  }
}

function dutyInShort(owed: readonly Duty[]): ChildSummary["nextDuty"] {
  const next = nextDuty(owed)
  if (next?.state !== "overdue" && next?.state !== "open" && next?.state !== "upcoming") return null
  return { step: next.step, due: next.due, state: next.state }
}

/** Summaries kept until the child's entries, the practice's rules or the day change. */
export function childSummaries(settings: PracticeSettings) {
  const kept = new Map<string, { readonly key: string; readonly summary: ChildSummary }>()
  let under: PracticeRules | null = null
  const keyOf = ({ lastHash }: ListedChild, today: CalendarDate) => `${lastHash} ${today}`
  return {
    /** Those of the children whose course is needed before they can be summed up. */
    missing(
      children: readonly ListedChild[],
      { today, rules }: { readonly today: CalendarDate; readonly rules: PracticeRules },
    ): readonly string[] {
      if (rules !== under) kept.clear()
      under = rules
      return children.filter((child) => kept.get(child.id)?.key !== keyOf(child, today)).map(({ id }) => id)
    },

    of(
      child: ListedChild,
      {
        today,
        rules,
        course,
      }: {
        readonly today: CalendarDate
        readonly rules: PracticeRules
        readonly course: Course | undefined
      },
    ): ChildSummary {
      const key = keyOf(child, today)
      const found = kept.get(child.id)
      if (found?.key === key) return found.summary
      if (!course) throw new RangeError(`no course given for ${child.id}`)
      const summary = childSummary({ course, today, settings, rules })
      kept.set(child.id, { key, summary })
      return summary
    },
  }
}
