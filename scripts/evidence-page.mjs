import { citationRead } from "./read-part.mjs"

/** The generated page: every parameter, effect, reference and table with value, unit, uncertainty, source and grade. */

const cell = (value) =>
  String(value ?? "")
    .replaceAll("|", "\\|")
    .replaceAll("\n", " ")
const row = (cells) => `| ${cells.map(cell).join(" | ")} |`
const grid = (header, rows) => [row(header), row(header.map(() => "---")), ...rows.map(row)].join("\n")
const range = ({ rangeTried }) => (rangeTried === undefined ? "" : `${rangeTried[0]} to ${rangeTried[1]}`)

export function evidencePage({
  growthParameters,
  references,
  emmetropicCurve,
  infancyMean,
  tableNames,
  readProvenance,
  sources,
}) {
  const used = new Set(
    [...Object.values(growthParameters.values), ...growthParameters.effects]
      .flatMap(({ source }) => source)
      .filter((id) => id !== "assumption"),
  )
  return `# Evidence

Written by \`node scripts/evidence.mjs\` from \`src/evidence\`; do not edit. Units are UCUM codes. Grade A: fit to show.
B: shown with its limits. C: shown only as approximate. D: never drawn as a centile. SD here is the uncertainty of our
knowledge of a value, not a spread between children.

## Growth parameters (${growthParameters.version})

${grid(
  ["name", "value", "unit", "SD", "range tried", "source", "meaning"],
  Object.entries(growthParameters.values).map(([name, parameter]) => [
    name,
    parameter.value,
    parameter.unit,
    parameter.sd ?? "not given",
    range(parameter),
    parameter.source.join(", "),
    parameter.note,
  ]),
)}

## Treatment effects: share of natural growth withheld

${grid(
  ["treatment", "share", "SD", "may be nil", "confidence", "source", "derivation"],
  growthParameters.effects.map((effect) => [
    effect.id,
    effect.withheldFraction,
    effect.withheldFractionSd,
    effect.mayBeNil ? "yes" : "no",
    effect.confidence,
    effect.source.join(", "),
    effect.derivation,
  ]),
)}

## References

${grid(
  ["id", "measure", "shape", "grade", "ages (a)", "population", "n", "instrument", "limits"],
  references.map((reference) => [
    reference.id,
    reference.measure,
    reference.shape,
    reference.grade,
    `${reference.youngestAgeYears} to ${reference.oldestAgeYears}`,
    reference.population,
    reference.n,
    reference.instrument,
    reference.note,
  ]),
)}

Curves, means only:

${grid(
  ["id", "grade", "ages (a)", "equation", "source"],
  [
    [
      emmetropicCurve.id,
      emmetropicCurve.grade,
      `${emmetropicCurve.youngestAgeYears} to ${emmetropicCurve.oldestAgeYears}`,
      `mm = ${emmetropicCurve.asymptoteMm} - ${emmetropicCurve.spanMm} exp(-${emmetropicCurve.ratePerYear} age)`,
      `${emmetropicCurve.provenance.authors}, ${emmetropicCurve.provenance.year}`,
    ],
    [
      infancyMean.id,
      infancyMean.grade,
      `${infancyMean.youngestAgeYears} to ${infancyMean.oldestAgeYears}`,
      equation("mm", infancyMean.axialLengthMm),
      `${infancyMean.provenance.authors}, ${infancyMean.provenance.year}`,
    ],
  ],
)}

## Tables carried in as published

${grid(
  ["table", "title", "source", "how obtained", "n", "ages", "units", "checked", "sha256"],
  tableNames.map((name) => {
    const provenance = readProvenance(name)
    return [
      name,
      provenance.title,
      provenance.year === null ? provenance.authors : `${provenance.authors} (${provenance.year})`,
      provenance.obtained,
      provenance.n,
      provenance.ageRange,
      provenance.units,
      provenance.checkedBy ?? "not a second time",
      provenance.sha256.slice(0, 12),
    ]
  }),
)}

## Sources behind the defaults

${grid(
  ["id", "citation", "doi", "how obtained", "caveats"],
  [...used].sort().map((id) => {
    const source = sources.get(id)
    return [id, citationRead(source.citation), source.doi ?? "not seen", source.how_obtained, source.caveats]
  }),
)}
`
}

function equation(unit, { intercept, girl, fast, fastRatePerYear, linear, quadratic }) {
  return `${unit} = ${intercept} + ${girl} girl + ${fast} exp(-${fastRatePerYear} t) + ${linear} t + ${quadratic} t^2, t = age - 0.25`
}
