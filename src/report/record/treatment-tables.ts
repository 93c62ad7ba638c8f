import type { Course } from "../../engine/course.js"
import { say } from "../../engine/say.js"
import { treatmentName } from "../../engine/treatment-name.js"
import { capitalised } from "../../engine/words.js"
import { day, NOTHING, recorded, text, yesOrNo } from "./figures.js"
import { byDay, type RecordTable } from "./record-table.js"

/** What was given, from which bottles, which were ordered, and the nights without a drop. */
export const treatmentTables = (course: Course): readonly RecordTable[] => [
  treatments(course),
  bottles(course),
  missedNights(course),
  orders(course),
  orderStates(course),
]

const treatments = ({ treatments: given = [] }: Course): RecordTable => ({
  title: say("Treatments"),
  head: [say("From|date"), say("First day without"), say("Treatment"), say("Eye"), say("Nights a week")],
  rows: given
    .toSorted(byDay(({ from }) => from))
    .map((treatment) => [
      day(treatment.from),
      day(treatment.to),
      capitalised(treatmentName(treatment)),
      treatment.eye === undefined
        ? say("both eyes")
        : say("{eye, select, right {right eye} other {left eye}}", { eye: treatment.eye }),
      treatment.nightsPerWeek === undefined ? say("every night") : recorded(treatment.nightsPerWeek),
    ]),
})

const bottles = ({ supplies = [] }: Course): RecordTable => ({
  title: say("Bottles given out"),
  head: [
    say("Dispensed|bottle"),
    say("Opened|bottle"),
    say("Use until"),
    say("% w/v|strength"),
    say("ml|volume"),
    say("Lot"),
    say("Pharmacy"),
    say("Preserved"),
  ],
  rows: supplies
    .toSorted(byDay(({ dispensed, opened }) => dispensed ?? opened))
    .map((bottle) => [
      day(bottle.dispensed),
      day(bottle.opened),
      day(bottle.beyondUse),
      recorded(bottle.concentrationPercent),
      recorded(bottle.volumeMl),
      text(bottle.lot),
      text(bottle.pharmacy),
      yesOrNo(bottle.preserved),
    ]),
  figures: [3, 4],
})

const missedNights = ({ missedNights: told = [] }: Course): RecordTable => ({
  title: say("Nights without a drop, as told"),
  head: [say("From|date"), say("To, included"), say("Nights")],
  rows: told
    .toSorted(byDay(({ from }) => from))
    .map(({ from, to, nights }) => [day(from), day(to), recorded(nights)]),
  figures: [2],
})

const orders = ({ orders: made = [] }: Course): RecordTable => ({
  title: say("Orders of bottles"),
  head: [
    say("Ordered|date"),
    say("% w/v|strength"),
    say("Bottles"),
    say("ml|volume"),
    say("Stock, % w/v"),
    say("Preserved"),
    say("Pharmacy"),
  ],
  rows: made
    .toSorted(byDay(({ date }) => date))
    .map((order) => [
      day(order.date),
      recorded(order.concentrationPercent),
      recorded(order.bottles),
      recorded(order.volumeMl),
      recorded(order.stockPercent),
      yesOrNo(order.preserved),
      text(order.pharmacy),
    ]),
  figures: [1, 2, 3, 4],
})

/** What became of the orders that were answered or made against a missing consent. */
const orderStates = ({ orders: made = [] }: Course): RecordTable => ({
  title: say("What became of the orders"),
  head: [
    say("Ordered|date"),
    say("Confirmed for"),
    say("Received|order"),
    say("Cancelled|order"),
    say("Reason without a consent"),
  ],
  rows: made
    .toSorted(byDay(({ date }) => date))
    .map((order) => [
      day(order.date),
      day(order.confirmed),
      day(order.received),
      day(order.cancelled),
      text(order.override),
    ])
    .filter(([, ...rest]) => rest.some((cell) => cell !== NOTHING)),
})
