import { say } from "../../../engine/say.js"
import { Dialog } from "../../parts/dialog.js"

/** A question before something that cannot be taken back. */
export function AskedFirst(props: {
  readonly title: string
  readonly text: string
  readonly yes: string
  readonly onYes: () => void
  readonly onClose: () => void
}) {
  return (
    <Dialog title={props.title} onClose={props.onClose}>
      <div className="form">
        <p>{props.text}</p>
        <div className="form-actions">
          <button
            type="button"
            className="primary"
            onClick={() => {
              props.onClose()
              props.onYes()
            }}
          >
            {props.yes}
          </button>
          <button type="button" onClick={props.onClose}>
            {say("Keep it")}
          </button>
        </div>
      </div>
    </Dialog>
  )
}
