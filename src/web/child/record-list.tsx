import { lazy, Suspense, useState } from "react"
import { say } from "../../engine/say.js"
import type { ChildView } from "../../server/contract/child.js"
import { Waiting } from "../parts/waiting.js"

// Loaded when opened: what an entry says is not needed to read the page.
const RecordEntries = lazy(async () => ({ default: (await import("./record-entries.js")).RecordEntries }))

/** Every entry ever made for the child, what was corrected included; closed until somebody looks for one. */
export function RecordList({
  view,
  onDone,
}: {
  readonly view: ChildView
  readonly onDone: (message: string) => void
}) {
  const [opened, setOpened] = useState(false)
  const count = view.entries.length
  return (
    <details className="card record" onToggle={(event) => event.currentTarget.open && setOpened(true)}>
      <summary>{say("Record: {count, plural, one {# entry} other {# entries}}", { count })}</summary>
      {opened && (
        <Suspense fallback={<Waiting for={say("the entries")} />}>
          <RecordEntries view={view} onDone={onDone} />
        </Suspense>
      )}
    </details>
  )
}
