import { lazy, Suspense, useState } from "react"
import { Dialog } from "../parts/dialog.js"
import type { Why } from "./why.js"

const WhyAnswer = lazy(() => import("./why-answer.js").then((module) => ({ default: module.WhyAnswer })))

/** A "why?" beside a figure. The answer is only put together, and its texts only loaded, when it is asked for. */
export function WhyButton({
  about,
  answer,
}: {
  readonly about: string
  readonly answer: () => Promise<Why>
}) {
  const [why, setWhy] = useState<Why | null>(null)
  return (
    <>
      <button
        type="button"
        className="link"
        aria-label={`why? ${about}`}
        onClick={() => answer().then(setWhy)}
      >
        why?
      </button>
      {why && (
        <Dialog title={why.title} side onClose={() => setWhy(null)}>
          <Suspense fallback={null}>
            <WhyAnswer why={why} />
          </Suspense>
        </Dialog>
      )}
    </>
  )
}
