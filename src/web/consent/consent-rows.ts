import { type ConsentState, consentInForce } from "../../engine/consent/consent-in-force.js"
import type { CalendarDate, Consent, Course } from "../../engine/course.js"
import type { ConsentWording } from "../../engine/practice-rules.js"
import type { ChildView } from "../../server/contract/child.js"
import type { ConsentBody } from "../../server/contract/entry.js"

/** A consent as the record holds it: the course file's fields, and how it was signed. */
export type SignedConsent = Consent & Pick<ConsentBody, "signature">

export interface ConsentRow {
  readonly entry: ChildView["entries"][number]
  readonly consent: SignedConsent
  readonly state: ConsentState["kind"]
  /** Why it does not hold, and since when where that is a day. */
  readonly why: string | null
  readonly since: CalendarDate | null
}

/** The consents that stand in the record, the latest first, each with whether it holds on a day. */
export function consentRows({
  view,
  on,
  wordings,
}: {
  readonly view: Pick<ChildView, "entries"> & { readonly course: Pick<Course, "consents"> }
  readonly on: CalendarDate
  readonly wordings: readonly ConsentWording[]
}): readonly ConsentRow[] {
  return view.entries
    .filter(({ kind, supersededBy }) => kind === "consent" && supersededBy === null)
    .map((entry) => {
      const consent = entry.body as SignedConsent
      const asked = { treatment: consent.covers, on, wordings }
      const alone = consentInForce({ ...asked, course: { consents: [consent] } })
      // A later withdrawal ends the earlier consents to the same treatment with it.
      const together = consentInForce({ ...asked, course: view.course })
      const state = alone.kind === "in-force" && together.kind === "withdrawn" ? together : alone
      if (state.kind === "in-force") return { entry, consent, state: state.kind, why: null, since: null }
      return { entry, consent, state: state.kind, why: state.why, since: state.since ?? null }
    })
    .toSorted(
      (a, b) =>
        b.consent.date.localeCompare(a.consent.date) || b.entry.recordedAt.localeCompare(a.entry.recordedAt),
    )
}
