import type { MissingItem } from "../../engine/protocol/examination-plan.js"
import { say } from "../../engine/say.js"
import { sentence } from "../format.js"

const NAMED = 8

/** The way to save; where something owed is missing, it is said by name first. */
export function SaveActions(props: {
  readonly saving: boolean
  /** Set once saving was tried with something missing. */
  readonly askedFor: readonly MissingItem[] | null
  readonly onSaveAnyway: () => void
  readonly onGo: (id: string) => void
  readonly onDiscard: () => void
}) {
  const { saving, askedFor, onSaveAnyway, onGo, onDiscard } = props
  const first = askedFor?.[0]
  return (
    <>
      <div role="alert">
        {askedFor && (
          <p className="caution missing-asked">
            {say("Not entered: {missing} Save without?", { missing: sentence(inShort(askedFor)) })}
          </p>
        )}
      </div>
      <div className="form-actions">
        {/* Pressing it leaves the focus where it is: what a left field has to say would move the button away
            from under the pointer before the click is done. */}
        {askedFor ? (
          <button
            type="button"
            className="primary"
            disabled={saving}
            onMouseDown={(event) => event.preventDefault()}
            onClick={onSaveAnyway}
          >
            {say("Save without these")}
          </button>
        ) : (
          <button
            type="submit"
            className="primary"
            disabled={saving}
            onMouseDown={(event) => event.preventDefault()}
          >
            {say("Save visit")}
          </button>
        )}
        {first && (
          <button type="button" onClick={() => onGo(first.id)}>
            {say("Go to the first")}
          </button>
        )}
        <button type="button" onClick={onDiscard}>
          {say("Discard")}
        </button>
      </div>
    </>
  )
}

function inShort(missing: readonly MissingItem[]): string {
  const names = missing.map(({ name }) => name)
  if (names.length <= NAMED) return names.join(", ")
  return say("{first} and {more} more, all named below", {
    first: names.slice(0, NAMED).join(", "),
    more: names.length - NAMED,
  })
}
