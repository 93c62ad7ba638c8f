import { Link } from "@tanstack/react-router"
import { type FormEvent, useState } from "react"
import { dateWords } from "../../chart/words.js"
import type { Choices } from "../../engine/choices/choices.js"
import type { ChoicesRow } from "../../engine/choices/choices-table.js"
import { consentNeeds } from "../../engine/choices/consent-needs.js"
import { decisionPlan } from "../../engine/choices/decision-plan.js"
import {
  changesNothing,
  DECISION_WORDS,
  endsTreatment,
  namesTreatment,
} from "../../engine/choices/decision-words.js"
import { DECISION_KINDS, type DecisionKind, type TreatmentChoice } from "../../engine/course.js"
import { say } from "../../engine/say.js"
import { treatmentName } from "../../engine/treatment-name.js"
import type { ChildView } from "../../server/contract/child.js"
import type { DecideBody } from "../../server/contract/decide.js"
import { RunningChoices } from "../enter/running-choice.js"
import { runningTreatments } from "../enter/running-treatments.js"
import { TreatmentFields, type TypedTreatment, treatmentBody } from "../enter/treatment-fields.js"
import { newEntryId } from "../entry-id.js"
import { faultsOf } from "../faults.js"
import { capitalised, sentence } from "../format.js"
import { Field } from "../parts/field.js"
import { useRecord } from "../queries.js"
import type { CourseReading } from "../reading.js"
import { figuresShown } from "./shown.js"

/** Stands for a treatment or strength that is not among the options. */
const ANOTHER = "another"

const FIELDS = ["kind", "treatments", "ends", "nightsPerWeek", "from", "date", "reason"] as const

function firstDayOf(start: TreatmentChoice & { readonly nightsPerWeek?: number | undefined }, on: string) {
  const told = { treatment: treatmentName(start), day: dateWords(on) }
  return start.nightsPerWeek === undefined
    ? say("first day of {treatment}: {day}", told)
    : say("first day of {treatment}, {nights, plural, one {# night} other {# nights}} of the week: {day}", {
        ...told,
        nights: start.nightsPerWeek,
      })
}

/** What was decided, why, and from when: recorded in one act with the treatments that it begins or ends. */
export function DecideForm(props: {
  readonly view: ChildView
  readonly reading: CourseReading
  readonly shown: Choices
  readonly rows: readonly ChoicesRow[]
  readonly onDone: (message: string) => void
}) {
  const { view, reading, shown, rows, onDone } = props
  const [id] = useState(newEntryId)
  const [kind, setKind] = useState<DecisionKind | "">("")
  const [chosen, setChosen] = useState("")
  const [typed, setTyped] = useState<TypedTreatment>({ kind: "atropine", strength: "" })
  const [ends, setEnds] = useState<readonly string[]>([])
  const [nights, setNights] = useState("")
  const [date, setDate] = useState(reading.today)
  const [from, setFrom] = useState("")
  const [reason, setReason] = useState("")
  const record = useRecord<DecideBody>(view.child.id, "decide")
  const faults = faultsOf(record.error, FIELDS)

  const running = runningTreatments(view)
  const named = kind !== "" && namesTreatment(kind)
  const options = shown.options.filter(
    ({ kind: of, parts }) =>
      of === "treatment" &&
      (kind !== "change-strength" || parts.every((part) => part.kind === "atropine")) &&
      (kind !== "add" || parts.length === 1),
  )
  const option = options.find((one) => one.id === chosen)
  const treatments: readonly TreatmentChoice[] = !named
    ? []
    : chosen === ANOTHER
      ? [treatmentBody(typed)]
      : (option?.parts ?? [])
  const firstDay = from || date
  const plan =
    kind === ""
      ? null
      : decisionPlan(
          {
            kind,
            treatments,
            from: firstDay,
            ends,
            nightsPerWeek: nights === "" ? undefined : Number(nights),
          },
          running.map(({ treatment, entryId }) => ({ id: entryId, treatment })),
        )
  const planned = plan !== null && !("problems" in plan) ? plan : null
  const lacking = consentNeeds({
    parts: (planned?.starts ?? []).map(({ kind: of, concentrationPercent }) => ({
      kind: of,
      concentrationPercent,
    })),
    course: reading.course,
    on: firstDay,
    wordings: reading.rules.consentWordings,
  }).filter(({ isInForce }) => !isInForce)

  const submit = (event: FormEvent) => {
    event.preventDefault()
    const shownId =
      option?.id ??
      (kind === "continue" ? "as-now" : kind === "decline" || kind === "stop" ? "nothing" : null)
    record.mutate(
      {
        ...id,
        // An empty choice is sent as it stands, so that it is refused at its field.
        kind: kind as DecisionKind,
        date,
        reason,
        ...(from === "" || (kind !== "" && changesNothing(kind)) ? {} : { from }),
        ...(treatments.length === 0 ? {} : { treatments: [...treatments] }),
        ...(ends.length === 0 ? {} : { ends: [...ends] }),
        ...(kind === "taper" && nights !== "" ? { nightsPerWeek: Number(nights) } : {}),
        offered: shown.options.map(({ name }) => capitalised(name)),
        figures: [...figuresShown({ options: shown.options, rows, chosenId: shownId })],
      },
      {
        onSuccess: () =>
          onDone(
            say("Recorded: decision of {day}, {decision}.", {
              day: dateWords(date),
              decision: say(DECISION_WORDS[kind as DecisionKind]),
            }),
          ),
      },
    )
  }

  return (
    <section className="card" aria-labelledby="decide">
      <h2 id="decide">{say("Decide")}</h2>
      <form className="form decide" onSubmit={submit} noValidate>
        <div role="alert">{faults.general && <p className="form-fault">{faults.general}</p>}</div>
        <div className="form-row">
          <Field label={say("Decision")} fault={faults.at("kind")}>
            {(control) => (
              <select
                {...control}
                value={kind}
                onChange={(event) => setKind(event.target.value as DecisionKind | "")}
              >
                <option value="">{say("Choose")}</option>
                {DECISION_KINDS.map((one) => (
                  <option key={one} value={one}>
                    {capitalised(say(DECISION_WORDS[one]))}
                  </option>
                ))}
              </select>
            )}
          </Field>
          {named && (
            <Field label={say("Treatment")} fault={chosen === ANOTHER ? undefined : faults.at("treatments")}>
              {(control) => (
                <select {...control} value={chosen} onChange={(event) => setChosen(event.target.value)}>
                  <option value="">{say("Choose")}</option>
                  {options.map((one) => (
                    <option key={one.id} value={one.id}>
                      {capitalised(one.name)}
                    </option>
                  ))}
                  <option value={ANOTHER}>{say("Another treatment or strength")}</option>
                </select>
              )}
            </Field>
          )}
          {named && chosen === ANOTHER && (
            <TreatmentFields
              label={say("Which")}
              value={typed}
              onChange={setTyped}
              kindFault={typed.kind === "atropine" ? undefined : faults.at("treatments")}
              strengthFault={faults.at("treatments")}
            />
          )}
          {kind === "taper" && (
            <Field label={say("Nights of the week")} note={say("1 to 6")} fault={faults.at("nightsPerWeek")}>
              {(control) => (
                <input
                  {...control}
                  inputMode="numeric"
                  autoComplete="off"
                  value={nights}
                  onChange={(event) => setNights(event.target.value)}
                />
              )}
            </Field>
          )}
          <Field label={say("Decided on")} fault={faults.at("date")}>
            {(control) => (
              <input
                {...control}
                type="date"
                value={date}
                onChange={(event) => setDate(event.target.value)}
              />
            )}
          </Field>
          {kind !== "" && !changesNothing(kind) && (
            <Field
              label={say("First day")}
              note={say("The day of the decision when left empty.")}
              fault={faults.at("from")}
            >
              {(control) => (
                <input
                  {...control}
                  type="date"
                  value={from}
                  onChange={(event) => setFrom(event.target.value)}
                />
              )}
            </Field>
          )}
        </div>
        {kind !== "" && endsTreatment(kind) && running.length > 1 && (
          <RunningChoices
            legend={say("Which one ends")}
            running={running}
            chosen={ends}
            onChange={setEnds}
            fault={faults.at("ends")}
          />
        )}
        <Field
          label={say("Why")}
          note={say("In words: what was found, what the family wants, what was weighed.")}
          fault={faults.at("reason")}
        >
          {(control) => (
            <textarea
              {...control}
              rows={3}
              value={reason}
              onChange={(event) => setReason(event.target.value)}
            />
          )}
        </Field>
        {planned && (
          <div className="soft small">
            <p>{say("Recorded together with the decision, all or nothing:")}</p>
            <ul>
              {planned.ends.map(({ id: ended, treatment }) => (
                <li key={ended}>
                  {sentence(
                    say("first day without {treatment}: {day}", {
                      treatment: treatmentName(treatment),
                      day: dateWords(firstDay),
                    }),
                  )}
                </li>
              ))}
              {planned.starts.map((start) => (
                <li key={treatmentName(start)}>{sentence(firstDayOf(start, firstDay))}</li>
              ))}
              {planned.ends.length + planned.starts.length === 0 && (
                <li>{say("No treatment begins or ends.")}</li>
              )}
              <li>{say("The figures above as they are shown now.")}</li>
            </ul>
          </div>
        )}
        {lacking.length > 0 && (
          <p className="field-caution">
            {lacking.map(({ words }) => sentence(words)).join(" ")}{" "}
            {say("The decision can be recorded; bottles can be ordered once consent is given.")}{" "}
            <Link to="/children/$childId/$part" params={{ childId: view.child.id, part: "consent" }}>
              {say("Consent")}
            </Link>
          </p>
        )}
        <div className="form-actions">
          <button type="submit" className="primary" disabled={record.isPending}>
            {say("Record decision")}
          </button>
        </div>
      </form>
    </section>
  )
}
