import { readFileSync } from "node:fs"
import { runCommandLine } from "../../src/cli/program.js"
import { WHOLE_FILE } from "../../src/interop/course/problem.js"

/** What a command line answers, with files and the clock made up: no process, no disk but the examples. */
export async function commandLine(
  argv: readonly string[],
  {
    files = {},
    today = "2026-08-01",
  }: { readonly files?: Readonly<Record<string, unknown>>; readonly today?: string } = {},
) {
  let stdout = ""
  let stderr = ""
  const written: Record<string, string | Uint8Array> = {}
  const code = await runCommandLine(argv, {
    out: (answer) => {
      stdout += typeof answer === "string" ? answer : Buffer.from(answer).toString("latin1")
    },
    readBytes: async (file, most) => {
      const held = files[file]
      if (held instanceof Uint8Array && held.length <= most) return { bytes: held }
      const message = held instanceof Uint8Array ? `${file} is too large.` : `${file} cannot be read.`
      return { problem: { path: WHOLE_FILE, value: file, allowed: "a file that can be read", message } }
    },
    error: (text) => {
      stderr += text
    },
    today: () => today,
    write: async (file, content) => {
      if (file.startsWith("locked/")) {
        const message = `${file} cannot be written: writing it is not permitted.`
        return { path: "--out", value: file, allowed: "a file that can be written", message }
      }
      written[file] = content
      return null
    },
    place: async (path) => {
      const inside = Object.keys(files).filter((name) => name.startsWith(`${path}/`))
      return inside.length === 0 ? { kind: "file" } : { kind: "courses", files: inside.sort() }
    },
    files: async (path) => {
      const inside = Object.keys(files).filter((name) => name === path || name.startsWith(`${path}/`))
      if (inside.length > 0) return { files: inside.sort() }
      const message = `${path} cannot be read: there is no such file.`
      return { problem: { path: WHOLE_FILE, value: path, allowed: "a file that can be read", message } }
    },
    read: async (file) => {
      if (file in files) {
        const held = files[file]
        return { text: typeof held === "string" ? held : JSON.stringify(held) }
      }
      if (file.startsWith("examples/")) {
        return { text: readFileSync(new URL(`../../${file}`, import.meta.url), "utf8") }
      }
      const message = `${file} cannot be read: there is no such file.`
      return { problem: { path: WHOLE_FILE, value: file, allowed: "a file that can be read", message } }
    },
  })
  return { code, stdout, stderr, written }
}

/** The one JSON document on stdout; throws when there is anything else. */
export const json = ({ stdout }: { readonly stdout: string }) => JSON.parse(stdout)
