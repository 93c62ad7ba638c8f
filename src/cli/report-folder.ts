import { counted } from "../engine/words.js"
import { type BatchItem, batchOf } from "../report/batch.js"
import { pdfOf } from "../report/pdf/pdf.js"
import { courseInput } from "./course-input.js"
import type { ExitCode, Io } from "./io.js"
import { pagesInWords, paperOf, type ReportSetting, refusal, written } from "./report-paper.js"
import { toldJson, toldProblems } from "./told.js"

/** How many papers are made between two words of progress. */
const TOLD_EVERY = 20

/** The papers of a folder of course files as one PDF; a file with faults stands on its last page with the first of them. */
export async function reportOfFolder(
  files: readonly string[],
  { io, ...setting }: ReportSetting & { readonly io: Io },
): Promise<ExitCode> {
  const { args, letterhead } = setting
  const { json = false, document, language, paper, out } = args
  const items: BatchItem[] = []
  for (const file of files) {
    const input = await courseInput({ ...args, file }, io)
    items.push({
      label: file,
      document:
        "problems" in input
          ? { kind: "refused", why: input.problems[0]?.message ?? "it cannot be read" }
          : paperOf(input, setting),
    })
    if (items.length % TOLD_EVERY === 0) io.error(`${items.length} of ${files.length} papers\n`)
  }
  const title = counted(files.length, "paper")
  const page = { kind: document, language: "en", date: args.asOf ?? io.today(), letterhead } as const
  const batch = await batchOf(items, {
    title,
    page,
    set: async (documents) => {
      io.error(`setting ${counted(documents.length, "paper")} ...\n`)
      return pdfOf(documents, paper, { title })
    },
  })
  if (batch.kind === "refused") {
    const each = batch.notPrinted.map(({ label, why }) => refusal({ ...args, file: label }, { why }))
    return toldProblems([refusal(args, batch), ...each], { io, json })
  }
  const hindered = await written(batch.bytes, { out, io })
  if (hindered) return toldProblems([hindered], { io, json })
  const { pages, bytes, printed, notPrinted } = batch
  const missing = notPrinted.map(({ label, why }) => refusal({ ...args, file: label }, { why }))
  if (missing.length > 0) toldProblems(missing, { io, json: false })
  if (json) {
    const answer = { document, language, paper, pages, bytes: bytes.length, out, title, printed, notPrinted }
    toldJson(answer, io)
  } else if (out !== "-") {
    io.out(`${counted(printed, "paper")}, ${pagesInWords(pages)}, written to ${out}.\n`)
  }
  return missing.length > 0 ? 1 : 0
}
