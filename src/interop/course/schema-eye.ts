import {
  ACCOMMODATION_METHODS,
  ACUITY_CORRECTIONS,
  EYE_DROPS,
  LENGTH_METHODS,
  LENS_STATUSES,
  REFRACTION_METHODS,
} from "../../engine/course.js"
import { limits } from "./limits.js"
import {
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

/** One eye in the course file, field by field. */

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
  signalToNoise: optionalQuantity(limits.signalToNoise, {
    title: "Signal to noise",
    description: "Quality of the chosen length, as the instrument states it.",
  }),
  sdMm: optionalQuantity(limits.sdMm, {
    title: "Standard deviation, mm",
    description: "Spread of the readings, as the instrument states it.",
  }),
  each: optional(
    list(
      object({
        mm: quantity(limits.axialLengthMm, { title: "Reading, mm", description: "One reading." }),
        signalToNoise: optionalQuantity(limits.signalToNoise, {
          title: "Signal to noise",
          description: "Quality of the reading, as the instrument states it.",
        }),
        byHand: optional(flag(), {
          title: "By hand",
          description: "Whether somebody moved the marks by hand.",
        }),
      }),
    ),
    { title: "Each reading", description: "The readings one by one." },
  ),
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
  vertexDistanceMm: optionalQuantity(limits.vertexDistanceMm, {
    title: "Vertex distance, mm",
    description: "From the cornea to the plane the powers are for.",
  }),
  device: optional(text(), { title: "Device", description: "The instrument." }),
})

const spectaclesWorn = object({
  sphere: quantity(limits.sphereD, { title: "Sphere, D", description: "Power of the sphere." }),
  cylinder: optionalQuantity(limits.cylinderD, {
    title: "Cylinder, D",
    description: "Power of the cylinder, either sign; none when absent.",
  }),
  axis: optionalQuantity(limits.axisDegrees, {
    title: "Axis, degrees",
    description: "Axis of the cylinder; needed when the cylinder is not zero. 0 is read as 180.",
  }),
  addD: optionalQuantity(limits.addD, { title: "Addition, D", description: "Addition for near." }),
  prism: optional(text(), { title: "Prism", description: "Prism as it was written." }),
})

const dilation = object({
  dilated: required(flag(), { title: "Dilated", description: "Whether the pupil was widened." }),
  pupilMm: optionalQuantity(limits.dilatedPupilMm, {
    title: "Pupil, mm",
    description: "Diameter of the widened pupil.",
  }),
  drops: optional(
    list(
      object({
        drop: required(oneOf(EYE_DROPS), { title: "Drop", description: "What was given." }),
        concentrationPercent: optionalQuantity(limits.dropPercent, {
          title: "Strength, %",
          description: "Strength of the drop.",
        }),
      }),
    ),
    { title: "Drops", description: "Drops given for the examination, not for treatment." },
  ),
})

/** What is measured in one eye at one visit. */
export const eye = object({
  axialLength: optional(axialLength, { title: "Axial length", description: "Length of the eye." }),
  refraction: optional(refraction, { title: "Refraction", description: "Sphere, cylinder and axis." }),
  otherRefractions: optional(list(refraction), {
    title: "Other refractions",
    description: "Further refractions of the same day by other methods; nothing is calculated from them.",
  }),
  spectaclesWorn: optional(spectaclesWorn, {
    title: "Glasses worn",
    description: "Glasses read off while worn; no refraction of the eye on that day.",
  }),
  lensStatus: optional(oneOf(LENS_STATUSES), {
    title: "Lens",
    description: "The eye's own lens, none, or an implant.",
  }),
  dilation: optional(dilation, {
    title: "Dilation",
    description: "Whether the pupil was widened when the eye was measured.",
  }),
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
      flatAxis: optionalQuantity(limits.axisDegrees, {
        title: "Flat meridian, degrees",
        description: "Direction of the flattest meridian.",
      }),
      steepAxis: optionalQuantity(limits.axisDegrees, {
        title: "Steep meridian, degrees",
        description: "Direction of the steepest meridian.",
      }),
      flatD: optionalQuantity(limits.corneaPowerD, {
        title: "Flat power, D",
        description: "As the instrument gave it; its index is its own.",
      }),
      steepD: optionalQuantity(limits.corneaPowerD, {
        title: "Steep power, D",
        description: "As the instrument gave it; its index is its own.",
      }),
      device: optional(text(), { title: "Device", description: "The instrument." }),
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
        description: "Distance acuity, with the best correction unless said otherwise.",
      }),
      distanceCorrection: optional(oneOf(ACUITY_CORRECTIONS), {
        title: "Correction",
        description: "What the child looked through: nothing, what it wears, or the best correction.",
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
