import { listed, say } from "../../engine/say.js"
import "./pharmacies.css"
import { useState } from "react"
import { usualPharmacy } from "../../engine/compounding/usual-pharmacy.js"
import type { Pharmacy } from "../../engine/practice-rules.js"
import { inDigits } from "../../engine/words.js"
import { sentence } from "../format.js"
import { DilutionExample } from "./dilution-example.js"
import { PharmacyForm } from "./pharmacy-form.js"
import type { SettingsPartProps } from "./settings-part-props.js"

interface Editing {
  readonly pharmacy: Pharmacy
  /** The paper it takes the place of; none for a new one. */
  readonly supersedes: string | null
}

/** The pharmacies a practice orders from: what each has, measures and states. */
export function PharmaciesPart({ rules, onDone }: SettingsPartProps) {
  const [editing, setEditing] = useState<Editing | null>(null)
  const papers = rules.papers.filter(({ kind, supersededBy }) => kind === "pharmacy" && supersededBy === null)
  const done = (message: string) => {
    setEditing(null)
    onDone(message)
  }
  return (
    <div className="pharmacies">
      <p className="soft">
        {say(
          "What a pharmacy has in stock, how small a volume it measures and how long its bottles are used decide how an order is made. Ask the pharmacist; nothing here is a published figure.",
        )}
      </p>
      {papers.length === 0 && (
        <article className="card">
          <h2>{say("Nothing set")}</h2>
          <p>
            {say(
              "Until a pharmacy is added, orders assume what is usual (common practice, no source): {usual}.",
              { usual: inOneLine(usualPharmacy) },
            )}
          </p>
          <DilutionExample pharmacy={usualPharmacy} />
        </article>
      )}
      {papers.map(({ id, body }) => {
        const pharmacy = body as Pharmacy
        return (
          <article className="card" key={id}>
            <div className="pharmacy-head">
              <h2>{pharmacy.name}</h2>
              <button
                type="button"
                aria-label={say("Edit {name}", { name: pharmacy.name })}
                onClick={() => setEditing({ pharmacy, supersedes: id })}
              >
                {say("Edit")}
              </button>
            </div>
            <p>{sentence(inOneLine(pharmacy))}</p>
            {pharmacy.contact && <p className="soft">{pharmacy.contact}</p>}
            <DilutionExample pharmacy={pharmacy} />
          </article>
        )
      })}
      <div className="form-actions">
        <button type="button" className="primary" onClick={() => setEditing(newPharmacy(papers.length))}>
          {say("Add pharmacy")}
        </button>
      </div>
      {editing && <PharmacyForm {...editing} onClose={() => setEditing(null)} onDone={done} />}
    </div>
  )
}

function newPharmacy(count: number): Editing {
  const pharmacy = { ...usualPharmacy, id: `pharmacy-${count + 1}`, name: "" }
  return { pharmacy, supersedes: null }
}

function inOneLine(pharmacy: Pharmacy): string {
  const { stockPercents, bottleMl, isPreserved, leadDays, daysAfterOpening, devices } = pharmacy
  const said = {
    stocks: listed(stockPercents.map(inDigits)),
    volume: inDigits(bottleMl),
    preserved: isPreserved ? "yes" : "no",
    opened: daysAfterOpening,
    lead: leadDays,
  }
  return devices?.length
    ? say(
        "stock of {stocks} %, bottles of {volume} mL {preserved, select, yes {with preservative} other {without preservative}}, used {opened, plural, one {# day} other {# days}} after opening, {lead, plural, one {# day} other {# days}} to deliver, measured with {devices}",
        { ...said, devices: devices.map(({ name }) => name).join(", ") },
      )
    : say(
        "stock of {stocks} %, bottles of {volume} mL {preserved, select, yes {with preservative} other {without preservative}}, used {opened, plural, one {# day} other {# days}} after opening, {lead, plural, one {# day} other {# days}} to deliver",
        said,
      )
}
