import { say } from "../../engine/say.js"
import { csvText } from "../../interop/table/csv-text.js"
import type { OutboxMessage } from "../../record/index.js"

/** What a service that sends SMS or letters is given: whom, where and the words, nothing else of the child. */
export function messageList(messages: readonly OutboxMessage[]): string {
  const isPost = messages[0]?.channel === "post"
  const header = isPost
    ? [say("Name"), say("Postal address"), say("Language"), say("Heading"), say("Text")]
    : [say("Name"), say("Telephone, digits only"), say("Language"), say("Text")]
  const rows = messages.map(({ name, recipient, language, subject, text }) =>
    isPost ? [name, recipient, language, subject, text] : [name, digitsOf(recipient), language, text],
  )
  return csvText({ header, rows })
}

/** As senders of SMS take a number (E.164 without the plus sign, which a spreadsheet would run as a formula). */
const digitsOf = (telephone: string): string => telephone.replace(/\D/g, "")
