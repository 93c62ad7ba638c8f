import type { ReactNode } from "react"
import { type ConsentText, sourcesHeading, wordingInWords } from "../../engine/consent/consent-text.js"
import { SIGNING, saidIn } from "../../engine/consent/signing-words.js"
import { dayInWords, msg } from "../../engine/say.js"

/**
 * The text of a consent as it is read, on the screen and on paper, in its own language. `children` stand below it on
 * paper only.
 */
export function ConsentSheet({
  text,
  children,
}: {
  readonly text: ConsentText
  readonly children?: ReactNode
}) {
  return (
    <article className="consent-sheet" aria-labelledby="consent-title" lang={text.wording.language}>
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
        <section className="consent-sources" lang={text.spoken}>
          <h3>{sourcesHeading(text)}</h3>
          <ul lang="en">
            {text.sources.map((source) => (
              <li key={source}>{source}</li>
            ))}
          </ul>
        </section>
      )}
      <p className="soft small" lang={text.spoken}>
        {wordingInWords(text)}
      </p>
      {children}
    </article>
  )
}

/** Who it is about and the lines to sign on, for paper. */
export function PaperLines({
  text: { spoken },
  practice,
  childName,
  born,
}: {
  readonly text: ConsentText
  readonly practice: string
  readonly childName: string
  readonly born: string
}) {
  const { paperName, relation, paperDate, signature, paperAssent } = SIGNING
  return (
    <div className="print-only consent-lines" lang={spoken}>
      <p>
        {saidIn(spoken, msg("{practice}. Child: {name}, born {born}."), {
          practice,
          name: childName,
          born: dayInWords(born, spoken),
        })}
      </p>
      {[paperName, relation, paperDate, signature, paperAssent].map((line) => (
        <p className="consent-line" key={line}>
          {saidIn(spoken, line)}
        </p>
      ))}
    </div>
  )
}
