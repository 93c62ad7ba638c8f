import type { Sheet, SheetBlock } from "../../engine/compounding/sheet.js"
import { say } from "../../engine/say.js"
import { inWords } from "../format.js"

/** The order's paper as it is read on a page and printed on one sheet. */
export function SheetView({ sheet }: { readonly sheet: Sheet }) {
  return (
    <article className="sheet">
      <h3 className="sheet-title">{inWords(sheet.title)}</h3>
      <p className="sheet-statement">{sheet.statement}</p>
      {sheet.sections.map(({ name, heading, blocks }) => (
        <section key={name}>
          <h4>{heading}</h4>
          {blocks.map((block) => (
            <Block key={JSON.stringify(block)} block={block} />
          ))}
        </section>
      ))}
    </article>
  )
}

function Block({ block }: { readonly block: SheetBlock }) {
  switch (block.kind) {
    case "pairs":
      return (
        <dl className="sheet-pairs">
          {block.pairs.map(([label, value]) => (
            <div key={label}>
              <dt>{label}</dt>
              <dd>{inWords(value)}</dd>
            </div>
          ))}
        </dl>
      )
    case "table":
      return <Table head={block.head} rows={block.rows} />
    case "signatures":
      return (
        <Table
          head={["", say("Name"), say("Signature"), say("Date")]}
          rows={block.lines.map(({ role, name }) => [role, name, "", ""])}
        />
      )
    case "lines":
    case "notes":
    case "caution":
    case "label":
      return (
        <div className={`sheet-${block.kind}`}>
          {block.lines.map((line) => (
            <p key={line}>{inWords(line)}</p>
          ))}
        </div>
      )
  }
}

function Table({
  head,
  rows,
}: {
  readonly head: readonly string[]
  readonly rows: readonly (readonly string[])[]
}) {
  return (
    <table className={head[0] === "" ? "sheet-signatures" : "sheet-steps"}>
      <thead>
        <tr>
          {head.map((title) =>
            title === "" ? (
              <td key="role" />
            ) : (
              <th key={title} scope="col">
                {title}
              </th>
            ),
          )}
        </tr>
      </thead>
      <tbody>
        {rows.map(([first = "", ...cells]) => (
          <tr key={first}>
            <th scope="row">{first}</th>
            {cells.map((cell, index) => (
              <td key={head[index + 1]}>{cell}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  )
}
