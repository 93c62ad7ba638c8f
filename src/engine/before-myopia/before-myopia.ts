import type {
  BeforeMyopiaEvidence,
  EmmetropicCurve,
  OnsetAdvice,
  OnsetShare,
  ParentOdds,
} from "../../evidence/types.js"
import { ageYears } from "../calendar.js"
import type { CalendarDate, Course, Eye, EyeExamination, Visit } from "../course.js"
import { EYES } from "../course.js"
import { myopiaOf } from "../growth/myopia.js"
import { sphericalEquivalent } from "../optics/spherical-equivalent.js"
import type { Protocol } from "../protocol/protocol.js"
import { realTreatments } from "../protocol/treatment-course.js"
import { emmetropicLength } from "../reference/emmetropic.js"
import { say } from "../say.js"
import { fixed } from "../words.js"
import { type CutOffAnswer, cutOffsAt } from "./cut-offs.js"

export interface BeforeMyopiaInput {
  readonly course: Course
  readonly asOf: CalendarDate
  readonly evidence: {
    readonly onset: BeforeMyopiaEvidence
    readonly emmetropic: EmmetropicCurve
    /** Myopia from here on, D. */
    readonly myopiaCutOffD: number
  }
  /** The protocol the child follows, for the interval of its reviews. */
  readonly protocol: Protocol
}

export interface BeforeMyopia {
  readonly asOf: CalendarDate
  readonly ageYears: number
  readonly eyes: Readonly<Record<Eye, EmmetropicPlace | null>>
  readonly refraction: OnsetRefraction | { readonly refused: string }
  readonly parents: { readonly myopicParents: 0 | 1 | 2; readonly odds: readonly ParentOdds[] } | null
  readonly review: { readonly months: number; readonly source: string } | null
  readonly advice: readonly OnsetAdvice[]
  readonly keptOff: BeforeMyopiaEvidence["keptOff"]
  /** Why no course of the eye under a treatment is drawn. */
  readonly treatment: { readonly refused: string }
}

/** A length beside the mean of emmetropic eyes of that age. */
export type EmmetropicPlace = { readonly date: CalendarDate; readonly mm: number } & (
  | {
      readonly emmetropicMm: number
      /** Positive for a longer eye. */
      readonly differenceMm: number
      /** How emmetropic eyes of that age differ among themselves; null where it is not known. */
      readonly betweenEyesSdMm: number | null
    }
  | { readonly refused: string }
)

export interface OnsetRefraction {
  readonly date: CalendarDate
  readonly eyes: Readonly<Partial<Record<Eye, number>>>
  /** Spherical equivalent of the more myopic eye, D: what the shares are read for. */
  readonly moreMyopicD: number
  readonly cutOffs: readonly CutOffAnswer[]
  /** What became of children of that age and refraction; null where none were followed. */
  readonly share: (OnsetShare & { readonly of: BeforeMyopiaEvidence["shares"] }) | null
}

const noTreatment = (): string =>
  say(
    "no trial of a treatment was read for children who are not myopic, so no course of the eye under a treatment is drawn for this child",
  )

/**
 * What can be said of a child who is not myopic and not treated: length beside the emmetropic curve, refraction beside the
 * cut-offs that were read, parents, reviews, and advice with its evidence. A child who is myopic, treated or of unknown
 * refraction is refused by name. Lengths in mm, refractions in dioptres of spherical equivalent, ages in years.
 *
 * @example
 * beforeMyopia({ course, asOf: "2026-11-25", evidence, protocol: watchfulProtocol })
 */
export function beforeMyopia(input: BeforeMyopiaInput): BeforeMyopia | { readonly refused: string } {
  const { course, asOf, evidence, protocol } = input
  const refused = unfit(input)
  if (refused !== null) return { refused }
  const { myopicParents } = course.child
  return {
    asOf,
    ageYears: ageYears({ born: course.child.born, on: asOf }),
    eyes: { right: placeOf(input, "right"), left: placeOf(input, "left") },
    refraction: refractionOf(input),
    parents:
      myopicParents === undefined
        ? null
        : {
            myopicParents,
            odds: evidence.onset.parents.filter((row) => row.myopicParents === myopicParents),
          },
    review: reviewOf(protocol),
    advice: evidence.onset.advice,
    keptOff: evidence.onset.keptOff,
    treatment: { refused: noTreatment() },
  }
}

function unfit({ course, asOf, evidence }: BeforeMyopiaInput): string | null {
  const { myopiaCutOffD } = evidence
  if (realTreatments(course).some(({ from }) => from <= asOf))
    return say("the child is or was treated: what is said before myopia does not hold any more")
  const myopia = myopiaOf(course, asOf, myopiaCutOffD)
  if (myopia === "unknown")
    return say("no refraction has been measured: whether the child is myopic is not known")
  return myopia === "myopic"
    ? say("the child is myopic: an eye is at {cutOff} D or beyond", { cutOff: fixed(myopiaCutOffD) })
    : null
}

/** The last of something by a day, with its visit. */
function last<Value>(
  { course, asOf }: BeforeMyopiaInput,
  pick: (visit: Visit) => Value | undefined,
): { readonly date: CalendarDate; readonly value: Value } | null {
  const visits = course.visits
    .filter(({ date }) => date <= asOf)
    .toSorted((a, b) => (a.date < b.date ? 1 : -1))
  for (const visit of visits) {
    const value = pick(visit)
    if (value !== undefined) return { date: visit.date, value }
  }
  return null
}

function placeOf(input: BeforeMyopiaInput, eye: Eye): EmmetropicPlace | null {
  const found = last(input, (visit) => visit[eye]?.axialLength?.mm)
  if (!found) return null
  const { emmetropic, onset } = input.evidence
  const age = ageYears({ born: input.course.child.born, on: found.date })
  const mean = emmetropicLength({ ageYears: age, curve: emmetropic })
  const measured = { date: found.date, mm: found.value }
  if ("refused" in mean) return { ...measured, refused: mean.refused }
  return {
    ...measured,
    emmetropicMm: mean.mm,
    differenceMm: found.value - mean.mm,
    betweenEyesSdMm: onset.betweenEyesSd.findLast((row) => row.ageYears <= age)?.mm ?? null,
  }
}

function refractionOf(input: BeforeMyopiaInput): BeforeMyopia["refraction"] {
  const isCycloplegic = (eye: EyeExamination | undefined) => eye?.refraction?.cycloplegic === true
  const found = last(input, (visit) => (EYES.some((eye) => isCycloplegic(visit[eye])) ? visit : undefined))
  if (!found) {
    return {
      refused: say("the cut-offs are of refraction with cycloplegia, and none has been measured with it"),
    }
  }
  const { date, value: visit } = found
  const measured = EYES.flatMap((eye) => {
    const refraction = isCycloplegic(visit[eye]) ? visit[eye]?.refraction : undefined
    return refraction ? [{ eye, sphere: refraction.sphere, equivalent: sphericalEquivalent(refraction) }] : []
  })
  const moreMyopicD = Math.min(...measured.map(({ equivalent }) => equivalent))
  const { onset } = input.evidence
  const age = Math.floor(ageYears({ born: input.course.child.born, on: date }))
  const share = onset.shares.bands.find(
    ({ fromD, belowD }) =>
      (fromD === null || moreMyopicD >= fromD) && (belowD === null || moreMyopicD < belowD),
  )
  return {
    date,
    eyes: Object.fromEntries(measured.map(({ eye, equivalent }) => [eye, equivalent])),
    moreMyopicD,
    cutOffs: cutOffsAt({
      cutOffs: onset.cutOffs,
      age,
      sphereD: Math.min(...measured.map(({ sphere }) => sphere)),
      equivalentD: moreMyopicD,
    }),
    share: share && age === onset.shares.age ? { ...share, of: onset.shares } : null,
  }
}

/** How often the child is seen while nothing is treated. */
function reviewOf({ steps, source }: Protocol): BeforeMyopia["review"] {
  const step = steps.find(
    ({ kind, anchor }) => kind === "examination" && anchor === "last-visit-off-treatment",
  )
  return step ? { months: step.offsetMonths, source } : null
}
