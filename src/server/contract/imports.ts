/** Tables of other programs, read into the record as one step that can be taken back. */
export const importsApi = {} as const
