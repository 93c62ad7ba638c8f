import type { KnownChild } from "../../interop/research/deidentified.js"
import { type ResearchTable, researchTable } from "../../interop/research/research-table.js"
import type { PracticeRecord } from "../../record/index.js"

/** Children whose courses are read at once. */
const BATCH = 500

/** The table for research of a whole practice, as its record stands. */
export async function practiceResearch(record: PracticeRecord): Promise<ResearchTable> {
  const ids = (await record.everyChild()).map(({ id }) => id)
  const children: KnownChild[] = []
  for (let from = 0; from < ids.length; from += BATCH) {
    const courses = await record.coursesOf(ids.slice(from, from + BATCH))
    for (const [id, course] of courses) children.push({ id, course })
  }
  return researchTable(children, { secret: await record.researchSecret() })
}
