import type { Problem } from "../engine/problem.js"
import { inLanguage, type Language, say } from "../engine/say.js"
import { problem } from "../interop/course/problem.js"
import type { Letterhead } from "../report/document.js"
import { LARGEST_LOGO_BYTES, logoFault, pictureType } from "../report/pdf/logo.js"
import type { Io } from "./io.js"

const MOST_LINES = 8
const LONGEST_LINE = 120

/** The head of a paper: the practice's name, the lines of a text file under it, a picture beside it. */
export async function letterheadInput(
  args: {
    readonly practice?: string | undefined
    readonly letterhead?: string | undefined
    readonly logo?: string | undefined
    readonly language: Language
  },
  io: Io,
): Promise<Letterhead | { readonly problems: readonly Problem[] }> {
  const lines = args.letterhead === undefined ? [] : await linesOf(args.letterhead, io)
  const logo = args.logo === undefined ? null : await logoOf(args.logo, io)
  const problems = [lines, ...(logo ? [logo] : [])].flatMap((part) =>
    "problem" in part ? [part.problem] : [],
  )
  if (problems.length > 0 || "problem" in lines || (logo && "problem" in logo)) return { problems }
  const practice = args.practice ?? inLanguage(args.language, () => say("Eye-care practice"))
  return { practice, lines, ...(logo ? { logo } : {}) }
}

async function linesOf(file: string, io: Io): Promise<readonly string[] | { readonly problem: Problem }> {
  const source = await io.read(file)
  if ("problem" in source) return { problem: { ...source.problem, path: "--letterhead" } }
  const lines = source.text
    .split(/\r?\n/)
    .map((line) => line.trim())
    .filter((line) => line !== "")
  if (lines.length <= MOST_LINES && lines.every((line) => [...line].length <= LONGEST_LINE)) return lines
  const allowed = `a text of at most ${MOST_LINES} lines of ${LONGEST_LINE} characters: address, telephone`
  return { problem: problem({ path: "--letterhead", value: file, allowed }) }
}

async function logoOf(
  file: string,
  io: Io,
): Promise<NonNullable<Letterhead["logo"]> | { readonly problem: Problem }> {
  const source = await io.readBytes(file, LARGEST_LOGO_BYTES)
  if ("problem" in source) return { problem: { ...source.problem, path: "--logo" } }
  const { bytes } = source
  const mediaType = pictureType(bytes)
  const picture = mediaType && { mediaType, bytes }
  const allowed = picture === null ? "a PNG or JPEG" : logoFault(picture)
  if (picture !== null && allowed === null) return picture
  return { problem: problem({ path: "--logo", value: file, allowed: allowed ?? "a PNG or JPEG" }) }
}
