import { dateWords } from "../../chart/words.js"
import { say } from "../../engine/say.js"
import type { InboxItemAnswer } from "../../server/contract/inbox.js"
import { entryLine } from "../child/entry-words.js"
import { fileUrl } from "../consent/stored-file.js"
import { inWords } from "../format.js"
import { FiguresBeside } from "./figures-beside.js"

/** What the object holds, beside the record of the child that is chosen. */
export function Holds({ item }: { readonly item: InboxItemAnswer }) {
  const { compared, visits, documents } = item
  const shown =
    compared?.visits ??
    visits.map((offered) => ({ date: offered.date, recorded: null, offered, contradictions: [] }))
  const others = compared?.others ?? item.others
  return (
    <section className="card" aria-label={say("What it holds")}>
      <h2>
        {compared
          ? say("What it holds, beside the record of {name}", { name: compared.child.name })
          : say("What it holds")}
      </h2>
      {shown.map((visit) => (
        <FiguresBeside key={visit.date} visit={visit} isCompared={compared !== null} />
      ))}
      {documents.map(({ date, title, file }) => (
        <p key={file}>
          <a href={fileUrl(file)}>{say("{title}, {day}", { title, day: dateWords(date) })}</a>
        </p>
      ))}
      {others.length > 0 && (
        <>
          <h3>{compared ? say("Would be added as well") : say("As well")}</h3>
          <ul>
            {others.map((other) => (
              <li key={JSON.stringify(other)}>{entryLine(other as Parameters<typeof entryLine>[0])}</li>
            ))}
          </ul>
        </>
      )}
      {compared?.problems.map(({ message }) => (
        <p key={message} className="form-fault">
          {inWords(message)}
        </p>
      ))}
    </section>
  )
}
