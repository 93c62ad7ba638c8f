import { type FormEvent, useState } from "react"
import { FILLED_IN } from "../../engine/consent/consent-text.js"
import { spokenFor } from "../../engine/consent/wording-language.js"
import type { PracticeRules } from "../../engine/practice-rules.js"
import { say } from "../../engine/say.js"
import { newEntryId } from "../entry-id.js"
import { faultsOf } from "../faults.js"
import { Field } from "../parts/field.js"
import { useRecordPaper } from "../queries.js"
import { type DraftSection, moved, type WordingDraft, wordingOf } from "./wording-draft.js"
import { WordingPreview } from "./wording-preview.js"

/** Writes a new version of a wording; the ones before stay as they were signed. */
export function WordingEditor(props: {
  readonly draft: WordingDraft
  readonly rules: PracticeRules
  readonly onClose: () => void
  readonly onDone: (message: string) => void
}) {
  const { rules, onClose, onDone } = props
  const [id] = useState(newEntryId)
  const [draft, setDraft] = useState(props.draft)
  const record = useRecordPaper("wording")
  const faults = faultsOf(record.error, [
    "body.version",
    "body.from",
    "body.language",
    "body.title",
    "body.sections",
  ])
  const change = (part: Partial<WordingDraft>) => setDraft({ ...draft, ...part })
  const wording = wordingOf(draft)
  const submit = (event: FormEvent) => {
    event.preventDefault()
    record.mutate(
      { ...id, body: wording },
      {
        onSuccess: () =>
          onDone(
            say("Recorded: version {version} of the wording “{id}”.", {
              version: wording.version,
              id: wording.id,
            }),
          ),
      },
    )
  }
  return (
    <div className="wording-edit">
      <form className="form card" onSubmit={submit} noValidate aria-labelledby="wording-new">
        <div className="consent-head">
          <h2 id="wording-new">{say("New version of “{id}”", { id: draft.id })}</h2>
          <button type="button" onClick={onClose}>
            {say("Close without recording")}
          </button>
        </div>
        <div role="alert">{faults.general && <p className="form-fault">{faults.general}</p>}</div>
        <div className="form-row">
          <Field
            label={say("Version")}
            fault={faults.at("body.version")}
            note={say("Never used before; a translation bears the name of the version it translates.")}
          >
            {(control) => (
              <input
                {...control}
                value={draft.version}
                onChange={({ target }) => change({ version: target.value })}
              />
            )}
          </Field>
          <Field label={say("In force from")} fault={faults.at("body.from")}>
            {(control) => (
              <input
                {...control}
                type="date"
                value={draft.from}
                onChange={({ target }) => change({ from: target.value })}
              />
            )}
          </Field>
          <Field
            label={say("Language")}
            fault={faults.at("body.language")}
            note={say(
              spokenFor(draft.language) === null
                ? "As a code: en, es, zh-Hans. Figures in any other language are told in English."
                : "As a code: en, es, zh-Hans.",
            )}
          >
            {(control) => (
              <input
                {...control}
                value={draft.language}
                onChange={({ target }) => change({ language: target.value })}
              />
            )}
          </Field>
        </div>
        <label className="consent-check">
          <input
            type="checkbox"
            checked={draft.isMaterial}
            onChange={({ target }) => change({ isMaterial: target.checked })}
          />
          {say("Material: families who signed an earlier version, in any language, are asked again")}
        </label>
        <Field label={say("Title")} fault={faults.at("body.title")}>
          {(control) => (
            <input
              {...control}
              value={draft.title}
              onChange={({ target }) => change({ title: target.value })}
            />
          )}
        </Field>
        <details>
          <summary>{say("What is filled in")}</summary>
          <dl className="wording-names">
            {Object.entries(FILLED_IN).map(([name, words]) => (
              <div key={name}>
                <dt>
                  <code>{`{${name}}`}</code>
                </dt>
                <dd>{say(words)}</dd>
              </div>
            ))}
          </dl>
        </details>
        {faults.at("body.sections") && <p className="field-fault">{faults.at("body.sections")}</p>}
        <Sections sections={draft.sections} onChange={(sections) => change({ sections })} />
        <div className="form-actions">
          <button type="submit" className="primary" disabled={record.isPending}>
            {say("Record this version")}
          </button>
        </div>
      </form>
      <div className="card">
        <WordingPreview wording={wording} rules={rules} />
      </div>
    </div>
  )
}

function Sections(props: {
  readonly sections: readonly DraftSection[]
  readonly onChange: (sections: readonly DraftSection[]) => void
}) {
  const { sections, onChange } = props
  const change = (at: number, part: Partial<DraftSection>) =>
    onChange(sections.map((section, index) => (index === at ? { ...section, ...part } : section)))
  return (
    <>
      {sections.map(({ key, heading, text }, at) => (
        <fieldset key={key} className="wording-section">
          <legend>{say("Section {number}", { number: at + 1 })}</legend>
          <Field label={say("Heading")}>
            {(control) => (
              <input
                {...control}
                value={heading}
                onChange={({ target }) => change(at, { heading: target.value })}
              />
            )}
          </Field>
          <Field label={say("Text")}>
            {(control) => (
              <textarea
                {...control}
                rows={6}
                value={text}
                onChange={({ target }) => change(at, { text: target.value })}
              />
            )}
          </Field>
          <p className="row-actions">
            <button
              type="button"
              className="link"
              disabled={at === 0}
              aria-label={say("move section {number} up", { number: at + 1 })}
              onClick={() => onChange(moved(sections, { at, by: -1 }))}
            >
              {say("up|order")}
            </button>
            <button
              type="button"
              className="link"
              disabled={at === sections.length - 1}
              aria-label={say("move section {number} down", { number: at + 1 })}
              onClick={() => onChange(moved(sections, { at, by: 1 }))}
            >
              {say("down|order")}
            </button>
            <button
              type="button"
              className="link"
              aria-label={say("take section {number} out", { number: at + 1 })}
              onClick={() => onChange(sections.filter((_, index) => index !== at))}
            >
              {say("take out")}
            </button>
          </p>
        </fieldset>
      ))}
      <p>
        <button
          type="button"
          onClick={() =>
            onChange([
              ...sections,
              { key: Math.max(0, ...sections.map(({ key }) => key)) + 1, heading: "", text: "" },
            ])
          }
        >
          {say("Add a section")}
        </button>
      </p>
    </>
  )
}
