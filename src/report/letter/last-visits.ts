import { EYES, type Visit } from "../../engine/course.js"
import { sphericalEquivalent } from "../../engine/optics/spherical-equivalent.js"
import { say } from "../../engine/say.js"
import type { Block } from "../document.js"
import type { DocumentInput } from "../document-input.js"
import { day, decimals, NOTHING, power } from "../record/figures.js"
import type { Reading } from "../record/reading.js"

/** As many as a letter of one page holds beside its addresses. */
const MOST = 4
const FEWEST = 2
const LINES_OF_ADDRESS = 5

function shown({ letterhead, addressee = [] }: DocumentInput): number {
  const beyond = letterhead.lines.length + addressee.length - LINES_OF_ADDRESS
  return Math.max(FEWEST, MOST - Math.max(0, beyond))
}

/** The last visits that measured a length or a refraction, oldest first; nothing where none did. */
export function lastVisits({ course, today, input }: Reading): readonly Block[] {
  const visits = course.visits
    .filter((visit) => visit.date <= today && EYES.some((eye) => isMeasured(visit, eye)))
    .toSorted((a, b) => (a.date < b.date ? -1 : 1))
    .slice(-shown(input))
  if (visits.length === 0) return []
  return [
    {
      kind: "table",
      head: [
        say("Date"),
        say("Length right, mm"),
        say("Length left, mm"),
        say("SER right, D"),
        say("SER left, D"),
        say("Cycloplegia"),
      ],
      rows: visits.map((visit) => [
        visit.from === undefined
          ? day(visit.date)
          : say("{day} ({from})", { day: day(visit.date), from: visit.from }),
        ...EYES.map((eye) => lengthOf(visit, eye)),
        ...EYES.map((eye) => equivalent(visit, eye)),
        cycloplegia(visit),
      ]),
      figures: [1, 2, 3, 4],
    },
  ]
}

const isMeasured = (visit: Visit, eye: "right" | "left"): boolean =>
  visit[eye]?.axialLength !== undefined || visit[eye]?.refraction !== undefined

function lengthOf(visit: Visit, eye: "right" | "left"): string {
  const length = visit[eye]?.axialLength
  return length === undefined ? NOTHING : decimals(length.mm, 2)
}

function equivalent(visit: Visit, eye: "right" | "left"): string {
  const refraction = visit[eye]?.refraction
  return refraction === undefined ? NOTHING : power(sphericalEquivalent(refraction))
}

/** Of both eyes at once: they are refracted under the same drops, and where they were not it is said. */
function cycloplegia(visit: Visit): string {
  const refracted = EYES.flatMap((eye) => visit[eye]?.refraction ?? [])
  if (refracted.length === 0) return NOTHING
  const told = new Set(refracted.map(({ cycloplegic }) => cycloplegic))
  if (told.size > 1) return say("one eye only")
  const [was] = told
  return was === undefined ? say("not stated") : was ? say("yes|answer") : say("no|answer")
}
