/** Keys of other programs and their notices. */
// biome-ignore lint/suspicious/noEmptyInterface: its tables come with their migration
export interface TokenTables {}
