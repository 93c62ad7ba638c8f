import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const webPapers: Catalogue = {
  // Setting
  "a picture of at most {megabytes} MB": "una imagen de {megabytes} MB como máximo",
  "a picture of at most {pixels} pixels a side": "una imagen de {pixels} píxeles por lado como máximo",
  "a PNG or JPEG that can be read; its content is damaged":
    "un PNG o JPEG que se pueda leer; su contenido está dañado",
  "the logo must be {allowed}": "el logotipo debe ser {allowed}",
  "no font at hand holds {letters}: write it in other letters, or leave it out":
    "ninguna fuente disponible contiene {letters}: escríbalo con otras letras o déjelo fuera",
  "no font at hand holds some letter of this document":
    "ninguna fuente disponible contiene alguna letra de este documento",
  "Page {page} of {pages}": "Página {page} de {pages}",
  Name: "Nombre",
  Signature: "Firma",
  Date: "Fecha",
}
