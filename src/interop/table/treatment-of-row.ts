import type { CalendarDate, Treatment } from "../../engine/course.js"
import { say } from "../../engine/say.js"
import { limits } from "../course/limits.js"
import { treatmentIn } from "./cell-words.js"
import { type Cell, isAlive, type RowCells } from "./row-cells.js"

/** The treatment that a row names; its first day is never guessed. */
export function treatmentsOf(
  cells: RowCells,
  born: CalendarDate | undefined,
): readonly Treatment[] | undefined {
  const cell = cells.cell("treatmentKind")
  const strength = cells.cell("concentrationPercent")
  const from = cells.date("treatmentFrom")
  const to = cells.date("treatmentTo")
  if (!cell && !strength && from === undefined && to === undefined) return undefined
  if (!cell) return missingTreatment(cells, "treatmentKind", say("a treatment, such as atropine"))
  const found = treatmentIn(cell.text)
  if (!found) return cells.refuse(cell, cell.text, say("a treatment, such as atropine"))
  const percent = percentOf(
    cells,
    strength ?? (found.strength === undefined ? undefined : { ...cell, text: found.strength }),
  )
  if (found.kind === "atropine" && !strength && found.strength === undefined)
    return missingTreatment(cells, "concentrationPercent", say("the strength of the atropine"))
  if (from === undefined)
    return missingTreatment(cells, "treatmentFrom", say("the first day of the treatment"))
  if (!isAlive(cells, { id: "treatmentFrom", date: from, born })) return undefined
  if (to !== undefined && to < from)
    return cells.refuse(
      cells.cell("treatmentTo") ?? cell,
      to,
      say("on or after the first day of the treatment"),
    )
  return [
    {
      from,
      kind: found.kind,
      ...(to === undefined ? {} : { to }),
      ...(percent === undefined ? {} : { concentrationPercent: percent }),
    },
  ]
}

function percentOf(cells: RowCells, cell: Cell | undefined): number | undefined {
  if (!cell) return undefined
  const text = cell.text.replace(/\s*%$/, "")
  return cells.numberIn({ ...cell, text }, limits.concentrationPercent, { "mg/mL": 0.1 })
}

function missingTreatment(cells: RowCells, id: string, allowed: string): undefined {
  const column =
    cells.plan.columns.find(({ field }) => field.id === id) ??
    cells.plan.columns.find(({ field }) => field.group === "treatment")
  return cells.refuse({ heading: column?.heading ?? "#1" }, null, allowed)
}
