import type { TableMapping } from "../../engine/practice-rules.js"
import { say } from "../../engine/say.js"
import type { Identity } from "../../interop/intake/fragment.js"
import { namesAgree, nameWords } from "../../interop/intake/name-key.js"
import { rowReading } from "../../interop/table/row-reading.js"
import {
  type RowReading,
  TableFault,
  type TableProblem,
  type TableRow,
} from "../../interop/table/table-types.js"
import type { ImportProblem, Problems } from "./problem.js"
import type { StagedGroup, Staging } from "./staging.js"

/** What a person may stop. */
export interface Stoppable {
  readonly isStopped: () => boolean
}

const ROWS_AT_ONCE = 2000

/** Reads every row of a table into the staging database, by child. Answers with how many there were, and what stopped it. */
export async function stageRows({
  rows,
  headings,
  hasHeadings,
  mapping,
  staging,
  problems,
  stop,
}: {
  readonly rows: AsyncIterable<TableRow>
  readonly headings: readonly string[]
  readonly hasHeadings: boolean
  readonly mapping: TableMapping
  readonly staging: Staging
  readonly problems: Problems
  readonly stop: Stoppable
}): Promise<{ readonly rows: number; readonly fault: string | null }> {
  const groups = new GroupFinder(staging)
  let count = 0
  let isHeadings = hasHeadings
  staging.begin()
  try {
    for await (const row of rows) {
      if (isHeadings) {
        isHeadings = false
        continue
      }
      if (stop.isStopped()) break
      count += 1
      const { reading, problems: found } = rowReading(row, mapping, headings)
      for (const problem of found) problems.add(inTable(problem))
      if (reading) stageOne(reading, { staging, groups, problems })
      if (count % ROWS_AT_ONCE === 0) {
        staging.commit()
        staging.begin()
      }
    }
  } catch (error) {
    if (!(error instanceof TableFault)) throw error
    return { rows: count, fault: error.message }
  } finally {
    staging.commit()
  }
  staging.sorted()
  return { rows: count, fault: null }
}

function stageOne(
  reading: RowReading,
  {
    staging,
    groups,
    problems,
  }: { readonly staging: Staging; readonly groups: GroupFinder; readonly problems: Problems },
): void {
  const key = keyOf(reading.identity)
  if (key === null) {
    problems.add({
      line: reading.line,
      heading: "",
      value: "",
      why: say("the row does not say whose it is: a number or a name is needed"),
    })
    return
  }
  const group = groups.find(key, reading)
  if ("why" in group) problems.add(group)
  else staging.addRow(group.id, reading)
}

function inTable({ line, heading, value, message }: TableProblem): ImportProblem {
  return { line, heading, value: value === null || value === undefined ? "" : String(value), why: message }
}

/** Rows with one number are of one child; without a number, rows with one name and birth date. */
function keyOf({ number, name, born }: Identity): string | null {
  const plain = number?.trim().toLowerCase()
  if (plain) return `number ${plain}`
  const words = nameWords(name ?? "").toSorted()
  return words.length > 0 ? `name ${words.join(" ")} ${born ?? ""}` : null
}

/** Finds the group of a row, and refuses a row that contradicts what the others of its group say of the child. */
class GroupFinder {
  private last: { readonly key: string; readonly group: StagedGroup } | null = null

  constructor(private readonly staging: Staging) {}

  find(key: string, { identity, line }: RowReading): StagedGroup | ImportProblem {
    const known = this.last?.key === key ? this.last.group : this.staging.groupByKey(key)
    if (!known) return this.keep(key, this.staging.addGroup(key, identity, line))
    const differs = contradiction(known.identity, identity)
    if (differs)
      return {
        line,
        heading: differs.field,
        value: differs.value,
        why: say("line {line} says {other} of the same child; the row was not taken", {
          line: known.firstLine,
          other: differs.other,
        }),
      }
    const gained = (["number", "name", "born", "sex"] as const).some(
      (field) => known.identity[field] === undefined && identity[field] !== undefined,
    )
    if (!gained) return this.keep(key, known)
    const merged = { ...identity, ...known.identity }
    this.staging.setIdentity(known.id, merged)
    return this.keep(key, { ...known, identity: merged })
  }

  private keep(key: string, group: StagedGroup): StagedGroup {
    this.last = { key, group }
    return group
  }
}

function contradiction(
  known: Identity,
  row: Identity,
): { readonly field: string; readonly value: string; readonly other: string } | null {
  for (const field of ["born", "sex"] as const) {
    const [a, b] = [known[field], row[field]]
    if (a !== undefined && b !== undefined && a !== b) return { field, value: b, other: a }
  }
  const { name } = known
  if (name !== undefined && row.name !== undefined && name !== row.name && !namesAgree(name, row.name))
    return { field: "name", value: row.name, other: name }
  return null
}
