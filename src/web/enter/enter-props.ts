import type { ChildView } from "../../server/contract/child.js"
import type { CourseReading } from "../reading.js"

/** What every form of the Enter menu is given. */
export interface EnterProps {
  readonly view: ChildView
  readonly reading: CourseReading
  readonly onClose: () => void
  /** Called with what to say once something is recorded. */
  readonly onDone: (message: string) => void
}
