import { say } from "../../engine/say.js"
import "../cost/fees.css"
import { type FormEvent, useState } from "react"
import { dateWords } from "../../chart/words.js"
import { CURRENCIES } from "../../engine/cost/currencies.js"
import { scheduleOn } from "../../engine/cost/schedules.js"
import type { FeeSchedule } from "../../engine/practice-rules.js"
import type { RulesAnswer } from "../../server/contract/rules.js"
import { draftOf, type FeeDraft, newRow, readDraft } from "../cost/fee-draft.js"
import { FeePreview } from "../cost/fee-preview.js"
import { FeeRows } from "../cost/fee-rows.js"
import { newEntryId } from "../entry-id.js"
import { faultsOf } from "../faults.js"
import { Field } from "../parts/field.js"
import { useRecordPaper } from "../queries.js"
import type { SettingsPartProps } from "./settings-part-props.js"

interface Paper {
  readonly id: string
  readonly schedule: FeeSchedule
}

/** The practice's fees: every schedule from its day on, edited as a table, with what a child would pay. */
export function FeesPart({ practice, rules, onDone }: SettingsPartProps) {
  const papers = feePapers(rules)
  const inForce = scheduleOn(
    papers.map(({ schedule }) => schedule),
    practice.today,
  )
  const first = papers.find(({ schedule }) => schedule === inForce) ?? papers.at(-1)
  const [editing, setEditing] = useState<string | "new">(first?.id ?? "new")
  const paper = papers.find(({ id }) => id === editing)
  return (
    <div className="fees-part">
      <nav className="schedules" aria-label={say("Fee schedules")}>
        {papers.map(({ id, schedule }) => (
          <button key={id} type="button" aria-pressed={id === paper?.id} onClick={() => setEditing(id)}>
            {schedule === inForce
              ? say("{title}, from {date}, in force", {
                  title: schedule.title,
                  date: dateWords(schedule.from),
                })
              : say("{title}, from {date}", { title: schedule.title, date: dateWords(schedule.from) })}
          </button>
        ))}
        <button type="button" aria-pressed={paper === undefined} onClick={() => setEditing("new")}>
          {say("New schedule from a day")}
        </button>
      </nav>
      {papers.length === 0 && (
        <p>
          {say(
            "No fees have been entered, and none are assumed. With them every child’s page says what the coming months cost.",
          )}
        </p>
      )}
      <FeeEditor
        key={paper?.id ?? "new"}
        paper={paper}
        others={papers.filter(({ id }) => id !== paper?.id).map(({ schedule }) => schedule)}
        practice={practice}
        onSaved={(answer, schedule) => {
          const saved = feePapers(answer).find((one) => one.schedule.from === schedule.from)
          setEditing(saved?.id ?? "new")
          onDone(
            say("Recorded: {title}, in force from {date}.", {
              title: schedule.title,
              date: dateWords(schedule.from),
            }),
          )
        }}
      />
    </div>
  )
}

function FeeEditor({
  paper,
  others,
  practice,
  onSaved,
}: {
  readonly paper: Paper | undefined
  readonly others: readonly FeeSchedule[]
  readonly practice: SettingsPartProps["practice"]
  readonly onSaved: (answer: RulesAnswer, schedule: FeeSchedule) => void
}) {
  const [id, setId] = useState(newEntryId)
  const [draft, setDraft] = useState<FeeDraft>(() =>
    paper ? draftOf(paper.schedule) : newDraft(others, practice.today),
  )
  const [reason, setReason] = useState("")
  const [wasTried, setWasTried] = useState(false)
  const record = useRecordPaper("fees")
  const read = readDraft(draft, others)
  const answered = faultsOf(record.error, fieldsOf(draft))
  // Nothing is called wrong while a person is still typing it for the first time.
  const faultAt = (path: string) =>
    (wasTried ? read.faults.get(path) : undefined) ?? answered.at(`body.${path}`)
  const change = (changes: Partial<FeeDraft>) => {
    setDraft({ ...draft, ...changes })
    record.reset()
  }
  const reasonFault =
    wasTried && paper && reason.trim() === "" ? say("must be given for a correction") : undefined
  const submit = (event: FormEvent) => {
    event.preventDefault()
    setWasTried(true)
    const { schedule } = read
    if (!schedule || (paper && reason.trim() === "")) return
    const body = { ...id, body: schedule, ...(paper ? { supersedes: paper.id, reason } : {}) }
    record.mutate(body, {
      onSuccess: (answer) => {
        setId(newEntryId())
        onSaved(answer, schedule)
      },
    })
  }
  const faultCount = wasTried ? read.faults.size : 0
  return (
    <>
      <form className="form card" onSubmit={submit} noValidate>
        <div role="alert">
          {faultCount > 0 && (
            <p className="form-fault">
              {say("{count, plural, one {One thing is} other {# things are}} to be put right below.", {
                count: faultCount,
              })}
            </p>
          )}
          {answered.general && <p className="form-fault">{answered.general}</p>}
        </div>
        <div className="form-row">
          <Field label={say("Title")} fault={faultAt("title")}>
            {(control) => (
              <input
                {...control}
                autoComplete="off"
                value={draft.title}
                onChange={(event) => change({ title: event.target.value })}
              />
            )}
          </Field>
          <Field label={say("In force from")} fault={faultAt("from")}>
            {(control) => (
              <input
                {...control}
                type="date"
                value={draft.from}
                onChange={(event) => change({ from: event.target.value })}
              />
            )}
          </Field>
          <Field
            label={say("Currency")}
            note={say("The same for every schedule.")}
            fault={faultAt("currency")}
          >
            {(control) => (
              <select
                {...control}
                value={draft.currency}
                onChange={(event) => change({ currency: event.target.value })}
              >
                <option value="">{say("choose")}</option>
                {CURRENCIES.map((code) => (
                  <option key={code}>{code}</option>
                ))}
              </select>
            )}
          </Field>
        </div>
        <FeeRows draft={draft} onChange={(rows) => change({ rows })} faultAt={faultAt} />
        <p className="soft small">
          {say(
            "A fee of 0 is free of charge; what has no fee is named as not counted. Common practice, no source: the visit after a month is often free of charge; the length measurement, and often the refraction and the drops, are not covered.",
          )}
        </p>
        {paper && (
          <Field
            label={say("Why is it corrected?")}
            note={say(
              "For a slip of the pen. Fees that change are a new schedule from their day, so that earlier days keep theirs.",
            )}
            fault={reasonFault ?? answered.at("reason")}
          >
            {(control) => (
              <input
                {...control}
                autoComplete="off"
                value={reason}
                onChange={(event) => setReason(event.target.value)}
              />
            )}
          </Field>
        )}
        <div className="form-actions">
          <button type="submit" className="primary" disabled={record.isPending}>
            {paper ? say("Record the correction") : say("Record the schedule")}
          </button>
        </div>
      </form>
      <FeePreview schedule={read.schedule} rules={practice.rules} today={practice.today} />
    </>
  )
}

/** A copy of the last schedule, to be in force from a day that is not chosen yet; without one, a first empty row. */
function newDraft(others: readonly FeeSchedule[], today: string): FeeDraft {
  const last = others.toSorted((a, b) => (a.from < b.from ? -1 : 1)).at(-1)
  if (last) return { ...draftOf(last), title: "", from: "" }
  return { title: "", currency: "", from: today, rows: [newRow([])] }
}

/** The schedules that hold, by their first day. */
function feePapers({ papers }: RulesAnswer): readonly Paper[] {
  return papers
    .filter(({ kind, supersededBy }) => kind === "fees" && supersededBy === null)
    .map(({ id, body }) => ({ id, schedule: body as FeeSchedule }))
    .toSorted((a, b) => (a.schedule.from < b.schedule.from ? -1 : 1))
}

/** Every field of the form by the path that the server gives it. */
const fieldsOf = ({ rows }: FeeDraft): readonly string[] => [
  ...["title", "from", "currency"].map((field) => `body.${field}`),
  ...rows.flatMap((_, index) =>
    ["title", "id", "charged", "cents"].map((field) => `body.fees[${index}].${field}`),
  ),
  "reason",
]
