import type { Kysely } from "kysely"
import { sql } from "kysely"
import type { TableMapping } from "../engine/practice-rules.js"
import { appendEntries, type Saved } from "./entries.js"
import type { Draft } from "./entry.js"
import type { Tables } from "./tables.js"
import {
  type PartOfImport,
  partsOfImport,
  type TakeBackEffect,
  takeBackEffect,
  takeBackSome,
} from "./take-back.js"

/**
 * `running` while rows are being recorded and while a cancelled import is taken back; `interrupted` when the program
 * ended in between and it was taken back at the next start.
 */
export const IMPORT_STATES = ["running", "done", "cancelled", "undone", "interrupted"] as const
export type ImportState = (typeof IMPORT_STATES)[number]

/** What an import did. */
export interface ImportCounts {
  /** Rows of figures in the file. */
  readonly rows: number
  readonly childrenNew: number
  readonly childrenKnown: number
  readonly visitsNew: number
  readonly visitsAddedTo: number
  readonly treatments: number
  /** Rows and figures that were not taken. */
  readonly skipped: number
}

export interface RecordedImport {
  readonly id: string
  readonly file: string
  readonly sha256: string
  readonly mapping: TableMapping
  /** Id of a person. */
  readonly author: string
  readonly startedAt: string
  readonly changedAt: string
  readonly state: ImportState
  readonly counts: ImportCounts
  /** Names of children left as they are, because a person recorded more of them since. */
  readonly leftChildren: readonly string[]
}

export type NewImport = Pick<RecordedImport, "id" | "file" | "sha256" | "mapping" | "author" | "startedAt">

const NOTHING: ImportCounts = {
  rows: 0,
  childrenNew: 0,
  childrenKnown: 0,
  visitsNew: 0,
  visitsAddedTo: 0,
  treatments: 0,
  skipped: 0,
}

/**
 * Imports of whole files. What an import recorded is known by its spans of the chain, which are written in the same
 * transaction as the entries: whenever the program ends, what has to be taken back is exactly known.
 */
export function imports(queries: Kysely<Tables>, practice: string) {
  const spanOf = (id: string, { takesBack }: { readonly takesBack: boolean }): Also => {
    return async (transaction, span) => {
      if (!span) return
      await transaction
        .insertInto("import_spans")
        .values({
          practice,
          import: id,
          first_position: span.first,
          last_position: span.last,
          takes_back: takesBack ? 1 : 0,
        })
        .execute()
    }
  }
  const one = async (id: string): Promise<RecordedImport | null> => {
    const row = await queries
      .selectFrom("imports")
      .selectAll()
      .where("practice", "=", practice)
      .where("id", "=", id)
      .executeTakeFirst()
    return row ? recordedImport(row) : null
  }
  return {
    one,

    start: async (begun: NewImport): Promise<void> => {
      await queries
        .insertInto("imports")
        .values({
          practice,
          id: begun.id,
          file: begun.file,
          sha256: begun.sha256,
          mapping: JSON.stringify(begun.mapping),
          author: begun.author,
          started_at: begun.startedAt,
          changed_at: begun.startedAt,
          state: "running",
          counts: JSON.stringify(NOTHING),
          left_children: "[]",
        })
        .execute()
    },

    /** Records entries as a part of a running import: all of them or none. */
    append: (id: string, drafts: readonly Draft[]): Promise<Saved> =>
      appendEntries(queries, practice, drafts, spanOf(id, { takesBack: false })),

    change: async ({
      id,
      ...to
    }: {
      readonly id: string
      readonly state: ImportState
      readonly at: string
      readonly counts?: ImportCounts | undefined
      readonly leftChildren?: readonly string[] | undefined
    }): Promise<void> => {
      await queries
        .updateTable("imports")
        .set({
          state: to.state,
          changed_at: to.at,
          ...(to.counts ? { counts: JSON.stringify(to.counts) } : {}),
          ...(to.leftChildren ? { left_children: JSON.stringify(to.leftChildren) } : {}),
        })
        .where("practice", "=", practice)
        .where("id", "=", id)
        .execute()
    },

    /** One page of the imports, the latest first; `search` takes a part of a file's name. */
    list: async ({
      search = "",
      page,
      pageSize,
    }: {
      readonly search?: string | undefined
      /** From 1. */
      readonly page: number
      readonly pageSize: number
    }): Promise<{ readonly total: number; readonly imports: readonly RecordedImport[] }> => {
      const wanted = `%${search
        .trim()
        .toLowerCase()
        .replace(/[\\%_]/g, "\\$&")}%`
      const matching = queries
        .selectFrom("imports")
        .where("practice", "=", practice)
        .where(sql<boolean>`lower(file) LIKE ${wanted} ESCAPE '\\'`)
      const { total } = await matching
        .select(({ fn }) => fn.countAll<number | string>().as("total"))
        .executeTakeFirstOrThrow()
      const rows = await matching
        .selectAll()
        .orderBy("started_at", "desc")
        .orderBy("id")
        .limit(pageSize)
        .offset((page - 1) * pageSize)
        .execute()
      return { total: Number(total), imports: rows.map(recordedImport) }
    },

    /** Imports that the program was in the middle of when it ended. */
    unfinished: async (): Promise<readonly RecordedImport[]> => {
      const rows = await queries
        .selectFrom("imports")
        .selectAll()
        .where("practice", "=", practice)
        .where("state", "=", "running")
        .orderBy("started_at", "desc")
        .execute()
      return rows.map(recordedImport)
    },

    /** In how many parts the import was recorded: so many steps take it back. */
    parts: (id: string): Promise<number> => partsOfImport(queries, practice, id),

    /** What taking back a part of the import would do. */
    takeBackEffect: (part: PartOfImport): Promise<TakeBackEffect> => takeBackEffect(queries, practice, part),

    /** Takes a part of the import back, in one transaction. */
    takeBack: (
      part: PartOfImport & { readonly author: string; readonly at: string; readonly reason: string },
    ): Promise<TakeBackEffect> => takeBackSome(queries, practice, part, spanOf(part.id, { takesBack: true })),
  }
}

type Also = NonNullable<Parameters<typeof appendEntries>[3]>

function recordedImport(row: Tables["imports"]): RecordedImport {
  return {
    id: row.id,
    file: row.file,
    sha256: row.sha256,
    mapping: JSON.parse(row.mapping),
    author: row.author,
    startedAt: row.started_at,
    changedAt: row.changed_at,
    state: row.state as ImportState,
    counts: JSON.parse(row.counts),
    leftChildren: JSON.parse(row.left_children),
  }
}
