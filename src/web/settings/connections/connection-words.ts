import type { Scope } from "../../../engine/access/scopes.js"
import type {
  DeliveryProblem,
  DeliveryState,
  WebhookEvent,
  WebhookState,
} from "../../../engine/access/webhook-events.js"
import { msg, say, shortDayInWords } from "../../../engine/say.js"
import type { TokensAnswer } from "../../../server/contract/tokens.js"
import type { NewsLookAnswer } from "../../../server/contract/webhooks.js"

/** What stands on the page of connections, in the reader's language: `say(SCOPE_WORDS[scope])`. */

export const SCOPE_WORDS: Readonly<Record<Scope, string>> = {
  read: msg("Read children and courses"),
  write: msg("Record entries"),
  fhir: msg("Read the record as FHIR"),
  export: msg("Take archives and research tables"),
  files: msg("Store and read files"),
}

export const TOKEN_STATE_WORDS: Readonly<Record<TokensAnswer["tokens"][number]["state"], string>> = {
  open: msg("open until {day}"),
  expired: msg("expired on {day}"),
  revoked: msg("revoked"),
}

export const EVENT_WORDS: Readonly<Record<WebhookEvent, string>> = {
  "finding-new": msg("A child’s finding changed"),
  "duty-open": msg("Something became owed"),
  "duty-overdue": msg("Something became overdue"),
  "object-waiting": msg("Something waits in the Inbox"),
}

export const WEBHOOK_STATE_WORDS: Readonly<Record<WebhookState, string>> = {
  on: msg("On"),
  off: msg("Off"),
  disabled: msg("Turned off after failures"),
  removed: msg("Removed"),
}

export const DELIVERY_STATE_WORDS: Readonly<Record<DeliveryState, string>> = {
  waiting: msg("Waiting"),
  sending: msg("Being sent"),
  delivered: msg("Delivered"),
  failed: msg("Given up"),
  cancelled: msg("Called off"),
}

const PROBLEM_WORDS: Readonly<Record<DeliveryProblem, string>> = {
  status: msg("Answered {status}"),
  redirect: msg("Answered {status}, a redirect, which is not followed"),
  timeout: msg("No answer within 10 seconds"),
  unreachable: msg("No connection"),
  tls: msg("The certificate is not to be trusted"),
  "private-address": msg("The name leads to a network inside, where nothing is sent"),
  interrupted: msg("Cut short by the end of the program; sent again"),
  again: msg("A person asked for another delivery"),
  removed: msg("The address was removed"),
}

export function deliveryProblemInWords(problem: DeliveryProblem, status: number | null): string {
  return say(PROBLEM_WORDS[problem], { status: status ?? "" })
}

/** "25 Nov 2026, 14:05", by the clock of the reader's machine. */
export function instantInWords(instant: string): string {
  const at = new Date(instant)
  const twoDigits = (value: number) => String(value).padStart(2, "0")
  const date = `${at.getFullYear()}-${twoDigits(at.getMonth() + 1)}-${twoDigits(at.getDate())}`
  const time = `${twoDigits(at.getHours())}:${twoDigits(at.getMinutes())}`
  return say("{day}, {time}", { day: shortDayInWords(date), time })
}

/** What one look at the news did, in a sentence. */
export function newsInWords({ planned, delivered, failed }: NewsLookAnswer): string {
  if (planned + delivered + failed === 0) return say("Nothing is new, and nothing waits.")
  return say(
    "{planned, plural, one {# piece of news} other {# pieces of news}}, {delivered, plural, one {# delivered} other {# delivered}}, {failed, plural, one {# attempt failed} other {# attempts failed}}.",
    { planned, delivered, failed },
  )
}
