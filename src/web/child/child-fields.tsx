import type { Ancestry, Sex } from "../../engine/course.js"
import { msg, say } from "../../engine/say.js"
import type { NewChildBody } from "../../server/contract/child.js"
import { Choices, Field } from "../parts/field.js"
import { girlOrBoy } from "../words.js"

/** Who a child is, as typed. */
export interface TypedChild {
  readonly name: string
  readonly number: string
  readonly born: string
  readonly sex: Sex | null
  readonly ancestry: Ancestry
  readonly myopicParents: string
}

export const NO_CHILD: TypedChild = {
  name: "",
  number: "",
  born: "",
  sex: null,
  ancestry: "unstated",
  myopicParents: "",
}

export const CHILD_PATHS = ["name", "number", "born", "sex", "ancestry", "myopicParents"] as const

/** What is sent. What was not chosen is sent as not chosen: the server says so at the field. */
export function childBody(typed: TypedChild): Omit<NewChildBody, "id"> {
  const { name, number, born, sex, ancestry, myopicParents } = typed
  return {
    name,
    ...(number.trim() ? { number } : {}),
    born,
    sex: sex as Sex,
    ancestry,
    ...(myopicParents === "" ? {} : { myopicParents: Number(myopicParents) as 0 | 1 | 2 }),
  }
}

const ANCESTRIES: readonly (readonly [Ancestry, string])[] = [
  ["unstated", msg("not stated|ancestry")],
  ["east-asian", msg("East Asian")],
  ["european", msg("European")],
  ["south-asian", msg("South Asian")],
  ["african", msg("African")],
  ["other", msg("other|ancestry")],
]

const SEXES: readonly Sex[] = ["female", "male"]

/** The fields that say who a child is; the same where one is added and where one is put right. */
export function ChildFields({
  typed,
  onChange,
  faultAt,
}: {
  readonly typed: TypedChild
  readonly onChange: (typed: TypedChild) => void
  readonly faultAt: (path: (typeof CHILD_PATHS)[number]) => string | undefined
}) {
  const set = (change: Partial<TypedChild>) => onChange({ ...typed, ...change })
  return (
    <>
      <div className="form-row">
        <Field label={say("Name")} fault={faultAt("name")}>
          {(control) => (
            <input
              {...control}
              autoComplete="off"
              value={typed.name}
              onChange={(event) => set({ name: event.target.value })}
            />
          )}
        </Field>
        <Field
          label={say("Number")}
          note={say("The practice's own, if there is one.")}
          fault={faultAt("number")}
        >
          {(control) => (
            <input
              {...control}
              autoComplete="off"
              value={typed.number}
              onChange={(event) => set({ number: event.target.value })}
            />
          )}
        </Field>
      </div>
      <div className="form-row">
        <Field label={say("Birth date")} fault={faultAt("born")}>
          {(control) => (
            <input
              {...control}
              type="date"
              value={typed.born}
              onChange={(event) => set({ born: event.target.value })}
            />
          )}
        </Field>
        <Choices
          legend={say("Girl or boy")}
          options={SEXES.map((sex) => [sex, girlOrBoy(sex)] as const)}
          value={typed.sex}
          onChange={(sex) => set({ sex })}
          note={say("Growth and reference differ by sex.")}
          fault={faultAt("sex")}
        />
      </div>
      <div className="form-row">
        <Field
          label={say("Ancestry")}
          note={say("Chooses the expected growth and the reference; both are always named on the page.")}
          fault={faultAt("ancestry")}
        >
          {(control) => (
            <select
              {...control}
              value={typed.ancestry}
              onChange={(event) => set({ ancestry: event.target.value as Ancestry })}
            >
              {ANCESTRIES.map(([value, label]) => (
                <option key={value} value={value}>
                  {say(label)}
                </option>
              ))}
            </select>
          )}
        </Field>
        <Field label={say("Myopic parents")} fault={faultAt("myopicParents")}>
          {(control) => (
            <select
              {...control}
              value={typed.myopicParents}
              onChange={(event) => set({ myopicParents: event.target.value })}
            >
              <option value="">{say("not known|parents")}</option>
              <option value="0">{say("none|parents")}</option>
              <option value="1">{say("one|parent")}</option>
              <option value="2">{say("both|parents")}</option>
            </select>
          )}
        </Field>
      </div>
    </>
  )
}
