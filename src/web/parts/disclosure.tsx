import { type ReactNode, useEffect, useId, useRef, useState } from "react"

/** A button that opens a small panel under itself; Escape, a click elsewhere or a choice closes it. */
export function Disclosure({
  label,
  children,
}: {
  readonly label: string
  readonly children: (close: () => void) => ReactNode
}) {
  const [open, setOpen] = useState(false)
  const root = useRef<HTMLDivElement>(null)
  const button = useRef<HTMLButtonElement>(null)
  const id = useId()
  useEffect(() => {
    if (!open) return
    const onPointer = (event: PointerEvent) => {
      if (!root.current?.contains(event.target as Node)) setOpen(false)
    }
    const onKey = (event: KeyboardEvent) => {
      if (event.key !== "Escape") return
      setOpen(false)
      button.current?.focus()
    }
    document.addEventListener("pointerdown", onPointer)
    document.addEventListener("keydown", onKey)
    return () => {
      document.removeEventListener("pointerdown", onPointer)
      document.removeEventListener("keydown", onKey)
    }
  }, [open])
  return (
    <div className="disclosure" ref={root}>
      <button
        type="button"
        ref={button}
        aria-expanded={open}
        aria-controls={id}
        onClick={() => setOpen(!open)}
      >
        {label} <span aria-hidden="true">▾</span>
      </button>
      <div className="disclosure-panel" id={id} hidden={!open}>
        {open &&
          children(() => {
            setOpen(false)
            // What was chosen goes away with the panel: the focus must not go with it.
            button.current?.focus()
          })}
      </div>
    </div>
  )
}
