import { dateWords } from "../../chart/words.js"
import { say } from "../../engine/say.js"
import type { ImportAtWork, ImportCheck } from "../../server/contract/imports.js"
import { visitWords } from "../child/visit-words.js"
import { failureInWords } from "../client.js"
import { countsInWords } from "./import-words.js"
import { NearMatches } from "./near-matches.js"
import { ProblemList } from "./problem-list.js"
import { useStep } from "./use-import.js"

/** What the import will do and what it leaves out, before anything is recorded. */
export function CheckCard({
  work,
  check,
  onBack,
}: {
  readonly work: ImportAtWork
  readonly check: ImportCheck
  readonly onBack: () => void
}) {
  const run = useStep<void>(() => `/api/imports/${work.id}/run`)
  const isNothing = check.childrenChanged === 0
  const leaves = check.problems.count > 0 || check.nearCount > 0
  return (
    <section className="card" aria-label={say("What will be recorded")}>
      <h2 tabIndex={-1}>
        {say("{file}: {rows, plural, one {# row} other {# rows}}", { file: work.file, rows: check.rows })}
      </h2>
      <p role="status">
        {isNothing
          ? check.nearCount > 0
            ? say("There is nothing to record before you have decided whose the rows are.")
            : say("There is nothing to record in this file.")
          : countsInWords({
              childrenNew: check.childrenNew,
              childrenKnown: check.childrenChanged - check.childrenNew,
              visitsNew: check.visitsNew,
              visitsAddedTo: check.visitsAddedTo,
            })}
      </p>
      {check.glasses > 0 && (
        <p className="soft">
          {say("Of the new visits {count, plural, one {# is} other {# are}} of earlier glasses.", {
            count: check.glasses,
          })}
        </p>
      )}
      {check.treatments > 0 && (
        <p className="soft">
          {say("{count, plural, one {# treatment} other {# treatments}}", { count: check.treatments })}
        </p>
      )}
      {check.fault && <p className="form-fault">{check.fault}</p>}
      {check.nearCount > 0 && <NearMatches work={work} check={check} />}
      <div role="alert">{run.error && <p className="form-fault">{failureInWords(run.error)}</p>}</div>
      <div className="form-actions">
        <button
          type="button"
          className="primary"
          disabled={isNothing || check.fault !== null || run.isPending}
          onClick={() => run.mutate()}
        >
          {leaves ? say("Record what is sound") : say("Record all of it")}
        </button>
        <button type="button" onClick={onBack}>
          {say("Back to the columns")}
        </button>
        {leaves && (
          <span className="caution">
            {say("What is listed below and what is not decided above is left out.")}
          </span>
        )}
      </div>
      {check.problems.count > 0 && (
        <ProblemList problems={check.problems} download={`/api/imports/${work.id}/problems`} />
      )}
      <h3>{say("The first rows as they will be recorded")}</h3>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so the keyboard has to reach it */}
      <section className="scroll" tabIndex={0} aria-label={say("The first rows as they will be recorded")}>
        <table className="data">
          <thead>
            <tr>
              <th scope="col">{say("Line")}</th>
              <th scope="col">{say("Child")}</th>
              <th scope="col">{say("Whose it is")}</th>
              <th scope="col">{say("Visit")}</th>
            </tr>
          </thead>
          <tbody>
            {check.preview.map(({ line, who, state, visits }) => (
              <tr key={line}>
                <td>{line}</td>
                <td>
                  <bdi>{who}</bdi>
                </td>
                <td>{whoInWords(state)}</td>
                <td>
                  {visits.map((visit) => (
                    <div key={visit.date}>
                      {say("{date}: {figures}", { date: dateWords(visit.date), figures: visitWords(visit) })}
                    </div>
                  ))}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </section>
  )
}

function whoInWords(state: ImportCheck["preview"][number]["state"]): string {
  switch (state) {
    case "same":
      return say("a child of the practice")
    case "new":
      return say("a new child")
    case "near":
      return say("to be decided")
    case "left":
      return say("left out")
    case "refused":
      return say("not taken")
  }
}
