import type {
  Course,
  EyeExamination,
  SafetyConcern,
  Symptom,
  Treatment,
  Visit,
} from "../../../src/engine/course.js"
import { offersFor } from "../../../src/engine/safety/offers.js"
import { openConcerns } from "../../../src/engine/safety/open-concerns.js"
import { startCautions } from "../../../src/engine/safety/start-cautions.js"
import type { Switches } from "../../../src/engine/safety/switched-concerns.js"
import { duties } from "../../../src/evidence/clinical.js"
import { evidence } from "../../../src/evidence/index.js"
import { adverseEffects } from "../../../src/evidence/treatments.js"

/** An invented girl for the chapters on safety: nobody's measurements. */
export const BORN = "2016-05-02"

interface Story {
  readonly visits?: readonly Visit[]
  readonly treatments?: readonly Treatment[]
  readonly concerns?: readonly SafetyConcern[]
  readonly switches?: Switches
  readonly born?: string
}

export const drops = (from: string, concentrationPercent: number, to?: string): Treatment => ({
  kind: "atropine",
  from,
  concentrationPercent,
  ...(to === undefined ? {} : { to }),
})

/** A visit with the same examination of both eyes. */
export const visit = (
  date: string,
  eye: EyeExamination = {},
  more: { readonly symptoms?: readonly Symptom[]; readonly answers?: Visit["answers"] } = {},
): Visit => ({ date, right: eye, left: eye, ...more })

export const yes = (question: string, note?: string) =>
  ({ question, answer: "yes", ...(note === undefined ? {} : { note }) }) as const
export const no = (question: string) => ({ question, answer: "no" }) as const

/** What is said of the child's safety on a day. */
export function child({ visits = [], treatments = [], concerns = [], switches = {}, born = BORN }: Story) {
  const course: Course = { lengthwise: 1, child: { born, sex: "female" }, visits, treatments, concerns }
  return {
    on(today: string) {
      const open = openConcerns({ course, today, switches })
      const cautions = startCautions({ course, today, treatment: { kind: "atropine" } })
      return {
        open,
        kinds: open.map(({ kind }) => kind),
        caution: (id: string) => cautions.find((caution) => caution.id === id),
        cautions,
        offers: (kind: string) =>
          offersFor({
            concern: { kind },
            course,
            today,
            evidence: { adverseEffects, duties, effects: evidence.growth.effects },
          }),
      }
    },
  }
}
