import { useState } from "react"
import { dateWords } from "../../chart/words.js"
import { say } from "../../engine/say.js"
import type { InboxItemAnswer } from "../../server/contract/inbox.js"
import { inWords } from "../format.js"
import { Field } from "../parts/field.js"
import { useChildren } from "../queries.js"

/** Whom it may be about: suggestions with their reason, and a search. */
export function Whose(props: {
  readonly item: InboxItemAnswer
  readonly child: string | null
  readonly onChild: (child: string) => void
}) {
  const { item, child, onChild } = props
  const [search, setSearch] = useState("")
  const found = useChildren({ search, page: 1 })
  const suggested = item.candidates.map(({ why, ...one }) => ({ ...one, why }))
  const searched = search.trim() === "" ? [] : (found.data?.children ?? []).slice(0, 8)
  const others = searched.filter(({ id }) => !suggested.some((one) => one.id === id))
  const listed = [...suggested, ...others.map((one) => ({ ...one, why: "" }))]
  return (
    <section className="card" aria-label={say("Whose is it")}>
      <fieldset>
        <legend>
          <h2>{say("Whose is it")}</h2>
        </legend>
        {suggested.length === 0 && (
          <p className="soft">{say("No child of this practice is like what the file says.")}</p>
        )}
        <ul className="who-list">
          {listed.map(({ id, name, number, born, why }) => (
            <li key={id}>
              <label>
                <input type="radio" name="whose" checked={child === id} onChange={() => onChild(id)} />{" "}
                <bdi>{name}</bdi>, {say("born {day}", { day: dateWords(born) })}
                {number && `, ${say("number {number}", { number })}`}
                {why && <span className="soft small block">{inWords(why)}</span>}
              </label>
            </li>
          ))}
        </ul>
      </fieldset>
      <Field label={say("Find a child")}>
        {(control) => (
          <input
            {...control}
            type="search"
            autoComplete="off"
            value={search}
            onChange={(event) => setSearch(event.target.value)}
          />
        )}
      </Field>
    </section>
  )
}
