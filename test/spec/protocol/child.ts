import type { Duty } from "../../../src/engine/assessment.js"
import type {
  Consent,
  Course,
  Decision,
  EyeExamination,
  Supply,
  Treatment,
  Visit,
} from "../../../src/engine/course.js"
import { duties, nextDuty } from "../../../src/engine/protocol/duties.js"
import { plannedReviews } from "../../../src/engine/protocol/planned-reviews.js"
import type { Protocol } from "../../../src/engine/protocol/protocol.js"
import { standardProtocol } from "../../../src/engine/protocol/standard.js"

/** A few words in which the chapters tell a child's course. The children are invented. */

const everything: EyeExamination = {
  axialLength: { mm: 24.1 },
  refraction: { sphere: -2, cycloplegic: true },
  corneaRadius: { flat: 7.8, steep: 7.7 },
  pupil: { photopic: 3.8 },
  accommodation: { dioptres: 12, method: "push-up" },
  acuity: { distanceLogMAR: 0, nearLogMAR: 0.1 },
}

/** A visit at which everything was measured in both eyes and symptoms were asked for. */
export const fullVisit = (date: string): Visit => ({
  date,
  right: everything,
  left: everything,
  symptoms: [],
})

/** A visit for length, cycloplegic refraction and symptoms only. */
export const growthVisit = (date: string): Visit => {
  const eye: EyeExamination = { axialLength: { mm: 24.2 }, refraction: { sphere: -2.25, cycloplegic: true } }
  return { date, right: eye, left: eye, symptoms: [] }
}

/** A full visit without what is named. */
export function visitWithout(date: string, ...without: (keyof EyeExamination | "symptoms")[]): Visit {
  const eye = Object.fromEntries(
    Object.entries(everything).filter(([name]) => !without.includes(name as keyof EyeExamination)),
  )
  return { date, right: eye, left: eye, ...(without.includes("symptoms") ? {} : { symptoms: [] }) }
}

/** Atropine from a day on, until `to` where one is given. */
export const drops = (from: string, concentrationPercent: number, to?: string): Treatment => ({
  kind: "atropine",
  concentrationPercent,
  from,
  ...(to ? { to } : {}),
})

export const consentTo = (date: string, concentrationPercent: number): Consent => ({
  date,
  covers: { kind: "atropine", concentrationPercent },
})

export interface Story {
  readonly visits?: readonly Visit[]
  readonly treatments?: readonly Treatment[]
  readonly consents?: readonly Consent[]
  readonly supplies?: readonly Supply[]
  readonly decisions?: readonly Decision[]
}

export class ChildOn {
  constructor(
    private readonly story: Story,
    private readonly today: string,
    private readonly protocol: Protocol = standardProtocol,
  ) {}

  get course(): Course {
    return {
      lengthwise: 1,
      child: { born: "2016-05-02", sex: "female" },
      ...this.story,
      visits: this.story.visits ?? [],
    }
  }

  get duties(): readonly Duty[] {
    return duties({ course: this.course, protocol: this.protocol, today: this.today })
  }

  get plan() {
    return plannedReviews({ course: this.course, protocol: this.protocol, today: this.today })
  }

  get next() {
    return nextDuty(this.duties)
  }

  /** The one duty of this name. */
  duty(step: string): Duty {
    const found = this.duties.filter((duty) => duty.step === step)
    if (found.length !== 1) throw new Error(`${found.length} duties called ${step}: ${this.steps.join(", ")}`)
    return found[0]!
  }

  state(step: string) {
    return this.duty(step).state
  }

  get steps() {
    return this.duties.map(({ step }) => step)
  }

  /** Names of the examinations in a state. */
  examinations(state: Duty["state"]) {
    return this.duties
      .filter((duty) => duty.kind === "examination" && duty.state === state)
      .map(({ step }) => step)
  }
}

/** @example child(story).on("2025-02-01").state("1-month check") */
export const child = (story: Story, protocol?: Protocol) => ({
  on: (today: string) => new ChildOn(story, today, protocol),
})
