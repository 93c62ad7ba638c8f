import "./document-view.css"
import { useEffect, useId, useRef } from "react"
import type { ShownDocument } from "../../server/contract/documents.js"
import { BlockView } from "./block-view.js"

interface DocumentViewProps {
  readonly document: Omit<ShownDocument, "letterhead"> & {
    readonly letterhead: Omit<ShownDocument["letterhead"], "logo"> & { readonly logo?: unknown }
  }
  /** Large for a parent's phone or a screen turned round; its title is then the page's own. */
  readonly size?: "normal" | "large"
  /** Whether each figure can be copied and saved; for the practice's own pages. */
  readonly canKeepFigures?: boolean
}

/** A paper as a page, from the same blocks as its PDF. */
export function DocumentView({
  document: paper,
  size = "normal",
  canKeepFigures = false,
}: DocumentViewProps) {
  const place = useRef<HTMLElement>(null)
  useOpenForPrint(place)
  const titleId = useId()
  const { letterhead, title, language, blocks, foot, kind, date } = paper
  const Title = size === "large" ? "h1" : "h2"
  return (
    <article ref={place} className={`paper-sheet paper-${size}`} lang={language} aria-labelledby={titleId}>
      <header className="paper-head">
        <div>
          <p className="paper-practice">{letterhead.practice}</p>
          {letterhead.lines.map((line) => (
            <p key={line}>{line}</p>
          ))}
        </div>
        {typeof letterhead.logo === "string" && <img src={letterhead.logo} alt="" />}
      </header>
      <Title id={titleId} className="paper-title">
        {title}
      </Title>
      {blocks.map((block, index) => (
        <BlockView
          // biome-ignore lint/suspicious/noArrayIndexKey: a block has its place and nothing else
          key={index}
          block={block}
          signatureHead={paper.signatureHead}
          under={size === "large" ? 1 : 2}
          keptAs={canKeepFigures ? `${kind}-${date}-${index + 1}` : null}
        />
      ))}
      <p className="paper-foot">{foot}</p>
    </article>
  )
}

/** What is folded on the screen stands open on paper. */
function useOpenForPrint(place: { readonly current: HTMLElement | null }): void {
  useEffect(() => {
    const folded = () => [...(place.current?.querySelectorAll("details") ?? [])].filter(({ open }) => !open)
    let opened: readonly HTMLDetailsElement[] = []
    const open = () => {
      opened = folded()
      for (const answer of opened) answer.open = true
    }
    const close = () => {
      for (const answer of opened) answer.open = false
    }
    addEventListener("beforeprint", open)
    addEventListener("afterprint", close)
    return () => {
      removeEventListener("beforeprint", open)
      removeEventListener("afterprint", close)
    }
  }, [place])
}
