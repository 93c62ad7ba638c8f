/**
 * What stands in a cell, without what only a spreadsheet needs: blanks around it, and the apostrophe that keeps a text
 * from being run as a formula (as `csvText` writes it).
 */
export const cellText = (cell: string): string =>
  (cell.startsWith("'") ? cell.replace(/^'(?=[=+\-@\t\r])/, "") : cell).trim()

/** What people write where there is nothing to write. */
const ABSENT = new Set([
  ..."- -- --- – — ? . n/a na n.a. #n/a nan null nil n/d nd n.d. s/d".split(" "),
  "sin dato",
  "sin datos",
  "not done",
  "no realizado",
])

const LONGEST_ABSENT = Math.max(...[...ABSENT].map(({ length }) => length))

/** Whether a cell of a figure says that there is none. */
export const isAbsent = (text: string): boolean =>
  text.length <= LONGEST_ABSENT && (text === "" || ABSENT.has(text.toLowerCase()))

/** The same of a name, where "Na" may be one. */
export const isAbsentName = (text: string): boolean => /^(-+|–|—|n\/a|\?)?$/i.test(text)

/** Words without accents, case and signs, to be looked up. */
export const plainWords = (text: string): string =>
  text
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim()
