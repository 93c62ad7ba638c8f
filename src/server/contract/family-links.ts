import { z } from "zod"
import { LANGUAGES, say } from "../../engine/say.js"
import { PAPERS } from "../../report/document.js"
import type { ShownDocument } from "./documents.js"

const wholeDays = () => say("a whole number of days from 1 to 366")

/** A link by which a family reads its page without an account. */
export const newLinkBody = z.object({
  language: z.enum(LANGUAGES, { error: () => say("one of {list}", { list: LANGUAGES.join(", ") }) }),
  days: z.int({ error: wholeDays }).min(1, { error: wholeDays }).max(366, { error: wholeDays }).default(90),
})

export const linkParams = z.object({ id: z.string(), linkId: z.string().max(40) })

export const linksAnswer = z.object({
  links: z.array(
    z.object({
      id: z.string(),
      /** Path of the page; the address before it is this server's own. Null once it does not open. */
      path: z.string().nullable(),
      /** The whole address as families reach it. */
      url: z.string().nullable(),
      language: z.enum(LANGUAGES),
      createdAt: z.iso.datetime(),
      createdBy: z.string(),
      expiresAt: z.iso.datetime(),
      state: z.enum(["open", "expired", "revoked", "locked"]),
      openedCount: z.int(),
      lastOpenedAt: z.iso.datetime().nullable(),
    }),
  ),
})

export const sharedParams = z.object({ token: z.string().max(100) })

/** What opens a link: the child's day of birth, which stands in no address. */
export const openLinkBody = z.object({
  born: z.iso.date({ error: () => say("a day of the calendar written YYYY-MM-DD") }),
  language: z.enum(LANGUAGES).optional(),
  on: z
    .enum(["screen", "phone"], { error: () => say("one of screen, phone") })
    .default("screen")
    .describe("What it is read on: for a phone figures are drawn narrow"),
  paper: z.enum(PAPERS).default("a4"),
})

export const sharedAnswer = z.object({
  document: z.unknown() as z.ZodType<ShownDocument>,
  /** The language the link was made in. */
  language: z.enum(LANGUAGES),
})

export type NewLinkBody = z.input<typeof newLinkBody>
export type LinksAnswer = z.infer<typeof linksAnswer>
export type OpenLinkBody = z.input<typeof openLinkBody>
export type SharedAnswer = z.infer<typeof sharedAnswer>
