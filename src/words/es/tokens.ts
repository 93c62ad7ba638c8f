import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const tokens: Catalogue = {
  "too many wrong tokens from this address": "demasiadas claves incorrectas desde esta dirección",
  "too many requests with this token": "demasiadas solicitudes con esta clave",
  "another attempt in {seconds, plural, one {# second} other {# seconds}}":
    "otro intento dentro de {seconds, plural, one {# segundo} other {# segundos}}",
  "a token that is neither revoked nor expired": "una clave que no esté revocada ni caducada",
  "this token opens nothing: it is unknown, revoked or expired":
    "esta clave no abre nada: es desconocida, está revocada o ha caducado",
  "a person who is logged in": "una persona que haya iniciado sesión",
  "this can be asked for by a person who is logged in only, with no token":
    "esto solo puede pedirlo una persona que haya iniciado sesión, no una clave",
  "this token was made without the scope {scope}": "esta clave se creó sin el permiso {scope}",
  "an address such as https://program.example/news": "una dirección como https://program.example/news",
  "an address without a name and password in it": "una dirección sin nombre ni contraseña",
  "an address without a # part": "una dirección sin la parte que sigue a #",
  "an address of another machine, since this server is open to others than this machine":
    "una dirección de otro equipo, porque este servidor está abierto a otros además de este equipo",
  "an address that begins with https, since it is not on this machine":
    "una dirección que empiece por https, porque no está en este equipo",
  "an address of the internet, not of a network inside": "una dirección de internet, no de una red interna",
  "at most {most} addresses at a time": "{most} direcciones a la vez como máximo",
  "a delivery to an address that is still there, and not under way":
    "una entrega a una dirección que siga existiendo y que no esté en curso",
  "a whole number of days from 1 to {most}": "un número entero de días de 1 a {most}",
  "one or more of {list}": "uno o varios de {list}",
  "a name": "un nombre",
  "at most {most} tokens at a time": "{most} claves a la vez como máximo",
  "there are too many tokens; revoke those that nobody needs":
    "hay demasiadas claves; revoque las que nadie necesite",
  "a token of this practice": "una clave de esta consulta",
  "no such token": "no existe esa clave",
  "an address of this practice": "una dirección de esta consulta",
  "no such address": "no existe esa dirección",
  "a delivery of this practice": "una entrega de esta consulta",
  "no such delivery": "no existe esa entrega",
  Connections: "Conexiones",
  "Other programs of the practice: what lets them in, and what they are told.":
    "Otros programas de la consulta: qué les da acceso y qué se les comunica.",
  "Description of the interface (OpenAPI)": "Descripción de la interfaz (OpenAPI)",
  "Read children and courses": "Leer niños y cursos",
  "Record entries": "Registrar entradas",
  "Read the record as FHIR": "Leer el registro como FHIR",
  "Take archives and research tables": "Obtener archivos completos y tablas de investigación",
  "Store and read files": "Guardar y leer archivos",
  revoked: "revocada",
  "A child’s finding changed": "Cambió el hallazgo de un niño",
  "Something became owed": "Algo quedó pendiente",
  "Something became overdue": "Algo quedó atrasado",
  "Something waits in the Inbox": "Algo espera en la bandeja de entrada",
  On: "Activada",
  Off: "Desactivada",
  "Turned off after failures": "Desactivada tras varios fallos",
  Removed: "Eliminada",
  Delivered: "Entregado",
  "Given up": "Abandonado",
  "Answered {status}": "Respondió {status}",
  "Answered {status}, a redirect, which is not followed":
    "Respondió {status}, una redirección, que no se sigue",
  "No answer within 10 seconds": "Sin respuesta en 10 segundos",
  "No connection": "Sin conexión",
  "The certificate is not to be trusted": "El certificado no es de confianza",
  "The name leads to a network inside, where nothing is sent":
    "El nombre lleva a una red interna, adonde no se envía nada",
  "Cut short by the end of the program; sent again":
    "Interrumpido al terminar el programa; se envía de nuevo",
  "A person asked for another delivery": "Una persona pidió otra entrega",
  "The address was removed": "La dirección se eliminó",
  "Nothing is new, and nothing waits.": "No hay nada nuevo ni nada en espera.",
  "{planned, plural, one {# piece of news} other {# pieces of news}}, {delivered, plural, one {# delivered} other {# delivered}}, {failed, plural, one {# attempt failed} other {# attempts failed}}.":
    "{planned, plural, one {# novedad} other {# novedades}}, {delivered, plural, one {# entregada} other {# entregadas}}, {failed, plural, one {# intento fallido} other {# intentos fallidos}}.",
  "I have kept it": "Ya lo he guardado",
  Copy: "Copiar",
  "New token": "Clave nueva",
  "The token": "La clave",
  "This is the only time it is shown. Whoever has it can do what you chose, in your name.":
    "Solo se muestra esta vez. Quien la tenga podrá hacer lo que usted eligió, en su nombre.",
  "Which program it is for. What it records is shown with your name.":
    "Para qué programa es. Lo que registre aparecerá con su nombre, el de usted.",
  "It may": "Puede",
  "Make the token": "Crear la clave",
  Tokens: "Claves",
  "A token lets another program of yours in without a password. What may be done with it is chosen when it is made, and it can be stopped at any time.":
    "Una clave da acceso a otro programa suyo sin contraseña. Lo que se puede hacer con ella se elige al crearla, y puede anularse en cualquier momento.",
  "the tokens": "las claves",
  "Search tokens by name or person": "Buscar claves por nombre o persona",
  "Last used": "Último uso",
  Revoke: "Revocar",
  "No token matches.": "Ninguna clave coincide.",
  "No token yet.": "Todavía no hay ninguna clave.",
  "Revoke the token {name}?": "¿Revocar la clave {name}?",
  "The program that has it is let in no more, at once. A new token can be made at any time.":
    "El programa que la tiene deja de tener acceso de inmediato. Se puede crear una clave nueva en cualquier momento.",
  "Revoke it": "Revocarla",
  "The token {name} is revoked.": "La clave {name} está revocada.",
  "ends in {ending}": "termina en {ending}",
  "by {who}": "por {who}",
  "not yet": "todavía no",
  "Revoke {name}": "Revocar {name}",
  "New address": "Dirección nueva",
  "The secret of the signature": "El secreto de la firma",
  "This is the only time it is shown. By it the other program knows that a notice comes from here.":
    "Solo se muestra esta vez. Con él, el otro programa sabe que un aviso procede de aquí.",
  "It begins with https and leads to the internet, or names this machine itself.":
    "Empieza por https y lleva a internet, o nombra este mismo equipo.",
  "It is told when": "Se le avisa cuando",
  "Add the address": "Añadir la dirección",
  "Notices to other programs": "Avisos a otros programas",
  "Looking …": "Buscando …",
  "Another program is told that something is new, by ids and kinds only: never a name, a birth date or a figure. Nothing is sent until an address is added, and nothing of what was before.":
    "A otro programa se le avisa de que hay algo nuevo, solo con identificadores y tipos: nunca un nombre, una fecha de nacimiento ni una cifra. No se envía nada hasta que se añade una dirección, y nada de lo anterior.",
  "the addresses": "las direcciones",
  "{url} is told nothing since {instant}: {failures, plural, one {# attempt} other {# attempts}} in a row failed. See what is wrong there and turn it on again.":
    "A {url} no se le avisa de nada desde {instant}: {failures, plural, one {falló # intento seguido} other {fallaron # intentos seguidos}}. Vea qué ocurre allí y actívela de nuevo.",
  "Search addresses": "Buscar direcciones",
  Change: "Cambiar",
  "No address matches.": "Ninguna dirección coincide.",
  "No address yet; nothing is sent.": "Todavía no hay ninguna dirección; no se envía nada.",
  "Remove this address?": "¿Eliminar esta dirección?",
  "{url} is told nothing more, and what still waits for it is called off.":
    "A {url} no se le avisa de nada más, y lo que aún espera se anula.",
  "Remove it": "Eliminarla",
  "The address is removed.": "La dirección está eliminada.",
  "{delivered} delivered, {waiting} waiting, {failed} given up":
    "{delivered} entregados, {waiting} en espera, {failed} abandonados",
  "failed; next attempt {instant}": "falló; próximo intento {instant}",
  "Turn on {url}": "Activar {url}",
  "Turn off {url}": "Desactivar {url}",
  "Turn on": "Activar",
  "Turn off": "Desactivar",
  "Remove {url}": "Eliminar {url}",
  Deliveries: "Entregas",
  "Search by child, address or id": "Buscar por niño, dirección o identificador",
  "the deliveries": "las entregas",
  "Send again: {what}": "Enviar de nuevo: {what}",
  "It is sent again with the next look, within a minute.":
    "Se envía de nuevo en la próxima revisión, en menos de un minuto.",
  "No delivery matches.": "Ninguna entrega coincide.",
  "Nothing was sent yet.": "Todavía no se ha enviado nada.",
  "{attempts, plural, one {# attempt} other {# attempts}}; next {instant}":
    "{attempts, plural, one {# intento} other {# intentos}}; próximo {instant}",
}
