import { useQuery } from "@tanstack/react-query"
import { type FormEvent, useState } from "react"
import type { DocumentTemplate } from "../../engine/practice-rules.js"
import { type Language, say } from "../../engine/say.js"
import type { RulesAnswer } from "../../server/contract/rules.js"
import type {
  TemplateNamesAnswer,
  TemplateTrialAnswer,
  TemplateTrialBody,
} from "../../server/contract/templates.js"
import { ask, failureInWords } from "../client.js"
import { newEntryId } from "../entry-id.js"
import { faultsOf } from "../faults.js"
import { DocumentView } from "../papers/document-view.js"
import { Field } from "../parts/field.js"
import { useChildren, useRecordPaper } from "../queries.js"
import { useSettled } from "./use-settled.js"

type About = TemplateNamesAnswer["documents"][number]

/** The text of one template, what may stand in it, and the document it gives for a child of the practice. */
export function TemplateEditor(props: {
  readonly about: About
  readonly language: Language
  readonly current: RulesAnswer["papers"][number] | undefined
  readonly onDone: (message: string) => void
}) {
  const { about, language, current, onDone } = props
  const shipped = about.parts.map((name) => `[${name}]`).join("\n")
  const recorded = (current?.body as DocumentTemplate | undefined)?.text ?? ""
  const [text, setText] = useState(recorded || shipped)
  const [id, setId] = useState(newEntryId)
  const record = useRecordPaper("template")
  const faults = faultsOf(record.error, ["body.text"])
  const keep = (kept: string, message: string) =>
    record.mutate(
      {
        ...id,
        body: { document: about.document, language, text: kept },
        ...(current ? { supersedes: current.id, reason: say("template changed") } : {}),
      },
      {
        onSuccess: () => {
          setId(newEntryId())
          setText(kept || shipped)
          onDone(message)
        },
      },
    )
  const submit = (event: FormEvent) => {
    event.preventDefault()
    keep(text, say("Recorded: the template. Documents follow it from now on."))
  }
  return (
    <div className="template-edit">
      <form className="form card" onSubmit={submit} noValidate>
        <div role="alert">{faults.general && <p className="form-fault">{faults.general}</p>}</div>
        <Field
          label={say("Template")}
          fault={
            faults.at("body.text") && say("not recorded: each fault stands in the preview with its line")
          }
        >
          {(control) => (
            <textarea
              {...control}
              className="template-text"
              rows={18}
              value={text}
              onChange={({ target }) => {
                record.reset()
                setText(target.value)
              }}
            />
          )}
        </Field>
        <WhatMayStand about={about} />
        <div className="form-actions">
          <button type="submit" className="primary" disabled={record.isPending}>
            {say("Record template")}
          </button>
          {recorded !== "" && (
            <button
              type="button"
              disabled={record.isPending}
              onClick={() => keep("", say("Recorded: the order that ships holds again."))}
            >
              {say("Go back to the order that ships")}
            </button>
          )}
        </div>
      </form>
      <Preview document={about.document} language={language} text={text} />
    </div>
  )
}

function WhatMayStand({ about: { parts, required, values } }: { readonly about: About }) {
  return (
    <details>
      <summary>{say("What may stand in it")}</summary>
      <dl className="wording-names">
        <dt>{say("Parts, each on a line of its own")}</dt>
        <dd>
          {parts.map((name) => (
            <code key={name}>
              [{name}]{required.includes(name) ? "*" : ""}{" "}
            </code>
          ))}
        </dd>
        <dd className="soft">{say("A part with a star must stand somewhere.")}</dd>
        <dt>{say("Filled into sentences")}</dt>
        <dd>
          {values.map((name) => (
            <code key={name}>{`{${name}} `}</code>
          ))}
        </dd>
        <dt>{say("Lines")}</dt>
        <dd>
          {say("# begins a heading, ## a smaller one, - an item of a list, ! a caution, --- a new page.")}
        </dd>
      </dl>
    </details>
  )
}

/** The document as it would be for a child, and every fault with its line. */
function Preview({ document, language, text }: Omit<TemplateTrialBody, "child">) {
  const children = useChildren({ search: "", page: 1 })
  const [chosen, setChosen] = useState<string | null>(null)
  const child = chosen ?? children.data?.children[0]?.id
  const settled = useSettled(text)
  const trial = useQuery({
    queryKey: ["template-trial", document, language, settled, child],
    enabled: child !== undefined,
    placeholderData: (before) => before,
    queryFn: () =>
      ask<TemplateTrialAnswer>("POST", "/api/templates/trial", { document, language, text: settled, child }),
  })
  return (
    <section className="card" aria-label={say("Preview")}>
      <Field label={say("Preview for")}>
        {(control) => (
          <select {...control} value={child ?? ""} onChange={({ target }) => setChosen(target.value)}>
            {children.data?.children.map(({ id, name }) => (
              <option key={id} value={id}>
                {name}
              </option>
            ))}
          </select>
        )}
      </Field>
      <div role="status">
        {trial.isError && <p className="form-fault">{failureInWords(trial.error)}</p>}
        {trial.data && trial.data.problems.length > 0 && (
          <ul className="template-faults">
            {trial.data.problems.map(({ line, message }) => (
              <li key={`${line} ${message}`}>
                {line === 0 ? message : say("line {line}: {message}", { line, message })}
              </li>
            ))}
          </ul>
        )}
        {trial.data?.refused && <p className="soft">{trial.data.refused}</p>}
      </div>
      {trial.data?.document && <DocumentView document={trial.data.document} />}
    </section>
  )
}
