import { INBOX_STATES, type InboxState } from "../../server/contract/inbox-words.js"

/** What the address of the page says. */
export interface InboxSearch {
  readonly state?: InboxState
  readonly search?: string
  readonly page?: number
}

/** Reads it from an address; what makes no sense is left out. */
export function inboxSearch(search: Readonly<Record<string, unknown>>): InboxSearch {
  const state = INBOX_STATES.find((one) => one === search.state)
  return {
    ...(state ? { state } : {}),
    // A child's number comes out of the address as a number.
    ...(search.search === undefined || search.search === "" ? {} : { search: String(search.search) }),
    ...(typeof search.page === "number" && search.page > 1 ? { page: Math.floor(search.page) } : {}),
  }
}
