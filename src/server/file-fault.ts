import { say } from "../engine/say.js"
import { FILE_TYPES, type FileType, LARGEST_FILE_BYTES } from "./contract/file-types.js"

/** What is wrong with bytes said to be of a media type, as "what is allowed"; null when nothing is. */
export function fileFault(bytes: Uint8Array, mediaType: FileType): string | null {
  if (bytes.length === 0) return say("a file that is not empty")
  if (bytes.length > LARGEST_FILE_BYTES)
    return say("a file of at most {most} MB", { most: LARGEST_FILE_BYTES / 1_000_000 })
  if (BEGINNINGS[mediaType](bytes)) return null
  return say("a {type}, as its media type {mediaType} says; its content is something else", {
    type: say(FILE_TYPES[mediaType].name),
    mediaType,
  })
}

const startsWith = (beginning: readonly number[]) => (bytes: Uint8Array) =>
  beginning.every((byte, index) => bytes[index] === byte)

const BEGINNINGS: Readonly<Record<FileType, (bytes: Uint8Array) => boolean>> = {
  "application/pdf": startsWith([0x25, 0x50, 0x44, 0x46, 0x2d]),
  "image/png": startsWith([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
  "image/jpeg": startsWith([0xff, 0xd8, 0xff]),
  "image/svg+xml": (bytes) => isPlainDrawing(textOf(bytes)),
  "text/plain": (bytes) => isPlainText(textOf(bytes)),
}

/** The text in UTF-8, null when the bytes are none. */
function textOf(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes)
  } catch {
    return null
  }
}

// Control characters other than tab, line feed and carriage return are not of a text that a person reads.
const isPlainText = (text: string | null): boolean =>
  text !== null && !/\p{Cc}/u.test(text.replace(/[\t\n\r]/g, ""))

const TAG =
  /<\/?(?:svg|path|circle|line|rect)(?:\s+(?:xmlns|xmlns:xlink|viewBox|width|height|d|cx|cy|r|x|y|x1|y1|x2|y2|rx|ry|fill|stroke|stroke-width|stroke-linecap|stroke-linejoin|transform)="[^"<>&]*")*\s*\/?>/g

/** Strokes and dots and nothing else: an SVG can hold scripts and links, a signature needs neither. */
function isPlainDrawing(text: string | null): boolean {
  if (text === null || !text.trimStart().startsWith("<svg")) return false
  return text.replace(TAG, "").trim() === ""
}
