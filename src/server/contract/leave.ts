/** Everything out: the archive of the practice, and the table for research. */
export const leaveApi = {} as const
