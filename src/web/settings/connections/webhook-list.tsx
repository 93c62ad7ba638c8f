import { useState } from "react"
import { say } from "../../../engine/say.js"
import type { WebhooksAnswer } from "../../../server/contract/webhooks.js"
import { failureInWords } from "../../client.js"
import { Waiting } from "../../parts/waiting.js"
import { AskedFirst } from "./asked-first.js"
import { EVENT_WORDS, instantInWords, newsInWords, WEBHOOK_STATE_WORDS } from "./connection-words.js"
import { NewWebhook } from "./new-webhook.js"
import { SearchBox } from "./search-box.js"
import { useLookForNews, useRemoveWebhook, useSetWebhook, useWebhooks } from "./use-connections.js"

type Webhook = WebhooksAnswer["webhooks"][number]

/** Addresses that are told of what is new, each with how it stands. */
export function WebhookList({ onDone }: { readonly onDone: (message: string) => void }) {
  const { data, error } = useWebhooks()
  const [set, remove, look] = [useSetWebhook(), useRemoveWebhook(), useLookForNews()]
  const [search, setSearch] = useState("")
  const [isNew, setNew] = useState(false)
  const [asking, setAsking] = useState<Webhook | null>(null)
  const failure = error ?? set.error ?? remove.error ?? look.error
  const all = data?.webhooks ?? []
  const found = all.filter(({ url }) => url.toLowerCase().includes(search.trim().toLowerCase()))
  return (
    <section className="card connection-card" aria-label={say("Notices to other programs")}>
      <div className="connection-head">
        <h2>{say("Notices to other programs")}</h2>
        <div className="form-actions">
          {all.length > 0 && (
            <button
              type="button"
              disabled={look.isPending}
              onClick={() => look.mutate(undefined, { onSuccess: (answer) => onDone(newsInWords(answer)) })}
            >
              {look.isPending ? say("Looking …") : say("Look and send now")}
            </button>
          )}
          <button type="button" className="primary" onClick={() => setNew(true)}>
            {say("New address")}
          </button>
        </div>
      </div>
      <p className="soft">
        {say(
          "Another program is told that something is new, by ids and kinds only: never a name, a birth date or a figure. Nothing is sent until an address is added, and nothing of what was before.",
        )}
      </p>
      {failure && <p className="form-fault">{failureInWords(failure)}</p>}
      {!data && !error && <Waiting for={say("the addresses")} />}
      {all
        .filter(({ state }) => state === "disabled")
        .map(({ id, url, failures, changedAt }) => (
          <p key={id} className="form-fault">
            {say(
              "{url} is told nothing since {instant}: {failures, plural, one {# attempt} other {# attempts}} in a row failed. See what is wrong there and turn it on again.",
              { url, instant: instantInWords(changedAt), failures },
            )}
          </p>
        ))}
      {all.length > 0 && (
        <>
          <SearchBox label={say("Search addresses")} value={search} onChange={setSearch} />
          <div className="connection-table">
            <table>
              <thead>
                <tr>
                  <th scope="col">{say("Address")}</th>
                  <th scope="col">{say("It is told when")}</th>
                  <th scope="col">{say("State")}</th>
                  <th scope="col">
                    <span className="unseen">{say("Change")}</span>
                  </th>
                </tr>
              </thead>
              <tbody>
                {found.map((webhook) => (
                  <Row
                    key={webhook.id}
                    webhook={webhook}
                    onSet={(state) => set.mutate({ id: webhook.id, state })}
                    onAsk={() => setAsking(webhook)}
                  />
                ))}
              </tbody>
            </table>
          </div>
          {found.length === 0 && <p className="soft empty">{say("No address matches.")}</p>}
        </>
      )}
      {data && all.length === 0 && <p className="soft">{say("No address yet; nothing is sent.")}</p>}
      {isNew && <NewWebhook onClose={() => setNew(false)} />}
      {asking && (
        <AskedFirst
          title={say("Remove this address?")}
          text={say("{url} is told nothing more, and what still waits for it is called off.", {
            url: asking.url,
          })}
          yes={say("Remove it")}
          onYes={() => remove.mutate(asking.id, { onSuccess: () => onDone(say("The address is removed.")) })}
          onClose={() => setAsking(null)}
        />
      )}
    </section>
  )
}

function Row(props: {
  readonly webhook: Webhook
  readonly onSet: (state: "on" | "off") => void
  readonly onAsk: () => void
}) {
  const { url, events, state, delivered, waiting, failed, pausedUntil } = props.webhook
  const next = state === "on" ? "off" : "on"
  return (
    <tr>
      <th scope="row">
        <span className="connection-url">{url}</span>
      </th>
      <td>
        <ul className="plain-list">
          {events.map((event) => (
            <li key={event}>{say(EVENT_WORDS[event])}</li>
          ))}
        </ul>
      </td>
      <td>
        <span className={state === "disabled" ? "late" : undefined}>{say(WEBHOOK_STATE_WORDS[state])}</span>
        <span className="soft small">
          {say("{delivered} delivered, {waiting} waiting, {failed} given up", { delivered, waiting, failed })}
        </span>
        {state === "on" && pausedUntil !== null && (
          <span className="soft small">
            {say("failed; next attempt {instant}", { instant: instantInWords(pausedUntil) })}
          </span>
        )}
      </td>
      <td>
        <div className="form-actions">
          <button
            type="button"
            aria-label={next === "on" ? say("Turn on {url}", { url }) : say("Turn off {url}", { url })}
            onClick={() => props.onSet(next)}
          >
            {next === "on" ? say("Turn on") : say("Turn off")}
          </button>
          <button type="button" aria-label={say("Remove {url}", { url })} onClick={props.onAsk}>
            {say("Remove")}
          </button>
        </div>
      </td>
    </tr>
  )
}
