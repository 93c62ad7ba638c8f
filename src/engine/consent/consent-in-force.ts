import type { CalendarDate, Consent, Course, TreatmentChoice } from "../course.js"
import type { ConsentWording } from "../practice-rules.js"
import { say, withDecimalSign } from "../say.js"
import { treatmentName } from "../treatment-name.js"
import { laterMaterial } from "./wording-versions.js"

export type ConsentState =
  | { readonly kind: "in-force"; readonly consent: Consent }
  | {
      /** `none`: nothing of this treatment. Otherwise there is a consent, and `why` says what it lacks. */
      readonly kind: "none" | "withdrawn" | "another-strength" | "wording-renewed"
      readonly why: string
      /** Since when it is lacking, where that is a day. */
      readonly since?: CalendarDate
    }

export interface ConsentQuestion {
  readonly course: Pick<Course, "consents">
  readonly treatment: TreatmentChoice
  readonly on: CalendarDate
  /** The practice's wordings, every version. Without them no consent is renewed because of its wording. */
  readonly wordings?: readonly ConsentWording[] | undefined
}

/**
 * Whether a consent covers a treatment on a day.
 *
 * A consent covers its kind of treatment and, for drops, exactly the strength it names: another strength, lower or
 * higher, is consented to anew, and a consent that names no strength covers none. A treatment without a strength is
 * covered by any consent of its kind. It holds from its date until the day it was withdrawn; a withdrawal ends every
 * consent to the same treatment given before that day. It ends too when a later version of its wording that is marked
 * material comes into force. A version is its id and its name: a consent to its Spanish text is a consent to that
 * version, and a material version asks everyone again who read an earlier one, in whatever language either is written.
 * A consent without a wording is never asked for again for the wording's sake.
 * Nobody consents to having no treatment: the kind `none` is not asked about.
 *
 * @example
 * consentInForce({ course, treatment: { kind: "atropine", concentrationPercent: 0.05 }, on: "2025-02-01" })
 */
export function consentInForce({ course, treatment, on, wordings = [] }: ConsentQuestion): ConsentState {
  const known = (course.consents ?? []).filter(
    ({ date, covers }) => date <= on && covers.kind === treatment.kind,
  )
  const covering = known.filter((consent) => coversStrength(consent, treatment))
  const name = treatmentName(treatment)
  if (covering.length === 0) return strengthLacking({ known, treatment, on, name })

  const withdrawn = latest(
    covering.flatMap(({ until }) => (until !== undefined && until <= on ? [until] : [])),
  )
  const standing = covering
    .filter(({ date, until }) => !(until !== undefined && until <= on) && !(withdrawn && date < withdrawn))
    .toSorted((a, b) => (a.date < b.date ? 1 : a.date > b.date ? -1 : 0))
  if (standing.length === 0)
    return {
      kind: "withdrawn",
      since: withdrawn!,
      why: say("consent to {name} was withdrawn on {withdrawn}", { name, withdrawn: withdrawn! }),
    }

  const renewals = standing.map(
    ({ date, wording }) => wording && laterMaterial({ read: wording, date, on, wordings }),
  )
  const sound = renewals.indexOf(undefined)
  if (sound >= 0) return { kind: "in-force", consent: standing[sound]! }
  const { version, from } = renewals[0]!
  const why = say(
    "consent to {name} of {date} was given on an earlier wording; version {version} holds since {from}",
    { name, date: standing[0]!.date, version, from },
  )
  return { kind: "wording-renewed", since: from, why }
}

export const coversStrength = ({ covers }: Consent, { concentrationPercent }: TreatmentChoice): boolean =>
  concentrationPercent === undefined || covers.concentrationPercent === concentrationPercent

function strengthLacking({
  known,
  treatment,
  on,
  name,
}: {
  readonly known: readonly Consent[]
  readonly treatment: TreatmentChoice
  readonly on: CalendarDate
  readonly name: string
}): ConsentState {
  const others = known.filter(({ until }) => !(until !== undefined && until <= on))
  if (others.length === 0) return { kind: "none", why: say("no consent to {name} is recorded", { name }) }
  const named = [...new Set(others.map(({ covers }) => covers.concentrationPercent))]
  const strengths = named
    .map((percent) => (percent === undefined ? say("no strength") : percentInWords(percent)))
    .join(", ")
  const why = say("consent to {treatment} names {strengths}, not {asked}", {
    treatment: treatmentName({ kind: treatment.kind }),
    strengths,
    asked: percentInWords(treatment.concentrationPercent ?? Number.NaN),
  })
  return { kind: "another-strength", why }
}

const percentInWords = (percent: number): string =>
  say("{percent} %", { percent: withDecimalSign(String(percent)) })

const latest = (days: readonly CalendarDate[]): CalendarDate | undefined => days.toSorted().at(-1)
