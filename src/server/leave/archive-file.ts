import { createWriteStream } from "node:fs"
import { rename, rm, stat } from "node:fs/promises"
import type { Writable } from "node:stream"

/**
 * Lets something be written beside a file and puts it in its place once it is whole: whoever looks finds the old file,
 * the new one or none, never a part. Readable by its owner only. Returns what was written and its size.
 */
export async function wholeFile<T>(
  file: string,
  write: (destination: Writable) => Promise<T>,
): Promise<{ readonly result: T; readonly bytes: number }> {
  const beside = `${file}.${process.pid}.part`
  const destination = createWriteStream(beside, { mode: 0o600 })
  try {
    const result = await write(destination)
    const { size } = await stat(beside)
    await rename(beside, file)
    return { result, bytes: size }
  } catch (cause) {
    destination.destroy()
    await rm(beside, { force: true })
    throw cause
  }
}
