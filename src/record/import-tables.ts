/** Imports of whole files, and where in the chain their entries stand. */
export interface ImportTables {
  imports: ImportsTable
  import_spans: ImportSpansTable
}

interface ImportsTable {
  practice: string
  id: string
  /** The file's name as it was chosen, and the SHA-256 of its bytes. */
  file: string
  sha256: string
  /** JSON of the mapping the file was read by. */
  mapping: string
  author: string
  started_at: string
  changed_at: string
  /** One of `IMPORT_STATES`. */
  state: string
  /** JSON of `ImportCounts`. */
  counts: string
  /** JSON: children that were left as they are when the import was taken back, by name. */
  left_children: string
}

/** Written in the transaction of the entries themselves, so that an import is always known whole. */
interface ImportSpansTable {
  practice: string
  import: string
  first_position: number
  last_position: number
  /** 1 for the entries that take the import back. */
  takes_back: number
}
