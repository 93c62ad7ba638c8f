import { type ReactNode, useEffect, useId, useRef } from "react"
import { createPortal } from "react-dom"

interface DialogProps {
  readonly title: string
  readonly onClose: () => void
  /** At the side of the page instead of over its middle. */
  readonly side?: boolean
  /** For a form with several columns. */
  readonly wide?: boolean
  readonly children: ReactNode
}

/** A modal dialog over the page, outside of what opened it: the browser keeps the focus inside, closes it on Escape and gives the focus back. */
export function Dialog({ title, onClose, side = false, wide = false, children }: DialogProps) {
  const dialog = useRef<HTMLDialogElement>(null)
  const titleId = useId()
  useEffect(() => {
    const element = dialog.current
    element?.showModal()
    return () => element?.close()
  }, [])
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
          Close
        </button>
      </header>
      {children}
    </dialog>,
    document.body,
  )
}
