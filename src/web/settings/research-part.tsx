import "../styles/tables.css"
import "./research.css"
import { useQuery } from "@tanstack/react-query"
import { useId, useState } from "react"
import { say } from "../../engine/say.js"
import type { ResearchAnswer } from "../../server/contract/research.js"
import { ask, failureInWords } from "../client.js"
import { useLate, Waiting } from "../parts/waiting.js"

/** The measurements of the practice without names, to be studied elsewhere; what is small in it is warned of first. */
export function ResearchPart() {
  const table = useQuery({
    queryKey: ["research"],
    queryFn: () => ask<ResearchAnswer>("GET", "/api/research"),
  })
  const late = useLate(table.isPending)
  if (table.isError) return <p className="form-fault">{failureInWords(table.error)}</p>
  if (!table.data) return late ? <Waiting for={say("the table")} /> : null
  return (
    <div className="research-part">
      <section className="card" aria-label={say("Table without names")}>
        <p>
          {say(
            "{rows, plural, one {# row} other {# rows}} of {children, plural, one {# child} other {# children}}: one row for each eye that was examined. Names, numbers, birth dates, free text, pharmacies, lots and the makers of instruments are not in it. All days of a child are moved by the same secret number of days, so intervals and ages are exact and seasons are not.",
            { rows: table.data.rows, children: table.data.children },
          )}
        </p>
        <SmallCells table={table.data} />
        <p className="soft">
          {say(
            "Taking out names does not make data anonymous by itself. Local law and the ethics committee decide what may be shared.",
          )}
        </p>
        <p>
          <a className="button" href="/api/research/table.zip" download>
            {say("Download the table")}
          </a>
        </p>
      </section>
      <Dictionary table={table.data} />
    </div>
  )
}

function SmallCells({ table: { smallCells, smallestCell } }: { readonly table: ResearchAnswer }) {
  if (smallCells.length === 0) return <p>{say("No group of children is small.")}</p>
  const few = smallCells.reduce((sum, { children }) => sum + children, 0)
  return (
    <details>
      <summary>
        {say(
          "Caution: {few, plural, one {# child is} other {# children are}} in groups of fewer than {smallestCell} and could be recognised by who knows them",
          { few, smallestCell },
        )}
      </summary>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by keyboard */}
      <section className="scroll" tabIndex={0} aria-label={say("Small groups")}>
        <table className="data research">
          <thead>
            <tr>
              <th scope="col">{say("Sex")}</th>
              <th scope="col">{say("Ancestry")}</th>
              <th scope="col">{say("Age at the first visit (years)")}</th>
              <th scope="col">{say("Children")}</th>
            </tr>
          </thead>
          <tbody>
            {smallCells.map((cell) => (
              <tr key={`${cell.sex} ${cell.ancestry} ${cell.ageAtFirstVisit}`}>
                <td>{cell.sex}</td>
                <td>{cell.ancestry}</td>
                <td className="number">{cell.ageAtFirstVisit}</td>
                <td className="number">{cell.children}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </details>
  )
}

function Dictionary({ table: { dictionary } }: { readonly table: ResearchAnswer }) {
  const id = useId()
  const [search, setSearch] = useState("")
  const sought = search.trim().toLowerCase()
  const found = dictionary.filter(({ column, title, description }) =>
    `${column} ${title} ${description}`.toLowerCase().includes(sought),
  )
  return (
    <section className="card" aria-label={say("What its columns mean")}>
      <h2>{say("What its columns mean")}</h2>
      <search className="search">
        <label className="unseen" htmlFor={id}>
          {say("Search the columns")}
        </label>
        <input
          id={id}
          type="search"
          autoComplete="off"
          placeholder={say("Search the columns")}
          value={search}
          onChange={({ target }) => setSearch(target.value)}
        />
      </search>
      {/* Told in English, as the table's own files are: they go to whoever studies it. */}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by keyboard */}
      <section className="scroll" tabIndex={0} aria-label={say("Columns")} lang="en">
        <table className="data research">
          <thead>
            <tr>
              <th scope="col">{say("Column")}</th>
              <th scope="col">{say("Meaning")}</th>
              <th scope="col">{say("Unit")}</th>
              <th scope="col">{say("What may stand there")}</th>
            </tr>
          </thead>
          <tbody>
            {found.map(({ column, title, description, unit, allowed }) => (
              <tr key={column}>
                <th scope="row">
                  <code>{column}</code>
                </th>
                <td>
                  {title}. <span className="soft">{description}</span>
                </td>
                <td>{unit}</td>
                <td>{allowed.replaceAll(" | ", ", ")}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {found.length === 0 && <p>{say("No column is called that.")}</p>}
    </section>
  )
}
