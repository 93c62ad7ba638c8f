/** What waits in the Inbox. */
// biome-ignore lint/suspicious/noEmptyInterface: its tables come with their migration
export interface InboxTables {}
