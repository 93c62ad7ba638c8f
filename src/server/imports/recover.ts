import { say } from "../../engine/say.js"
import type { ImportState, RecordedImport } from "../../record/index.js"
import type { ImportPlace, Progress } from "./table-import.js"
import { type TakeBackTotals, takeBack } from "./take-back.js"

/** Takes a recorded import back and notes it. */
export async function takenBack(
  place: ImportPlace,
  { id }: RecordedImport,
  {
    author,
    reason,
    state,
    onProgress,
  }: {
    readonly author: string
    readonly reason: string
    readonly state: Extract<ImportState, "undone" | "interrupted">
    readonly onProgress: (progress: Progress) => void
  },
): Promise<TakeBackTotals> {
  const { record, nowMs } = place
  const at = new Date(nowMs()).toISOString()
  const total = await record.imports.parts(id)
  const totals = await takeBack(place, {
    id,
    author,
    at,
    reason,
    onProgress: (done) => onProgress({ done, total }),
  })
  await record.imports.change({ id, state, at, leftChildren: totals.left })
  return totals
}

/** Imports the program was in the middle of when it ended are taken back before another begins. */
export async function recoverImports(place: ImportPlace): Promise<void> {
  for (const recorded of await place.record.imports.unfinished()) {
    const reason = say("the import of {file} was interrupted", { file: recorded.file })
    const onProgress = () => {}
    await takenBack(place, recorded, { author: recorded.author, reason, state: "interrupted", onProgress })
  }
}
