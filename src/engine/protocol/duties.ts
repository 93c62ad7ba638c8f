import type { Duty, DutyState } from "../assessment.js"
import { bottleDuties } from "./bottle-duties.js"
import { consentDuties } from "./consent-duties.js"
import { type Decision, decisions } from "./decisions.js"
import { dutyFrom, sourceOf } from "./duty-source.js"
import { type Examination, examinations } from "./examinations.js"
import { notInForce, type Situation, type SituationInput, situationOn } from "./situation.js"
import { isAwayOn } from "./time-away.js"

/** Kinds of duty, in the order in which they are named when due on the same day: what makes treatment safe first. */
const KINDS = ["consent", "bottle", "examination", "decision"]

/**
 * Everything owed to a child in the current course as of a day, in order of the due date, what is done included.
 * Visits, consents, supplies and decisions dated later than `today` are not known yet; planned treatments are.
 * After a discharge nothing lies ahead until a visit, a treatment or a decision opens the programme again.
 *
 * @example
 * duties({ course, protocol: standardProtocol, today: "2025-07-01" })
 */
export function duties(input: SituationInput): readonly Duty[] {
  const situation = situationOn(input)
  return [
    ...consentDuties(situation).flatMap((duty) => whileAway(duty, situation)),
    ...(isAwayOn(situation.away, situation.today) ? [] : bottleDuties(situation)),
    ...examinations(situation).map((examination) => examinationDuty(examination, situation)),
    ...decisions(situation).map(decisionDuty),
  ].toSorted(byDueDate)
}

/**
 * What comes first: the longest overdue, else what has been open longest, else the next that is coming. Null when nothing
 * is owed.
 */
export function nextDuty(all: readonly Duty[]): Duty | null {
  const inOrder = all.toSorted(byDueDate)
  const first = (wanted: DutyState) => inOrder.find(({ state }) => state === wanted)
  return first("overdue") ?? first("open") ?? first("upcoming") ?? null
}

/** After a discharge no consent is waited for, but one that had been missing stays on record. */
function whileAway(duty: Duty, { away, today }: Situation): readonly Duty[] {
  const discharged = away.findLast(({ from, to }) => from <= today && (to === null || today < to))?.from
  if (discharged === undefined || duty.state === "done" || duty.due > discharged) return [duty]
  return duty.state === "overdue" || duty.state === "missed"
    ? [dutyFrom(sourceOf(duty), { ...duty, state: "missed" })]
    : []
}

function examinationDuty(examination: Examination, situation: Situation): Duty {
  const { title, opens, due, closes, state, unmeasured, step, isAfterChange } = examination
  const canBeDone = state === "open" || state === "overdue"
  const lacking = canBeDone ? notInForce(situation, step.inForce) : []
  return dutyFrom(
    { step, isAfterChange, unmeasured, notInForce: lacking },
    {
      kind: "examination",
      step: title,
      opens,
      due,
      closes,
      state,
      needs: [...unmeasured.map(({ name }) => name), ...lacking],
    },
  )
}

function decisionDuty({ title, opens, due, closes, state, needs, step, isAfterChange }: Decision): Duty {
  return dutyFrom(
    { step, isAfterChange },
    { kind: "decision", step: title, opens, due, closes, state, needs },
  )
}

function byDueDate(a: Duty, b: Duty): number {
  if (a.due !== b.due) return a.due < b.due ? -1 : 1
  return KINDS.indexOf(a.kind) - KINDS.indexOf(b.kind)
}
