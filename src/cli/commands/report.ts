import { resolve } from "node:path"
import { noRules } from "../../engine/practice-rules.js"
import type { Problem } from "../../engine/problem.js"
import { problem } from "../../interop/course/problem.js"
import { pdfOf } from "../../report/pdf/pdf.js"
import { wordsOf } from "../../report/words-of.js"
import { learnEveryLanguage } from "../../words/index.js"
import { courseInput } from "../course-input.js"
import { feeFile } from "../fee-file.js"
import type { ExitCode, Io } from "../io.js"
import { letterheadInput } from "../letterhead-input.js"
import { pagesInWords, paperOf, type ReportArguments, refusal, written } from "../report-paper.js"
import { toldJson, toldProblems } from "../told.js"

/** A paper of a child as PDF; of a folder of course files one PDF with all of them. */
export async function run(args: ReportArguments, io: Io): Promise<ExitCode> {
  const { file, out, json = false } = args
  learnEveryLanguage()
  const place = await io.place(file)
  if (place.kind === "record") {
    const allowed = "a course file or a folder of them; papers of a data folder are made on its pages"
    return toldProblems([problem({ path: "<file>", value: file, allowed })], { io, json })
  }
  const letterhead = await letterheadInput(args, io)
  const fees = args.fees === undefined ? { schedules: [] } : await feeFile(args.fees, io)
  const input = place.kind === "file" ? await courseInput(args, io) : null
  const faults = [
    ...argumentProblems(args),
    ...[letterhead, fees, ...(input ? [input] : [])].flatMap((part) =>
      "problems" in part ? part.problems : [],
    ),
  ]
  if (faults.length > 0 || "problems" in letterhead || "problems" in fees)
    return toldProblems(faults, { io, json })
  const setting = { args, letterhead, rules: { ...noRules, feeSchedules: fees.schedules } }
  if (place.kind === "courses") {
    const { reportOfFolder } = await import("../report-folder.js")
    return reportOfFolder(place.files, { ...setting, io })
  }
  if (input === null || "problems" in input) throw new RangeError("a course with faults was let through")
  const document = paperOf(input, setting)
  if (document.kind === "refused") return toldProblems([refusal(args, document)], { io, json })
  const pdf = pdfOf([document], args.paper)
  if (pdf.kind === "refused") return toldProblems([refusal(args, pdf)], { io, json })
  const hindered = await written(pdf.bytes, { out, io })
  if (hindered) return toldProblems([hindered], { io, json })
  const { language, paper } = args
  const { title } = document
  const answer = {
    document: args.document,
    language,
    paper,
    pages: pdf.pages,
    bytes: pdf.bytes.length,
    out,
    title,
  }
  if (json) return toldJson({ ...answer, text: wordsOf(document) }, io)
  if (out !== "-") io.out(`${title}\n${pagesInWords(pdf.pages)} written to ${out}.\n`)
  return 0
}

const MOST_LETTERS = 200

/** Longer ones make a code too fine for a phone. */
const isAddress = (link: string): boolean =>
  link.length <= 300 && /^https?:\/\//.test(link) && URL.canParse(link)

function argumentProblems({
  file,
  out,
  json,
  name,
  practice,
  treatment,
  concentration,
  link,
}: ReportArguments): readonly Problem[] {
  const named = (path: string, value: string | undefined) =>
    value !== undefined && (value.trim() === "" || [...value].length > MOST_LETTERS)
      ? [
          problem({
            path,
            value: value.slice(0, MOST_LETTERS),
            allowed: `a name of 1 to ${MOST_LETTERS} characters`,
          }),
        ]
      : []
  const isDrops = treatment === "atropine"
  const isStrength = concentration !== undefined && concentration > 0 && concentration <= 1.5
  return [
    ...named("--name", name),
    ...named("--practice", practice),
    ...(link !== undefined && !isAddress(link)
      ? [
          problem({
            path: "--link",
            value: link.slice(0, MOST_LETTERS),
            allowed: "an address that begins with https:// or http://",
          }),
        ]
      : []),
    ...(out === "-" && json
      ? [problem({ path: "--out", value: out, allowed: "a file, since the JSON takes stdout" })]
      : []),
    ...(file !== "-" && out !== "-" && resolve(file) === resolve(out)
      ? [problem({ path: "--out", value: out, allowed: "another file than the course file" })]
      : []),
    ...(concentration !== undefined && !isDrops
      ? [
          problem({
            path: "--concentration",
            value: concentration,
            allowed: "absent: only atropine has a strength (--treatment atropine)",
          }),
        ]
      : []),
    ...(isDrops && !isStrength
      ? [
          problem({
            path: "--concentration",
            value: concentration,
            allowed: "the strength of the drops, above 0 and up to 1.5 % w/v",
          }),
        ]
      : []),
  ]
}
