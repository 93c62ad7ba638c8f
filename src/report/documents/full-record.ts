import { dayInWords, listed, say } from "../../engine/say.js"
import type { Block, DocumentContent, DocumentPart } from "../document.js"
import type { DocumentInput } from "../document-input.js"
import { dropCautions, professionalFoot } from "../letter/cautions.js"
import { concernBlocks, decisionBlocks } from "../record/decisions-and-concerns.js"
import { figureBlocks } from "../record/figure-block.js"
import { readingOf } from "../record/reading.js"
import { type RecordTable, tableBlocks } from "../record/record-table.js"
import { childBlocks, summaryBlocks } from "../record/summary.js"
import { toldTables } from "../record/told-tables.js"
import { treatmentTables } from "../record/treatment-tables.js"
import { visitTables } from "../record/visit-tables.js"
import { setApart } from "../right-to-left.js"

/** Everything that is in a child's course, a table for each kind, rows in order of date; nothing is left out. */
export function fullRecord(input: DocumentInput): DocumentContent {
  const reading = readingOf(input)
  const { course } = input
  const [visits, given, told] = [visitTables(course), treatmentTables(course), toldTables(course)]
  const decisions = decisionBlocks(course)
  const concerns = concernBlocks(course)
  const parts: readonly DocumentPart[] = [
    { name: "child", blocks: childBlocks(reading) },
    { name: "summary", blocks: summaryBlocks(reading) },
    { name: "figure", blocks: figureBlocks(reading) },
    section("visits", say("Examinations"), visits),
    section("treatments", say("Treatment and supply"), given),
    section("told", say("Told, agreed, explained and paid"), told),
    { name: "decisions", blocks: headed(say("Decisions"), decisions) },
    { name: "concerns", blocks: headed(say("Concerns about safety"), concerns) },
    { name: "not-recorded", blocks: notRecorded([...visits, ...given, ...told], { decisions, concerns }) },
    { name: "cautions", blocks: cautionOf(dropCautions(reading)) },
  ]
  return {
    title:
      input.childName === null
        ? say("Full record of this child")
        : say("Full record of {child}", { child: setApart(input.childName) }),
    parts: parts.filter(({ blocks }) => blocks.length > 0),
    values: {
      child: setApart(input.childName ?? ""),
      born: dayInWords(course.child.born),
      number: input.childNumber ?? "",
      practice: input.practice.name,
      date: dayInWords(input.today),
    },
    foot: professionalFoot(),
  }
}

const headed = (title: string, blocks: readonly Block[]): readonly Block[] =>
  blocks.length === 0 ? [] : [{ kind: "heading", level: 1, text: title }, ...blocks]

const section = (name: string, title: string, tables: readonly RecordTable[]): DocumentPart => ({
  name,
  blocks: headed(title, tables.flatMap(tableBlocks)),
})

/** What is empty is said, so that nobody takes a table that is not there for one that was left out. */
function notRecorded(
  tables: readonly RecordTable[],
  { decisions, concerns }: { readonly decisions: readonly Block[]; readonly concerns: readonly Block[] },
): readonly Block[] {
  const empty = [
    ...tables.filter(({ rows }) => rows.length === 0).map(({ title }) => title),
    ...(decisions.length === 0 ? [say("Decisions")] : []),
    ...(concerns.length === 0 ? [say("Concerns about safety")] : []),
  ]
  if (empty.length === 0) return []
  return [{ kind: "text", text: say("Nothing is recorded under: {titles}.", { titles: listed(empty) }) }]
}

const cautionOf = (lines: readonly string[]): readonly Block[] =>
  lines.length === 0 ? [] : [{ kind: "caution", lines }]
