import type { Chance, Finding } from "../../engine/assessment.js"
import { dayInWords, msg, say } from "../../engine/say.js"
import { risk } from "../../evidence/clinical.js"
import type { Block } from "../document.js"
import { childWords, millimetres } from "./child-words.js"
import { type FamilyReading, meansOf } from "./family-reading.js"
import { grownMm } from "./growth-answer.js"
import { ofTen } from "./of-ten.js"

/** What the figures mean, and apart from it whether the treatment is behind them. */
export function whatItMeans(reading: FamilyReading): readonly Block[] {
  const texts = [...comparison(reading), ...mayBecomeMyopic(reading), whyLength()]
  return [
    { kind: "heading", level: 1, text: say("What it means") },
    ...texts.map((text) => ({ kind: "text", text }) as const),
    ...isItTheTreatment(reading),
    ...afterTheStop(reading),
  ]
}

function comparison(reading: FamilyReading): readonly string[] {
  const grown = grownMm(reading)
  if (!grown) return []
  const { months } = grown
  const usual = millimetres(grown.emmetropicMm)
  if (grown.naturalMm === undefined)
    return [
      say(
        "In {months, plural, one {# month} other {# months}}, eyes that are not short-sighted grow about {usual} mm at this age.",
        { months, usual },
      ),
    ]
  return [
    say(
      "In {months, plural, one {# month} other {# months}}, the eyes of {sex, select, female {short-sighted girls} other {short-sighted boys}} of this age grow about {natural} mm without treatment, and eyes that are not short-sighted about {usual} mm.",
      { sex: childWords(reading.input).sex, natural: millimetres(grown.naturalMm), months, usual },
    ),
  ]
}

/** What became of children with such eyes in a study, where one followed children of this age. */
function mayBecomeMyopic({ beforeMyopia }: FamilyReading): readonly string[] {
  if (!beforeMyopia || "refused" in beforeMyopia.refraction) return []
  const { share } = beforeMyopia.refraction
  if (share === null) return []
  return [
    say(
      "In one study of {children} children of this age with eyes like these, {became} became short-sighted within 5 years.",
      { children: share.n, became: share.became },
    ),
  ]
}

/** The row of the evidence that says why a millimetre counts. */
export function maculopathyPerDioptre(): { readonly percent: number; readonly source: string } {
  const row = risk.per_dioptre.find(({ outcome }) => outcome === "myopic maculopathy prevalence")
  if (row?.reduction_if_1D_less_percent === undefined)
    throw new Error("the evidence lost its row on maculopathy per dioptre")
  return { percent: row.reduction_if_1D_less_percent, source: `clinical/${row.source_id}` }
}

const whyLength = (): string =>
  say(
    "Why length counts: among adults, harm at the back of the eye was about {percent} % less common for each dioptre (D) less of short sight.",
    { percent: maculopathyPerDioptre().percent },
  )

function isItTheTreatment(reading: FamilyReading): readonly Block[] {
  const { finding } = reading.assessment
  const means = meansOf(reading)
  if (finding.state === "no-treatment" || means === "none") return []
  const heading = say(
    "{means, select, drops {Is it the drops?} glasses {Is it the glasses?} lenses {Is it the lenses?} other {Is it the treatment?}}",
    { means },
  )
  return [
    { kind: "heading", level: 2, text: heading },
    { kind: "text", text: findingInWords(reading) },
  ]
}

function findingInWords(reading: FamilyReading): string {
  const { assessment, isInDoubt } = reading
  const { finding } = assessment
  if (finding.state === "slowed")
    return say(
      "Most likely yes. What we measured is {many, select, yes {more than 100 times} other {about {times} times}} as likely with a treatment that works as in the trials as with one that does nothing. No answer for one child is ever certain.",
      timesOf(finding.likelihoodRatio ?? 1),
    )
  if (finding.state === "not-slowed")
    return say(
      "Probably not. What we measured is {many, select, yes {more than 100 times} other {about {times} times}} as likely with a treatment that does nothing as with one that works as in the trials. No answer for one child is ever certain.",
      timesOf(1 / (finding.likelihoodRatio ?? 1)),
    )
  if (isInDoubt) return say("We will look at this when the figure that looks wrong has been measured again.")
  if (isForNights(reading))
    return say(
      "We cannot tell. On many nights there was no bottle in date, and that alone may explain what we saw.",
    )
  const chance = toldChance(assessment.chances, finding)
  if (chance === null)
    return say(
      "We cannot tell. In one child it is hard to tell a treatment from the child's own pace. What counts most is how fast the eyes grow.",
    )
  const values = { ...withoutSex(reading), ...ofTen(chance.ifItWorks), date: dayInWords(chance.review) }
  return say(LEANS[finding.lean ?? "none"], values)
}

const LEANS = {
  none: msg(
    "We cannot tell yet. Of 10 children like {named, select, yes {{name}} other {your child}} whose treatment works, {share, select, under {fewer than {count}} over {more than {count}} other {about {count}}} would give us a clear answer by {date}.",
  ),
  slowed: msg(
    "Perhaps, but we cannot tell yet. Of 10 children like {named, select, yes {{name}} other {your child}} whose treatment works, {share, select, under {fewer than {count}} over {more than {count}} other {about {count}}} would give us a clear answer by {date}.",
  ),
  "not-slowed": msg(
    "Perhaps not, but we cannot tell yet. Of 10 children like {named, select, yes {{name}} other {your child}} whose treatment works, {share, select, under {fewer than {count}} over {more than {count}} other {about {count}}} would give us a clear answer by {date}.",
  ),
} as const

const withoutSex = ({ input }: FamilyReading) => {
  const { name, named } = childWords(input)
  return { name, named }
}

const timesOf = (ratio: number) => ({ many: ratio > 100 ? "yes" : "no", times: Math.round(ratio) })

/** The figures are past the limit against an effect, and the engine gives no verdict for want of nights with a drop. */
const isForNights = ({ assessment: { finding }, supply }: FamilyReading): boolean =>
  supply.isPoor === true && finding.likelihoodRatio !== null && finding.likelihoodRatio <= finding.lower

/** At the review by which an answer is likelier than not, or at the last that is planned. */
function toldChance(
  chances: readonly Chance[],
  { earliestAnswer }: Pick<Finding, "earliestAnswer">,
): Chance | null {
  return chances.find(({ review }) => review === earliestAnswer) ?? chances.at(-1) ?? null
}

const AFTER_STOP = {
  "no-rebound-seen": msg(
    "So far the eyes do not seem to catch up what the treatment held back. To grow again as without treatment is what we expect.",
  ),
  "rebound-likely": msg(
    "The eyes seem to have grown faster than eyes that were never treated. Some of what was held back may be lost again.",
  ),
  "cannot-tell-yet": msg(
    "We cannot tell yet whether the eyes catch up what the treatment held back. The next visits will help to show it.",
  ),
} as const

function afterTheStop({ assessment: { afterStop }, isInDoubt }: FamilyReading): readonly Block[] {
  if (!afterStop) return []
  return [
    { kind: "heading", level: 2, text: say("Do the eyes catch up after the stop?") },
    { kind: "text", text: say(AFTER_STOP[isInDoubt ? "cannot-tell-yet" : afterStop.state]) },
  ]
}
