import type { Estimate } from "../assessment.js"
import type { CostPer01Mm } from "../cost/cost-per-01-mm.js"
import { moneyInWords } from "../cost/money.js"
import { msg, say } from "../say.js"
import { fixed, percent } from "../words.js"
import type { ChoiceOption, Choices } from "./choices.js"
import { strengthInWords } from "./evidence-strength.js"
import type { ChanceEstimate } from "./outlook-figures.js"

/** One figure of every option, in the order of the options. A cell is read line by line; it is never empty. */
export interface ChoicesRow {
  readonly id: string
  readonly label: string
  /** Set apart from the label where it is read: what the interval is, over how long. */
  readonly note: string | null
  readonly cells: readonly (readonly string[])[]
}

/**
 * The options as a table: rows are figures, columns options. A page, a terminal and a recorded decision all take their
 * words from here, so that what is kept is what was shown.
 */
export function choicesTable(choices: Choices): readonly ChoicesRow[] {
  const { options, eye } = choices
  const isPlanned = options.some(({ figures }) => !("refused" in figures) && figures.asPlanned !== null)
  const row = (
    id: string,
    label: string,
    note: string | null,
    cell: (option: ChoiceOption) => readonly string[],
  ): ChoicesRow => ({ id, label, note, cells: options.map(cell) })
  const planned = !isPlanned
    ? []
    : [
        row("planned-length", plannedLengthLabel(eye), say(INTERVAL), (option) =>
          figure(option, ({ asPlanned }) =>
            asPlanned
              ? [lengthInWords(asPlanned.lengthMm), say("stopped on {date}", { date: asPlanned.until })]
              : [NONE],
          ),
        ),
        row(
          "planned-chance",
          say("Chance of 26 mm by 18, treated as planned"),
          say(CHANCE_INTERVAL),
          (option) =>
            figure(option, ({ asPlanned }) => (asPlanned ? [chanceInWords(asPlanned.chance26mm)] : [NONE])),
        ),
      ]
  return [
    row("length", keptUpLengthLabel(eye), say(INTERVAL), (option) =>
      figure(option, ({ until18 }) => [lengthInWords(until18.lengthMm)]),
    ),
    row("chance", say("Chance of 26 mm by 18, kept up until then"), say(CHANCE_INTERVAL), (option) =>
      figure(option, ({ until18 }) => [chanceInWords(until18.chance26mm)]),
    ),
    ...planned,
    row("withheld", say("Growth withheld in the next year"), say(INTERVAL), (option) =>
      figure(option, (figures) => withheldCell(option, figures.withheldNextYearMm, choices)),
    ),
    row("strength", say("How well the effect is known"), null, ({ strength, kind }) => [
      strength === null ? (kind === "nothing" ? NONE : say("no trial was read")) : strengthInWords(strength),
    ]),
    row("unwanted", say("Unwanted effects"), say("each trial asked in its own way"), ({ unwanted, kind }) =>
      unwanted.length === 0
        ? [kind === "nothing" ? NONE : say("no figure was read; that does not mean none")]
        : unwanted.map(({ from, figures }) => `${from}: ${figures.join(", ")}`),
    ),
    row("cost", costLabel(options), null, costCell),
    row("per-tenth", perTenthLabel(), say("over the same months"), perTenthCell),
    row("consent", say("Consent"), null, ({ consent }) =>
      consent.length === 0 ? [say("none needed")] : consent.map(({ words }) => words),
    ),
    row("before", say("Before it is started"), null, beforeCell),
  ]
}

/** What every option says alike need be said once only. */
export const isSameForAll = ({ cells }: Pick<ChoicesRow, "cells">): boolean =>
  cells.length > 1 && new Set(cells.map((lines) => lines.join("\n"))).size === 1

/** Stands where there is nothing to say. */
export const NONE = "\u2013"
const INTERVAL = msg("95 % interval in brackets")
const CHANCE_INTERVAL = msg("in brackets: between, as pace and effect may be (95 %)")

const plannedLengthLabel = (eye: Choices["eye"]): string =>
  say("Length of the {eye, select, right {right} other {left}} eye at 18, treated as planned", {
    eye: String(eye),
  })

const keptUpLengthLabel = (eye: Choices["eye"]): string =>
  say("Length of the {eye, select, right {right} other {left}} eye at 18, kept up until then", {
    eye: String(eye),
  })

const perTenthLabel = (): string => say("Cost of each {tenth} mm withheld", { tenth: fixed(0.1, 1) })

/** "25.12 mm (24.39 to 25.86)" */
export const lengthInWords = ({ mm, low95, high95 }: Estimate): string =>
  say("{mm} mm ({low} to {high})", { mm: fixed(mm), low: fixed(low95), high: fixed(high95) })

/** A model is never wholly certain, whatever its sums round to. */
const notCertain = (chance: number): number => Math.min(Math.max(chance, 0.001), 0.999)

/** "23 % (under 1 % to 94 %)"; "under 1 %" where all three read alike. */
export function chanceInWords({ chance, low95, high95 }: ChanceEstimate): string {
  const [middle, low, high] = [chance, low95, high95].map((one) => percent(notCertain(one))) as [
    string,
    string,
    string,
  ]
  return middle === low && middle === high ? middle : say("{middle} ({low} to {high})", { middle, low, high })
}

function figure(
  { figures }: ChoiceOption,
  words: (known: Exclude<ChoiceOption["figures"], { readonly refused: string }>) => readonly string[],
): readonly string[] {
  return "refused" in figures ? [notGiven(figures.refused)] : words(figures)
}

const notGiven = (why: string): string => say("not given: {why}", { why })

function withheldCell(
  { kind, strength }: ChoiceOption,
  withheld: Estimate | null,
  { untreatedNextYearMm }: Choices,
): readonly string[] {
  if (kind === "nothing") {
    return untreatedNextYearMm === null
      ? [NONE]
      : [say("none; {mm} mm of growth is expected", { mm: fixed(untreatedNextYearMm) })]
  }
  if (withheld === null) return [say("not given: the evidence ends at 18 years")]
  return [lengthInWords(withheld), ...(strength?.mayBeNil ? [say("small, may be nil")] : [])]
}

function costLabel(options: readonly ChoiceOption[]): string {
  const plan = options
    .map(({ cost }) => (cost.kind === "plan" ? cost.plan : null))
    .find((one) => one !== null)
  return plan
    ? say("Cost of the next {months, plural, one {# month} other {# months}}", { months: plan.months })
    : say("Cost")
}

function costCell({ cost }: ChoiceOption): readonly string[] {
  if (cost.kind === "refused") return [notGiven(cost.why)]
  const { currency, totals, withoutFee } = cost.plan
  return [
    say("not covered {sum}", { sum: moneyInWords(totals.notCoveredCents, currency) }),
    say("uncertain {sum}", { sum: moneyInWords(totals.uncertainCents, currency) }),
    say("covered {sum}", { sum: moneyInWords(totals.coveredCents, currency) }),
    ...(withoutFee.length === 0
      ? []
      : [say("without a fee, not counted: {what}", { what: withoutFee.join(", ") })]),
  ]
}

function perTenthCell({ cost, kind }: ChoiceOption): readonly string[] {
  if (cost.kind === "refused") return [notGiven(cost.why)]
  return kind === "nothing" ? [NONE] : perTenthInWords(cost.per01Mm)
}

function perTenthInWords(per: CostPer01Mm): readonly string[] {
  if (per.kind === "refused") return [notGiven(per.why)]
  const { currency, notCovered, withUncertain } = per
  const money = ({ cents, low95Cents, high95Cents }: typeof notCovered) =>
    say("{middle} ({low} to {high})", {
      middle: moneyInWords(cents, currency),
      low: moneyInWords(low95Cents, currency),
      high: moneyInWords(high95Cents, currency),
    })
  const isSame = notCovered.cents === withUncertain.cents
  return [
    say("not covered {sum}", { sum: money(notCovered) }),
    ...(isSame ? [] : [say("with what is uncertain {sum}", { sum: money(withUncertain) })]),
  ]
}

function beforeCell({ cautions, remarks }: ChoiceOption): readonly string[] {
  const known = cautions
    .filter(({ state }) => state === "asked-yes")
    .map(({ name, says, note }) =>
      note === null
        ? say("{name}: yes; {says}", { name, says })
        : say("{name}: yes ({note}); {says}", { name, note, says }),
    )
  const open = cautions.filter(({ state }) => state === "not-asked").length
  const cells = [
    ...known,
    ...(open === 0
      ? []
      : [say("{open, plural, one {# caution} other {# cautions}} not asked about yet", { open })]),
    ...remarks,
  ]
  return cells.length === 0 ? [NONE] : cells
}

/** The cautions that were not asked about for any of the options, each once. */
export function notAskedAbout({ options }: Pick<Choices, "options">): readonly string[] {
  const open = options.flatMap(({ cautions }) => cautions).filter(({ state }) => state === "not-asked")
  return [...new Set(open.map(({ name }) => name))]
}
