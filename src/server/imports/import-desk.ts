import type { MappedColumn, TableMapping } from "../../engine/practice-rules.js"
import { say } from "../../engine/say.js"
import { guessedMapping } from "../../interop/table/guess-mapping.js"
import { questions } from "../../interop/table/questions.js"
import type { Question, QuestionKind } from "../../interop/table/table-types.js"
import type { ImportCounts, Person, RecordedImport } from "../../record/index.js"
import type { ImportAtWork } from "../contract/imports.js"
import { recoverImports, takenBack } from "./recover.js"
import { received, type ScratchFile, sweep } from "./scratch.js"
import { type ImportPlace, type Progress, TableImport } from "./table-import.js"
import type { TakeBackTotals } from "./take-back.js"

type WorkState = ImportAtWork["state"]

/** What somebody is at. One at a time: two imports would be checked against a record that the other one changes. */
export interface Work {
  readonly id: string
  readonly file: string
  readonly by: Person
  readonly table: TableImport | null
  state: WorkState
  progress: Progress | null
  mapping: TableMapping | null
  settled: readonly QuestionKind[]
  savedMapping: string | null
  counts: ImportCounts | null
  recorded: string | null
  undone: TakeBackTotals | null
  failure: string | null
  isStopped: boolean
  touchedAt: number
}

/** After so long without a step somebody else may take the desk. */
const ABANDONED_MS = 30 * 60 * 1000

const isBusy = ({ state }: Work): boolean =>
  state === "checking" || state === "recording" || state === "taking-back"
const isOver = ({ state }: Work): boolean =>
  state === "done" || state === "cancelled" || state === "undone" || state === "failed"

export class ImportDesk {
  private work: Work | null = null
  private job: Promise<void> = Promise.resolve()

  constructor(
    private readonly place: ImportPlace,
    private readonly onFailure: (cause: unknown) => void,
  ) {}

  get current(): Work | null {
    return this.work
  }

  /** Why nobody else may begin now; null when the desk is free. */
  taken(person: Person): string | null {
    const { work } = this
    if (!work || isOver(work)) return null
    if (isBusy(work))
      return say("{name} is importing {file}; one import at a time", {
        name: work.by.name,
        file: work.file,
      })
    const isAbandoned = this.place.nowMs() - work.touchedAt > ABANDONED_MS
    if (work.by.id === person.id || isAbandoned) return null
    return say("{name} is about to import {file}; one import at a time", {
      name: work.by.name,
      file: work.file,
    })
  }

  /** Takes a file as it arrives and looks at its beginning. */
  async receive(
    arriving: NodeJS.ReadableStream,
    {
      name,
      by,
      most,
      saved,
    }: {
      readonly name: string
      readonly by: Person
      readonly most: number
      readonly saved: readonly TableMapping[]
    },
  ): Promise<Work> {
    await this.clear()
    const id = crypto.randomUUID()
    const folder = this.place.record.scratchFolder
    await sweep(folder, { nowMs: this.place.nowMs() })
    const file = await received(arriving, { folder, id, most })
    return this.open({ id, name, by, file, saved })
  }

  private async open({
    id,
    name,
    by,
    file,
    saved,
  }: {
    readonly id: string
    readonly name: string
    readonly by: Person
    readonly file: ScratchFile
    readonly saved: readonly TableMapping[]
  }): Promise<Work> {
    const table = await TableImport.of({ id, name, file }, this.place)
    const { headings } = table.sniffed
    const fitting = saved.findLast((mapping) => fits(mapping.columns, headings))
    const guess = guessedMapping(table.sniffed)
    const work: Work = {
      ...this.begun({ id, file: name, by, table, state: "chosen" }),
      // A mapping has a title before a person gives it one.
      mapping: fitting ?? { ...guess, id: guess.id || id, title: guess.title || name },
      settled: fitting ? ["date-order", "decimal-sign"] : [],
      savedMapping: fitting?.title ?? null,
    }
    this.work = work
    return work
  }

  questionsOf(work: Work): readonly Question[] {
    const { table, mapping, settled } = work
    return table && mapping ? questions(table.sniffed, mapping, { settled }) : []
  }

  /** Reads the whole file in the background. */
  check(work: Work): void {
    const { table, mapping } = work
    if (!table || !mapping) return
    this.inBackground(work, "checking", async (job) => {
      const check = await table.check(mapping, job)
      work.state = check ? "checked" : "chosen"
    })
  }

  run(work: Work, author: string): void {
    const { table } = work
    if (!table) return
    this.inBackground(work, "recording", async (job) => {
      const onTakingBack = () => {
        work.state = "taking-back"
        work.progress = null
      }
      const { id, state, counts } = await table.run(author, { ...job, onTakingBack })
      // What the file held need not lie about once it is recorded.
      await table.release()
      work.recorded = id
      work.counts = counts
      work.state = state
    })
  }

  /** Takes a recorded import back in the background. */
  async undo(recorded: RecordedImport, by: Person): Promise<Work> {
    await this.clear()
    const { id, file } = recorded
    const work = this.begun({ id, file, by, table: null, state: "taking-back" })
    this.work = work
    const reason = say("the import of {file} was taken back", { file })
    this.inBackground(work, "taking-back", async ({ onProgress }) => {
      work.undone = await takenBack(this.place, recorded, {
        author: by.id,
        reason,
        state: "undone",
        onProgress,
      })
      work.state = "undone"
    })
    return work
  }

  /** Imports the program was in the middle of when it ended are taken back before anything else. */
  async recover(): Promise<void> {
    await recoverImports(this.place)
    await sweep(this.place.record.scratchFolder, { nowMs: this.place.nowMs(), olderThanMs: 0 })
  }

  stop(work: Work): void {
    work.isStopped = true
  }

  /** Waits for what is under way and removes what it left. */
  async clear(): Promise<void> {
    const { work } = this
    if (!work) return
    if (isBusy(work)) this.stop(work)
    await this.job
    await work.table?.dispose()
    if (this.work === work) this.work = null
  }

  private inBackground(
    work: Work,
    state: WorkState,
    task: (job: {
      readonly isStopped: () => boolean
      readonly onProgress: (progress: Progress) => void
    }) => Promise<void>,
  ): void {
    work.state = state
    work.progress = null
    work.failure = null
    work.isStopped = false
    const job = {
      isStopped: () => work.isStopped,
      onProgress: (progress: Progress) => {
        work.progress = progress
      },
    }
    this.job = task(job).catch((cause: unknown) => {
      work.state = "failed"
      work.failure = say("it failed on our side; nothing of it was recorded")
      this.onFailure(cause)
    })
  }

  private begun(begun: Pick<Work, "id" | "file" | "by" | "table" | "state">): Work {
    return {
      ...begun,
      progress: null,
      mapping: null,
      settled: [],
      savedMapping: null,
      counts: null,
      recorded: null,
      undone: null,
      failure: null,
      isStopped: false,
      touchedAt: this.place.nowMs(),
    }
  }
}

/** Whether a saved mapping speaks of this table: all its columns are there, and no more are than it knows. */
function fits(columns: readonly MappedColumn[], headings: readonly string[]): boolean {
  return (
    columns.length > 0 &&
    columns.every(({ heading }) => headings.includes(heading)) &&
    headings.every((heading) => columns.some((column) => column.heading === heading))
  )
}
