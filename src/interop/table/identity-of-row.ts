import { say } from "../../engine/say.js"
import type { Identity } from "../intake/fragment.js"
import { ancestryIn, sexIn } from "./cell-words.js"
import { defined } from "./defined.js"
import type { RowCells } from "./row-cells.js"
import type { RowReading } from "./table-types.js"

/** Whose row it is: a number or a name, and what tells two children of one name apart. */
export function identityOf(cells: RowCells): Identity | undefined {
  const given = cells.text("givenName")
  const family = cells.text("familyName")
  const identity = defined({
    number: cells.text("number"),
    name:
      namedFirst(cells.text("name")) ??
      (defined({ given, family }) && [given, family].filter(Boolean).join(" ")),
    born: cells.date("born"),
    sex: sexOf(cells),
  })
  if (identity?.number !== undefined || identity?.name !== undefined) return oneBlank(identity)
  const columns = cells.plan.columns.find(({ field }) => field.id === "number" || /name/i.test(field.id))
  const heading = columns?.heading ?? cells.plan.headings[0] ?? "#1"
  return cells.refuse({ heading }, null, say("the child's number or name"))
}

const oneBlank = (identity: Identity): Identity =>
  identity.name === undefined ? identity : { ...identity, name: identity.name.replace(/\s+/g, " ") }

/** "García Luna, Ana" is written family name first. */
function namedFirst(name: string | undefined): string | undefined {
  const [, family, given] = /^([^,]+),\s*([^,]+)$/.exec(name ?? "") ?? []
  return family && given ? `${given} ${family}` : name
}

function sexOf(cells: RowCells): Identity["sex"] {
  const cell = cells.cell("sex")
  return cell && (sexIn(cell.text, cell.unit) ?? cells.refuse(cell, cell.text, say("female or male")))
}

/** What the row says of the child beyond that. */
export function childOf(cells: RowCells): RowReading["child"] | undefined {
  const ancestry = cells.cell("ancestry")
  const parents = cells.number("myopicParents", null, { low: 0, high: 2, whole: true, ucum: "1", unit: "" })
  return defined({
    ancestry:
      ancestry &&
      (ancestryIn(ancestry.text) ??
        cells.refuse(
          ancestry,
          ancestry.text,
          say("one of {list}", { list: "east-asian, european, south-asian, african, other, unstated" }),
        )),
    myopicParents: parents as 0 | 1 | 2 | undefined,
  })
}
