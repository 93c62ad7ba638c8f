import { knownWords } from "../../chart/words.js"
import { GRADE_WORDS } from "../../engine/reference/grade-words.js"
import { language, say } from "../../engine/say.js"
import type { Why } from "../../engine/why/why.js"
import { capitalised, inWords } from "../format.js"
import { nameInWords, sourceInWords, valueInWords } from "./parameter-in-words.js"

export function WhyAnswer({ why }: { readonly why: Why }) {
  const { inputs, formula, parameters, sources, tables } = why
  // Notes, citations and tables stand as they were written down with the evidence, in English.
  const asWritten = language() === "en" ? undefined : "en"
  const listed = sources.map(({ id }) => id)
  return (
    <div className="why">
      <section>
        <h3>{say("What went in")}</h3>
        <dl className="pairs">
          {inputs.map(([label, value], index) => (
            // Two visits may carry the same label; the order is fixed, so the index is a sound key.
            // biome-ignore lint/suspicious/noArrayIndexKey: see above
            <div key={index}>
              <dt>{capitalised(inWords(label))}</dt>
              <dd>{inWords(value)}</dd>
            </div>
          ))}
        </dl>
      </section>
      <section>
        <h3>{say("How it is worked out")}</h3>
        <ol>
          {formula.map((step) => (
            <li key={step}>{inWords(step)}</li>
          ))}
        </ol>
      </section>
      {parameters.length > 0 && (
        <section>
          <h3>{say("Parameters")}</h3>
          <dl className="parameters">
            {parameters.map((parameter) => (
              <div key={parameter.name}>
                <dt>{nameInWords(parameter.name)}</dt>
                <dd>
                  <b>{valueInWords(parameter)}</b>
                  <span className="soft"> {capitalised(sourceInWords(parameter, listed))}.</span>
                  <p className="soft small" lang={asWritten}>
                    {parameter.note}
                  </p>
                </dd>
              </div>
            ))}
          </dl>
        </section>
      )}
      {sources.length > 0 && (
        <section>
          <h3>{say("Sources")}</h3>
          <ol className="small">
            {sources.map(({ id, citation, doi, obtained, caveats }) => (
              <li key={id}>
                {citation}
                {doi === null ? "" : `, doi ${doi}`}.{" "}
                <span className="soft">{say("Read as: {how}.", { how: knownWords(obtained) })}</span>
                {caveats && <span className="soft"> {caveats}</span>}
              </li>
            ))}
          </ol>
        </section>
      )}
      {tables.length > 0 && (
        <section>
          <h3>{say("Published tables read")}</h3>
          {tables.map((table) => (
            <div key={table.id} className="source">
              <p>
                <b>{table.title}</b>
              </p>
              <p className="soft small">
                {table.authors}
                {table.year === null ? "" : `, ${table.year}`}
                {table.doi === null ? "" : `, doi ${table.doi}`}. {table.where}.
              </p>
              <p className="small">
                {say(
                  "grade {grade}, {words}; {population}; n {n}; ages {ages}; {device}. How the numbers were obtained: {obtained}.",
                  {
                    grade: table.grade,
                    words: knownWords(GRADE_WORDS[table.grade]),
                    population: knownWords(table.population),
                    n: table.n,
                    ages: table.ageRange,
                    device: table.device,
                    obtained: knownWords(table.obtained),
                  },
                )}
              </p>
              {table.notes && <p className="soft small">{table.notes}</p>}
            </div>
          ))}
        </section>
      )}
    </div>
  )
}
