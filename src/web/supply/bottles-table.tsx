import { useState } from "react"
import { dateWords } from "../../chart/words.js"
import { pharmacyInWords } from "../../engine/compounding/usual-pharmacy.js"
import { msg, say } from "../../engine/say.js"
import type { Bottle } from "../../engine/supply/bottles.js"
import type { SupplyReport } from "../../engine/supply/supply-report.js"
import { inDigits } from "../../engine/words.js"
import type { ChildPartProps } from "../child/child-part-props.js"
import { LotDialog } from "./lot-dialog.js"
import { OpenBottle } from "./open-bottle.js"
import type { RecordedBottle } from "./recorded-bottles.js"

const STATES: Readonly<Record<Bottle["state"], string>> = {
  "in-date": msg("in date"),
  spare: msg("spare"),
  "past-date": msg("past its date"),
  "not-counted": msg("not counted"),
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
      <h2 id="bottles">{say("Bottles")}</h2>
      {rows.length === 0 ? (
        <p className="soft">{say("No bottle is recorded.")}</p>
      ) : (
        <div className="scroll">
          <table className="data bottles">
            <caption className="unseen">{say("Bottles handed out")}</caption>
            <thead>
              <tr>
                <th scope="col" aria-sort={isLatestFirst ? "descending" : "ascending"}>
                  <button type="button" className="link" onClick={() => setIsLatestFirst(!isLatestFirst)}>
                    {isLatestFirst ? say("Handed out, latest first") : say("Handed out, earliest first")}
                  </button>
                </th>
                <th scope="col">{say("Opened|on")}</th>
                <th scope="col">{say("Last day of use")}</th>
                <th scope="col">{say("Strength|of drops")}</th>
                <th scope="col">{say("Lot")}</th>
                <th scope="col">{say("Pharmacy")}</th>
                <th scope="col">{say("Now|state")}</th>
              </tr>
            </thead>
            <tbody>
              {rows.map((bottle) => (
                <tr key={bottles[bottle.index]?.entryId}>
                  <th scope="row" className="day">
                    {bottle.dispensed ? dateWords(bottle.dispensed) : say("not recorded")}
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
                        {say("Record opening")}
                      </button>
                    )}
                  </td>
                  <td>{lastDay(bottle)}</td>
                  <td>
                    {bottle.concentrationPercent === undefined
                      ? say("not stated")
                      : say("{percent} %", { percent: inDigits(bottle.concentrationPercent) })}
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
                  <td>{bottle.pharmacy === undefined ? "–" : pharmacyInWords(bottle.pharmacy)}</td>
                  <td>{say(STATES[bottle.state])}</td>
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
  return lastNight && state !== "spare"
    ? say("{date}, taken as a month", { date: dateWords(lastNight) })
    : say("not stated")
}
