import type { CalendarDate } from "../engine/course.js"
import type { DateOrder, TableMapping } from "../engine/practice-rules.js"
import { say } from "../engine/say.js"
import { isBareDataSet, isDicomFile } from "./dicom/part-10.js"
import type { ReadFile } from "./intake/fragment.js"

export interface FileToRead {
  readonly file: string
  readonly bytes: Uint8Array
  /** Nothing that has happened may be dated after it. */
  readonly today?: CalendarDate | undefined
  /** How a table is read; without it by what its headings say. */
  readonly mapping?: TableMapping | undefined
  readonly dateOrder?: DateOrder | undefined
  readonly decimalSign?: "." | "," | undefined
}

/**
 * Reads a file of an instrument or of another program: DICOM, FHIR, a course file, a table. What it is, is told by its
 * content and never by its name. The reader of each kind is loaded when the first such file comes.
 *
 * @example
 * await readFile({ file: "IM0001", bytes }) // => { file: "IM0001", fragments: [ ... ], skipped: [] }
 */
export async function readFile(given: FileToRead): Promise<ReadFile> {
  const { file, bytes, today } = given
  if (isDicomFile(bytes) || isBareDataSet(bytes)) {
    const { readDicom } = await import("./dicom/read-dicom.js")
    return readDicom({ file, bytes, today })
  }
  const why = notRead(bytes)
  if (why !== undefined) return { file, fragments: [], skipped: [{ file, why }] }
  if (beginsWith(bytes, /^\uFEFF?\s*[{[]/)) return jsonFile(given)
  const { readTable } = await import("./table/read-table.js")
  return readTable(given)
}

async function jsonFile({ file, bytes, today }: FileToRead): Promise<ReadFile> {
  const text = new TextDecoder().decode(bytes)
  const value = parsed(text) ?? parsed(text.slice(0, Math.max(0, text.indexOf("\n"))))
  // Resources may stand one a line, so that only the first line is JSON by itself.
  if (typeof value === "object" && value !== null && "resourceType" in value) {
    const { readFhir } = await import("./fhir/read-fhir.js")
    return readFhir({ file, text, today })
  }
  const { readCourseFile } = await import("./course/read-course-file.js")
  return readCourseFile({ file, text, today })
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ""))
  } catch {
    return undefined
  }
}

/** Why a file is of no kind that is read; undefined when it may be one. */
function notRead(bytes: Uint8Array): string | undefined {
  if (bytes.length === 0) return say("The file is empty.")
  if (beginsWith(bytes, /^%PDF-/))
    return say("A PDF by itself does not say whose it is: add it on the child's page.")
  if (isPicture(bytes)) return say("It is a picture; figures are not read from pictures.")
  if (startsWith(bytes, [0x50, 0x4b, 0x03, 0x04])) return zipNotRead(bytes)
  if (startsWith(bytes, [0x1f, 0x8b])) return say("It is compressed: unpack it and read what is in it.")
  if (startsWith(bytes, [0xd0, 0xcf, 0x11, 0xe0]))
    return say("It is a workbook of an old kind (.xls): save it as .xlsx or CSV.")
  if (beginsWith(bytes, /^\uFEFF?\s*<[!?a-zA-Z]/))
    return say("XML is not read. Save FHIR as JSON, and a table as CSV.")
  const head = bytes.subarray(0, 4096)
  const isUtf16 = startsWith(bytes, [0xff, 0xfe]) || startsWith(bytes, [0xfe, 0xff])
  if (!isUtf16 && head.includes(0)) return say("It is no kind of file that is read here.")
  return undefined
}

/** A workbook is read; what else comes as ZIP is said by what it holds. */
function zipNotRead(bytes: Uint8Array): string | undefined {
  const holds = (name: string) => Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length).includes(name)
  if (holds("xl/workbook.xml") || holds("[Content_Types].xml")) return undefined
  return holds("entries.ndjson") && holds("manifest.json")
    ? say("It is an archive of Lengthwise: take it in with lengthwise import.")
    : say("It is a ZIP archive: unpack it and read what is in it.")
}

const isPicture = (bytes: Uint8Array): boolean =>
  startsWith(bytes, [0x89, 0x50, 0x4e, 0x47]) ||
  startsWith(bytes, [0xff, 0xd8, 0xff]) ||
  startsWith(bytes, [0x49, 0x49, 0x2a, 0x00]) ||
  startsWith(bytes, [0x4d, 0x4d, 0x00, 0x2a]) ||
  beginsWith(bytes, /^(GIF8|BM....\0\0\0\0)/s)

const startsWith = (bytes: Uint8Array, begin: readonly number[]): boolean =>
  begin.every((byte, index) => bytes[index] === byte)

/** Asked of the first bytes as text, whatever its letters are. */
const beginsWith = (bytes: Uint8Array, pattern: RegExp): boolean =>
  pattern.test(new TextDecoder().decode(bytes.subarray(0, 256)))
