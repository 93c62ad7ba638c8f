import { type ComponentType, useState } from "react"
import { Dialog } from "../parts/dialog.js"
import type { Why } from "./why.js"

interface Open {
  readonly why: Why
  readonly Answer: ComponentType<{ readonly why: Why }>
}

/** A "why?" beside a figure. The answer is only put together, and its texts only loaded, when it is asked for. */
export function WhyButton({
  about,
  answer,
}: {
  readonly about: string
  readonly answer: () => Promise<Why>
}) {
  const [open, setOpen] = useState<Open | null>(null)
  const ask = async () => {
    const [why, { WhyAnswer }] = await Promise.all([answer(), import("./why-answer.js")])
    setOpen({ why, Answer: WhyAnswer })
  }
  return (
    <>
      <button type="button" className="link" aria-label={`why? ${about}`} onClick={ask}>
        why?
      </button>
      {open && (
        <Dialog title={open.why.title} side onClose={() => setOpen(null)}>
          <open.Answer why={open.why} />
        </Dialog>
      )}
    </>
  )
}
