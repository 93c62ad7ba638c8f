import { useState } from "react"
import { listed, say, shortDayInWords } from "../../../engine/say.js"
import type { TokensAnswer } from "../../../server/contract/tokens.js"
import { failureInWords } from "../../client.js"
import { Waiting } from "../../parts/waiting.js"
import { AskedFirst } from "./asked-first.js"
import { instantInWords, SCOPE_WORDS, TOKEN_STATE_WORDS } from "./connection-words.js"
import { NewToken } from "./new-token.js"
import { SearchBox } from "./search-box.js"
import { useRevokeToken, useTokens } from "./use-connections.js"

type Token = TokensAnswer["tokens"][number]

/** Keys of other programs: who may do what, until when, and the way to stop one. */
export function TokenList({ onDone }: { readonly onDone: (message: string) => void }) {
  const { data, error } = useTokens()
  const revoke = useRevokeToken()
  const [search, setSearch] = useState("")
  const [isNew, setNew] = useState(false)
  const [asking, setAsking] = useState<Token | null>(null)
  const failure = error ?? revoke.error
  const found = (data?.tokens ?? []).filter((token) => matches(token, search))
  return (
    <section className="card connection-card" aria-label={say("Tokens")}>
      <div className="connection-head">
        <h2>{say("Tokens")}</h2>
        <button type="button" className="primary" onClick={() => setNew(true)}>
          {say("New token")}
        </button>
      </div>
      <p className="soft">
        {say(
          "A token lets another program of yours in without a password. What may be done with it is chosen when it is made, and it can be stopped at any time.",
        )}
      </p>
      {failure && <p className="form-fault">{failureInWords(failure)}</p>}
      {!data && !error && <Waiting for={say("the tokens")} />}
      {data && data.tokens.length > 0 && (
        <>
          <SearchBox label={say("Search tokens by name or person")} value={search} onChange={setSearch} />
          <div className="connection-table">
            <table>
              <thead>
                <tr>
                  <th scope="col">{say("Name")}</th>
                  <th scope="col">{say("It may")}</th>
                  <th scope="col">{say("State")}</th>
                  <th scope="col">{say("Last used")}</th>
                  <th scope="col">
                    <span className="unseen">{say("Revoke")}</span>
                  </th>
                </tr>
              </thead>
              <tbody>
                {found.map((token) => (
                  <Row key={token.id} token={token} onAsk={() => setAsking(token)} />
                ))}
              </tbody>
            </table>
          </div>
          {found.length === 0 && <p className="soft empty">{say("No token matches.")}</p>}
        </>
      )}
      {data && data.tokens.length === 0 && <p className="soft">{say("No token yet.")}</p>}
      {isNew && <NewToken onClose={() => setNew(false)} />}
      {asking && (
        <AskedFirst
          title={say("Revoke the token {name}?", { name: asking.name })}
          text={say(
            "The program that has it is let in no more, at once. A new token can be made at any time.",
          )}
          yes={say("Revoke it")}
          onYes={() =>
            revoke.mutate(asking.id, {
              onSuccess: () => onDone(say("The token {name} is revoked.", { name: asking.name })),
            })
          }
          onClose={() => setAsking(null)}
        />
      )}
    </section>
  )
}

function Row({ token, onAsk }: { readonly token: Token; readonly onAsk: () => void }) {
  const { name, ending, scopes, state, createdAt, createdBy, expiresAt, lastUsedAt, revokedBy } = token
  const day = (instant: string) => shortDayInWords(instant.slice(0, 10))
  return (
    <tr>
      <th scope="row">
        <bdi>{name}</bdi>
        <span className="soft small">{say("ends in {ending}", { ending })}</span>
        <span className="soft small">
          {say("Made {day} by {who}.", { day: day(createdAt), who: createdBy })}
        </span>
      </th>
      <td>{listed(scopes.map((scope) => say(SCOPE_WORDS[scope])))}</td>
      <td>
        {say(TOKEN_STATE_WORDS[state], { day: day(expiresAt) })}
        {revokedBy && <span className="soft small">{say("by {who}", { who: revokedBy })}</span>}
      </td>
      <td>{lastUsedAt === null ? say("not yet") : instantInWords(lastUsedAt)}</td>
      <td>
        {state === "open" && (
          <button type="button" aria-label={say("Revoke {name}", { name })} onClick={onAsk}>
            {say("Revoke")}
          </button>
        )}
      </td>
    </tr>
  )
}

function matches({ name, createdBy, ending }: Token, search: string): boolean {
  const text = `${name} ${createdBy} ${ending}`.toLowerCase()
  return search
    .toLowerCase()
    .split(/\s+/)
    .every((word) => text.includes(word))
}
