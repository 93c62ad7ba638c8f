import { z } from "zod"
import { say } from "../../engine/say.js"
import { FILE_TYPES, type FileType } from "./file-types.js"

export const fileQuery = z.object({
  mediaType: z
    .enum(Object.keys(FILE_TYPES) as [FileType, ...FileType[]], {
      error: () => say("one of {list}", { list: Object.keys(FILE_TYPES).join(", ") }),
    })
    .describe("What the bytes are; sent as application/octet-stream and checked against their beginning"),
})
export const sha256Field = z
  .string({ error: () => say("64 hexadecimal digits") })
  .regex(/^[0-9a-f]{64}$/, { error: () => say("64 hexadecimal digits") })
export const fileParams = z.object({ sha256: sha256Field })
export const fileAnswer = z
  .object({ sha256: z.string().describe("What the file is known by from now on"), bytes: z.int() })
  .meta({ id: "StoredFile" })

export type FileAnswer = z.infer<typeof fileAnswer>
