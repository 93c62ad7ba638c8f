import { say } from "../../engine/say.js"
import type { ReadFile } from "../../interop/intake/fragment.js"
import { readFile } from "../../interop/read-file.js"
import { sha256Of } from "./inbox-content.js"
import { instrumentsPerson } from "./instruments-person.js"
import { isEmpty, takeFragment } from "./take-fragment.js"
import type { FileSent, IntakeContext, Taken } from "./taken.js"

const MEDIA_TYPES = {
  dicom: "application/dicom",
  fhir: "application/fhir+json",
  table: "text/plain",
  "course-file": "application/json",
} as const

/**
 * Takes a received file: what is certainly about one child of the practice and contradicts nothing is recorded, with
 * the object it came from; everything else waits in the Inbox. The bytes are kept either way.
 *
 * @example
 * await takeFile(context, { file: "IM0001", bytes, from: { kind: "instrument", title: "BIOMETER" } })
 * // => [{ file: "IM0001", outcome: "recorded", child: "...", inboxId: "..." }]
 */
export async function takeFile(context: IntakeContext, sent: FileSent): Promise<readonly Taken[]> {
  const { file, bytes } = sent
  return takeRead(context, { ...sent, read: await readFile({ file, bytes, today: context.clock.today() }) })
}

/** As `takeFile`, for a file that was read already. */
export async function takeRead(
  { record, clock, oneAtATime }: IntakeContext,
  { bytes, from, read, makesChildren = false }: FileSent & { readonly read: ReadFile },
): Promise<readonly Taken[]> {
  const context = { record, clock, oneAtATime }
  const skipped = read.skipped.map(
    ({ file, why, where }): Taken => ({
      file,
      outcome: "skipped",
      why: where === undefined ? why : say("{where}: {why}", { where, why }),
    }),
  )
  if (read.fragments.length === 0) return skipped
  // A table says nothing of its columns: how it is read is a person's to see first.
  if (read.fragments.some(({ source }) => source.kind === "table"))
    return [{ file: read.file, outcome: "skipped", why: say("it is a table: take it in under Import") }]
  // Nothing is kept of a file of which nothing can be recorded.
  if (read.fragments.every(isEmpty))
    return [
      ...read.fragments.map(
        (): Taken => ({ file: read.file, outcome: "skipped", why: say("nothing in it can be recorded") }),
      ),
      ...skipped,
    ]
  const taken = await oneAtATime(async () => {
    const recordedAt = new Date(clock.nowMs()).toISOString()
    const author = from.kind === "person" ? from.person : await instrumentsPerson(record, recordedAt)
    const kind = read.fragments[0]?.source.kind ?? "course-file"
    const mediaType = MEDIA_TYPES[kind]
    const sha256 = await record.addFile({
      mediaType,
      bytes: Buffer.from(bytes),
      author: author.id,
      recordedAt,
    })
    const outcomes: Taken[] = []
    const keys = new Map<string, number>()
    for (const fragment of read.fragments) {
      const id = fragment.source.id || sha256Of(bytes)
      // A file with several children names itself the same in each.
      const place = (keys.get(id) ?? 0) + 1
      keys.set(id, place)
      outcomes.push(
        await takeFragment(context, {
          file: read.file,
          sha256,
          mediaType,
          fragment,
          key: place === 1 ? id : `${id} ${place}`,
          sentBy: from.kind === "person" ? from.person.name : from.title,
          author,
          makesChildren,
        }),
      )
    }
    return outcomes
  })
  return [...taken, ...skipped]
}
