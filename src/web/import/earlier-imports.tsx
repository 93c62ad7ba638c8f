import { useId, useState } from "react"
import { dateWords } from "../../chart/words.js"
import { say } from "../../engine/say.js"
import type { ImportedRow, ImportsAnswer } from "../../server/contract/imports.js"
import { failureInWords } from "../client.js"
import { Dialog } from "../parts/dialog.js"
import { Waiting } from "../parts/waiting.js"
import { countsInWords, STATE_WORDS } from "./import-words.js"
import { useStep, useUndoing } from "./use-import.js"

/** What was imported before, each taken back in one step. */
export function EarlierImports({
  answer,
  search,
  onSearch,
  onPage,
}: {
  readonly answer: ImportsAnswer
  readonly search: string
  readonly onSearch: (text: string) => void
  readonly onPage: (page: number) => void
}) {
  const id = useId()
  const [undoing, setUndoing] = useState<ImportedRow | null>(null)
  const pages = Math.ceil(answer.total / answer.pageSize)
  return (
    <section className="card" aria-label={say("Earlier imports")}>
      <h2>{say("Earlier imports")}</h2>
      <search className="search">
        <label className="unseen" htmlFor={id}>
          {say("Search by file")}
        </label>
        <input
          id={id}
          type="search"
          autoComplete="off"
          placeholder={say("Name of the file")}
          value={search}
          onChange={({ target }) => onSearch(target.value)}
        />
      </search>
      {answer.imports.length === 0 ? (
        <p className="soft">{search ? say("No import matches.") : say("Nothing was imported yet.")}</p>
      ) : (
        <div className="scroll">
          <table className="data">
            <thead>
              <tr>
                <th scope="col">{say("File")}</th>
                <th scope="col">{say("State")}</th>
                <th scope="col">{say("What it did")}</th>
                <th scope="col">
                  <span className="unseen">{say("Take back|import")}</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {answer.imports.map((row) => (
                <Row key={row.id} row={row} onUndo={() => setUndoing(row)} />
              ))}
            </tbody>
          </table>
        </div>
      )}
      {pages > 1 && (
        <div className="form-actions">
          <button type="button" disabled={answer.page <= 1} onClick={() => onPage(answer.page - 1)}>
            {say("Later")}
          </button>
          <button type="button" disabled={answer.page >= pages} onClick={() => onPage(answer.page + 1)}>
            {say("Earlier")}
          </button>
        </div>
      )}
      {undoing && <Undo row={undoing} onClose={() => setUndoing(null)} />}
    </section>
  )
}

function Row({ row, onUndo }: { readonly row: ImportedRow; readonly onUndo: () => void }) {
  return (
    <tr>
      <th scope="row">
        <bdi>{row.file}</bdi>
        <div className="soft small">
          {say("{day}, {name}", { day: dateWords(row.startedAt.slice(0, 10)), name: row.by })}
        </div>
      </th>
      <td>{say(STATE_WORDS[row.state])}</td>
      <td>
        {row.state === "done" ? countsInWords(row.counts) : ""}
        {row.leftChildren.length > 0 && (
          <div className="caution">
            {say("Left as they are, because more was recorded of them since: {names}", {
              names: row.leftChildren.join(", "),
            })}
          </div>
        )}
      </td>
      <td>
        {row.state === "done" && (
          <button type="button" aria-label={say("Take back {file}", { file: row.file })} onClick={onUndo}>
            {say("Take back|import")}
          </button>
        )}
      </td>
    </tr>
  )
}

/** Says what taking it back does before it is done. */
function Undo({ row, onClose }: { readonly row: ImportedRow; readonly onClose: () => void }) {
  const effect = useUndoing(row.id)
  const undo = useStep<void>(() => `/api/imports/${row.id}/undo`)
  return (
    <Dialog title={say("Take back {file}", { file: row.file })} onClose={onClose}>
      {!effect.data && !effect.error && <Waiting for={say("what it would do")} />}
      {(effect.error ?? undo.error) && (
        <p className="form-fault">{failureInWords(effect.error ?? undo.error)}</p>
      )}
      {effect.data && (
        <div className="import-undo">
          <ul className="import-open">
            <li>
              {say("{count, plural, one {# child goes} other {# children go}} that this import made", {
                count: effect.data.childrenGone,
              })}
            </li>
            <li>
              {say("{count, plural, one {# entry is} other {# entries are}} withdrawn", {
                count: effect.data.entriesWithdrawn,
              })}
            </li>
            <li>
              {say("{count, plural, one {# visit is} other {# visits are}} as before", {
                count: effect.data.visitsRestored,
              })}
            </li>
          </ul>
          {effect.data.left.length > 0 && (
            <p className="caution">
              {say("Left as they are, because more was recorded of them since: {names}", {
                names: effect.data.left.join(", "),
              })}
            </p>
          )}
          <p className="soft">{say("It can be taken back once. The record keeps that it was there.")}</p>
          <div className="form-actions">
            <button
              type="button"
              className="primary"
              disabled={undo.isPending}
              onClick={() => undo.mutate(undefined, { onSuccess: onClose })}
            >
              {say("Take it back|import")}
            </button>
          </div>
        </div>
      )}
    </Dialog>
  )
}
