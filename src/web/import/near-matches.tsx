import { say } from "../../engine/say.js"
import type { ImportAtWork, ImportCheck } from "../../server/contract/imports.js"
import { failureInWords } from "../client.js"
import { useSettle } from "./use-import.js"

/** Rows that may be of a known child: a person decides, one after another. */
export function NearMatches({ work, check }: { readonly work: ImportAtWork; readonly check: ImportCheck }) {
  const settle = useSettle(work.id)
  return (
    <section aria-label={say("Whose rows are these?")}>
      <h3>{say("Whose rows are these?")}</h3>
      <p className="soft">
        {say(
          "{count, plural, one {The rows of # child are} other {The rows of # children are}} nearly, but not surely, those of a child that is known. They are taken once you decide.",
          { count: check.nearCount },
        )}
      </p>
      {settle.error && <p className="form-fault">{failureInWords(settle.error)}</p>}
      {check.near.map(({ group, identity, rows, line, candidates, mayBeNew }) => (
        <div key={group} className="import-near">
          <div>
            <strong>
              <bdi>{identity.name ?? identity.number}</bdi>
            </strong>{" "}
            <span className="soft">
              {say("{details}; line {line}, {rows, plural, one {# row} other {# rows}}", {
                details: [identity.number, identity.born].filter(Boolean).join(", "),
                line,
                rows,
              })}
            </span>
          </div>
          <div className="form-actions">
            {candidates.map(({ child, why }) => (
              <button
                key={child.id}
                type="button"
                disabled={settle.isPending}
                onClick={() => settle.mutate({ group, as: { child: child.id } })}
              >
                {say("It is {name}, born {born}: {why}", { name: child.name, born: child.born, why })}
              </button>
            ))}
            {mayBeNew && (
              <button
                type="button"
                disabled={settle.isPending}
                onClick={() => settle.mutate({ group, as: "new" })}
              >
                {say("Another child")}
              </button>
            )}
            <button
              type="button"
              className="link"
              disabled={settle.isPending}
              onClick={() => settle.mutate({ group, as: "leave" })}
            >
              {say("Leave these rows out")}
            </button>
          </div>
        </div>
      ))}
    </section>
  )
}
