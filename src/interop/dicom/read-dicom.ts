import { type CalendarDate, EYES, type Eye, type EyeExamination } from "../../engine/course.js"
import { say } from "../../engine/say.js"
import type { Fragment, ReadFile } from "../intake/fragment.js"
import { acuityEyes } from "./acuity.js"
import { axialEyes } from "./axial.js"
import { type DataSet, textOf } from "./data-set.js"
import { DicomFault } from "./dicom-fault.js"
import { documentOf } from "./encapsulated-pdf.js"
import { deviceOf, identityOf, visitDateOf } from "./identity.js"
import { keratometryEyes } from "./keratometry.js"
import { lensometryEyes } from "./lensometry.js"
import { dataSetOfFile } from "./part-10.js"
import type { Reading } from "./reading.js"
import { refractionEyes } from "./refraction.js"
import { classNotRead, classOf, type ReadClass } from "./sop-classes.js"
import { placeOf } from "./tags.js"

interface DicomFile {
  readonly file: string
  readonly bytes: Uint8Array
  /** Nothing can have been measured after it. */
  readonly today?: CalendarDate | undefined
}

/**
 * Reads one DICOM object of an eye instrument: lengths, corneal radii, refractions, acuity, glasses, or a PDF. Whatever is
 * not taken is in `skipped` with its reason and its tag; nothing is thrown, whatever the bytes are.
 *
 * @example
 * (await readDicom({ file: "axial.dcm", bytes })).fragments[0]?.course.visits?.[0]?.right?.axialLength?.mm // => 24.12
 */
export async function readDicom({ file, bytes, today }: DicomFile): Promise<ReadFile> {
  try {
    return objectOf({ file, bytes, today })
  } catch (cause) {
    if (!(cause instanceof DicomFault)) throw cause
    const { why, where } = cause
    return { file, fragments: [], skipped: [{ file, why, ...(where === undefined ? {} : { where }) }] }
  }
}

function objectOf({ file, bytes, today }: DicomFile): ReadFile {
  const set = dataSetOfFile(bytes)
  const uid = textOf(set, "sopClass")
  const notRead = classNotRead(uid)
  if (notRead) throw new DicomFault(notRead, placeOf("sopClass"))
  const kind = classOf(uid)
  if (kind === undefined)
    throw new DicomFault(say("The file does not say what it holds (SOP class)."), placeOf("sopClass"))
  const id = textOf(set, "sopInstance")
  if (id === undefined || !/^[0-9.]{3,64}$/.test(id))
    throw new DicomFault(
      say("The file has no identifier of its own, so that it could be taken twice."),
      placeOf("sopInstance"),
    )
  const { identity, notes } = identityOf(set)
  const dated = visitDateOf(set, { born: identity.born, today })
  if ("why" in dated) throw new DicomFault(dated.why, placeOf("contentDate"))
  const { date } = dated
  const device = deviceOf(set)
  const source = { kind: "dicom" as const, id, ...(device === undefined ? {} : { device }) }
  const about = { identity, source }
  if (kind === "document") {
    const fragment: Fragment = { ...about, course: {}, documents: [documentOf(set, date)], notes }
    return { file, fragments: [fragment], skipped: [] }
  }
  const reading: Reading = { file, date, device, notes: [...notes], skipped: [] }
  const eyes = eyesOfKind(kind, { set, reading })
  noteOtherEye(eyes, { set, reading })
  const { skipped } = reading
  if (Object.keys(eyes).length > 0) {
    const course = { visits: [{ date, ...eyes, sources: [source] }] }
    return { file, fragments: [{ ...about, course, documents: [], notes: reading.notes }], skipped }
  }
  const nothing = { file, why: say("The file holds no figure of either eye.") }
  return { file, fragments: [], skipped: skipped.length > 0 ? skipped : [nothing] }
}

const EYES_SAID: ReadonlyMap<string | undefined, readonly Eye[]> = new Map([
  ["R", ["right"]],
  ["L", ["left"]],
  ["B", ["right", "left"]],
])

/** The object says apart from its figures which eyes were measured; a figure too many or too few is told. */
function noteOtherEye(
  eyes: Partial<Record<Eye, EyeExamination>>,
  { set, reading }: { readonly set: DataSet; readonly reading: Reading },
): void {
  const said = EYES_SAID.get(textOf(set, "laterality"))
  if (!said) return
  for (const eye of EYES) {
    if (said.includes(eye) === (eyes[eye] !== undefined)) continue
    const why = said.includes(eye)
      ? say("the file says that this eye was measured, and no figure of it was taken")
      : say("the file says that only the other eye was measured, and yet gives a figure of this one")
    reading.notes.push({ kind: "other-eye", path: `visits[${reading.date}].${eye}`, why })
  }
}

function eyesOfKind(
  kind: Exclude<ReadClass, "document">,
  { set, reading }: { readonly set: DataSet; readonly reading: Reading },
): Partial<Record<Eye, EyeExamination>> {
  switch (kind) {
    case "axial-length":
      return axialEyes(set, reading)
    case "keratometry":
      return keratometryEyes(set, reading)
    case "autorefraction":
      return refractionEyes(set, { reading, method: "autorefraction" })
    case "subjective-refraction":
      return refractionEyes(set, { reading, method: "subjective" })
    case "visual-acuity":
      return acuityEyes(set, reading)
    case "lensometry":
      return lensometryEyes(set, reading)
  }
}
