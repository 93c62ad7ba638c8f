/**
 * Holds the languages to the sources. Every message in a `say`, `sayParts`, `msg` or `<Said message>` must be in the
 * Spanish catalogue, and what families read in the Chinese one too; a translation must take the same values and be
 * asked for by some source. Run by the build, which stops when anything is missing.
 *
 *   node scripts/words.mjs             every fault, exit 1 if there is any
 *   node scripts/words.mjs --missing es src/engine/safety    messages of these paths without Spanish, as JSON to fill in
 */
import { existsSync, readdirSync, readFileSync } from "node:fs"
import { dirname, join, relative } from "node:path"
import { fileURLToPath } from "node:url"
import ts from "typescript"
// The build has made it before it asks for this.
import { parseMessage, valueNames } from "../dist/engine/message-format.js"

const root = join(dirname(fileURLToPath(import.meta.url)), "..")
/** As in engine/say: what follows the bar only tells two meanings apart. */
const MEANING = /(?<=\S)\|(?=\S)/
const CALLS = new Set(["say", "sayParts", "msg"])

/** What families read, by the beginning of its path: it is said in every language. */
const FAMILIES_READ = JSON.parse(readFileSync(join(root, "scripts/words-for-families.json"), "utf8"))

const files = readdirSync(join(root, "src"), { recursive: true })
  .filter((path) => /\.tsx?$/.test(path) && !/\.test\.tsx?$/.test(path) && !path.startsWith("words"))
  .map((path) => join("src", path).replaceAll("\\", "/"))
  .sort()

const faults = []
const messages = files.flatMap(messagesOf)
const catalogues = { es: catalogue("es"), "zh-Hans": catalogue("zh-Hans") }

const [flag, language, ...paths] = process.argv.slice(2)
if (flag === "--missing") {
  const asked = messages.filter(({ file }) => paths.some((path) => file.startsWith(path)))
  const lacking = asked.filter(({ text }) => !catalogues[language].has(text)).map(({ text }) => [text, ""])
  console.log(JSON.stringify(Object.fromEntries(lacking), null, 2))
  process.exit(0)
}

const asked = new Set(messages.map(({ text }) => text))
for (const { text, file, line } of messages) {
  for (const [spoken, known] of Object.entries(catalogues)) {
    const isOwed = spoken === "es" || FAMILIES_READ.some((path) => file.startsWith(path))
    if (isOwed && !known.has(text)) faults.push(`${file}:${line}: no ${spoken} for "${text}"`)
  }
}
for (const [spoken, known] of Object.entries(catalogues)) {
  for (const [text, { translation, place }] of known) {
    if (!asked.has(text)) faults.push(`${place}: no source says "${text}"`)
    else if (namesIn(text) !== namesIn(translation)) {
      faults.push(
        `${place}: other values in ${spoken} than in "${text}": ${namesIn(translation)} for ${namesIn(text)}`,
      )
    }
  }
}
for (const fault of faults) console.error(fault)
if (faults.length > 0) console.error(`\n${faults.length} faults of the languages`)
process.exit(faults.length > 0 ? 1 : 0)

function messagesOf(file) {
  const text = readFileSync(join(root, file), "utf8")
  // Another file's function may be called `say` too.
  if (!/from ".*\/(say|said)\.js"/.test(text)) return []
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true)
  const found = []
  const add = (node, value) =>
    found.push({ text: value, file, line: source.getLineAndCharacterOfPosition(node.getStart()).line + 1 })
  const visit = (node) => {
    if (ts.isCallExpression(node) && ts.isIdentifier(node.expression) && CALLS.has(node.expression.text)) {
      // A choice of two texts, or a text from a table marked by `msg`, is found where it stands.
      for (const literal of literalsOf(node.arguments[0])) add(literal, literal.text)
    }
    if (
      ts.isJsxAttribute(node) &&
      node.name.text === "message" &&
      node.initializer &&
      /^Said$/.test(node.parent.parent.tagName.getText())
    ) {
      const inner = ts.isJsxExpression(node.initializer) ? node.initializer.expression : node.initializer
      for (const literal of literalsOf(inner)) add(literal, literal.text)
    }
    ts.forEachChild(node, visit)
  }
  visit(source)
  return found
}

function literalsOf(node) {
  if (!node) return []
  if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) return [node]
  if (ts.isConditionalExpression(node)) return [...literalsOf(node.whenTrue), ...literalsOf(node.whenFalse)]
  if (ts.isParenthesizedExpression(node)) return literalsOf(node.expression)
  if (ts.isTemplateExpression(node)) {
    const { fileName } = node.getSourceFile()
    faults.push(`${fileName}: a message is one whole text, with {values}: ${node.getText().slice(0, 80)}`)
  }
  return []
}

function catalogue(spoken) {
  const folder = join(root, "src/words", spoken)
  const known = new Map()
  if (!existsSync(folder)) return known
  for (const name of readdirSync(folder).filter((path) => path !== "index.ts")) {
    const file = relative(root, join(folder, name)).replaceAll("\\", "/")
    const source = ts.createSourceFile(
      file,
      readFileSync(join(folder, name), "utf8"),
      ts.ScriptTarget.Latest,
      true,
    )
    const visit = (node) => {
      if (ts.isPropertyAssignment(node)) {
        const text = node.name.text
        const translation = node.initializer.text
        const place = `${file}:${source.getLineAndCharacterOfPosition(node.getStart()).line + 1}`
        const before = known.get(text)
        if (translation === undefined || translation === "")
          faults.push(`${place}: an empty translation of "${text}"`)
        else if (before && before.translation !== translation) {
          faults.push(`${place}: another translation of "${text}" than ${before.place}`)
        }
        known.set(text, { translation: translation ?? "", place })
      }
      ts.forEachChild(node, visit)
    }
    visit(source)
  }
  return known
}

/** Names of the values a message takes, in order. A message that is none is a fault of its own. */
function namesIn(message, place) {
  try {
    return [...valueNames(parseMessage(message.split(MEANING)[0]))].sort().join(", ")
  } catch (cause) {
    faults.push(`${place}: ${cause.message}`)
    return null
  }
}
