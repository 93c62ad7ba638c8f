import { counted } from "../../engine/words.js"
import { problem } from "../../interop/course/problem.js"
import { researchZip } from "../../interop/research/research-zip.js"
import { SMALLEST_CELL } from "../../interop/research/small-cells.js"
import type { ExitCode, Io } from "../io.js"
import { toldJson, toldProblems } from "../told.js"
import { paragraph } from "../words.js"
import type { ExportFrom } from "./export-arguments.js"

/** Writes the table for research of a data folder as a .zip. Read beside a running server: nothing is written to it. */
export async function exportResearch(
  { what: folder, place, out, json = false }: ExportFrom,
  io: Io,
): Promise<ExitCode> {
  if (place.kind !== "record")
    return refused("a data folder, whose secret moves the days", { folder, io, json })
  const { openEmbedded, practiceRecord, practicesIn } = await import("../../record/index.js")
  const { practiceResearch } = await import("../../server/research/practice-research.js")
  const database = openEmbedded(folder)
  try {
    const [practice] = await practicesIn(database.queries)
    if (!practice) return refused("a data folder with a practice in it", { folder, io, json })
    const table = await practiceResearch(practiceRecord(database, practice))
    const bytes = await researchZip(table)
    if (out === "-") io.out(bytes)
    else {
      const hindered = await io.write(out, bytes)
      if (hindered) return toldProblems([hindered], { io, json })
    }
    const { children, rows, smallCells } = table
    if (json && out !== "-") return toldJson({ out, children, rows, smallCells }, io)
    const few = smallCells.reduce((sum, cell) => sum + cell.children, 0)
    const told = [
      paragraph(
        `${counted(rows, "row")} of ${children === 1 ? "1 child" : `${children} children`}${out === "-" ? "" : ` written to ${out}`}, without names.`,
        0,
      ),
      few === 0
        ? ""
        : paragraph(
            `Caution: ${few === 1 ? "1 of them is" : `${few} of them are`} in groups of fewer than ${SMALLEST_CELL} of one sex, ancestry and age, and could be recognised by who knows them (small-cells.csv).`,
            0,
          ),
    ].join("")
    if (out === "-") io.error(told)
    else io.out(told)
    return 0
  } finally {
    await database.close()
  }
}

const refused = (
  allowed: string,
  { folder, io, json }: { readonly folder: string; readonly io: Io; readonly json: boolean },
): ExitCode => toldProblems([problem({ path: "<course>", value: folder, allowed })], { io, json })
