import { courseJsonSchema } from "../../interop/course/course-json-schema.js"
import type { ExitCode, Io } from "../io.js"
import { toldJson } from "../told.js"

/** Prints the JSON Schema of the course file; with or without `--json` it is the same document. */
export async function run(_: object, io: Io): Promise<ExitCode> {
  return toldJson(courseJsonSchema(), io)
}
