import type { PracticeRecord } from "../../record/index.js"

/** Ids of what waits in the Inbox for a person. */
export async function waitingInInbox(_record: PracticeRecord): Promise<readonly string[]> {
  return []
}
