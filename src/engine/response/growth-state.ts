import type { GrowthVerdict, KnownGrowthState } from "../assessment.js"
import { ageYears } from "../calendar.js"
import { EYES } from "../course.js"
import type { LengthTerm } from "../growth/child-model.js"
import { distributionOf } from "../growth/posterior.js"
import type { Stretch } from "../growth/stretch.js"
import type { Study } from "../growth/study.js"
import { mixtureCdf, mixtureMean, mixtureQuantile } from "../numeric/mixture.js"
import { msg, say } from "../say.js"
import { fixed, percent } from "../words.js"
import { detectableChangeMm, startingFigure } from "./detectable-change.js"
import { growthWindow } from "./growth-window.js"

/**
 * First question: is this eye growing slowly enough?
 *
 * The posterior of growth (mean of the eyes measured twice) over the window is set against two published lines
 * over the same dates, emmetropic growth E and natural growth N, on the scale f = (rate - E) / (N - E).
 * Nothing is said here of why it grows so. Where the eyes were not treated alike over the window, a mean would hide
 * the one that grows on, so the answer is that of the eye that grows faster.
 */
export function growthState(study: Study): GrowthVerdict {
  const nothing = { probabilities: null, mmPerYear: null } as const
  const window = growthWindow(study)
  const twice = ([0, 1] as const).filter(
    (eye) => study.lengths.filter((figure) => figure.eye === eye).length >= 2,
  )
  if (!window || twice.length === 0) {
    return {
      state: "unclear",
      ...nothing,
      reasons: [say("there are not yet two lengths of the same eye to tell growth from")],
    }
  }
  const born = study.course.child.born
  const fromAge = ageYears({ born, on: window.from })
  const toAge = ageYears({ born, on: window.to })
  const years = toAge - fromAge
  const grownOf = (eyes: readonly (0 | 1)[]) => {
    const terms = eyes.flatMap((eye): LengthTerm[] => [
      { eye, ageYears: toAge, coefficient: 1 / eyes.length },
      { eye, ageYears: fromAge, coefficient: -1 / eyes.length },
    ])
    return { eyes, grown: distributionOf(study.posterior, terms) }
  }
  const isApart = twice.length === 2 && treatedApart(study, [fromAge, toAge])
  const { eyes, grown } = isApart
    ? twice.map((eye) => grownOf([eye])).sort((a, b) => mixtureMean(b.grown) - mixtureMean(a.grown))[0]!
    : grownOf(twice)
  const over = (growth: Study["expected"]) => growth.cumulativeMm(toAge) - growth.cumulativeMm(fromAge)
  const emmetropicMm = over(study.emmetropic)
  const naturalMm = over(study.natural)
  const shown = {
    mmPerYear: mixtureMean(grown) / years,
    low95: mixtureQuantile(grown, 0.025) / years,
    high95: mixtureQuantile(grown, 0.975) / years,
    emmetropicMmPerYear: emmetropicMm / years,
    from: window.from,
    to: window.to,
    ...(isApart ? { eye: EYES[eyes[0]!] } : {}),
  }
  const notes = isApart
    ? [
        say(
          "the eyes are not treated alike: this is the {eye, select, right {right} other {left}} eye, the one that grows faster",
          { eye: eyes[0] === 0 ? "right" : "left" },
        ),
      ]
    : []
  if (study.myopia === "not-myopic") {
    return {
      state: "unclear",
      probabilities: null,
      ...shown,
      reasons: [
        ...notes,
        say(
          "no myopia: the growth is set against the emmetropic curve alone, never against untreated myopia",
        ),
      ],
    }
  }
  const { nearNormal, slowed, asUntreated } = study.settings.cuts
  const below = (f: number) => mixtureCdf(grown, emmetropicMm + f * (naturalMm - emmetropicMm))
  const [a, b, c] = [below(nearNormal), below(slowed), below(asUntreated)]
  const probabilities: Record<KnownGrowthState, number> = {
    "near-normal": a,
    "slowed-growth": b - a,
    "as-untreated": c - b,
    faster: 1 - c,
  }
  const verdict = { probabilities, ...shown, naturalMmPerYear: naturalMm / years }

  const figures = study.lengths.filter((figure) => figure.eye === eyes[0])
  const detectable = detectableChangeMm({
    first: startingFigure(figures, fromAge),
    last: figures.at(-1) as (typeof figures)[number],
    parameters: study.evidence.growth,
  })
  if (naturalMm - emmetropicMm < detectable) {
    return {
      state: "unclear",
      ...verdict,
      reasons: [...notes, tooClose(naturalMm - emmetropicMm, detectable, toAge)],
    }
  }
  const [likeliest, certainty] = Object.entries(probabilities).sort((x, y) => y[1] - x[1])[0] as [
    KnownGrowthState,
    number,
  ]
  if (certainty >= study.settings.certainty) return { state: likeliest, ...verdict, reasons: notes }
  return {
    state: "unclear",
    ...verdict,
    reasons: [
      ...notes,
      say("the likeliest state, {state}, is only {certainty} certain; {wanted} is asked for", {
        state: inWords(likeliest),
        certainty: sure(certainty),
        wanted: sure(study.settings.certainty),
      }),
      ...together(probabilities, study.settings.certainty),
    ],
  }
}

/** Whether one eye was on another treatment than the other at any time between two ages. */
const treatedApart = ({ model }: Study, [fromAge, toAge]: Stretch): boolean =>
  model.columns.some((column) =>
    column.exposures.some(
      ({ eye, ...exposure }) => eye !== undefined && exposure.fromAge < toAge && exposure.toAge > fromAge,
    ),
  )

const ORDER: readonly KnownGrowthState[] = ["near-normal", "slowed-growth", "as-untreated", "faster"]

/** When two neighbouring states share the doubt, what is sure of both is worth saying. */
function together(probabilities: Record<KnownGrowthState, number>, certainty: number): string[] {
  const pairs = ORDER.slice(1).map((second, i) => {
    const first = ORDER[i] as KnownGrowthState
    return { first, second, share: probabilities[first] + probabilities[second] }
  })
  const best = pairs.sort((a, b) => b.share - a.share)[0]
  return best && best.share >= certainty
    ? [
        say("{one} or {other} together: {certainty} certain", {
          one: inWords(best.first),
          other: inWords(best.second),
          certainty: sure(best.share),
        }),
      ]
    : []
}

const STATES: Readonly<Record<KnownGrowthState, string>> = {
  "near-normal": msg("near normal|growth"),
  "slowed-growth": msg("slowed growth|growth"),
  "as-untreated": msg("as untreated|growth"),
  faster: msg("faster|growth"),
}

const inWords = (state: KnownGrowthState): string => say(STATES[state])

/** As `percent`; a state is never said to be wholly certain. */
const sure = (share: number): string => percent(Math.min(share, 0.9999))

/** Growth of a grown-up eye leaves little to slow; before that it is the interval or the instrument that is too coarse. */
const ENDING_AGE_YEARS = 14

function tooClose(gapMm: number, detectableMm: number, age: number): string {
  return say(
    "{why, select, ending {growth is ending} other {too early or too coarse to tell}}: natural and emmetropic growth lie only {gap} mm apart over these dates, less than the {detectable} mm that this instrument can tell",
    {
      why: age >= ENDING_AGE_YEARS ? "ending" : "coarse",
      gap: fixed(gapMm),
      detectable: fixed(detectableMm),
    },
  )
}
