import { MESSAGE_STATES, type MessageState } from "../../engine/messages/message-states.js"

/** What the address of the page says. */
export interface MessagesSearch {
  readonly state?: MessageState
  readonly search?: string
  readonly page?: number
}

/** Reads it from an address; what makes no sense is left out. */
export function messagesSearch(search: Readonly<Record<string, unknown>>): MessagesSearch {
  const state = MESSAGE_STATES.find((one) => one === search.state)
  return {
    ...(state ? { state } : {}),
    // A practice's number for a child comes out of the address as a number.
    ...(search.search === undefined || search.search === "" ? {} : { search: String(search.search) }),
    ...(typeof search.page === "number" && search.page > 1 ? { page: Math.floor(search.page) } : {}),
  }
}
