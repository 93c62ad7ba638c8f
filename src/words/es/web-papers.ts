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
  "Eye-care practice": "Consultorio de oftalmología",
  Name: "Nombre",
  Signature: "Firma",
  Date: "Fecha",
  // Batches, pages
  "there is nothing to print for any of these children":
    "no hay nada que imprimir para ninguno de estos niños",
  "Not printed, and why": "No impresos, y por qué",
  "For the practice; it belongs to no family.": "Para la consulta; no pertenece a ninguna familia.",
  "{missing, plural, one {# of the {all} papers asked for could not be made.} other {# of the {all} papers asked for could not be made.}}":
    "{missing, plural, one {No se pudo hacer # de los {all} documentos pedidos.} other {No se pudieron hacer # de los {all} documentos pedidos.}}",
  Why: "Por qué",
  "{papers, plural, one {# paper} other {# papers}}":
    "{papers, plural, one {# documento} other {# documentos}}",
  "Report for the family": "Informe para la familia",
  "Consent to a treatment": "Consentimiento para un tratamiento",
  "Order to the pharmacy": "Pedido a la farmacia",
  "Letter to another doctor": "Carta a otro médico",
  "Report of an unwanted effect": "Notificación de un efecto no deseado",
  "Full record": "Historia completa",
  "The browser did not allow it.": "El navegador no lo permitió.",
  "The figure is saved to your downloads.": "La figura está guardada en sus descargas.",
  "The figure is copied.": "La figura está copiada.",
  "copy figure": "copiar la figura",
  "save as SVG": "guardar como SVG",
  "save as PNG": "guardar como PNG",
  Papers: "Documentos",
  "the paper": "el documento",
  A4: "A4",
  "Letter, US": "Carta (EE. UU.)",
  Paper: "Documento",
  "Size of the sheet": "Tamaño de la hoja",
  "Which order": "Qué pedido",
  "{day}: {bottles, plural, one {# bottle} other {# bottles}} of {percent} %":
    "{day}: {bottles, plural, one {# frasco} other {# frascos}} al {percent} %",
  "Which concern": "Qué problema",
  "Which paper": "Qué documento",
  "Download PDF": "Descargar PDF",
  "Turn the screen round": "Girar la pantalla hacia la familia",
  "The same page large, with nothing of the practice’s around it.":
    "La misma página en grande, sin nada de la consulta alrededor.",
  "This paper cannot be made yet": "Este documento aún no se puede hacer",
  "Recorded: report given to the family, {day}.": "Registrado: informe entregado a la familia, {day}.",
  "Given to the family": "Entregado a la familia",
}
