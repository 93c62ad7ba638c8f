import { lazy, Suspense, useState } from "react"
import { msg, say } from "../../engine/say.js"
import { Disclosure } from "../parts/disclosure.js"
import { Waiting } from "../parts/waiting.js"
import type { EnterProps } from "./enter-props.js"

// Loaded when chosen: none of them is needed to read the page.
const FORMS = {
  glasses: lazy(() => import("./earlier-glasses.js").then((module) => ({ default: module.EarlierGlasses }))),
  start: lazy(() => import("./start-treatment.js").then((module) => ({ default: module.StartTreatment }))),
  change: lazy(() => import("./change-treatment.js").then((module) => ({ default: module.ChangeTreatment }))),
  stop: lazy(() => import("./stop-treatment.js").then((module) => ({ default: module.StopTreatment }))),
  consent: lazy(() => import("./consent.js").then((module) => ({ default: module.EnterConsent }))),
  details: lazy(() => import("./child-details.js").then((module) => ({ default: module.ChildDetails }))),
  bottle: lazy(() => import("./bottle.js").then((module) => ({ default: module.EnterBottle }))),
}

type FormName = keyof typeof FORMS

const CHOICES: readonly (readonly [FormName, label: string])[] = [
  ["glasses", msg("Earlier glasses")],
  ["start", msg("Start of a treatment")],
  ["change", msg("Change of a treatment")],
  ["stop", msg("Stop of a treatment")],
  ["consent", msg("Consent")],
  ["bottle", msg("Bottle")],
  ["details", msg("Details of the child")],
]

/** What can be entered besides a visit. */
export function EnterMenu({ view, reading, onDone }: Omit<EnterProps, "onClose">) {
  const [open, setOpen] = useState<FormName | null>(null)
  const Form = open ? FORMS[open] : null
  const close = () => setOpen(null)
  return (
    <>
      <Disclosure label={say("Enter")}>
        {(closeMenu) =>
          CHOICES.map(([name, label]) => (
            <button
              type="button"
              key={name}
              onClick={() => {
                closeMenu()
                setOpen(name)
              }}
            >
              {say(label)}
            </button>
          ))
        }
      </Disclosure>
      {Form && (
        <Suspense fallback={<Waiting for={say("the form")} />}>
          <Form
            view={view}
            reading={reading}
            onClose={close}
            onDone={(message) => {
              onDone(message)
              close()
            }}
          />
        </Suspense>
      )}
    </>
  )
}
