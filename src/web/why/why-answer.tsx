import { citationOf } from "../../evidence/index.js"
import { capitalised } from "../format.js"
import { citedSources, gradeInWords, sourceInWords, valueInWords, type Why } from "./why.js"

export function WhyAnswer({ why }: { readonly why: Why }) {
  const sources = citedSources(why.parameters)
  return (
    <div className="why">
      <section>
        <h3>What went in</h3>
        <dl className="pairs">
          {why.inputs.map(([label, value], index) => (
            // Two visits may carry the same label; the order is fixed, so the index is a sound key.
            // biome-ignore lint/suspicious/noArrayIndexKey: see above
            <div key={index}>
              <dt>{capitalised(label)}</dt>
              <dd>{value}</dd>
            </div>
          ))}
        </dl>
      </section>
      <section>
        <h3>How it is worked out</h3>
        <ol>
          {why.steps.map((step) => (
            <li key={step}>{step}</li>
          ))}
        </ol>
      </section>
      {why.parameters.length > 0 && (
        <section>
          <h3>Parameters</h3>
          <dl className="parameters">
            {why.parameters.map(({ name, parameter }) => (
              <div key={name}>
                <dt>{name}</dt>
                <dd>
                  <b>{valueInWords(parameter)}</b>
                  <span className="soft"> {capitalised(sourceInWords(parameter, sources))}.</span>
                  <p className="soft small">{parameter.note}</p>
                </dd>
              </div>
            ))}
          </dl>
        </section>
      )}
      {sources.length > 0 && (
        <section>
          <h3>Sources</h3>
          <ol className="small">
            {sources.map((id) => (
              <SourceItem key={id} id={id} />
            ))}
          </ol>
        </section>
      )}
      {why.tables.length > 0 && (
        <section>
          <h3>Published tables read</h3>
          {why.tables.map(({ provenance, grade }) => (
            <div key={provenance.id} className="source">
              <p>
                <b>{provenance.title}</b>
              </p>
              <p className="soft small">
                {provenance.authors}
                {provenance.year === null ? "" : `, ${provenance.year}`}
                {provenance.doi === null ? "" : `, doi ${provenance.doi}`}. {provenance.where}.
              </p>
              <p className="small">
                {gradeInWords(grade)}; {provenance.population}; n {provenance.n}; ages {provenance.ageRange};{" "}
                {provenance.device}. How the numbers were obtained: {provenance.obtained}.
              </p>
              {provenance.notes && <p className="soft small">{provenance.notes}</p>}
            </div>
          ))}
        </section>
      )}
      {why.method && <p className="soft small">{why.method}</p>}
    </div>
  )
}

function SourceItem({ id }: { readonly id: string }) {
  const source = citationOf(id)
  if (!source) return <li>{id}</li>
  return (
    <li>
      {source.citation}
      {source.doi === null ? "" : `, doi ${source.doi}`}.{" "}
      <span className="soft">Read as: {source.obtained}.</span>
      {source.caveats && <span className="soft"> {source.caveats}</span>}
    </li>
  )
}
