import { Link } from "@tanstack/react-router"
import { fixed } from "../../chart/words.js"
import { CHILD_SEVERE_FROM_MG, milligramsIn } from "../../engine/compounding/atropine-content.js"
import type { CourseReading } from "../reading.js"

/** Whom to call, with the practice's own numbers. */
export function Emergency({ reading }: { readonly reading: CourseReading }) {
  const { rules, course } = reading
  const { poisonCentre, urgent, country } = rules.contacts
  const bottle = course.supplies?.findLast(
    ({ volumeMl, concentrationPercent }) => volumeMl !== undefined && concentrationPercent !== undefined,
  )
  const mg =
    bottle?.volumeMl !== undefined && bottle.concentrationPercent !== undefined
      ? milligramsIn({ volumeMl: bottle.volumeMl, concentrationPercent: bottle.concentrationPercent })
      : null
  return (
    <section className="card" aria-labelledby="emergency">
      <h2 id="emergency">In an emergency</h2>
      <dl className="emergency small">
        <dt>Flashes, floaters, a curtain, pain or sudden loss of vision</dt>
        <dd>Care on the same day: {urgent ? <b>{urgent}</b> : <NotSet what="number for urgent care" />}</dd>
        <dt>Drops were swallowed</dt>
        <dd>
          Poison centre{country ? ` (${country})` : ""}:{" "}
          {poisonCentre ? <b>{poisonCentre}</b> : <NotSet what="poison centre" />}
        </dd>
        <dd className="soft">
          {mg === null ? "" : `The last bottle on record held ${fixed(mg, 1)} mg of atropine. `}A poison
          service says that severe poisoning of a child is possible from {CHILD_SEVERE_FROM_MG} mg (full-text
          excerpt).
        </dd>
        <dt>Confusion, fever, flushing, a fast pulse or a seizure; a painful red eye with haloes</dt>
        <dd>
          Emergency care.{" "}
          <span className="soft">
            Signs of atropine poisoning and of closing of the angle in the product texts of 1 % drops; where
            to go is common practice, no source (CD-120).
          </span>
        </dd>
      </dl>
    </section>
  )
}

function NotSet({ what }: { readonly what: string }) {
  return (
    <span className="caution">
      the practice has not set a {what}.{" "}
      <Link to="/settings/$part" params={{ part: "contacts" }}>
        Set it
      </Link>
    </span>
  )
}
