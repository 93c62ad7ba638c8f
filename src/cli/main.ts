import { processIo } from "./process-io.js"
import { runCommandLine } from "./program.js"

// A reader that has read enough (a pipe into head) closes stdout; that is no fault of the command.
process.stdout.on("error", (cause: NodeJS.ErrnoException) => {
  if (cause.code === "EPIPE") process.exit(0)
  throw cause
})

// The code is set and not exited with, so that a long answer into a pipe is written whole.
process.exitCode = await runCommandLine(process.argv.slice(2), processIo)
