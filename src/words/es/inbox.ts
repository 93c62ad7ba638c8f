import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const inbox: Catalogue = {
  "{figure}: one file says {first}, another {second}; the first was kept":
    "{figure}: un archivo dice {first}, otro {second}; se conservó el primero",
  "{figure}: two files say otherwise; the first was kept":
    "{figure}: dos archivos dicen cosas distintas; se conservó el primero",

  "everything the file says agrees, but it agrees with another child as well":
    "todo lo que dice el archivo coincide, pero también coincide con otro paciente",
  "everything the file says agrees, but another child is too like it":
    "todo lo que dice el archivo coincide, pero hay otro paciente demasiado parecido",
  "the same birth date": "la misma fecha de nacimiento",
  "the file gives no birth date": "el archivo no indica la fecha de nacimiento",
  "day and month of birth are exchanged": "el día y el mes de nacimiento están intercambiados",
  "born {recorded} here, {given} in the file": "nacimiento {recorded} aquí, {given} en el archivo",
  "the same name": "el mismo nombre",
  "the file gives no name": "el archivo no indica el nombre",
  "the name differs by one letter": "el nombre difiere en una letra",
  "a part of the name agrees": "coincide una parte del nombre",
  "another name": "otro nombre",
  "the same number": "el mismo número",
  "number {recorded} here, {given} in the file": "número {recorded} aquí, {given} en el archivo",
  "the file says {sex, select, female {girl} other {boy}}":
    "el archivo dice {sex, select, female {niña} other {niño}}",

  "axial length|figure": "longitud axial",
  "refraction|figure": "refracción",
  "further refractions|figure": "otras refracciones",
  "glasses worn|figure": "gafas en uso",
  "cornea|figure": "córnea",
  "lens of the eye|figure": "cristalino",
  "dilation|figure": "dilatación",
  "pupil|figure": "pupila",
  "accommodation|figure": "acomodación",
  "acuity|figure": "agudeza visual",
  "eye pressure|figure": "presión intraocular",
  "symptoms|figure": "síntomas",
  "answers to questions|figure": "respuestas a preguntas",
  "where the figures come from|figure": "procedencia de los datos",
  "{figure} of the {eye, select, right {right} other {left}} eye":
    "{figure} del ojo {eye, select, right {derecho} other {izquierdo}}",

  "{count, plural, one {# document} other {# documents}}":
    "{count, plural, one {# documento} other {# documentos}}",
  "{count, plural, one {# visit} other {# visits}}": "{count, plural, one {# visita} other {# visitas}}",
  "{count, plural, one {# bottle} other {# bottles}}": "{count, plural, one {# frasco} other {# frascos}}",
  "{count, plural, one {# consent} other {# consents}}":
    "{count, plural, one {# consentimiento} other {# consentimientos}}",
  "{count, plural, one {# span of missed nights} other {# spans of missed nights}}":
    "{count, plural, one {# periodo con noches omitidas} other {# periodos con noches omitidas}}",
  "{count, plural, one {# decision} other {# decisions}}":
    "{count, plural, one {# decisión} other {# decisiones}}",
  "{count, plural, one {# concern} other {# concerns}}":
    "{count, plural, one {# alerta de seguridad} other {# alertas de seguridad}}",
  "{count, plural, one {# order} other {# orders}}": "{count, plural, one {# pedido} other {# pedidos}}",
  "{count, plural, one {# explanation} other {# explanations}}":
    "{count, plural, one {# explicación} other {# explicaciones}}",
  "{count, plural, one {# payment} other {# payments}}": "{count, plural, one {# pago} other {# pagos}}",

  "A new child needs a name.": "Un paciente nuevo necesita un nombre.",
  "a day from birth to today": "un día entre el nacimiento y hoy",
  "The document is dated {day}: it must be a day from birth to today.":
    "El documento lleva la fecha {day}: debe ser un día entre el nacimiento y hoy.",
  "{figures} from {device}": "{figures} de {device}",
  "{file} was taken back": "{file} se retiró",
  "Somebody has decided about this object since; look at it again.":
    "Entretanto alguien ha decidido sobre este objeto; vuelva a mirarlo.",
  "an object of this practice's Inbox": "un objeto de la bandeja de entrada de esta consulta",
  "no such object in the Inbox": "no existe ese objeto en la bandeja de entrada",
  "keep or correct": "keep (conservar) o correct (corregir)",
  "{figure} of {date} is recorded otherwise: keep what is recorded, or correct it":
    "{figure}, {date}: está registrado de otro modo; conserve lo registrado o corríjalo",
  "{where}: {why}": "{where}: {why}",
  "it is a table: take it in under Import": "es una tabla: impórtela en Importar",
  "nothing in it can be recorded": "no contiene nada que se pueda registrar",
  "all of it was recorded before": "todo su contenido ya estaba registrado",
  "made the child {name}": "se creó el paciente {name}",
  "made the child {name}: the file gives no name, so its number stands for it":
    "se creó el paciente {name}: el archivo no indica el nombre y su número ocupa su lugar",
  "it waits again; nothing was recorded of it": "vuelve a esperar; no se había registrado nada",
  "it waits again; it had added nothing to the record": "vuelve a esperar; no había añadido nada al registro",
  "the visit of {date} is withdrawn": "se retira la visita del {date}",
  "the visit of {date} was changed since ({figures}): correct it on the child's page":
    "la visita del {date} se modificó después ({figures}): corríjala en la página del paciente",
  "the visit of {date} is put back as it was without {figures}":
    "la visita del {date} vuelve a quedar como estaba, sin {figures}",
  "an entry was changed since: withdraw it on the child's page":
    "una anotación se modificó después: retírela en la página del paciente",
  "the document {title} is withdrawn": "se retira el documento {title}",
  "an entry that came with it is withdrawn ({kind})": "se retira una anotación que llegó con él ({kind})",
  "the child that was made for it stays, since more is recorded of it":
    "el paciente creado para él permanece, porque hay más registrado sobre él",
  "the child that was made for it is withdrawn": "se retira el paciente creado para él",
  "a file that names exactly this child was put here before":
    "un archivo con exactamente estos datos ya se asignó antes a este paciente",
  "everything the file says agrees": "todo lo que dice el archivo coincide",
  "no child of this practice is named so": "ningún paciente de esta consulta se llama así",
  "a child is like it but not the same in everything": "hay un paciente parecido, pero no coincide en todo",
  "something is recorded otherwise": "algo está registrado de otro modo",
  "recorded otherwise: {figures}": "registrado de otro modo: {figures}",
  "something in it is outside of what can be recorded":
    "contiene algo que queda fuera de lo que se puede registrar",
  "it holds more than measurements, such as treatments or consents: a person has to take it":
    "contiene más que mediciones, por ejemplo tratamientos o consentimientos: una persona debe aceptarlo",
  "the same object came before with other content": "el mismo objeto llegó antes con otro contenido",
  "it was taken back": "se retiró",
  "received before; it is recorded": "recibido antes; está registrado",
  "received before; it waits in the Inbox": "recibido antes; espera en la bandeja de entrada",
  "received before; it was set aside": "recibido antes; se apartó",
  "at most {megabytes} MB": "como máximo {megabytes} MB",
  "a child of this practice, or a new one": "un paciente de esta consulta, o uno nuevo",

  "Take in files": "Recibir archivos",
  "Drop files or folders here: DICOM, FHIR, course files.":
    "Suelte aquí archivos o carpetas: DICOM, FHIR, archivos de curso.",
  "Tables have a page of their own": "Las tablas tienen su propia página",
  "Choose files": "Elegir archivos",
  "Choose a folder": "Elegir una carpeta",
  "Files taken in": "Archivos recibidos",
  "Cancelled after {done} of {total} files.": "Cancelado tras {done} de {total} archivos.",
  "{done} of {total} files": "{done} de {total} archivos",
  "Recorded|outcome": "Registrado",
  "Known already|outcome": "Ya conocido",
  "Waits|outcome": "En espera",
  "Skipped|outcome": "Omitido",
  "{recorded} recorded, {known} known already, {waiting} waiting, {skipped} skipped.":
    "{recorded} registrados, {known} ya conocidos, {waiting} en espera, {skipped} omitidos.",
  "What became of each file": "Qué ocurrió con cada archivo",
  "Figure|column": "Dato",
  "In the file": "En el archivo",
  "Recorded here": "Registrado aquí",
  "{eye, select, right {Right} other {Left}}": "{eye, select, right {Derecho} other {Izquierdo}}",
  "differs from the file": "difiere del archivo",
  "Figures measured here and figures from elsewhere would stand in one visit.":
    "En una misma visita quedarían datos medidos aquí y datos de otro lugar.",
  "Back to the Inbox": "Volver a la bandeja de entrada",
  Inbox: "Bandeja de entrada",
  "Inbox ({waiting})": "Bandeja de entrada ({waiting})",
  "the object": "el objeto",
  "What came": "Qué llegó",
  "Download as received": "Descargar tal como se recibió",
  "From|inbox": "De",
  "Why it waits": "Por qué espera",
  "Said by the reader": "Observaciones de la lectura",
  "What it holds": "Qué contiene",
  "What it holds, beside the record of {name}": "Qué contiene, junto al registro de {name}",
  "{title}, {day}": "{title}, {day}",
  "Would be added as well": "También se añadiría",
  "As well": "Además",
  "Whose is it": "De quién es",
  "No child of this practice is like what the file says.":
    "Ningún paciente de esta consulta se parece a lo que dice el archivo.",
  "Find a child": "Buscar un paciente",
  "Put under {name}.": "Asignado a {name}.",
  "{count, plural, =0 {Nothing new would be recorded.} one {# entry would be recorded.} other {# entries would be recorded.}}":
    "{count, plural, =0 {No se registraría nada nuevo.} one {Se registraría # anotación.} other {Se registrarían # anotaciones.}}",
  "{count, plural, one {# other object waits that names exactly this child: it follows.} other {# other objects wait that name exactly this child: they follow.}}":
    "{count, plural, one {Espera # objeto más con exactamente estos datos: lo seguirá.} other {Esperan # objetos más con exactamente estos datos: lo seguirán.}}",
  "Needed to correct the record.": "Necesario para corregir el registro.",
  "Put under {name}": "Asignar a {name}",
  "Put under this child": "Asignar a este paciente",
  "Keep what is recorded": "Conservar lo registrado",
  "Correct the record": "Corregir el registro",
  "New child from this …": "Nuevo paciente a partir de esto…",
  "Set aside …": "Apartar…",
  "New child from this": "Nuevo paciente a partir de esto",
  "Set aside. Nothing was recorded, and the file is kept.":
    "Apartado. No se registró nada y el archivo se conserva.",
  "Set aside": "Apartar",
  "Taken back. It waits again.": "Retirado. Vuelve a esperar.",
  "{total, plural, one {# object} other {# objects}}": "{total, plural, one {# objeto} other {# objetos}}",
  "the Inbox": "la bandeja de entrada",
  "Search by file, instrument or child": "Buscar por archivo, instrumento o paciente",
  "File, instrument or child": "Archivo, instrumento o paciente",
  "Who the file says it is": "De quién dice ser el archivo",
  "Received|inbox": "Recibido",
  "Nothing here.": "Aquí no hay nada.",
  "Waiting|inbox": "En espera",
  "Taken|inbox": "Asignados",
  "Set aside|inbox": "Apartados",
  "The file names nobody.": "El archivo no nombra a nadie.",
  "The server cannot be reached.": "No se puede contactar con el servidor.",

  "own lens": "cristalino propio",
  "no lens": "sin cristalino",
  "artificial lens": "lente artificial",
  "own lens and an implanted one": "cristalino propio y lente implantada",
  "atropine|drops": "atropina",
  "cyclopentolate|drops": "ciclopentolato",
  "tropicamide|drops": "tropicamida",
  "phenylephrine|drops": "fenilefrina",
  "other drops|drops": "otras gotas",
  "{mm} mm in daylight": "{mm} mm con luz de día",
  "{mm} mm in dim light": "{mm} mm con luz tenue",
  "{count, plural, one {# reading} other {# readings}}":
    "{count, plural, one {# lectura} other {# lecturas}}",
  "quality {figure}": "calidad {figure}",
  "spread {mm} mm": "dispersión {mm} mm",
  "each: {readings}": "cada una: {readings}",
  "in cycloplegia": "con cicloplejia",
  "vertex distance {mm} mm": "distancia al vértice {mm} mm",
  "addition {dioptres} D": "adición {dioptres} D",
  "prism {prism}": "prisma {prism}",
  "flat at {degrees}°": "plano a {degrees}°",
  "steep at {degrees}°": "curvo a {degrees}°",
  "widened|pupil": "dilatada",
  "not widened|pupil": "sin dilatar",
  "document|entry": "documento",
  "sent by {device}": "enviado por {device}",
  "glasses worn {power}": "gafas en uso {power}",

  "Received, and recorded without anybody's doing, since everything agreed.":
    "Recibido y registrado sin intervención de nadie, porque todo coincidía.",
  History: "Cronología",
  "Reason: {reason}": "Motivo: {reason}",
  "Received; it waited.": "Recibido; quedó a la espera.",
  "Put under a child{known, select, yes { by {person}} other {}}.":
    "Asignado a un paciente{known, select, yes { por {person}} other {}}.",
  "Set aside{known, select, yes { by {person}} other {}}.":
    "Apartado{known, select, yes { por {person}} other {}}.",
  "Taken back{known, select, yes { by {person}} other {}}; it waits again.":
    "Deshecho{known, select, yes { por {person}} other {}}; vuelve a esperar.",
}
