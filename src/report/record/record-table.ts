import type { Block } from "../document.js"

/** One kind of entry as a table, rows in order of date. */
export interface RecordTable {
  readonly title: string
  readonly head: readonly string[]
  readonly rows: readonly (readonly string[])[]
  /** Columns of figures, from 0. */
  readonly figures?: readonly number[] | undefined
}

/** A heading with its table; nothing for one without rows, which is named among what is not recorded. */
export function tableBlocks({ title, head, rows, figures = [] }: RecordTable): readonly Block[] {
  if (rows.length === 0) return []
  return [
    { kind: "heading", level: 2, text: title },
    { kind: "table", head, rows, figures },
  ]
}

/** Rows by the first day that they name. */
export const byDay =
  <T>(of: (entry: T) => string | undefined) =>
  (a: T, b: T): number => {
    const [first, second] = [of(a) ?? "", of(b) ?? ""]
    return first < second ? -1 : first > second ? 1 : 0
  }
