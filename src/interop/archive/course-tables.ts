import type { Course, EyeExamination, TreatmentChoice } from "../../engine/course.js"
import { EYES } from "../../engine/course.js"
import { type Cell, csvRow } from "./csv-row.js"
import { EYE_COLUMNS } from "./eye-columns.js"

/** A child as its rows name it: a course file has an id at most, a practice knows more. */
export interface TableChild {
  readonly id: string
  readonly number?: string | null | undefined
  readonly name?: string | undefined
}

export interface CourseTable {
  /** File name without its ending. */
  readonly name: string
  readonly header: readonly string[]
  readonly rows: (course: Course, child: TableChild) => readonly (readonly Cell[])[]
}

/** What a visit says of itself that is nothing but a prescription of earlier glasses. */
const OLD_GLASSES = "old glasses"

/** Ties the tables together. */
const CHILD_KEY = "Child key"

/** A table whose rows begin with the child's id, by which tables are put together. */
const table = (
  name: string,
  header: readonly string[],
  rows: (course: Course) => readonly (readonly Cell[])[],
): CourseTable => ({
  name,
  header: [CHILD_KEY, ...header],
  rows: (course, child) => rows(course).map((row) => [child.id, ...row]),
})

const choice = (treatment: TreatmentChoice | undefined): readonly Cell[] => [
  treatment?.kind,
  treatment?.concentrationPercent,
]

/** One row an examined eye, led by who the child is, so that the table can be read on its own. */
const visits: CourseTable = {
  name: "visits",
  header: [
    CHILD_KEY,
    "Child number",
    "Name",
    "Date of birth",
    "Sex",
    "Date",
    "Eye",
    ...EYE_COLUMNS.map(([title]) => title),
    "Old glasses",
    "From",
  ],
  rows: ({ child: { born, sex }, visits }, { id, number, name }) =>
    visits.flatMap((visit) =>
      EYES.flatMap((eye) => {
        const examination = visit[eye]
        if (!examination) return []
        const figures = EYE_COLUMNS.map(([, figure]) => figure(examination))
        return [
          [id, number, name, born, sex, visit.date, eye, ...figures, visit.from === OLD_GLASSES, visit.from],
        ]
      }),
    ),
}

const ofEyes = (
  course: Course,
  rows: (examination: EyeExamination) => readonly (readonly Cell[])[],
): readonly (readonly Cell[])[] =>
  course.visits.flatMap((visit) =>
    EYES.flatMap((eye) => {
      const examination = visit[eye]
      return examination ? rows(examination).map((row) => [visit.date, eye, ...row]) : []
    }),
  )

/** Every table of the archive; docs/archive.md says what each holds. */
export const COURSE_TABLES: readonly CourseTable[] = [
  {
    name: "children",
    header: [
      CHILD_KEY,
      "Child number",
      "Name",
      "Date of birth",
      "Sex",
      "Ancestry",
      "Myopic parents",
      "Protocol",
    ],
    rows: ({ child }, { id, number, name }) => [
      [id, number, name, child.born, child.sex, child.ancestry, child.myopicParents, child.protocol],
    ],
  },
  visits,
  table(
    "length-readings",
    ["Date", "Eye", "Reading", "Axial length (mm)", "Signal to noise", "Marks moved by hand"],
    (course) =>
      ofEyes(course, ({ axialLength }) =>
        (axialLength?.each ?? []).map(({ mm, signalToNoise, byHand }, index) => [
          index + 1,
          mm,
          signalToNoise,
          byHand,
        ]),
      ),
  ),
  table(
    "other-refractions",
    [
      "Date",
      "Eye",
      "Sphere (D)",
      "Cylinder (D)",
      "Axis",
      "Cycloplegic",
      "Refraction method",
      "Vertex distance (mm)",
      "Refraction device",
    ],
    (course) =>
      ofEyes(course, ({ otherRefractions = [] }) =>
        otherRefractions.map((r) => [
          r.sphere,
          r.cylinder,
          r.axis,
          r.cycloplegic,
          r.method,
          r.vertexDistanceMm,
          r.device,
        ]),
      ),
  ),
  table(
    "spectacles-worn",
    ["Date", "Eye", "Sphere (D)", "Cylinder (D)", "Axis", "Addition (D)", "Prism"],
    (course) =>
      ofEyes(course, ({ spectaclesWorn: worn }) =>
        worn ? [[worn.sphere, worn.cylinder, worn.axis, worn.addD, worn.prism]] : [],
      ),
  ),
  table("symptoms", ["Date", "Symptom", "Grade (0 to 3)"], ({ visits }) =>
    visits.flatMap(({ date, symptoms = [] }) => symptoms.map(({ kind, grade }) => [date, kind, grade])),
  ),
  table("answers", ["Date", "Question", "Answer", "Value", "Note"], ({ visits }) =>
    visits.flatMap(({ date, answers = [] }) =>
      answers.map(({ question, answer, value, note }) => [date, question, answer, value, note]),
    ),
  ),
  table("sources", ["Date", "Kind", "Id", "Instrument"], ({ visits }) =>
    visits.flatMap(({ date, sources = [] }) =>
      sources.map(({ kind, id, device }) => [date, kind, id, device]),
    ),
  ),
  table(
    "treatments",
    ["From", "To", "Treatment", "Strength of the drops (% w/v)", "Eye", "Nights a week"],
    ({ treatments = [] }) =>
      treatments.map((t) => [t.from, t.to, t.kind, t.concentrationPercent, t.eye, t.nightsPerWeek]),
  ),
  table(
    "supplies",
    [
      "Dispensed",
      "Opened",
      "Strength of the drops (% w/v)",
      "Volume (mL)",
      "Beyond use",
      "Lot",
      "Pharmacy",
      "Preserved",
    ],
    ({ supplies = [] }) =>
      supplies.map((s) => [
        s.dispensed,
        s.opened,
        s.concentrationPercent,
        s.volumeMl,
        s.beyondUse,
        s.lot,
        s.pharmacy,
        s.preserved,
      ]),
  ),
  table("missed-nights", ["From", "To", "Nights"], ({ missedNights = [] }) =>
    missedNights.map(({ from, to, nights }) => [from, to, nights]),
  ),
  table(
    "consents",
    [
      "Date",
      "Treatment",
      "Strength of the drops (% w/v)",
      "Given by",
      "Relation",
      "Form",
      "Wording",
      "Version of the wording",
      "Language",
      "SHA-256 of the text",
      "Assent",
      "Withdrawn from",
    ],
    ({ consents = [] }) =>
      consents.map(({ date, covers, by, form, wording, assent, until }) => [
        ...[date, ...choice(covers), by?.name, by?.relation, form],
        ...[wording?.id, wording?.version, wording?.language, wording?.sha256, assent, until],
      ]),
  ),
  table(
    "decisions",
    ["Date", "Decision", "Reason", "Treatment", "Strength of the drops (% w/v)", "Offered", "Figures shown"],
    ({ decisions = [] }) =>
      decisions.map(({ date, kind, reason, treatment, offered = [], figures = [] }) => [
        ...[date, kind, reason, ...choice(treatment)],
        offered.join("; "),
        figures.map(({ label, value }) => `${label}: ${value}`).join("; "),
      ]),
  ),
  table(
    "concerns",
    ["Opened", "Kind", "What", "Owner", "Seriousness", "Relatedness", "Unwanted effect", "Closed", "Outcome"],
    ({ concerns = [] }) =>
      concerns.map((c) => [
        c.opened,
        c.kind,
        c.what,
        c.owner,
        c.seriousness,
        c.relatedness,
        c.adverseEvent,
        c.closed,
        c.outcome,
      ]),
  ),
  table(
    "orders",
    [
      "Date",
      "Strength of the drops (% w/v)",
      "Bottles",
      "Volume (mL)",
      "Stock (% w/v)",
      "Pharmacy",
      "Preserved",
      "Confirmed for",
      "Received",
      "Cancelled",
      "Without consent because",
    ],
    ({ orders = [] }) =>
      orders.map((o) => [
        ...[o.date, o.concentrationPercent, o.bottles, o.volumeMl, o.stockPercent, o.pharmacy],
        ...[o.preserved, o.confirmed, o.received, o.cancelled, o.override],
      ]),
  ),
  table("explanations", ["Date", "To"], ({ explanations = [] }) =>
    explanations.map(({ date, to }) => [date, to]),
  ),
  table("payments", ["Date", "Amount (smallest unit)", "Currency", "What"], ({ payments = [] }) =>
    payments.map(({ date, cents, currency, what }) => [date, cents, currency, what]),
  ),
]

export const headerRow = ({ header }: CourseTable): string => csvRow(header)

/** The rows of one child in a table, as text. */
export const tableRows = (table: CourseTable, course: Course, child: TableChild): string =>
  table.rows(course, child).map(csvRow).join("")

/** One table of one course, whole. Its id is the only number that a course file has. */
export function courseTable(table: CourseTable, course: Course): string {
  const { id = "" } = course.child
  return headerRow(table) + tableRows(table, course, { id, number: id })
}
