import type { DateOrder, MappedColumn, TableMapping } from "../../engine/practice-rules.js"
import { cellText, isAbsent, isAbsentName } from "./cell-text.js"
import { eyeIn, SEX_CODES } from "./cell-words.js"
import { namedField, TABLE_FIELDS } from "./fields.js"
import { fieldOfWords } from "./heading-fields.js"
import { type HeadingWords, headingWords } from "./heading-words.js"
import { sniffedRows } from "./sniff.js"
import type { Sniffed } from "./table-types.js"
import { fitsField } from "./values-fit.js"

/** A column with all that is known of it before it is mapped. */
interface Column extends HeadingWords {
  readonly heading: string
  readonly texts: readonly string[]
}

/**
 * Which column holds what, as far as headings and values say so; what is not sure is left unmapped: a heading that is not
 * known, values that do not fit, two columns for one field. Where the values leave the order of dates or the decimal sign
 * open, "year-month-day" and "." stand in the mapping and `questions` asks. `guessedMapping` takes them from a sniffed
 * file, which has seen more rows.
 */
export function guessMapping(
  headings: readonly string[],
  firstRows: readonly (readonly string[])[],
): TableMapping {
  const columns = headings.map(
    (heading, at): Column => ({
      heading,
      ...headingWords(heading.replace(/ #\d+$/, "")),
      texts: firstRows.map((cells) => cellText(cells[at] ?? "")).filter((text) => !isAbsentName(text)),
    }),
  )
  const rowIs = columns.some((column) => isEyeColumn(column)) ? "eye" : "visit"
  const guesses = columns.flatMap((column) => guessed(column, columns) ?? [])
  const isOnce = ({ field }: MappedColumn) => guesses.filter((other) => other.field === field).length === 1
  return {
    id: "guess",
    title: "",
    rowIs,
    ...forms(headings, firstRows),
    columns: guesses.filter(isOnce),
  }
}

/** The guess for a sniffed file, with the order of dates and the decimal sign that all its first rows show. */
export function guessedMapping(sniffed: Sniffed): TableMapping {
  const guess = guessMapping(sniffed.headings, sniffed.firstRows)
  const isMapped = (heading: string) => guess.columns.some((column) => column.heading === heading)
  const orders = sharedOrders(sniffed.dateOrders.filter(({ heading }) => isMapped(heading)))
  const [only] = orders
  return {
    ...guess,
    ...(orders.length === 1 && only ? { dateOrder: only } : {}),
    ...(sniffed.decimalSign === "unclear" ? {} : { decimalSign: sniffed.decimalSign }),
  }
}

/**
 * The orders that are possible in all columns of dates. Columns written with the year first say nothing of the others.
 */
export function sharedOrders(columns: Sniffed["dateOrders"]): readonly DateOrder[] {
  const open = columns.filter(({ orders }) => orders.join() !== "year-month-day")
  if (open.length === 0) return columns.length === 0 ? [] : ["year-month-day"]
  const [first, ...others] = open
  return (first?.orders ?? []).filter((order) => others.every(({ orders }) => orders.includes(order)))
}

function forms(headings: readonly string[], firstRows: readonly (readonly string[])[]) {
  const rows = firstRows.map((cells, at) => ({ line: at + 1, cells }))
  const { dateOrders, decimalSign } = sniffedRows([{ line: 0, cells: headings }, ...rows])
  const orders = sharedOrders(dateOrders)
  const [only = "year-month-day"] = orders
  return {
    dateOrder: orders.length === 1 ? only : ("year-month-day" as const),
    decimalSign: decimalSign === "unclear" ? ("." as const) : decimalSign,
  }
}

const isEyeColumn = ({ words, texts }: Column): boolean =>
  fieldOfWords(words) === "eye" && texts.length > 0 && texts.every((text) => eyeIn(text) !== undefined)

function guessed(column: Column, all: readonly Column[]): MappedColumn | null {
  const id = refined(column, all)
  const field = id === null ? undefined : TABLE_FIELDS.find((known) => known.id === id)
  if (!field || !fitsField(field.id, column.texts)) return null
  const eye = field.perEye ? column.eye : null
  // A figure of an eye that names no eye belongs to the row's eye, if the rows have one.
  if (field.perEye && !field.forBoth && eye === null && !all.some(isEyeColumn)) return null
  const name = eye === null ? field.id : `${eye}.${field.id}`
  const unit = unitOf(field.id, column)
  return namedField(name) && { heading: column.heading, field: name, ...(unit === undefined ? {} : { unit }) }
}

/** Where a word means one field or another by what else stands in the table. */
function refined(column: Column, all: readonly Column[]): string | null {
  const field = fieldOfWords(column.words)
  const has = (id: string) => all.some(({ words }) => fieldOfWords(words) === id)
  if (field === "eye") return isEyeColumn(column) ? "eye" : null
  // "Nombre" is the whole name unless a column of family names stands beside it.
  if (field === "givenName" && column.words.join(" ") === "nombre" && !has("familyName")) return "name"
  if (field === "name" && has("familyName") && !has("givenName")) return "givenName"
  return field ?? acuityByValues(column) ?? prescriptionByValues(column)
}

/** Acuities are written in three ways, of which only the fraction shows by itself. */
function acuityByValues({ words, texts }: Column): string | null {
  const isAcuity = [
    "va",
    "av",
    "acuity",
    "visual acuity",
    "agudeza",
    "agudeza visual",
    "distance va",
  ].includes(words.join(" "))
  const isFraction =
    texts.length > 0 && texts.every((text) => isAbsent(text) || /^\d+([.,]\d+)?\s*\/\s*\d+/.test(text))
  return isAcuity && isFraction ? "distanceSnellen" : null
}

/** Columns that are called "OD" and "OS" and hold whole prescriptions. */
function prescriptionByValues({ words, eye, texts }: Column): string | null {
  const isEyeAlone = words.length === 1 && eye !== null
  const isWhole = texts.length > 0 && texts.some((text) => /\d\s*(?:x|×|\/|\s)\s*[-+\d]/i.test(text))
  return isEyeAlone && isWhole ? "prescription" : null
}

/** The unit, where it is not the field's own and the heading or the values leave no doubt. */
function unitOf(id: string, { unit, texts }: Column): string | undefined {
  if (id === "sex") return sexCode(texts)
  const field = TABLE_FIELDS.find((known) => known.id === id)
  return unit !== undefined && field?.alternatives?.includes(unit) ? unit : undefined
}

/** What an M means is shown by the other letter of the column. */
function sexCode(texts: readonly string[]): string | undefined {
  const letters = new Set(texts.map((text) => text.toUpperCase()))
  if (!letters.has("M")) return undefined
  const isEnglish = letters.has("F")
  const isSpanish = letters.has("H") || letters.has("V")
  return isEnglish === isSpanish ? undefined : isEnglish ? SEX_CODES[0] : SEX_CODES[1]
}
