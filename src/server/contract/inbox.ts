/** What instruments and files sent, waiting for a person, and files dropped on the page. */
export const inboxApi = {} as const
