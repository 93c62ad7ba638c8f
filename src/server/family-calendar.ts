import { protocolFor } from "../engine/protocol/choose-protocol.js"
import { duties } from "../engine/protocol/duties.js"
import { inLanguage, type Language } from "../engine/say.js"
import { calendarOf } from "../interop/ical/calendar.js"
import type { Context } from "./context.js"
import { noSuch } from "./refusal.js"

/** What a family has to do, as a calendar in its language; null when nothing lies ahead. */
export async function familyCalendar(
  { record, clock, rules: inForce }: Context,
  { child, language }: { readonly child: string; readonly language: Language },
): Promise<string | null> {
  const [course, rules] = await Promise.all([record.courseOf(child), inForce.now()])
  if (!course) throw noSuch("child", child)
  const today = clock.today()
  const protocol = protocolFor({ course, today, rules })
  // An entry is known by the name of its step, which must not change with whoever asks.
  const owed = inLanguage("en", () =>
    duties({
      course,
      protocol,
      today,
      wordings: rules.consentWordings,
      pharmacies: rules.pharmacies,
    }),
  )
  return calendarOf({
    duties: owed,
    today,
    language,
    practiceName: record.practice.name,
    childKey: child,
  })
}
