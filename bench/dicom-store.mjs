/**
 * DICOM objects a second, sent by dcmtk's storescu: to our receiver, which has each in its database before it answers, and
 * to dcmtk's own storescp, which writes files. Same objects, alternating in one run, median of the rounds.
 */
import { spawn, spawnSync } from "node:child_process"
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs"
import { connect } from "node:net"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { startServer } from "../dist/server/main.js"

const OBJECTS = 60
const ROUNDS = 5
const PEER_PORT = 18149
const DUMP = "test/validation/dicom/dumps/axial-optical-both.dump"
/** The file of Debian's dcmtk that says which classes storescp takes. */
const PEER_CLASSES = "/etc/dcmtk/storescp.cfg"

const missing = ["dump2dcm", "storescu", "storescp"].find((name) => spawnSync(name, ["--version"]).error)
if (missing || !existsSync(PEER_CLASSES)) {
  console.log(`DICOM receiver: not measured, ${missing ?? PEER_CLASSES} was not found`)
  process.exit(0)
}

const folder = mkdtempSync(join(tmpdir(), "lengthwise-bench-"))
const said = []
const server = await startServer({
  dataFolder: join(folder, "data"),
  port: 0,
  dicom: { port: 0 },
  say: (line) => said.push(line),
})
const ourPort = Number(said.join("\n").match(/Receives from instruments .*:(\d+)/)?.[1])
mkdirSync(join(folder, "peer"))
const peer = spawn(
  "storescp",
  [
    "-aet",
    "LENGTHWISE",
    "-od",
    join(folder, "peer"),
    "--config-file",
    PEER_CLASSES,
    "Default",
    String(PEER_PORT),
  ],
  { stdio: "ignore" },
)
try {
  await answers(PEER_PORT)
  const one = join(folder, "one.dcm")
  spawnSync("dump2dcm", ["+te", DUMP, one])
  const original = readFileSync(one, "latin1")
  const uid = readFileSync(DUMP, "utf8").match(/\(0008,0018\) UI \[([\d.]+)\]/)[1]
  const rates = {}
  let made = 0
  for (let round = 0; round < ROUNDS; round++) {
    for (const delay of ["sender's default", "TCP_NODELAY=1"]) {
      // New objects in every turn: one that is known already would cost us less.
      const files = Array.from({ length: OBJECTS }, () => {
        made += 1
        const file = join(folder, `${made}.dcm`)
        // As long as before, so that every length in the file stays right.
        const other = uid.slice(0, -6) + String(100_000 + made)
        writeFileSync(file, original.replaceAll(uid, other), "latin1")
        return file
      })
      const turns = [
        ["Lengthwise", ourPort],
        ["storescp", PEER_PORT],
      ]
      for (const [name, port] of round % 2 ? turns.reverse() : turns) {
        const key = `${name}, ${delay}`
        rates[key] ??= []
        rates[key].push(OBJECTS / (await seconds(port, files, delay)))
      }
    }
  }
  const median = (list) => [...list].sort((a, b) => a - b)[list.length >> 1]
  for (const delay of ["sender's default", "TCP_NODELAY=1"]) {
    const ours = median(rates[`Lengthwise, ${delay}`])
    const theirs = median(rates[`storescp, ${delay}`])
    console.log(
      `DICOM receiver, ${OBJECTS} objects of ${(original.length / 1000).toFixed(1)} kB, one association, ${delay}: ${ours.toFixed(1)} a second, each in the database before its answer; dcmtk storescp ${theirs.toFixed(1)} a second (${(ours / theirs).toFixed(2)} times)`,
    )
  }
} finally {
  peer.kill()
  await server.close()
  rmSync(folder, { recursive: true })
}

/** The time from starting the sender to its end; every object must have been taken. */
async function seconds(port, files, delay) {
  const env = { ...process.env, ...(delay.startsWith("TCP") ? { TCP_NODELAY: "1" } : {}) }
  const started = performance.now()
  const sender = spawn("storescu", ["-R", "-aec", "LENGTHWISE", "127.0.0.1", String(port), ...files], {
    env,
    stdio: "ignore",
  })
  const code = await new Promise((done) => sender.once("close", done))
  if (code !== 0) throw new Error(`storescu to port ${port} ended with ${code}`)
  return (performance.now() - started) / 1000
}

/** Waits until somebody listens there. */
async function answers(port) {
  for (let tries = 0; tries < 100; tries++) {
    const isUp = await new Promise((done) => {
      const socket = connect(port, "127.0.0.1", () => {
        socket.destroy()
        done(true)
      }).once("error", () => done(false))
    })
    if (isUp) return
    await new Promise((done) => setTimeout(done, 100))
  }
  throw new Error(`nobody listens at port ${port}`)
}
