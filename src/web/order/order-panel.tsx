import { type FormEvent, useMemo, useState } from "react"
import { dosingOf } from "../../engine/compounding/order-remarks.js"
import { pharmaciesOf } from "../../engine/compounding/usual-pharmacy.js"
import type { Problem } from "../../engine/problem.js"
import { msg, say } from "../../engine/say.js"
import { treatmentName } from "../../engine/treatment-name.js"
import type { OrderBody } from "../../server/contract/entry.js"
import type { ChildPartProps } from "../child/child-part-props.js"
import { newEntryId } from "../entry-id.js"
import { faultsOf } from "../faults.js"
import { sentence } from "../format.js"
import { useRecord, useSession } from "../queries.js"
import { parseNumber } from "../visit/readings.js"
import { ConsentNotice } from "./consent-notice.js"
import { newDraft, type OrderDraft, orderBody, readDraft } from "./order-draft.js"
import { OrderFields } from "./order-fields.js"
import { consentTo, remarksOn, sheetOf } from "./order-sheet.js"
import { SheetView } from "./sheet-view.js"

const FIELDS = ["date", "concentrationPercent", "bottles", "volumeMl", "override"] as const

/** The form of a new order, beside the sheet that comes of it. */
export function OrderPanel(props: ChildPartProps & { readonly onClose: () => void }) {
  const { view, practice, onDone, onClose } = props
  const { rules, today } = practice
  const session = useSession()
  const [id] = useState(newEntryId)
  const [draft, setDraft] = useState<OrderDraft>(() => newDraft({ course: view.course, today, rules }))
  const record = useRecord<OrderBody>(view.child.id, "orders")
  const faults = faultsOf(record.error, FIELDS)

  const concentrationPercent = parseNumber(draft.strength) ?? Number.NaN
  const { nightsPerWeek } = dosingOf(view.course, { concentrationPercent, on: today })
  const read = useMemo(() => readDraft(draft, rules, nightsPerWeek), [draft, rules, nightsPerWeek])
  const { order, pharmacy, problems } = read
  const asked = order && { concentrationPercent: order.concentrationPercent, on: draft.date }
  const consent = asked && consentTo(asked, { view, practice })
  const remarks = asked ? remarksOn(asked, view) : []
  const sheet =
    order &&
    sheetOf(
      {
        order,
        pharmacy,
        on: draft.date,
        isPreserved: draft.preserved,
        prescriber: session.data?.person.name ?? "",
        eye: draft.eyes === "both" ? undefined : draft.eyes,
        override: draft.override,
        nightsPerWeek,
        remarks,
      },
      { view, practice },
    )
  const submit = (event: FormEvent) => {
    event.preventDefault()
    const body = orderBody(draft, read)
    record.mutate(
      { ...id, ...body },
      {
        onSuccess: () =>
          onDone(
            say(
              "Recorded: {bottles, plural, one {# bottle} other {# bottles}} of {treatment} ordered. The sheet for the pharmacist is in the list.",
              {
                bottles: body.bottles,
                treatment: treatmentName({
                  kind: "atropine",
                  concentrationPercent: body.concentrationPercent,
                }),
              },
            ),
          ),
      },
    )
  }
  return (
    <div className="order-panel">
      <form className="form card" onSubmit={submit} noValidate aria-label={say("New order")}>
        <div role="alert">{faults.general && <p className="form-fault">{faults.general}</p>}</div>
        <OrderFields
          draft={draft}
          read={read}
          pharmacies={pharmaciesOf(rules.pharmacies)}
          faults={faults}
          onChange={(changes) => setDraft({ ...draft, ...changes })}
        />
        {remarks.map((remark) => (
          <p key={remark} className="caution">
            {sentence(remark)}
          </p>
        ))}
        {consent && (
          <ConsentNotice
            consent={consent}
            childId={view.child.id}
            override={draft.override}
            fault={faults.at("override")}
            onChange={(override) => setDraft({ ...draft, override })}
          />
        )}
        <div className="form-actions">
          <button type="submit" className="primary" disabled={record.isPending}>
            {say("Record order")}
          </button>
          <button type="button" onClick={onClose}>
            {say("Close")}
          </button>
        </div>
      </form>
      <section className="card order-preview" aria-label={say("Sheet for the pharmacist")}>
        {sheet && <SheetView sheet={sheet} />}
        {!sheet && draft.strength.trim() === "" && (
          <p className="soft">{say("The sheet appears here once a strength is given.")}</p>
        )}
        {!sheet && draft.strength.trim() !== "" && <NotWorkedOut problems={problems} />}
      </section>
    </div>
  )
}

const WORDS: Readonly<Record<string, string>> = {
  concentrationPercent: msg("the strength"),
  stockPercent: msg("the stock"),
  bottles: msg("the number of bottles"),
  volumeMl: msg("the volume of a bottle"),
}

function NotWorkedOut({ problems }: { readonly problems: readonly Problem[] }) {
  return (
    <>
      <p>{say("The order cannot be worked out yet:")}</p>
      <ul>
        {problems.map((problem) => (
          <li key={problem.path}>{sentence(faultInWords(problem))}</li>
        ))}
      </ul>
    </>
  )
}

/** What is wrong, by the field's name on the page; what is not a number at all is in view and not repeated. */
function faultInWords({ path, value, allowed, message }: Problem): string {
  const known = WORDS[path]
  if (known === undefined || !message.startsWith(path)) return message
  const field = say(known)
  return Number.isNaN(value)
    ? say("{path} must be {allowed}", { path: field, allowed })
    : say("{path} must be {allowed}; it is {value}", { path: field, allowed, value: value as number })
}
