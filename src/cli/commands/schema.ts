import { courseJsonSchema } from "../../interop/course/course-json-schema.js"
import { feesJsonSchema } from "../fee-file.js"
import type { ExitCode, Io } from "../io.js"
import { toldJson } from "../told.js"

/** Prints the JSON Schema of the course file or of the fees; with or without `--json` it is the same document. */
export async function run(
  { of = "course-file" }: { readonly of?: "course-file" | "fees" | undefined },
  io: Io,
): Promise<ExitCode> {
  return toldJson(of === "fees" ? feesJsonSchema() : courseJsonSchema(), io)
}
