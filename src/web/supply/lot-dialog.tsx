import { useQuery } from "@tanstack/react-query"
import { Link } from "@tanstack/react-router"
import { dateWords } from "../../chart/words.js"
import { listed, say } from "../../engine/say.js"
import { inDigits } from "../../engine/words.js"
import type { LotAnswer } from "../../server/contract/lot.js"
import { ask, failureInWords } from "../client.js"
import { Dialog } from "../parts/dialog.js"
import { Waiting } from "../parts/waiting.js"

/** Every child who had a bottle of a lot: who has to be called when it is recalled. */
export function LotDialog({
  lot,
  childId,
  onClose,
}: {
  readonly lot: string
  readonly childId: string
  readonly onClose: () => void
}) {
  const found = useQuery({
    queryKey: ["lot", lot],
    staleTime: 0,
    queryFn: () => ask<LotAnswer>("GET", `/api/lots/${encodeURIComponent(lot)}`),
  })
  return (
    <Dialog title={say("Lot {lot}", { lot })} onClose={onClose}>
      {found.error && <p className="form-fault">{failureInWords(found.error)}</p>}
      {found.isPending && <Waiting for={say("the children")} />}
      {found.data && <Children answer={found.data} childId={childId} />}
    </Dialog>
  )
}

function Children({ answer, childId }: { readonly answer: LotAnswer; readonly childId: string }) {
  const { children } = answer
  const strengths = new Set(children.flatMap(({ bottles }) => bottles.map((one) => one.concentrationPercent)))
  return (
    <>
      <p>
        {children.length === 1 && children[0]?.id === childId
          ? say("No other child had a bottle of this lot.")
          : say("{children, plural, one {# child} other {# children}} had a bottle of this lot.", {
              children: children.length,
            })}
      </p>
      {strengths.size > 1 && (
        <p className="form-fault">
          {say(
            "Bottles of this lot are recorded with {strengths}: one lot is one making, so check the labels.",
            { strengths: listed([...strengths].map(strengthInWords)) },
          )}
        </p>
      )}
      <table className="data">
        <caption className="unseen">{say("Children with a bottle of this lot")}</caption>
        <thead>
          <tr>
            <th scope="col">{say("Child")}</th>
            <th scope="col">{say("Number|of the child")}</th>
            <th scope="col">{say("Bottles")}</th>
          </tr>
        </thead>
        <tbody>
          {children.map(({ id, name, number, bottles }) => (
            <tr key={id}>
              <th scope="row">
                <Link to="/children/$childId/$part" params={{ childId: id, part: "supply" }}>
                  {name}
                </Link>
              </th>
              <td>{number ?? "–"}</td>
              <td>{bottles.map(bottleWords).join("; ")}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  )
}

const strengthInWords = (percent: number | null): string =>
  percent === null ? say("no strength") : say("{percent} %", { percent: inDigits(percent) })

function bottleWords(bottle: LotAnswer["children"][number]["bottles"][number]): string {
  const { dispensed, opened, concentrationPercent } = bottle
  return [
    concentrationPercent === null ? null : strengthInWords(concentrationPercent),
    dispensed === null ? null : say("handed out {date}", { date: dateWords(dispensed) }),
    opened === null ? say("not recorded as opened") : say("opened {date}", { date: dateWords(opened) }),
  ]
    .filter((part) => part !== null)
    .join(", ")
}
