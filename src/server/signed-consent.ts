import { msg, say, withDecimalSign } from "../engine/say.js"
import { pathText, problem } from "../interop/course/problem.js"
import type { ConsentBody, PracticeRecord } from "../record/index.js"
import { signatureField } from "./contract/entry.js"
import { SCAN_TYPES } from "./contract/file-types.js"
import type { Problem } from "./contract/problem.js"
import type { KeptBeside } from "./record-items.js"

type Fields = Readonly<Record<string, unknown>>

/**
 * How a consent was signed, checked against what is stored: nothing is recorded as signed whose signature, or whose
 * text when it was signed on screen, cannot be shown again. Paths stand below `place`.
 */
export async function signedBeside(
  record: PracticeRecord,
  { fields, place }: { readonly fields: Fields; readonly place: string },
): Promise<KeptBeside | undefined> {
  if (fields.signature === undefined || fields.signature === null) return undefined
  const at = (path: string) => (place === "" ? path : `${place}.${path}`)
  const parsed = signatureField.safeParse(fields.signature)
  if (!parsed.success)
    return {
      fields: {},
      problems: parsed.error.issues.map(({ path, message }) =>
        problem({ path: at(pathText(["signature", ...path])), value: null, allowed: message }),
      ),
    }
  const signature = parsed.data
  const problems: Problem[] = []
  const fault = (path: string, value: unknown, allowed: string) =>
    problems.push(problem({ path: at(path), value, allowed }))

  const isPaper = signature.kind === "scan"
  const form = isPaper ? "paper" : "screen"
  if (fields.form !== form)
    fault(
      "form",
      fields.form ?? null,
      say("{form}, since the signature is {how}", { form, how: say(SIGNED[signature.kind]) }),
    )
  for (const [name, words] of [
    ["name", msg("the name of who signed")],
    ["relation", msg("how who signed is related to the child")],
  ] as const) {
    const said = inside(fields.by, name)
    if (typeof said !== "string" || said.trim() === "") fault(`by.${name}`, said ?? null, say(words))
  }
  if (signature.kind !== "typed") {
    const types: readonly string[] = isPaper ? SCAN_TYPES : ["image/svg+xml"]
    const stored = await record.mediaTypeOf(signature.file)
    if (stored === null) fault("signature.file", signature.file, say("a file that was stored before"))
    else if (!types.includes(stored))
      fault("signature.file", stored, say("a file of the type {types}", { types: types.join(", ") }))
  }
  const sha256 = inside(fields.wording, "sha256")
  const isShown = typeof sha256 === "string" && (await record.mediaTypeOf(sha256)) === "text/plain"
  // An older paper may have been signed on a text that nobody has any more; then it names none.
  if (!isShown && (!isPaper || sha256 !== undefined))
    fault("wording.sha256", sha256 ?? null, say("the text that was signed, stored before as text/plain"))
  return { fields: { signature }, problems }
}

/**
 * A consent as it shall stand in place of a signed one: it keeps its signature, and what was signed stays as it was
 * signed. Another treatment, strength or wording is a consent of its own.
 */
export async function amendedBeside(
  record: PracticeRecord,
  {
    signed,
    fields,
    place,
  }: { readonly signed: ConsentBody; readonly fields: Fields; readonly place: string },
): Promise<KeptBeside | undefined> {
  const beside = await signedBeside(record, {
    fields: { ...fields, signature: fields.signature ?? signed.signature },
    place,
  })
  if (!beside || !signed.signature) return beside
  const changed = [
    { outer: "covers", inner: "kind", was: signed.covers.kind },
    { outer: "covers", inner: "concentrationPercent", was: signed.covers.concentrationPercent },
    { outer: "wording", inner: "id", was: signed.wording?.id },
    { outer: "wording", inner: "version", was: signed.wording?.version },
    { outer: "wording", inner: "language", was: signed.wording?.language },
    { outer: "wording", inner: "sha256", was: signed.wording?.sha256 },
  ].flatMap(({ outer, inner, was }) => {
    const now = inside(fields[outer], inner) ?? undefined
    if (now === was) return []
    const allowed =
      was === undefined
        ? say("absent, as it was signed; for anything else a new consent is signed")
        : say("{was}, as it was signed; for anything else a new consent is signed", {
            was: typeof was === "number" ? withDecimalSign(String(was)) : was,
          })
    return [problem({ path: `${place}.${outer}.${inner}`, value: now ?? null, allowed })]
  })
  return {
    ...beside,
    problems: [
      ...changed,
      ...beside.problems.filter(({ path }) => !changed.some((fault) => fault.path === path)),
    ],
  }
}

const SIGNED = {
  drawn: msg("drawn|a signature"),
  scan: msg("a scan"),
  typed: msg("typed|a signature"),
} as const

const inside = (value: unknown, name: string): unknown =>
  typeof value === "object" && value !== null ? (value as Fields)[name] : undefined
