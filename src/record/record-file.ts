/** The embedded database of a data folder; its presence tells a data folder from any other. */
export const RECORD_FILE = "record.sqlite"
