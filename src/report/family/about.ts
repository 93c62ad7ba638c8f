import { dayInWords, say } from "../../engine/say.js"
import type { Block } from "../document.js"
import type { FamilyReading } from "./family-reading.js"
import { shortCitation } from "./question-evidence.js"
import { maculopathyPerDioptre } from "./what-it-means.js"

/** Small print: where the figures come from and what they cannot say. */
export const about = ({ today, input }: FamilyReading): readonly Block[] => [
  {
    kind: "notes",
    lines: [
      say(
        "Made on {date} from what {practice} measured. No measurement is exact. Usual growth and what may come are worked out from published studies of groups of children; your child may do better or worse. Harm in later life: {source}.",
        {
          date: dayInWords(today),
          practice: input.practice.name,
          source: shortCitation(maculopathyPerDioptre().source),
        },
      ),
    ],
  },
]
