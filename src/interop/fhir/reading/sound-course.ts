import type { CalendarDate, Course } from "../../../engine/course.js"
import type { Problem } from "../../../engine/problem.js"
import { say } from "../../../engine/say.js"
import { record } from "../../course/loose.js"
import { courseFrom } from "../../course/read-course.js"
import type { ChildInFile, FhirFragment } from "../course-from-fhir.js"
import { headRead } from "../r4/patient.js"
import { assembled } from "./assembled.js"
import type { NotTaken } from "./collected.js"
import type { Note, Piece } from "./piece.js"

/** The rounds in which faults may come to light, one behind the other. */
const MOST_ROUNDS = 20

export interface SoundCourse {
  readonly course: FhirFragment["course"] | undefined
  /** The same with whose it is, where the file says so. */
  readonly whole: Course | undefined
  readonly notTaken: readonly NotTaken[]
  readonly notes: readonly Note[]
}

/**
 * What a file says of one child, by the rules of the course file. Whatever breaks a rule is left out, with the rule as
 * the reason; what remains is read again until it is sound.
 */
export function soundCourse(
  { patient, pieces }: Pick<ChildInFile, "patient" | "pieces">,
  { today }: { readonly today?: CalendarDate | undefined },
): SoundCourse {
  const head = patient === undefined ? {} : record(headRead(patient.resource))
  const refused = new Map<Piece, string>()
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const { file, owners, notTaken } = assembled(pieces.filter((piece) => !refused.has(piece)))
    const read = courseFrom(
      { lengthwise: 1, ...head, ...file, child: { ...STAND_IN, ...record(head.child) } },
      { today },
    )
    const faults = [
      ...new Map([...refused].map(([{ origin }, why]) => [origin, { where: origin, why }])).values(),
    ]
    if ("course" in read) {
      const course = fragmentOf(read.course, { head, hasPatient: patient !== undefined })
      const { born, sex } = record(head.child)
      const whole = born === undefined || sex === undefined ? undefined : read.course
      return { course, whole, notTaken: [...notTaken, ...faults], notes: read.notes }
    }
    const before = refused.size
    for (const fault of read.problems)
      for (const piece of ownersOf(fault, owners)) refused.set(piece, fault.message)
    if (refused.size === before) return refusal(patient?.path, read.problems[0])
  }
  return refusal(patient?.path, undefined)
}

/** For a course whose Patient is not in the file; they go no further than the rules. */
const STAND_IN = { born: "1900-01-01", sex: "female" }

function refusal(where: string | undefined, fault: Problem | undefined): SoundCourse {
  const why = fault?.message ?? say("it has too many faults to be read")
  return { course: undefined, whole: undefined, notTaken: [{ where: where ?? "", why }], notes: [] }
}

/** Whoever gave the value at the path of a fault, or the nearest thing around it. */
function ownersOf({ path }: Problem, owners: ReadonlyMap<string, readonly Piece[]>): readonly Piece[] {
  for (let at = path; at !== ""; at = at.replace(/(^|\.)[^.[\]]*$|\[\d+\]$/, "")) {
    const found = owners.get(at)
    if (found !== undefined) return found
  }
  return []
}

function fragmentOf(
  { lengthwise: _, child, practice, visits, ...lists }: Course,
  { head, hasPatient }: { readonly head: object; readonly hasPatient: boolean },
): FhirFragment["course"] {
  const { id: __, born: ___, sex: ____, ...more } = child
  const known = hasPatient && Object.keys(more).length > 0 ? { child: more } : {}
  return {
    ...known,
    ...(practice === undefined ? {} : { practice }),
    ...(visits.length > 0 || "visits" in head ? { visits } : {}),
    ...lists,
  }
}
