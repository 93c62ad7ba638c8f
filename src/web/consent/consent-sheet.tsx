import type { ReactNode } from "react"
import { dateWords } from "../../chart/words.js"
import type { ConsentText } from "../../engine/consent/consent-text.js"

/** The text of a consent as it is read, on the screen and on paper. `children` stand below it on paper only. */
export function ConsentSheet({
  text,
  children,
}: {
  readonly text: ConsentText
  readonly children?: ReactNode
}) {
  return (
    <article className="consent-sheet" aria-labelledby="consent-title">
      <h2 id="consent-title">{text.title}</h2>
      {text.sections.map(({ heading, paragraphs }) => (
        <section key={heading}>
          <h3>{heading}</h3>
          {paragraphs.map((paragraph) => (
            <p key={paragraph}>{paragraph}</p>
          ))}
        </section>
      ))}
      {text.sources.length > 0 && (
        <section className="consent-sources">
          <h3>Where the figures come from</h3>
          <ul>
            {text.sources.map((source) => (
              <li key={source}>{source}</li>
            ))}
          </ul>
        </section>
      )}
      <p className="soft small">
        Wording “{text.wording.id}”, version {text.wording.version}
      </p>
      {children}
    </article>
  )
}

/** Who it is about and the lines to sign on, for paper. */
export function PaperLines(props: {
  readonly practice: string
  readonly childName: string
  readonly born: string
}) {
  return (
    <div className="print-only consent-lines">
      <p>
        {props.practice}. Child: {props.childName}, born {dateWords(props.born)}.
      </p>
      {[
        "Name of the parent or guardian",
        "Relation to the child",
        "Date",
        "Signature",
        "The child agrees: yes / no / was not asked",
      ].map((line) => (
        <p className="consent-line" key={line}>
          {line}
        </p>
      ))}
    </div>
  )
}
