import { say } from "../../engine/say.js"
import type { ImportAtWork } from "../../server/contract/imports.js"
import { countsInWords } from "./import-words.js"
import { ProblemList } from "./problem-list.js"

/** What came of it. */
export function DoneCard({ work }: { readonly work: ImportAtWork }) {
  return (
    <section className="card" aria-label={work.file}>
      <h2 tabIndex={-1}>
        <bdi>{work.file}</bdi>
      </h2>
      <p role="status">{outcome(work)}</p>
      {work.undone && work.undone.left.length > 0 && (
        <p className="caution">
          {say("Left as they are, because more was recorded of them since: {names}", {
            names: work.undone.left.join(", "),
          })}
        </p>
      )}
      {work.state === "done" && work.check && work.check.problems.count > 0 && (
        <ProblemList problems={work.check.problems} download={`/api/imports/${work.id}/problems`} />
      )}
    </section>
  )
}

function outcome({ state, recorded, counts, failure }: ImportAtWork): string {
  if (state === "undone") return say("The import was taken back.")
  if (state === "cancelled") return say("Cancelled; what had been recorded was taken back.")
  if (state === "failed") return failure ?? say("It failed.")
  if (recorded === null) return say("Everything in this file was recorded already; nothing changed.")
  return counts ? countsInWords(counts) : ""
}
