import { z } from "zod"
import { say } from "../../engine/say.js"
import { PAPERS } from "../../report/document.js"

export const ARCHIVE_STATES = [
  "running",
  "ready",
  "fetched",
  "cancelled",
  "failed",
  "interrupted",
  "removed",
  "expired",
] as const
export type ArchiveState = (typeof ARCHIVE_STATES)[number]

export const ARCHIVE_PHASES = ["record", "files", "courses", "tables", "papers"] as const
export type ArchivePhase = (typeof ARCHIVE_PHASES)[number]

const archive = z.object({
  id: z.uuid(),
  startedAt: z.iso.datetime(),
  by: z.string().describe("Name of the person who asked for it"),
  withPapers: z.boolean(),
  state: z.enum(ARCHIVE_STATES),
  progress: z
    .object({ phase: z.enum(ARCHIVE_PHASES), done: z.int(), total: z.int() })
    .nullable()
    .describe("Of one that is being made"),
  bytes: z.int().nullable(),
  head: z.string().nullable().describe("SHA-256 of the last entry in it"),
  until: z.iso.datetime().nullable().describe("When one that is ready is removed by itself"),
  problems: z.array(z.string()).describe("Why it failed, what was damaged, which papers could not be made"),
})

export const archivesAnswer = z.object({
  archives: z.array(archive).describe("The last ones, the newest first"),
})

export const newArchiveBody = z.object({
  withPapers: z
    .boolean({ error: () => say("yes or no") })
    .describe("Whether the full record of each child is set as PDF, which takes long"),
  paper: z.enum(PAPERS, { error: () => say("one of {list}", { list: PAPERS.join(", ") }) }).default("a4"),
  /** A session that was left open must not be enough to carry the practice away. */
  password: z
    .string({ error: () => say("the password in use") })
    .min(1, { error: () => say("the password in use") })
    .max(256),
})

export const archiveParams = z.object({ archiveId: z.uuid({ error: () => say("a UUID") }) })

/** Everything out: the archive of the practice. */
export const leaveApi = {
  archives: { method: "GET", url: "/api/archives", answer: archivesAnswer },
  /** Begins an archive; one at a time. */
  makeArchive: { method: "POST", url: "/api/archives", body: newArchiveBody, answer: archivesAnswer },
  /** Stops one that is being made, or removes one that is ready. */
  removeArchive: {
    method: "DELETE",
    url: "/api/archives/:archiveId",
    params: archiveParams,
    answer: archivesAnswer,
  },
  /** The zip; once it was fetched whole it is removed. */
  archiveFile: { method: "GET", url: "/api/archives/:archiveId/file", params: archiveParams },
} as const

export type ArchivesAnswer = z.infer<typeof archivesAnswer>
export type ShownArchive = z.infer<typeof archive>
