import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const instruments: Catalogue = {
  "a title of 1 to 16 letters, digits, blanks, - or _": "un título de 1 a 16 letras, cifras, espacios, - o _",
  "at least one instrument": "al menos un instrumento",
  "at most {most} instruments": "como máximo {most} instrumentos",
}
