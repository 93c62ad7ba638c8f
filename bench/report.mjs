/**
 * A family's report as PDF: cold (a new process each time), warm, and 200 as one PDF; beside Chromium's print of the
 * page from the same blocks, in one run. What a paper is made of (the engine's work) is the same for both and counted
 * apart. Chromium is cold as `--print-to-pdf`, warm as a page of a running browser.
 */
import { spawnSync } from "node:child_process"
import { existsSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { dirname, join } from "node:path"
import { fileURLToPath, pathToFileURL } from "node:url"
import { noRules } from "../dist/engine/practice-rules.js"
import { defaultSettings } from "../dist/engine/settings.js"
import { demoCourses } from "../dist/engine/simulate/demo.js"
import { evidence } from "../dist/evidence/index.js"
import { documentOf } from "../dist/report/documents.js"
import { pdfOf } from "../dist/report/pdf/pdf.js"

const BATCH = 200
const COLD = 7
const WARM = 60
const TODAY = "2026-11-25"
const root = join(dirname(fileURLToPath(import.meta.url)), "..")
const folder = mkdtempSync(join(tmpdir(), "lengthwise-bench-"))

/** Reports of invented children, no two alike: a typesetter may remember what it has set. */
function reports() {
  const children = demoCourses({ today: TODAY, seed: 7, evidence })
  const practice = { name: "Bench" }
  const made = []
  let ms = 0
  for (let n = 0; made.length < BATCH + WARM && n < 20 * BATCH; n++) {
    const { course, name } = children[n % children.length]
    const started = performance.now()
    const document = documentOf("family", {
      ...{ course, practice, settings: defaultSettings, rules: noRules, today: TODAY, language: "en" },
      childName: `${name} ${n}`,
      letterhead: { practice: practice.name, lines: ["1 Some Street"] },
      familyLink: `https://practice.example/f/${String(n).padStart(40, "0")}`,
    })
    if (document.kind === "refused") continue
    ms += performance.now() - started
    made.push(document)
  }
  return { made, msEach: ms / made.length }
}

const median = (times) => times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)]
const timed = async (task) => {
  const started = performance.now()
  await task()
  return performance.now() - started
}
const repeated = async (count, task) => {
  const times = []
  for (let n = 0; n < count; n++) times.push(await timed(() => task(n)))
  return median(times)
}

/** The page's own component, drawn as text; with its styles, as it would be printed. */
async function htmlMaker() {
  const { createServer } = await import("vite")
  const vite = await createServer({
    root: join(root, "src/web"),
    configFile: false,
    appType: "custom",
    server: { middlewareMode: true, ws: false, watch: null },
    optimizeDeps: { noDiscovery: true, include: [] },
    logLevel: "error",
  })
  const [{ DocumentView }, { createElement }, { renderToStaticMarkup }] = await Promise.all([
    vite.ssrLoadModule("/papers/document-view.tsx"),
    import("react"),
    import("react-dom/server"),
  ])
  await vite.close()
  const styles = ["styles/tokens.css", "styles/base.css", "papers/document-view.css"]
    .map((file) => readFileSync(join(root, "src/web", file), "utf8"))
    .join("\n")
  // A folded answer is not printed; the page opens them before it prints.
  const opened = (html) => html.replaceAll("<details", "<details open")
  return (documents) =>
    `<!doctype html><html lang="en"><meta charset="utf-8"><title>${documents[0].title}</title><style>${styles} article{break-after:page} @page{size:A4;margin:17mm 20mm}</style><body>${documents
      .map((document) => opened(renderToStaticMarkup(createElement(DocumentView, { document }))))
      .join("")}`
}

const row = (what, ours, theirs) => {
  const beside =
    theirs === null
      ? ""
      : `   Chromium ${theirs.toFixed(0).padStart(6)} ms   ${(theirs / ours).toFixed(1)} : 1`
  console.log(`${what.padEnd(46)} ${ours.toFixed(ours < 20 ? 1 : 0).padStart(6)} ms${beside}`)
}

try {
  const { made, msEach } = reports()
  const batch = made.slice(0, BATCH)
  const single = made.slice(BATCH)
  const out = join(folder, "one.pdf")
  const program = join(folder, "cold.mjs")
  writeFileSync(join(folder, "one.json"), JSON.stringify(batch[0]))
  writeFileSync(
    program,
    `import { readFileSync, writeFileSync } from "node:fs"
import { pdfOf } from ${JSON.stringify(pathToFileURL(join(root, "dist/report/pdf/pdf.js")).href)}
writeFileSync(${JSON.stringify(out)}, pdfOf([JSON.parse(readFileSync(${JSON.stringify(join(folder, "one.json"))}, "utf8"))], "a4").bytes)`,
  )
  const ours = {
    cold: await repeated(COLD, () => spawnSync(process.execPath, [program], { stdio: "inherit" })),
    verb: await repeated(COLD, () =>
      spawnSync(process.execPath, [
        join(root, "dist/cli/main.js"),
        ...["report", join(root, "examples/slowed.json"), "--out", out, "--as-of", TODAY],
      ]),
    ),
  }
  let pages = 0
  const singles = []
  for (const document of [batch[0], ...single])
    singles.push(await timed(() => (pages += pdfOf([document], "a4").pages)))
  // The first one reads the fonts.
  ours.warm = median(singles.slice(1))
  let all
  ours.batch = await timed(() => (all = pdfOf(batch, "a4")))

  const chrome = [process.env.CHROME_PATH, "/usr/bin/chromium", "/usr/bin/google-chrome"].find(
    (path) => path && existsSync(path),
  )
  const theirs = chrome ? await printed(chrome, { batch, single }) : null
  if (!theirs) console.log("Chromium: not measured, none was found (set CHROME_PATH)")

  console.log(`Family report, ${(pages / singles.length).toFixed(1)} pages, A4, medians`)
  row("one, cold (a new process)", ours.cold, theirs?.cold)
  row("one, cold, by `lengthwise report` (with engine)", ours.verb, null)
  row("one, warm", ours.warm, theirs?.warm)
  row(`${BATCH} as one PDF, warm`, ours.batch, theirs?.batch)
  row("what one is made of: the engine's work, warm", msEach, null)
  const kB = (bytes) => `${(bytes / 1000).toFixed(0)} kB`
  console.log(
    `${BATCH} as one: ${all.pages} pages, ${kB(all.bytes.length)}${theirs ? `; Chromium ${theirs.batchPages} pages, ${kB(theirs.batchBytes)}` : ""}`,
  )
  console.log(`Memory of this process afterwards: ${(process.memoryUsage().rss / 1e6).toFixed(0)} MB`)
} finally {
  rmSync(folder, { recursive: true })
}

/** The same papers printed by Chromium. */
async function printed(executablePath, { batch, single }) {
  const html = await htmlMaker()
  const flags =
    "--no-sandbox --disable-gpu --disable-quic --no-first-run --disable-background-networking --disable-component-update --disable-sync".split(
      " ",
    )
  const page = join(folder, "page.html")
  writeFileSync(page, html([batch[0]]))
  const cold = await repeated(COLD, (n) => {
    const pdf = join(folder, `chromium-${n}.pdf`)
    const asked = [`--user-data-dir=${join(folder, "profile")}`, "--headless", "--no-pdf-header-footer"]
    const { status } = spawnSync(executablePath, [...flags, ...asked, `--print-to-pdf=${pdf}`, page])
    if (status !== 0 || !existsSync(pdf)) throw new Error("Chromium printed nothing")
  })
  const { chromium } = await import("playwright-core")
  const browser = await chromium.launch({ executablePath, args: flags })
  try {
    const tab = await browser.newPage()
    const print = async (documents, path) => {
      await tab.setContent(html(documents), { waitUntil: "load" })
      await tab.pdf({ path, tagged: true, preferCSSPageSize: true })
    }
    await print([batch[0]], join(folder, "first.pdf"))
    const warm = await repeated(single.length, (n) => print([single[n]], join(folder, "warm.pdf")))
    const whole = join(folder, "batch.pdf")
    const all = await timed(() => print(batch, whole))
    const info = spawnSync("pdfinfo", [whole], { encoding: "utf8" }).stdout ?? ""
    const batchPages = /Pages: +(\d+)/.exec(info)?.[1] ?? "?"
    return { cold, warm, batch: all, batchPages, batchBytes: statSync(whole).size }
  } finally {
    await browser.close()
  }
}
