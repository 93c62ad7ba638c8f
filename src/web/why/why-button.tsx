import { type ComponentType, useState } from "react"
import { say } from "../../engine/say.js"
import type { Why } from "../../engine/why/why.js"
import { Dialog } from "../parts/dialog.js"
import type { CourseReading } from "../reading.js"
import type { Question } from "./answers.js"

interface Open {
  readonly why: Why
  readonly Answer: ComponentType<{ readonly why: Why }>
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
    const [{ answers }, { WhyAnswer }] = await Promise.all([
      import("./answers.js"),
      import("./why-answer.js"),
    ])
    setOpen({ why: answers[question](reading), Answer: WhyAnswer })
  }
  return (
    <>
      <button type="button" className="link" aria-label={say("why? {about}", { about })} onClick={ask}>
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
