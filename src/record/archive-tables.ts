/** What becomes of a table in a practice's archive: which part holds it, or why none does. */
export type TableDecision =
  /** Written and read by code of its own. */
  | { readonly kept: "own"; readonly part: string }
  /** Row by row with all its columns; `key` is what they are ordered by, beside the practice. */
  | { readonly kept: "rows"; readonly part: string; readonly key: readonly string[] }
  | { readonly kept: "no"; readonly why: string }

/**
 * A decision for every table of the record. A table without one makes a test fail: whoever adds a table says here
 * whether a practice that leaves would miss it. Tables of rows are put back in this order.
 */
export const ARCHIVE_TABLES: Readonly<Record<string, TableDecision>> = {
  practices: { kept: "own", part: "practice.json" },
  people: { kept: "own", part: "people.ndjson" },
  entries: { kept: "own", part: "entries.ndjson" },
  files: { kept: "own", part: "files.ndjson" },
  outbox: { kept: "rows", part: "outbox.ndjson", key: ["id"] },
  outbox_events: { kept: "rows", part: "outbox-events.ndjson", key: ["message", "position"] },
  inbox: { kept: "rows", part: "inbox.ndjson", key: ["id"] },
  inbox_events: { kept: "rows", part: "inbox-events.ndjson", key: ["item", "position"] },
  imports: { kept: "rows", part: "imports.ndjson", key: ["id"] },
  import_spans: { kept: "rows", part: "import-spans.ndjson", key: ["first_position"] },
  family_links: { kept: "rows", part: "family-links.ndjson", key: ["id"] },
  children: { kept: "no", why: "derived: made anew from the entries" },
  sessions: { kept: "no", why: "who is logged in is of this installation and this hour" },
  log_in_attempts: {
    kept: "no",
    why: "wrong passwords of the last day; passwords are not in the archive either",
  },
  signing_keys: {
    kept: "no",
    why: "a secret: who holds it could open every family link that was ever given out",
  },
  api_tokens: { kept: "no", why: "keys of other programs: a new installation gives out new ones" },
  webhooks: { kept: "no", why: "hold a secret each, and a restored record must not tell others by itself" },
  webhook_deliveries: {
    kept: "no",
    why: "notices of what stands in the entries, to addresses that are left out",
  },
  webhook_told: { kept: "no", why: "what those addresses were told last" },
  migrations: { kept: "no", why: "the shape of this database; the archive has a version of its own" },
}
