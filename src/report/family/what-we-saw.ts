import { type CalendarDate, EYES, type Eye, type Refraction } from "../../engine/course.js"
import { sphericalEquivalent } from "../../engine/optics/spherical-equivalent.js"
import { say, shortDayInWords } from "../../engine/say.js"
import { fixed } from "../../engine/words.js"
import type { Block } from "../document.js"
import { millimetres } from "./child-words.js"
import { type FamilyReading, lastLength } from "./family-reading.js"
import { type GrownMm, grownMm } from "./growth-answer.js"

type Pair = readonly [label: string, value: string]

/** Lengths, growth and glasses as they were measured, with how sure the growth is. */
export function whatWeSaw(reading: FamilyReading): readonly Block[] {
  const grown = grownMm(reading)
  const pairs: readonly Pair[] = [
    ...lengthPairs(reading),
    ...(grown ? [growthPair(grown)] : []),
    ...glassesPairs(reading),
  ]
  return [
    { kind: "heading", level: 1, text: say("What we saw") },
    pairs.length > 0
      ? { kind: "pairs", pairs }
      : { kind: "text", text: say("Nothing has been measured yet.") },
  ]
}

/** Both eyes in one line where they were measured on one day. */
function lengthPairs(reading: FamilyReading): readonly Pair[] {
  const [right, left] = EYES.map((eye) => lastLength(reading, eye))
  if (right && left && right.date === left.date) {
    const values = {
      right: millimetres(right.mm),
      left: millimetres(left.mm),
      date: shortDayInWords(right.date),
    }
    return [[say("Length of the eyes"), say("right {right} mm, left {left} mm on {date}", values)]]
  }
  return [right, left].flatMap((length): Pair[] => {
    if (!length) return []
    const values = { mm: millimetres(length.mm), date: shortDayInWords(length.date) }
    const label = say("{eye, select, right {Length of the right eye} other {Length of the left eye}}", {
      eye: length.eye,
    })
    return [[label, say("{mm} mm on {date}", values)]]
  })
}

/** With its 95 % interval in words. */
function growthPair({ mm, months, eye, low95, high95 }: GrownMm): Pair {
  const label =
    eye === undefined
      ? say("Growth")
      : say("{eye, select, right {Growth of the right eye} other {Growth of the left eye}}", { eye })
  return [
    label,
    say(
      "{mm} mm in {months, plural, one {# month} other {# months}}, very likely (95 of 100) {low} to {high} mm",
      { mm: millimetres(mm), months, low: millimetres(low95), high: millimetres(high95) },
    ),
  ]
}

/** A visit at which a sign seems to be lost is passed over: a family is not told a figure that looks wrong. */
function glassesPairs({ course, today, assessment }: FamilyReading): readonly Pair[] {
  const isOdd = (index: number) =>
    assessment.checks.some(({ kind, path }) => kind === "sign-changed" && path.startsWith(`visits[${index}]`))
  const visit = course.visits
    .filter(({ date }, index) => date <= today && !isOdd(index))
    .toSorted((a, b) => (a.date < b.date ? 1 : -1))
    .find((each) => EYES.some((eye) => each[eye]?.refraction))
  if (!visit) return []
  const powers = EYES.flatMap((eye) => {
    const refraction = visit[eye]?.refraction
    return refraction ? [{ eye, power: power(refraction) }] : []
  })
  return [[say("Glasses, mean strength"), powersInWords(powers, visit.date)]]
}

function powersInWords(
  powers: readonly { readonly eye: Eye; readonly power: string }[],
  on: CalendarDate,
): string {
  const date = shortDayInWords(on)
  const [first, second] = powers
  if (first && second)
    return say("right {right} D, left {left} D on {date}", { right: first.power, left: second.power, date })
  return say("{eye, select, right {right eye} other {left eye}} {power} D on {date}", {
    eye: first?.eye ?? "right",
    power: first?.power ?? "",
    date,
  })
}

/** With its sign, as on a prescription. */
function power(refraction: Refraction): string {
  const dioptres = sphericalEquivalent(refraction)
  const text = fixed(dioptres).replace("-", "\u2212")
  return dioptres > 0 ? `+${text}` : text
}
