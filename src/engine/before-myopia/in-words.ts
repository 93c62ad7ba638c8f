import { EYES, type Eye } from "../course.js"
import { protocolSource } from "../protocol/titles.js"
import { listed, say, withDecimalSign } from "../say.js"
import { fixed, percent, sentence } from "../words.js"
import type { BeforeMyopia, EmmetropicPlace, OnsetRefraction } from "./before-myopia.js"
import type { CutOffAnswer } from "./cut-offs.js"
import { ofEvidence } from "./said-evidence.js"

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
      return place ? [sentence(placeInWords(eye, place))] : []
    }),
    refraction: "refused" in refraction ? [sentence(refraction.refused)] : refractionInWords(refraction),
    parents: parents ? parentsInWords(parents) : [say("Whether the parents are myopic is not recorded.")],
    review: review
      ? [
          say("Seen every {months, plural, one {# month} other {# months}}: {source}.", {
            months: review.months,
            source: protocolSource(review),
          }),
        ]
      : [],
    advice: advice.map(({ what, duty, findings }) => ({
      what: `${ofEvidence(what)} (${duty})`,
      findings: findings.map(({ words, kind, people, cited, obtained }) =>
        sentence(
          say("{words}. {kind} {people}; {cited}, read as {obtained}", {
            words: ofEvidence(words),
            kind: sentence(ofEvidence(kind)),
            people: ofEvidence(people),
            cited: ofEvidence(cited),
            obtained: ofEvidence(obtained),
          }),
        ),
      ),
    })),
    notSaid: [
      sentence(treatment.refused),
      ...keptOff.map(({ what, why }) =>
        sentence(say("not shown: {what}, since {why}", { what: ofEvidence(what), why: ofEvidence(why) })),
      ),
    ],
  }
}

function firstInWords(refraction: BeforeMyopia["refraction"]): string {
  if ("refused" in refraction) return say("Not myopic; not compared with any cut-off yet")
  const { cutOffs } = refraction
  if (cutOffs.length === 0) return say("Not myopic; no cut-off was read for this age")
  const atRisk = cutOffs.filter(({ side }) => side !== "beyond").length
  if (atRisk === 0) return say("Not myopic, and past no cut-off that was read")
  return say(
    "Not myopic; past {atRisk} of {count, plural, one {# cut-off} other {# cut-offs}} for becoming so",
    {
      atRisk,
      count: cutOffs.length,
    },
  )
}

const power = (dioptres: number): string => `${dioptres > 0 ? "+" : ""}${fixed(dioptres)} D`

function placeInWords(eye: Eye, place: EmmetropicPlace): string {
  const measured = { eye, mm: fixed(place.mm), date: place.date }
  if ("refused" in place) {
    return say("{eye, select, right {Right} other {Left}} eye {mm} mm on {date}; {why}", {
      ...measured,
      why: place.refused,
    })
  }
  const { emmetropicMm, differenceMm, betweenEyesSdMm } = place
  const rounded = Math.round(100 * Math.abs(differenceMm)) / 100
  const compared = {
    ...measured,
    side: rounded === 0 ? "equal" : differenceMm > 0 ? "longer" : "shorter",
    difference: fixed(rounded),
    mean: fixed(emmetropicMm),
  }
  if (betweenEyesSdMm === null) {
    return say(
      "{eye, select, right {Right} other {Left}} eye {mm} mm on {date}: {side, select, equal {as long as} longer {{difference} mm longer than} other {{difference} mm shorter than}} the mean of emmetropic eyes at that age, {mean} mm",
      compared,
    )
  }
  return say(
    "{eye, select, right {Right} other {Left}} eye {mm} mm on {date}: {side, select, equal {as long as} longer {{difference} mm longer than} other {{difference} mm shorter than}} the mean of emmetropic eyes at that age, {mean} mm, from which such eyes differ with a standard deviation of {sd} mm",
    { ...compared, sd: fixed(betweenEyesSdMm) },
  )
}

function refractionInWords({ date, moreMyopicD, cutOffs, share }: OnsetRefraction): readonly string[] {
  const none = cutOffs.length === 0 ? [say("No cut-off was read for this age.")] : []
  return [
    say("{power} with cycloplegia on {date}, the more myopic eye.", { power: power(moreMyopicD), date }),
    ...cutOffs.map(cutOffInWords),
    ...none,
    ...(share ? [shareInWords(share)] : []),
  ]
}

const shareInWords = (share: NonNullable<OnsetRefraction["share"]>): string =>
  say(
    "Of {n} children of {age} with {band}, {became} became {outcome}: {percent} (95 % {low} to {high} %). {population}; {cited}.",
    {
      n: share.n,
      age: share.of.age,
      band: bandInWords(share),
      became: share.became,
      outcome: ofEvidence(share.of.outcome),
      percent: percent(share.percent / 100),
      low: fixed(share.low95, 0),
      high: fixed(share.high95, 0),
      population: ofEvidence(share.of.population),
      cited: ofEvidence(share.of.cited),
    },
  )

function cutOffInWords({ cutOff, valueD, side }: CutOffAnswer): string {
  const { lowD, highD, isAtCutOffAtRisk, cited } = cutOff
  const compared = say(
    "{quantity, select, sphere {Sphere} other {Spherical equivalent}} {value} {place, select, below {is below} at-or-below {is at or below} among {lies among} not-below {is not below} other {is not at or below}} {edge} ({whom}).",
    {
      quantity: cutOff.quantity,
      value: power(valueD),
      place: placeOf(side, isAtCutOffAtRisk),
      edge:
        lowD === highD
          ? power(lowD)
          : say("the cut-offs tried, {low} to {high}", { low: power(lowD), high: power(highD) }),
      whom: cutOff.grade
        ? say("{grade}, taken here for {ages}", { grade: ofEvidence(cutOff.grade), ages: ages(cutOff) })
        : ages(cutOff),
    },
  )
  const from = `${ofEvidence(cited)}, ${ofEvidence(cutOff.population)}; ${obtainedInWords(cutOff)}`
  return sentence(`${compared} ${ratesInWords(cutOff)} ${from}`)
}

function placeOf(side: CutOffAnswer["side"], isAtCutOffAtRisk: boolean): string {
  if (side === "between") return "among"
  return `${side === "beyond" ? "not-" : ""}${isAtCutOffAtRisk ? "at-or-below" : "below"}`
}

function ratesInWords({ outcome, sensitivity, specificity }: CutOffAnswer["cutOff"]): string {
  if (!sensitivity) return say("The cut-off for {outcome}.", { outcome: ofEvidence(outcome) })
  return say("Told {outcome} with sensitivity {sensitivity}, specificity {specificity}.", {
    outcome: ofEvidence(outcome),
    sensitivity: rateInWords(sensitivity),
    specificity: rateInWords(specificity ?? ""),
  })
}

/** "0.716 to 0.905", as the evidence has it, with the signs of the language. */
function rateInWords(rate: string): string {
  const [low = "", high] = rate.split(" to ").map((figure) => withDecimalSign(figure))
  return high === undefined ? low : say("{low} to {high}", { low, high })
}

const obtainedInWords = ({ isSecondHand, obtained }: CutOffAnswer["cutOff"]): string =>
  isSecondHand
    ? say("second-hand, {obtained}; the study's own text was not read", { obtained: ofEvidence(obtained) })
    : say("read as {obtained}", { obtained: ofEvidence(obtained) })

const ages = ({ youngestAge, oldestAge }: CutOffAnswer["cutOff"]): string =>
  youngestAge === oldestAge
    ? say("age {age}", { age: youngestAge })
    : say("ages {youngest} to {oldest}", { youngest: youngestAge, oldest: oldestAge })

function bandInWords({ fromD, belowD }: NonNullable<OnsetRefraction["share"]>): string {
  if (fromD === null) return say("less than {power}", { power: power(belowD ?? 0) })
  return belowD === null
    ? say("{power} or more", { power: power(fromD) })
    : say("{from} to less than {below}", { from: power(fromD), below: power(belowD) })
}

function parentsInWords({ myopicParents, odds }: NonNullable<BeforeMyopia["parents"]>): readonly string[] {
  if (myopicParents === 0) return [say("Neither parent is myopic.")]
  const ratios = odds.map(({ oddsRatio, low95, high95, cited }) =>
    say("{ratio} (95 % {low} to {high}; {cited})", {
      ratio: fixed(oddsRatio),
      low: fixed(low95),
      high: fixed(high95),
      cited: ofEvidence(cited),
    }),
  )
  return [
    say(
      "{myopicParents, plural, one {One parent is myopic} other {Both parents are myopic}}. Odds of myopia against children of parents without it: {ratios}.",
      { myopicParents, ratios: listed(ratios) },
    ),
  ]
}
