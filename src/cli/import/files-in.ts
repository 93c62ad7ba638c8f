import { readdir, stat } from "node:fs/promises"
import { join } from "node:path"

/** The files of a list of files and folders, folders with everything below them, in the order of their names. */
export async function filesIn(paths: readonly string[]): Promise<readonly string[]> {
  const found: string[] = []
  for (const path of paths) {
    const about = await stat(path).catch(() => null)
    // What is not there is left to the reading of it to complain of.
    if (!about?.isDirectory()) found.push(path)
    else found.push(...(await below(path)))
  }
  return found
}

async function below(folder: string): Promise<readonly string[]> {
  const found: string[] = []
  const inside = await readdir(folder, { withFileTypes: true })
  for (const entry of inside.toSorted((a, b) => (a.name < b.name ? -1 : 1))) {
    // Links could lead out of the folder or in a circle; hidden files are the system's own.
    if (entry.name.startsWith(".")) continue
    const path = join(folder, entry.name)
    if (entry.isDirectory()) found.push(...(await below(path)))
    else if (entry.isFile()) found.push(path)
  }
  return found
}
