import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is. What is allowed stands after "debe ser"; a
// sentence that begins with a path in English begins with it here too, since the server puts another in its place.
export const server: Catalogue = {
  // Refusals
  "This request can't be read": "No se puede leer esta solicitud",
  "Log in first": "Inicie sesión primero",
  "Not allowed from here": "No se permite desde aquí",
  "Not found": "No encontrado",
  "This contradicts what is recorded": "Esto contradice lo que está registrado",
  "Too much at once": "Demasiado de una vez",
  "Only JSON is read here": "Aquí solo se lee JSON",
  "Something needs to be put right": "Hay algo que corregir",
  "Too many attempts": "Demasiados intentos",
  "Something failed on our side": "Algo falló por nuestra parte",
  "reference {reference}": "referencia {reference}",
  "{path} is missing: it must be {allowed}.": "{path} falta: debe ser {allowed}.",
  "{path} must be {allowed}, not {value}.": "{path} debe ser {allowed}, no {value}.",
  "{path} is not a field that is kept here.": "{path} no es un campo que se guarde aquí.",
  "{path} must be {allowed}; the payment is in {value}": "{path} debe ser {allowed}; el pago está en {value}",
  "a list of {count}": "una lista de {count}",
  "an object": "un objeto",
  "what was sent": "lo enviado",
  "the pages of this server": "las páginas de este servidor",
  "a change can be asked for by the pages of this server only":
    "solo las páginas de este servidor pueden pedir un cambio",
  "too many requests from this address; try again in {seconds, plural, one {# second} other {# seconds}}":
    "demasiadas solicitudes desde esta dirección; vuelva a intentarlo en {seconds, plural, one {# segundo} other {# segundos}}",
  "a child of this practice": "un niño de esta consulta",
  "no such child": "no existe ese niño",
  "a visit of this practice": "una visita de esta consulta",
  "no such visit": "no existe esa visita",
  "a treatment of this practice": "un tratamiento de esta consulta",
  "no such treatment": "no existe ese tratamiento",
  "a file of this practice": "un archivo de esta consulta",
  "no such file": "no existe ese archivo",
  "a message of this practice": "un mensaje de esta consulta",
  "no such message": "no existe ese mensaje",
  "a list of this practice": "una lista de esta consulta",
  "no such list": "no existe esa lista",
  "a entry that can be put right of this practice": "un registro de esta consulta que se pueda corregir",
  "no such entry that can be put right": "no existe ese registro que se pueda corregir",

  // Log-in and password
  "name or password is not right": "el nombre o la contraseña no es correcto",
  "too many wrong passwords for this name; try again in {seconds, plural, one {# second} other {# seconds}}":
    "demasiadas contraseñas incorrectas para este nombre; vuelva a intentarlo en {seconds, plural, one {# segundo} other {# segundos}}",
  "the log-in name": "el nombre de usuario",
  "the password": "la contraseña",
  "the password in use": "la contraseña actual",
  "this is not the password in use": "esta no es la contraseña actual",
  "the new password must be {allowed}": "la nueva contraseña debe ser {allowed}",
  "{least} to {most} characters": "de {least} a {most} caracteres",
  "{least} to {most} characters long": "de {least} a {most} caracteres",
  "made of at least 6 different characters": "de al menos 6 caracteres distintos",
  'without "{found}" in it': "una que no contenga «{found}»",

  // What a field may hold
  text: "texto",
  "text that is not empty": "un texto no vacío",
  "text of at most {most} characters": "un texto de {most} caracteres como máximo",
  "at most {most} characters": "de {most} caracteres como máximo",
  "one line without control characters": "una sola línea sin caracteres de control",
  "a day of the calendar written YYYY-MM-DD": "un día del calendario escrito AAAA-MM-DD",
  "a time of day written HH:MM": "una hora escrita HH:MM",
  "a time zone of the IANA list such as Europe/Dublin":
    "una zona horaria de la lista IANA, como Europe/Dublin",
  "a UUID": "un UUID",
  "64 hexadecimal digits": "64 dígitos hexadecimales",
  "an e-mail address": "una dirección de correo electrónico",
  "a telephone number": "un número de teléfono",
  "a telephone number of digits, blanks and + ( ) . / -":
    "un número de teléfono con cifras, espacios y + ( ) . / -",
  "an ISO 4217 code such as EUR": "un código ISO 4217, como EUR",
  "an ISO 3166-1 code such as IE": "un código ISO 3166-1, como IE",
  "a list [ ... ]": "una lista [ ... ]",
  "an object '{' ... '}'": "un objeto '{' ... '}'",
  "a JSON object '{' ... '}'": "un objeto JSON '{' ... '}'",
  degrees: "grados",
  "% w/v": "% p/v",
  "a number from {low} to {high}": "un número de {low} a {high}",
  "a whole number from {low} to {high}": "un número entero de {low} a {high}",
  "a number above {low} and up to {high}": "un número mayor que {low} y hasta {high}",
  "a whole number from 0": "un número entero desde 0",
  "a whole number from 1 to 120": "un número entero de 1 a 120",
  "a whole number of days from 1 to 366": "un número entero de días de 1 a 366",
  "a page number from 1": "un número de página desde 1",
  "a share from 0 to below 1": "una proporción desde 0 hasta menos de 1",
  "a strength above 0 and up to 1.5 % w/v": "una concentración mayor que 0 y hasta 1,5 % p/v",
  "the strength of the drops, % w/v": "la concentración de las gotas, % p/v",
  "absent: only atropine has a strength": "omitido: solo la atropina tiene concentración",
  "0, 1 or 2": "0, 1 o 2",
  "0, 1, 2 or 3": "0, 1, 2 o 3",
  "female or male": "female o male",
  "yes or no": "yes o no",
  "json or csv": "json o csv",
  "sms or post": "sms o post",
  "sent or not-sent": "sent o not-sent",
  "one of screen, phone": "uno de screen, phone",
  "why, in words": "el motivo, con palabras",
  "why it is corrected, in words": "el motivo de la corrección, con palabras",
  "the child's name": "el nombre del niño",
  "a number, or nothing": "un número, o nada",
  "a lot": "un lote",
  "the id of a child": "el id de un niño",
  "the id of a question": "el id de una pregunta",
  "the id of a treatment entry": "el id de un registro de tratamiento",
  "the id of the paper it takes the place of": "el id del documento al que sustituye",
  "the id of the contact it takes the place of": "el id del contacto al que sustituye",
  "a list of the children's ids": "una lista de los id de los niños",
  "at least one child": "al menos un niño",
  "at most {most} children": "de {most} niños como máximo",
  "each child once": "cada niño una sola vez",
  "at least one kind of message": "al menos una clase de mensaje",
  "a day not before the agreement": "un día no anterior al acuerdo",
  "an e-mail address, since the family is reached by e-mail":
    "una dirección de correo electrónico, ya que se contacta con la familia por correo",
  "a telephone number, since the family is reached by SMS":
    "un número de teléfono, ya que se contacta con la familia por SMS",
  "a postal address, since the family is reached by post":
    "una dirección postal, ya que se contacta con la familia por correo postal",
  "a way of reaching the family, since it agreed to messages":
    "una forma de contactar con la familia, ya que aceptó recibir mensajes",
  "Request body is too large": "La solicitud es demasiado grande",
  "at most two treatments, and only those studied together":
    "de dos tratamientos como máximo, y solo los estudiados juntos",
  "a prescription for at least one eye": "una graduación de al menos un ojo",
  "at most 40 prescriptions": "de 40 graduaciones como máximo",
  "at least one stage": "al menos una etapa",
  "an examination, a measure, a bottle or a device":
    "una exploración, una medida, un frasco o un dispositivo",
  "at most 200 fees": "de 200 tarifas como máximo",
  "at least one section": "al menos un apartado",
  "at most 60 sections": "de 60 apartados como máximo",
  "at least the smallest volume": "como mínimo el volumen mínimo",
  "at least one stock strength": "al menos una concentración de solución madre",
  "at most 10 devices": "de 10 instrumentos como máximo",
  "a duty of the evidence such as CD-028": "una tarea de la evidencia, como CD-028",
  "at most 8 lines": "de 8 líneas como máximo",
  "the SHA-256 of a stored picture": "el SHA-256 de una imagen guardada",
  "drawn, scan or typed": "drawn, scan o typed",
  "the name as it was typed": "el nombre tal como se escribió",

  // Files and signatures
  "The file must be {allowed}.": "El archivo debe ser {allowed}.",
  "The file must be {allowed}; it is {value}.": "El archivo debe ser {allowed}; tiene {value}.",
  "at most {most} MB": "de {most} MB como máximo",
  "a file that is not empty": "un archivo que no esté vacío",
  "a file of at most {most} MB": "un archivo de {most} MB como máximo",
  "a {type}, as its media type {mediaType} says; its content is something else":
    "un archivo {type}, como dice su tipo {mediaType}; su contenido es otra cosa",
  "drawn signature": "de firma dibujada",
  "a file that was stored before": "un archivo guardado antes",
  "a file of the type {types}": "un archivo del tipo {types}",
  "the text that was signed, stored before as text/plain":
    "el texto que se firmó, guardado antes como text/plain",
  "{form}, since the signature is {how}": "{form}, ya que la firma es {how}",
  "drawn|a signature": "dibujada",
  "a scan": "un documento escaneado",
  "typed|a signature": "escrita con el teclado",
  "the name of who signed": "el nombre de quien firmó",
  "how who signed is related to the child": "el parentesco de quien firmó con el niño",
  "absent, as it was signed; for anything else a new consent is signed":
    "omitido, como se firmó; para cualquier otra cosa se firma un consentimiento nuevo",
  "{was}, as it was signed; for anything else a new consent is signed":
    "{was}, como se firmó; para cualquier otra cosa se firma un consentimiento nuevo",

  // What is recorded
  "an id not used before, or used for the same content":
    "un id no usado antes, o usado para el mismo contenido",
  "the id {id} already stands for another entry": "el id {id} ya corresponde a otro registro",
  "an id not used yet": "un id aún no usado",
  "something else was recorded under this id; load the page again":
    "con este id se registró otra cosa; vuelva a cargar la página",
  "a number no other child of the practice has": "un número que no tenga otro niño de la consulta",
  "the number {number} belongs to {name}": "el número {number} pertenece a {name}",
  "an entry of this child": "un registro de este niño",
  "a {kind} of this child": "un registro «{kind}» de este niño",
  "no such entry to withdraw": "no existe ese registro para retirar",
  "no such {kind} to correct": "no existe ese registro «{kind}» para corregir",
  "a correction needs a reason": "una corrección necesita un motivo",
  "an entry that still holds": "un registro que siga vigente",
  "already withdrawn on {day}": "ya se retiró el {day}",
  "already corrected on {day}": "ya se corrigió el {day}",
  "one visit a day; correct the visit that is there": "una visita por día; corrija la visita que ya existe",
  "a visit on {date} is already recorded": "ya hay una visita registrada el {date}",
  "ended on {day}": "terminado el {day}",
  "changed to {treatment} on {day}": "cambiado a {treatment} el {day}",
  "decided on {date}: {reason}": "decidido el {date}: {reason}",
  "a treatment as it stands now": "un tratamiento tal como está ahora",
  "this treatment was stopped, changed or corrected meanwhile, on {day}; load the page again":
    "este tratamiento se interrumpió, cambió o corrigió entretanto, el {day}; vuelva a cargar la página",
  "another than the {treatment} of now": "distinto del actual, {treatment}",
  "before {end}, when the treatment ends already": "anterior al {end}, cuando el tratamiento ya termina",
  "the reason why it is ordered all the same, unless a consent to {name} is recorded first":
    "el motivo por el que se pide de todos modos, salvo que antes se registre un consentimiento para {name}",
  "{why}; record a consent to {name} first, or say under override why it is ordered all the same":
    "{why}; registre antes un consentimiento para {name}, o diga en «override» por qué se pide de todos modos",
  "{currency}, the currency of the fee schedule": "{currency}, la moneda de la lista de tarifas",
  "nothing is owed to this child, so there is no calendar":
    "este niño no tiene nada pendiente, así que no hay calendario",
  "this link and this date do not open a page": "este enlace y esta fecha no abren ninguna página",

  // The course file
  "a course file": "un archivo de curso",
  "a course file in JSON": "un archivo de curso en JSON",
  "The file is empty: it must be a course file in JSON.":
    "El archivo está vacío: debe ser un archivo de curso en JSON.",
  "The file is not JSON.": "El archivo no es JSON.",
  "The file is not JSON, line {line}, column {column}: {found} cannot stand there.":
    "El archivo no es JSON, línea {line}, columna {column}: ahí no puede estar {found}.",
  "the end of the file": "el final del archivo",
  "a list of at most {most}": "una lista de {most} como máximo",
  "This program reads course files of version {version}; this file says {said}.":
    "Este programa lee archivos de curso de la versión {version}; este archivo dice {said}.",
  "Did you mean {figure}?": "¿Quiso decir {figure}?",
  "{rest, plural, one {And # more fault.} other {And # more faults.}}":
    "{rest, plural, one {Y # error más.} other {Y # errores más.}}",
  "the file does not say its version; it was read as version {version}":
    "el archivo no dice su versión; se leyó como versión {version}",
  "it starts on {from}: read as planned": "empieza el {from}: se leyó como previsto",
  "not a field of the course file; it was not used": "no es un campo del archivo de curso; no se usó",
  "a field of the course file": "un campo del archivo de curso",
  "the visit of {date}": "la visita del {date}",
  "on or after the day of birth ({born})": "del día de nacimiento ({born}) o posterior",
  "a day up to {day}": "un día hasta el {day}",
  "a day without another visit ({other} has this one)": "un día sin otra visita ({other} ya ocupa este)",
  "a number from 0 to 180 degrees, since the cylinder is {cylinder} D":
    "un número de 0 a 180 grados, ya que el cilindro es de {cylinder} D",
  "after the day it starts ({from})": "posterior al día en que empieza ({from})",
  "on or after the end of {other}, which is of the same kind and has no end":
    "del día en que termina {other} o posterior; es del mismo tipo y no tiene fin",
  "on or after the end of {other}, which is of the same kind and ends {end}":
    "del día en que termina {other} o posterior; es del mismo tipo y termina el {end}",
  "a number above 0 and up to 1.5 % w/v, since the treatment is atropine":
    "un número mayor que 0 y hasta 1,5 % p/v, ya que el tratamiento es atropina",
  "on or after the day it was dispensed ({dispensed})": "del día en que se entregó ({dispensed}) o posterior",
  "on or after {field} ({day})": "de {field} ({day}) o posterior",
  "date|a field": "la fecha",
  "from|a field": "el comienzo",
  "opened|a field": "la apertura",
  "at most {days}, the nights from {from} to {to}": "{days} como máximo, las noches del {from} al {to}",
  "absent, since the bottles came on {day}": "omitido, ya que los frascos llegaron el {day}",
  "what it is about, in a few words": "de qué se trata, en pocas palabras",
  "what was seen or told, in words": "lo que se vio o se refirió, con palabras",
  "a question that this visit has not answered yet ({other} has this one)":
    "una pregunta que esta visita no haya respondido aún ({other} ya tiene esta)",
  "how it ended, in words, since it was closed on {day}":
    "cómo terminó, con palabras, ya que se cerró el {day}",
  "a lot of one strength ({other} has {percent} % under this lot, this one {own} %)":
    "un lote de una sola concentración ({other} tiene {percent} % con este lote, este {own} %)",
  "absent: only drops are given some nights of the week, and this is {kind}":
    "omitido: solo las gotas se dan algunas noches de la semana, y esto es {kind}",
}
