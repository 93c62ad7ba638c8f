import type {
  AfterStop,
  Assessment,
  Duty,
  EyeAssessment,
  Finding,
  GrowthState,
  GrowthVerdict,
  Position,
  Rate,
} from "../engine/assessment.js"
import type { Child, Eye } from "../engine/course.js"
import { GRADE_WORDS } from "../engine/reference/grade-words.js"
import { isPluralName } from "../engine/treatment-name.js"
import { centileInWords, fixed, inDigits, percent, sentence } from "../engine/words.js"
import { dutyText } from "./duty-text.js"
import { ageInWords, CAUTION, dateInWords, paragraph, section } from "./words.js"

/**
 * An assessment as it is read aloud: the growth first, then what can be said of the treatment, the figures of each eye,
 * chances, concerns, checks, the next duty, and the caution last.
 */
export function assessmentText({
  child,
  assessment,
  next,
}: {
  readonly child: Child
  readonly assessment: Assessment
  readonly next: Duty | null
}): string {
  const { asOf, eyes, chances, concerns, checks, refused } = assessment
  const who = child.sex === "female" ? "Girl" : "Boy"
  const name = child.id === undefined ? "" : `${child.id}: `
  return [
    paragraph(`${name}${who}, ${ageInWords({ born: child.born, on: asOf })}, on ${dateInWords(asOf)}.`, 0),
    "\n",
    refused === undefined
      ? saidText(assessment, who.toLowerCase())
      : section("Nothing is said of this child", [sentence(refused)]),
    ...(refused === undefined ? eyeTexts(eyes) : []),
    section(
      "Chance of an answer about the treatment",
      chances.map(
        ({ review, step, ifItWorks, ifNot }) =>
          `By ${dateInWords(review)} (${step}): ${percent(ifItWorks)} if it works, ${percent(ifNot)} if it does not.`,
      ),
    ),
    section(
      "Concerns",
      concerns.map(({ why }) => sentence(why)),
    ),
    section(
      "Checks",
      checks.map(({ path, why }) => `${path}: ${sentence(why)}`),
    ),
    section("Next duty", [next === null ? "Nothing is owed." : dutyText(next, asOf)]),
    paragraph(CAUTION, 0),
  ].join("")
}

const AFTER_STOP: Readonly<Record<AfterStop["state"], string>> = {
  "no-rebound-seen": "no rebound seen",
  "rebound-likely": "a rebound is likely",
  "cannot-tell-yet": "cannot tell yet whether the eyes rebound",
}

function saidText({ growth, finding, afterStop }: Assessment, who: string): string {
  return [
    section(`Growth: ${growthHeading(growth)}`, [
      ...growthSentences(growth, who),
      ...growth.reasons.map(sentence),
    ]),
    section(`Treatment: ${findingHeading(finding)}`, [
      ...findingSentences(finding),
      ...finding.reasons.map(sentence),
      ...answerSentence(finding),
    ]),
    afterStop ? section(`After the stop: ${AFTER_STOP[afterStop.state]}`, [sentence(afterStop.why)]) : "",
  ].join("")
}

const GROWTH: Readonly<Record<GrowthState, string>> = {
  "near-normal": "near normal",
  "slowed-growth": "slowed",
  "as-untreated": "as untreated",
  faster: "faster than untreated",
  unclear: "unclear",
}

function growthHeading({ state, probabilities }: GrowthVerdict): string {
  if (state === "unclear" || probabilities === null) return GROWTH[state]
  return `${GROWTH[state]}, ${percent(probabilities[state])} certain`
}

function growthSentences(growth: GrowthVerdict, who: string): readonly string[] {
  const { mmPerYear, low95, high95, from, to, naturalMmPerYear, emmetropicMmPerYear, probabilities } = growth
  if (mmPerYear === null) return []
  const when = from && to ? `From ${dateInWords(from)} to ${dateInWords(to)} the` : "The"
  const interval =
    low95 === undefined || high95 === undefined ? "" : ` (95 % interval ${fixed(low95)} to ${fixed(high95)})`
  const lines = [
    naturalMmPerYear === undefined
      ? ""
      : `an untreated myopic ${who} of this age is expected to grow ${fixed(naturalMmPerYear)} mm a year`,
    emmetropicMmPerYear === undefined ? "" : `a child without myopia ${fixed(emmetropicMmPerYear)} mm a year`,
  ].filter((line) => line !== "")
  return [
    `${when} ${growth.eye ? `${growth.eye} eye` : "eyes"} grew ${fixed(mmPerYear)} mm a year${interval}.`,
    ...(lines.length === 0 ? [] : [`Over the same dates ${lines.join(", ")}.`]),
    ...(probabilities === null
      ? []
      : [
          `Probabilities: ${Object.entries(probabilities)
            .map(([state, share]) => `${GROWTH[state as GrowthState]} ${percent(share)}`)
            .join(", ")}.`,
        ]),
  ]
}

function findingHeading({ state, treatment, lean }: Finding): string {
  switch (state) {
    case "slowed":
      return `${treatment} ${isPlural(treatment) ? "slow" : "slows"} the growth`
    case "not-slowed":
      return `${treatment} ${isPlural(treatment) ? "do" : "does"} not slow the growth`
    case "no-treatment":
      return "none to judge"
    case "cannot-tell-yet": {
      const leaning =
        lean === null ? "" : lean === "slowed" ? ", leaning towards yes" : ", leaning towards no"
      return `cannot tell yet whether ${treatment ?? "it"} ${isPlural(treatment) ? "work" : "works"}${leaning}`
    }
  }
}

const isPlural = (treatment: string | null): boolean => treatment !== null && isPluralName(treatment)

function findingSentences({ likelihoodRatio, upper, lower, treatment }: Finding): readonly string[] {
  if (likelihoodRatio === null) return []
  const works = likelihoodRatio >= 1
  const times = works ? likelihoodRatio : 1 / likelihoodRatio
  const [it, does, nothing] = isPlural(treatment)
    ? ["they", "work as in the trials", "do nothing"]
    : ["it", "works as in the trials", "does nothing"]
  const [likelier, other] = works ? [does, nothing] : [nothing, does]
  const shown = times > 1000 ? "more than 1000" : times >= 10 ? fixed(times, 0) : fixed(times, 1)
  return [
    `The figures are ${shown} times likelier if ${it} ${likelier} than if ${it} ${other}. ` +
      `An answer is given from ${inDigits(upper)} times for it, or ${inDigits(1 / lower)} times against it.`,
  ]
}

function answerSentence(finding: Finding): readonly string[] {
  const { state, earliestAnswer, likelihoodRatio, upper, lower } = finding
  if (state !== "cannot-tell-yet" || likelihoodRatio === null) return []
  // Past a limit without an answer it is not reviews that are waited for; the reasons say what is.
  if (likelihoodRatio >= upper || likelihoodRatio <= lower) return []
  if (earliestAnswer !== null)
    return [`An answer is at least as likely as not by ${dateInWords(earliestAnswer)}.`]
  return ["No planned review reaches even odds of an answer: in this child the question may stay open."]
}

/** Both eyes; why there is no centile is said once when it is the same for both. */
function eyeTexts({ right, left }: Assessment["eyes"]): readonly string[] {
  const same =
    "refused" in right.position &&
    "refused" in left.position &&
    right.position.refused === left.position.refused
  return [
    eyeText("right", right, { silent: same }),
    eyeText("left", left, { silent: same }),
    same ? section("Position among peers", [positionSentence(right.position)]) : "",
  ]
}

function positionSentence(position: Position): string {
  if ("refused" in position) return `No centile: ${position.refused}.`
  const { centile, reference, grade, note } = position
  return `Among peers: ${typeof centile === "number" ? "centile " : ""}${centileInWords(centile)}, by ${reference}, grade ${grade}: ${note ?? GRADE_WORDS[grade]}.`
}

function eyeText(eye: Eye, figures: EyeAssessment, { silent }: { readonly silent: boolean }): string {
  const { length, rate, natural, emmetropic, detectableChangeMm, position } = figures
  const heading = eye === "right" ? "Right eye" : "Left eye"
  if (length === null) return section(heading, ["No length to go by."])
  return section(heading, [
    `Length ${fixed(length.mm)} mm (95 % interval ${fixed(length.low95)} to ${fixed(length.high95)}).`,
    ...(rate === null ? [] : [rateSentence(rate, { natural, emmetropic })]),
    ...(detectableChangeMm === null
      ? []
      : [`A change of ${fixed(detectableChangeMm)} mm or more can be told from measuring error.`]),
    ...(silent ? [] : [positionSentence(position)]),
  ])
}

function rateSentence(
  rate: Rate,
  { natural, emmetropic }: Pick<EyeAssessment, "natural" | "emmetropic">,
): string {
  const lines = [
    natural === null ? "" : `untreated ${fixed(natural.mmPerYear)}`,
    emmetropic === null ? "" : `without myopia ${fixed(emmetropic.mmPerYear)}`,
  ].filter((line) => line !== "")
  const beside = lines.length === 0 ? "" : `; expected ${lines.join(", ")}`
  return (
    `Growth ${fixed(rate.mmPerYear)} mm a year (95 % interval ${fixed(rate.low95)} to ${fixed(rate.high95)}) ` +
    `from ${dateInWords(rate.from)} to ${dateInWords(rate.to)}${beside}.`
  )
}
