/** Imports of whole files. */
// biome-ignore lint/suspicious/noEmptyInterface: its tables come with their migration
export interface ImportTables {}
