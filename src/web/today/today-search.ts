import { OWED_GROUPS, type OwedGroup, ROLES, type Role } from "../../engine/today/owed.js"

/** What the address of the page says: whose work, which group opened, and what is searched for. */
export interface TodaySearch {
  readonly role?: Role
  readonly group?: OwedGroup
  readonly search?: string
  readonly page?: number
}

/** Reads it from an address; what makes no sense is left out. */
export function todaySearch(search: Readonly<Record<string, unknown>>): TodaySearch {
  const role = ROLES.find((one) => one === search.role)
  const group = OWED_GROUPS.find((one) => one === search.group)
  return {
    ...(role ? { role } : {}),
    ...(group ? { group } : {}),
    // A practice's number for a child comes out of the address as a number.
    ...(search.search === undefined || search.search === "" ? {} : { search: String(search.search) }),
    ...(typeof search.page === "number" && search.page > 1 ? { page: Math.floor(search.page) } : {}),
  }
}
