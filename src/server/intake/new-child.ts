import type { Ancestry, Course } from "../../engine/course.js"
import { say } from "../../engine/say.js"
import type { Identity } from "../../interop/intake/fragment.js"
import type { ChildBody } from "../../record/index.js"
import type { Problem } from "../contract/problem.js"
import { checkChild } from "../course-check.js"
import type { InboxContent } from "./inbox-content.js"

const LONGEST_NAME = 200
const LONGEST_NUMBER = 40

/** Who a new child is, by what the file says and what a person put right of it. */
export type ChildAsked = Identity & {
  readonly ancestry?: Ancestry | undefined
  readonly myopicParents?: 0 | 1 | 2 | undefined
}

/**
 * A child made of what a file says: the course it starts with, or what is missing. Without a name its number stands for
 * it, which is said to whoever reads the report.
 */
export function newChild(
  { name, number, born, sex, ancestry, myopicParents }: ChildAsked,
  { content, id, today }: { readonly content: InboxContent; readonly id: string; readonly today: string },
): { readonly body: ChildBody; readonly course: Course } | { readonly problems: readonly Problem[] } {
  const asked = { ...content.course.child, ...withoutNothing({ born, sex, ancestry, myopicParents }) }
  const checked = checkChild(withoutNothing(asked), { course: null, today, place: "newChild." })
  const called = (name?.trim() || number?.trim() || "").slice(0, LONGEST_NAME)
  const problems = [
    ...("problems" in checked ? checked.problems : []),
    ...(called === ""
      ? [
          {
            path: "newChild.name",
            value: null,
            allowed: say("the child's name"),
            message: say("A new child needs a name."),
          },
        ]
      : []),
  ]
  if ("problems" in checked || problems.length > 0) return { problems }
  const { id: _, ...child } = checked.child
  const known = number?.trim()
  const body = {
    ...child,
    name: called,
    ...(known && known.length <= LONGEST_NUMBER ? { number: known } : {}),
  }
  return { body, course: { lengthwise: 1, child: { id, ...child }, visits: [] } }
}

const withoutNothing = (fields: object): object =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined))
