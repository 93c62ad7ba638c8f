import type { TableMapping } from "../../engine/practice-rules.js"
import { say, withDecimalSign } from "../../engine/say.js"
import type { DateFault } from "./dates.js"
import type { NumberFault } from "./numbers.js"

/** What helps to put a cell right, after what is allowed there. */

export function numberHint(fault: NumberFault, { decimalSign }: TableMapping): string | undefined {
  const hints: Readonly<Record<NumberFault, () => string | undefined>> = {
    letters: () => say("A figure stands alone in its cell: without a unit and without words."),
    "other-decimal-sign": () =>
      say('It was said that decimals are written with "{sign}".', { sign: decimalSign }),
    thousands: () => say("Thousands are written without a sign between them."),
    "not-a-number": () => undefined,
  }
  return hints[fault]()
}

export function dateHint(fault: DateFault, { dateOrder }: TableMapping): string | undefined {
  const hints: Readonly<Record<DateFault, () => string | undefined>> = {
    "two-digit-year": () => say("Its year needs four digits."),
    "other-order": () => say("It was said that days are written with the year first."),
    "serial-number": () =>
      say("It is the number a spreadsheet keeps for a day: show the column as a date and save it again."),
    "no-such-day": () =>
      dateOrder === "month-day-year"
        ? say("It was said that the month stands before the day.")
        : dateOrder === "day-month-year"
          ? say("It was said that the day stands before the month.")
          : undefined,
    "not-a-date": () => undefined,
  }
  return hints[fault]()
}

export const didYouMean = (figure: number): string =>
  say("Did you mean {figure}?", { figure: withDecimalSign(String(figure)) })
