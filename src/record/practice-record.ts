import { join } from "node:path"
import type { Course } from "../engine/course.js"
import type { PracticeRules } from "../engine/practice-rules.js"
import { everythingOf } from "./archive-read.js"
import { type ChainReport, chainHead, verifyChain } from "./chain.js"
import {
  everyChild,
  findChild,
  type ListedChild,
  type ListQuery,
  listChildren,
  rebuildChildren,
} from "./children.js"
import { courseFrom, currentEntriesOfMany } from "./courses.js"
import type { OpenDatabase } from "./driver.js"
import { appendEntries, entriesOf, type Saved } from "./entries.js"
import { currentOf, type Draft, type Entry } from "./entry.js"
import { familyContacts } from "./family-contacts.js"
import {
  addFamilyLink,
  type FamilyLink,
  familyLinksOf,
  familyLinkToken,
  type NewFamilyLink,
  noteFamilyLinkTry,
  openableFamilyLink,
  revokeFamilyLink,
} from "./family-links.js"
import { addFile, fileOf, mediaTypeOf, type NewFile, type StoredFile } from "./files.js"
import { imports } from "./imports.js"
import { inbox } from "./inbox.js"
import { clearLogInAttempts, type LogInAttempts, logInAttempts, setLogInAttempts } from "./log-in-attempts.js"
import { type BottleOfLot, bottlesOfLot } from "./lots.js"
import { outbox } from "./outbox.js"
import { addPerson, type NewPerson, type Person, peopleOf, personByLogIn, setPasswordHash } from "./people.js"
import { practiceRulesFrom } from "./practice-rules.js"
import type { Practice } from "./practices.js"
import { endSession, endSessionsOf, openSession, personOfSession } from "./sessions.js"
import { signingKey } from "./signing-keys.js"
import { tokens } from "./tokens.js"
import { webhooks } from "./webhooks.js"

/** Everything one practice has recorded, and nothing of any other. */
export type PracticeRecord = ReturnType<typeof practiceRecord>

/** The record of one practice in an open, migrated database. */
export function practiceRecord(database: OpenDatabase, practice: Practice) {
  const { queries } = database
  const { id } = practice
  return {
    practice,

    append: (drafts: readonly Draft[]): Promise<Saved> => appendEntries(queries, id, drafts),
    entriesOf: (child: string): Promise<readonly Entry[]> => entriesOf(queries, id, child),
    /** The practice's own papers, oldest first, superseded ones included. */
    papers: (): Promise<readonly Entry[]> => entriesOf(queries, id, id),
    rules: async (): Promise<PracticeRules> => practiceRulesFrom(await entriesOf(queries, id, id)),
    verifyChain: (): Promise<ChainReport> => verifyChain(database, id),
    /** Makes the derived tables anew and returns how many children they hold. */
    rebuild: (): Promise<number> => rebuildChildren(queries, id),

    children: (query: ListQuery) => listChildren(queries, id, query),
    /** Every child by name, for what looks at the whole practice at once. */
    everyChild: (): Promise<readonly ListedChild[]> => everyChild(queries, id),
    /** Ids of the children a search finds. */
    childrenMatching: async (search: string): Promise<ReadonlySet<string>> => {
      const { children } = await listChildren(queries, id, { search, page: 1, pageSize: 1_000_000 })
      return new Set(children.map((child) => child.id))
    },
    /** Hash of the last entry: changes when anything is recorded. */
    head: (): Promise<string> => chainHead(queries, id),
    child: (child: string): Promise<ListedChild | null> => findChild(queries, id, child),
    /**
     * The course of a child of this practice, null when there is no such child. Entries named in `without`, and what
     * took their place since, are left out.
     */
    async courseOf(
      child: string,
      { without = [] }: { readonly without?: readonly (string | undefined)[] } = {},
    ): Promise<Course | null> {
      const entries = await entriesOf(queries, id, child)
      if (entries.length === 0 || child === id) return null
      const left = new Set(without)
      for (const { id: entryId, supersedes } of entries)
        if (supersedes !== null && left.has(supersedes)) left.add(entryId)
      // Of what still holds: an entry left out does not bring back the one it once took the place of.
      const kept = currentOf(entries).filter((entry) => entry.kind === "child" || !left.has(entry.id))
      return kept.some(({ kind }) => kind === "child") ? courseFrom(kept, practice) : null
    },
    /** The entries that still hold of several children at once, by child. */
    currentEntries: (children: readonly string[]): Promise<ReadonlyMap<string, readonly Entry[]>> =>
      currentEntriesOfMany(queries, id, children),
    async coursesOf(children: readonly string[]): Promise<ReadonlyMap<string, Course>> {
      const found = await currentEntriesOfMany(queries, id, children)
      return new Map(
        [...found]
          .filter(([, entries]) => entries.some(({ kind }) => kind === "child"))
          .map(([child, entries]) => [child, courseFrom(entries, practice)]),
      )
    },

    /** Stores a file and answers with the SHA-256 it is known by. */
    addFile: (file: NewFile): Promise<string> => addFile(queries, id, file),
    file: (sha256: string): Promise<StoredFile | null> => fileOf(queries, id, sha256),
    mediaTypeOf: (sha256: string): Promise<string | null> => mediaTypeOf(queries, id, sha256),

    /** What instruments and other programs sent, and what became of it. */
    inbox: inbox(queries, id),
    /** Imports of whole files, each of which can be taken back. */
    imports: imports(queries, id),
    /** The data folder. */
    folder: database.folder,
    /** Everything in order, for an archive. */
    everything: everythingOf(database, id),
    /** Where files that are needed for a while may stand. */
    scratchFolder: join(database.folder, "scratch"),

    /** Messages to families: what is to be sent and what was. */
    outbox: outbox(queries, id),
    /** Keys of other programs. */
    tokens: tokens(queries, id),
    /** Addresses that are told of what is new. */
    webhooks: webhooks(queries, id),
    /** Contacts of the families that have one in force, by child. */
    familyContacts: () => familyContacts(queries, id),

    bottlesOfLot: (lot: string): Promise<readonly BottleOfLot[]> => bottlesOfLot(queries, id, lot),

    addPerson: (person: NewPerson): Promise<void> => addPerson(queries, id, person),
    people: (): Promise<readonly Person[]> => peopleOf(queries, id),
    personByLogIn: (logIn: string) => personByLogIn(queries, id, logIn),
    setPasswordHash: (change: { readonly person: string; readonly passwordHash: string }) =>
      setPasswordHash(queries, id, change),

    logInAttempts: (logIn: string): Promise<LogInAttempts | null> => logInAttempts(queries, id, logIn),
    setLogInAttempts: (change: {
      readonly logIn: string
      readonly attempts: LogInAttempts
      readonly forgetBefore: string
    }) => setLogInAttempts(queries, id, change),
    clearLogInAttempts: (logIn: string) => clearLogInAttempts(queries, id, logIn),

    addFamilyLink: (link: NewFamilyLink): Promise<FamilyLink> => addFamilyLink(queries, id, link),
    familyLinksOf: (child: string): Promise<readonly FamilyLink[]> => familyLinksOf(queries, id, child),
    revokeFamilyLink: (end: { readonly id: string; readonly child: string; readonly nowMs: number }) =>
      revokeFamilyLink(queries, id, end),
    familyLinkToken: (link: string): Promise<string> => familyLinkToken(queries, id, link),
    openableFamilyLink: (opening: { readonly token: string; readonly nowMs: number }) =>
      openableFamilyLink(queries, id, opening),
    noteFamilyLinkTry: (tried: { readonly id: string; readonly isRight: boolean; readonly nowMs: number }) =>
      noteFamilyLinkTry(queries, id, tried),

    /** What moves the days of a table for research; without it nobody finds the way back. */
    researchSecret: (): Promise<string> => signingKey(queries, id, "research"),

    openSession: (opening: { readonly person: string; readonly nowMs: number }) =>
      openSession(queries, id, opening),
    personOfSession: (use: { readonly token: string; readonly nowMs: number }) =>
      personOfSession(queries, id, use),
    endSession: (end: { readonly token: string; readonly nowMs: number }) => endSession(queries, id, end),
    endSessionsOf: (end: { readonly person: string; readonly except?: string; readonly nowMs: number }) =>
      endSessionsOf(queries, id, end),
  }
}
