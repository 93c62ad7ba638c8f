import "./supply.css"
import { lazy, Suspense, useMemo, useState } from "react"
import { say } from "../../engine/say.js"
import { supplyReport } from "../../engine/supply/supply-report.js"
import type { ChildPartProps } from "../child/child-part-props.js"
import { EnterBottle } from "../enter/bottle.js"
import { Waiting } from "../parts/waiting.js"
import { BottlesTable } from "./bottles-table.js"
import { CoverageCard } from "./coverage-card.js"
import { EnterMissedNights } from "./missed-nights.js"
import { NextBottleCard } from "./next-bottle-card.js"
import { recordedBottles, withBottles } from "./recorded-bottles.js"

const OrdersSection = lazy(() =>
  import("../order/orders-section.js").then((module) => ({ default: module.OrdersSection })),
)

/** Bottles, the nights they cover, and what comes next. */
export function SupplyPart(props: ChildPartProps) {
  const { view, reading, onDone } = props
  const [form, setForm] = useState<"bottle" | "missed" | null>(null)
  const bottles = useMemo(() => recordedBottles(view), [view])
  const report = useMemo(() => {
    const { today, protocol, rules } = reading
    const course = withBottles(reading.course, bottles)
    return supplyReport({ course, asOf: today, protocol, pharmacies: rules.pharmacies })
  }, [reading, bottles])
  const close = () => setForm(null)
  const shared = {
    view,
    reading,
    onClose: close,
    onDone: (message: string) => {
      onDone(message)
      close()
    },
  }
  return (
    <div className="supply-part">
      <div className="supply-actions">
        <button type="button" className="primary" onClick={() => setForm("bottle")}>
          {say("Bottle handed out")}
        </button>
        <button type="button" onClick={() => setForm("missed")}>
          {say("Missed nights told of")}
        </button>
      </div>
      <CoverageCard report={report} course={reading.course} />
      <NextBottleCard report={report} course={reading.course} today={reading.today} />
      <BottlesTable report={report} bottles={bottles} {...props} />
      <Suspense fallback={<Waiting for={say("the orders")} />}>
        <OrdersSection {...props} />
      </Suspense>
      {form === "bottle" && <EnterBottle {...shared} />}
      {form === "missed" && <EnterMissedNights {...shared} />}
    </div>
  )
}
