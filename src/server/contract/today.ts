import { z } from "zod"
import { say } from "../../engine/say.js"
import { OWED_GROUPS, ROLES } from "../../engine/today/owed.js"

const day = z.iso.date()

/** How many rows of each group are shown until one group is asked for. */
export const FIRST_ROWS = 10
export const GROUP_PAGE = 100

export const todayQuery = z.object({
  role: z.enum(ROLES, { error: () => say("one of {list}", { list: ROLES.join(", ") }) }).optional(),
  search: z
    .string()
    .max(200, { error: () => say("at most {most} characters", { most: 200 }) })
    .default(""),
  group: z
    .enum(OWED_GROUPS, { error: () => say("one of {list}", { list: OWED_GROUPS.join(", ") }) })
    .optional(),
  page: z.coerce
    .number({ error: () => say("a page number from 1") })
    .pipe(z.int().min(1).max(10_000))
    .default(1),
})

const owedRow = z.object({
  child: z.object({ id: z.string(), name: z.string(), number: z.string().nullable(), born: day }),
  group: z.enum(OWED_GROUPS),
  what: z.string(),
  why: z.string(),
  since: day,
  due: day.nullable(),
  closes: day.nullable(),
  state: z.enum(["open", "overdue"]),
  role: z.enum(ROLES),
  action: z.enum(["visit", "consent", "supply", "choices", "safety", "explain"]),
})

export const todayAnswer = z.object({
  today: day,
  /** Children read so far: after a start or at midnight the list fills while it is shown. */
  read: z.int(),
  total: z.int(),
  things: z.int(),
  children: z.int().describe("Children to whom anything is owed"),
  groups: z.array(z.object({ group: z.enum(OWED_GROUPS), count: z.int(), rows: z.array(owedRow) })),
})

export type TodayAnswer = z.infer<typeof todayAnswer>
export type OwedRow = z.infer<typeof owedRow>
