import { type CalendarDate, EYES, type Eye, type Visit } from "../../engine/course.js"
import type { TableMapping } from "../../engine/practice-rules.js"
import { say } from "../../engine/say.js"
import type { Identity } from "../intake/fragment.js"
import { eyeIn, oldGlassesIn } from "./cell-words.js"
import { defined } from "./defined.js"
import { eyeOfRow, lensOf, prescriptionOf } from "./eye-of-row.js"
import { childOf, identityOf } from "./identity-of-row.js"
import { isAlive, type Plan, planOf, RowCells } from "./row-cells.js"
import type { RowReading, TableProblem, TableRow } from "./table-types.js"
import { treatmentsOf } from "./treatment-of-row.js"

interface ReadRow {
  readonly reading: RowReading | null
  readonly problems: readonly TableProblem[]
}

/**
 * What one row says by a mapping. A fault in whose row it is, in its day or in its eye leaves the whole row out (`reading`
 * is null); a fault in a figure leaves out the figure with its group (a refraction, a length) and nothing else.
 * A row without anything in its mapped columns is null without a problem.
 *
 * @example
 * rowReading({ line: 2, cells: ["17", "10/01/2025", "24,12"] }, mapping, ["No", "Fecha", "AL OD"])
 */
export function rowReading(row: TableRow, mapping: TableMapping, headings: readonly string[]): ReadRow {
  const cells = new RowCells(row, plannedOnce(mapping, headings))
  if (cells.isEmpty) return { reading: null, problems: [] }
  const reading = cells.hasMoved ? moved(cells, row) : readingOf(cells)
  return { reading, problems: cells.problems }
}

const plans = new WeakMap<TableMapping, Plan>()

function plannedOnce(mapping: TableMapping, headings: readonly string[]): Plan {
  const known = plans.get(mapping)
  if (known?.headings === headings) return known
  const plan = planOf(mapping, headings)
  plans.set(mapping, plan)
  return plan
}

function moved(cells: RowCells, row: TableRow): null {
  const heading = cells.plan.headings.at(-1) ?? "#1"
  const hint = say(
    "There are more cells than headings: a cell that holds the delimiter needs quotation marks.",
  )
  const most = cells.plan.headings.length
  cells.refuse({ heading }, `${row.cells.length}`, say("the last of {most} cells", { most }), hint)
  return null
}

function readingOf(cells: RowCells): RowReading | null {
  const identity = cells.whole(() => identityOf(cells))
  const day = cells.whole(() => dayOf(cells, identity?.born))
  if (!identity || !day) return null
  const visits = day.isOldGlasses
    ? glassesVisit(cells, day.date)
    : [...visitOf(cells, day.date), ...glassesBeside(cells, identity)]
  return {
    line: cells.line,
    identity,
    child: cells.whole(() => childOf(cells)) ?? {},
    visits: visits.filter(({ date }) => isAlive(cells, { id: "date", date, born: identity.born })),
    treatments: cells.whole(() => treatmentsOf(cells, identity.born)) ?? [],
    notes: cells.notes,
  }
}

interface RowDay {
  /** Null for a row that holds no figures of a day. */
  readonly date: CalendarDate | null
  readonly isOldGlasses: boolean
}

/** The day of the row's figures, and whose eye they are of. */
function dayOf(cells: RowCells, born: CalendarDate | undefined): RowDay | undefined {
  const marker = cells.cell("oldGlasses")
  const isOldGlasses = marker ? oldGlassesIn(marker.text) : false
  if (isOldGlasses === undefined) return marker && cells.refuse(marker, marker.text, say("yes or no"))
  const date = (isOldGlasses ? cells.date("glassesDate") : undefined) ?? cells.date("date") ?? null
  readRowEye(cells)
  if (date === null && cells.hasFigures && !hasOnlyGlasses(cells)) {
    const column = cells.plan.columns.find(({ field }) => field.id === "date" || field.id === "glassesDate")
    return cells.refuse(
      { heading: column?.heading ?? cells.plan.headings[0] ?? "#1" },
      null,
      say("a day of the calendar"),
    )
  }
  if (date !== null && born !== undefined && date < born)
    return cells.refuse(
      cells.cell("date") ?? { heading: "#1" },
      date,
      say("on or after the day of birth ({born})", { born }),
    )
  return { date, isOldGlasses }
}

const hasOnlyGlasses = (cells: RowCells): boolean =>
  cells.plan.columns.every(({ field, eye }) => {
    if (!field.perEye || field.forBoth || field.group === "glasses") return true
    return EYES.every((side) => (eye ?? side) !== side || !cells.cell(field.id, side))
  })

function readRowEye(cells: RowCells): void {
  if (cells.plan.mapping.rowIs !== "eye") return
  const cell = cells.cell("eye")
  const column = cells.plan.columns.find(({ field }) => field.id === "eye")
  cells.rowEye = (cell && eyeIn(cell.text)) ?? null
  if (cells.rowEye === null && (cell || cells.hasFigures))
    cells.refuse({ heading: column?.heading ?? "#1" }, cell?.text ?? null, say("right or left (OD or OS)"))
}

function visitOf(cells: RowCells, date: CalendarDate | null): readonly Visit[] {
  if (date === null) return []
  const eyes = eyesOf((eye) => eyeOfRow(cells, eye, `visits[${date}].${eye}`))
  return eyes ? [{ date, ...eyes }] : []
}

function eyesOf(read: (eye: Eye) => Visit["right"]): Pick<Visit, "right" | "left"> | undefined {
  return defined({ right: read("right"), left: read("left") })
}

/** As the rest of the program knows glasses of earlier years. */
const OLD_GLASSES = "old glasses"

/** A row that is of earlier glasses as a whole: of it the prescription counts, and nothing that is measured. */
function glassesVisit(cells: RowCells, date: CalendarDate | null): readonly Visit[] {
  if (date === null) return []
  const eyes = eyesOf((eye) => {
    const examined = eyeOfRow(cells, eye, `visits[${date}].${eye}`)
    const refraction = examined?.refraction ?? glassesLens(cells, eye)
    const others = Object.keys(examined ?? {}).filter((group) => group !== "refraction")
    if (others.length > 0)
      cells.notes.push({
        kind: "not-of-glasses",
        path: `visits[${date}].${eye}.${others[0]}`,
        why: say("the row is of earlier glasses: only the prescription was taken"),
      })
    return refraction && { refraction }
  })
  return eyes ? [{ date, ...eyes, from: OLD_GLASSES }] : []
}

/** Earlier glasses in columns of their own beside the visit. */
function glassesBeside(cells: RowCells, { born }: Identity): readonly Visit[] {
  const eyes = eyesOf((eye) => {
    const refraction = glassesLens(cells, eye)
    return refraction && { refraction }
  })
  const date = cells.whole(() => cells.date("glassesDate"))
  if (!eyes) return []
  const column = cells.plan.columns.find(({ field }) => field.id === "glassesDate")
  if (date !== undefined)
    return isAlive(cells, { id: "glassesDate", date, born }) ? [{ date, ...eyes, from: OLD_GLASSES }] : []
  if (!cells.cell("glassesDate"))
    cells.refuse(
      { heading: column?.heading ?? cells.plan.headings[0] ?? "#1" },
      null,
      say("a day of the calendar"),
    )
  return []
}

const glassesLens = (cells: RowCells, eye: Eye) =>
  cells.whole(
    () =>
      prescriptionOf(cells, { id: "glassesPrescription", eye }) ??
      lensOf(cells, { eye, sphere: "glassesSphere", cylinder: "glassesCylinder", axis: "glassesAxis" }),
  )
