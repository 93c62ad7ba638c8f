import type { MissingItem } from "../../engine/protocol/examination-plan.js"
import { say } from "../../engine/say.js"

/** What the examination still owes, by name; each leads to its place. */
export function MissingCard(props: {
  readonly title: string
  readonly missing: readonly MissingItem[]
  readonly onGo: (id: string) => void
}) {
  const { title, missing, onGo } = props
  return (
    <section className="card answer" aria-labelledby="missing-title">
      <h2 id="missing-title">{say("Still missing for the {examination}", { examination: title })}</h2>
      {missing.length === 0 ? (
        <p>{say("Nothing: all that is owed is entered.")}</p>
      ) : (
        <>
          <p className="soft small">
            {say("{count, plural, one {# entry} other {# entries}}", { count: missing.length })}
          </p>
          <ul className="missing-list">
            {missing.map(({ id, name }) => (
              <li key={name}>
                <button type="button" className="link" onClick={() => onGo(id)}>
                  {name}
                </button>
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  )
}
