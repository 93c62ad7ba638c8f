import type { EyeOfSize } from "../../chart/family/eye-drawings.js"
import { eyeSizesFigure } from "../../chart/family/eye-sizes.js"
import { type GrowthBar, growthBarsFigure } from "../../chart/family/growth-bars.js"
import type { FamilyFigure, FamilyFigureOptions } from "../../chart/family/large-text.js"
import { type LengthAhead, lengthPathFigure } from "../../chart/family/length-path.js"
import type { EyeForecast, Fan } from "../../engine/assessment.js"
import { emmetropicLength } from "../../engine/reference/emmetropic.js"
import { say } from "../../engine/say.js"
import { fixed } from "../../engine/words.js"
import { evidence } from "../../evidence/index.js"
import type { Block } from "../document.js"
import { childWords, millimetres } from "./child-words.js"
import {
  type FamilyReading,
  GROWN_UP_YEARS,
  lastLength,
  longerEye,
  type MeasuredLength,
} from "./family-reading.js"
import { type GrownMm, grownMm } from "./growth-answer.js"

/** One decimal, as the figures write it. */
const tenths = (mm: number): string => fixed(mm, 1)

const figureBlock = ({ svg, description }: FamilyFigure): readonly Block[] => [
  { kind: "figure", svg, alt: description },
]

/** The mean of eyes that are not short-sighted; null outside the ages of the published curve. */
function usualMm(ageYears: number): number | null {
  const found = emmetropicLength({ ageYears, curve: evidence.emmetropic })
  return "refused" in found ? null : found.mm
}

/** Eyes to scale: a usual one of that age, the child's longer eye now, and where it was heading. */
export function eyesFigure(reading: FamilyReading, options: FamilyFigureOptions): readonly Block[] {
  const now = longerEye(reading)
  // An eye is not drawn from a figure that may belong to the other eye, or to none.
  if (!now || reading.isInDoubt) return []
  const usual = usualMm(now.ageYears)
  const ahead = grownUp(reading, now)
  const eyes: readonly EyeOfSize[] = [
    ...(usual === null ? [] : [usualEye(usual, now)]),
    childsEye(reading, now),
    ...(ahead === null ? [] : [eyeAhead(ahead)]),
  ]
  return figureBlock(
    eyeSizesFigure(
      {
        eyes,
        caption: "",
        title: say("Eyes to scale"),
        description: eyesInWords({ usual, now, ahead }),
      },
      options,
    ),
  )
}

const usualEye = (mm: number, { ageYears }: MeasuredLength): EyeOfSize => ({
  lengthMm: mm,
  title: say("A usual eye at {age}", { age: Math.floor(ageYears) }),
  note: say("sees far without glasses; drawn to scale"),
  isMeasured: true,
})

function childsEye(reading: FamilyReading, { eye, mm }: MeasuredLength): EyeOfSize {
  const { name, named } = childWords(reading.input)
  return {
    lengthMm: mm,
    title: say(
      "{named, select, yes {{name}, {eye, select, right {right eye} other {left eye}}} other {{eye, select, right {Right eye now} other {Left eye now}}}}",
      { name, named, eye },
    ),
    note: lastLength(reading, eye === "right" ? "left" : "right")
      ? say("measured, the longer of the two")
      : say("measured"),
    isMeasured: true,
  }
}

const eyeAhead = ({ middle, low, high }: LengthAhead): EyeOfSize => ({
  lengthMm: middle,
  low,
  high,
  title: say("At {age}, without treatment", { age: GROWN_UP_YEARS }),
  note: say("9 of 10 such eyes end between {low} and {high} mm", {
    low: tenths(low),
    high: tenths(high),
  }),
  isMeasured: false,
})

/** Where the longer eye goes without treatment from today on; null where no forecast is made. */
function grownUp({ forecast }: FamilyReading, { eye }: MeasuredLength): LengthAhead | null {
  const lines = forecast.eyes[eye]
  return lines === undefined ? null : (pathAhead(lines, lines.untreated).at(-1) ?? null)
}

const pathAhead = ({ ages }: EyeForecast, { p5, p50, p95 }: Fan): readonly LengthAhead[] =>
  ages.flatMap((ageYears, i) => {
    const [low, middle, high] = [p5[i], p50[i], p95[i]]
    return low === undefined || middle === undefined || high === undefined
      ? []
      : [{ ageYears, low, middle, high }]
  })

function eyesInWords({
  usual,
  now,
  ahead,
}: {
  readonly usual: number | null
  readonly now: MeasuredLength
  readonly ahead: LengthAhead | null
}): string {
  const values = { now: tenths(now.mm), age: GROWN_UP_YEARS }
  if (usual === null && ahead === null) return say("The longer eye is {now} mm long.", { now: values.now })
  if (ahead === null)
    return say("The longer eye is {now} mm long, a usual eye of this age {usual} mm.", {
      now: values.now,
      usual: tenths(usual ?? 0),
    })
  const to = { ahead: tenths(ahead.middle), low: tenths(ahead.low), high: tenths(ahead.high) }
  if (usual === null)
    return say(
      "The longer eye is {now} mm long. Without treatment it may be {ahead} mm long at {age}, most likely between {low} and {high} mm.",
      { ...values, ...to },
    )
  return say(
    "The longer eye is {now} mm long, a usual eye of this age {usual} mm. Without treatment it may be {ahead} mm long at {age}, most likely between {low} and {high} mm.",
    { ...values, ...to, usual: tenths(usual) },
  )
}

/** The child's growth beside usual growth over the same dates. */
export function growthFigure(reading: FamilyReading, options: FamilyFigureOptions): readonly Block[] {
  const grown = grownMm(reading)
  if (!grown) return []
  const { sex, name, named } = childWords(reading.input)
  const { months, mm, low95, high95, naturalMm, emmetropicMm } = grown
  const bars: readonly GrowthBar[] = [
    {
      label: say(
        "{named, select, yes {{name} in {months, plural, one {# month} other {# months}}} other {Your child in {months, plural, one {# month} other {# months}}}}",
        { name, named, months },
      ),
      mm,
      low: low95,
      high: high95,
      isChild: true,
    },
    ...(naturalMm === undefined
      ? []
      : [
          {
            label: say(
              "{sex, select, female {Short-sighted girls of this age without treatment} other {Short-sighted boys of this age without treatment}}",
              { sex },
            ),
            mm: naturalMm,
            isChild: false,
          },
        ]),
    { label: say("Eyes that are not short-sighted"), mm: emmetropicMm, isChild: false },
  ]
  const title = say("Growth over the same time")
  return figureBlock(
    growthBarsFigure({ bars, unitLabel: "mm", title, description: barsInWords(grown) }, options),
  )
}

function barsInWords({ mm, naturalMm, emmetropicMm }: GrownMm): string {
  const values = { mm: millimetres(mm), usual: millimetres(emmetropicMm) }
  if (naturalMm === undefined)
    return say("The eyes grew {mm} mm; eyes that are not short-sighted grow {usual} mm in that time.", values)
  return say(
    "The eyes grew {mm} mm; short-sighted eyes grow {natural} mm in that time without treatment, eyes that are not short-sighted {usual} mm.",
    { ...values, natural: millimetres(naturalMm) },
  )
}

const USUAL_STEP_YEARS = 0.5
const USUAL_YEARS_BEFORE = 1

/** The longer eye over the years, beside usual eyes, with what may lie ahead. Only of an eye measured twice. */
export function lengthFigure(reading: FamilyReading, options: FamilyFigureOptions): readonly Block[] {
  const now = longerEye(reading)
  const measured = reading.lengths.filter(({ eye }) => eye === now?.eye)
  const [first] = measured
  if (!now || !first || measured.length < 2 || reading.isInDoubt) return []
  const lines = reading.forecast.eyes[now.eye]
  const endYears = lines === undefined ? now.ageYears : GROWN_UP_YEARS
  const isTreated = reading.treatments.length > 0
  const ahead = lines && {
    untreated: pathAhead(lines, lines.untreated),
    ...(isTreated ? { treated: pathAhead(lines, lines.asTreated) } : {}),
  }
  return figureBlock(
    lengthPathFigure(
      {
        measured: measured.map(({ ageYears, mm }) => ({ ageYears, mm })),
        usual: usualPath(first.ageYears - USUAL_YEARS_BEFORE, endYears),
        ...(ahead ? { ahead } : {}),
        labels: {
          axisAge: say("age in years"),
          axisMm: say("length of the longer eye, mm"),
          measured: say("measured"),
          usual: say("usual eyes"),
          untreated: say("without treatment"),
          treated: say("with the treatment going on"),
        },
        title: say("Length of the eye over the years"),
        description: say(
          "The longer eye grew from {first} mm to {now} mm between the first and the last visit.",
          {
            first: tenths(first.mm),
            now: tenths(now.mm),
          },
        ),
      },
      options,
    ),
  )
}

function usualPath(fromYears: number, toYears: number) {
  const steps = Math.max(1, Math.ceil((toYears - fromYears) / USUAL_STEP_YEARS))
  return Array.from({ length: steps + 1 }, (_, i) => {
    const ageYears = i === steps ? toYears : fromYears + i * USUAL_STEP_YEARS
    return { ageYears, mm: usualMm(ageYears) }
  }).flatMap(({ ageYears, mm }) => (mm === null ? [] : [{ ageYears, mm }]))
}
