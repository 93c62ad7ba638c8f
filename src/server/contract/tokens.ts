/** Keys of other programs, and where they are told of what is new. */
export const tokensApi = {} as const
