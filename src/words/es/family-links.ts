import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const familyLinks: Catalogue = {
  "open until {day}": "abierto hasta el {day}",
  "expired on {day}": "caducó el {day}",
  "taken back": "retirado",
  "locked after wrong dates": "bloqueado tras fechas equivocadas",
  "Made {day} by {who}.": "Creado el {day} por {who}.",
  "Not opened yet.": "Aún no se ha abierto.",
  "{times, plural, one {Opened once, on {day}.} other {Opened # times, last on {day}.}}":
    "{times, plural, one {Abierto una vez, el {day}.} other {Abierto # veces, la última el {day}.}}",
  "Address of the page": "Dirección de la página",
  Copied: "Copiada",
  "Copy the address": "Copiar la dirección",
  "Take back": "Retirar",
  "Take this link back?": "¿Retirar este enlace?",
  "Whoever has it can open the page no more. A new link can be made at any time.":
    "Quien lo tenga ya no podrá abrir la página. Se puede crear un enlace nuevo en cualquier momento.",
  "Take it back": "Retirarlo",
  "Keep it": "Conservarlo",
  "A link is made. It opens after the child’s birth date is entered.":
    "Enlace creado. Se abre tras escribir la fecha de nacimiento.",
  "The link is taken back. It opens no more.": "El enlace está retirado. Ya no se abre.",
  "On this screen": "En esta pantalla",
  "In plain words and large, with nothing of the practice’s pages around it: for a screen turned round.":
    "En palabras sencillas y en grande, sin nada de las páginas de la consulta alrededor: para girar la pantalla.",
  "Show the family page": "Mostrar la página de la familia",
  "At home, by a link": "En casa, con un enlace",
  "No account is needed. The address says nothing about the child; the page opens after the child’s birth date, and what it shows is always what the record holds then.":
    "No hace falta una cuenta. La dirección no dice nada del niño; la página se abre con la fecha de nacimiento y muestra siempre lo que el expediente contiene en ese momento.",
  "Opens for": "Se abre durante",
  "{days, plural, one {# day} other {# days}}": "{days, plural, one {# día} other {# días}}",
  "Make a link": "Crear un enlace",
  "the links": "los enlaces",
  "For the family’s calendar": "Para el calendario de la familia",
  "What is owed, as a file that any calendar takes. Its titles say nothing about health.":
    "Lo pendiente, como un archivo que admite cualquier calendario. Sus títulos no dicen nada sobre la salud.",
}
