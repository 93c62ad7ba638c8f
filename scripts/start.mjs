/**
 * `npm start`: brings everything up to date that is not (packages, build), then serves the demo practice on this machine.
 * LENGTHWISE_PORT and LENGTHWISE_DATA choose another port or data folder, LENGTHWISE_TODAY another day (demo only). Uses no package, so it runs on a fresh clone.
 */
import { spawn, spawnSync } from "node:child_process"
import { dirname, join } from "node:path"
import { fileURLToPath } from "node:url"

const root = join(dirname(fileURLToPath(import.meta.url)), "..")
const { LENGTHWISE_PORT: port = "4380", LENGTHWISE_DATA: data = join(root, ".data", "practice") } =
  process.env

// The build refuses a Node that is too old and installs what is missing; it says what it does.
const build = spawnSync(process.execPath, [join(root, "scripts", "build.mjs")], { stdio: ["ignore", 2, 2] })
if (build.status !== 0) process.exit(1)

const server = spawn(
  process.execPath,
  [
    join(root, "dist", "cli", "main.js"),
    "serve",
    ...["--data", data, "--port", port, "--demo"],
    ...(process.env.LENGTHWISE_TODAY ? ["--today", process.env.LENGTHWISE_TODAY] : []),
  ],
  { stdio: "inherit" },
)
// Ctrl+C reaches the server by itself; a signal sent to this process alone is handed on. Either way the server ends first.
for (const signal of ["SIGINT", "SIGTERM"])
  process.on(signal, () => {
    if (signal === "SIGTERM") server.kill(signal)
  })
server.on("exit", (code) => process.exit(code ?? 1))
