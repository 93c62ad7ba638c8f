import { useState } from "react"
import { dateWords } from "../../chart/words.js"
import type { Bottle } from "../../engine/supply/bottles.js"
import type { SupplyReport } from "../../engine/supply/supply-report.js"
import type { ChildPartProps } from "../child/child-part-props.js"
import { LotDialog } from "./lot-dialog.js"
import { OpenBottle } from "./open-bottle.js"
import type { RecordedBottle } from "./recorded-bottles.js"

const STATES: Readonly<Record<Bottle["state"], string>> = {
  "in-date": "in date",
  spare: "spare",
  "past-date": "past its date",
  "not-counted": "not counted",
}

interface BottlesTableProps extends Pick<ChildPartProps, "view" | "reading" | "onDone"> {
  readonly report: SupplyReport
  readonly bottles: readonly RecordedBottle[]
}

/** Every bottle with its days, its lot and its pharmacy; the latest first, or the earliest. */
export function BottlesTable({ report, bottles, view, reading, onDone }: BottlesTableProps) {
  const [isLatestFirst, setIsLatestFirst] = useState(true)
  const [opening, setOpening] = useState<RecordedBottle | null>(null)
  const [lot, setLot] = useState<string | null>(null)
  const rows = isLatestFirst ? report.bottles.toReversed() : report.bottles
  return (
    <section className="card" aria-labelledby="bottles">
      <h2 id="bottles">Bottles</h2>
      {rows.length === 0 ? (
        <p className="soft">No bottle is recorded.</p>
      ) : (
        <div className="scroll">
          <table className="data bottles">
            <caption className="unseen">Bottles handed out</caption>
            <thead>
              <tr>
                <th scope="col" aria-sort={isLatestFirst ? "descending" : "ascending"}>
                  <button type="button" className="link" onClick={() => setIsLatestFirst(!isLatestFirst)}>
                    Handed out, {isLatestFirst ? "latest first" : "earliest first"}
                  </button>
                </th>
                <th scope="col">Opened</th>
                <th scope="col">Last day of use</th>
                <th scope="col">Strength</th>
                <th scope="col">Lot</th>
                <th scope="col">Pharmacy</th>
                <th scope="col">Now</th>
              </tr>
            </thead>
            <tbody>
              {rows.map((bottle) => (
                <tr key={bottles[bottle.index]?.entryId}>
                  <th scope="row" className="day">
                    {bottle.dispensed ? dateWords(bottle.dispensed) : "not recorded"}
                  </th>
                  <td className="day">
                    {bottle.opened ? (
                      dateWords(bottle.opened)
                    ) : (
                      <button
                        type="button"
                        className="link"
                        onClick={() => setOpening(bottles[bottle.index] ?? null)}
                      >
                        Record opening
                      </button>
                    )}
                  </td>
                  <td>{lastDay(bottle)}</td>
                  <td>
                    {bottle.concentrationPercent === undefined
                      ? "not stated"
                      : `${bottle.concentrationPercent} %`}
                  </td>
                  <td>
                    {bottle.lot ? (
                      <button type="button" className="link" onClick={() => setLot(bottle.lot ?? null)}>
                        {bottle.lot}
                      </button>
                    ) : (
                      "–"
                    )}
                  </td>
                  <td>{bottle.pharmacy ?? "–"}</td>
                  <td>{STATES[bottle.state]}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
      {opening && (
        <OpenBottle
          bottle={opening}
          view={view}
          reading={reading}
          onClose={() => setOpening(null)}
          onDone={(message) => {
            onDone(message)
            setOpening(null)
          }}
        />
      )}
      {lot && <LotDialog lot={lot} childId={view.child.id} onClose={() => setLot(null)} />}
    </section>
  )
}

/** The date on the bottle; where it has none, the last night that is counted. */
function lastDay({ beyondUse, lastNight, state }: Bottle): string {
  if (beyondUse) return dateWords(beyondUse)
  return lastNight && state !== "spare" ? `${dateWords(lastNight)}, taken as a month` : "not stated"
}
