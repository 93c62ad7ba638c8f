import { dateWords } from "../../chart/words.js"
import { dayNumberOrNull } from "../../engine/calendar.js"
import { msg, say } from "../../engine/say.js"
import type { InboxRow } from "../../server/contract/inbox.js"
import type { InboxState } from "../../server/contract/inbox-words.js"
import { joined } from "../child/word-parts.js"
import { girlOrBoy } from "../words.js"

export const STATE_WORDS: Readonly<Record<InboxState, string>> = {
  waiting: msg("Waiting|inbox"),
  taken: msg("Taken|inbox"),
  "set-aside": msg("Set aside|inbox"),
}

/** Who a file says that it is about. */
export function identityWords({ name, number, born, sex }: InboxRow["identity"]): string {
  const words = joined(
    name,
    born && say("born {day}", { day: dayNumberOrNull(born) === null ? born : dateWords(born) }),
    sex && girlOrBoy(sex),
    number && say("number {number}", { number }),
  )
  return words === "" ? say("The file names nobody.") : words
}
