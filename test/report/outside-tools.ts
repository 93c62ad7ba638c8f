import { spawnSync } from "node:child_process"
import { mkdtempSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"

/** Programs of others that read our files; Debian has them as poppler-utils and qpdf. */
export const hasTool = (name: string): boolean => spawnSync(name, ["--version"]).error === undefined

/** What a program says of a file. It is written for the time of one run. */
export function toolOn(
  bytes: Uint8Array,
  { program, before = [], after = [] }: ToolRun,
): { readonly status: number | null; readonly out: string; readonly error: string } {
  const folder = mkdtempSync(join(tmpdir(), "lengthwise-pdf-"))
  try {
    const file = join(folder, "paper.pdf")
    writeFileSync(file, bytes)
    const { status, stdout, stderr } = spawnSync(program, [...before, file, ...after], {
      encoding: "utf8",
      maxBuffer: 64_000_000,
    })
    return { status, out: stdout, error: stderr }
  } finally {
    rmSync(folder, { recursive: true })
  }
}

interface ToolRun {
  readonly program: string
  readonly before?: readonly string[]
  readonly after?: readonly string[]
}

/** The words of a PDF in reading order, without blanks between lines. */
export const textOf = (bytes: Uint8Array): string =>
  toolOn(bytes, { program: "pdftotext", after: ["-"] }).out.replace(/\s+/g, " ")

interface Element {
  readonly kind: string
  readonly alt: string | null
  readonly lang: string | null
}

/** The catalog and every element of the structure tree, by qpdf. */
export function structureOf(bytes: Uint8Array): {
  readonly catalog: Readonly<Record<string, unknown>>
  readonly elements: readonly Element[]
} {
  const said = JSON.parse(toolOn(bytes, { program: "qpdf", before: ["--json"] }).out)
  const objects: readonly Readonly<Record<string, unknown>>[] = Object.values(said.qpdf[1])
    .map((held) => (held as { readonly value?: unknown }).value)
    .filter((held) => typeof held === "object" && held !== null)
    .map((held) => held as Readonly<Record<string, unknown>>)
  const text = (held: unknown) => (typeof held === "string" ? held.replace(/^u:/, "") : null)
  return {
    catalog: objects.find((held) => held["/Type"] === "/Catalog") ?? {},
    elements: objects
      .filter((held) => held["/Type"] === "/StructElem")
      .map((held) => ({ kind: String(held["/S"]), alt: text(held["/Alt"]), lang: text(held["/Lang"]) })),
  }
}
