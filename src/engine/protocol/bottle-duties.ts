import type { Duty, DutyState } from "../assessment.js"
import { addDays } from "../calendar.js"
import type { Treatment } from "../course.js"
import { say } from "../say.js"
import { leadTime } from "../supply/lead-time.js"
import { treatmentName } from "../treatment-name.js"
import { dropsOfEyes, lastDayOfSupply, type Situation } from "./situation.js"

/**
 * The bottle owed to a child on atropine, one for each strength in use: the first one, or the next before the last one
 * ends, as many days before as the pharmacy takes; where treatment begins again, by its first day. A bottle ends on its beyond-use date, or the protocol's days after
 * opening where the pharmacy gave none.
 */
export function bottleDuties(situation: Situation): readonly Duty[] {
  return dropsOfEyes(situation).flatMap((drops) => bottleDuty(situation, drops))
}

function bottleDuty(situation: Situation, drops: Treatment): readonly Duty[] {
  const { today, protocol, course, pharmacies } = situation
  const name = treatmentName(drops)
  const last = lastDayOfSupply(situation, drops)
  if (last === undefined) {
    return [
      {
        kind: "bottle",
        step: say("first bottle"),
        opens: drops.from,
        due: drops.from,
        closes: drops.from,
        state: "open",
        needs: [say("record the first bottle of {drops}", { drops: name })],
      },
    ]
  }
  // Nothing more is needed where treatment ends while the last bottle is still good.
  if (drops.to != null && drops.to <= addDays(last, 1)) return []
  const lead = leadTime({ supplies: course.supplies ?? [], drops, pharmacies, protocol })
  const isOfEarlierCourse = last < drops.from
  const due = isOfEarlierCourse ? drops.from : last
  const opens = addDays(due, -lead.days)
  const state: DutyState = today > due ? "overdue" : today >= opens ? "open" : "upcoming"
  return [
    {
      kind: "bottle",
      step: say("next bottle"),
      opens,
      due,
      closes: due,
      state,
      needs: [
        last < today
          ? say("a bottle of {drops}; the last one was good until {last}", { drops: name, last })
          : say("a bottle of {drops}; the last one is good until {last}", { drops: name, last }),
      ],
    },
  ]
}
