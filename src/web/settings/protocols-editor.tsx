import { type FormEvent, useRef, useState } from "react"
import type { CalendarDate } from "../../engine/course.js"
import type { Protocol } from "../../engine/protocol/protocol.js"
import { protocolSource, protocolTitle, stepTitle } from "../../engine/protocol/titles.js"
import { msg, say } from "../../engine/say.js"
import { newEntryId } from "../entry-id.js"
import { faultsOf } from "../faults.js"
import { capitalised } from "../format.js"
import { Choices } from "../parts/field.js"
import { useRecordPaper } from "../queries.js"
import {
  draftFaults,
  draftOf,
  newStep,
  ownId,
  type ProtocolDraft,
  protocolOfDraft,
  SPAN_FIGURES,
  type SpanFigure,
  type StepDraft,
} from "./protocols-draft.js"
import { ProtocolPreview } from "./protocols-preview.js"
import { StepFields, TextField } from "./protocols-step.js"
import { stepInOneLine } from "./protocols-words.js"

const SPAN_WORDS: Readonly<Record<SpanFigure, string>> = {
  longestPauseDays: msg("Longest pause, days"),
  consentLeadDays: msg("Consent asked before the start, days"),
  bottleLeadDays: msg("Next bottle asked before the last ends, days"),
  bottleDaysAfterOpening: msg("Use after opening where a bottle states none, days"),
}

export interface Editing {
  readonly heading: string
  /** What the draft begins with. */
  readonly from: Protocol
  /** The paper it takes the place of; none for a copy. */
  readonly supersedes: string | null
  /** Ids in use, for a copy that stands beside them. */
  readonly taken: readonly string[]
}

/** A protocol under the pen: its steps with what is wrong at each field, and what the next two years become. */
export function ProtocolEditor({
  heading,
  from,
  supersedes,
  taken,
  today,
  onClose,
  onDone,
}: Editing & {
  readonly today: CalendarDate
  readonly onClose: () => void
  readonly onDone: (message: string) => void
}) {
  const [id] = useState(newEntryId)
  const [draft, setDraft] = useState(() => draftOf(from))
  const [beside, setBeside] = useState(false)
  const [reason, setReason] = useState("")
  const [isTried, setTried] = useState(false)
  const form = useRef<HTMLFormElement>(null)
  const record = useRecordPaper("protocol")
  const sent = { ...draft, id: beside ? ownId(draft.title, taken) : draft.id }
  const faults = draftFaults(sent)
  const refused = faultsOf(record.error, [])
  const isReasonMissing = supersedes !== null && reason.trim() === ""
  const protocol = faults.count === 0 ? (protocolOfDraft(sent) as Protocol) : null
  const set = (change: Partial<ProtocolDraft>) => setDraft({ ...draft, ...change })
  const submit = (event: FormEvent) => {
    event.preventDefault()
    setTried(true)
    if (protocol === null || isReasonMissing) {
      // The faults are in view already; the first of them takes the focus, out of a closed step if need be.
      requestAnimationFrame(() => focusFirstFault(form.current))
      return
    }
    record.mutate(
      { ...id, body: protocol, ...(supersedes && { supersedes, reason }) },
      {
        onSuccess: () =>
          onDone(
            say("Recorded: {title}, version {version}.", {
              title: protocolTitle(protocol),
              version: protocol.version,
            }),
          ),
      },
    )
  }
  return (
    <div className="protocol-editor">
      <form className="form" ref={form} onSubmit={submit} noValidate>
        <h2>{heading}</h2>
        <div role="alert">{refused.general && <p className="form-fault">{refused.general}</p>}</div>
        <div className="form-row">
          <TextField
            label={say("Title")}
            value={protocolTitle(draft)}
            fault={faults.at("title")}
            onChange={(title) => set({ title })}
          />
          <TextField
            label={say("Version")}
            value={draft.version}
            fault={faults.at("version")}
            onChange={(version) => set({ version })}
          />
          <TextField
            label={say("Where its intervals come from")}
            value={protocolSource(draft)}
            fault={faults.at("source")}
            onChange={(source) => set({ source })}
          />
        </div>
        {supersedes === null && (
          <Choices
            legend={say("Followed by")}
            options={[
              ["instead", say("every child who followed the one it is copied from")],
              ["beside", say("only children it is chosen for")],
            ]}
            value={beside ? "beside" : "instead"}
            onChange={(value) => setBeside(value === "beside")}
          />
        )}
        <div className="form-row protocol-spans">
          {SPAN_FIGURES.map((name) => (
            <TextField
              key={name}
              label={say(SPAN_WORDS[name])}
              value={draft[name]}
              fault={faults.at(name)}
              onChange={(value) => set({ [name]: value })}
            />
          ))}
        </div>
        <Steps draft={draft} faults={faults} onChange={(steps) => set({ steps })} />
        {supersedes !== null && (
          <TextField
            label={say("Why it is changed")}
            value={reason}
            fault={isTried && isReasonMissing ? say("must be said in words") : undefined}
            note={say("Kept with the new version; the old one stays on record.")}
            onChange={setReason}
          />
        )}
        <div className="form-actions">
          <button type="submit" className="primary" disabled={record.isPending}>
            {say("Record")}
          </button>
          <button type="button" onClick={onClose}>
            {say("Leave without recording")}
          </button>
          <p role="status" className="field-fault-count">
            {faults.count > 0 && toPutRight(faults.count)}
          </p>
        </div>
      </form>
      <ProtocolPreview protocol={protocol} id={draft.id} today={today} />
    </div>
  )
}

function Steps({
  draft: { steps },
  faults,
  onChange,
}: {
  readonly draft: ProtocolDraft
  readonly faults: ReturnType<typeof draftFaults>
  readonly onChange: (steps: readonly StepDraft[]) => void
}) {
  const [added, setAdded] = useState<string | null>(null)
  const add = () => {
    const step = newStep(steps)
    setAdded(step.id)
    onChange([...steps, step])
  }
  return (
    <section aria-label={say("Steps")} className="protocol-steps">
      <h3>{say("Steps")}</h3>
      {faults.at("steps") && <p className="field-fault">{faults.at("steps")}</p>}
      {steps.map((step, index) => (
        <details key={step.id} open={step.id === added || undefined}>
          <summary>
            <strong>{step.title.trim() === "" ? say("New step") : capitalised(stepTitle(step))}</strong>
            <span className="soft">{lineOf(step, faults.inStep(index))}</span>
            {faults.inStep(index) > 0 && (
              <span className="field-fault">{toPutRight(faults.inStep(index))}</span>
            )}
          </summary>
          <StepFields
            step={step}
            faultAt={(field) => faults.at(`steps[${index}].${field}`)}
            onChange={(changed) => onChange(steps.map((one) => (one.id === step.id ? changed : one)))}
            onRemove={() => onChange(steps.filter((one) => one.id !== step.id))}
          />
        </details>
      ))}
      <div className="form-actions">
        <button type="button" onClick={add}>
          {say("Add a step")}
        </button>
      </div>
    </section>
  )
}

const toPutRight = (fields: number): string =>
  say("{fields, plural, one {# field} other {# fields}} to put right", { fields })

function lineOf(step: StepDraft, faults: number): string {
  if (faults > 0) return ""
  return stepInOneLine({
    ...step,
    offsetMonths: Number(step.offsetMonths),
    offsetDays: Number(step.offsetDays),
    windowDaysBefore: Number(step.windowDaysBefore),
    windowDaysAfter: Number(step.windowDaysAfter),
    nightsPerWeek: undefined,
  })
}

function focusFirstFault(form: HTMLFormElement | null): void {
  const field = form?.querySelector<HTMLElement>('[aria-invalid="true"], fieldset:has(.field-fault) input')
  const closed = field?.closest("details")
  if (closed) closed.open = true
  field?.focus()
}
