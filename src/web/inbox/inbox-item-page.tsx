import "../messages/messages.css"
import "./inbox.css"
import { Link } from "@tanstack/react-router"
import { type FormEvent, useState } from "react"
import { dateWords } from "../../chart/words.js"
import { say } from "../../engine/say.js"
import type { InboxItemAnswer, TakeInboxBody } from "../../server/contract/inbox.js"
import { type CHILD_PATHS, ChildFields, NO_CHILD } from "../child/child-fields.js"
import { entryLine } from "../child/entry-words.js"
import { failureInWords, Refused } from "../client.js"
import { inWords } from "../format.js"
import { instantInWords } from "../messages/messages-words.js"
import { Dialog } from "../parts/dialog.js"
import { Field } from "../parts/field.js"
import { Notice } from "../parts/notice.js"
import { PageHeading } from "../parts/page-heading.js"
import { Waiting } from "../parts/waiting.js"
import { useChildren } from "../queries.js"
import { FiguresBeside } from "./figures-beside.js"
import { identityWords, STATE_WORDS } from "./inbox-words.js"
import { useDecide, useInboxItem } from "./use-inbox.js"

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

function Holds({ item }: { readonly item: InboxItemAnswer }) {
  const { compared, visits, documents } = item
  const shown =
    compared?.visits ??
    visits.map((offered) => ({ date: offered.date, recorded: null, offered, contradictions: [] }))
  const others = compared?.others ?? item.others
  return (
    <section className="card" aria-label={say("What it holds")}>
      <h2>
        {compared
          ? say("What it holds, beside the record of {name}", { name: compared.child.name })
          : say("What it holds")}
      </h2>
      {shown.map((visit) => (
        <FiguresBeside key={visit.date} visit={visit} isCompared={compared !== null} />
      ))}
      {documents.map(({ date, title, file }) => (
        <p key={file}>
          <a href={`/api/files/${file}`}>{say("{title}, {day}", { title, day: dateWords(date) })}</a>
        </p>
      ))}
      {others.length > 0 && (
        <>
          <h3>{compared ? say("Would be added as well") : say("As well")}</h3>
          <ul>
            {others.map((other) => (
              <li key={JSON.stringify(other)}>{entryLine(other as Parameters<typeof entryLine>[0])}</li>
            ))}
          </ul>
        </>
      )}
      {compared?.problems.map(({ message }) => (
        <p key={message} className="form-fault">
          {inWords(message)}
        </p>
      ))}
    </section>
  )
}

/** Whom it may be about: suggestions with their reason, and a search. */
function Whose(props: {
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

interface Deciding {
  readonly item: InboxItemAnswer
  readonly onDone: (message: string) => void
}

function Decide({ item, child, onDone }: Deciding & { readonly child: string | null }) {
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

function NewChild({ item, onDone, onClose }: Deciding & { readonly onClose: () => void }) {
  const decide = useDecide(item.id)
  const { name = "", number = "", born = "", sex } = item.identity
  const [typed, setTyped] = useState({ ...NO_CHILD, name, number, born, sex: sex ?? null })
  const faultAt = (path: (typeof CHILD_PATHS)[number]) =>
    decide.error instanceof Refused
      ? decide.error.problems.find((problem) => problem.path === `newChild.${path}`)?.allowed
      : undefined
  const submit = (event: FormEvent) => {
    event.preventDefault()
    const newChild = {
      name: typed.name,
      born: typed.born,
      sex: typed.sex as "female" | "male",
      ...(typed.number.trim() ? { number: typed.number } : {}),
    }
    decide.mutate(
      { to: "take", body: { newChild } },
      {
        onSuccess: () => {
          onClose()
          onDone(say("Put under {name}.", { name: typed.name }))
        },
      },
    )
  }
  return (
    <Dialog title={say("New child from this")} onClose={onClose} failure={decide.error}>
      <form className="form" onSubmit={submit} noValidate>
        <div role="alert">{decide.error && <p className="form-fault">{saidOf(decide.error)}</p>}</div>
        <ChildFields typed={typed} onChange={setTyped} faultAt={faultAt} />
        <div className="form-actions">
          <button type="submit" className="primary" disabled={decide.isPending}>
            {say("Add child")}
          </button>
        </div>
      </form>
    </Dialog>
  )
}

function SetAside({ item, onDone, onClose }: Deciding & { readonly onClose: () => void }) {
  const decide = useDecide(item.id)
  const [reason, setReason] = useState("")
  const submit = (event: FormEvent) => {
    event.preventDefault()
    decide.mutate(
      { to: "set-aside", body: { reason } },
      {
        onSuccess: () => {
          onClose()
          onDone(say("Set aside. Nothing was recorded, and the file is kept."))
        },
      },
    )
  }
  return (
    <Dialog title={say("Set aside")} onClose={onClose} failure={decide.error}>
      <form className="form" onSubmit={submit} noValidate>
        <Field label={say("Reason")} fault={decide.error ? saidOf(decide.error) : undefined}>
          {(control) => (
            <input {...control} value={reason} onChange={(event) => setReason(event.target.value)} />
          )}
        </Field>
        <div className="form-actions">
          <button type="submit" className="primary" disabled={decide.isPending}>
            {say("Set aside")}
          </button>
        </div>
      </form>
    </Dialog>
  )
}

/** What taking back would do stands there before it is done. */
function Undo({ item, onDone }: Deciding) {
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

/** A refusal with every problem: none of them stands at a field here. */
const saidOf = (error: unknown): string =>
  error instanceof Refused
    ? inWords([error.title, ...error.problems.map(({ message }) => message)].join(". "))
    : failureInWords(error)
