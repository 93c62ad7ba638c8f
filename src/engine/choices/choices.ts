import type { Evidence } from "../../evidence/types.js"
import type { Estimate, PracticeSettings } from "../assessment.js"
import { addMonths, ageYears } from "../calendar.js"
import type { CalendarDate, Course, Eye } from "../course.js"
import { keyOf } from "../growth/prescribed.js"
import { refusal, type Study, study } from "../growth/study.js"
import { treatmentPrior } from "../growth/treatment-prior.js"
import type { PracticeRules } from "../practice-rules.js"
import type { StartCaution } from "../safety/caution.js"
import { startCautions } from "../safety/start-cautions.js"
import { say } from "../say.js"
import { defaultSettings } from "../settings.js"
import { assumptionsOf } from "./assumptions.js"
import { type ConsentNeed, consentNeeds } from "./consent-needs.js"
import { courseUnder } from "./course-under.js"
import { type EvidenceStrength, evidenceStrength, type TrialRow } from "./evidence-strength.js"
import { type OptionCost, optionCost } from "./option-cost.js"
import { type Option, optionList } from "./option-list.js"
import { BY_AGE_YEARS, type By18, by18, longerEye, withheldMm } from "./outlook-figures.js"
import { plannedStop } from "./planned-stop.js"
import { startRemarks } from "./start-remarks.js"
import { type UnwantedEffect, type UnwantedEvidence, unwantedEffects } from "./unwanted-effects.js"
import { type Outlook, outlooks } from "./what-if.js"

export interface ChoicesInput {
  readonly course: Course
  readonly asOf: CalendarDate
  readonly evidence: Evidence
  /** The treatment documents of the evidence. */
  readonly treatmentEvidence: TreatmentEvidence
  readonly settings?: PracticeSettings
  readonly rules: PracticeRules
  /** Drops of 0.5 % and more as well. */
  readonly withStrong?: boolean
}

export interface TreatmentEvidence {
  readonly adverseEffects: UnwantedEvidence
  readonly trials: readonly TrialRow[]
  readonly opticalTreatments: { readonly arms: readonly TrialRow[] }
}

/** The options side by side, in an order that never depends on the child. None is marked, chosen or ranked. */
export interface Choices {
  readonly asOf: CalendarDate
  /** Set where no figures are given for this child; then there are no options either. */
  readonly refused?: string
  /** The eye whose length at 18 is given. */
  readonly eye: Eye | null
  /** Natural growth of this child in the next year without treatment, mm. */
  readonly untreatedNextYearMm: number | null
  readonly options: readonly ChoiceOption[]
  /** What the figures take for granted, in sentences. */
  readonly assumptions: readonly string[]
}

export interface ChoiceOption extends Pick<Option, "id" | "kind" | "name" | "parts" | "effect"> {
  readonly figures: OptionFigures | { readonly refused: string }
  /** Null for no treatment, and where no trial was read. */
  readonly strength: EvidenceStrength | null
  readonly unwanted: readonly UnwantedEffect[]
  readonly cost: OptionCost
  /** One for each part that needs consent; empty for no treatment. */
  readonly consent: readonly ConsentNeed[]
  /** What is to be known before drops are started and was answered with yes or not asked; empty without drops or once they are in use. */
  readonly cautions: readonly StartCaution[]
  readonly remarks: readonly string[]
}

export interface OptionFigures {
  /** Treated until 18; for no treatment, untreated. */
  readonly until18: By18
  /** Treated to the planned stop of the protocol, then not; null without a stop before 18, and for no treatment. */
  readonly asPlanned: (By18 & { readonly until: CalendarDate }) | null
  /** Against no treatment, at the child's own pace; null when less than a year is left to 18, and for no treatment. */
  readonly withheldNextYearMm: Estimate | null
}

/**
 * What each way of going on may bring this child, side by side: length at 18, chance of 26 mm, growth withheld in the
 * next year, how well that is known, unwanted effects, cost and consent. Pure, and worked out from one study of the
 * child, so that all options rest on the same pace.
 *
 * @example
 * choices({ course, asOf: "2026-11-25", evidence, treatmentEvidence, rules: noRules })
 */
export function choices(input: ChoicesInput): Choices {
  const { course, asOf, evidence, settings = defaultSettings } = input
  const asked = { course, asOf, evidence, settings }
  const nothing = {
    asOf,
    eye: null,
    untreatedNextYearMm: null,
    options: [],
    assumptions: [],
  }
  const refused = refusal(asked)
  if (refused !== null) return { ...nothing, refused }
  const child = study(asked)
  const why = refusalOf(child)
  if (why !== null) return { ...nothing, refused: why }

  const told = outlooks(child)
  const { rules, treatmentEvidence, withStrong } = input
  const coverage = coverageOf(child)
  const next = yearAhead(child)
  const rows = [...treatmentEvidence.trials, ...treatmentEvidence.opticalTreatments.arms]
  const optionOf = (option: Option): ChoiceOption => {
    const { id, kind, name, parts, effect } = option
    const figures = figuresOf({ option, child, told, share: coverage ?? 1, rules })
    const open = "refused" in figures ? null : outlookOf({ option, child, told, share: coverage ?? 1 })
    return {
      id,
      kind,
      name,
      parts,
      effect,
      figures,
      strength: effect === null ? null : evidenceStrength(effect, rows),
      unwanted: unwantedEffects(parts, treatmentEvidence.adverseEffects),
      cost: optionCost({ option, child, outlook: open, rules }),
      consent: consentNeeds({ parts, course, on: asOf, wordings: rules.consentWordings }),
      cautions: cautionsOf(option, { course, today: asOf }),
      remarks: startRemarks({ option, course, asOf }),
    }
  }
  return {
    asOf,
    eye: longerEye(child),
    untreatedNextYearMm: next === null ? null : told.untreatedMm(next),
    options: optionList({ course, asOf, parameters: evidence.growth, withStrong }).map(optionOf),
    assumptions: assumptionsOf({ child, coverage }),
  }
}

function refusalOf(child: Study): string | null {
  if (child.myopia === "not-myopic") {
    return say(
      "this child is not myopic: no treatment is compared, since none was studied in eyes like these",
    )
  }
  if (child.lengths.length === 0) return say("no length has been measured, so there is nothing to start from")
  // By birthdays: years of 365.25 days put one a day early or late.
  if (addMonths(child.course.child.born, 12 * BY_AGE_YEARS) <= child.asOf)
    return say("the evidence ends at {years} years", { years: BY_AGE_YEARS })
  return null
}

function cautionsOf(
  { kind, parts }: Option,
  asked: { readonly course: Course; readonly today: CalendarDate },
): readonly StartCaution[] {
  if (kind === "as-now") return []
  return parts
    .flatMap((treatment) => startCautions({ ...asked, treatment }))
    .filter(({ state }) => state !== "asked-no")
}

interface Asked {
  readonly option: Option
  readonly child: Study
  readonly told: ReturnType<typeof outlooks>
  /** Of the nights that drops are expected to cover. */
  readonly share: number
}

function figuresOf({ rules, ...asked }: Asked & { readonly rules: PracticeRules }): ChoiceOption["figures"] {
  const { option, child } = asked
  const { asOf, course } = child
  if (option.kind !== "nothing" && option.effect === null) return { refused: withoutTrial(option) }
  const open = outlookOf(asked)
  const until18 = by18(child, open)
  if (option.kind === "nothing") return { until18, asPlanned: null, withheldNextYearMm: null }
  const until = plannedStop({ course: courseUnder(option, { course, asOf }), today: asOf, rules })
  const untilAge = until === null ? null : ageYears({ born: course.child.born, on: until })
  const next = yearAhead(child)
  return {
    until18,
    asPlanned:
      until === null || untilAge === null || untilAge >= BY_AGE_YEARS
        ? null
        : { ...by18(child, outlookOf({ ...asked, untilAge })), until },
    withheldNextYearMm: next === null ? null : withheldMm(open, next),
  }
}

const withoutTrial = ({ parts }: Option): string =>
  parts.length > 1
    ? say("no trial of these together was read, and effects are never added up")
    : say("no trial of this treatment at this strength was read")

function outlookOf({
  option,
  child,
  told,
  share,
  untilAge = Number.POSITIVE_INFINITY,
}: Asked & { readonly untilAge?: number }): Outlook {
  if (option.kind === "nothing") return told.under(null)
  if (option.kind === "as-now") return told.asNow(untilAge)
  const given = option.parts.map((part) => ({ ...part, from: child.asOf }))
  const hasDrops = option.parts.some(({ kind }) => kind === "atropine")
  return told.under({
    key: keyOf(option.parts),
    prior: treatmentPrior(given, child.evidence.growth).prior,
    share: hasDrops ? share : 1,
    toAge: untilAge,
  })
}

const yearAhead = ({ ageYears: fromAge }: Study) =>
  fromAge + 1 > BY_AGE_YEARS ? null : { fromAge, toAge: fromAge + 1 }

/** Share of nights that bottles covered so far, of the drops begun last; null where no bottle is recorded. */
function coverageOf({ model }: Study): number | null {
  return (
    model.columns.filter(({ coverage }) => coverage !== null).toSorted((a, b) => b.startAge - a.startAge)[0]
      ?.coverage ?? null
  )
}
