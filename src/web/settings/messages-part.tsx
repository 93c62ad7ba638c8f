import "../messages/messages.css"
import { type FormEvent, type ReactNode, useState } from "react"
import type { MessageRules } from "../../engine/practice-rules.js"
import { say } from "../../engine/say.js"
import { newEntryId } from "../entry-id.js"
import { faultsOf } from "../faults.js"
import { Field } from "../parts/field.js"
import { useRecordPaper } from "../queries.js"
import type { SettingsPartProps } from "./settings-part-props.js"

type Typed = { readonly [Key in Exclude<keyof MessageRules, "isOn">]-?: string } & { readonly isOn: boolean }

const TEXTS = [
  "sender",
  "from",
  "replyTo",
  "telephone",
  "timeZone",
  "quietFrom",
  "quietTo",
  "daysBefore",
] as const

/** How families are written to, and whether they are at all. */
export function MessagesPart({ practice, rules, onDone }: SettingsPartProps) {
  const paper = rules.papers.findLast(
    ({ kind, supersededBy }) => kind === "messages" && supersededBy === null,
  )
  const [id, setId] = useState(newEntryId)
  const [typed, setTyped] = useState<Typed>(() => typedOf(practice.rules.messages, practice.name))
  const change = (fields: Partial<Typed>) => setTyped((before) => ({ ...before, ...fields }))
  const record = useRecordPaper("messages")
  const faults = faultsOf(
    record.error,
    TEXTS.map((field) => `body.${field}`),
  )
  const submit = (event: FormEvent) => {
    event.preventDefault()
    const superseding = paper ? { supersedes: paper.id, reason: "settings of messages changed" } : {}
    record.mutate(
      { body: rulesOf(typed), ...superseding, ...id },
      {
        onSuccess: () => {
          setId(newEntryId())
          onDone(
            typed.isOn
              ? say("Recorded: families that agreed are written to.")
              : say("Recorded: messages are turned off."),
          )
        },
      },
    )
  }
  const field = (
    name: (typeof TEXTS)[number],
    shown: {
      readonly label: string
      readonly note?: ReactNode
      readonly type?: string
      readonly list?: string
    },
  ) => (
    <Field label={shown.label} note={shown.note} fault={faults.at(`body.${name}`)}>
      {(control) => (
        <input
          {...control}
          type={shown.type ?? "text"}
          list={shown.list}
          value={typed[name]}
          onChange={(event) => change({ [name]: event.target.value })}
        />
      )}
    </Field>
  )
  return (
    <section className="card" aria-label={say("Messages")}>
      <p>
        {say(
          "Families that agreed are reminded of visits and told when a bottle runs out: by e-mail from here, by SMS or post as lists. The words name no diagnosis and no figure of the child.",
        )}
      </p>
      <form className="form" onSubmit={submit} noValidate>
        <div role="alert">{faults.general && <p className="form-fault">{faults.general}</p>}</div>
        <label className="message-tick">
          <input
            type="checkbox"
            checked={typed.isOn}
            onChange={(event) => change({ isOn: event.target.checked })}
          />
          {say("Write to families that agreed")}
        </label>
        <div className="form-row">
          {field("sender", { label: say("Sender"), note: say("The practice as families know it.") })}
          {field("telephone", {
            label: say("Telephone"),
            note: say("Where families call; it stands in every message."),
          })}
        </div>
        <div className="form-row">
          {field("from", { label: say("E-mail address of the sender"), type: "email" })}
          {field("replyTo", {
            label: say("Answers go to"),
            note: say("Left empty, to the sender. Somebody must read them: families stop messages there."),
            type: "email",
          })}
        </div>
        <div className="form-row">
          {field("daysBefore", {
            label: say("Days before a visit"),
            note: say("Before its window opens and before it is due. Common practice, no source."),
            type: "number",
          })}
          {field("quietFrom", {
            label: say("Quiet from"),
            note: say("Nothing is sent in the quiet hours. Common practice, no source."),
            type: "time",
          })}
          {field("quietTo", { label: say("Quiet until"), type: "time" })}
          {field("timeZone", {
            label: say("Time zone"),
            note: say("Of the practice, such as Europe/Dublin."),
            list: "time-zones",
          })}
        </div>
        <datalist id="time-zones">
          {Intl.supportedValuesOf("timeZone").map((zone) => (
            <option key={zone} value={zone} />
          ))}
        </datalist>
        <p className="soft small">
          {say(
            "The mail server is named when Lengthwise is started (LENGTHWISE_SMTP); its password is never kept here or shown.",
          )}
        </p>
        <div className="form-actions">
          <button type="submit" className="primary" disabled={record.isPending}>
            {say("Record settings")}
          </button>
        </div>
      </form>
    </section>
  )
}

/** What is set, or a beginning: off, quiet at night, two weeks before. Common practice, no source. */
function typedOf(set: MessageRules | undefined, practiceName: string): Typed {
  return {
    isOn: set?.isOn ?? false,
    sender: set?.sender ?? practiceName,
    from: set?.from ?? "",
    replyTo: set?.replyTo ?? "",
    telephone: set?.telephone ?? "",
    timeZone: set?.timeZone ?? Intl.DateTimeFormat().resolvedOptions().timeZone,
    quietFrom: set?.quietFrom ?? "20:00",
    quietTo: set?.quietTo ?? "08:00",
    daysBefore: String(set?.daysBefore ?? 14),
  }
}

function rulesOf({ replyTo, daysBefore, ...typed }: Typed): unknown {
  return {
    ...typed,
    ...(replyTo.trim() ? { replyTo: replyTo.trim() } : {}),
    daysBefore: daysBefore.trim() === "" ? null : Number(daysBefore),
  }
}
