import { useState } from "react"
import { dateWords } from "../../chart/words.js"
import { isAwaited, orderState } from "../../engine/compounding/order-state.js"
import { pharmacyInWords } from "../../engine/compounding/usual-pharmacy.js"
import { say } from "../../engine/say.js"
import type { ChildPartProps } from "../child/child-part-props.js"
import { sentence } from "../format.js"
import { pharmacyOf } from "./order-sheet.js"
import { OrderStep, type StepKind } from "./order-step.js"
import { ReceiveOrder } from "./receive-order.js"
import { orderInWords, type RecordedOrder, recordedOrders, stateInWords } from "./recorded-orders.js"
import { SheetDialog } from "./sheet-dialog.js"

type Open = { readonly order: RecordedOrder; readonly what: StepKind | "receive" | "sheet" }

/** The orders as they stand, each with its next step. */
export function OrderList({ view, practice, onDone }: ChildPartProps) {
  const [open, setOpen] = useState<Open | null>(null)
  const close = () => setOpen(null)
  const done = (message: string) => {
    close()
    onDone(message)
  }
  const orders = recordedOrders(view)
  if (orders.length === 0) return <p className="soft">{say("Nothing has been ordered yet.")}</p>
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table scrolls by itself, and the keyboard must reach it */}
      <section className="scroll card" tabIndex={0} aria-label={say("What was ordered")}>
        <table className="data orders-table">
          <thead>
            <tr>
              <th scope="col">{say("Ordered|on")}</th>
              <th scope="col">{say("What|ordered")}</th>
              <th scope="col">{say("State|of an order")}</th>
              <th scope="col">{say("Next step")}</th>
            </tr>
          </thead>
          <tbody>
            {orders.map((order) => (
              <tr key={order.entryId}>
                <th scope="row">{dateWords(order.body.date)}</th>
                <td>
                  {orderInWords(order.body)}
                  {order.body.pharmacy && (
                    <span className="small soft">{pharmacyInWords(order.body.pharmacy)}</span>
                  )}
                </td>
                <td>
                  {sentence(
                    stateInWords(order, {
                      leadDays: pharmacyOf(order.body, practice).leadDays,
                      today: practice.today,
                    }),
                  )}
                  {order.body.override && (
                    <span className="small caution">
                      {say("Without a consent in force: {reason}", { reason: order.body.override })}
                    </span>
                  )}
                </td>
                <td>
                  <Steps order={order} onOpen={(what) => setOpen({ order, what })} />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {open?.what === "sheet" && (
        <SheetDialog order={open.order} view={view} practice={practice} onClose={close} />
      )}
      {open?.what === "receive" && (
        <ReceiveOrder order={open.order} view={view} practice={practice} onClose={close} onDone={done} />
      )}
      {(open?.what === "confirm" || open?.what === "cancel") && (
        <OrderStep
          kind={open.what}
          order={open.order}
          childId={view.child.id}
          today={practice.today}
          onClose={close}
          onDone={done}
        />
      )}
    </>
  )
}

/** The next step first; the sheet and calling off stand back. */
function Steps({
  order,
  onOpen,
}: {
  readonly order: RecordedOrder
  readonly onOpen: (what: Open["what"]) => void
}) {
  const state = orderState(order.body)
  const date = dateWords(order.body.date)
  return (
    <span className="order-steps">
      {state === "ordered" && (
        <button
          type="button"
          aria-label={say("Confirm the order of {date}", { date })}
          onClick={() => onOpen("confirm")}
        >
          {say("Confirm|an order")}
        </button>
      )}
      {state === "confirmed" && (
        <button
          type="button"
          aria-label={say("Receive the order of {date}", { date })}
          onClick={() => onOpen("receive")}
        >
          {say("Receive|an order")}
        </button>
      )}
      {state === "ordered" && (
        <button
          type="button"
          className="link"
          aria-label={say("receive the order of {date}", { date })}
          onClick={() => onOpen("receive")}
        >
          {say("receive|an order")}
        </button>
      )}
      <button
        type="button"
        className="link"
        aria-label={say("sheet of the order of {date}", { date })}
        onClick={() => onOpen("sheet")}
      >
        {say("sheet|of an order")}
      </button>
      {isAwaited(order.body) && (
        <button
          type="button"
          className="link"
          aria-label={say("call off the order of {date}", { date })}
          onClick={() => onOpen("cancel")}
        >
          {say("call off|an order")}
        </button>
      )}
    </span>
  )
}
