import type { Evidence } from "../evidence/types.js"
import type {
  Assessment,
  Belief,
  Chance,
  EyeAssessment,
  Finding,
  PracticeSettings,
  Rate,
} from "./assessment.js"
import { ageYears } from "./calendar.js"
import type { CalendarDate, Course, Eye } from "./course.js"
import { eyeIndex } from "./growth/observations.js"
import { distributionOf } from "./growth/posterior.js"
import { refusal, type Study, study } from "./growth/study.js"
import { METHOD_VERSION } from "./method.js"
import { type Mixture, mixtureMean, mixtureQuantile, mixtureSd } from "./numeric/mixture.js"
import { plannedReviews } from "./protocol/planned-reviews.js"
import type { Protocol } from "./protocol/protocol.js"
import { standardProtocol } from "./protocol/standard.js"
import { realTreatments } from "./protocol/treatment-course.js"
import { lengthPosition } from "./reference/length-position.js"
import { afterStop } from "./response/after-stop.js"
import { chances } from "./response/chances.js"
import { checks } from "./response/checks.js"
import { detectableChangeMm, startingFigure } from "./response/detectable-change.js"
import { doubtfulFigures, findingInDoubt, growthInDoubt, inDoubt } from "./response/doubtful-figures.js"
import { finding, type Weighing, waldLimits, weighing } from "./response/finding.js"
import { growthState } from "./response/growth-state.js"
import { growthWindow } from "./response/growth-window.js"
import { concerns } from "./safety/concerns.js"
import { say } from "./say.js"
import { defaultSettings } from "./settings.js"

export interface AssessInput {
  readonly course: Course
  readonly asOf: CalendarDate
  readonly evidence: Evidence
  readonly settings?: PracticeSettings
  readonly protocol?: Protocol
}

/**
 * What a child's own figures support on a day: about the growth, apart from it about the treatment, what would
 * settle it, and what to look at first. Pure: the same course, day and evidence give the same answer anywhere.
 *
 * Lengths in mm, rates in mm per year, intervals 95 % unless named. A child outside the ages of the evidence gets
 * a named refusal in `refused` and no numbers.
 */
export function assess({
  course,
  asOf,
  evidence,
  settings = defaultSettings,
  protocol = standardProtocol,
}: AssessInput): Assessment {
  const input = { course, asOf, evidence, settings, protocol }
  const refused = refusal(input)
  if (refused !== null) return refusedAssessment(input, refused)
  const child = study(input)
  const weighed = weighing(child)
  const doubts = doubtfulFigures(child)
  const doubt = inDoubt(child, doubts)
  const asked = finding(child, weighed)
  const found = doubt === null ? asked : findingInDoubt(asked, doubt)
  const growth = growthState(child)
  // Once there is an answer, or none is to be had, there is no chance of one to tell. A ratio past its limit without an
  // answer waits for more nights with a drop, not for reviews.
  const coming =
    asked.state === "cannot-tell-yet" && !isPastLimits(asked) && child.myopia !== "not-myopic"
      ? comingChances(child, weighed, protocol)
      : []
  return {
    ...head(input),
    eyes: { right: eyeAssessment(child, "right"), left: eyeAssessment(child, "left") },
    finding: { ...found, earliestAnswer: earliestAnswer(child, found.state, weighed, coming) },
    growth: doubt === null ? growth : growthInDoubt(growth, doubt),
    chances: coming,
    concerns: concerns({ course, today: asOf, protocol }),
    checks: checks(child, doubts),
    beliefs: beliefs(child),
    afterStop: afterStop(child, doubt),
  }
}

// Too early for any finding a ratio may lie anywhere, without a lean, and a later review be the first to count.
const isPastLimits = ({ likelihoodRatio, lower, lean }: Omit<Finding, "earliestAnswer">): boolean =>
  likelihoodRatio !== null && lean !== null && likelihoodRatio <= lower

function head({ course, asOf, evidence }: { course: Course; asOf: CalendarDate; evidence: Evidence }) {
  return {
    asOf,
    ageYears: ageYears({ born: course.child.born, on: asOf }),
    method: { version: METHOD_VERSION, parameters: evidence.growth.version },
  }
}

function refusedAssessment(input: Required<AssessInput>, refused: string): Assessment {
  const treated = realTreatments(input.course).some(({ from }) => from <= input.asOf)
  const eye: EyeAssessment = {
    length: null,
    rate: null,
    natural: null,
    emmetropic: null,
    detectableChangeMm: null,
    position: { refused },
  }
  return {
    ...head(input),
    eyes: { right: eye, left: eye },
    finding: {
      state: treated ? "cannot-tell-yet" : "no-treatment",
      treatment: null,
      likelihoodRatio: null,
      lean: null,
      ...waldLimits(input.settings),
      earliestAnswer: null,
      reasons: [refused],
    },
    growth: { state: "unclear", probabilities: null, mmPerYear: null, reasons: [refused] },
    chances: [],
    concerns: concerns({ course: input.course, today: input.asOf, protocol: input.protocol }),
    checks: [],
    beliefs: [],
    refused,
  }
}

function eyeAssessment(child: Study, eye: Eye): EyeAssessment {
  const { course, asOf, evidence } = child
  const index = eyeIndex(eye)
  const figures = child.lengths.filter((figure) => figure.eye === index)
  const last = figures.at(-1)
  if (!last) {
    return {
      length: null,
      rate: null,
      natural: null,
      emmetropic: null,
      detectableChangeMm: null,
      position: {
        refused: say("no length of the {eye, select, right {right} other {left}} eye has been measured", {
          eye,
        }),
      },
    }
  }
  const now = distributionOf(child.posterior, [{ eye: index, ageYears: last.ageYears, coefficient: 1 }])
  const length = {
    mm: mixtureMean(now),
    low95: mixtureQuantile(now, 0.025),
    high95: mixtureQuantile(now, 0.975),
  }
  const position = lengthPosition({ child: course.child, mm: last.value, ageYears: last.ageYears, evidence })
  const window = growthWindow({ course, asOf, eyes: [eye] })
  if (!window || figures.length < 2) {
    const alone = detectableChangeMm({ first: last, last, parameters: evidence.growth })
    return { length, rate: null, natural: null, emmetropic: null, detectableChangeMm: alone, position }
  }
  const [fromAge, toAge] = [window.from, window.to].map((on) =>
    ageYears({ born: course.child.born, on }),
  ) as [number, number]
  const grown = distributionOf(child.posterior, [
    { eye: index, ageYears: toAge, coefficient: 1 },
    { eye: index, ageYears: fromAge, coefficient: -1 },
  ])
  const years = toAge - fromAge
  const over = (growth: Study["natural"]) =>
    (growth.cumulativeMm(toAge) - growth.cumulativeMm(fromAge)) / years
  const start = startingFigure(figures, fromAge)
  return {
    length,
    rate: { ...rateOf(grown, years), from: window.from, to: window.to },
    natural: child.myopia === "not-myopic" ? null : { mmPerYear: over(child.natural) },
    emmetropic: { mmPerYear: over(child.emmetropic) },
    detectableChangeMm: detectableChangeMm({ first: start, last, parameters: evidence.growth }),
    position,
  }
}

function rateOf(grown: Mixture, years: number): Omit<Rate, "from" | "to"> {
  const at = (p: number) => mixtureQuantile(grown, p) / years
  return {
    mmPerYear: mixtureMean(grown) / years,
    low95: at(0.025),
    high95: at(0.975),
    low90: at(0.05),
    high90: at(0.95),
    low50: at(0.25),
    high50: at(0.75),
  }
}

function comingChances(child: Study, weighed: Weighing | null, protocol: Protocol): readonly Chance[] {
  if (!weighed) return []
  const { reviews, plannedStop } = plannedReviews({ course: child.course, protocol, today: child.asOf })
  return chances({ study: child, weighed, reviews, plannedStop })
}

/** The first review by which an answer is at least as likely as not, weighing both hypotheses by what is known. */
function earliestAnswer(
  child: Study,
  state: string,
  weighed: Weighing | null,
  coming: readonly Chance[],
): CalendarDate | null {
  if (!weighed) return null
  if (state === "slowed" || state === "not-slowed") {
    return child.course.visits[child.lengths.at(-1)?.visit ?? -1]?.date ?? null
  }
  const works = 1 / (1 + Math.exp(-weighed.logRatio))
  return coming.find((chance) => works * chance.ifItWorks + (1 - works) * chance.ifNot >= 0.5)?.review ?? null
}

function beliefs(child: Study): readonly Belief[] {
  const { posterior, model } = child
  const paceSd = Math.sqrt(Math.exp(child.factored.logPaceSd ** 2) - 1)
  const moments = (value: (i: number) => number, variance: (i: number) => number) => {
    const mixture: Mixture = {
      weights: posterior.nodes.map((node) => node.weight),
      means: posterior.nodes.map((_, i) => value(i)),
      sds: posterior.nodes.map((_, i) => Math.sqrt(variance(i))),
    }
    return { mean: mixtureMean(mixture), sd: mixtureSd(mixture) }
  }
  const k = model.columns.length
  return [
    {
      what: say("pace, multiple of natural growth"),
      prior: { mean: 1, sd: paceSd },
      posterior: moments(
        (i) => posterior.nodes[i]?.multiple ?? 1,
        () => 0,
      ),
    },
    ...model.columns.map((column, j) => ({
      what: say("share of natural growth withheld by {treatment}", { treatment: column.label }),
      prior: column.prior,
      posterior: moments(
        (i) => posterior.nodes[i]?.mean[j] ?? 0,
        (i) => posterior.nodes[i]?.covariance[j * k + j] ?? 0,
      ),
    })),
  ]
}
