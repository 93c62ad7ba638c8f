import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const share: Catalogue = {
  "Your child’s page": "La página de su hijo o hija",
  "To open it, enter your child’s date of birth.":
    "Para abrirla, escriba la fecha de nacimiento de su hijo o hija.",
  "Date of birth": "Fecha de nacimiento",
  "Open|the page": "Abrir",
  "After five wrong dates the link locks. The practice can give you a new one.":
    "Después de cinco fechas equivocadas, el enlace se bloquea. La consulta puede darle uno nuevo.",
  "The practice’s server cannot be reached. Try again later.":
    "No se puede conectar con el servidor de la consulta. Inténtelo más tarde.",
  "That was often in a short time. Wait a minute, then try again.":
    "Han sido muchos intentos en poco tiempo. Espere un minuto e inténtelo de nuevo.",
  "This link and this date do not open a page. Check the date, or ask the practice for a new link.":
    "Este enlace y esta fecha no abren ninguna página. Revise la fecha o pida a la consulta un enlace nuevo.",
  Language: "Idioma",
  Print: "Imprimir",
  "Save as PDF": "Guardar como PDF",
  "Dates for the calendar": "Fechas para el calendario",
}
