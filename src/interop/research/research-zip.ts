import { buffer } from "node:stream/consumers"
import { ZipFile } from "yazl"
import type { ResearchTable } from "./research-table.js"

/** The files of a table for research in one .zip. The same table gives the same bytes. */
export async function researchZip({ files }: ResearchTable): Promise<Uint8Array> {
  const zip = new ZipFile()
  // When it was made would tell between which visits.
  for (const { name, text } of files)
    zip.addBuffer(Buffer.from(text, "utf8"), name, { mtime: new Date(Date.UTC(2000, 0, 1)), mode: 0o100600 })
  zip.end()
  return buffer(zip.outputStream)
}
