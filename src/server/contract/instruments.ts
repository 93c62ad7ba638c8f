/** The DICOM receiver: whether it listens, what it took and refused. */
export const instrumentsApi = {} as const
