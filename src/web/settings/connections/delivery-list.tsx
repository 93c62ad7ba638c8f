import { Link } from "@tanstack/react-router"
import { useDeferredValue, useState } from "react"
import { DELIVERY_STATES, type DeliveryState } from "../../../engine/access/webhook-events.js"
import { say } from "../../../engine/say.js"
import type { DeliveriesAnswer } from "../../../server/contract/webhooks.js"
import { failureInWords } from "../../client.js"
import { Field } from "../../parts/field.js"
import { PageLinks } from "../../parts/page-links.js"
import { Waiting } from "../../parts/waiting.js"
import {
  DELIVERY_STATE_WORDS,
  deliveryProblemInWords,
  EVENT_WORDS,
  instantInWords,
} from "./connection-words.js"
import { SearchBox } from "./search-box.js"
import { useDeliverAgain, useDeliveries } from "./use-connections.js"

type Delivery = DeliveriesAnswer["deliveries"][number]

/** Everything that was told, with what was answered, and a way to tell it again. */
export function DeliveryList({ onDone }: { readonly onDone: (message: string) => void }) {
  const [typed, setTyped] = useState("")
  const [state, setState] = useState<DeliveryState | "">("")
  const [page, setPage] = useState(1)
  const search = useDeferredValue(typed.trim())
  const { data, error } = useDeliveries({ search, state, page })
  const again = useDeliverAgain()
  const failure = error ?? again.error
  return (
    <section className="card connection-card" aria-label={say("Deliveries")}>
      <h2>{say("Deliveries")}</h2>
      <div className="connection-filter">
        <SearchBox
          label={say("Search by child, address or id")}
          value={typed}
          onChange={(value) => {
            setTyped(value)
            setPage(1)
          }}
        />
        <Field label={say("State")}>
          {(control) => (
            <select
              {...control}
              value={state}
              onChange={({ target }) => {
                setState(target.value as DeliveryState | "")
                setPage(1)
              }}
            >
              <option value="">{say("All")}</option>
              {DELIVERY_STATES.map((each) => (
                <option key={each} value={each}>
                  {say(DELIVERY_STATE_WORDS[each])}
                </option>
              ))}
            </select>
          )}
        </Field>
      </div>
      {failure && <p className="form-fault">{failureInWords(failure)}</p>}
      {!data && !error && <Waiting for={say("the deliveries")} />}
      {data && data.deliveries.length > 0 && (
        <div className="connection-table">
          <table>
            <thead>
              <tr>
                <th scope="col">{say("What")}</th>
                <th scope="col">{say("To")}</th>
                <th scope="col">{say("State")}</th>
                <th scope="col">
                  <span className="unseen">{say("Send again")}</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {data.deliveries.map((delivery) => (
                <Row
                  key={delivery.id}
                  delivery={delivery}
                  onAgain={() =>
                    again.mutate(delivery.id, {
                      onSuccess: () => onDone(say("It is sent again with the next look, within a minute.")),
                    })
                  }
                />
              ))}
            </tbody>
          </table>
        </div>
      )}
      {data && data.deliveries.length === 0 && (
        <p className="soft empty">
          {search || state ? say("No delivery matches.") : say("Nothing was sent yet.")}
        </p>
      )}
      {data && (
        <PageLinks
          page={data.page}
          pages={Math.ceil(data.total / data.pageSize)}
          link={({ page: to, words }) => (
            <button type="button" className="link" onClick={() => setPage(to)}>
              {words}
            </button>
          )}
        />
      )}
    </section>
  )
}

function Row({ delivery, onAgain }: { readonly delivery: Delivery; readonly onAgain: () => void }) {
  const { id, url, event, child, state, status, problem, attempts, nextAttemptAt, changedAt } = delivery
  const what = say(EVENT_WORDS[event])
  return (
    <tr>
      <th scope="row">
        {what}
        {child && (
          <span className="small">
            <Link to="/children/$childId" params={{ childId: child.id }}>
              <bdi>{child.name}</bdi>
            </Link>
          </span>
        )}
        <span className="soft small connection-url">{id}</span>
      </th>
      <td>
        <span className="connection-url">{url}</span>
      </td>
      <td>
        <span className={state === "failed" ? "late" : undefined}>{say(DELIVERY_STATE_WORDS[state])}</span>
        <span className="soft small">{instantInWords(changedAt)}</span>
        {problem !== null ? (
          <span className="soft small">{deliveryProblemInWords(problem, status)}</span>
        ) : (
          status !== null && <span className="soft small">{say("Answered {status}", { status })}</span>
        )}
        {state === "waiting" && nextAttemptAt !== null && (
          <span className="soft small">
            {say("{attempts, plural, one {# attempt} other {# attempts}}; next {instant}", {
              attempts,
              instant: instantInWords(nextAttemptAt),
            })}
          </span>
        )}
      </td>
      <td>
        {(state === "delivered" || state === "failed") && (
          <button type="button" aria-label={say("Send again: {what}", { what })} onClick={onAgain}>
            {say("Send again")}
          </button>
        )}
      </td>
    </tr>
  )
}
