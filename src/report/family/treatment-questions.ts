import { say } from "../../engine/say.js"
import { fixed, inDigits } from "../../engine/words.js"
import { type Answer, answered, graded } from "./answer-grade.js"
import { millimetres, thousandsApart } from "./child-words.js"
import type { FamilyReading } from "./family-reading.js"
import {
  dropsBorne,
  focusLost,
  lensInfections,
  longestTrialYears,
  opticalStop,
  stopTrial,
} from "./question-evidence.js"

/** What is asked about a treatment that is in use, or was. */
export const treatmentQuestions = (reading: FamilyReading): readonly Answer[] => [
  ...safety(reading),
  ...stopping(reading),
  ...missing(reading),
]

function stopping({ treatments, everTreated }: FamilyReading): readonly Answer[] {
  const asked = treatments.length > 0 ? treatments : everTreated
  const given = asked.findLast(({ kind }) => kind === "atropine") ?? asked.at(-1)
  if (!given) return []
  const on = treatments.length > 0 ? "yes" : "no"
  const question = say("{on, select, yes {May we stop early?} other {What follows after a stop?}}", { on })
  if (given.kind === "atropine") {
    const trial = stopTrial(given.concentrationPercent)
    return trial
      ? [
          answered(
            question,
            stopInWords(trial, { on, percent: given.concentrationPercent ?? 0 }),
            graded("trial", [trial.source]),
          ),
        ]
      : [
          answered(
            question,
            say(
              "{on, select, yes {You may stop at any time, but tell us first. We have read no trial that shows how eyes grow after a stop of this strength.} other {We have read no trial that shows how eyes grow after a stop of this strength.}}",
              { on },
            ),
            graded("none"),
          ),
        ]
  }
  const review = opticalStop(given.kind)
  if (!review) return []
  const line = say(
    "{on, select, yes {You may stop at any time, but tell us first.} other {We go on measuring after a stop.}} After a stop of this treatment {growth, select, strong {growth often came back strongly} weak {growth came back a little} other {studies did not agree on what follows}}.",
    { on, growth: review.growth },
  )
  return [answered(question, line, graded("review", [review.source]))]
}

const stopInWords = (
  trial: NonNullable<ReturnType<typeof stopTrial>>,
  { on, percent }: { readonly on: string; readonly percent: number },
): string =>
  say(
    "{on, select, yes {You may stop at any time, but tell us first.} other {We go on measuring after a stop.}} In one trial of {percent} % drops, eyes that stopped after {years, plural, one {# year} other {# years}} grew {stopped} mm in the next year. Eyes that went on grew {wentOn} mm.",
    {
      on,
      percent: inDigits(percent),
      years: trial.treatedYears,
      stopped: millimetres(trial.stoppedMm),
      wentOn: millimetres(trial.wentOnMm),
    },
  )

function missing({ treatments }: FamilyReading): readonly Answer[] {
  if (treatments.every(({ kind }) => kind !== "atropine")) return []
  const line = say(
    "Go on the next night with one drop. We have read no trial that shows what missed nights cost. Tell us of them, since it changes how we read the figures.",
  )
  return [answered(say("What if we miss a night?"), line, graded("none"))]
}

function safety({ treatments }: FamilyReading): readonly Answer[] {
  const given = treatments.find(({ kind }) => kind === "atropine")
  const hasLenses = treatments.some(({ kind }) => kind.endsWith("lens") || kind === "orthokeratology")
  return [...(given ? [dropsSafe(given.concentrationPercent)] : []), ...(hasLenses ? [lensesSafe()] : [])]
}

function dropsSafe(percent: number | undefined): Answer {
  const question = say("Are the drops safe?")
  const years = longestTrialYears()
  const borne = dropsBorne(percent)
  if (borne) {
    const light = Math.round(borne.light)
    const line =
      borne.nearBlur === null
        ? say(
            "In one trial of this strength, light bothered about {light} of 100 children, and {without} of 100 on drops without the drug. The longest trial of drops that we have read took {years, plural, one {# year} other {# years}}.",
            { light, without: Math.round(borne.lightWithout ?? 0), years },
          )
        : say(
            "In one trial of this strength, light bothered about {light} of 100 children, and {blur} of 100 saw less clearly close up. The longest trial of drops that we have read took {years, plural, one {# year} other {# years}}.",
            { light, blur: Math.round(borne.nearBlur), years },
          )
    return answered(question, line, graded("trial", [borne.source]))
  }
  const focus = focusLost(percent)
  if (!focus)
    return answered(
      question,
      say("We have read no figures of unwanted effects at this strength. We look for them at the visits."),
      graded("none"),
    )
  const line = say(
    "In one trial of this strength, the power to focus close up was {lost} D weaker after a year, and {without} D weaker on drops without the drug. The longest trial of drops that we have read took {years, plural, one {# year} other {# years}}.",
    { lost: fixed(focus.lostD, 1), without: fixed(focus.withoutD, 1), years },
  )
  return answered(question, line, graded("trial", [focus.source]))
}

function lensesSafe(): Answer {
  const { fewest, most, source } = lensInfections()
  const line = say(
    "Of {people} people who wear contact lenses for a year, {fewest} to {most} get a germ in the clear front of the eye.",
    { people: thousandsApart(10_000), fewest, most },
  )
  return answered(say("Are the lenses safe?"), line, graded("review", [source]))
}
