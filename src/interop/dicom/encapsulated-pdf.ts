import type { CalendarDate } from "../../engine/course.js"
import { say } from "../../engine/say.js"
import type { ReceivedDocument } from "../intake/fragment.js"
import { type DataSet, elementOf, numberOf, textOf } from "./data-set.js"
import { DicomFault } from "./dicom-fault.js"
import { placeOf } from "./tags.js"

const LONGEST_TITLE = 200

/** Encapsulated PDF: the paper as it came, with its title. */
export function documentOf(set: DataSet, date: CalendarDate): ReceivedDocument {
  const mediaType = textOf(set, "documentMediaType")
  if (mediaType !== undefined && mediaType.toLowerCase() !== "application/pdf")
    throw new DicomFault(
      say("The document is of the kind {kind}; only PDF is taken.", { kind: mediaType.slice(0, 60) }),
      placeOf("documentMediaType"),
    )
  const bytes = bytesOf(set)
  if (!bytes || !isPdf(bytes)) throw new DicomFault(say("The document is not a PDF."), placeOf("document"))
  const title =
    textOf(set, "documentTitle") ?? textOf(set, "seriesDescription") ?? say("Document without a title")
  // Copied: what is kept must not hold the whole file that it came in.
  return { date, title: title.slice(0, LONGEST_TITLE), mediaType: "application/pdf", bytes: bytes.slice() }
}

/** A value has an even number of bytes; the padding is no part of the paper. */
function bytesOf(set: DataSet): Uint8Array | undefined {
  const bytes = elementOf(set, "document")?.bytes
  if (!bytes) return undefined
  const length = numberOf(set, "documentLength")
  if (length !== undefined && length > 0 && length <= bytes.length && bytes.length - length < 2)
    return bytes.subarray(0, length)
  return bytes.at(-1) === 0 ? bytes.subarray(0, -1) : bytes
}

/** The header may stand a little way in. */
const isPdf = (bytes: Uint8Array): boolean =>
  String.fromCharCode(...bytes.subarray(0, 1024)).includes("%PDF-")
