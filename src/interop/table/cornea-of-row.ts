import type { CorneaRadius, Eye } from "../../engine/course.js"
import { say } from "../../engine/say.js"
import { limits } from "../course/limits.js"
import type { RowCells } from "./row-cells.js"

/** Radius in mm times power in dioptres, by the keratometric index 1.3375 (common practice, no source). */
const KERATOMETRIC_CONSTANT = 337.5

interface Meridian {
  readonly mm: number
  readonly power?: number
}

/**
 * The radii of the cornea. Powers are turned into radii only where the mapping says that the column is in dioptres, and a
 * note says by which index. The flat meridian is by definition the one of the larger radius.
 */
export function corneaOf(cells: RowCells, eye: Eye, path: string): CorneaRadius | undefined {
  const flat = meridianOf(cells, "corneaFlatMm", eye)
  const steep = meridianOf(cells, "corneaSteepMm", eye)
  const where = `${path}.corneaRadius`
  if (!flat || !steep) {
    if (flat || steep)
      cells.notes.push({
        kind: "one-radius",
        path: where,
        why: say("only one radius of the cornea is given; it was left out"),
      })
    return undefined
  }
  if (flat.power !== undefined || steep.power !== undefined)
    cells.notes.push({
      kind: "radius-from-power",
      path: where,
      why: say("the radii were calculated from powers by the index 1.3375 (common practice, no source)"),
    })
  if (flat.mm >= steep.mm) return corneaFrom(flat, steep)
  cells.notes.push({
    kind: "meridians-exchanged",
    path: where,
    why: say("the flat radius is the larger one: the two columns were exchanged in this row"),
  })
  return corneaFrom(steep, flat)
}

const corneaFrom = (flat: Meridian, steep: Meridian): CorneaRadius => ({
  flat: flat.mm,
  steep: steep.mm,
  ...(flat.power === undefined ? {} : { flatD: flat.power }),
  ...(steep.power === undefined ? {} : { steepD: steep.power }),
})

function meridianOf(cells: RowCells, id: string, eye: Eye): Meridian | undefined {
  const cell = cells.cell(id, eye)
  if (!cell) return undefined
  if (cell.unit !== "[diop]") {
    const mm = cells.numberIn(cell, limits.corneaRadiusMm)
    return mm === undefined ? undefined : { mm }
  }
  const power = cells.numberIn(cell, limits.corneaPowerD, { "[diop]": 1 })
  if (power === undefined) return undefined
  const mm = Math.round((KERATOMETRIC_CONSTANT / power) * 1000) / 1000
  const { low, high } = limits.corneaRadiusMm
  if (mm >= low && mm <= high) return { mm, power }
  return cells.refuse(cell, cell.text, say("a power of a radius from {low} to {high} mm", { low, high }))
}
