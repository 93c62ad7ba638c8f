import { z } from "zod"
import {
  ACCOMMODATION_METHODS,
  ANCESTRIES,
  LENGTH_METHODS,
  REFRACTION_METHODS,
  SEXES,
  SYMPTOM_KINDS,
  TREATMENT_KINDS,
} from "../../engine/course.js"
import { say } from "../../engine/say.js"
import { limits } from "./limits.js"
import {
  date,
  flag,
  list,
  object,
  oneOf,
  optional,
  optionalQuantity,
  quantity,
  required,
  text,
} from "./schema-parts.js"
import {
  consentDetails,
  programmeLists,
  strength,
  supplyDetails,
  treatmentDetails,
  visitAnswers,
} from "./schema-programme.js"

/**
 * The course file, version 1, field by field. Rules that join two fields are in `rules.ts`.
 *
 * The error text of every field is what is allowed there, in words that can stand after "must be": `readCourse` makes
 * the whole sentence. Optional fields may be absent or null.
 */
export const COURSE_FILE_VERSION = 1

const axialLength = object({
  mm: quantity(limits.axialLengthMm, {
    title: "Axial length, mm",
    description: "Mean of the readings of one session.",
  }),
  readings: optionalQuantity(limits.readings, {
    title: "Readings",
    description: "How many readings the mean is of.",
  }),
  method: optional(oneOf(LENGTH_METHODS), {
    title: "Method",
    description: "How the length was measured; read as optical biometry when absent, and said so.",
  }),
  device: optional(text(), {
    title: "Device",
    description: "Any name that tells one instrument from another; a change of instrument costs certainty.",
  }),
})

const refraction = object({
  sphere: quantity(limits.sphereD, {
    title: "Sphere, D",
    description: "Power of the sphere in dioptres at the spectacle plane.",
  }),
  cylinder: optionalQuantity(limits.cylinderD, {
    title: "Cylinder, D",
    description: "Power of the cylinder in dioptres, either sign; none when absent.",
  }),
  axis: optionalQuantity(limits.axisDegrees, {
    title: "Axis, degrees",
    description: "Axis of the cylinder; needed when the cylinder is not zero. 0 is read as 180.",
  }),
  cycloplegic: optional(flag(), {
    title: "Cycloplegic",
    description: "Whether accommodation was relaxed by drops.",
  }),
  method: optional(oneOf(REFRACTION_METHODS), {
    title: "Method",
    description: "How the refraction was found.",
  }),
})

const eye = object({
  axialLength: optional(axialLength, { title: "Axial length", description: "Length of the eye." }),
  refraction: optional(refraction, { title: "Refraction", description: "Sphere, cylinder and axis." }),
  corneaRadius: optional(
    object({
      flat: quantity(limits.corneaRadiusMm, {
        title: "Flat radius, mm",
        description: "Radius of the flattest meridian.",
      }),
      steep: quantity(limits.corneaRadiusMm, {
        title: "Steep radius, mm",
        description: "Radius of the steepest meridian.",
      }),
    }),
    { title: "Corneal radius", description: "Radii of the front of the cornea." },
  ),
  pupil: optional(
    object({
      photopic: optionalQuantity(limits.pupilMm, {
        title: "Photopic pupil, mm",
        description: "Diameter in bright light.",
      }),
      mesopic: optionalQuantity(limits.pupilMm, {
        title: "Mesopic pupil, mm",
        description: "Diameter in dim light.",
      }),
    }),
    { title: "Pupil", description: "Diameters of the pupil." },
  ),
  accommodation: optional(
    object({
      dioptres: quantity(limits.accommodationD, {
        title: "Amplitude of accommodation, D",
        description: "Amplitude in dioptres.",
      }),
      method: optional(oneOf(ACCOMMODATION_METHODS), {
        title: "Method",
        description: "How the amplitude was found.",
      }),
    }),
    { title: "Accommodation", description: "Amplitude of accommodation." },
  ),
  acuity: optional(
    object({
      distanceLogMAR: optionalQuantity(limits.acuityLogMAR, {
        title: "Distance acuity, logMAR",
        description: "Best corrected distance acuity.",
      }),
      nearLogMAR: optionalQuantity(limits.acuityLogMAR, {
        title: "Near acuity, logMAR",
        description: "Near acuity with the distance correction.",
      }),
    }),
    { title: "Acuity", description: "Visual acuity in logMAR." },
  ),
  intraocularPressure: optional(
    object({
      mmHg: quantity(limits.intraocularPressureMmHg, {
        title: "Intraocular pressure, mmHg",
        description: "Pressure in millimetres of mercury.",
      }),
    }),
    { title: "Intraocular pressure", description: "Pressure of the eye." },
  ),
})

const symptom = object({
  kind: required(oneOf(SYMPTOM_KINDS), { title: "Symptom", description: "What the child notices." }),
  grade: required(z.literal([0, 1, 2, 3], { error: () => say("0, 1, 2 or 3") }), {
    title: "Grade",
    description: "0 none, 1 mild, 2 moderate, 3 severe.",
  }),
})

const visit = object({
  date: required(date(), { title: "Date", description: "Day of the visit; no two visits share one." }),
  right: optional(eye, { title: "Right eye", description: "What was measured in the right eye." }),
  left: optional(eye, { title: "Left eye", description: "What was measured in the left eye." }),
  symptoms: optional(list(symptom), {
    title: "Symptoms",
    description: "Asked for and answered, 0 included.",
  }),
  answers: visitAnswers,
  from: optional(text(), {
    title: "Where from",
    description: "Where the figures come from when not measured here, such as old glasses.",
  }),
})

const treatment = object({
  from: required(date(), { title: "From", description: "First day treated." }),
  to: optional(date(), {
    title: "To",
    description: "First day no longer treated; null or absent while it goes on.",
  }),
  kind: required(oneOf(TREATMENT_KINDS), { title: "Kind", description: "What the child is treated with." }),
  concentrationPercent: strength("Strength of the drops; needed for atropine."),
  ...treatmentDetails,
})

const supply = object({
  dispensed: optional(date(), { title: "Dispensed", description: "Day the bottle was handed out." }),
  opened: optional(date(), { title: "Opened", description: "Day the bottle was opened." }),
  concentrationPercent: strength("Strength on the label."),
  volumeMl: optionalQuantity(limits.volumeMl, {
    title: "Volume, mL",
    description: "Volume of the bottle.",
  }),
  beyondUse: optional(date(), { title: "Beyond-use date", description: "Last day of use once opened." }),
  lot: optional(text(), { title: "Lot", description: "Lot of the pharmacy." }),
  ...supplyDetails,
})

const consent = object({
  date: required(date(), { title: "Date", description: "Day the consent was given." }),
  covers: required(
    object({
      kind: required(oneOf(TREATMENT_KINDS), { title: "Kind", description: "Treatment agreed to." }),
      concentrationPercent: strength(
        "Strength agreed to, for drops: exactly this one is covered. Without it no strength is.",
      ),
    }),
    { title: "Covers", description: "What was agreed to." },
  ),
  ...consentDetails,
})

export const courseSchema = object({
  lengthwise: optional(z.literal(COURSE_FILE_VERSION, { error: `${COURSE_FILE_VERSION}` }), {
    title: "Version of the course file",
    description: "Version of this format; read as 1 when absent, and said so.",
  }),
  child: required(
    object({
      id: optional(text(), { title: "Identifier", description: "The practice's own; no name is needed." }),
      born: required(date(), { title: "Born", description: "Day of birth." }),
      sex: required(z.enum(SEXES, { error: () => say("female or male") }), {
        title: "Sex",
        description: "Chooses the reference and the growth curve.",
      }),
      ancestry: optional(oneOf(ANCESTRIES), {
        title: "Ancestry",
        description: "Picks a default reference and growth curve; never hidden.",
      }),
      myopicParents: optional(z.literal([0, 1, 2], { error: () => say("0, 1 or 2") }), {
        title: "Myopic parents",
        description: "How many of the two parents are myopic.",
      }),
      protocol: optional(text(), {
        title: "Protocol",
        description: "Id of the protocol the child follows; the one that fits the treatment when absent.",
      }),
    }),
    { title: "Child", description: "Whose course this is." },
  ),
  practice: optional(
    object({
      latitude: optionalQuantity(limits.latitudeDegrees, {
        title: "Latitude, degrees",
        description: "Of the practice, south negative; sets the season of growth.",
      }),
    }),
    { title: "Practice", description: "Where the child is seen." },
  ),
  visits: optional(list(visit), { title: "Visits", description: "In any order; read in order of date." }),
  treatments: optional(list(treatment), {
    title: "Treatments",
    description: "Treatments of one kind may not overlap; a change of strength ends one and starts the next.",
  }),
  supplies: optional(list(supply), { title: "Supplies", description: "Bottles handed out." }),
  consents: optional(list(consent), { title: "Consents", description: "What was agreed to and when." }),
  ...programmeLists,
})
