import { createPortal } from "react-dom"
import { say } from "../../engine/say.js"
import type { ChildView } from "../../server/contract/child.js"
import type { PracticeAnswer } from "../../server/contract/practice.js"
import { Dialog } from "../parts/dialog.js"
import { sheetOfRecorded } from "./order-sheet.js"
import type { RecordedOrder } from "./recorded-orders.js"
import { SheetView } from "./sheet-view.js"

/** The paper of an order, to read and to print; on paper it stands alone. */
export function SheetDialog(props: {
  readonly order: RecordedOrder
  readonly view: ChildView
  readonly practice: PracticeAnswer
  readonly onClose: () => void
}) {
  const { order, view, practice, onClose } = props
  const sheet = sheetOfRecorded(order, { view, practice })
  return (
    <Dialog title={say("Sheet for the pharmacist")} wide onClose={onClose}>
      {sheet ? (
        <>
          <div className="form-actions sheet-actions">
            <button type="button" className="primary" onClick={() => window.print()}>
              {say("Print")}
            </button>
          </div>
          <SheetView sheet={sheet} />
          {createPortal(
            <div className="sheet-paper" aria-hidden="true">
              <SheetView sheet={sheet} />
            </div>,
            document.body,
          )}
        </>
      ) : (
        <p className="form-fault">
          {say(
            "This order can no longer be worked out with what its pharmacy states it has. Look at the pharmacy in the settings.",
          )}
        </p>
      )}
    </Dialog>
  )
}
