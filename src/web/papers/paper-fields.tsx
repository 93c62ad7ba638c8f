import type { ReactNode } from "react"
import { PLAN_MONTHS } from "../../engine/cost/cost-plan.js"
import { LANGUAGE_NAMES, LANGUAGES, type Language, language, msg, say } from "../../engine/say.js"
import { inDigits } from "../../engine/words.js"
import type { DocumentKind, PaperSize } from "../../server/contract/documents.js"
import { planOptions } from "../cost/plan-options.js"
import { inWords } from "../format.js"
import { Field } from "../parts/field.js"
import type { CourseReading } from "../reading.js"
import { DOCUMENT_NAMES } from "./document-names.js"
import type { PaperChoice } from "./paper-address.js"

const SIZES: Readonly<Record<PaperSize, string>> = { a4: msg("A4"), letter: msg("Letter, US") }
const MONTHS = [6, 12, 18, 24, PLAN_MONTHS, 36]

interface PaperFieldsProps {
  readonly choice: PaperChoice
  /** The language the paper came in where none was chosen. */
  readonly spoken: Language | undefined
  readonly reading: CourseReading
  readonly onChange: (choice: PaperChoice) => void
}

/** What can be chosen of a paper; of each only what it depends on. */
export function PaperFields({ choice, spoken, reading, onChange }: PaperFieldsProps) {
  const { course } = reading
  const change = (part: Partial<PaperChoice>) => onChange({ ...choice, ...part })
  const orders = course.orders ?? []
  const concerns = course.concerns ?? []
  return (
    <div className="form">
      <Select
        label={say("Paper")}
        value={choice.kind}
        options={(Object.keys(DOCUMENT_NAMES) as DocumentKind[]).map((kind) => [
          kind,
          say(DOCUMENT_NAMES[kind]),
        ])}
        onChange={(kind) => onChange({ kind: kind as DocumentKind, language: null, paper: choice.paper })}
      />
      <div className="form-row">
        <Select
          label={say("Language")}
          value={choice.language ?? spoken ?? language()}
          options={LANGUAGES.map((each) => [each, LANGUAGE_NAMES[each]])}
          spokenAs
          onChange={(chosen) => change({ language: chosen as Language })}
        />
        <Select
          label={say("Size of the sheet")}
          value={choice.paper}
          options={(Object.keys(SIZES) as PaperSize[]).map((size) => [size, say(SIZES[size])])}
          onChange={(size) => change({ paper: size as PaperSize })}
        />
      </div>
      {(choice.kind === "consent" || choice.kind === "estimate") && (
        <TreatmentField choice={choice} reading={reading} onChange={onChange} />
      )}
      {choice.kind === "estimate" && (
        <Select
          label={say("Months ahead")}
          value={String(choice.months ?? PLAN_MONTHS)}
          options={MONTHS.map((count) => [String(count), String(count)])}
          onChange={(count) => change({ months: Number(count) })}
        />
      )}
      {choice.kind === "order" && orders.length > 1 && (
        <Select
          label={say("Which order")}
          value={String(choice.order ?? orders.length - 1)}
          options={orders.map(({ date, concentrationPercent, bottles }, index) => [
            String(index),
            say("{day}: {bottles, plural, one {# bottle} other {# bottles}} of {percent} %", {
              day: inWords(date),
              bottles,
              percent: inDigits(concentrationPercent),
            }),
          ])}
          onChange={(index) => change({ order: Number(index) })}
        />
      )}
      {choice.kind === "adverse-event" && concerns.length > 1 && (
        <Select
          label={say("Which concern")}
          value={String(choice.concern ?? concerns.length - 1)}
          options={concerns.map(({ opened, what }, index) => [String(index), `${inWords(opened)}: ${what}`])}
          onChange={(index) => change({ concern: Number(index) })}
        />
      )}
    </div>
  )
}

function TreatmentField({ choice, reading, onChange }: Omit<PaperFieldsProps, "spoken">) {
  // Nobody consents to be left untreated.
  const options = planOptions(reading).filter(
    ({ treatment }) => choice.kind === "estimate" || treatment !== null,
  )
  const keyOf = (treatment: PaperChoice["treatment"]) => JSON.stringify(treatment ?? String(treatment))
  return (
    <Select
      label={say("Treatment")}
      value={keyOf(choice.treatment)}
      options={options.map(({ label, treatment }) => [keyOf(treatment), label])}
      onChange={(key) =>
        onChange({
          ...choice,
          treatment: options.find(({ treatment }) => keyOf(treatment) === key)?.treatment,
        })
      }
    />
  )
}

interface SelectProps {
  readonly label: string
  readonly value: string
  readonly options: readonly (readonly [value: string, label: string])[]
  /** Each option is a language's own name for itself. */
  readonly spokenAs?: boolean
  readonly onChange: (value: string) => void
}

function Select({ label, value, options, spokenAs = false, onChange }: SelectProps): ReactNode {
  return (
    <Field label={label}>
      {(control) => (
        <select {...control} value={value} onChange={({ target }) => onChange(target.value)}>
          {options.map(([each, words]) => (
            <option key={each} value={each} lang={spokenAs ? each : undefined}>
              {words}
            </option>
          ))}
        </select>
      )}
    </Field>
  )
}
