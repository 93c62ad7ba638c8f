import {
  ANCESTRIES,
  type Ancestry,
  type Eye,
  LENGTH_METHODS,
  type LengthMethod,
  REFRACTION_METHODS,
  type RefractionMethod,
  type Sex,
  TREATMENT_KINDS,
  type TreatmentKind,
} from "../../engine/course.js"
import { plainWords } from "./cell-text.js"

/** Words of the trade, English and Spanish, as they stand in cells; whatever is not among them is not guessed at. */
type Words<T extends string> = ReadonlyMap<string, T>

function words<T extends string>(own: readonly T[], others: Partial<Record<T, string>> = {}): Words<T> {
  const all = own.flatMap((kind) => [
    [plainWords(kind), kind] as const,
    ...(others[kind] ?? "").split(",").flatMap((word) => (word ? [[plainWords(word), kind] as const] : [])),
  ])
  return new Map(all)
}

const EYE_WORDS = words<Eye>(["right", "left"], {
  right: "r,od,re,rt,d,o.d.,derecho,derecha,der,ojo derecho,right eye",
  left: "l,os,le,lt,i,oi,o.s.,o.i.,izquierdo,izquierda,izq,ojo izquierdo,left eye",
})

/** @example eyeIn("OD") // => "right" */
export const eyeIn = (text: string): Eye | undefined => EYE_WORDS.get(plainWords(text))

const SEX_WORDS = words<Sex>(["female", "male"], {
  female: "f,girl,woman,mujer,niña,femenino,femenina",
  male: "boy,man,hombre,h,varón,v,niño,masculino",
})

/** In "F/M" a column's M is male; in "H/M" (hombre, mujer) it is female; without either it is not known. */
export const SEX_CODES = ["F/M", "H/M"] as const

/** @example sexIn("M", "H/M") // => "female" */
export function sexIn(text: string, code: string | undefined): Sex | undefined {
  const word = plainWords(text)
  if (word === "m") return code === "F/M" ? "male" : code === "H/M" ? "female" : undefined
  return SEX_WORDS.get(word)
}

const ANCESTRY_WORDS = words<Ancestry>(ANCESTRIES, {
  "east-asian": "asiático oriental,asia oriental,este asiático",
  european: "europeo,europea",
  "south-asian": "asiático del sur,sur de asia,sudasiático",
  african: "africano,africana",
  other: "otro,otra,otros",
  unstated: "not stated,unknown,desconocido,no consta",
})

export const ancestryIn = (text: string): Ancestry | undefined => ANCESTRY_WORDS.get(plainWords(text))

const LENGTH_METHOD_WORDS = words<LengthMethod>(LENGTH_METHODS, {
  "optical-biometry": "optical,optical biometry,óptica,biometría óptica,interferometry,interferometría",
  ultrasound: "a-scan,us,ultrasound a-scan,ultrasonido,ultrasonidos,ecografía,biometría ultrasónica",
})

export const lengthMethodIn = (text: string): LengthMethod | undefined =>
  LENGTH_METHOD_WORDS.get(plainWords(text))

const REFRACTION_METHOD_WORDS = words<RefractionMethod>(REFRACTION_METHODS, {
  autorefraction: "autorefractor,auto,ar,autorrefracción,autorrefractómetro,autorefractometer",
  subjective: "subj,subjetiva,subjetivo,refracción subjetiva,subjective refraction",
  retinoscopy: "ret,retinoscopia,esquiascopia,skiascopy",
})

export const refractionMethodIn = (text: string): RefractionMethod | undefined =>
  REFRACTION_METHOD_WORDS.get(plainWords(text))

const TREATMENT_WORDS = words<TreatmentKind>(TREATMENT_KINDS, {
  atropine: "atropina,atropine drops,atropine eye drops,colirio de atropina",
  orthokeratology: "ortho-k,orthok,ok,orto-k,ortok,ortoqueratología",
  none: "ninguno,ninguna,no treatment,sin tratamiento",
})

/** A treatment and, where it stands with it, the strength: "atropine 0.05 %". */
export function treatmentIn(
  text: string,
): { readonly kind: TreatmentKind; readonly strength?: string } | undefined {
  const [, name = text, strength] = /^(.*?)\s*(\d*[.,]?\d+)\s*%$/.exec(text) ?? []
  const kind = TREATMENT_WORDS.get(plainWords(name))
  return kind && { kind, ...(strength === undefined ? {} : { strength }) }
}

const YES = new Set("yes y 1 true t x si s verdadero".split(" "))
const NO = new Set("no n 0 false f falso".split(" "))
const CYCLOPLEGIC = new Set(["cyclo", "cycloplegic", "wet", "cicloplejia", "cicloplejica", "con cicloplejia"])
const NOT_CYCLOPLEGIC = new Set([
  "non cycloplegic",
  "noncycloplegic",
  "not cycloplegic",
  "dry",
  "sin cicloplejia",
])
const GLASSES = new Set([
  "glasses",
  "old glasses",
  "spectacles",
  "gafas",
  "gafas previas",
  "gafas anteriores",
  "lentes",
])
const NOT_GLASSES = new Set(["visit", "exam", "examination", "visita", "examen", "consulta", "revision"])

function answerIn(text: string, yes: ReadonlySet<string>, no: ReadonlySet<string>): boolean | undefined {
  const word = plainWords(text)
  if (YES.has(word) || yes.has(word)) return true
  return NO.has(word) || no.has(word) ? false : undefined
}

export const cycloplegicIn = (text: string): boolean | undefined =>
  answerIn(text, CYCLOPLEGIC, NOT_CYCLOPLEGIC)
export const oldGlassesIn = (text: string): boolean | undefined => answerIn(text, GLASSES, NOT_GLASSES)

/** A lens without power, or a cell of a cylinder that says there is none. */
export const isPlano = (text: string): boolean => /^(plano|plan|pl\.?|neutro|n)$/i.test(text)
export const isSphereOnly = (text: string): boolean => /^(ds|sph|sphere|esf|esf\.)$/i.test(text)
