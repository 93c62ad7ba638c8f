import { type ReactNode, useEffect, useId, useLayoutEffect, useRef } from "react"
import { createPortal } from "react-dom"
import { say } from "../../engine/say.js"

interface DialogProps {
  readonly title: string
  readonly onClose: () => void
  /** At the side of the page instead of over its middle. */
  readonly side?: boolean
  /** For a form with several columns. */
  readonly wide?: boolean
  /** What the last attempt to record failed with: the first field it speaks of takes the focus. */
  readonly failure?: unknown
  readonly children: ReactNode
}

/** A modal dialog over the page, outside of what opened it: the browser keeps the focus inside, closes it on Escape and gives the focus back. */
export function Dialog({ title, onClose, side = false, wide = false, failure, children }: DialogProps) {
  const dialog = useRef<HTMLDialogElement>(null)
  const titleId = useId()
  // Closed before it is taken off the page: only then does the browser give the focus back.
  useLayoutEffect(() => {
    const element = dialog.current
    element?.showModal()
    element?.querySelector<HTMLElement>("form :is(input, select)")?.focus()
    return () => element?.close()
  }, [])
  useEffect(() => {
    if (!failure) return
    const first = ['[aria-invalid="true"]', '[type="submit"]']
      .map((selector) => dialog.current?.querySelector<HTMLElement>(selector))
      .find((element) => element)
    first?.focus()
  }, [failure])
  return createPortal(
    <dialog
      ref={dialog}
      className={side ? "side" : wide ? "wide" : undefined}
      aria-labelledby={titleId}
      onClose={onClose}
    >
      <header>
        <h2 id={titleId}>{title}</h2>
        <button type="button" onClick={() => dialog.current?.close()}>
          {say("Close")}
        </button>
      </header>
      {children}
    </dialog>,
    document.body,
  )
}
