import { EYES, type EyeExamination, type Refraction, type Visit } from "../engine/course.js"
import { counted } from "../engine/words.js"
import type { Skipped } from "../interop/intake/fragment.js"
import type { Joined } from "../interop/intake/joined.js"
import { dateInWords, paragraph, section } from "./words.js"

/** What files hold, to be read from a terminal: who, when, what of each eye, what is doubtful, what was not taken. */
export function readText({
  children,
  skipped,
}: {
  readonly children: readonly Joined[]
  readonly skipped: readonly Skipped[]
}): string {
  return [
    ...children.map(childText),
    section(
      "Not taken",
      skipped.map(({ file, why, where }) => `${file}: ${why}${where === undefined ? "" : ` [${where}]`}`),
    ),
    "Nothing was stored.\n",
  ].join("")
}

function childText({ identity, identities, course, documents, notes }: Joined): string {
  const { visits = [] } = course
  const { name, number, born, sex } = identity
  const who = [
    name ?? "A child without a name",
    number === undefined ? "no number" : `number ${number}`,
    born === undefined ? "date of birth not stated" : `born ${dateInWords(born)}`,
    sex ?? "sex not stated",
  ].join(", ")
  const lists = Object.entries(course).flatMap(([list, items]) =>
    list !== "visits" && Array.isArray(items) ? [`${LISTS[list] ?? list}: ${items.length}`] : [],
  )
  return [
    `${who}\n${identities.length > 1 ? paragraph(`From ${counted(identities.length, "file")}.`) : ""}\n`,
    ...visits.map(visitText),
    section("Also", lists),
    section(
      "Papers",
      documents.map(
        ({ title, date, bytes }) => `${title}, ${date} (PDF, ${Math.ceil(bytes.length / 1000)} kB)`,
      ),
    ),
    section("Notes", notesText(notes)),
  ].join("")
}

const LISTS: Readonly<Record<string, string>> = {
  missedNights: "spans of missed nights",
}

function visitText(visit: Visit): string {
  const eyes = EYES.flatMap((eye) => {
    const examination = visit[eye]
    return examination ? [`  ${eye === "right" ? "Right" : "Left"} eye\n`, ...eyeLines(examination)] : []
  })
  const asked = (visit.symptoms ?? []).map(({ kind, grade }) => paragraph(`${kind}: grade ${grade}`, 4))
  return [`${dateInWords(visit.date)}\n`, ...eyes, ...asked, "\n"].join("")
}

function eyeLines(eye: EyeExamination): readonly string[] {
  const { pupil, accommodation, acuity, intraocularPressure, lensStatus } = eye
  const lines = [
    lengthText(eye),
    corneaText(eye),
    ...[eye.refraction, ...(eye.otherRefractions ?? [])].map((found) => found && refractionText(found)),
    eye.spectaclesWorn && glassesText(eye.spectaclesWorn),
    acuity?.distanceLogMAR !== undefined &&
      `distance acuity ${acuity.distanceLogMAR} logMAR, ${CORRECTIONS[acuity.distanceCorrection ?? "best"]}`,
    acuity?.nearLogMAR !== undefined && `near acuity ${acuity.nearLogMAR} logMAR`,
    pupil?.photopic !== undefined && `pupil in bright light ${pupil.photopic} mm`,
    pupil?.mesopic !== undefined && `pupil in dim light ${pupil.mesopic} mm`,
    accommodation && `accommodation ${accommodation.dioptres} D`,
    intraocularPressure && `eye pressure ${intraocularPressure.mmHg} mmHg`,
    lensStatus && lensStatus !== "phakic" && `lens: ${lensStatus.replaceAll("-", " ")}`,
    dilationText(eye),
  ]
  return lines.filter((line) => typeof line === "string").map((line) => paragraph(line, 4))
}

const CORRECTIONS = { uncorrected: "uncorrected", worn: "with the glasses worn", best: "best corrected" }

function lengthText({ axialLength }: EyeExamination): string | undefined {
  if (!axialLength) return undefined
  const { mm, readings, method, each = [], signalToNoise, sdMm, device } = axialLength
  return [
    `axial length ${mm.toFixed(2)} mm`,
    method === "ultrasound" ? "by ultrasound" : method === "optical-biometry" ? "by light" : undefined,
    readings === undefined ? undefined : readings === 1 ? "one reading" : `mean of ${readings} readings`,
    each.length > 1 ? `readings ${each.map((one) => one.mm.toFixed(2)).join(", ")}` : undefined,
    signalToNoise === undefined ? undefined : `signal to noise ${signalToNoise}`,
    sdMm === undefined ? undefined : `standard deviation ${sdMm} mm`,
    device,
  ]
    .filter((part) => part !== undefined)
    .join("; ")
}

function corneaText({ corneaRadius }: EyeExamination): string | undefined {
  if (!corneaRadius) return undefined
  const { flat, steep, flatAxis, steepAxis, flatD, steepD } = corneaRadius
  const meridian = (radius: number, power?: number, axis?: number) =>
    [
      `${radius} mm`,
      power === undefined ? "" : ` (${power} D)`,
      axis === undefined ? "" : ` at ${axis} degrees`,
    ].join("")
  return `cornea flat ${meridian(flat, flatD, flatAxis)}; steep ${meridian(steep, steepD, steepAxis)}`
}

/** Powers as the file gives them: to the quarter dioptre they would be other figures. */
function powersText({
  sphere,
  cylinder = 0,
  axis,
}: Refraction | NonNullable<EyeExamination["spectaclesWorn"]>) {
  const signed = (power: number) => `${power < 0 ? "-" : "+"}${Math.abs(power).toFixed(2)}`
  return cylinder === 0 ? `${signed(sphere)} D` : `${signed(sphere)} ${signed(cylinder)} x ${axis}`
}

function refractionText(found: Refraction): string {
  const { method, cycloplegic, vertexDistanceMm } = found
  return [
    `refraction ${powersText(found)}`,
    method,
    cycloplegic === undefined ? undefined : cycloplegic ? "with cycloplegia" : "without cycloplegia",
    vertexDistanceMm === undefined ? undefined : `vertex distance ${vertexDistanceMm} mm`,
  ]
    .filter((part) => part !== undefined)
    .join("; ")
}

function glassesText(glasses: NonNullable<EyeExamination["spectaclesWorn"]>): string {
  const { addD, prism } = glasses
  return [
    `glasses worn ${powersText(glasses)}`,
    addD === undefined ? undefined : `addition ${addD} D`,
    prism === undefined ? undefined : `prism ${prism}`,
  ]
    .filter((part) => part !== undefined)
    .join("; ")
}

function dilationText({ dilation }: EyeExamination): string | undefined {
  if (!dilation?.dilated) return undefined
  const drops = (dilation.drops ?? []).map(({ drop, concentrationPercent }) =>
    concentrationPercent === undefined ? drop : `${drop} ${concentrationPercent} %`,
  )
  return [
    "pupil widened",
    drops.length === 0 ? undefined : `by ${drops.join(" and ")}`,
    dilation.pupilMm === undefined ? undefined : `to ${dilation.pupilMm} mm`,
  ]
    .filter((part) => part !== undefined)
    .join(" ")
}

/** The same said of both eyes, or of many visits, is said once. */
function notesText(notes: Joined["notes"]): readonly string[] {
  const places = new Map<string, string[]>()
  for (const { path, why } of notes) {
    const eye = /\.(right|left)\b/.exec(path)?.[1]
    const day = /\[(\d{4}-\d{2}-\d{2})\]/.exec(path)?.[1]
    const place = [day, eye && `${eye} eye`].filter((part) => part !== undefined).join(", ")
    places.set(why, [...(places.get(why) ?? []), place === "" ? path : place])
  }
  return [...places].map(([why, where]) => {
    const shown = [...new Set(where)]
    const more = shown.length > 4 ? ` and ${shown.length - 4} more` : ""
    return `${shown.slice(0, 4).join("; ")}${more}: ${plainly(why)}.`
  })
}

/** A figure that two files contradict each other in is quoted as it stands in a course file; here its main parts do. */
const plainly = (why: string): string =>
  why.replace(/\{".*?\}(?=, another|; the first)/g, (quoted) => {
    try {
      const parts = Object.entries(JSON.parse(quoted) as object)
        .filter(([field, value]) => field !== "device" && typeof value !== "object")
        .map(([field, value]) => `${field} ${value}`)
      return parts.join(", ")
    } catch {
      return quoted
    }
  })
