import { Fragment, type ReactNode } from "react"
import { say } from "../../engine/say.js"
import type { Block } from "../../server/contract/documents.js"
import { Drawing } from "../parts/drawing.js"
import { FigureActions } from "./figure-actions.js"

interface BlockViewProps {
  readonly block: Block
  readonly signatureHead: readonly string[] | undefined
  /** Level of the heading the document stands under. */
  readonly under: 1 | 2
  /** What a figure is saved as; null where figures are only to be looked at. */
  readonly keptAs: string | null
}

/** One block of a document as a page. */
export function BlockView({ block, signatureHead, under, keptAs }: BlockViewProps) {
  switch (block.kind) {
    case "heading": {
      const Heading = `h${under + block.level}` as "h2" | "h3" | "h4"
      return <Heading className={`paper-heading-${block.level}`}>{block.text}</Heading>
    }
    case "lead":
      return <p className="paper-lead">{block.text}</p>
    case "text":
      return <p>{block.text}</p>
    case "list": {
      const List = block.isNumbered ? "ol" : "ul"
      return (
        <List>
          {each(block.items, (item) => (
            <li>{item}</li>
          ))}
        </List>
      )
    }
    case "pairs":
      return (
        <dl className="paper-pairs">
          {each(block.pairs, ([label, value]) => (
            <div>
              <dt>{label}</dt>
              <dd>{value}</dd>
            </div>
          ))}
        </dl>
      )
    case "table":
      return <TableView {...block} />
    case "answer":
      return (
        <details className="paper-answer">
          <summary>{block.question}</summary>
          <Lines lines={block.lines} />
          {block.grade !== "" && <p className="paper-grade">{block.grade}</p>}
        </details>
      )
    case "figure":
      return (
        <figure className="paper-figure">
          {/* On a phone a wide figure scrolls by itself, and the keyboard must reach it. */}
          <div role="img" aria-label={block.alt} tabIndex={under === 1 ? 0 : undefined}>
            <Drawing svg={block.svg} />
          </div>
          {block.caption !== undefined && <figcaption>{block.caption}</figcaption>}
          {keptAs !== null && <FigureActions svg={block.svg} name={keptAs} />}
        </figure>
      )
    case "code":
      return (
        <div className="paper-code">
          <div role="img" aria-label={block.alt}>
            <Drawing svg={block.svg} />
          </div>
          <div>
            <Lines lines={block.lines} />
          </div>
        </div>
      )
    case "caution":
      return (
        <div className="paper-caution">
          <Lines lines={block.lines} />
        </div>
      )
    case "notes":
      return (
        <div className="paper-notes">
          <Lines lines={block.lines} />
        </div>
      )
    case "label":
    case "address":
      return (
        <div className={`paper-${block.kind}`}>
          <Lines lines={block.lines} />
        </div>
      )
    case "signatures":
      return <SignatureLines lines={block.lines} head={signatureHead} />
    case "page-break":
      return <div className="paper-break" />
    default:
      return block satisfies never
  }
}

/** Items of a document have their place and nothing else to be told apart by. */
function each<Item>(items: readonly Item[], show: (item: Item, place: number) => ReactNode): ReactNode {
  return items.map((item, place) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: see above
    <Fragment key={place}>{show(item, place)}</Fragment>
  ))
}

function Lines({ lines }: { readonly lines: readonly string[] }) {
  return (
    <>
      {each(lines, (line) => (
        <p>{line}</p>
      ))}
    </>
  )
}

function TableView({ head, rows, figures = [] }: Extract<Block, { kind: "table" }>) {
  const cellClass = (column: number) => (figures.includes(column) ? "number" : undefined)
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table scrolls by itself, and the keyboard must reach it
    <section className="scroll" tabIndex={0} aria-label={head.filter((title) => title !== "").join(", ")}>
      <table className="paper-table">
        <thead>
          <tr>
            {each(head, (title, column) =>
              title === "" ? (
                <td />
              ) : (
                <th scope="col" className={cellClass(column)}>
                  {title}
                </th>
              ),
            )}
          </tr>
        </thead>
        <tbody>
          {each(rows, (row) => (
            <tr>
              {each(row, (cell, column) => (
                <td className={cellClass(column)}>{cell}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}

function SignatureLines({
  lines,
  head = [say("Name"), say("Signature"), say("Date")],
}: {
  readonly lines: Extract<Block, { kind: "signatures" }>["lines"]
  readonly head: readonly string[] | undefined
}) {
  return (
    <table className="paper-table paper-signatures">
      <thead>
        <tr>
          <td />
          {each(head, (title) => (
            <th scope="col">{title}</th>
          ))}
        </tr>
      </thead>
      <tbody>
        {each(lines, ({ role, name }) => (
          <tr>
            <th scope="row">{role}</th>
            <td>{name}</td>
            <td />
            <td />
          </tr>
        ))}
      </tbody>
    </table>
  )
}
