/** What the pages and the server both know of the Inbox. */
export const INBOX_STATES = ["waiting", "taken", "set-aside"] as const
export type InboxState = (typeof INBOX_STATES)[number]

/** Why an object waits. */
export const INBOX_WHYS = [
  "no-child",
  "near-child",
  "contradiction",
  "rules",
  "confirm",
  "other-content",
  "undone",
] as const
export type InboxWhy = (typeof INBOX_WHYS)[number]

export const LARGEST_INBOX_FILE_BYTES = 50_000_000
