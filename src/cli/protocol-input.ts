import type { Problem } from "../engine/problem.js"
import type { Protocol } from "../engine/protocol/protocol.js"
import { protocolProblems } from "../engine/protocol/protocol-problems.js"
import { WHOLE_FILE } from "../interop/course/problem.js"
import type { Io } from "./io.js"

/** The protocol of a file, or every fault in it. */
export async function protocolInput(
  file: string,
  io: Io,
): Promise<{ readonly protocol: Protocol } | { readonly problems: readonly Problem[] }> {
  const source = await io.read(file)
  if ("problem" in source) return { problems: [inProtocol(source.problem)] }
  let value: unknown
  try {
    value = JSON.parse(source.text)
  } catch (cause) {
    const words = cause instanceof Error ? cause.message : String(cause)
    const message = `The protocol ${file} is not JSON: ${words}.`
    return {
      problems: [inProtocol({ path: WHOLE_FILE, value: null, allowed: "a protocol in JSON", message })],
    }
  }
  const problems = protocolProblems(value)
  if (problems.length > 0) return { problems: problems.map(inProtocol) }
  return { protocol: value as Protocol }
}

// Where two files are read, the sentence of each fault says which of them it is in.
const inProtocol = (fault: Problem): Problem => ({
  ...fault,
  path: fault.path === "" ? WHOLE_FILE : fault.path,
  message: `Protocol: ${fault.message}`,
})
