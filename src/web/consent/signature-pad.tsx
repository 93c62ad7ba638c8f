import { type RefObject, useEffect, useId, useRef, useState } from "react"
import type SignaturePad from "signature_pad"
import { SIGNING, saidIn } from "../../engine/consent/signing-words.js"
import type { Language } from "../../engine/say.js"

/** Reads the drawing as SVG; null while nothing is drawn. */
export interface DrawnSignature {
  readonly svg: () => string | null
}

/** A field to sign in with a pen, a finger or a mouse. With a keyboard a name is typed instead. */
export function SignatureField({
  spoken,
  drawn,
  fault,
  onSigned,
}: {
  readonly spoken: Language
  readonly drawn: RefObject<DrawnSignature | null>
  readonly fault: string | undefined
  /** Called after each stroke. */
  readonly onSigned: () => void
}) {
  const id = useId()
  const canvas = useRef<HTMLCanvasElement>(null)
  const pad = useRef<SignaturePad | null>(null)
  const [isEmpty, setIsEmpty] = useState(true)
  useEffect(() => {
    const element = canvas.current
    if (!element) return
    let undo = () => {}
    let isGone = false
    // Loaded when somebody signs: nothing else needs it.
    void import("signature_pad").then(({ default: Pad }) => {
      if (isGone) return
      const made = new Pad(element, { penColor: INK, minWidth: 0.8, maxWidth: 2.4 })
      const fit = () => fitCanvas(element, made)
      const observer = new ResizeObserver(fit)
      observer.observe(element)
      made.addEventListener("endStroke", () => {
        setIsEmpty(made.isEmpty())
        onSigned()
      })
      pad.current = made
      drawn.current = { svg: () => (made.isEmpty() ? null : made.toSVG()) }
      undo = () => {
        observer.disconnect()
        made.off()
      }
    })
    return () => {
      isGone = true
      drawn.current = null
      undo()
    }
  }, [drawn, onSigned])
  return (
    <div className="field">
      <p className="signature-label" id={id}>
        {saidIn(spoken, SIGNING.signature)}
      </p>
      <canvas
        ref={canvas}
        className="signature"
        role="img"
        aria-labelledby={id}
        aria-invalid={fault !== undefined || undefined}
      />
      <div className="signature-under">
        <p className="field-note">{saidIn(spoken, isEmpty ? SIGNING.signHere : SIGNING.signed)}</p>
        <button
          type="button"
          className="link"
          disabled={isEmpty}
          onClick={() => {
            pad.current?.clear()
            setIsEmpty(true)
          }}
        >
          {saidIn(spoken, SIGNING.clear)}
        </button>
      </div>
      {fault && <p className="field-fault">{fault}</p>}
    </div>
  )
}

// The ink of the page, kept with the drawing wherever it is shown.
const INK = "#1b242b"

/** As many dots as the screen has; what was drawn is drawn again. */
function fitCanvas(element: HTMLCanvasElement, pad: SignaturePad): void {
  const ratio = Math.max(window.devicePixelRatio || 1, 1)
  const width = Math.round(element.clientWidth * ratio)
  if (element.width === width) return
  element.width = width
  element.height = Math.round(element.clientHeight * ratio)
  element.getContext("2d")?.scale(ratio, ratio)
  pad.fromData(pad.toData())
}
