import type { z } from "zod"
import type { Course } from "../../engine/course.js"
import { courseSchema } from "../../interop/course/schema.js"

// The pieces of the course file, taken out of its schema: a page and a file have the same limits.
const { child, visits, treatments, supplies, consents, ...programme } = courseSchema.shape
export const childFields = child
export const visitFields = visits.unwrap().unwrap().element
export const treatmentFields = treatments.unwrap().unwrap().element
export const supplyFields = supplies.unwrap().unwrap().element
export const consentFields = consents.unwrap().unwrap().element
export const missedNightsFields = programme.missedNights.unwrap().unwrap().element
export const decisionFields = programme.decisions.unwrap().unwrap().element
export const concernFields = programme.concerns.unwrap().unwrap().element
export const orderFields = programme.orders.unwrap().unwrap().element
export const explanationFields = programme.explanations.unwrap().unwrap().element
export const paymentFields = programme.payments.unwrap().unwrap().element
export const refractionFields = visitFields.shape.right.unwrap().unwrap().shape.refraction

/** A course as answered: always sound, so it has the engine's own type. */
export const courseAnswer = courseSchema as unknown as z.ZodType<Course>
