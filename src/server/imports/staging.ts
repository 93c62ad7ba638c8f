import { chmodSync } from "node:fs"
import Database from "better-sqlite3"
import type { Identity } from "../../interop/intake/fragment.js"
import type { RowReading } from "../../interop/table/table-types.js"
import type { Draft } from "../../record/index.js"

/** `near` waits for a person; `left` was left out by one. */
export type WhoState = "same" | "new" | "near" | "refused" | "left"

/** The rows of a file that say they are of one child. */
export interface StagedGroup {
  readonly id: number
  readonly identity: Identity
  readonly firstLine: number
  readonly rows: number
  readonly state: WhoState
  /** Id of the child its rows are recorded under. */
  readonly target: string | null
}

export interface PlanCounts {
  readonly rows: number
  readonly visitsNew: number
  readonly visitsAddedTo: number
  readonly glasses: number
  readonly treatments: number
}

/** An entry as it will be recorded, but for who records it and when. */
export type PlannedEntry = Pick<Draft, "kind" | "body" | "id" | "supersedes" | "reason">

export interface StagedPlan {
  readonly child: string
  readonly isNew: boolean
  readonly entries: readonly PlannedEntry[]
}

export type Staging = ReturnType<typeof openStaging>

/** A row more than these cannot be of one child; what a child may have is a fraction of it. */
export const MOST_ROWS_OF_CHILD = 2000

const MOST_LEFT_OUT = 10_000

const SHAPE = `
  CREATE TABLE groups (id INTEGER PRIMARY KEY, key TEXT UNIQUE NOT NULL, identity TEXT NOT NULL, first_line INTEGER NOT NULL,
    rows INTEGER NOT NULL DEFAULT 0, state TEXT NOT NULL DEFAULT 'refused', target TEXT);
  CREATE INDEX groups_by_target ON groups (target);
  CREATE TABLE rows (id INTEGER PRIMARY KEY, grp INTEGER NOT NULL, reading TEXT NOT NULL);
  CREATE TABLE plans (place INTEGER PRIMARY KEY, child TEXT UNIQUE NOT NULL, is_new INTEGER NOT NULL, entries TEXT NOT NULL,
    rows INTEGER NOT NULL, visits_new INTEGER NOT NULL, visits_added_to INTEGER NOT NULL, glasses INTEGER NOT NULL,
    treatments INTEGER NOT NULL);`

/**
 * What a file says, sorted by child in a database of its own, so that neither its size nor the order of its rows matters
 * to memory. Nothing of it lasts: it is not flushed, and thrown away with the file.
 */
export function openStaging(path: string) {
  const database = new Database(path)
  chmodSync(path, 0o600)
  database.pragma("journal_mode = OFF")
  database.pragma("synchronous = OFF")
  database.pragma("temp_store = MEMORY")
  database.exec(SHAPE)
  const insertGroup = database.prepare("INSERT INTO groups (key, identity, first_line) VALUES (?, ?, ?)")
  const groupByKey = database.prepare("SELECT * FROM groups WHERE key = ?")
  const setIdentity = database.prepare("UPDATE groups SET identity = ? WHERE id = ?")
  const insertRow = database.prepare("INSERT INTO rows (grp, reading) VALUES (?, ?)")
  const setWho = database.prepare("UPDATE groups SET state = ?, target = ? WHERE id = ?")
  const groupById = database.prepare("SELECT * FROM groups WHERE id = ?")
  const someGroups = database.prepare("SELECT * FROM groups WHERE id > ? ORDER BY id LIMIT ?")
  const groupsOfTarget = database.prepare("SELECT * FROM groups WHERE target = ? ORDER BY id")
  const firstOfTarget = database.prepare("SELECT min(id) AS first FROM groups WHERE target = ?")
  const readings = database.prepare("SELECT reading FROM rows WHERE grp = ? ORDER BY id LIMIT ?")
  const firstRows = database.prepare("SELECT grp, reading FROM rows ORDER BY id LIMIT ?")
  const setPlan = database.prepare("INSERT OR REPLACE INTO plans VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)")
  const dropPlan = database.prepare("DELETE FROM plans WHERE child = ?")
  const somePlans = database.prepare(
    "SELECT place, child, is_new, entries FROM plans WHERE place > ? ORDER BY place LIMIT ?",
  )
  const someLeftOut = database.prepare(
    "SELECT * FROM groups WHERE state IN ('near', 'left') ORDER BY id LIMIT ?",
  )
  let isOpen = false
  const begin = () => {
    if (!isOpen) database.exec("BEGIN")
    isOpen = true
  }
  return {
    begin,
    commit: () => {
      if (isOpen) database.exec("COMMIT")
      isOpen = false
    },
    groupByKey: (key: string): StagedGroup | null => stagedGroup(groupByKey.get(key)),
    addGroup: (key: string, identity: Identity, line: number): StagedGroup => {
      const id = Number(insertGroup.run(key, JSON.stringify(identity), line).lastInsertRowid)
      return { id, identity, firstLine: line, rows: 0, state: "refused", target: null }
    },
    setIdentity: (id: number, identity: Identity) => setIdentity.run(JSON.stringify(identity), id),
    addRow: (group: number, reading: RowReading) => insertRow.run(group, JSON.stringify(reading)),
    /** To be called once all rows are there. */
    sorted: () => {
      database.exec("CREATE INDEX rows_by_group ON rows (grp)")
      database.exec("UPDATE groups SET rows = (SELECT count(*) FROM rows WHERE grp = groups.id)")
    },
    setWho: (id: number, state: WhoState, target: string | null) => setWho.run(state, target, id),
    group: (id: number): StagedGroup | null => stagedGroup(groupById.get(id)),
    /** Groups that are not taken because nobody decided whose they are, or somebody left them out. */
    leftOut: (): readonly StagedGroup[] =>
      someLeftOut.all(MOST_LEFT_OUT).flatMap((row) => stagedGroup(row) ?? []),
    /** Groups after one, in the order of the file. */
    groupsAfter: (id: number, most: number): readonly StagedGroup[] =>
      someGroups.all(id, most).flatMap((row) => stagedGroup(row) ?? []),
    /** Whether a group is the first one of a child. */
    isFirstOf: (child: string, group: number): boolean =>
      (firstOfTarget.get(child) as { readonly first: number | null }).first === group,
    groupsOf: (child: string): readonly StagedGroup[] =>
      groupsOfTarget.all(child).flatMap((row) => stagedGroup(row) ?? []),
    readingsOf: (group: number): readonly RowReading[] =>
      readings
        .all(group, MOST_ROWS_OF_CHILD + 1)
        .map((row) => JSON.parse((row as { reading: string }).reading)),
    firstRows: (most: number): readonly { readonly group: number; readonly reading: RowReading }[] =>
      firstRows.all(most).map((row) => {
        const { grp, reading } = row as { grp: number; reading: string }
        return { group: grp, reading: JSON.parse(reading) }
      }),
    setPlan: (place: number, plan: StagedPlan, counts: PlanCounts) =>
      setPlan.run(
        place,
        plan.child,
        plan.isNew ? 1 : 0,
        JSON.stringify(plan.entries),
        counts.rows,
        counts.visitsNew,
        counts.visitsAddedTo,
        counts.glasses,
        counts.treatments,
      ),
    dropPlan: (child: string) => dropPlan.run(child),
    plansAfter: (place: number, most: number): readonly (StagedPlan & { readonly place: number })[] =>
      somePlans.all(place, most).map((row) => {
        const plan = row as { place: number; child: string; is_new: number; entries: string }
        return {
          place: plan.place,
          child: plan.child,
          isNew: plan.is_new === 1,
          entries: JSON.parse(plan.entries),
        }
      }),
    /** How many groups and rows are in each state. */
    who: (): readonly { readonly state: WhoState; readonly groups: number; readonly rows: number }[] =>
      database
        .prepare("SELECT state, count(*) AS groups, sum(rows) AS rows FROM groups GROUP BY state")
        .all() as never,
    planned: (): PlanTotals =>
      database
        .prepare(
          `SELECT count(*) AS children, coalesce(sum(is_new AND entries <> '[]'), 0) AS childrenNew, coalesce(sum(entries <> '[]'), 0) AS childrenChanged,
             coalesce(sum(visits_new), 0) AS visitsNew, coalesce(sum(visits_added_to), 0) AS visitsAddedTo,
             coalesce(sum(glasses), 0) AS glasses, coalesce(sum(treatments), 0) AS treatments FROM plans`,
        )
        .get() as PlanTotals,
    close: (): void => {
      database.close()
    },
  }
}

export interface PlanTotals extends Omit<PlanCounts, "rows"> {
  readonly children: number
  readonly childrenNew: number
  /** Children of whom anything is to be recorded. */
  readonly childrenChanged: number
}

function stagedGroup(row: unknown): StagedGroup | null {
  if (row === undefined) return null
  const { id, identity, first_line, rows, state, target } = row as {
    readonly id: number
    readonly identity: string
    readonly first_line: number
    readonly rows: number
    readonly state: WhoState
    readonly target: string | null
  }
  return { id, identity: JSON.parse(identity), firstLine: first_line, rows, state, target }
}
