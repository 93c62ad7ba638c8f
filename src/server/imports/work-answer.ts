import { DATE_ORDERS } from "../../engine/practice-rules.js"
import { say } from "../../engine/say.js"
import { readDate } from "../../interop/table/dates.js"
import { TABLE_FIELDS } from "../../interop/table/fields.js"
import type { Question, Sniffed } from "../../interop/table/table-types.js"
import type { ImportAtWork } from "../contract/imports.js"
import type { ImportDesk, Work } from "./import-desk.js"

const ROWS_SHOWN = 8

/** What somebody is at, as the page is told. */
export function atWorkAnswer(desk: ImportDesk, work: Work): ImportAtWork {
  const { table } = work
  const answer = {
    id: work.id,
    file: work.file,
    bytes: table?.bytes ?? 0,
    by: work.by.name,
    state: work.state,
    progress: work.progress,
    table: table && tableAnswer(table.sniffed),
    fields: table ? fields() : [],
    mapping: work.mapping,
    savedMapping: work.savedMapping,
    questions: questionsInWords(desk.questionsOf(work)),
    check: work.state === "checking" ? null : (table?.outcome() ?? null),
    recorded: work.recorded,
    counts: work.counts,
    undone: work.undone,
    failure: work.failure,
  }
  return answer as unknown as ImportAtWork
}

export const questionsInWords = (open: readonly Question[]) =>
  open.map(({ kind, headings, choices, why }) => ({
    kind,
    headings: [...headings],
    choices: [...choices],
    why,
  }))

function tableAnswer(sniffed: Sniffed) {
  const { headings, hasHeadings, firstRows, notes, fault } = sniffed
  const dateOrders = sniffed.dateOrders.map(({ heading, orders }) => ({
    heading,
    orders,
    example: example(sniffed, heading),
  }))
  return { headings, hasHeadings, firstRows: firstRows.slice(0, ROWS_SHOWN), dateOrders, notes, fault }
}

/** The first day of a column that is another day in each order: 05/05/2023 shows nobody which is meant. */
function example({ headings, firstRows }: Sniffed, heading: string) {
  const place = headings.indexOf(heading)
  for (const row of firstRows) {
    const text = row[place]?.trim() ?? ""
    const days = DATE_ORDERS.flatMap((order) => {
      const read = readDate(text, order)
      return "date" in read ? [{ order, date: read.date }] : []
    })
    if (days.length > 1 && new Set(days.map(({ date }) => date)).size === days.length) return { text, days }
  }
  return null
}

const fields = () =>
  TABLE_FIELDS.map(({ id, title, group, perEye, forBoth, unit, alternatives }) => ({
    id,
    title: say(title),
    group,
    perEye,
    forBoth: forBoth ?? false,
    unit: unit ?? null,
    alternatives: [...(alternatives ?? [])],
  }))
