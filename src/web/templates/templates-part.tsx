import "./templates.css"
import { useQuery } from "@tanstack/react-query"
import { useState } from "react"
import type { DocumentTemplate } from "../../engine/practice-rules.js"
import { LANGUAGE_NAMES, LANGUAGES, type Language, say } from "../../engine/say.js"
import type { DocumentKind, TemplateNamesAnswer } from "../../server/contract/templates.js"
import { ask, failureInWords } from "../client.js"
import { inWords } from "../format.js"
import { DOCUMENT_NAMES } from "../papers/document-names.js"
import { Field } from "../parts/field.js"
import { Waiting } from "../parts/waiting.js"
import type { SettingsPartProps } from "../settings/settings-part-props.js"
import { TemplateEditor } from "./template-editor.js"

/** The practice's own order and words of each document, in each language. */
export function TemplatesPart({ rules, onDone }: SettingsPartProps) {
  const [document, setDocument] = useState<DocumentKind>("family")
  const [language, setLanguage] = useState<Language>("en")
  const names = useQuery({
    queryKey: ["template-names"],
    staleTime: Number.POSITIVE_INFINITY,
    queryFn: () => ask<TemplateNamesAnswer>("GET", "/api/templates/names"),
  })
  if (names.isError) return <p className="form-fault">{failureInWords(names.error)}</p>
  if (!names.data) return <Waiting for={say("the parts of the documents")} />
  const versions = rules.papers.filter(({ kind, body }) => {
    const template = body as DocumentTemplate
    return kind === "template" && template.document === document && template.language === language
  })
  const current = versions.find(({ supersededBy }) => supersededBy === null)
  const about = names.data.documents.find((each) => each.document === document)
  return (
    <div className="templates">
      <p className="soft">
        {say(
          "A template orders the parts of a document and puts the practice’s own sentences between them. Where there is none, the order that ships holds. What keeps a child safe cannot be left out.",
        )}
      </p>
      <div className="form-row">
        <Field label={say("Document")}>
          {(control) => (
            <select
              {...control}
              value={document}
              onChange={({ target }) => setDocument(target.value as DocumentKind)}
            >
              {names.data.documents.map((each) => (
                <option key={each.document} value={each.document}>
                  {say(DOCUMENT_NAMES[each.document])}
                </option>
              ))}
            </select>
          )}
        </Field>
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
      </div>
      {about && (
        <TemplateEditor
          key={`${document} ${language}`}
          about={about}
          language={language}
          current={current}
          onDone={onDone}
        />
      )}
      {versions.length > 0 && (
        <section className="card" aria-labelledby="template-versions">
          <h2 id="template-versions">{say("Versions")}</h2>
          <ul className="plain-list">
            {versions.toReversed().map(({ id, author, recordedAt, body }) => (
              <li key={id}>
                <details>
                  <summary>
                    {inWords(recordedAt.slice(0, 10))}, {author}
                    {id === current?.id ? ` (${say("in force")})` : ""}
                  </summary>
                  <pre className="template-text">
                    {(body as DocumentTemplate).text || say("The order that ships.")}
                  </pre>
                </details>
              </li>
            ))}
          </ul>
        </section>
      )}
    </div>
  )
}
