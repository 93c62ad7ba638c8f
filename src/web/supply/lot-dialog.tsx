import { useQuery } from "@tanstack/react-query"
import { Link } from "@tanstack/react-router"
import { dateWords } from "../../chart/words.js"
import { counted } from "../../engine/words.js"
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
    <Dialog title={`Lot ${lot}`} onClose={onClose}>
      {found.error && <p className="form-fault">{failureInWords(found.error)}</p>}
      {found.isPending && <Waiting for="the children" />}
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
          ? "No other child had a bottle of this lot."
          : `${counted(children.length, "child").replace("childs", "children")} had a bottle of this lot.`}
      </p>
      {strengths.size > 1 && (
        <p className="form-fault">
          Bottles of this lot are recorded with{" "}
          {[...strengths].map((one) => (one === null ? "no strength" : `${one} %`)).join(" and ")}: one lot is
          one making, so check the labels.
        </p>
      )}
      <table className="data">
        <caption className="unseen">Children with a bottle of this lot</caption>
        <thead>
          <tr>
            <th scope="col">Child</th>
            <th scope="col">Number</th>
            <th scope="col">Bottles</th>
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

function bottleWords(bottle: LotAnswer["children"][number]["bottles"][number]): string {
  const { dispensed, opened, concentrationPercent } = bottle
  return [
    concentrationPercent === null ? null : `${concentrationPercent} %`,
    dispensed === null ? null : `handed out ${dateWords(dispensed)}`,
    opened === null ? "not recorded as opened" : `opened ${dateWords(opened)}`,
  ]
    .filter((part) => part !== null)
    .join(", ")
}
