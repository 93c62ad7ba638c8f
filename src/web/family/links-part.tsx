import "./links.css"
import { useMutation, useQuery, useQueryClient } from "@tanstack/react-query"
import { Link } from "@tanstack/react-router"
import { type FormEvent, useState } from "react"
import { LANGUAGE_NAMES, LANGUAGES, type Language, say } from "../../engine/say.js"
import type { LinksAnswer, NewLinkBody } from "../../server/contract/family-links.js"
import type { ChildPartProps } from "../child/child-part-props.js"
import { ask, failureInWords } from "../client.js"
import { Field } from "../parts/field.js"
import { Waiting } from "../parts/waiting.js"
import { LinkRow } from "./link-row.js"

// A routine has a visit every half year: a link lasts until the next one and a little over. Common practice, no source.
const LIVES_DAYS = [7, 30, 90, 210, 366] as const
const USUAL_DAYS = 210

/** The page for the family: shown on this screen, or opened at home by a link. */
export function LinksPart({ view, onDone }: ChildPartProps) {
  const { id } = view.child
  const url = `/api/children/${id}/links`
  const client = useQueryClient()
  const links = useQuery({ queryKey: ["links", id], queryFn: () => ask<LinksAnswer>("GET", url) })
  const taken = (answer: LinksAnswer) => client.setQueryData(["links", id], answer)
  const add = useMutation({
    mutationFn: (body: NewLinkBody) => ask<LinksAnswer>("POST", url, body),
    onSuccess: (answer) => {
      taken(answer)
      onDone(say("A link is made. It opens after the child’s birth date is entered."))
    },
  })
  const revoke = useMutation({
    mutationFn: (link: string) => ask<LinksAnswer>("DELETE", `${url}/${link}`),
    onSuccess: (answer) => {
      taken(answer)
      onDone(say("The link is taken back. It opens no more."))
    },
  })
  const [language, setLanguage] = useState<Language>("en")
  const [days, setDays] = useState<number>(USUAL_DAYS)
  const submit = (event: FormEvent) => {
    event.preventDefault()
    add.mutate({ language, days })
  }
  const failure = links.error ?? add.error ?? revoke.error
  return (
    <div className="family-links">
      <section className="card">
        <h2>{say("On this screen")}</h2>
        <p>
          {say(
            "In plain words and large, with nothing of the practice’s pages around it: for a screen turned round.",
          )}
        </p>
        <p>
          <Link className="button" to="/children/$childId/family" params={{ childId: id }}>
            {say("Show the family page")}
          </Link>
        </p>
      </section>
      <section className="card" aria-labelledby="links-calendar">
        <h2 id="links-calendar">{say("For the family’s calendar")}</h2>
        <p className="soft">
          {say("What is owed, as a file that any calendar takes. Its titles say nothing about health.")}
        </p>
        <p className="row-actions">
          {LANGUAGES.map((each) => (
            <a
              key={each}
              className="button"
              lang={each}
              href={`/api/children/${id}/calendar?language=${each}`}
              download="appointments.ics"
            >
              {LANGUAGE_NAMES[each]}
            </a>
          ))}
        </p>
      </section>
      <section className="card" aria-labelledby="links-home">
        <h2 id="links-home">{say("At home, by a link")}</h2>
        <p className="soft">
          {say(
            "No account is needed. The address says nothing about the child; the page opens after the child’s birth date, and what it shows is always what the record holds then.",
          )}
        </p>
        <div role="alert">{failure && <p className="form-fault">{failureInWords(failure)}</p>}</div>
        <form className="form" onSubmit={submit}>
          <div className="form-row">
            <Field label={say("Language")}>
              {(control) => (
                <select
                  {...control}
                  value={language}
                  onChange={({ target }) => setLanguage(target.value as Language)}
                >
                  {LANGUAGES.map((each) => (
                    <option key={each} value={each} lang={each}>
                      {LANGUAGE_NAMES[each]}
                    </option>
                  ))}
                </select>
              )}
            </Field>
            <Field label={say("Opens for")}>
              {(control) => (
                <select {...control} value={days} onChange={({ target }) => setDays(Number(target.value))}>
                  {LIVES_DAYS.map((each) => (
                    <option key={each} value={each}>
                      {say("{days, plural, one {# day} other {# days}}", { days: each })}
                    </option>
                  ))}
                </select>
              )}
            </Field>
          </div>
          <div className="form-actions">
            <button type="submit" className="primary" disabled={add.isPending}>
              {say("Make a link")}
            </button>
          </div>
        </form>
        {links.isPending && <Waiting for={say("the links")} />}
        {links.data && links.data.links.length > 0 && (
          <ul className="plain-list">
            {links.data.links.map((link) => (
              <LinkRow key={link.id} link={link} onRevoke={() => revoke.mutate(link.id)} />
            ))}
          </ul>
        )}
      </section>
    </div>
  )
}
