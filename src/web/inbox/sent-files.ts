import { language, say } from "../../engine/say.js"
import type { TakenAnswer } from "../../server/contract/inbox.js"
import { LARGEST_INBOX_FILE_BYTES } from "../../server/contract/inbox-words.js"
import { failureInWords, Refused } from "../client.js"

export type FileOutcome = TakenAnswer["taken"][number]

/** A file with the folder it was in. */
export interface ChosenFile {
  readonly name: string
  readonly file: File
}

const TABLE = /\.(csv|tsv|tab|xlsx)$/i

/** Sends one file and says what became of it; what is known beforehand not to be taken is not sent. */
export async function sendFile(
  { name, file }: ChosenFile,
  signal: AbortSignal,
): Promise<readonly FileOutcome[] | "cancelled"> {
  const skipped = (why: string) => [{ file: name, outcome: "skipped", why } as const]
  if (TABLE.test(name)) return skipped(say("it is a table: take it in under Import"))
  if (file.size > LARGEST_INBOX_FILE_BYTES)
    return skipped(
      say("The file must be {allowed}.", {
        allowed: say("at most {megabytes} MB", { megabytes: LARGEST_INBOX_FILE_BYTES / 1_000_000 }),
      }),
    )
  try {
    const response = await fetch(`/api/inbox/files?file=${encodeURIComponent(name)}`, {
      method: "POST",
      credentials: "same-origin",
      headers: { "content-type": "application/octet-stream", "accept-language": language() },
      body: file,
      signal,
    })
    const answer = await response.json()
    if (response.ok) return (answer as TakenAnswer).taken
    return skipped(failureInWords(new Refused(response.status, answer.title, answer.problems ?? [])))
  } catch {
    if (signal.aborted) return "cancelled"
    return skipped(say("The server cannot be reached."))
  }
}

/** Every file that was dropped, folders with everything below them. */
export async function droppedFiles(data: DataTransfer): Promise<readonly ChosenFile[]> {
  const entries = [...data.items].map((item) => item.webkitGetAsEntry())
  if (entries.every((entry) => entry === null)) return plainFiles(data.files)
  const found: ChosenFile[] = []
  for (const entry of entries) if (entry) await gather(entry, found)
  return found
}

export const plainFiles = (files: Iterable<File>): readonly ChosenFile[] =>
  [...files]
    .filter(({ name }) => !name.startsWith("."))
    .map((file) => ({ name: file.webkitRelativePath || file.name, file }))

async function gather(entry: FileSystemEntry, found: ChosenFile[]): Promise<void> {
  if (entry.name.startsWith(".")) return
  if (entry.isFile) {
    const file = await new Promise<File>((done, fail) => (entry as FileSystemFileEntry).file(done, fail))
    found.push({ name: entry.fullPath.replace(/^\//, ""), file })
    return
  }
  const reader = (entry as FileSystemDirectoryEntry).createReader()
  // A folder is told in parts until one is empty.
  for (;;) {
    const part = await new Promise<FileSystemEntry[]>((done, fail) => reader.readEntries(done, fail))
    if (part.length === 0) return
    for (const inside of part) await gather(inside, found)
  }
}
