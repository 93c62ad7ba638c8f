import type { Why } from "../../engine/why/why.js"
import { Dialog } from "../parts/dialog.js"
import { WhyAnswer } from "./why-answer.js"

/** An answer to "why?" at the side of the page. */
export function WhyDialog({ why, onClose }: { readonly why: Why; readonly onClose: () => void }) {
  return (
    <Dialog title={why.title} side onClose={onClose}>
      <WhyAnswer why={why} />
    </Dialog>
  )
}
