import { type FormEvent, useMemo, useState } from "react"
import { dropsToSupply } from "../../engine/compounding/order-remarks.js"
import { pharmaciesOf } from "../../engine/compounding/usual-pharmacy.js"
import { treatmentName } from "../../engine/treatment-name.js"
import { counted } from "../../engine/words.js"
import type { OrderBody } from "../../server/contract/entry.js"
import type { ChildPartProps } from "../child/child-part-props.js"
import { newEntryId } from "../entry-id.js"
import { faultsOf } from "../faults.js"
import { sentence } from "../format.js"
import { useRecord, useSession } from "../queries.js"
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

  const [drops] = dropsToSupply(view.course, today)
  const read = useMemo(
    () => readDraft(draft, rules, drops?.nightsPerWeek),
    [draft, rules, drops?.nightsPerWeek],
  )
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
        nightsPerWeek: drops?.nightsPerWeek,
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
            `Recorded: ${counted(body.bottles, "bottle")} of ${treatmentName({ kind: "atropine", concentrationPercent: body.concentrationPercent })} ordered. The sheet for the pharmacist is in the list.`,
          ),
      },
    )
  }
  return (
    <div className="order-panel">
      <form className="form card" onSubmit={submit} noValidate aria-label="New order">
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
            Record order
          </button>
          <button type="button" onClick={onClose}>
            Close
          </button>
        </div>
      </form>
      <section className="card order-preview" aria-label="Sheet for the pharmacist">
        {sheet && <SheetView sheet={sheet} />}
        {!sheet && draft.strength.trim() === "" && (
          <p className="soft">The sheet appears here once a strength is given.</p>
        )}
        {!sheet && draft.strength.trim() !== "" && <NotWorkedOut problems={problems} />}
      </section>
    </div>
  )
}

const WORDS: Readonly<Record<string, string>> = {
  concentrationPercent: "the strength",
  stockPercent: "the stock",
  bottles: "the number of bottles",
  volumeMl: "the volume of a bottle",
}

function NotWorkedOut({ problems }: { readonly problems: readonly { path: string; message: string }[] }) {
  return (
    <>
      <p>The order cannot be worked out yet:</p>
      <ul>
        {problems.map(({ path, message }) => (
          <li key={path}>
            {sentence(message.replace(/; it is NaN$/, "").replace(path, WORDS[path] ?? path))}
          </li>
        ))}
      </ul>
    </>
  )
}
