import { dateWords } from "../../chart/words.js"
import { say } from "../../engine/say.js"
import type { ImportAtWork, ImportCheck, SettleBody } from "../../server/contract/imports.js"
import { failureInWords } from "../client.js"
import { useSettle } from "./use-import.js"

type Decision = SettleBody["decisions"][number]

/** Rows that may be of a known child: a person decides, one after another. */
export function NearMatches({ work, check }: { readonly work: ImportAtWork; readonly check: ImportCheck }) {
  const settle = useSettle(work.id)
  const suggested = check.near.flatMap(({ group, candidates: [only, ...others] }) =>
    only && others.length === 0 ? [{ group, as: { child: only.child.id } }] : [],
  )
  const decide = (group: number, as: Decision["as"]) => settle.mutate({ decisions: [{ group, as }] })
  return (
    <section className="import-whose" aria-label={say("Whose rows are these?")}>
      <h3>{say("Whose rows are these?")}</h3>
      <p className="soft">
        {say(
          "{count, plural, one {The rows of # child are} other {The rows of # children are}} nearly, but not surely, those of a child that is known. They are taken once you decide; checking the file again asks anew.",
          { count: check.nearCount },
        )}
      </p>
      {settle.error && <p className="form-fault">{failureInWords(settle.error)}</p>}
      {check.nearCount > check.near.length && (
        <p className="soft">{say("The first {count} are listed.", { count: check.near.length })}</p>
      )}
      {check.near.map(({ group, identity, rows, line, candidates, mayBeNew }) => (
        <div key={group} className="import-near">
          <div>
            <strong>
              <bdi>{identity.name ?? identity.number}</bdi>
            </strong>{" "}
            <span className="soft">
              {say("{details}; line {line}, {rows, plural, one {# row} other {# rows}}", {
                details: [identity.number, identity.born && dateWords(identity.born)]
                  .filter(Boolean)
                  .join(", "),
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
                onClick={() => decide(group, { child: child.id })}
              >
                {say("It is {who}, born {born}: {why}", {
                  who: [child.name, child.number].filter(Boolean).join(", "),
                  born: dateWords(child.born),
                  why,
                })}
              </button>
            ))}
            {mayBeNew && (
              <button type="button" disabled={settle.isPending} onClick={() => decide(group, "new")}>
                {say("Another child")}
              </button>
            )}
            <button
              type="button"
              className="link"
              disabled={settle.isPending}
              onClick={() => decide(group, "leave")}
            >
              {say("Leave these rows out")}
            </button>
          </div>
        </div>
      ))}
      {suggested.length > 1 && (
        <div className="form-actions">
          <button
            type="button"
            disabled={settle.isPending}
            onClick={() => settle.mutate({ decisions: suggested })}
          >
            {suggested.length === check.near.length
              ? say("All of these {count} are the child that is suggested", { count: suggested.length })
              : say("The {count} with one suggestion are the child that is suggested", {
                  count: suggested.length,
                })}
          </button>
        </div>
      )}
    </section>
  )
}
