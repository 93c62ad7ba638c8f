import { createReadStream } from "node:fs"
import { rm } from "node:fs/promises"
import type { CalendarDate, Visit } from "../../engine/course.js"
import type { TableMapping } from "../../engine/practice-rules.js"
import { say } from "../../engine/say.js"
import { SNIFFED_BYTES, sniff } from "../../interop/table/sniff.js"
import { tableRows } from "../../interop/table/table-rows.js"
import { type Sniffed, TableFault } from "../../interop/table/table-types.js"
import { isWorkbook } from "../../interop/table/xlsx/sheet-rows.js"
import type { ImportCounts, ImportState, PracticeRecord } from "../../record/index.js"
import { type Planning, planAll, planSome } from "./plan.js"
import { type ImportProblem, type ProblemList, Problems } from "./problem.js"
import { type Stoppable, stageRows } from "./read-rows.js"
import { recordPlans } from "./record-plans.js"
import { beginningOf, type ScratchFile } from "./scratch.js"
import { openStaging, type PlanTotals, type Staging, type WhoState } from "./staging.js"
import { takeBack } from "./take-back.js"
import { findWho, leftOut, type NearMatch, newChildOf } from "./who.js"
import { type WorkbookRows, workbookRows } from "./workbook.js"

/** What an import needs of its surroundings; the server and the command line each have their own. */
export interface ImportPlace {
  readonly record: PracticeRecord
  readonly today: () => CalendarDate
  readonly nowMs: () => number
  readonly oneAtATime: <T>(task: () => Promise<T>) => Promise<T>
}

export interface Progress {
  readonly done: number
  readonly total: number
}

/** What the import will do, and what it will not. */
export interface Check extends PlanTotals {
  readonly rows: number
  readonly problems: ProblemList
  readonly near: readonly NearMatch[]
  readonly nearCount: number
  readonly who: readonly { readonly state: WhoState; readonly groups: number; readonly rows: number }[]
  /** The first rows as they will be recorded. */
  readonly preview: readonly PreviewRow[]
  /** Why the file can't be read to its end; nothing may then be recorded. */
  readonly fault: string | null
}

export interface PreviewRow {
  readonly line: number
  readonly who: string
  readonly state: WhoState
  readonly visits: readonly Visit[]
}

export interface Finished {
  /** Null when there was nothing to record. */
  readonly id: string | null
  readonly state: Extract<ImportState, "done" | "cancelled">
  readonly counts: ImportCounts
}

const PREVIEW_ROWS = 20

type Job = Stoppable & { readonly onProgress: (progress: Progress) => void }

/** One file on its way into the record: looked at, checked by a mapping, recorded. */
export class TableImport {
  private staging: Staging | null = null
  private last: Check | null = null
  private lastNotTaken: readonly ImportProblem[] = []
  private checked: {
    readonly planning: Planning
    readonly check: Omit<Check, keyof PlanTotals | "who" | "near" | "nearCount" | "problems" | "preview">
    readonly mapping: TableMapping
    readonly head: string
    readonly knownThen: ReadonlySet<string>
    near: NearMatch[]
    nearCount: number
  } | null = null

  private constructor(
    readonly id: string,
    readonly name: string,
    readonly sniffed: Sniffed,
    private readonly file: ScratchFile,
    private readonly place: ImportPlace,
    private readonly workbook: WorkbookRows | null,
  ) {}

  /** Looks at the beginning of the file. */
  static async of(
    { id, name, file }: { readonly id: string; readonly name: string; readonly file: ScratchFile },
    place: ImportPlace,
  ): Promise<TableImport> {
    const beginning = await beginningOf(file.path, SNIFFED_BYTES)
    if (isWorkbook(beginning)) {
      const workbook = await workbookRows(file)
      return new TableImport(id, name, workbook.sniffed, file, place, workbook)
    }
    return new TableImport(id, name, sniff(beginning), file, place, null)
  }

  /** Whether the file is still there: it goes once it is recorded. */
  isHere = true

  get bytes(): number {
    return this.file.bytes
  }

  /** Reads the whole file by the mapping and works out what it adds to the record. Null when it was stopped. */
  async check(mapping: TableMapping, job: Job): Promise<Check | null> {
    const { record } = this.place
    await this.forget()
    const staging = openStaging(this.stagingPath)
    this.staging = staging
    const problems = new Problems()
    const { headings, hasHeadings } = this.sniffed
    const source = this.rows(mapping, (done) => job.onProgress({ done, total: this.file.bytes }))
    const staged = { rows: source, headings, hasHeadings, mapping, staging, problems, stop: job }
    const { rows, fault } = await stageRows(staged)
    if (job.isStopped()) return null
    const head = await record.head()
    const known = await record.everyChild()
    const planning: Planning = {
      record,
      staging,
      problems,
      today: this.place.today(),
      file: this.name,
      sha256: this.file.sha256,
    }
    const { near, nearCount } =
      fault === null ? findWho({ known, staging, problems }) : { near: [], nearCount: 0 }
    const groups = staging.who().reduce((sum, state) => sum + state.groups, 0)
    if (fault === null)
      await planAll(planning, {
        stop: job,
        onProgress: (done) => job.onProgress({ done, total: groups }),
      })
    if (job.isStopped()) return null
    this.checked = {
      planning,
      mapping,
      head,
      knownThen: new Set(known.map(({ id }) => id)),
      near: [...near],
      nearCount,
      check: { rows, fault },
    }
    return this.outcome()
  }

  /** What the last check found, with what was decided since; null before there was one. */
  outcome(): Check | null {
    if (!this.checked || !this.staging) return this.last
    const { check, planning, near, nearCount } = this.checked
    return {
      ...check,
      ...this.staging.planned(),
      who: this.staging.who(),
      preview: previewOf(this.staging),
      problems: planning.problems.list(),
      near,
      nearCount,
    }
  }

  /** A person says whose rows are: a child's, another child's that is not recorded yet, or to be left out. */
  async settle(
    group: number,
    as: "new" | "leave" | { readonly child: string },
  ): Promise<"settled" | "no-such"> {
    const { checked, staging } = this
    const staged = staging?.group(group)
    const near = checked?.near.find((match) => match.group === group)
    if (!checked || !staging || !staged || !near) return "no-such"
    if (as === "leave") staging.setWho(group, "left", null)
    else if (as === "new") {
      const fresh = newChildOf(staged.identity)
      if (!fresh) return "no-such"
      staging.setWho(group, "new", fresh.id)
      await planSome(checked.planning, [fresh.id])
    } else {
      const candidate = near.candidates.find(({ child }) => child.id === as.child)
      if (!candidate) return "no-such"
      staging.setWho(group, candidate.isRecorded ? "same" : "new", as.child)
      await planSome(checked.planning, [as.child])
    }
    checked.near = checked.near.filter((match) => match.group !== group)
    checked.nearCount -= 1
    return "settled"
  }

  /** Records everything that is sound, as one import. Stopped half-way, all of it is taken back. */
  async run(author: string, job: Job & { readonly onTakingBack?: () => void }): Promise<Finished> {
    const { checked, staging, place } = this
    if (!checked || !staging) throw new RangeError("a file is checked before it is recorded")
    const counts = this.counts()
    const { children, childrenChanged } = staging.planned()
    if (childrenChanged === 0) return { id: null, state: "done", counts }
    const { record } = place
    const now = () => new Date(place.nowMs()).toISOString()
    const { id, name: file } = this
    const { mapping, head, knownThen, planning } = checked
    await record.imports.start({ id, file, sha256: this.file.sha256, mapping, author, startedAt: now() })
    const finish = (state: ImportState, leftChildren: readonly string[] = []) =>
      record.imports.change({ id, state, at: now(), counts: this.counts(), leftChildren })
    const undo = async () => {
      job.onTakingBack?.()
      const total = await record.imports.parts(id)
      const { left } = await takeBack(place, {
        id,
        author,
        at: now(),
        reason: say("the import of {file} was cancelled", { file }),
        onProgress: (done) => job.onProgress({ done, total }),
      })
      await finish("cancelled", left)
    }
    try {
      const { oneAtATime } = place
      const recording = { ...planning, oneAtATime, id, author, now, head, knownThen }
      await recordPlans(recording, {
        stop: job,
        onProgress: (done) => job.onProgress({ done, total: children }),
      })
    } catch (cause) {
      await undo()
      throw cause
    }
    if (job.isStopped()) {
      await undo()
      return { id, state: "cancelled", counts }
    }
    await finish("done")
    return { id, state: "done", counts: this.counts() }
  }

  /** What is not taken and why, as much of it as is kept. */
  notTaken(): readonly ImportProblem[] {
    return this.checked?.planning.problems.all() ?? this.lastNotTaken
  }

  /** Removes the file, and keeps what was found for whoever still looks at it. */
  async release(): Promise<void> {
    const { checked, staging } = this
    if (checked && staging)
      for (const group of staging.leftOut()) checked.planning.problems.add(leftOut(group))
    this.last = this.outcome()
    this.lastNotTaken = this.notTaken()
    await this.dispose()
  }

  /** Removes the file and what was read from it. */
  async dispose(): Promise<void> {
    this.isHere = false
    await this.forget()
    await rm(this.file.path, { force: true })
  }

  private counts(): ImportCounts {
    const { checked, staging } = this
    if (!checked || !staging) throw new RangeError("a file is checked before it is counted")
    const {
      children: _,
      childrenChanged,
      childrenNew,
      visitsNew,
      visitsAddedTo,
      treatments,
    } = staging.planned()
    const left = staging
      .who()
      .filter(({ state }) => state === "near" || state === "left")
      .reduce((sum, { rows }) => sum + rows, 0)
    return {
      rows: checked.check.rows,
      childrenNew,
      childrenKnown: childrenChanged - childrenNew,
      visitsNew,
      visitsAddedTo,
      treatments,
      skipped: checked.planning.problems.list().count + left,
    }
  }

  private rows(mapping: TableMapping, onBytes: (bytes: number) => void) {
    if (this.workbook) return this.workbook.rows(mapping.decimalSign)
    const { encoding, delimiter } = this.sniffed
    return tableRows(counted(createReadStream(this.file.path), onBytes), { encoding, delimiter })
  }

  private get stagingPath(): string {
    return this.file.path.replace(/\.upload$/, ".staging")
  }

  private async forget(): Promise<void> {
    this.staging?.close()
    this.staging = null
    this.checked = null
    await rm(this.stagingPath, { force: true })
  }
}

async function* counted(
  stream: AsyncIterable<Uint8Array>,
  onBytes: (bytes: number) => void,
): AsyncGenerator<Uint8Array> {
  let bytes = 0
  for await (const part of stream) {
    bytes += part.length
    onBytes(bytes)
    yield part
  }
}

function previewOf(staging: Staging): readonly PreviewRow[] {
  return staging.firstRows(PREVIEW_ROWS).map(({ group, reading }) => {
    const whose = staging.group(group)
    const { name, number } = whose?.identity ?? {}
    return {
      line: reading.line,
      who: name ?? number ?? "",
      state: whose?.state ?? "refused",
      visits: reading.visits,
    }
  })
}

/** What a table can be refused for before a row of it is read. */
export function faultOf(cause: unknown): string | null {
  return cause instanceof TableFault ? cause.message : null
}
