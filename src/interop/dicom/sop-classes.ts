import { say } from "../../engine/say.js"

const STORAGE = "1.2.840.10008.5.1.4.1.1."

/** Objects that are read, by what they hold. */
export const READ_CLASSES = {
  [`${STORAGE}78.1`]: "lensometry",
  [`${STORAGE}78.2`]: "autorefraction",
  [`${STORAGE}78.3`]: "keratometry",
  [`${STORAGE}78.4`]: "subjective-refraction",
  [`${STORAGE}78.5`]: "visual-acuity",
  [`${STORAGE}78.7`]: "axial-length",
  [`${STORAGE}104.1`]: "document",
} as const satisfies Readonly<Record<string, string>>

export type ReadClass = (typeof READ_CLASSES)[keyof typeof READ_CLASSES]

/** What an instrument of this trade may send that holds none of our figures; names of the standard (PS3.6). */
const OTHER_NAMES: Readonly<Record<string, string>> = {
  "1.2.840.10008.1.3.10": "Media Storage Directory (DICOMDIR)",
  [`${STORAGE}7`]: "Secondary Capture Image",
  [`${STORAGE}7.2`]: "Multi-frame Grayscale Byte Secondary Capture Image",
  [`${STORAGE}7.4`]: "Multi-frame True Color Secondary Capture Image",
  [`${STORAGE}6.1`]: "Ultrasound Image",
  [`${STORAGE}3.1`]: "Ultrasound Multi-frame Image",
  [`${STORAGE}66`]: "Raw Data",
  [`${STORAGE}77.1.4`]: "VL Photographic Image",
  [`${STORAGE}77.1.5.1`]: "Ophthalmic Photography 8 Bit Image",
  [`${STORAGE}77.1.5.2`]: "Ophthalmic Photography 16 Bit Image",
  [`${STORAGE}77.1.5.4`]: "Ophthalmic Tomography Image",
  [`${STORAGE}77.1.5.5`]: "Wide Field Ophthalmic Photography Stereographic Projection Image",
  [`${STORAGE}77.1.5.6`]: "Wide Field Ophthalmic Photography 3D Coordinates Image",
  [`${STORAGE}77.1.5.7`]: "Ophthalmic Optical Coherence Tomography En Face Image",
  [`${STORAGE}77.1.5.8`]: "Ophthalmic Optical Coherence Tomography B-scan Volume Analysis",
  [`${STORAGE}78.6`]: "Spectacle Prescription Report",
  [`${STORAGE}78.8`]: "Intraocular Lens Calculations",
  [`${STORAGE}79.1`]: "Macular Grid Thickness and Volume Report",
  [`${STORAGE}80.1`]: "Ophthalmic Visual Field Static Perimetry Measurements",
  [`${STORAGE}81.1`]: "Ophthalmic Thickness Map",
  [`${STORAGE}82.1`]: "Corneal Topography Map",
  [`${STORAGE}88.11`]: "Basic Text SR",
  [`${STORAGE}88.22`]: "Enhanced SR",
  [`${STORAGE}88.33`]: "Comprehensive SR",
  [`${STORAGE}104.2`]: "Encapsulated CDA",
}

const isRead = (uid: string): uid is keyof typeof READ_CLASSES => Object.hasOwn(READ_CLASSES, uid)

export const classOf = (uid: string | undefined): ReadClass | undefined =>
  uid !== undefined && isRead(uid) ? READ_CLASSES[uid] : undefined

/** Why an object of this class is passed over; undefined when it is read, or says nothing. */
export function classNotRead(uid: string | undefined): string | undefined {
  if (uid === undefined || isRead(uid)) return undefined
  const name = Object.hasOwn(OTHER_NAMES, uid) ? OTHER_NAMES[uid] : undefined
  return name === undefined
    ? say("It holds no measurement that is read here: an object of the class {uid}.", { uid })
    : say("It holds no measurement that is read here: {name}.", { name })
}
