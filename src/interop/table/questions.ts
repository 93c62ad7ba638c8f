import type { MappedColumn, TableMapping } from "../../engine/practice-rules.js"
import { listed, say } from "../../engine/say.js"
import { limits } from "../course/limits.js"
import { cellText } from "./cell-text.js"
import { SEX_CODES } from "./cell-words.js"
import { namedField } from "./fields.js"
import { sharedOrders } from "./guess-mapping.js"
import { readNumber } from "./numbers.js"
import type { Question, QuestionKind, Sniffed } from "./table-types.js"

/**
 * What a person must answer before the table may be read; empty when nothing is open. What was answered (by a person, or by
 * a mapping that was saved) is named in `settled` and not asked again, unless the values contradict the answer.
 *
 * @example
 * questions(sniff(bytes), mapping, { settled: ["date-order"] })
 */
export function questions(
  sniffed: Sniffed,
  mapping: TableMapping,
  { settled = [] }: { readonly settled?: readonly QuestionKind[] } = {},
): readonly Question[] {
  const columns = mapping.columns.filter(({ heading }) => sniffed.headings.includes(heading))
  return [
    ...childColumn(columns),
    ...dateColumn(columns),
    ...eyeColumn(columns, mapping),
    ...dateOrder({ sniffed, columns, mapping, isSettled: settled.includes("date-order") }),
    ...decimalSign({ sniffed, columns, mapping, isSettled: settled.includes("decimal-sign") }),
    ...columns.flatMap((column) => unitOf(column, sniffed)),
    ...treatmentStart(columns),
  ]
}

const idOf = ({ field }: MappedColumn): string => namedField(field)?.field.id ?? ""
const groupOf = ({ field }: MappedColumn): string => namedField(field)?.field.group ?? ""

function childColumn(columns: readonly MappedColumn[]): readonly Question[] {
  if (columns.some((column) => ["number", "name", "givenName", "familyName"].includes(idOf(column))))
    return []
  const why = say("Which column says whose row it is: a number or a name?")
  return [{ kind: "child-column", headings: [], choices: [], why }]
}

function dateColumn(columns: readonly MappedColumn[]): readonly Question[] {
  const figures = columns.filter(
    (column) =>
      groupOf(column) === "eye" || (groupOf(column) === "glasses" && namedField(column.field)?.field.perEye),
  )
  if (
    figures.length === 0 ||
    columns.some((column) => idOf(column) === "date" || idOf(column) === "glassesDate")
  )
    return []
  const headings = figures.map(({ heading }) => heading)
  return [
    { kind: "date-column", headings, choices: [], why: say("Which column holds the day of the visit?") },
  ]
}

/** Figures without an eye in rows that are of both. */
function eyeColumn(columns: readonly MappedColumn[], { rowIs }: TableMapping): readonly Question[] {
  const hasEye = columns.some((column) => idOf(column) === "eye")
  const open = columns.filter(({ field }) => {
    const named = namedField(field)
    return named?.field.perEye && !named.field.forBoth && named.eye === null
  })
  if (open.length === 0 || (rowIs === "eye" && hasEye)) return []
  const headings = open.map(({ heading }) => heading)
  const why = say("Which eye are these columns of, or which column says so: {headings}?", {
    headings: listed(headings),
  })
  return [{ kind: "eye-column", headings, choices: [], why }]
}

interface Asked {
  readonly sniffed: Sniffed
  readonly columns: readonly MappedColumn[]
  readonly mapping: TableMapping
  readonly isSettled: boolean
}

function dateOrder({ sniffed, columns, mapping, isSettled }: Asked): readonly Question[] {
  const dated = sniffed.dateOrders.filter(({ heading }) =>
    columns.some((column) => column.heading === heading && isDate(column)),
  )
  const open = dated.filter(({ orders }) => orders.join() !== "year-month-day")
  if (open.length === 0) return []
  const headings = open.map(({ heading }) => heading)
  const orders = sharedOrders(open)
  const names = listed(headings)
  if (orders.length === 0) {
    const why = say(
      "The days of {headings} are written in no one order, or each column has its own. Please write them all alike.",
      { headings: names },
    )
    return [{ kind: "date-order", headings, choices: [], why }]
  }
  if (orders.length > 1)
    return isSettled && orders.includes(mapping.dateOrder)
      ? []
      : [
          {
            kind: "date-order",
            headings,
            choices: orders,
            why: say("Which stands first in {headings}, the day or the month? No value shows it.", {
              headings: names,
            }),
          },
        ]
  if (orders[0] === mapping.dateOrder) return []
  const why = say("The days of {headings} cannot be written in the order that was said.", { headings: names })
  return [{ kind: "date-order", headings, choices: orders, why }]
}

const isDate = (column: MappedColumn): boolean =>
  ["born", "date", "glassesDate", "treatmentFrom", "treatmentTo"].includes(idOf(column))

function decimalSign({ sniffed, columns, mapping, isSettled }: Asked): readonly Question[] {
  const figures = columns.filter(({ field }) => namedField(field)?.field.unit !== undefined)
  if (!sniffed.hasDecimals || figures.length === 0) return []
  const headings = figures.map(({ heading }) => heading)
  if (sniffed.decimalSign === mapping.decimalSign || (sniffed.decimalSign === "unclear" && isSettled))
    return []
  if (sniffed.decimalSign === "unclear")
    return [
      {
        kind: "decimal-sign",
        headings,
        choices: [".", ","],
        why: say("Are decimals written with a point or with a comma? The values do not show it."),
      },
    ]
  const why = say('Decimals are written with "{sign}" in this table, not as was said.', {
    sign: sniffed.decimalSign,
  })
  return [{ kind: "decimal-sign", headings, choices: [sniffed.decimalSign], why }]
}

function unitOf(column: MappedColumn, sniffed: Sniffed): readonly Question[] {
  const id = idOf(column)
  const at = sniffed.headings.indexOf(column.heading)
  const texts = sniffed.firstRows.map((cells) => cellText(cells[at] ?? "")).filter((text) => text !== "")
  const headings = [column.heading]
  if (id === "sex" && column.unit === undefined && texts.some((text) => /^m$/i.test(text)))
    return [
      {
        kind: "unit",
        headings,
        choices: SEX_CODES,
        why: say("What does M mean in {heading}: male, or mujer?", { heading: column.heading }),
      },
    ]
  const isCornea = id === "corneaFlatMm" || id === "corneaSteepMm"
  if (isCornea && column.unit === undefined && texts.some(isPower))
    return [
      {
        kind: "unit",
        headings,
        choices: ["mm", "[diop]"],
        why: say("Is {heading} in millimetres or in dioptres? Its values are no radii.", {
          heading: column.heading,
        }),
      },
    ]
  return []
}

function isPower(text: string): boolean {
  const read = [readNumber(text, "."), readNumber(text, ",")].find((found) => "value" in found)
  return read !== undefined && "value" in read && read.value >= limits.corneaPowerD.low
}

function treatmentStart(columns: readonly MappedColumn[]): readonly Question[] {
  const treatment = columns.filter((column) => groupOf(column) === "treatment")
  if (treatment.length === 0 || treatment.some((column) => idOf(column) === "treatmentFrom")) return []
  const headings = treatment.map(({ heading }) => heading)
  const why = say(
    "Which column holds the first day of the treatment? Without it {headings} cannot be read.",
    { headings: listed(headings) },
  )
  return [{ kind: "treatment-start", headings, choices: [], why }]
}
