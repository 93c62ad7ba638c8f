import { EYES, type Visit } from "../course.js"
import { say } from "../say.js"
import { EXAMINATION_MEASURES, type ExaminationMeasure, hasExtraMeasure } from "./examination-measures.js"
import { missing, nameIn } from "./measured.js"
import type { Measure, ProtocolStep, Stage } from "./protocol.js"
import { type EvidenceStatus, type Owed, type Question, ROOM, type RoomPlace } from "./question.js"
import { QUESTIONS } from "./questions.js"
import { stepTitle } from "./titles.js"

export interface PlanInput {
  /** Null for an extra visit: then only what is always asked is owed. */
  readonly stage: Stage | null
  /** Whether drops are in use or, at a baseline, planned. */
  readonly onAtropine: boolean
  /** Whether the child is known not to be myopic. */
  readonly isBeforeMyopia?: boolean | undefined
  /** What the practice switched, by duty; a verified duty is on and any other off until it does. */
  readonly switches: Readonly<Record<string, boolean>>
  /** The step of the protocol that this examination is, if any: its measures are owed whatever the duties say. */
  readonly step?: Pick<ProtocolStep, "title" | "measures" | "measuresOnAtropine"> | undefined
  /** Questions answered within the last year: those owed once a year are not asked again. */
  readonly answeredThisYear?: readonly string[] | undefined
}

/** Why something is owed. */
export type PlanReason =
  | { readonly from: "protocol"; readonly step: string }
  | { readonly from: "duty"; readonly duty: string; readonly status: EvidenceStatus }
  /** Same-day signs: asked at every visit, as common practice without a source. */
  | { readonly from: "safety-net" }

export type PlannedItem = {
  readonly place: RoomPlace
  /** In the language in force. */
  readonly name: string
  readonly why: readonly PlanReason[]
} & (
  | { readonly kind: "measure"; readonly measure: ExaminationMeasure }
  | { readonly kind: "question"; readonly question: Question }
)

export interface ExaminationPlan {
  readonly stage: Stage | null
  /** In the order of the room; at one place questions before measures. */
  readonly items: readonly PlannedItem[]
}

/**
 * What an examination owes: the measures of the protocol's step, and every measure and question that a duty of the
 * evidence asks for at this stage and the practice has on. It adds to the protocol and takes nothing from it, and it
 * does not change `duties`, which stays a matter of the protocol alone.
 *
 * @example
 * examinationPlan({ stage: "review", onAtropine: true, switches: {} })
 */
export function examinationPlan(input: PlanInput): ExaminationPlan {
  const { stage, step, onAtropine } = input
  const fromStep: readonly ExaminationMeasure[] =
    stage === null || !step ? [] : [...step.measures, ...(onAtropine ? step.measuresOnAtropine : [])]
  const measures = EXAMINATION_MEASURES.flatMap(({ measure, place, name, owed }): PlannedItem[] => {
    const own: PlanReason[] =
      step && fromStep.includes(measure) ? [{ from: "protocol", step: stepTitle(step) }] : []
    const why = [...own, ...reasons(owed, input)]
    return why.length > 0 ? [{ kind: "measure", measure, place, name: say(name), why }] : []
  })
  const isCycloplegic = measures.some(
    (item) => item.kind === "measure" && item.measure === "cycloplegic-refraction",
  )
  const questions = QUESTIONS.flatMap((question): PlannedItem[] => {
    const net: PlanReason[] = question.always ? [{ from: "safety-net" }] : []
    const why = [...net, ...reasons(question.owed, { ...input, isCycloplegic, question })]
    if (why.length === 0) return []
    return [{ kind: "question", question, place: question.place, name: say(question.name), why }]
  })
  const items = [...questions, ...measures]
    // With cycloplegia is a refraction, too.
    .filter((item) => !(isCycloplegic && item.kind === "measure" && item.measure === "refraction"))
    .toSorted((a, b) => ROOM.indexOf(a.place) - ROOM.indexOf(b.place))
  return { stage, items }
}

/** Whether a duty is in force: a verified one unless switched off, any other only when switched on. */
export const isSwitchedOn = (
  { duty, status }: Pick<Owed, "duty" | "status">,
  switches: Readonly<Record<string, boolean>>,
): boolean => switches[duty] ?? status === "verified"

function reasons(
  owed: readonly Owed[],
  input: PlanInput & { readonly isCycloplegic?: boolean; readonly question?: Question },
): readonly PlanReason[] {
  const { stage, switches, answeredThisYear = [], question } = input
  const found = owed.filter(
    (row) =>
      stage !== null &&
      row.stages.includes(stage) &&
      isSwitchedOn(row, switches) &&
      isMeant(row, input) &&
      !(row.onceAYear && question && answeredThisYear.includes(question.id)),
  )
  const named = new Map(found.map(({ duty, status }) => [duty, status]))
  return [...named].map(([duty, status]) => ({ from: "duty", duty, status }))
}

function isMeant({ only }: Owed, input: PlanInput & { readonly isCycloplegic?: boolean }): boolean {
  if (only === "on-atropine") return input.onAtropine
  if (only === "before-myopia") return input.isBeforeMyopia === true
  if (only === "cycloplegia") return input.isCycloplegic === true
  return true
}

export interface MissingItem {
  readonly kind: "measure" | "question"
  /** Of the measure or the question. */
  readonly id: string
  /** In words, an eye named when only one is missing. */
  readonly name: string
}

/**
 * What a visit lacks of its plan, by name, in the order of the room. Left out on purpose ("not-done") is an answer.
 * `earlier` are visits that belong to the same examination: what they measured is not missing; what was asked then is
 * asked again.
 *
 * @example
 * missingFrom(plan, { date: "2026-11-25" })[0] // => { kind: "question", id: "flashes", name: "flashes" }
 */
export function missingFrom(
  plan: ExaminationPlan,
  visit: Visit,
  earlier: readonly Visit[] = [],
): readonly MissingItem[] {
  const answered = new Set((visit.answers ?? []).map(({ question }) => question))
  return plan.items.flatMap((item): MissingItem[] => {
    if (item.kind === "question") {
      const { id } = item.question
      return answered.has(id) ? [] : [{ kind: "question", id, name: item.name }]
    }
    return unmeasured(item.measure, [...earlier, visit]).map((name) => ({
      kind: "measure",
      id: item.measure,
      name,
    }))
  })
}

function unmeasured(measure: ExaminationMeasure, visits: readonly Visit[]): readonly string[] {
  if (!isExtra(measure)) return missing({ measures: [measure], visits })
  const has = hasExtraMeasure[measure]
  const row = EXAMINATION_MEASURES.find((candidate) => candidate.measure === measure)
  const eyes = EYES.filter((eye) => !visits.some((visit) => visit[eye] && has(visit[eye])))
  return eyes.length === 0 || !row ? [] : [nameIn(say(row.name), eyes)]
}

const isExtra = (measure: ExaminationMeasure): measure is Exclude<ExaminationMeasure, Measure> =>
  measure in hasExtraMeasure
