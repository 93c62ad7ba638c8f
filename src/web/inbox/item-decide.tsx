import { useState } from "react"
import { say } from "../../engine/say.js"
import type { TakeInboxBody } from "../../server/contract/inbox.js"
import { Field } from "../parts/field.js"
import { type Deciding, saidOf } from "./deciding.js"
import { NewChild } from "./item-new-child.js"
import { SetAside } from "./item-set-aside.js"
import { useDecide } from "./use-inbox.js"

/** What a person does with an object that waits. */
export function Decide({ item, child, onDone }: Deciding & { readonly child: string | null }) {
  const decide = useDecide(item.id)
  const [reason, setReason] = useState("")
  const [opened, setOpened] = useState<"new-child" | "set-aside" | null>(null)
  const compared = item.compared && item.compared.child.id === child ? item.compared : null
  const isAgainst = compared?.visits.some(({ contradictions }) => contradictions.length > 0) ?? false
  const take = (body: TakeInboxBody) =>
    decide.mutate(
      { to: "take", body },
      { onSuccess: ({ child: under }) => onDone(say("Put under {name}.", { name: under?.name ?? "" })) },
    )
  const blocked = !child || !compared || compared.problems.length > 0 || decide.isPending
  return (
    <section className="card" aria-label={say("Decide")}>
      <h2>{say("Decide")}</h2>
      <div role="alert">{decide.error && <p className="form-fault">{saidOf(decide.error)}</p>}</div>
      {compared && !isAgainst && (
        <p>
          {say(
            "{count, plural, =0 {Nothing new would be recorded.} one {# entry would be recorded.} other {# entries would be recorded.}}",
            {
              count: compared.entries,
            },
          )}
        </p>
      )}
      {item.alike > 0 && (
        <p className="soft">
          {say(
            "{count, plural, one {# other object waits that names exactly this child: it follows.} other {# other objects wait that name exactly this child: they follow.}}",
            { count: item.alike },
          )}
        </p>
      )}
      {isAgainst && (
        <Field label={say("Reason")} note={say("Needed to correct the record.")}>
          {(control) => (
            <input {...control} value={reason} onChange={(event) => setReason(event.target.value)} />
          )}
        </Field>
      )}
      <div className="form-actions">
        {!isAgainst && (
          <button
            type="button"
            className="primary"
            disabled={blocked}
            onClick={() => child && take({ child })}
          >
            {compared ? say("Put under {name}", { name: compared.child.name }) : say("Put under this child")}
          </button>
        )}
        {isAgainst && (
          <>
            <button type="button" disabled={blocked} onClick={() => child && take({ child, settle: "keep" })}>
              {say("Keep what is recorded")}
            </button>
            <button
              type="button"
              disabled={blocked || reason.trim() === ""}
              onClick={() => child && take({ child, settle: "correct", reason })}
            >
              {say("Correct the record")}
            </button>
          </>
        )}
        <button type="button" onClick={() => setOpened("new-child")}>
          {say("New child from this …")}
        </button>
        <button type="button" onClick={() => setOpened("set-aside")}>
          {say("Set aside …")}
        </button>
      </div>
      {opened === "new-child" && <NewChild item={item} onDone={onDone} onClose={() => setOpened(null)} />}
      {opened === "set-aside" && <SetAside item={item} onDone={onDone} onClose={() => setOpened(null)} />}
    </section>
  )
}
