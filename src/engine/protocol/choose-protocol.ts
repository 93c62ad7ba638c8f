import type { CalendarDate, Course } from "../course.js"
import type { PracticeRules } from "../practice-rules.js"
import type { Protocol } from "./protocol.js"
import { standardProtocol } from "./standard.js"

/** The protocol a child follows: the one chosen for it, else the one that fits its treatment; the practice's copy first. */
export function protocolFor({
  course,
  rules,
}: {
  readonly course: Course
  readonly today: CalendarDate
  readonly rules: Pick<PracticeRules, "protocols">
}): Protocol {
  const id = course.child.protocol ?? standardProtocol.id
  return rules.protocols.find((protocol) => protocol.id === id) ?? standardProtocol
}
