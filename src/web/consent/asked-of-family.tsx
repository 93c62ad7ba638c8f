import { ASSENT_NAMES, RELATIONS, SIGNING, saidIn } from "../../engine/consent/signing-words.js"
import { ASSENTS } from "../../engine/course.js"
import type { Language } from "../../engine/say.js"
import { Choices, Field } from "../parts/field.js"

export type Assent = (typeof ASSENTS)[number]

interface FamilyField<Value> {
  /** The language of the text the family reads. */
  readonly spoken: Language
  readonly value: Value
  readonly fault: string | undefined
}

/** How who signs is related to the child: one of the usual, or anything else written in. */
export function RelationField({
  spoken,
  value,
  fault,
  onChange,
}: FamilyField<string> & { readonly onChange: (relation: string) => void }) {
  return (
    <Field label={saidIn(spoken, SIGNING.relation)} fault={fault}>
      {(control) => (
        <>
          <input
            {...control}
            autoComplete="off"
            list="relations"
            value={value}
            onChange={(event) => onChange(event.target.value)}
          />
          <datalist id="relations">
            {RELATIONS.map((each) => (
              <option key={each} value={saidIn(spoken, each)} />
            ))}
          </datalist>
        </>
      )}
    </Field>
  )
}

/** What the child says to the four steps of the text. */
export function AssentField({
  spoken,
  value,
  fault,
  onChange,
}: FamilyField<Assent | null> & { readonly onChange: (assent: Assent) => void }) {
  return (
    <>
      <Choices
        legend={saidIn(spoken, SIGNING.childAsked)}
        options={ASSENTS.map((each) => [each, saidIn(spoken, ASSENT_NAMES[each])] as const)}
        value={value}
        onChange={onChange}
        fault={fault}
      />
      {value === "declined" && <p className="field-caution">{saidIn(spoken, SIGNING.childSaysNo)}</p>}
    </>
  )
}
