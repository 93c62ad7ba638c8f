import { say } from "../../engine/say.js"
import { inWords } from "../format.js"
import { type Deciding, saidOf } from "./deciding.js"
import { useDecide } from "./use-inbox.js"

/** What taking back would do stands there before it is done. */
export function Undo({ item, onDone }: Deciding) {
  const decide = useDecide(item.id)
  const isBlocked = item.undo.some(({ blocks }) => blocks)
  return (
    <section className="card" aria-label={say("Take back")}>
      <h2>{say("Take back")}</h2>
      <ul>
        {item.undo.map(({ text }) => (
          <li key={text}>{inWords(text)}</li>
        ))}
      </ul>
      <div role="alert">{decide.error && <p className="form-fault">{saidOf(decide.error)}</p>}</div>
      <div className="form-actions">
        <button
          type="button"
          disabled={isBlocked || decide.isPending}
          onClick={() =>
            decide.mutate(
              { to: "undo", body: {} },
              { onSuccess: () => onDone(say("Taken back. It waits again.")) },
            )
          }
        >
          {say("Take back")}
        </button>
      </div>
    </section>
  )
}
