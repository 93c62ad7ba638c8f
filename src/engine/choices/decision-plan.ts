import type { CalendarDate, DecisionKind, Treatment, TreatmentChoice } from "../course.js"
import { keyOf } from "../growth/prescribed.js"
import type { Problem } from "../problem.js"
import { isInUse } from "../protocol/treatment-course.js"
import { say } from "../say.js"
import { isPluralName, treatmentName } from "../treatment-name.js"
import { changesNothing, endsTreatment, namesTreatment } from "./decision-words.js"

/** A treatment entry as it stands in a record. */
export interface RecordedTreatment {
  readonly id: string
  readonly treatment: Treatment
}

export interface DecisionRequest {
  readonly kind: DecisionKind
  /** What is to be given from then on; several only for options studied together. */
  readonly treatments: readonly TreatmentChoice[]
  /** First day on which it holds. */
  readonly from: CalendarDate
  /** Which of the treatments in use it ends, where several are. */
  readonly ends: readonly string[]
  /** For a taper. */
  readonly nightsPerWeek?: number | undefined
}

/** What a decision makes of the treatments: which end on its day and which begin on it. */
export interface DecisionPlan {
  readonly ends: readonly RecordedTreatment[]
  readonly starts: readonly Treatment[]
}

/**
 * What a decision implies for the treatments, or everything that speaks against it, each at its field.
 *
 * - start, restart: nothing may be in use; add: beside what is in use
 * - change-strength: other drops in place of the drops; switch: another treatment in place of one in use
 * - taper: the same drops on fewer nights of the week; stop: an end
 * - discharge: everything in use ends; continue, refer, decline: nothing changes
 *
 * @example
 * decisionPlan({ kind: "stop", treatments: [], from: "2026-11-25", ends: [] }, recorded)
 */
export function decisionPlan(
  request: DecisionRequest,
  recorded: readonly RecordedTreatment[],
): DecisionPlan | { readonly problems: readonly Problem[] } {
  const { kind, treatments, from } = request
  if (changesNothing(kind)) return { ends: [], starts: [] }
  const running = recorded.filter(({ treatment }) => treatment.kind !== "none" && isInUse(treatment, from))
  if (kind === "discharge") return discharged(recorded, running, from)
  const ended = endsTreatment(kind) ? endedOf(request, running) : { ends: [] }
  const problems = [
    ...("problems" in ended ? ended.problems : []),
    ...(namesTreatment(kind) ? startProblems(request, { running, recorded }) : []),
    ...(kind === "taper" ? taperProblems(request) : []),
  ]
  if (problems.length > 0 || "problems" in ended) return { problems }
  const { ends } = ended
  // What takes the place of a treatment of one eye is given in that eye.
  const eye = ends.length === 1 ? ends[0]?.treatment.eye : undefined
  const inEye = eye === undefined ? {} : { eye }
  if (kind === "taper") {
    return {
      ends,
      starts: ends.map(({ treatment }) => ({ ...treatment, from, nightsPerWeek: request.nightsPerWeek })),
    }
  }
  const starts = namesTreatment(kind) ? treatments.map((treatment) => ({ ...treatment, from, ...inEye })) : []
  return { ends, starts }
}

function discharged(
  recorded: readonly RecordedTreatment[],
  running: readonly RecordedTreatment[],
  from: CalendarDate,
): DecisionPlan | { readonly problems: readonly Problem[] } {
  const ahead = recorded.filter(({ treatment }) => treatment.kind !== "none" && treatment.from > from)
  if (ahead.length === 0) return { ends: running, starts: [] }
  const names = ahead
    .map(({ treatment }) =>
      say("{treatment} from {date}", { treatment: treatmentName(treatment), date: treatment.from }),
    )
    .join(", ")
  return {
    problems: [
      fault(
        "kind",
        "discharge",
        say("a decision that keeps what is planned, or {treatments} withdrawn first", { treatments: names }),
      ),
    ],
  }
}

function endedOf(
  { kind, ends }: DecisionRequest,
  running: readonly RecordedTreatment[],
): Pick<DecisionPlan, "ends"> | { readonly problems: readonly Problem[] } {
  const isDrops = kind === "taper" || kind === "change-strength"
  const fitting = running.filter(({ treatment }) => !isDrops || treatment.kind === "atropine")
  const what = isDrops ? "drops" : "treatment"
  if (fitting.length === 0) {
    return {
      problems: [
        fault(
          "kind",
          kind,
          say(
            "a decision that fits: {what, select, drops {drops in use} other {a treatment in use}} would be needed",
            { what },
          ),
        ),
      ],
    }
  }
  const unknown = ends.filter((id) => !fitting.some((one) => one.id === id))
  if (unknown.length > 0)
    return {
      problems: [
        fault(
          "ends",
          unknown.join(", "),
          say("{what, select, drops {drops in use} other {a treatment in use}}", { what }),
        ),
      ],
    }
  const named = fitting.filter(({ id }) => ends.includes(id))
  if (named.length > 0) return { ends: named }
  if (fitting.length === 1) return { ends: fitting }
  const names = fitting.map(({ treatment }) => treatmentName(treatment)).join(", ")
  return {
    problems: [
      fault("ends", null, say("at least one of what is in use: {treatments}", { treatments: names })),
    ],
  }
}

function startProblems(
  { kind, treatments }: DecisionRequest,
  {
    running,
    recorded,
  }: { readonly running: readonly RecordedTreatment[]; readonly recorded: readonly RecordedTreatment[] },
): readonly Problem[] {
  const used = running.map(({ treatment }) => treatmentName(treatment)).join(", ")
  const isFresh = kind === "start" || kind === "restart"
  const given = recorded.filter(({ treatment }) => treatment.kind !== "none")
  return [
    ...(treatments.length === 0 ? [fault("treatments", null, say("what is to be given from then on"))] : []),
    ...(isFresh && running.length > 0
      ? [
          fault(
            "kind",
            kind,
            say(
              "add, switch or change of strength, since {treatments} {many, select, yes {are} other {is}} in use",
              { treatments: used, many: running.length > 1 || isPluralName(used) ? "yes" : "no" },
            ),
          ),
        ]
      : []),
    ...(kind === "restart" && running.length === 0 && given.length === 0
      ? [fault("kind", kind, say("start: nothing was given before"))]
      : []),
    ...(kind === "add" && running.length === 0
      ? [fault("kind", kind, say("start: nothing is in use that something could be added to"))]
      : []),
    ...(kind === "change-strength" && treatments.some((one) => one.kind !== "atropine")
      ? [
          fault(
            "treatments",
            treatments.map(treatmentName).join(", "),
            say("drops; anything else is a switch"),
          ),
        ]
      : []),
    ...treatments.flatMap((one, index) =>
      running.some(({ treatment }) => keyOf([treatment]) === keyOf([one]))
        ? [
            fault(
              `treatments[${index}]`,
              treatmentName(one),
              say("another than the {treatment} in use", { treatment: treatmentName(one) }),
            ),
          ]
        : [],
    ),
  ]
}

function taperProblems({ nightsPerWeek }: DecisionRequest): readonly Problem[] {
  const isFewer =
    nightsPerWeek !== undefined && Number.isInteger(nightsPerWeek) && nightsPerWeek >= 1 && nightsPerWeek <= 6
  return isFewer
    ? []
    : [fault("nightsPerWeek", nightsPerWeek ?? null, say("a whole number from 1 to 6 nights of the week"))]
}

function fault(path: string, value: string | number | null, allowed: string): Problem {
  const message =
    value === null
      ? say("{path} is missing: it must be {allowed}.", { path, allowed })
      : say("{path} must be {allowed}, not {value}.", { path, allowed, value })
  return { path, value, allowed, message }
}
