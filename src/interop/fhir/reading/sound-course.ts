import type { CalendarDate, Course } from "../../../engine/course.js"
import type { Problem } from "../../../engine/problem.js"
import { say } from "../../../engine/say.js"
import { record } from "../../course/loose.js"
import { courseFrom } from "../../course/read-course.js"
import { headRead } from "../r4/patient.js"
import { assembled } from "./assembled.js"
import type { NotTaken } from "./collected.js"
import type { ChildInFile, FhirFragment, Note, Piece } from "./piece.js"

/** The rounds in which faults may come to light, one behind the other. */
const MOST_ROUNDS = 20
/** Ten years of half-yearly visits with every figure are some hundred. */
const MOST_PIECES = 10_000

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
  if (pieces.length > MOST_PIECES) {
    const why = say("It has more than {most} figures of one child.", { most: MOST_PIECES })
    return refusal(patient?.place, why)
  }
  const head = patient === undefined ? {} : record(headRead(patient.resource))
  const asked = (file: object) =>
    courseFrom({ lengthwise: 1, ...head, ...file, child: { ...STAND_IN, ...record(head.child) } }, { today })
  const refused = new Map<Piece, string>()
  const refuseAlone = (piece: Piece) => {
    const read = asked(assembled([piece]).file)
    if ("problems" in read && read.problems[0]) refused.set(piece, read.problems[0].message)
  }
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const { file, owners, notTaken } = assembled(pieces.filter((piece) => !refused.has(piece)))
    const read = asked(file)
    const faults = [...refused].map(([{ origin: where }, why]) => ({ where, why }))
    if ("course" in read) {
      const course = fragmentOf(read.course, { head, hasPatient: patient !== undefined })
      const { born, sex } = record(head.child)
      const whole = born === undefined || sex === undefined ? undefined : read.course
      return { course, whole, notTaken: distinct([...notTaken, ...faults]), notes: read.notes }
    }
    const before = refused.size
    // Each by itself first, so that a value which breaks a rule hides no sound one for the same thing.
    if (round === 0) for (const piece of pieces) refuseAlone(piece)
    if (refused.size > before) continue
    for (const fault of read.problems)
      for (const piece of ownersOf(fault, owners)) refused.set(piece, fault.message)
    if (refused.size === before) return refusal(patient?.place, read.problems[0]?.message)
  }
  return refusal(patient?.place)
}

/** For a course whose Patient is not in the file; they go no further than the rules. */
const STAND_IN = { born: "1900-01-01", sex: "female" }

function refusal(where = "", why = say("It has too many faults to be read.")): SoundCourse {
  return { course: undefined, whole: undefined, notTaken: [{ where, why }], notes: [] }
}

/** The two lenses of one prescription have one reason. */
const distinct = (all: readonly NotTaken[]): readonly NotTaken[] => [
  ...new Map(all.map((each) => [`${each.where}\n${each.why}`, each])).values(),
]

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
