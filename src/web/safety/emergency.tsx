import { Link } from "@tanstack/react-router"
import { fixed } from "../../chart/words.js"
import { CHILD_SEVERE_FROM_MG, milligramsIn } from "../../engine/compounding/atropine-content.js"
import { say } from "../../engine/say.js"
import { inDigits } from "../../engine/words.js"
import { Said } from "../parts/said.js"
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
      <h2 id="emergency">{say("In an emergency")}</h2>
      <dl className="emergency small">
        <dt>{say("Flashes, floaters, a curtain, pain or sudden loss of vision")}</dt>
        <dd>
          <Said
            message="Care on the same day: {number}"
            values={{ number: urgent ? <b>{urgent}</b> : <NotSet what="urgent" /> }}
          />
        </dd>
        <dt>{say("Drops were swallowed")}</dt>
        <dd>
          <Said
            message={country ? "Poison centre ({country}): {number}" : "Poison centre: {number}"}
            values={{
              country: country ?? "",
              number: poisonCentre ? <b>{poisonCentre}</b> : <NotSet what="poison-centre" />,
            }}
          />
        </dd>
        <dd className="soft">
          {mg === null
            ? say(
                "A poison service says that severe poisoning of a child is possible from {severe} mg (full-text excerpt).",
                { severe: inDigits(CHILD_SEVERE_FROM_MG) },
              )
            : say(
                "The last bottle on record held {mg} mg of atropine. A poison service says that severe poisoning of a child is possible from {severe} mg (full-text excerpt).",
                { mg: fixed(mg, 1), severe: inDigits(CHILD_SEVERE_FROM_MG) },
              )}
        </dd>
        <dt>{say("Confusion, fever, flushing, a fast pulse or a seizure; a painful red eye with haloes")}</dt>
        <dd>
          {say("Emergency care.")}{" "}
          <span className="soft">
            {say(
              "Signs of atropine poisoning and of closing of the angle in the product texts of 1 % drops; where to go is common practice, no source (CD-120).",
            )}
          </span>
        </dd>
      </dl>
    </section>
  )
}

function NotSet({ what }: { readonly what: "urgent" | "poison-centre" }) {
  return (
    <span className="caution">
      <Said
        message={
          what === "urgent"
            ? "the practice has not set a number for urgent care. {link}"
            : "the practice has not set a poison centre. {link}"
        }
        values={{
          link: (
            <Link to="/settings/$part" params={{ part: "contacts" }}>
              {say("Set it")}
            </Link>
          ),
        }}
      />
    </span>
  )
}
