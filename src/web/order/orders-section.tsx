import "./order.css"
import { useState } from "react"
import { say } from "../../engine/say.js"
import type { ChildPartProps } from "../child/child-part-props.js"
import { OrderList } from "./order-list.js"
import { OrderPanel } from "./order-panel.js"

/** What was ordered for a child and how far it has come; the form of a new order. A part of the page about supply. */
export function OrdersSection(props: ChildPartProps) {
  const [isOrdering, setIsOrdering] = useState(false)
  const done = (message: string) => {
    setIsOrdering(false)
    props.onDone(message)
  }
  return (
    <section className="orders" aria-labelledby="orders">
      <div className="orders-head">
        <h2 id="orders">{say("Orders")}</h2>
        {!isOrdering && (
          <button type="button" className="primary" onClick={() => setIsOrdering(true)}>
            {say("New order")}
          </button>
        )}
      </div>
      {isOrdering && <OrderPanel {...props} onDone={done} onClose={() => setIsOrdering(false)} />}
      <OrderList {...props} />
    </section>
  )
}
