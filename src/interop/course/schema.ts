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
import { type Limit, limitInWords, limits } from "./limits.js"

/**
 * The course file, version 1, field by field. Rules that join two fields are in `rules.ts`.
 *
 * The error text of every field is what is allowed there, in words that can stand after "must be": `readCourse` makes
 * the whole sentence. Optional fields may be absent or null.
 */
export const COURSE_FILE_VERSION = 1

interface Meaning {
  readonly title: string
  readonly description: string
}

const required = <T extends z.ZodType>(schema: T, meaning: Meaning) => schema.meta({ ...meaning })
const optional = <T extends z.ZodType>(schema: T, meaning: Meaning & { readonly unit?: string }) =>
  schema.nullish().meta({ ...meaning })

function number(limit: Limit) {
  const error = limitInWords(limit)
  const base = limit.whole ? z.int({ error }) : z.number({ error })
  const above = limit.aboveLow ? base.gt(limit.low, { error }) : base.min(limit.low, { error })
  return above.max(limit.high, { error }).meta({ unit: limit.ucum })
}
const quantity = (limit: Limit, meaning: Meaning) => number(limit).meta({ ...meaning, unit: limit.ucum })
const optionalQuantity = (limit: Limit, meaning: Meaning) =>
  optional(number(limit), { ...meaning, unit: limit.ucum })

const oneOf = <const T extends readonly [string, ...string[]]>(values: T) =>
  z.enum(values, { error: `one of ${values.join(", ")}` })
const date = () => z.iso.date({ error: "a day of the calendar written YYYY-MM-DD" })
const text = () => z.string({ error: "text" }).max(200, { error: "text of at most 200 characters" })
const flag = () => z.boolean({ error: "true or false" })
const object = <T extends z.ZodRawShape>(shape: T) => z.object(shape, { error: "an object { ... }" })
const list = <T extends z.ZodType>(item: T) => z.array(item, { error: "a list [ ... ]" })

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
})

const symptom = object({
  kind: required(oneOf(SYMPTOM_KINDS), { title: "Symptom", description: "What the child notices." }),
  grade: required(z.literal([0, 1, 2, 3], { error: "0, 1, 2 or 3" }), {
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
  from: optional(text(), {
    title: "Where from",
    description: "Where the figures come from when not measured here, such as old glasses.",
  }),
})

const strength = (description: string) =>
  optionalQuantity(limits.concentrationPercent, { title: "Concentration, % w/v", description })

const treatment = object({
  from: required(date(), { title: "From", description: "First day treated." }),
  to: optional(date(), {
    title: "To",
    description: "First day no longer treated; null or absent while it goes on.",
  }),
  kind: required(oneOf(TREATMENT_KINDS), { title: "Kind", description: "What the child is treated with." }),
  concentrationPercent: strength("Strength of the drops; needed for atropine."),
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
})

const consent = object({
  date: required(date(), { title: "Date", description: "Day the consent was given." }),
  covers: required(
    object({
      kind: required(oneOf(TREATMENT_KINDS), { title: "Kind", description: "Treatment agreed to." }),
      concentrationPercent: strength("Highest strength agreed to."),
    }),
    { title: "Covers", description: "What was agreed to." },
  ),
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
      sex: required(z.enum(SEXES, { error: "female or male" }), {
        title: "Sex",
        description: "Chooses the reference and the growth curve.",
      }),
      ancestry: optional(oneOf(ANCESTRIES), {
        title: "Ancestry",
        description: "Picks a default reference and growth curve; never hidden.",
      }),
      myopicParents: optional(z.literal([0, 1, 2], { error: "0, 1 or 2" }), {
        title: "Myopic parents",
        description: "How many of the two parents are myopic.",
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
})
