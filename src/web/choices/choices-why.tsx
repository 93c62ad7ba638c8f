import { type ComponentType, useState } from "react"
import type { Choices } from "../../engine/choices/choices.js"
import { say } from "../../engine/say.js"
import type { Why } from "../../engine/why/why.js"
import { evidence } from "../../evidence/index.js"
import { Dialog } from "../parts/dialog.js"
import type { CourseReading } from "../reading.js"

interface Open {
  readonly why: Why
  readonly Answer: ComponentType<{ readonly why: Why }>
}

/** The "why?" of the options, with the whole register of sources: unwanted effects cite more than the model does. */
export function ChoicesWhy({
  reading,
  choices,
}: {
  readonly reading: CourseReading
  readonly choices: Choices
}) {
  const [open, setOpen] = useState<Open | null>(null)
  const ask = async () => {
    const [{ choicesWhy }, { sourceById }, { WhyAnswer }] = await Promise.all([
      import("../../engine/why/choices.js"),
      import("../../evidence/sources.js"),
      import("../why/why-answer.js"),
    ])
    const { course, assessment } = reading
    const why = choicesWhy({ course, choices, beliefs: assessment.beliefs, evidence, sourceOf: sourceById })
    setOpen({ why, Answer: WhyAnswer })
  }
  return (
    <>
      <button
        type="button"
        className="link small"
        aria-label={say("why? How these figures were found")}
        onClick={ask}
      >
        {say("why?")}
      </button>
      {open && (
        <Dialog title={open.why.title} side onClose={() => setOpen(null)}>
          <open.Answer why={open.why} />
        </Dialog>
      )}
    </>
  )
}
