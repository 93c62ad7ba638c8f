import { useState } from "react"
import { dateWords } from "../../chart/words.js"
import { DECISION_WORDS } from "../../engine/choices/decision-words.js"
import type { Decision } from "../../engine/course.js"
import { say } from "../../engine/say.js"
import { capitalised, inWords } from "../format.js"
import { Dialog } from "../parts/dialog.js"

/** What was on the screen when a decision was made, as it was worded then. */
export function DecisionBasis({ decision }: { readonly decision: Decision }) {
  const [open, setOpen] = useState(false)
  const { date, kind, reason, offered = [], figures = [] } = decision
  if (offered.length === 0 && figures.length === 0) return null
  return (
    <>
      {" "}
      <button type="button" className="link" onClick={() => setOpen(true)}>
        {say("what was shown then")}
      </button>
      {open && (
        <Dialog
          title={say("Decision of {day}", { day: dateWords(date) })}
          wide
          onClose={() => setOpen(false)}
        >
          <p>
            {capitalised(say(DECISION_WORDS[kind]))}. {reason}
          </p>
          {offered.length > 0 && (
            <p className="small soft">{say("Options shown: {options}", { options: offered.join("; ") })}</p>
          )}
          {figures.length > 0 && (
            <table className="data basis">
              <thead>
                <tr>
                  <th scope="col">{say("Figure")}</th>
                  <th scope="col">{say("As it was shown")}</th>
                </tr>
              </thead>
              <tbody>
                {figures.map(({ label, value }) => (
                  <tr key={label}>
                    <th scope="row">{label}</th>
                    <td>{inWords(value)}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          )}
        </Dialog>
      )}
    </>
  )
}
