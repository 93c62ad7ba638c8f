import { sphericalEquivalent } from "../../engine/optics/spherical-equivalent.js"
import type { Cell } from "../archive/csv-row.js"
import { ageAtVisit, monthsTreated, type StudyRow } from "./study-rows.js"

/** A column of the table for research. What it means is told by the course file's schema where it has the field. */
export type StudyColumn = {
  readonly name: string
  readonly value: (row: StudyRow) => Cell
} & (
  | { /** Its place in the course file, as the schema describes it. */ readonly field: string }
  | { readonly about: { readonly title: string; readonly description: string; readonly unit?: string } }
)

const eye = (field: string) => `visits[].right.${field}`

export const STUDY_COLUMNS: readonly StudyColumn[] = [
  {
    name: "study_id",
    about: {
      title: "Child",
      description: "Stands for the child; the same in every table of this practice, and nowhere else.",
    },
    value: ({ study }) => study.studyId,
  },
  {
    name: "visit_date_moved",
    about: {
      title: "Day of the visit, moved",
      description:
        "All days of one child are moved by the same secret number of days, up to 182 either way: intervals are exact, seasons and calendar years are not.",
    },
    value: ({ study, visit }) => study.moved(visit.date),
  },
  {
    name: "age_years",
    about: { title: "Age", description: "Exact age on the day of the visit, days / 365.25.", unit: "a" },
    value: ageAtVisit,
  },
  { name: "sex", field: "child.sex", value: ({ course }) => course.child.sex },
  { name: "ancestry", field: "child.ancestry", value: ({ course }) => course.child.ancestry },
  { name: "myopic_parents", field: "child.myopicParents", value: ({ course }) => course.child.myopicParents },
  {
    name: "eye",
    about: { title: "Eye", description: "right or left: one row for each eye that was examined." },
    value: (row) => row.eye,
  },
  {
    name: "measured_elsewhere",
    about: {
      title: "Measured elsewhere",
      description:
        "yes where the figures come from old glasses, another practice or another program's table.",
    },
    value: ({ visit }) => visit.from !== undefined,
  },
  { name: "axial_length_mm", field: eye("axialLength.mm"), value: (row) => row.examination.axialLength?.mm },
  {
    name: "axial_length_readings",
    field: eye("axialLength.readings"),
    value: (row) => row.examination.axialLength?.readings,
  },
  {
    name: "axial_length_sd_mm",
    field: eye("axialLength.sdMm"),
    value: (row) => row.examination.axialLength?.sdMm,
  },
  {
    name: "axial_length_signal_to_noise",
    field: eye("axialLength.signalToNoise"),
    value: (row) => row.examination.axialLength?.signalToNoise,
  },
  {
    name: "axial_length_method",
    field: eye("axialLength.method"),
    value: (row) => row.examination.axialLength?.method,
  },
  {
    name: "axial_length_instrument",
    about: {
      title: "Instrument of the length",
      description:
        "A code for the instrument, without maker or serial number; another code is another instrument.",
    },
    value: ({ examination, instrument }) => instrument(examination.axialLength?.device),
  },
  { name: "sphere_d", field: eye("refraction.sphere"), value: (row) => row.examination.refraction?.sphere },
  {
    name: "cylinder_d",
    field: eye("refraction.cylinder"),
    value: (row) => row.examination.refraction?.cylinder,
  },
  { name: "axis_degrees", field: eye("refraction.axis"), value: (row) => row.examination.refraction?.axis },
  {
    name: "spherical_equivalent_d",
    about: {
      title: "Spherical equivalent",
      description: "Sphere plus half the cylinder; more negative is more myopic.",
      unit: "[diop]",
    },
    value: ({ examination: { refraction } }) =>
      refraction && Number(sphericalEquivalent(refraction).toFixed(3)),
  },
  {
    name: "refraction_cycloplegic",
    field: eye("refraction.cycloplegic"),
    value: (row) => row.examination.refraction?.cycloplegic,
  },
  {
    name: "refraction_method",
    field: eye("refraction.method"),
    value: (row) => row.examination.refraction?.method,
  },
  {
    name: "cornea_flat_mm",
    field: eye("corneaRadius.flat"),
    value: (row) => row.examination.corneaRadius?.flat,
  },
  {
    name: "cornea_steep_mm",
    field: eye("corneaRadius.steep"),
    value: (row) => row.examination.corneaRadius?.steep,
  },
  {
    name: "pupil_photopic_mm",
    field: eye("pupil.photopic"),
    value: (row) => row.examination.pupil?.photopic,
  },
  { name: "pupil_mesopic_mm", field: eye("pupil.mesopic"), value: (row) => row.examination.pupil?.mesopic },
  {
    name: "accommodation_d",
    field: eye("accommodation.dioptres"),
    value: (row) => row.examination.accommodation?.dioptres,
  },
  {
    name: "accommodation_method",
    field: eye("accommodation.method"),
    value: (row) => row.examination.accommodation?.method,
  },
  {
    name: "distance_acuity_logmar",
    field: eye("acuity.distanceLogMAR"),
    value: (row) => row.examination.acuity?.distanceLogMAR,
  },
  {
    name: "distance_acuity_correction",
    field: eye("acuity.distanceCorrection"),
    value: (row) => row.examination.acuity?.distanceCorrection,
  },
  {
    name: "near_acuity_logmar",
    field: eye("acuity.nearLogMAR"),
    value: (row) => row.examination.acuity?.nearLogMAR,
  },
  {
    name: "pressure_mmhg",
    field: eye("intraocularPressure.mmHg"),
    value: (row) => row.examination.intraocularPressure?.mmHg,
  },
  { name: "lens", field: eye("lensStatus"), value: (row) => row.examination.lensStatus },
  { name: "dilated", field: eye("dilation.dilated"), value: (row) => row.examination.dilation?.dilated },
  {
    name: "treatment",
    field: "treatments[].kind",
    value: ({ treatment }) => treatment?.kind ?? "none",
  },
  {
    name: "concentration_percent",
    field: "treatments[].concentrationPercent",
    value: ({ treatment }) => treatment?.concentrationPercent,
  },
  {
    name: "nights_per_week",
    field: "treatments[].nightsPerWeek",
    value: ({ treatment }) => treatment?.nightsPerWeek,
  },
  {
    name: "months_treated",
    about: {
      title: "Months treated",
      description:
        "Since this treatment of this eye began, at the visit; a change of strength begins a treatment anew.",
      unit: "mo",
    },
    value: monthsTreated,
  },
  {
    name: "nights_share",
    about: {
      title: "Share of nights with a drop",
      description:
        "Of all nights with drops prescribed up to the visit, those with a bottle in date and no missed night told of; empty where no bottle is recorded.",
      unit: "1",
    },
    value: ({ nightsShare }) => (nightsShare === null ? undefined : Number(nightsShare.toFixed(3))),
  },
]
