import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const webMessages: Catalogue = {
  Contact: "Contacto",
  "Such as mother, grandfather, guardian.": "Por ejemplo: madre, abuelo, tutora.",
  "Messages call the child": "Los mensajes llaman al niño o a la niña",
  "Such as the first name. Left empty, they say “your child”.":
    "Por ejemplo, el nombre de pila. Si se deja vacío, dicen «su hijo o hija».",
  "Language of messages": "Idioma de los mensajes",
  "E-mail": "Correo electrónico",
  Telephone: "Teléfono",
  "With its country code, such as +353 1 555 0100.": "Con el prefijo del país, por ejemplo +353 1 555 0100.",
  "How the family wishes to be reached": "Cómo desea la familia que se la contacte",
  "The family agreed to": "La familia aceptó",
  "Tick only what the family said. Without it no message is ever sent; it can be withdrawn at any time.":
    "Marque solo lo que la familia haya dicho. Sin ello nunca se envía ningún mensaje; puede retirarse en cualquier momento.",
  "Agreed on": "Aceptado el",
  "Record contact": "Registrar el contacto",
  "Recorded: the family’s contact.": "Registrado: el contacto de la familia.",
  "Put right …": "Corregir…",
  Reached: "Se la contacta",
  "Agreed to": "Ha aceptado",
  "Nothing: no message is sent.": "Nada: no se envía ningún mensaje.",
  "{what}, on {on}": "{what}, el {on}",
  "{what}, on {on}; withdrawn from {until}: no message is sent.":
    "{what}, el {on}; retirado desde el {until}: no se envía ningún mensaje.",
  "No more messages to this family; what waited is called off.":
    "No habrá más mensajes para esta familia; lo que esperaba queda anulado.",
  "Stop messages": "Detener los mensajes",
  "Nothing is left to hand over.": "No queda nada por entregar.",
  "{count, plural, one {# message} other {# messages}} handed over. Download the list below.":
    "{count, plural, one {# mensaje entregado} other {# mensajes entregados}}. Descargue la lista más abajo.",
  "SMS and post": "SMS y correo postal",
  "Lengthwise sends neither: it gives a list to whoever does, and counts what is on it as handed over.":
    "Lengthwise no envía ni lo uno ni lo otro: da una lista a quien lo hace y cuenta como entregado lo que hay en ella.",
  "Export {count} SMS": "Exportar {count} SMS",
  "Export {count, plural, one {# letter} other {# letters}}":
    "Exportar {count, plural, one {# carta} other {# cartas}}",
  "Download the list": "Descargar la lista",
  "{count, plural, one {# message waits} other {# messages wait}} again.":
    "{count, plural, one {# mensaje vuelve} other {# mensajes vuelven}} a esperar.",
  "Undo: not handed over": "Deshacer: no se entregó",
  "Mail server": "Servidor de correo",
  "Last e-mail taken: {when}.": "Último correo aceptado: {when}.",
  "Look and send now": "Revisar y enviar ahora",
  "Send a test to me …": "Enviarme una prueba…",
  "Messages are turned off: nothing is planned and nothing sent. {settings}":
    "Los mensajes están desactivados: no se prevé ni se envía nada. {settings}",
  "No mail server was named when Lengthwise was started (LENGTHWISE_SMTP): e-mails wait here until there is one.":
    "No se indicó ningún servidor de correo al iniciar Lengthwise (LENGTHWISE_SMTP): los correos esperan aquí hasta que haya uno.",
  "Nothing is lost; everything waits. Since {when}, through {server}.":
    "No se pierde nada; todo espera. Desde el {when}, a través de {server}.",
  "Next attempt: {when}": "Próximo intento: {when}",
  "Quiet hours: e-mails go from {time} on, through {server}.":
    "Horas de silencio: los correos salen a partir de las {time}, a través de {server}.",
  "E-mails go through {server}.": "Los correos salen a través de {server}.",
  "Send a test": "Enviar una prueba",
  "Your e-mail address": "Su dirección de correo",
  "It gets a line that says nothing of any child.": "Recibe una línea que no dice nada de ningún niño.",
  Message: "Mensaje",
  "the message": "el mensaje",
  To: "Para",
  "The mail server said: {reply}": "El servidor de correo dijo: {reply}",
  "What happened to it": "Qué ha pasado con él",
  "Noted: the message was sent.": "Anotado: el mensaje se envió.",
  "It was sent": "Se envió",
  "The message waits to be sent again.": "El mensaje espera para enviarse de nuevo.",
  "Send again": "Enviar de nuevo",
  "Ask the family or look into the mailbox it was sent from. Sent again, it may arrive twice.":
    "Pregunte a la familia o mire en el buzón desde el que salió. Si se envía de nuevo, puede llegar dos veces.",
  "Try again": "Intentar de nuevo",
  "Call off …": "Anular…",
  "Call this message off? The family of {child} is then not told.":
    "¿Anular este mensaje? Entonces no se avisa a la familia de {child}.",
  "The message is called off.": "El mensaje queda anulado.",
  "Call off": "Anular",
  "Keep it": "Conservarlo",
  Messages: "Mensajes",
  Open: "Abrir",
  "No message matches.": "Ningún mensaje coincide.",
  "No message yet. What families are to be told is put here on its day.":
    "Aún no hay mensajes. Lo que haya que decir a las familias aparece aquí en su día.",
  "{channel}: {address}": "{channel}: {address}",
  "Open: {what}, {child}": "Abrir: {what}, {child}",
  "Handed over": "Entregado",
  "Waiting, put off": "En espera, aplazado",
  "the messages": "los mensajes",
  "Search by child, family or address": "Buscar por niño, familia o dirección",
  "Child, family or address": "Niño, familia o dirección",
  All: "Todos",
  "{state} {count}": "{state} {count}",
  "{total, plural, one {# message} other {# messages}}":
    "{total, plural, one {# mensaje} other {# mensajes}}",
  Waiting: "En espera",
  "Being sent": "Enviándose",
  Sent: "Enviado",
  "Not accepted": "No aceptado",
  Unknown: "Sin saber",
  "Called off": "Anulado",
  "Time to book": "Hora de pedir cita",
  "Visit due soon": "Cita próxima",
  "Visit not made": "Cita no realizada",
  "Bottle running out": "Frasco por acabarse",
  "e-mail": "correo electrónico",
  SMS: "SMS",
  post: "correo postal",
  "By e-mail": "Por correo electrónico",
  "By SMS": "Por SMS",
  "By post": "Por correo postal",
  "No messages": "Sin mensajes",
  "Reminders of visits": "Recordatorios de citas",
  "Notice of a bottle running out": "Aviso de que un frasco se acaba",
  "The mail server asked to try again later.": "El servidor de correo pidió intentarlo más tarde.",
  "The mail server does not take it.": "El servidor de correo no lo acepta.",
  "The connection ended while it was being sent. Nobody can know whether it arrived.":
    "La conexión terminó mientras se enviaba. Nadie puede saber si llegó.",
  "Nothing is left to say: what it was about is done or was taken back.":
    "Ya no hay nada que decir: aquello de lo que trataba está hecho o se retiró.",
  "It is due again.": "Vuelve a ser necesario.",
  "A person said that it was sent.": "Una persona dijo que se había enviado.",
  "A person asked for another attempt.": "Una persona pidió otro intento.",
  "The list it was handed over in was taken back.": "La lista en la que se entregó se retiró.",
  "The mail server does not answer.": "El servidor de correo no responde.",
  "The mail server offers no encryption that can be trusted, and nothing is sent without it.":
    "El servidor de correo no ofrece un cifrado fiable, y sin él no se envía nada.",
  "The mail server refuses the user or the password.":
    "El servidor de correo rechaza el usuario o la contraseña.",
  "The mail server refuses the practice’s address as sender.":
    "El servidor de correo rechaza la dirección de la consulta como remitente.",
  "{day}, {time}": "{day}, {time}",
  "Messages are turned off; nothing was sent.": "Los mensajes están desactivados; no se envió nada.",
  "No mail server is set; everything waits.": "No hay servidor de correo; todo espera.",
  "These are quiet hours; everything waits until they end.":
    "Son horas de silencio; todo espera hasta que terminen.",
  "The mail server takes nothing at the moment; everything waits.":
    "El servidor de correo no acepta nada por ahora; todo espera.",
  "{added, plural, one {# new message} other {# new messages}}, {sent, plural, one {# e-mail sent} other {# e-mails sent}}.":
    "{added, plural, one {# mensaje nuevo} other {# mensajes nuevos}}, {sent, plural, one {# correo enviado} other {# correos enviados}}.",
  "{sent, plural, one {# e-mail sent} other {# e-mails sent}}; {open, plural, one {# message needs} other {# messages need}} a person: see Unknown and Not accepted.":
    "{sent, plural, one {# correo enviado} other {# correos enviados}}; {open, plural, one {# mensaje necesita} other {# mensajes necesitan}} a una persona: vea Sin saber y No aceptado.",
  "The mail server took the test. See whether it arrives.":
    "El servidor de correo aceptó la prueba. Compruebe si llega.",
  "The connection ended before the mail server had answered.":
    "La conexión terminó antes de que el servidor de correo respondiera.",
  "The mail server did not take the test: {reply}": "El servidor de correo no aceptó la prueba: {reply}",
  "The coming 14 days": "Los próximos 14 días",
  "Nothing is planned.": "No hay nada previsto.",
  "the plan": "el plan",
  "{what}, {channel}": "{what}, {channel}",
  "{more, plural, one {and # more} other {and # more}}": "{more, plural, one {y # más} other {y # más}}",
  "Recorded: families that agreed are written to.": "Registrado: se escribe a las familias que lo aceptaron.",
  "Recorded: messages are turned off.": "Registrado: los mensajes están desactivados.",
  "Families that agreed are reminded of visits and told when a bottle runs out: by e-mail from here, by SMS or post as lists. The words name no diagnosis and no figure of the child.":
    "A las familias que lo aceptaron se les recuerdan las citas y se les avisa cuando un frasco se acaba: por correo electrónico desde aquí, por SMS o correo postal como listas. Los textos no nombran ningún diagnóstico ni ninguna medida del niño.",
  "Write to families that agreed": "Escribir a las familias que lo aceptaron",
  Sender: "Remitente",
  "The practice as families know it.": "La consulta tal como la conocen las familias.",
  "Where families call; it stands in every message.":
    "Adonde llaman las familias; figura en todos los mensajes.",
  "E-mail address of the sender": "Dirección de correo del remitente",
  "Answers go to": "Las respuestas van a",
  "Left empty, to the sender. Somebody must read them: families stop messages there.":
    "Si se deja vacío, al remitente. Alguien tiene que leerlas: ahí las familias piden que se detengan los mensajes.",
  "Days before a visit": "Días antes de una cita",
  "Before its window opens and before it is due. Common practice, no source.":
    "Antes de que se abra su plazo y antes de su fecha. Práctica habitual, sin fuente.",
  "Quiet from": "Silencio desde las",
  "Nothing is sent in the quiet hours. Common practice, no source.":
    "En las horas de silencio no se envía nada. Práctica habitual, sin fuente.",
  "Quiet until": "Silencio hasta las",
  "Time zone": "Zona horaria",
  "Of the practice, such as Europe/Dublin.": "La de la consulta, por ejemplo Europe/Dublin.",
  "The mail server is named when Lengthwise is started (LENGTHWISE_SMTP); its password is never kept here or shown.":
    "El servidor de correo se indica al iniciar Lengthwise (LENGTHWISE_SMTP); su contraseña nunca se guarda ni se muestra aquí.",
  "Record settings": "Registrar los ajustes",
}
