import { z } from "zod"

export type { Problem } from "../../engine/problem.js"

/** How every refusal is answered, as `application/problem+json`. */
const problemSchema = z.object({
  path: z.string().describe("Where in the request, such as right.axialLength.mm; empty for the whole of it"),
  value: z.unknown().describe("What stood there"),
  allowed: z.string().describe("What may stand there, in words"),
  message: z.string().describe("The whole sentence"),
})
export const problemAnswer = z
  .object({ title: z.string(), problems: z.array(problemSchema) })
  .meta({ id: "Refused" })

export type ProblemAnswer = z.infer<typeof problemAnswer>
