import "../messages/messages.css"
import "./inbox.css"
import { Link } from "@tanstack/react-router"
import { useState } from "react"
import { say } from "../../engine/say.js"
import type { InboxItemAnswer } from "../../server/contract/inbox.js"
import { failureInWords } from "../client.js"
import { inWords } from "../format.js"
import { instantInWords } from "../messages/messages-words.js"
import { Notice } from "../parts/notice.js"
import { PageHeading } from "../parts/page-heading.js"
import { Waiting } from "../parts/waiting.js"
import { identityWords, STATE_WORDS } from "./inbox-words.js"
import { Decide } from "./item-decide.js"
import { ItemHistory } from "./item-history.js"
import { Holds } from "./item-holds.js"
import { Undo } from "./item-undo.js"
import { Whose } from "./item-whose.js"
import { useInboxItem } from "./use-inbox.js"

/** One object: what it holds, whose it may be, and what a person does with it. No child is chosen beforehand. */
export function InboxItemPage({ itemId }: { readonly itemId: string }) {
  const [child, setChild] = useState<string | null>(null)
  const [message, setMessage] = useState<string | null>(null)
  const { data: item, error } = useInboxItem(itemId, child)
  return (
    <>
      <p>
        <Link to="/inbox">{say("Back to the Inbox")}</Link>
      </p>
      <div className="page-head">
        <PageHeading title={item ? identityWords(item.identity) : say("Inbox")} />
        {item && <span className="soft">{say(STATE_WORDS[item.state])}</span>}
      </div>
      <Notice message={message} />
      {error && <p className="form-fault">{failureInWords(error)}</p>}
      {!item && !error && <Waiting for={say("the object")} />}
      {item && (
        <div className="inbox-item">
          <Facts item={item} />
          <Holds item={item} />
          {item.state === "waiting" ? (
            <>
              <Whose item={item} child={child} onChild={setChild} />
              <Decide
                item={item}
                child={child}
                onDone={(said) => {
                  setChild(null)
                  setMessage(said)
                }}
              />
            </>
          ) : (
            <Undo item={item} onDone={setMessage} />
          )}
          <ItemHistory events={item.events} />
        </div>
      )}
    </>
  )
}

function Facts({ item }: { readonly item: InboxItemAnswer }) {
  return (
    <section className="card" aria-label={say("What came")}>
      <dl className="facts">
        <dt>{say("File")}</dt>
        <dd>
          <bdi>{item.file}</bdi>{" "}
          <a href={`/api/inbox/${item.id}/file`} download>
            {say("Download as received")}
          </a>
        </dd>
        <dt>{say("From|inbox")}</dt>
        <dd>
          <bdi>{item.sentBy}</bdi>
          {item.device && item.device !== item.sentBy && <span className="soft small">{item.device}</span>}
          <span className="soft small">{instantInWords(item.receivedAt)}</span>
        </dd>
        {item.whyInWords && (
          <>
            <dt>{say("Why it waits")}</dt>
            <dd>{inWords(item.whyInWords)}</dd>
          </>
        )}
        {item.child && (
          <>
            <dt>{say("Child")}</dt>
            <dd>
              <Link to="/children/$childId" params={{ childId: item.child.id }}>
                <bdi>{item.child.name}</bdi>
              </Link>
            </dd>
          </>
        )}
        {item.reason && (
          <>
            <dt>{say("Reason")}</dt>
            <dd>{item.reason}</dd>
          </>
        )}
        {item.notes.length > 0 && (
          <>
            <dt>{say("Said by the reader")}</dt>
            <dd>
              {item.notes.map(({ path, why }) => (
                <span key={`${path} ${why}`} className="block small">
                  {inWords(why)}
                </span>
              ))}
            </dd>
          </>
        )}
      </dl>
    </section>
  )
}
