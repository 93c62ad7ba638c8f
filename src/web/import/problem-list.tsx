import { useDeferredValue, useId, useState } from "react"
import { say } from "../../engine/say.js"
import type { ImportCheck } from "../../server/contract/imports.js"

/** What is not taken and why, searchable. */
export function ProblemList({
  problems: { listed, count },
  download,
}: {
  readonly problems: ImportCheck["problems"]
  /** Address of the same as a table. */
  readonly download?: string | undefined
}) {
  const [typed, setTyped] = useState("")
  const search = useDeferredValue(typed.trim().toLowerCase())
  const id = useId()
  const found = listed.filter(({ line, heading, value, why }) =>
    `${line ?? ""} ${heading} ${value} ${why}`.toLowerCase().includes(search),
  )
  return (
    <section aria-label={say("Not taken")}>
      <h3>{say("{count, plural, one {# thing is not taken} other {# things are not taken}}", { count })}</h3>
      {count > listed.length && (
        <p className="soft">{say("The first {count} are listed.", { count: listed.length })}</p>
      )}
      <search className="search">
        <label className="unseen" htmlFor={id}>
          {say("Search what is not taken")}
        </label>
        <input
          id={id}
          type="search"
          autoComplete="off"
          placeholder={say("Line, column, value")}
          value={typed}
          onChange={({ target }) => setTyped(target.value)}
        />
        {download && (
          <a href={download} download>
            {say("As a table (CSV)")}
          </a>
        )}
      </search>
      {/* Reached by the keyboard as well, since it scrolls. */}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: see above */}
      <section className="scroll import-problems" tabIndex={0} aria-label={say("List of what is not taken")}>
        <table className="data">
          <thead>
            <tr>
              <th scope="col">{say("Line")}</th>
              <th scope="col">{say("Column or child")}</th>
              <th scope="col">{say("Value")}</th>
              <th scope="col">{say("Why")}</th>
            </tr>
          </thead>
          <tbody>
            {found.map(({ line, heading, value, why }) => (
              <tr key={`${line} ${heading} ${why} ${value}`}>
                <td>{line}</td>
                <td>
                  <bdi>{heading}</bdi>
                </td>
                <td>
                  <bdi>{value}</bdi>
                </td>
                <td>{why}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </section>
  )
}
