import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const settings: Catalogue = {
  // The page
  "the settings": "los ajustes",
  Protocols: "Protocolos",
  Pharmacies: "Farmacias",
  "Consent wording": "Texto del consentimiento",
  Templates: "Plantillas",
  "Recorded: {what}.": "Registrado: {what}.",
  "Edit {name}": "Modificar {name}",
  Edit: "Modificar",

  // Contacts
  "contacts changed": "contactos modificados",
  "Recorded: the practice’s contacts.": "Registrado: los contactos de la consulta.",
  Contacts: "Contactos",
  "These stand on every child’s Safety page and on what families are given. Lengthwise ships no numbers: they differ by country, and a wrong one is worse than none.":
    "Figuran en la página de Seguridad de cada niño y en lo que se entrega a las familias. Lengthwise no trae ningún número: cambian según el país, y uno equivocado es peor que ninguno.",
  "Poison centre": "Centro de toxicología",
  "Telephone of the poison centre of your country.": "Teléfono del centro de toxicología de su país.",
  "Urgent contact": "Contacto urgente",
  "Where a family calls for care on the same day, also outside your hours.":
    "Adónde llama una familia para recibir atención el mismo día, también fuera de su horario.",
  Country: "País",
  "Two letters, such as IE.": "Dos letras, como IE.",
  "Record contacts": "Registrar contactos",

  // Pharmacies
  "What a pharmacy has in stock, how small a volume it measures and how long its bottles are used decide how an order is made. Ask the pharmacist; nothing here is a published figure.":
    "De lo que una farmacia tiene en existencias, del volumen más pequeño que mide y del tiempo que se usan sus frascos depende cómo se prepara un pedido. Pregunte al farmacéutico; nada de esto es una cifra publicada.",
  "Nothing set": "Nada configurado",
  "Until a pharmacy is added, orders assume what is usual (common practice, no source): {usual}.":
    "Mientras no se añada una farmacia, los pedidos suponen lo habitual (práctica habitual, sin fuente): {usual}.",
  "Add pharmacy": "Añadir farmacia",
  "stock of {stocks} %, bottles of {volume} mL {preserved, select, yes {with preservative} other {without preservative}}, used {opened, plural, one {# day} other {# days}} after opening, {lead, plural, one {# day} other {# days}} to deliver, measured with {devices}":
    "solución madre al {stocks} %, frascos de {volume} mL {preserved, select, yes {con conservante} other {sin conservante}}, se usan {opened, plural, one {# día} other {# días}} tras abrirlos, {lead, plural, one {# día} other {# días}} de entrega, se mide con {devices}",
  "stock of {stocks} %, bottles of {volume} mL {preserved, select, yes {with preservative} other {without preservative}}, used {opened, plural, one {# day} other {# days}} after opening, {lead, plural, one {# day} other {# days}} to deliver":
    "solución madre al {stocks} %, frascos de {volume} mL {preserved, select, yes {con conservante} other {sin conservante}}, se usan {opened, plural, one {# día} other {# días}} tras abrirlos, {lead, plural, one {# día} other {# días}} de entrega",
  "For the order; may stay empty.": "Para el pedido; puede quedar vacío.",
  "Several with a space between.": "Si son varias, separadas por un espacio.",
  "Tolerance of the stock, %": "Tolerancia de la solución madre, %",
  "How far it may be off its label; empty while not known.":
    "Cuánto puede apartarse de su etiqueta; vacío mientras no se sepa.",
  "Volume of a bottle, mL": "Volumen de un frasco, mL",
  "Days of use after opening": "Días de uso tras abrirlo",
  "Days from order to bottle": "Días del pedido al frasco",
  "Smallest volume measured, mL": "Volumen mínimo que mide, mL",
  "edited in the settings": "modificado en los ajustes",
  "without preservative": "sin conservante",
  "with preservative": "con conservante",
  Device: "Instrumento",
  "From, mL": "Desde, mL",
  "To, mL": "Hasta, mL",
  "Read to, mL": "Lectura, mL",
  "Within, %": "Margen, %",
  "Measuring devices": "Instrumentos de medida",
  "None named: every volume is taken as measured within {percent} % (95 %; common practice, no source) and read to {graduation} mL.":
    "Ninguno indicado: cada volumen se supone medido con un margen del {percent} % (95 %; práctica habitual, sin fuente) y leído a {graduation} mL.",
  "Each volume is reckoned with the most exact device that measures it; these take the place of the smallest volume above.":
    "Cada volumen se calcula con el instrumento más exacto que lo mide; estos sustituyen al volumen mínimo indicado arriba.",
  "{title}, device {number}": "{title}, instrumento {number}",
  "remove device {number}": "quitar el instrumento {number}",
  "Add device": "Añadir instrumento",
  "One bottle of": "Un frasco al",
  "Take {take} mL of {of}, add {add} mL: gives {gives} %.":
    "Tome {take} mL de {of} y añada {add} mL: da {gives} %.",
  "Take {take} mL of {of}, undiluted: gives {gives} %.": "Tome {take} mL de {of}, sin diluir: da {gives} %.",
  "95 % between {low} and {high} %, within {lowest} to {highest} %.":
    "95 % entre {low} y {high} %, dentro de {lowest} a {highest} %.",
  "95 % between {low} and {high} %, outside {lowest} to {highest} %.":
    "95 % entre {low} y {high} %, fuera de {lowest} a {highest} %.",
  "the name|of a device": "el nombre",
  "from|a volume": "desde",
  "to|a volume": "hasta",
  "read to|a volume": "lectura",
  "within|a share": "margen",
  "a number from 0 to below 100": "un número desde 0 y menor que 100",
  "{allowed} (device {number}, {field})": "{allowed} (instrumento {number}, {field})",

  // Examinations
  "a text that was read supports it.": "la respalda un texto que se leyó.",
  "the principle was read; an interval, a threshold or a list was not, so it is yours to decide.":
    "se leyó el principio, pero no un intervalo, un umbral o una lista, así que la decisión es suya.",
  "no text was read, general clinical knowledge only; it needs a clinician’s confirmation and a source.":
    "no se leyó ningún texto, es solo conocimiento clínico general; necesita la confirmación de un clínico y una fuente.",
  "on atropine": "con atropina",
  "before myopia": "antes de la miopía",
  "with cycloplegia": "con cicloplejia",
  "every visit": "cada visita",
  "on, it also raises a concern: {figure}; {why}": "activada, además genera una alerta: {figure}; {why}",
  "whenever it is measured": "siempre que se mida",
  "A concern is raised at {figure}": "Se genera una alerta con {figure}",
  "Source: {sources}; read as {how}.": "Fuente: {sources}; leída como {how}.",
  "A visit asks for what the protocol measures, and for what the duties below ask at its stage. A duty is on when a text was read that supports it. Where only the principle was read, or nothing, it is off until you switch it on. Signs that need care the same day are always asked about.":
    "Una visita pide lo que mide el protocolo y lo que piden en su etapa las tareas de abajo. Una tarea está activada cuando se leyó un texto que la respalda. Donde solo se leyó el principio, o nada, está desactivada hasta que usted la active. Por los signos que requieren atención el mismo día se pregunta siempre.",
  "Asked first at the {stage}": "Se pide por primera vez en: {stage}",
  "Concerns raised from figures": "Alertas que nacen de cifras",
  "Record switches": "Registrar los cambios",
  "nothing changed": "nada ha cambiado",
  "changed: {what}": "cambiado: {what}",
  "{duty} on": "{duty} activada",
  "{duty} off": "{duty} desactivada",

  // Fees
  "Fee schedules": "Listas de tarifas",
  "{title}, from {date}, in force": "{title}, desde el {date}, en vigor",
  "{title}, from {date}": "{title}, desde el {date}",
  "New schedule from a day": "Nueva lista a partir de un día",
  "No fees have been entered, and none are assumed. With them every child’s page says what the coming months cost.":
    "No se ha introducido ninguna tarifa y no se supone ninguna. Con ellas, la página de cada niño dice cuánto cuestan los próximos meses.",
  "Recorded: {title}, in force from {date}.": "Registrado: {title}, en vigor desde el {date}.",
  "must be given for a correction": "debe indicarse en una corrección",
  "{count, plural, one {One thing is} other {# things are}} to be put right below.":
    "{count, plural, one {Hay una cosa} other {Hay # cosas}} por corregir abajo.",
  Currency: "Moneda",
  "The same for every schedule.": "La misma en todas las listas.",
  choose: "elegir",
  "A fee of 0 is free of charge; what has no fee is named as not counted. Common practice, no source: the visit after a month is often free of charge; the length measurement, and often the refraction and the drops, are not covered.":
    "Una tarifa de 0 es gratuita; lo que no tiene tarifa se nombra como no contado. Práctica habitual, sin fuente: la visita al mes suele ser gratuita; la medida de la longitud, y a menudo la refracción y las gotas, no están cubiertas.",
  "Why is it corrected?": "¿Por qué se corrige?",
  "For a slip of the pen. Fees that change are a new schedule from their day, so that earlier days keep theirs.":
    "Para un error al escribir. Las tarifas que cambian son una lista nueva desde su día, de modo que los días anteriores conservan las suyas.",
  "Record the correction": "Registrar la corrección",
  "Record the schedule": "Registrar la lista",

  // Protocols
  "A protocol says what is examined and decided, and when. Those that ship are common practice without a source; copy one to fit it to the practice. A child’s own page can name the one it follows.":
    "Un protocolo dice qué se explora y qué se decide, y cuándo. Los incluidos son práctica habitual sin fuente; copie uno para adaptarlo a la consulta. La página de cada niño puede indicar cuál sigue.",
  "Followed by every child for whom no other is chosen or fits.":
    "Lo sigue todo niño para el que no se ha elegido otro ni otro corresponde.",
  "Followed by children on spectacles, contact lenses or orthokeratology and on no drops.":
    "Lo siguen los niños con gafas, lentes de contacto u ortoqueratología y sin gotas.",
  "Followed by children who are not myopic and were never treated.":
    "Lo siguen los niños que no son miopes y nunca recibieron tratamiento.",
  "Followed by children it is chosen for.": "Lo siguen los niños para los que se elige.",
  "Followed by nobody: the practice’s own takes its place.":
    "No lo sigue nadie: lo sustituye el de la consulta.",
  "Copy and edit {name}": "Copiar y modificar {name}",
  "A copy of {name}": "Una copia de {name}",
  "Copy and edit": "Copiar y modificar",
  "{name}, ours": "{name}, propio",
  "Ships with the program.": "Incluido en el programa.",
  "{count, plural, one {# step} other {# steps}}": "{count, plural, one {# paso} other {# pasos}}",
  "Version {version}, recorded on {date} by {author}: {reason}":
    "Versión {version}, registrada el {date} por {author}: {reason}",
  "Version {version}, recorded on {date} by {author}.":
    "Versión {version}, registrada el {date} por {author}.",
  "Recorded: {title}, version {version}.": "Registrado: {title}, versión {version}.",
  "Where its intervals come from": "De dónde vienen sus intervalos",
  "Followed by": "Quién lo sigue",
  "every child who followed the one it is copied from": "todo niño que seguía el original",
  "only children it is chosen for": "solo los niños para los que se elige",
  "Longest pause, days": "Pausa más larga, días",
  "Consent asked before the start, days": "Consentimiento antes del inicio, días",
  "Next bottle asked before the last ends, days": "Pedir el próximo frasco antes de acabar el último, días",
  "Use after opening where a bottle states none, days":
    "Uso tras la apertura si el frasco no lo indica, días",
  "Why it is changed": "Por qué se cambia",
  "must be said in words": "debe decirse con palabras",
  "Kept with the new version; the old one stays on record.":
    "Se guarda con la nueva versión; la anterior sigue registrada.",
  "Leave without recording": "Salir sin registrar",
  Steps: "Pasos",
  "New step": "Paso nuevo",
  "Add a step": "Añadir un paso",
  "{fields, plural, one {# field} other {# fields}} to put right":
    "{fields, plural, one {# campo} other {# campos}} por corregir",
  "Months after": "Meses después",
  "Days after those": "Días además",
  "Empty for none.": "Vacío si ninguno.",
  "Opens, days before": "Se abre, días antes",
  "Closes, days after": "Se cierra, días después",
  "Counted from": "Se cuenta desde",
  "Only for a child on": "Solo para un niño con",
  "With nothing ticked it is owed whatever is given.":
    "Sin nada marcado, corresponde sea cual sea el tratamiento.",
  "Remove this step": "Quitar este paso",
  "What is decided": "Qué se decide",
  "Nights a week from then on": "Noches por semana desde entonces",
  "Measured in both eyes": "Se mide en ambos ojos",
  "As well in an eye on atropine": "Además, en un ojo con atropina",
  "Must be in force while treated": "Debe estar vigente durante el tratamiento",
  "After a change of strength or treatment": "Tras un cambio de concentración o de tratamiento",
  "owed again, counted from the change": "corresponde de nuevo, contado desde el cambio",
  "Questions asked as at a": "Preguntas como en",
  "stage found from the steps above": "la etapa que resulta de los pasos anteriores",
  "the start, before the first drop": "el inicio, antes de la primera gota",
  "the start of a first course": "el inicio de un primer ciclo",
  "the start of a later course": "el inicio de un ciclo posterior",
  "the stop": "la suspensión",
  "the last visit on treatment, when nothing else lies ahead":
    "la última visita con tratamiento, si no queda nada más previsto",
  "the last visit off treatment, when nothing else lies ahead":
    "la última visita sin tratamiento, si no queda nada más previsto",
  decision: "decisión",
  "whether to stop": "si se suspende",
  "whether to take it up again": "si se reanuda",
  "whether to give fewer nights": "si se dan menos noches",
  consent: "consentimiento",
  "a bottle in date": "un frasco vigente",
  "{span, select, none {at {anchor}} months {{months, plural, one {# month} other {# months}} after {anchor}} days {{days, plural, one {# day} other {# days}} after {anchor}} other {{months, plural, one {# month} other {# months}} and {days, plural, one {# day} other {# days}} after {anchor}}}, from {before, plural, one {# day} other {# days}} before to {after, plural, one {# day} other {# days}} after; for {treatments}":
    "{span, select, none {en {anchor}} months {{months, plural, one {# mes} other {# meses}} tras {anchor}} days {{days, plural, one {# día} other {# días}} tras {anchor}} other {{months, plural, one {# mes} other {# meses}} y {days, plural, one {# día} other {# días}} tras {anchor}}}, desde {before, plural, one {# día} other {# días}} antes hasta {after, plural, one {# día} other {# días}} después; para {treatments}",
  "{span, select, none {at {anchor}} months {{months, plural, one {# month} other {# months}} after {anchor}} days {{days, plural, one {# day} other {# days}} after {anchor}} other {{months, plural, one {# month} other {# months}} and {days, plural, one {# day} other {# days}} after {anchor}}}, from {before, plural, one {# day} other {# days}} before to {after, plural, one {# day} other {# days}} after":
    "{span, select, none {en {anchor}} months {{months, plural, one {# mes} other {# meses}} tras {anchor}} days {{days, plural, one {# día} other {# días}} tras {anchor}} other {{months, plural, one {# mes} other {# meses}} y {days, plural, one {# día} other {# días}} tras {anchor}}}, desde {before, plural, one {# día} other {# días}} antes hasta {after, plural, one {# día} other {# días}} después",
  "The next two years": "Los próximos dos años",
  "For a child who begins today": "Para un niño que empieza hoy",
  "on drops": "con gotas",
  "on defocus or lenslet spectacles": "con gafas de desenfoque o de microlentes",
  "on contact lenses": "con lentes de contacto",
  "on orthokeratology": "con ortoqueratología",
  "on no treatment": "sin tratamiento",
  "Shown once nothing is wrong with the steps.": "Se muestra cuando los pasos no tienen ningún error.",
  "Nothing is planned: such a child is never seen.": "No hay nada previsto: a un niño así no se le ve nunca.",
  "{what}; between {opens} and {closes}": "{what}; entre el {opens} y el {closes}",
  decide: "decidir",
  "No step is counted from the last visit off treatment: a child who is only observed is not asked to come again.":
    "Ningún paso se cuenta desde la última visita sin tratamiento: a un niño que solo se observa no se le pide volver.",

  // The wording of the consents
  "Eye drops": "Gotas oculares",
  "Glasses and lenses": "Gafas y lentes",
  "The wording that ships is a sound beginning, and not legal advice: local law may ask for more. Changing it makes a version of your own. Consents keep the very text that was signed.":
    "El texto incluido es un buen punto de partida y no un asesoramiento jurídico: la ley local puede exigir más. Al cambiarlo se crea una versión propia. Los consentimientos conservan el texto exacto que se firmó.",
  "Version {version}": "Versión {version}",
  "from {date}": "desde el {date}",
  earlier: "anterior",
  yours: "de la consulta",
  "replaced by yours": "sustituida por la suya",
  "ships with the program": "incluida en el programa",
  "{id, select, drops {Versions of drops} other {Versions of optical}}":
    "{id, select, drops {Versiones del texto de las gotas} other {Versiones del texto de gafas y lentes}}",
  "Families asked again": "Se vuelve a preguntar",
  Whose: "De quién",
  "Look at it or copy it": "Verla o copiarla",
  "{id, select, drops {show version {version} of drops in {language}} other {show version {version} of optical in {language}}}":
    "{id, select, drops {mostrar la versión {version} del texto de las gotas en {language}} other {mostrar la versión {version} del texto de gafas y lentes en {language}}}",
  "{id, select, drops {change a copy of version {version} of drops in {language}} other {change a copy of version {version} of optical in {language}}}":
    "{id, select, drops {modificar una copia de la versión {version} del texto de las gotas en {language}} other {modificar una copia de la versión {version} del texto de gafas y lentes en {language}}}",
  "change a copy": "modificar una copia",
}
