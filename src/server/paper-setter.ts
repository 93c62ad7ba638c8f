import { type ChildProcess, fork } from "node:child_process"
import { fileURLToPath } from "node:url"
import { language } from "../engine/say.js"
import type { PaperDocument, PaperSize } from "../report/document.js"
import type { Pdf, PdfRefused } from "../report/pdf/pdf.js"
import type { SetAnswer, SetRequest } from "./pdf-process.js"

export interface PaperSetter {
  readonly set: (
    documents: readonly PaperDocument[],
    options: { readonly paper: PaperSize; readonly title?: string | undefined },
  ) => Promise<Pdf | PdfRefused>
  readonly close: () => void
}

interface Waiting {
  readonly done: (result: Pdf | PdfRefused) => void
  readonly failed: (cause: Error) => void
  readonly timer: NodeJS.Timeout
}

/**
 * The typesetter keeps about half a megabyte of every document it ever set, whatever it is told to forget. So it works
 * in a process of its own, which makes room for another after this many documents; it also keeps a batch of 200, some
 * seconds of work, from holding up everybody else.
 */
const RETIRES_AFTER = 400

const LONGEST_MS = 120_000

/** A quarter of an hour: papers are asked for while families are there, and the memory is of use elsewhere. */
const IDLE_MS = 15 * 60_000

/** From sources there is no built file to run; a loader for TypeScript is at hand then. */
const IS_BUILT = import.meta.url.endsWith(".js")
const PROGRAM = fileURLToPath(new URL(IS_BUILT ? "./pdf-process.js" : "./pdf-process.ts", import.meta.url))

/** Sets documents in a process of their own, which starts when it is first needed. */
export function paperSetter(): PaperSetter {
  let running: ChildProcess | null = null
  let idle: NodeJS.Timeout | undefined
  let setSoFar = 0
  let lastId = 0
  const waiting = new Map<number, Waiting>()

  const end = () => {
    clearTimeout(idle)
    running?.kill()
    running = null
    setSoFar = 0
  }
  const failAll = (cause: Error) => {
    for (const { failed, timer } of waiting.values()) {
      clearTimeout(timer)
      failed(cause)
    }
    waiting.clear()
  }
  const take = (answer: SetAnswer) => {
    const asked = waiting.get(answer.id)
    if (!asked) return
    waiting.delete(answer.id)
    clearTimeout(asked.timer)
    if ("result" in answer) asked.done(answer.result)
    else asked.failed(new Error(answer.failure))
    if (waiting.size > 0) return
    if (setSoFar >= RETIRES_AFTER) return end()
    running?.unref()
    running?.channel?.unref()
    idle = setTimeout(end, IDLE_MS).unref()
  }
  const started = (): ChildProcess => {
    if (running) return running
    const process = fork(PROGRAM, {
      serialization: "advanced",
      execArgv: IS_BUILT ? [] : ["--import", "tsx"],
      stdio: ["ignore", "ignore", "inherit", "ipc"],
    })
    process.on("message", (answer: SetAnswer) => take(answer))
    const lost = (cause: Error) => {
      if (running !== process) return
      running = null
      setSoFar = 0
      failAll(cause)
    }
    process.on("error", lost)
    process.on("exit", (code, signal) =>
      lost(new Error(`the process that sets papers ended by itself (${signal ?? code})`)),
    )
    running = process
    return process
  }
  return {
    set: (documents, { paper, title }) =>
      new Promise((done, failed) => {
        clearTimeout(idle)
        lastId += 1
        setSoFar += documents.length
        const request: SetRequest = { id: lastId, documents, paper, title, language: language() }
        const timer = setTimeout(() => {
          end()
          failAll(new Error(`a paper was not set within ${LONGEST_MS / 1000} seconds`))
        }, LONGEST_MS)
        waiting.set(request.id, { done, failed, timer })
        const process = started()
        process.ref()
        process.channel?.ref()
        process.send(request)
      }),
    close: () => {
      end()
      failAll(new Error("the server is being closed"))
    },
  }
}
