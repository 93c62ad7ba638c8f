/** What the child page costs: script of the first load, gzip, and the time a move of the pointer over the figure takes. */
import { existsSync, mkdtempSync, rmSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { gzipSync } from "node:zlib"
import { startServer } from "../dist/server/main.js"

const chrome = [process.env.CHROME_PATH, "/usr/bin/chromium", "/usr/bin/google-chrome"].find(
  (path) => path && existsSync(path),
)
if (!chrome) {
  console.log("Child page: not measured, no Chromium was found (set CHROME_PATH)")
  process.exit(0)
}
const { chromium } = await import("playwright-core")
const folder = mkdtempSync(join(tmpdir(), "lengthwise-bench-"))
const server = await startServer({ dataFolder: folder, port: 0, demo: true, say: () => {} })
const flags =
  "--no-sandbox --disable-gpu --disable-quic --no-first-run --disable-background-networking --disable-component-update --disable-sync"
const browser = await chromium.launch({ executablePath: chrome, args: flags.split(" ") })
try {
  const page = await browser.newPage({ viewport: { width: 1280, height: 900 } })
  await page.goto(server.address)
  await page.fill('input[autocomplete="username"]', server.firstLogIn.name)
  await page.fill('input[type="password"]', server.firstLogIn.password)
  await page.keyboard.press("Enter")
  await page.getByRole("link", { name: "Children" }).click()
  const link = page.locator("table a").first()
  const child = await link.getAttribute("href")

  let bytes = 0
  const weighed = []
  page.on("response", (response) => {
    if (response.url().endsWith(".js"))
      weighed.push(response.body().then((body) => (bytes += gzipSync(body, { level: 9 }).length)))
  })
  await page.goto(new URL(child, server.address).href)
  const figure = page.locator("svg").first()
  await figure.waitFor()
  await page.waitForLoadState("networkidle")
  await Promise.all(weighed)

  const box = await figure.boundingBox()
  // The work of one move, from the event to the end of the frame it is drawn in, less the frame that passes anyway.
  const times = await page.evaluate(async ({ x, y, width, height }) => {
    const target = document.elementFromPoint(x + width / 2, y + height / 3)
    const spent = []
    for (let i = 0; i < 120; i++) {
      await new Promise((done) => requestAnimationFrame(done))
      const clientX = x + (width * (i % 60)) / 60
      const started = performance.now()
      target.dispatchEvent(
        new PointerEvent("pointermove", { bubbles: true, clientX, clientY: y + height / 3 }),
      )
      await new Promise((done) => queueMicrotask(done))
      document.body.getBoundingClientRect()
      spent.push(performance.now() - started)
    }
    return spent.sort((a, b) => a - b)
  }, box)
  console.log(
    `Child page, script of the first load, gzip: ${(bytes / 1000).toFixed(0)} kB  (asked: under 200 kB)`,
  )
  console.log(
    `Child page, a move over the figure: median ${times[60].toFixed(2)} ms, worst of 120 ${times[119].toFixed(2)} ms  (asked: one frame, 16.7 ms)`,
  )
} finally {
  await browser.close()
  await server.close()
  rmSync(folder, { recursive: true })
}
