import { EYES } from "../course.js"
import { counted, fixed, percent, sentence } from "../words.js"
import type { BeforeMyopia, EmmetropicPlace, OnsetRefraction } from "./before-myopia.js"
import type { CutOffAnswer } from "./cut-offs.js"

/** Each part as sentences with its figures, alike on a page and in a terminal. */
export interface BeforeMyopiaWords {
  /** The one thing to see first: on which side of the cut-offs the refraction is. */
  readonly first: string
  readonly length: readonly string[]
  readonly refraction: readonly string[]
  readonly parents: readonly string[]
  readonly review: readonly string[]
  readonly advice: readonly { readonly what: string; readonly findings: readonly string[] }[]
  readonly notSaid: readonly string[]
}

export function beforeMyopiaInWords(answer: BeforeMyopia): BeforeMyopiaWords {
  const { eyes, refraction, parents, review, advice, keptOff, treatment } = answer
  return {
    first: firstInWords(refraction),
    length: EYES.flatMap((eye) => {
      const place = eyes[eye]
      return place ? [sentence(`${eye} eye ${placeInWords(place)}`)] : []
    }),
    refraction: "refused" in refraction ? [sentence(refraction.refused)] : refractionInWords(refraction),
    parents: parents ? parentsInWords(parents) : ["Whether the parents are myopic is not recorded."],
    review: review ? [`Seen every ${review.months} months: ${review.source}.`] : [],
    advice: advice.map(({ what, duty, findings }) => ({
      what: `${what} (${duty})`,
      findings: findings.map(({ words, kind, people, cited, obtained }) =>
        sentence(`${words}. ${sentence(kind)} ${people}; ${cited}, read as ${obtained}`),
      ),
    })),
    notSaid: [
      sentence(treatment.refused),
      ...keptOff.map(({ what, why }) => sentence(`not shown: ${what}, since ${why}`)),
    ],
  }
}

function firstInWords(refraction: BeforeMyopia["refraction"]): string {
  if ("refused" in refraction) return "Not myopic; not compared with any cut-off yet"
  const { cutOffs } = refraction
  if (cutOffs.length === 0) return "Not myopic; no cut-off was read for this age"
  const atRisk = cutOffs.filter(({ side }) => side !== "beyond").length
  if (atRisk === 0) return "Not myopic, and past no cut-off that was read"
  return `Not myopic; past ${atRisk} of ${counted(cutOffs.length, "cut-off")} for becoming so`
}

const power = (dioptres: number): string => `${dioptres > 0 ? "+" : ""}${fixed(dioptres)} D`

function placeInWords(place: EmmetropicPlace): string {
  const measured = `${fixed(place.mm)} mm on ${place.date}`
  if ("refused" in place) return `${measured}; ${place.refused}`
  const { emmetropicMm, differenceMm, betweenEyesSdMm } = place
  const rounded = Math.round(100 * Math.abs(differenceMm)) / 100
  const side = differenceMm > 0 ? "longer" : "shorter"
  const difference = rounded === 0 ? "as long as" : `${fixed(rounded)} mm ${side} than`
  const spread =
    betweenEyesSdMm === null
      ? ""
      : `, from which such eyes differ with a standard deviation of ${fixed(betweenEyesSdMm)} mm`
  return `${measured}: ${difference} the mean of emmetropic eyes at that age, ${fixed(emmetropicMm)} mm${spread}`
}

function refractionInWords({ date, moreMyopicD, cutOffs, share }: OnsetRefraction): readonly string[] {
  const none = cutOffs.length === 0 ? ["No cut-off was read for this age."] : []
  const became = share
    ? [
        `Of ${share.n} children of ${share.of.age} with ${bandInWords(share)}, ${share.became} became ${share.of.outcome}: ` +
          `${percent(share.percent / 100)} (95 % ${fixed(share.low95, 0)} to ${fixed(share.high95, 0)} %). ` +
          `${share.of.population}; ${share.of.cited}.`,
      ]
    : []
  return [
    `${power(moreMyopicD)} with cycloplegia on ${date}, the more myopic eye.`,
    ...cutOffs.map(cutOffInWords),
    ...none,
    ...became,
  ]
}

function cutOffInWords({ cutOff, valueD, side }: CutOffAnswer): string {
  const { lowD, highD, isAtCutOffAtRisk, quantity, outcome, sensitivity, specificity, cited, obtained } =
    cutOff
  const edge = lowD === highD ? power(lowD) : `the cut-offs tried, ${power(lowD)} to ${power(highD)}`
  const under = isAtCutOffAtRisk ? "at or below" : "below"
  const place = { "at-risk": `is ${under}`, between: "lies among", beyond: `is not ${under}` }[side]
  const rates = sensitivity
    ? ` Told ${outcome} with sensitivity ${sensitivity}, specificity ${specificity}.`
    : ` The cut-off for ${outcome}.`
  const whom = cutOff.grade ? `${cutOff.grade}, taken here for ${ages(cutOff)}` : ages(cutOff)
  const how = cutOff.isSecondHand
    ? `second-hand, ${obtained}; the study's own text was not read`
    : `read as ${obtained}`
  return sentence(
    `${quantity} ${power(valueD)} ${place} ${edge} (${whom}).${rates} ${cited}, ${cutOff.population}; ${how}`,
  )
}

const ages = ({ youngestAge, oldestAge }: CutOffAnswer["cutOff"]): string =>
  youngestAge === oldestAge ? `age ${youngestAge}` : `ages ${youngestAge} to ${oldestAge}`

function bandInWords({ fromD, belowD }: NonNullable<OnsetRefraction["share"]>): string {
  if (fromD === null) return `less than ${power(belowD ?? 0)}`
  return belowD === null ? `${power(fromD)} or more` : `${power(fromD)} to less than ${power(belowD)}`
}

function parentsInWords({ myopicParents, odds }: NonNullable<BeforeMyopia["parents"]>): readonly string[] {
  if (myopicParents === 0) return ["Neither parent is myopic."]
  const who = myopicParents === 1 ? "One parent is myopic" : "Both parents are myopic"
  const ratios = odds.map(
    ({ oddsRatio, low95, high95, cited }) =>
      `${fixed(oddsRatio)} (95 % ${fixed(low95)} to ${fixed(high95)}; ${cited})`,
  )
  return [`${who}. Odds of myopia against children of parents without it: ${ratios.join(" and ")}.`]
}
