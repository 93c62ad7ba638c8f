import { type FormEvent, useState } from "react"
import { dateWords } from "../../chart/words.js"
import { moneyInWords, readAmount } from "../../engine/cost/money.js"
import type { Paid } from "../../engine/cost/payments.js"
import type { CalendarDate } from "../../engine/course.js"
import { say } from "../../engine/say.js"
import type { PaymentBody } from "../../server/contract/entry.js"
import { newEntryId } from "../entry-id.js"
import { faultsOf } from "../faults.js"
import { sentence } from "../format.js"
import { Field } from "../parts/field.js"
import { useRecord } from "../queries.js"

/** What the family has paid, and the form for one payment more. */
export function PaidCard(props: {
  readonly paid: Paid
  readonly currency: string
  readonly today: CalendarDate
  readonly childId: string
  readonly onDone: (message: string) => void
}) {
  const { paid, currency } = props
  return (
    <section className="card" aria-labelledby="paid">
      <h2 id="paid">{say("Paid so far")}</h2>
      <p className="sum">{moneyInWords(paid.cents, currency)}</p>
      {paid.payments.length > 0 && (
        <ul className="payments">
          {paid.payments.toReversed().map(({ date, cents, what }, index) => (
            // Two payments may be alike in everything.
            // biome-ignore lint/suspicious/noArrayIndexKey: see above
            <li key={index}>
              {say("{day}: {what}", { day: dateWords(date), what: moneyInWords(cents, currency) })}
              {what && <span className="soft"> · {what}</span>}
            </li>
          ))}
        </ul>
      )}
      {paid.problems.map(({ path, message }) => (
        <p key={path} className="caution small">
          {say("Not counted: {why}", { why: sentence(message) })}
        </p>
      ))}
      <PaymentForm {...props} />
    </section>
  )
}

function PaymentForm({
  currency,
  today,
  childId,
  onDone,
}: {
  readonly currency: string
  readonly today: CalendarDate
  readonly childId: string
  readonly onDone: (message: string) => void
}) {
  const [id, setId] = useState(newEntryId)
  const [date, setDate] = useState(today)
  const [amount, setAmount] = useState("")
  const [what, setWhat] = useState("")
  const [amountFault, setAmountFault] = useState<string>()
  const record = useRecord<PaymentBody>(childId, "payments")
  const faults = faultsOf(record.error, ["date", "cents", "what"])
  const submit = (event: FormEvent) => {
    event.preventDefault()
    const read = readAmount(amount, currency)
    setAmountFault(read.kind === "refused" ? say("must be {allowed}", { allowed: read.allowed }) : undefined)
    if (read.kind === "refused") return
    const body = { ...id, date, cents: read.cents, currency, ...(what.trim() ? { what: what.trim() } : {}) }
    record.mutate(body, {
      onSuccess: () => {
        onDone(
          say("Recorded: payment of {sum} on {day}.", {
            sum: moneyInWords(read.cents, currency),
            day: dateWords(date),
          }),
        )
        setId(newEntryId())
        setAmount("")
        setWhat("")
      },
    })
  }
  return (
    <form className="form payment-form screen-only" onSubmit={submit} noValidate aria-label={say("Payment")}>
      <div role="alert">{faults.general && <p className="form-fault">{faults.general}</p>}</div>
      <div className="form-row">
        <Field label={say("Paid on")} fault={faults.at("date")}>
          {(control) => (
            <input {...control} type="date" value={date} onChange={(event) => setDate(event.target.value)} />
          )}
        </Field>
        <Field label={say("Amount, {currency}", { currency })} fault={amountFault ?? faults.at("cents")}>
          {(control) => (
            <input
              {...control}
              inputMode="decimal"
              autoComplete="off"
              value={amount}
              onChange={(event) => setAmount(event.target.value)}
            />
          )}
        </Field>
      </div>
      <Field label={say("For|what was paid")} note={say("May be left empty.")} fault={faults.at("what")}>
        {(control) => (
          <input
            {...control}
            autoComplete="off"
            value={what}
            onChange={(event) => setWhat(event.target.value)}
          />
        )}
      </Field>
      <div className="form-actions">
        <button type="submit" disabled={record.isPending}>
          {say("Record payment")}
        </button>
      </div>
    </form>
  )
}
