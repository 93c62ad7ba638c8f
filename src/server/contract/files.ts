import { z } from "zod"

/** What may be stored beside the entries, by media type, with what a person calls it and the end of its name. */
export const FILE_TYPES = {
  "application/pdf": { name: "PDF", ending: "pdf" },
  "image/png": { name: "PNG", ending: "png" },
  "image/jpeg": { name: "JPEG", ending: "jpg" },
  "image/svg+xml": { name: "drawn signature", ending: "svg" },
  "text/plain": { name: "text", ending: "txt" },
} as const
export type FileType = keyof typeof FILE_TYPES

/** Of these may a scan be. */
export const SCAN_TYPES = [
  "application/pdf",
  "image/png",
  "image/jpeg",
] as const satisfies readonly FileType[]

export const LARGEST_FILE_BYTES = 10_000_000

export const fileQuery = z.object({
  mediaType: z
    .enum(Object.keys(FILE_TYPES) as [FileType, ...FileType[]], {
      error: `one of ${Object.keys(FILE_TYPES).join(", ")}`,
    })
    .describe("What the bytes are; sent as application/octet-stream and checked against their beginning"),
})
export const sha256Field = z
  .string({ error: "64 hexadecimal digits" })
  .regex(/^[0-9a-f]{64}$/, { error: "64 hexadecimal digits" })
export const fileParams = z.object({ sha256: sha256Field })
export const fileAnswer = z
  .object({ sha256: z.string().describe("What the file is known by from now on"), bytes: z.int() })
  .meta({ id: "StoredFile" })

export type FileAnswer = z.infer<typeof fileAnswer>
