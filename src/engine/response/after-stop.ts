import type { ReboundEffect } from "../../evidence/types.js"
import type { AfterStop } from "../assessment.js"
import { ageYears } from "../calendar.js"
import type { CalendarDate, Course, Treatment } from "../course.js"
import type { LengthTerm } from "../growth/child-model.js"
import { distributionOf, factored, posterior, withheldPrior } from "../growth/posterior.js"
import type { Study } from "../growth/study.js"
import type { Exposure, TreatmentColumn } from "../growth/treatment-columns.js"
import { mixtureMean } from "../numeric/mixture.js"
import { realTreatments } from "../protocol/treatment-course.js"
import { msg, say } from "../say.js"
import { treatmentName } from "../treatment-name.js"
import { fixed, odds } from "../words.js"
import { detectableChangeMm, startingFigure } from "./detectable-change.js"
import { waits } from "./doubtful-figures.js"
import { waldLimits } from "./finding.js"

/** Tells the column apart; it is never shown. */
const KEY = "rebound after the stop"
const MONTHS_PER_YEAR = 12

/**
 * After the stop: does the eye make up for what was withheld, or does it only grow untreated again?
 *
 * Growth that returns from treated to natural is loss of effect, to be expected wherever the treatment worked. Rebound
 * is growth above natural. So natural growth is the null hypothesis, never growth on treatment, and the other is what
 * was reported above untreated eyes (evidence/treatments, README "Rebound"): one more column of the same model, of the
 * months after the stop, that withholds a negative share. Wald's limits as in `finding`.
 *
 * Null while a treatment runs and where none ever did.
 */
export function afterStop(study: Study, doubt: string | null): AfterStop | null {
  const stopped = lastStopped(study.course, study.asOf)
  if (!stopped || study.myopia === "not-myopic") return null
  const open = { state: "cannot-tell-yet", likelihoodRatio: null, growthMm: null, naturalMm: null } as const
  const stopAge = ageYears({ born: study.course.child.born, on: stopped.stop })
  const since = growthSince(study, stopAge)
  if (!since)
    return {
      ...open,
      why: say("no length has been measured since the stop on {date}", { date: stopped.stop }),
    }
  const grown = { growthMm: since.growthMm, naturalMm: since.naturalMm }
  const known = study.evidence.rebound?.filter((effect) => isOf(effect, stopped.treatment))
  const effect = known?.find(({ concentrationPercent }) => concentrationPercent !== null) ?? known?.[0]
  if (!effect) {
    const name = treatmentName(stopped.treatment)
    const why = say("no report was read of growth above untreated after {treatment}", { treatment: name })
    return { ...open, ...grown, why }
  }
  if (doubt !== null) return { ...open, ...grown, why: waits(doubt) }
  if (since.naturalMm < since.detectableMm) {
    const why = say(
      "too early: natural growth since the stop is {natural} mm, less than the {detectable} mm that can be told",
      { natural: fixed(since.naturalMm), detectable: fixed(since.detectableMm) },
    )
    return { ...open, ...grown, why }
  }
  const ratio = Math.exp(logRatio(study, { effect, stopAge, treatment: stopped.treatment }))
  return { likelihoodRatio: ratio, ...grown, ...verdict(study, { ratio, effect, since }) }
}

/** The treatment that ended last, when all that began have ended. */
function lastStopped(
  course: Course,
  asOf: CalendarDate,
): { readonly treatment: Treatment; readonly stop: CalendarDate } | null {
  const begun = realTreatments(course).filter(({ from }) => from <= asOf)
  const ended = begun.flatMap((treatment) =>
    treatment.to && treatment.to <= asOf ? [{ treatment, stop: treatment.to }] : [],
  )
  if (ended.length < begun.length) return null
  // Drops before what was given beside them: theirs is the rebound that was reported.
  const isDrops = ({ treatment }: (typeof ended)[number]) => Number(treatment.kind === "atropine")
  return (
    ended.sort((a, b) => (a.stop === b.stop ? isDrops(b) - isDrops(a) : a.stop < b.stop ? 1 : -1))[0] ?? null
  )
}

const isOf = ({ of, concentrationPercent }: ReboundEffect, treatment: Treatment): boolean =>
  (of === "atropine") === (treatment.kind === "atropine") &&
  (concentrationPercent === null || concentrationPercent === treatment.concentrationPercent)

interface Since {
  readonly growthMm: number
  readonly naturalMm: number
  readonly detectableMm: number
}

function growthSince(study: Study, stopAge: number): Since | null {
  const after = study.lengths.filter((figure) => figure.ageYears > stopAge)
  const last = after.at(-1)
  if (!last || study.model.originAge >= last.ageYears) return null
  const fromAge = Math.max(stopAge, study.model.originAge)
  const eyes = ([0, 1] as const).filter((eye) => after.some((figure) => figure.eye === eye))
  const terms = eyes.flatMap((eye): LengthTerm[] => [
    { eye, ageYears: last.ageYears, coefficient: 1 / eyes.length },
    { eye, ageYears: fromAge, coefficient: -1 / eyes.length },
  ])
  const first = startingFigure(
    study.lengths.filter(({ eye }) => eye === last.eye),
    fromAge,
  )
  return {
    growthMm: mixtureMean(distributionOf(study.posterior, terms)),
    naturalMm: study.natural.cumulativeMm(last.ageYears) - study.natural.cumulativeMm(fromAge),
    detectableMm: detectableChangeMm({ first, last, parameters: study.evidence.growth }),
  }
}

/** Log of how many times likelier the lengths are with the rebound than without. */
function logRatio(
  study: Study,
  input: { readonly effect: ReboundEffect; readonly stopAge: number; readonly treatment: Treatment },
): number {
  const model = { ...study.model, columns: [...study.model.columns, reboundColumn(study, input)] }
  const child = factored(model, study.evidence.growth)
  return (
    posterior(child, withheldPrior(model)).logEvidence -
    posterior(child, withheldPrior(model, KEY)).logEvidence
  )
}

/**
 * The extra growth reported, in shares of this child's own natural growth over the same months, with the spread between
 * children that is assumed of treatments.
 */
function reboundColumn(
  { natural, evidence }: Study,
  {
    effect,
    stopAge,
    treatment,
  }: { readonly effect: ReboundEffect; readonly stopAge: number; readonly treatment: Treatment },
): TreatmentColumn {
  const endAge = stopAge + effect.overMonths / MONTHS_PER_YEAR
  const naturalMm = natural.cumulativeMm(endAge) - natural.cumulativeMm(stopAge)
  const eye = treatment.eye === undefined ? undefined : treatment.eye === "right" ? 0 : 1
  const exposure: Exposure = {
    fromAge: stopAge,
    toAge: endAge,
    share: 1,
    ...(eye === undefined ? {} : { eye }),
  }
  return {
    key: KEY,
    name: KEY,
    label: KEY,
    prior: {
      mean: -effect.extraMm / naturalMm,
      sd: Math.hypot(effect.extraMmSd / naturalMm, evidence.growth.values.withheldSpreadSd.value),
    },
    effect: null,
    stretches: [[stopAge, endAge]],
    startAge: stopAge,
    endAge,
    exposures: [exposure],
    coverage: null,
  }
}

function verdict(
  { settings }: Study,
  { ratio, effect, since }: { readonly ratio: number; readonly effect: ReboundEffect; readonly since: Since },
): Pick<AfterStop, "state" | "why"> {
  const { upper, lower } = waldLimits(settings)
  const { against, overMonths } = effect
  const figures = {
    grown: fixed(since.growthMm),
    natural: fixed(since.naturalMm),
    odds: odds(ratio),
    extra: fixed(effect.extraMm),
    months: overMonths,
    report: reported(against),
  }
  if (ratio >= upper) {
    return {
      state: "rebound-likely",
      why: say(
        "{grown} mm since the stop, natural growth {natural} mm: {odds} for a rebound of {extra} mm above natural growth in the {months} months after the stop, {report}",
        figures,
      ),
    }
  }
  if (ratio <= lower) {
    return {
      state: "no-rebound-seen",
      why: say(
        "{grown} mm since the stop, natural growth {natural} mm: {odds} against a rebound of {extra} mm above natural growth in the {months} months after the stop, {report}; growth that only returns to natural is loss of effect, not rebound",
        figures,
      ),
    }
  }
  return {
    state: "cannot-tell-yet",
    why: say(
      "{grown} mm since the stop, natural growth {natural} mm: {odds} {side, select, for {for} other {against}} a rebound of {extra} mm above natural growth in the {months} months after the stop, {report}; {wanted} is asked for",
      { ...figures, side: ratio >= 1 ? "for" : "against", wanted: odds(ratio >= 1 ? upper : lower) },
    ),
  }
}

function reported(against: string | null): string {
  if (against === null) return say("as was reported")
  return say("as was reported (but {against})", {
    against: AGAINST.includes(against) ? say(against) : against,
  })
}

/** What the evidence has against a report, so that the languages are asked for it; a test holds it to the evidence. */
export const AGAINST: readonly string[] = [
  msg("ATOM-J found none at 0.01 %: -0.02 mm (95 % -0.12 to 0.09) in the year off"),
  msg("a Chinese trial of 0.05 % found no clear rebound: 0.31 against 0.28 mm in the year off (P > 0.05)"),
]
