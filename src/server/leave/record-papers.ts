import { inLanguage } from "../../engine/say.js"
import { defaultSettings } from "../../engine/settings.js"
import type { Manifest } from "../../interop/archive/format.js"
import type { ArchiveWriter } from "../../interop/archive/zip-writer.js"
import type { ListedChild, PracticeRecord } from "../../record/index.js"
import { documentOf } from "../../report/documents.js"
import type { Context } from "../context.js"
import { documentInputOf } from "../document-input.js"
import { inTurn } from "../in-turn.js"
import { rulesInForce } from "../rules.js"
import type { PracticeArchiveOptions } from "./archive-options.js"

/** The full record of every child as a PDF. A paper that cannot be made is said; it holds up nobody else's. */
export async function recordPapers({
  papers,
  record,
  children,
  writer,
  madeAtMs,
  today,
  signal,
  onProgress,
}: Omit<PracticeArchiveOptions, "papers"> & {
  readonly papers: NonNullable<PracticeArchiveOptions["papers"]>
  readonly record: PracticeRecord
  readonly children: readonly ListedChild[]
  readonly writer: ArchiveWriter
}): Promise<Manifest["papersNotMade"]> {
  const { setter, language, paper } = papers
  const context: Context = {
    record,
    clock: { nowMs: () => madeAtMs, today: () => today },
    settings: { ...defaultSettings, ...record.practice.settings },
    rules: rulesInForce(record),
    papers: setter,
    oneAtATime: inTurn(),
  }
  const notMade: Manifest["papersNotMade"] = []
  let done = 0
  for (const { id } of children) {
    signal?.throwIfAborted()
    const input = await documentInputOf(context, id, { document: "record", language })
    const document = documentOf("record", input)
    const pdf =
      document.kind === "refused"
        ? document
        : await orAborted(
            inLanguage(language, () => setter.set([document], { paper })),
            signal,
          )
    if (pdf.kind === "refused") notMade.push({ child: id, why: pdf.why })
    else await writer.add(`children/${id}/record.pdf`, pdf.bytes)
    done += 1
    onProgress?.({ phase: "papers", done, total: children.length })
  }
  return notMade
}

/** What comes of a task, or the reason of the signal as soon as it is given: a paper under way is not waited for. */
function orAborted<T>(task: Promise<T>, signal: AbortSignal | undefined): Promise<T> {
  if (!signal) return task
  return new Promise((resolve, reject) => {
    const stop = () => reject(signal.reason)
    signal.addEventListener("abort", stop, { once: true })
    task.then(resolve, reject).finally(() => signal.removeEventListener("abort", stop))
  })
}
