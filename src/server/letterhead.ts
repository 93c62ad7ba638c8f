import type { PracticeLetterhead } from "../engine/practice-rules.js"
import { say } from "../engine/say.js"
import { problem } from "../interop/course/problem.js"
import type { PracticeRecord } from "../record/index.js"
import type { Letterhead, Picture } from "../report/document.js"
import { pictureFault } from "../report/pdf/picture-fault.js"
import { Refusal } from "./refusal.js"

type Stored = Pick<PracticeRecord, "file" | "practice">

/** The head of the practice's papers as they are set, its picture out of the stored files. */
export async function letterheadOf(
  letterhead: PracticeLetterhead | undefined,
  record: Stored,
): Promise<Letterhead> {
  const logo = letterhead?.logo ? await pictureOf(letterhead.logo, record) : null
  return { practice: record.practice.name, lines: letterhead?.lines ?? [], ...(logo ? { logo } : {}) }
}

/** Refuses a letterhead whose picture is not there, is too large, or cannot be set on a paper. */
export async function checkedLetterhead(
  { logo }: PracticeLetterhead,
  { record }: { readonly record: Stored },
): Promise<void> {
  if (!logo) return
  const picture = await pictureOf(logo, record)
  const allowed =
    picture === null ? say("a stored PNG or JPEG") : pictureFault(picture, { practice: record.practice.name })
  if (allowed !== null) throw new Refusal(422, [problem({ path: "body.logo", value: logo, allowed })])
}

async function pictureOf(sha256: string, record: Stored): Promise<Picture | null> {
  const file = await record.file(sha256)
  if (!file) return null
  const { mediaType, bytes } = file
  return mediaType === "image/png" || mediaType === "image/jpeg" ? { mediaType, bytes } : null
}
