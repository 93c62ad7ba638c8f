import { msg } from "../../engine/say.js"

/** What may be stored beside the entries, by media type, with what a person calls it and the end of its name. */
export const FILE_TYPES = {
  "application/pdf": { name: "PDF", ending: "pdf" },
  "image/png": { name: "PNG", ending: "png" },
  "image/jpeg": { name: "JPEG", ending: "jpg" },
  "image/svg+xml": { name: msg("drawn signature"), ending: "svg" },
  "text/plain": { name: msg("text"), ending: "txt" },
} as const
export type FileType = keyof typeof FILE_TYPES

/** How the name of a stored file ends: also of what instruments and other programs sent. */
export function endingOf(mediaType: string): string {
  if (mediaType in FILE_TYPES) return FILE_TYPES[mediaType as FileType].ending
  if (mediaType === "application/dicom") return "dcm"
  return mediaType.endsWith("json") ? "json" : "bin"
}

/** Of these may a scan be. */
export const SCAN_TYPES = [
  "application/pdf",
  "image/png",
  "image/jpeg",
] as const satisfies readonly FileType[]

export const LARGEST_FILE_BYTES = 10_000_000
