import type { Problem } from "../../engine/problem.js"
import type { Protocol, ProtocolStep } from "../../engine/protocol/protocol.js"
import { protocolProblems } from "../../engine/protocol/protocol-problems.js"
import { say } from "../../engine/say.js"
import { inWords } from "../format.js"

/** Fields of a step that are typed as figures, and so are kept as they were typed. */
export const STEP_FIGURES = [
  "offsetMonths",
  "offsetDays",
  "windowDaysBefore",
  "windowDaysAfter",
  "nightsPerWeek",
] as const
export type StepFigure = (typeof STEP_FIGURES)[number]

export const SPAN_FIGURES = [
  "longestPauseDays",
  "consentLeadDays",
  "bottleLeadDays",
  "bottleDaysAfterOpening",
] as const
export type SpanFigure = (typeof SPAN_FIGURES)[number]

export type StepDraft = Omit<ProtocolStep, StepFigure> & Readonly<Record<StepFigure, string>>

/** A protocol while it is edited. */
export type ProtocolDraft = Omit<Protocol, SpanFigure | "steps"> &
  Readonly<Record<SpanFigure, string>> & { readonly steps: readonly StepDraft[] }

export function draftOf(protocol: Protocol): ProtocolDraft {
  const spans = Object.fromEntries(SPAN_FIGURES.map((name) => [name, typed(protocol[name])]))
  return { ...protocol, ...(spans as Record<SpanFigure, string>), steps: protocol.steps.map(stepDraftOf) }
}

function stepDraftOf(step: ProtocolStep): StepDraft {
  const figures = Object.fromEntries(STEP_FIGURES.map((name) => [name, typed(step[name])]))
  return { ...step, ...(figures as Record<StepFigure, string>) }
}

const typed = (figure: number | undefined): string => (figure === undefined ? "" : String(figure))

/** The protocol as it would be recorded: a figure that is none stays text, so that its fault is found. */
export function protocolOfDraft(draft: ProtocolDraft): unknown {
  const spans = Object.fromEntries(SPAN_FIGURES.map((name) => [name, figureOf(draft[name])]))
  const steps = draft.steps.map((step) => {
    const figures = Object.fromEntries(STEP_FIGURES.map((name) => [name, figureOf(step[name])]))
    return withoutAbsent({ ...step, ...figures })
  })
  return { ...draft, ...spans, steps }
}

const withoutAbsent = (fields: object) =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined))

function figureOf(text: string): number | string | undefined {
  const trimmed = text.trim()
  if (trimmed === "") return undefined
  return /^-?\d+(\.\d+)?$/.test(trimmed) ? Number(trimmed) : trimmed
}

/** What is wrong so far, by the place of the field: "must be a whole number of days from 0 to 366". */
export interface DraftFaults {
  readonly at: (path: string) => string | undefined
  /** How many stand inside a step. */
  readonly inStep: (index: number) => number
  readonly count: number
}

export function draftFaults(draft: ProtocolDraft): DraftFaults {
  const problems: readonly Problem[] = protocolProblems(protocolOfDraft(draft))
  return {
    at: (path) =>
      problems
        .filter((problem) => problem.path === path)
        .map(({ allowed }) => inWords(say("must be {allowed}", { allowed })))
        .join("; ") || undefined,
    inStep: (index) => problems.filter(({ path }) => path.startsWith(`steps[${index}].`)).length,
    count: problems.length,
  }
}

/** A step to begin with, with an id that no other has. */
export function newStep(steps: readonly StepDraft[]): StepDraft {
  const taken = new Set(steps.map(({ id }) => id))
  let number = steps.length + 1
  while (taken.has(`step-${number}`)) number++
  return stepDraftOf({
    id: `step-${number}`,
    title: "",
    kind: "examination",
    anchor: "start",
    offsetMonths: 3,
    windowDaysBefore: 30,
    windowDaysAfter: 30,
    measures: ["axial-length"],
    measuresOnAtropine: [],
    inForce: [],
    restartsOnChange: false,
  })
}

/** A step as it reads when it is made an examination or a decision: what does not belong to it is taken away. */
export function asKind(step: StepDraft, kind: StepDraft["kind"]): StepDraft {
  const { decides: _, ...others } = step
  if (kind === "examination") return { ...others, kind, nightsPerWeek: "" }
  return {
    ...others,
    kind,
    stage: undefined,
    decides: "stop",
    measures: [],
    measuresOnAtropine: [],
    inForce: [],
    restartsOnChange: false,
  }
}

/** An id for a copy that stands beside the others. */
export function ownId(title: string, taken: readonly string[]): string {
  const base = `own-${title
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "")}`
  let id = base
  for (let number = 2; taken.includes(id); number++) id = `${base}-${number}`
  return id
}

/** "3" after "2"; what is no number is counted on from its end. */
export function nextVersion(version: string): string {
  const [, before = version, digits] = /^(.*?)(\d+)$/.exec(version) ?? []
  return digits === undefined ? `${before}-2` : `${before}${Number(digits) + 1}`
}
