import { z } from "zod"
import { say } from "../../engine/say.js"
import { type Limit, limitInWords } from "./limits.js"

/**
 * What the fields of the course file are made of. The error text of every field is what is allowed there, in words that
 * can stand after "must be".
 */

interface Meaning {
  readonly title: string
  readonly description: string
}

export const required = <T extends z.ZodType>(schema: T, meaning: Meaning) => schema.meta({ ...meaning })
export const optional = <T extends z.ZodType>(schema: T, meaning: Meaning & { readonly unit?: string }) =>
  schema.nullish().meta({ ...meaning })

export function number(limit: Limit) {
  const error = () => limitInWords(limit)
  const base = limit.whole ? z.int({ error }) : z.number({ error })
  const above = limit.aboveLow ? base.gt(limit.low, { error }) : base.min(limit.low, { error })
  return above.max(limit.high, { error }).meta({ unit: limit.ucum })
}
export const quantity = (limit: Limit, meaning: Meaning) =>
  number(limit).meta({ ...meaning, unit: limit.ucum })
export const optionalQuantity = (limit: Limit, meaning: Meaning) =>
  optional(number(limit), { ...meaning, unit: limit.ucum })

export const oneOf = <const T extends readonly [string, ...string[]]>(values: T) =>
  z.enum(values, { error: () => say("one of {list}", { list: values.join(", ") }) })
export const date = () => z.iso.date({ error: () => say("a day of the calendar written YYYY-MM-DD") })
export const text = () =>
  z
    .string({ error: () => say("text") })
    .max(200, { error: () => say("text of at most {most} characters", { most: 200 }) })
export const longText = () =>
  z
    .string({ error: () => say("text") })
    .max(2000, { error: () => say("text of at most {most} characters", { most: 2000 }) })
export const flag = () => z.boolean({ error: () => say("true or false") })
export const object = <T extends z.ZodRawShape>(shape: T) =>
  z.object(shape, { error: () => say("an object '{' ... '}'") })
export const list = <T extends z.ZodType>(item: T) => z.array(item, { error: () => say("a list [ ... ]") })
