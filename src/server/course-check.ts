import type { CalendarDate, Child, Course } from "../engine/course.js"
import { say } from "../engine/say.js"
import { treatmentName } from "../engine/treatment-name.js"
import { courseFrom } from "../interop/course/read-course.js"
import type { Problem } from "./contract/problem.js"

export type List =
  | "visits"
  | "treatments"
  | "supplies"
  | "consents"
  | "missedNights"
  | "decisions"
  | "concerns"
  | "orders"
  | "explanations"
  | "payments"
type Item<L extends List> = NonNullable<Course[L]>[number]

export type Checked<T> = { readonly items: readonly T[] } | { readonly problems: readonly Problem[] }

/**
 * Puts new items, as they were sent, into the child's course and reads the whole by the rules of the course file: a
 * page and a file are held to the same limits, one by one and together. Faults the course had before are not the
 * sender's to mend and are left out. `place` gives the path of an item in the request.
 */
export function checkItems<L extends List>(
  list: L,
  {
    course,
    items,
    today,
    place,
  }: {
    readonly course: Course
    readonly items: readonly unknown[]
    readonly today: CalendarDate
    readonly place: (index: number) => string
  },
): Checked<Item<L>> {
  const before = course[list] ?? []
  const file = { ...course, [list]: [...before, ...items] }
  const read = courseFrom(file, { today })
  const found = "problems" in read ? read.problems : unknownFields(read.notes)
  const known = new Set(problemsBefore(course, today).map(signature))
  const problems = found
    .filter((fault) => !known.has(signature(fault)))
    .map((fault) => inWordsOfRequest(fault, { list, first: before.length, file, place }))
  if (problems.length > 0 || "problems" in read) return { problems }
  return { items: items.map((item, index) => readItem(read.course, list, item, before.length + index)) }
}

/** As `checkItems`, for who the child is: a birth date must agree with everything recorded, if anything is yet. */
export function checkChild(
  child: unknown,
  {
    course,
    today,
    place,
  }: { readonly course: Course | null; readonly today: CalendarDate; readonly place: string },
): { readonly child: Child } | { readonly problems: readonly Problem[] } {
  const read = courseFrom({ lengthwise: 1, ...course, child }, { today })
  const found = "problems" in read ? read.problems : unknownFields(read.notes)
  const known = new Set(course ? problemsBefore(course, today).map(signature) : [])
  const problems = found
    .filter((fault) => !known.has(signature(fault)))
    .map((fault) => moved(fault, fault.path.startsWith("child.") ? place + fault.path.slice(6) : fault.path))
  if (problems.length > 0 || "problems" in read) return { problems }
  return { child: read.course.child }
}

function problemsBefore(course: Course, today: CalendarDate): readonly Problem[] {
  const read = courseFrom(course, { today })
  return "problems" in read ? read.problems : []
}

const signature = ({ path, allowed }: Problem) => `${path}\n${allowed}`

// A field nobody knows is a slip of the sender's; a measurement must not be lost by it.
function unknownFields(notes: readonly { kind: string; path: string }[]): readonly Problem[] {
  return notes
    .filter(({ kind }) => kind === "unknown-field")
    .map(({ path }) => ({
      path,
      value: null,
      allowed: say("a field of the course file"),
      message: say("{path} is not a field that is kept here.", { path }),
    }))
}

// The course comes back sorted by date, and no two visits share one.
function readItem<L extends List>(course: Course, list: L, sent: unknown, index: number): Item<L> {
  const items = (course[list] ?? []) as readonly Item<L>[]
  const date = (sent as { readonly date?: unknown }).date
  const found =
    list === "visits" ? items.find((item) => (item as { date: string }).date === date) : items[index]
  if (found === undefined) throw new RangeError(`${list}[${index}] was read but is not in the course`)
  return found
}

function inWordsOfRequest(
  fault: Problem,
  {
    list,
    first,
    file,
    place,
  }: {
    readonly list: List
    readonly first: number
    readonly file: Course
    readonly place: (index: number) => string
  },
): Problem {
  const match = /^(\w+)\[(\d+)\]\.?(.*)$/.exec(fault.path)
  const index = Number(match?.[2]) - first
  if (match?.[1] !== list || index < 0) return moved(named(fault, file), fault.path)
  const outer = place(index)
  // Earlier glasses are sent as a refraction by eye, without a visit around it.
  const inside = outer.startsWith("[") ? (match[3] ?? "").replace(".refraction", "") : (match[3] ?? "")
  return named(moved(fault, outer && inside ? `${outer}.${inside}` : outer || inside), file)
}

function moved(fault: Problem, path: string): Problem {
  const subject = path === "" ? say("what was sent") : path
  const message = fault.message.startsWith(fault.path)
    ? subject + fault.message.slice(fault.path.length)
    : fault.message
  return { ...fault, path, message }
}

/** `treatments[0]` means nothing to a reader of a page: "atropine 0.05 % from 2025-01-10" does. */
function named(fault: Problem, course: Course): Problem {
  const words = (text: string) =>
    text.replace(/\b(visits|treatments)\[(\d+)\](?!\.)/g, (whole, list: string, index: string) => {
      if (list === "visits") {
        const visit = course.visits[Number(index)]
        return visit ? say("the visit of {date}", { date: visit.date }) : whole
      }
      const treatment = course.treatments?.[Number(index)]
      return treatment
        ? say("{treatment} from {date}", { treatment: treatmentName(treatment), date: treatment.from })
        : whole
    })
  return { ...fault, allowed: words(fault.allowed), message: words(fault.message) }
}
