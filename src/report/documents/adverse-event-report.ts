import { dayInWords, say } from "../../engine/say.js"
import type { DocumentContent, DocumentPart, DocumentRefused } from "../document.js"
import type { DocumentInput } from "../document-input.js"
import { professionalFoot } from "../letter/cautions.js"
import { concernOf, reportedEvent } from "../record/adverse-event.js"
import { patient, product, reaction, reporter } from "../record/adverse-event-parts.js"
import { challenges } from "../record/challenges.js"

/**
 * What a reporter to an authority or a manufacturer needs of one unwanted effect. The child stands in it by number or
 * initials, never by name. National forms and rules come first: this gathers what they ask for.
 */
export function adverseEventReport(input: DocumentInput): DocumentContent | DocumentRefused {
  const { course, concernIndex, today } = input
  const concern = concernOf(course, concernIndex, today)
  if (concern === undefined) return { kind: "refused", why: missing(input) }
  if (concern.adverseEvent !== true) {
    return {
      kind: "refused",
      why: say(
        "the concern opened on {day} is not kept as an unwanted effect of a treatment: mark it as one first",
        { day: dayInWords(concern.opened) },
      ),
    }
  }
  const number = known(input.childNumber) ?? known(course.child.id)
  const reported = reportedEvent({ course, concern, number, today })
  const parts: readonly DocumentPart[] = [
    {
      name: "rules-first",
      blocks: [
        {
          kind: "caution",
          lines: [
            say(
              "National forms, deadlines and rules for reporting come first: this sheet gathers what they ask for and replaces none of them.",
            ),
            say(
              "Seriousness and relation are as the practice graded them; the legal criteria of a country are its own.",
            ),
          ],
        },
      ],
    },
    { name: "patient", blocks: patient(reported, input) },
    { name: "product", blocks: product(reported, input) },
    { name: "reaction", blocks: reaction(reported, input) },
    { name: "challenges", blocks: challenges(reported) },
    { name: "reporter", blocks: reporter(input) },
  ]
  return {
    title: say("Report of an unwanted effect, {day}", { day: dayInWords(concern.opened) }),
    parts,
    values: {
      number: number ?? "",
      practice: input.practice.name,
      date: dayInWords(today),
      author: input.author ?? "",
      effect: concern.what,
    },
    foot: professionalFoot(),
  }
}

const known = (words: string | null | undefined): string | null =>
  words == null || words.trim() === "" ? null : words

function missing({ course, concernIndex, today }: DocumentInput): string {
  const { concerns = [] } = course
  if (concernIndex !== undefined) {
    return say(
      "there is no concern {index} in this record: it has {count, plural, =0 {no concern} one {# concern} other {# concerns}}, counted from 0",
      { index: String(concernIndex), count: concerns.length },
    )
  }
  return say("no unwanted effect of a treatment is recorded by {day}", { day: dayInWords(today) })
}
