import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const archive: Catalogue = {
  Archive: "Archivo completo",
  "Take everything out": "Llevarse todo",
  "One file with everything this practice has recorded, which any program can open and a new Lengthwise reads back entry for entry.":
    "Un solo archivo con todo lo que esta consulta ha registrado: cualquier programa puede abrirlo y un Lengthwise nuevo lo vuelve a leer entrada por entrada.",
  "Every entry with its corrections and withdrawals, and the checksum that ties it to the one before.":
    "Cada entrada con sus correcciones y retiradas, y la suma de comprobación que la une a la anterior.",
  "Signatures, scans and letters; messages to families; what instruments sent; protocols, fees and settings.":
    "Firmas, escaneos y cartas; mensajes a las familias; lo que enviaron los aparatos; protocolos, tarifas y ajustes.",
  "Tables for a spreadsheet, and each child’s course as a file of its own.":
    "Tablas para una hoja de cálculo, y la evolución de cada niño o niña en su propio archivo.",
  "No passwords and no keys: after a restore everybody gets a new password, and family links are handed out anew.":
    "Sin contraseñas ni claves: tras restaurarlo, cada persona recibe una contraseña nueva y los enlaces de las familias se entregan de nuevo.",
  "The file is not encrypted and names every child. Keep it where nobody else can read it.":
    "El archivo no está cifrado y nombra a cada niño y niña. Guárdelo donde nadie más pueda leerlo.",
  "the archives": "los archivos",
  "To restore an archive": "Para restaurar un archivo",
  "On the command line of the machine that is to hold the record, into a new folder:":
    "En la línea de órdenes del equipo que vaya a guardar el registro, en una carpeta nueva:",
  "Everything is checked before anything is stored. Stop this installation first, so that no message is sent from both.":
    "Todo se comprueba antes de guardar nada. Detenga primero esta instalación, para que ningún mensaje salga de las dos.",
  "With the full record of each child as PDF, which takes longer":
    "Con el registro completo de cada niño o niña en PDF, lo que tarda más",
  "Your password": "Su contraseña",
  "Asked again, so that a screen left open is not enough.":
    "Se pide otra vez, para que no baste con una pantalla que quedó abierta.",
  "Make the archive": "Crear el archivo",
  "Being made": "En preparación",
  Ready: "Listo",
  "Downloaded, then removed here": "Descargado y después eliminado aquí",
  Cancelled: "Cancelado",
  Failed: "Fallido",
  "Cut short: the server was stopped": "Interrumpido: se detuvo el servidor",
  "Removed after a day": "Eliminado al cabo de un día",
  "Stored files": "Archivos guardados",
  Courses: "Evoluciones",
  Tables: "Tablas",
  "Last archives": "Últimos archivos completos",
  "{when}, {who}": "{when}, {who}",
  "{size} MB": "{size} MB",
  "Last entry {head}. Note it elsewhere, and a restore can be compared with it.":
    "Última entrada {head}. Anótela en otro lugar y podrá compararla tras una restauración.",
  Download: "Descargar",
  Cancel: "Cancelar",
  "Removed when downloaded, or on {when}.": "Se elimina al descargarlo o el {when}.",
  Begins: "Empieza",
  "{phase}: {done} of {total}": "{phase}: {done} de {total}",
  "one archive at a time": "un archivo cada vez",
  "an archive is being made already; wait for it or cancel it":
    "ya se está preparando un archivo; espere a que termine o cancélelo",
  "an archive of this practice that is ready": "un archivo de esta consulta que esté listo",
  "no such archive": "no existe ese archivo",
}
