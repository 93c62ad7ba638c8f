import { say } from "../../engine/say.js"
import { LARGEST_OBJECT_BYTES } from "./bounds.js"
import { type DataSet, textOf } from "./data-set.js"
import { DicomFault } from "./dicom-fault.js"
import { cursorOf, dataSetAt } from "./parse-data-set.js"
import { classNotRead } from "./sop-classes.js"

const PREAMBLE_BYTES = 128
const EXPLICIT_LITTLE_ENDIAN = "1.2.840.10008.1.2.1"
const IMPLICIT_LITTLE_ENDIAN = "1.2.840.10008.1.2"
const EXPLICIT_BIG_ENDIAN = "1.2.840.10008.1.2.2"

/** Whether bytes begin as a DICOM file does: 128 bytes of anything, then DICM (PS3.10). */
export const isDicomFile = (bytes: Uint8Array): boolean =>
  String.fromCharCode(...bytes.subarray(PREAMBLE_BYTES, PREAMBLE_BYTES + 4)) === "DICM"

/** Whether bytes begin as a DICOM data set does that lost the header of its file: with group 0002 or 0008. */
export function isBareDataSet(bytes: Uint8Array): boolean {
  if (bytes.length < 8) return false
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const [group, element] = [view.getUint16(0, true), view.getUint16(2, true)]
  const representation = String.fromCharCode(...bytes.subarray(4, 6))
  return (
    (group === 0x0002 || group === 0x0008) &&
    element <= 0x0100 &&
    (/^[A-Z]{2}$/.test(representation) || view.getUint32(4, true) <= bytes.length - 8)
  )
}

/**
 * The data set of a DICOM file in little endian, explicit or implicit.
 *
 * @throws DicomFault when it is no such file, is damaged, or is of a class that is not read.
 */
export function dataSetOfFile(bytes: Uint8Array): DataSet {
  if (bytes.length > LARGEST_OBJECT_BYTES)
    throw new DicomFault(
      say("The file is larger than {most} MB: it is no measurement and is not read.", {
        most: LARGEST_OBJECT_BYTES / 1_000_000,
      }),
    )
  if (!isDicomFile(bytes))
    throw new DicomFault(
      isBareDataSet(bytes)
        ? say(
            "It looks like DICOM without the header of a DICOM file. Save it again as a DICOM file (Part 10).",
          )
        : say("It is not a DICOM file."),
    )
  const cursor = cursorOf(bytes)
  cursor.at = PREAMBLE_BYTES + 4
  // The header is explicit little endian whatever the rest is (PS3.10 7.1).
  const meta = dataSetAt(cursor, {
    end: bytes.length,
    isDelimited: false,
    isExplicit: true,
    onlyGroup: 0x0002,
  })
  const notRead = classNotRead(textOf(meta, "classInMeta"))
  if (notRead) throw new DicomFault(notRead, "(0002,0002)")
  const syntax = textOf(meta, "transferSyntax")
  if (syntax !== EXPLICIT_LITTLE_ENDIAN && syntax !== IMPLICIT_LITTLE_ENDIAN)
    throw new DicomFault(otherSyntax(syntax), "(0002,0010)")
  return dataSetAt(cursor, {
    end: bytes.length,
    isDelimited: false,
    isExplicit: syntax === EXPLICIT_LITTLE_ENDIAN,
  })
}

function otherSyntax(syntax: string | undefined): string {
  if (syntax === undefined) return say("The file does not say how it is encoded (transfer syntax).")
  if (syntax === EXPLICIT_BIG_ENDIAN)
    return say(
      "The file is encoded in big endian, which is retired. Save it again in explicit little endian.",
    )
  return say(
    "The file is compressed or encoded in a way that is not read ({syntax}). Save it again in explicit little endian.",
    { syntax },
  )
}
