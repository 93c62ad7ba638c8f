import { z } from "zod"

export const researchAnswer = z
  .object({
    children: z.int().describe("Children with a visit"),
    rows: z.int(),
    smallestCell: z.int().describe("Groups of fewer children are warned of"),
    smallCells: z.array(
      z.object({ sex: z.string(), ancestry: z.string(), ageAtFirstVisit: z.int(), children: z.int() }),
    ),
    dictionary: z.array(
      z.object({
        column: z.string(),
        title: z.string(),
        description: z.string(),
        unit: z.string(),
        allowed: z.string(),
        field: z.string(),
      }),
    ),
  })
  .describe("What a table without names would hold")

export type ResearchAnswer = z.infer<typeof researchAnswer>

/** The measurements of the practice without names. */
export const researchApi = {
  research: { method: "GET", url: "/api/research", answer: researchAnswer },
  /** The table, what its columns mean, and its small cells, as a .zip. */
  researchTable: { method: "GET", url: "/api/research/table.zip" },
} as const
