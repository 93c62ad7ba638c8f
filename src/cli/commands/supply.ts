import { dayNumber } from "../../engine/calendar.js"
import type { CalendarDate } from "../../engine/course.js"
import { noRules } from "../../engine/practice-rules.js"
import { protocolFor } from "../../engine/protocol/choose-protocol.js"
import type { Bottle } from "../../engine/supply/bottles.js"
import { ADHERENCE_RULE } from "../../engine/supply/definition.js"
import { type NextBottle, type SupplyReport, supplyReport } from "../../engine/supply/supply-report.js"
import { counted, percent, sentence } from "../../engine/words.js"
import { courseInput } from "../course-input.js"
import type { ExitCode, Io } from "../io.js"
import { toldJson, toldProblems } from "../told.js"
import { dateInWords, paragraph, section } from "../words.js"

export interface SupplyArguments {
  readonly file: string
  readonly asOf?: CalendarDate | undefined
  readonly json?: boolean | undefined
}

/** Bottles, nights covered, gaps and the next bottle due. */
export async function run(args: SupplyArguments, io: Io): Promise<ExitCode> {
  const { json = false } = args
  const input = await courseInput(args, io)
  if ("problems" in input) return toldProblems(input.problems, { io, json })
  const { course, asOf, notes } = input
  const protocol = protocolFor({ course, today: asOf, rules: noRules })
  const report = supplyReport({ course, asOf, protocol })
  if (json) return toldJson({ ...report, checks: notes }, io)
  io.out(supplyText(report))
  return 0
}

function supplyText(report: SupplyReport): string {
  if (report.window === null) {
    const none = `No drops were prescribed before ${dateInWords(report.asOf)}.`
    return `${paragraph(none, 0)}\n${section("Bottles", report.bottles.map(bottleText))}`
  }
  return [
    section("Nights covered", coverageTexts(report)),
    section(
      "Gaps",
      report.gaps.map(
        ({ from, to, nights }) =>
          `${spanText({ from, to })}: ${counted(nights, "night")} without a bottle in date.`,
      ),
    ),
    section("Next bottle", report.nextBottles.map(nextText)),
    section(
      "To look at",
      report.faults.map(({ path, why }) => `${path}: ${sentence(why)}`),
    ),
    section("Bottles", report.bottles.map(bottleText)),
    paragraph(`Proportion of days covered: ${report.definition}; ${ADHERENCE_RULE}.`, 0),
  ].join("")
}

function coverageTexts(report: SupplyReport): readonly string[] {
  const { daysPrescribed, daysCovered, proportionOfDaysCovered, proportionWithDrop, nightsReportedMissed } =
    report
  const { from, to } = report.window as NonNullable<SupplyReport["window"]>
  const poor = report.isPoor ? " Poor coverage." : ""
  const lines =
    proportionOfDaysCovered === null
      ? [`No bottle is recorded for the ${counted(daysPrescribed, "night")} from ${spanText({ from, to })}.`]
      : [
          `${daysCovered} of ${counted(daysPrescribed, "night")} from ${spanText({ from, to })} had a bottle in date: ` +
            `${percent(proportionOfDaysCovered)}.${nightsReportedMissed > 0 ? "" : poor}`,
        ]
  const missed =
    nightsReportedMissed > 0 && proportionWithDrop !== null
      ? [
          `The family told of ${counted(nightsReportedMissed, "missed night")}: ${percent(proportionWithDrop)} with those ` +
            `taken off, which is what the growth is judged by.${poor}`,
        ]
      : []
  const each =
    report.prescriptions.length < 2
      ? []
      : report.prescriptions.map((one) => {
          const share = one.proportionOfDaysCovered
          const told = share === null ? "no bottle on record" : percent(share)
          return `${sentence(`${one.prescription}, from ${dateInWords(one.from)}: ${told}`)}`
        })
  return [...lines, ...missed, ...each]
}

const spanText = ({ from, to }: { readonly from: CalendarDate; readonly to: CalendarDate }): string =>
  dayNumber(from) === dayNumber(to) ? dateInWords(from) : `${dateInWords(from)} to ${dateInWords(to)}`

function nextText({ treatment, state, orderBy, due, lead }: NextBottle): string {
  const whose = lead.from.kind === "pharmacy" ? lead.from.name : "the protocol"
  const when = state === "overdue" ? "overdue since" : "needed by"
  return (
    `A bottle of ${treatment}: ${when} ${dateInWords(due)}; to be asked for by ${dateInWords(orderBy)} ` +
    `(${counted(lead.days, "day")} ahead, by ${whose}).`
  )
}

const STATES: Readonly<Record<Bottle["state"], string>> = {
  "in-date": "in date",
  spare: "spare, not opened",
  "past-date": "past its date",
  "not-counted": "not counted",
}

function bottleText(bottle: Bottle): string {
  const { dispensed, opened, concentrationPercent, lot, pharmacy, lastNight, beyondUse, state } = bottle
  const last = beyondUse ?? lastNight
  const parts = [
    concentrationPercent === undefined ? "strength not stated" : `${concentrationPercent} %`,
    dispensed ? `handed out ${dateInWords(dispensed)}` : null,
    opened ? `opened ${dateInWords(opened)}` : "opening not recorded",
    last ? `last day of use ${dateInWords(last)}` : null,
    lot ? `lot ${lot}` : null,
    pharmacy ?? null,
    STATES[state],
  ]
  return sentence(parts.filter((part) => part !== null).join(", "))
}
