/**
 * Builds what is out of date, and nothing else: packages when they are missing, then src -> dist (TypeScript), then the
 * pages (Vite). Uses no package of its own, so that it runs on a fresh clone.
 *
 *   node scripts/build.mjs [--no-web]
 *
 * Two processes may call it at once: the second waits for the first and then finds nothing left to do.
 * Everything it says goes to stderr; stdout belongs to the command that asked for the build.
 */
import { spawnSync } from "node:child_process"
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from "node:fs"
import { dirname, join } from "node:path"
import { fileURLToPath } from "node:url"

const root = join(dirname(fileURLToPath(import.meta.url)), "..")
const withWeb = !process.argv.includes("--no-web") && existsSync(join(root, "src/web/index.html"))
const LOCK = join(root, "dist/.build-lock")
const NODE_STAMP = join(root, "dist/.built")
const WEB_STAMP = join(root, "dist/.built-web")
const NODE_SOURCES = ["evidence", "engine", "chart", "words", "record", "interop", "report", "server", "cli"]
const WEB_SOURCES = ["evidence", "engine", "chart", "words", "report", "server", "web"]
const CONFIG = ["package.json", "tsconfig.base.json", "src/tsconfig.json", "src/engine/tsconfig.json"]

refuseOldNode()
const release = await lock()
try {
  install()
  buildNode()
  if (withWeb) buildWeb()
} finally {
  release()
}

function refuseOldNode() {
  const [major, minor] = process.versions.node.split(".").map(Number)
  if (major > 20 || (major === 20 && minor >= 19)) return
  fail(`Lengthwise needs Node 20.19 or newer; this is ${process.versions.node}.`)
}

function install() {
  // npm writes this file last, so a folder without it is an install that was cut short.
  if (existsSync(join(root, "node_modules/.package-lock.json"))) return
  say("Installing packages (once, about two minutes) ...")
  const hasLock = existsSync(join(root, "package-lock.json"))
  run(process.platform === "win32" ? "npm.cmd" : "npm", [
    hasLock ? "ci" : "install",
    "--no-audit",
    "--no-fund",
  ])
}

function buildNode() {
  const started = new Date()
  if (!isStale(NODE_STAMP, NODE_SOURCES, CONFIG)) return
  say("Building ...")
  run(process.execPath, [join(root, "node_modules/typescript/bin/tsc"), "-b", "src"])
  // A text that some language lacks stops the build: nobody is to meet half a page in another language.
  run(process.execPath, [join(root, "scripts/words.mjs")])
  stamp(NODE_STAMP, started)
}

function buildWeb() {
  const started = new Date()
  if (!isStale(WEB_STAMP, WEB_SOURCES, [...CONFIG, "vite.config.ts"])) return
  say("Building the pages ...")
  const vite = join(root, "node_modules/vite/bin/vite.js")
  // The page behind a family's link is built apart: two pages built together are cut into many small shared files.
  for (const mode of ["production", "family"]) {
    run(process.execPath, [vite, "build", "--mode", mode, "--logLevel", "warn"])
  }
  stamp(WEB_STAMP, started)
}

/** True when a source was changed after the stamp, or there is no stamp. Tests are no part of what is built. */
function isStale(stampFile, folders, files) {
  if (!existsSync(stampFile)) return true
  const built = statSync(stampFile).mtimeMs
  const newer = (path) => existsSync(path) && statSync(path).mtimeMs > built
  return (
    files.some((file) => newer(join(root, file))) ||
    folders.some((folder) => {
      const path = join(root, "src", folder)
      if (!existsSync(path)) return false
      return readdirSync(path, { recursive: true, withFileTypes: true }).some(
        (entry) =>
          entry.isFile() &&
          !/\.test\.tsx?$/.test(entry.name) &&
          newer(join(entry.parentPath ?? entry.path, entry.name)),
      )
    })
  )
}

// The stamp carries the time the build began: what was saved while it ran is newer, and will be built next time.
function stamp(file, started) {
  mkdirSync(dirname(file), { recursive: true })
  writeFileSync(file, `${started.toISOString()}\n`)
  utimesSync(file, started, started)
}

/**
 * Waits until no other build runs, and holds the others off until the returned function is called. Making a folder
 * either succeeds or fails as a whole, on every file system. A lock whose process has gone is taken over.
 */
async function lock() {
  mkdirSync(dirname(LOCK), { recursive: true })
  for (let told = false; ; ) {
    try {
      mkdirSync(LOCK)
      writeFileSync(join(LOCK, "pid"), String(process.pid))
      let held = true
      // Once only: by the time this process ends the folder may be the lock of another.
      const release = () => {
        if (held) rmSync(LOCK, { recursive: true, force: true })
        held = false
      }
      process.on("exit", release)
      for (const signal of ["SIGINT", "SIGTERM"]) process.on(signal, () => process.exit(1))
      return release
    } catch (cause) {
      if (cause.code !== "EEXIST") throw cause
    }
    if (holderIsGone()) rmSync(LOCK, { recursive: true, force: true })
    else {
      if (!told) say("Waiting for another build to end ...")
      told = true
      await new Promise((resolve) => setTimeout(resolve, 100))
    }
  }
}

function holderIsGone() {
  try {
    process.kill(Number(readFileSync(join(LOCK, "pid"), "utf8")), 0)
    return false
  } catch (cause) {
    // No pid yet: the other process is between making the folder and writing into it, unless that was long ago.
    // It may go at any moment, since the other build may be ending.
    const lock = statSync(LOCK, { throwIfNoEntry: false })
    if (cause.code === "ENOENT") return lock !== undefined && Date.now() - lock.mtimeMs > 5_000
    return cause.code === "ESRCH"
  }
}

/** Runs a program with its output on stderr and nothing to read, since stdin may carry a course file. */
function run(program, parts) {
  const { status, error } = spawnSync(program, parts, { cwd: root, stdio: ["ignore", 2, 2] })
  if (status !== 0) fail(`The build stopped: ${error?.message ?? `${parts.join(" ")} ended with ${status}`}.`)
}

function say(text) {
  process.stderr.write(`${text}\n`)
}

function fail(text) {
  say(text)
  process.exit(1)
}
