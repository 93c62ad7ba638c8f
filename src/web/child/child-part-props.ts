import type { ChildView } from "../../server/contract/child.js"
import type { PracticeAnswer } from "../../server/contract/practice.js"
import type { CourseReading } from "../reading.js"

/** What every part of a child's page is given. */
export interface ChildPartProps {
  readonly view: ChildView
  readonly reading: CourseReading
  readonly practice: PracticeAnswer
  /** Called with what to say once something is recorded; the part stays open. */
  readonly onDone: (message: string) => void
}
