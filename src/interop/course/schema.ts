import { z } from "zod"
import { ANCESTRIES, SEXES, SOURCE_KINDS, SYMPTOM_KINDS, TREATMENT_KINDS } from "../../engine/course.js"
import { say } from "../../engine/say.js"
import { limits } from "./limits.js"
import { eye } from "./schema-eye.js"
import { date, list, object, oneOf, optional, optionalQuantity, required, text } from "./schema-parts.js"
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
  sources: optional(
    list(
      object({
        kind: required(oneOf(SOURCE_KINDS), { title: "Kind", description: "Kind of file." }),
        id: required(text(), {
          title: "Identifier",
          description: "What tells the file or object from all others: a UID, an address, a SHA-256.",
        }),
        device: optional(text(), { title: "Device", description: "The instrument that wrote it." }),
      }),
    ),
    { title: "Sources", description: "Files that figures of this visit were taken from." },
  ),
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
