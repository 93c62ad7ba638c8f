import { type ComponentType, useState } from "react"
import { say } from "../../engine/say.js"
import type { Why } from "../../engine/why/why.js"
import type { CourseReading } from "../reading.js"
import type { Question } from "./answers.js"

interface Open {
  readonly why: Why
  readonly WhyDialog: ComponentType<{ readonly why: Why; readonly onClose: () => void }>
}

/** A "why?" beside a figure. The answer is only put together, and its texts only loaded, when it is asked for. */
export function WhyButton({
  about,
  question,
  reading,
}: {
  readonly about: string
  readonly question: Question
  readonly reading: CourseReading
}) {
  const [open, setOpen] = useState<Open | null>(null)
  const ask = async () => {
    const [{ answers }, { WhyDialog }] = await Promise.all([
      import("./answers.js"),
      import("./why-dialog.js"),
    ])
    setOpen({ why: answers[question](reading), WhyDialog })
  }
  return (
    <>
      <button type="button" className="link" aria-label={say("why? {about}", { about })} onClick={ask}>
        {say("why?")}
      </button>
      {open && <open.WhyDialog why={open.why} onClose={() => setOpen(null)} />}
    </>
  )
}
