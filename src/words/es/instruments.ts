import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const instruments: Catalogue = {
  "a title of 1 to 16 letters, digits, blanks, - or _": "un título de 1 a 16 letras, cifras, espacios, - o _",
  "at least one instrument": "al menos un instrumento",
  "at most {most} instruments": "como máximo {most} instrumentos",

  // What came, and what became of it
  "Recorded under the child": "Registrado en el niño o la niña",
  "Already known: nothing changed": "Ya conocido: nada ha cambiado",
  "Waits in the Inbox": "Espera en la bandeja de entrada",
  Refused: "Rechazado",
  "What it sent is not DICOM, or breaks its rules ({code}).":
    "Lo que envió no es DICOM o incumple sus reglas ({code}).",
  "It asked for something that is not DICOM.": "Pidió algo que no es DICOM.",
  "Its title is not among the allowed instruments.": "Su título no está entre los instrumentos permitidos.",
  "It called us by another title than ours.": "Nos llamó con un título que no es el nuestro.",
  "It called us {title}, which is not our title.": "Nos llamó {title}, que no es nuestro título.",
  "It speaks another version of the protocol.": "Usa otra versión del protocolo.",
  "Too many instruments were sending at once; it may send again.":
    "Demasiados instrumentos enviaban a la vez; puede volver a enviar.",
  "Too many connections at once.": "Demasiadas conexiones a la vez.",
  "It offered no kind of object that is taken here.": "No ofreció ningún tipo de objeto que se acepte aquí.",
  "It did not agree on TLS with us.": "No se puso de acuerdo con nosotros en el uso de TLS.",
  "An object far too large was broken off.": "Se interrumpió un objeto demasiado grande.",
  "It connected and did not say what it wanted in time.": "Se conectó y no dijo a tiempo lo que quería.",
  "It fell silent in the middle; nothing of the object was kept.":
    "Calló a mitad de un objeto; no se guardó nada de él.",
  "It sent too slowly; nothing of the object was kept.":
    "Envió con demasiada lentitud; no se guardó nada del objeto.",
  "It kept the connection for too long.": "Mantuvo la conexión demasiado tiempo.",
  "It left in the middle of an object; nothing of it was kept.":
    "Se fue a mitad de un objeto; no se guardó nada de él.",
  "Its title is no longer allowed.": "Su título ya no está permitido.",
  "It sent another kind of object than was agreed.": "Envió un tipo de objeto distinto del acordado.",
  "It asked for something other than storing.": "Pidió algo distinto de guardar.",
  "The object has no valid identifier.": "El objeto no tiene un identificador válido.",
  "The object is another one than was announced.": "El objeto no es el que se anunció.",
  "The object is too large, or there was no memory for it.":
    "El objeto es demasiado grande o no había memoria para él.",
  "Too many objects in one connection; it may send the rest in another.":
    "Demasiados objetos en una conexión; puede enviar el resto en otra.",
  "Too many objects in a minute; it may send the rest later.":
    "Demasiados objetos en un minuto; puede enviar el resto más tarde.",
  "The object could not be read.": "No se pudo leer el objeto.",
  "There is no room left on the disk.": "No queda espacio en el disco.",
  "It could not be stored: a failure of this server. The instrument may send it again.":
    "No se pudo guardar: un fallo de este servidor. El instrumento puede volver a enviarlo.",
  Connection: "Conexión",
  "Axial measurements": "Medidas axiales",
  Keratometry: "Queratometría",
  Autorefraction: "Autorrefracción",
  "Subjective refraction": "Refracción subjetiva",
  "Visual acuity": "Agudeza visual",
  "Lensometry (glasses as worn)": "Frontofocometría (gafas que lleva)",
  "Encapsulated PDF": "PDF encapsulado",

  // Settings
  Instruments: "Instrumentos",
  "Instruments that may send": "Instrumentos que pueden enviar",
  "Each by the title it calls itself (AE title), letter by letter as set on the instrument. Nobody else is answered.":
    "Cada uno por el título con el que se identifica (AE title), letra por letra como está en el instrumento. A nadie más se le responde.",
  "Title of instrument {number}": "Título del instrumento {number}",
  "Take {title} off the list": "Quitar {title} de la lista",
  "Take row {number} off the list": "Quitar la fila {number} de la lista",
  "take off": "quitar",
  "Add instrument": "Añadir instrumento",
  "Earlier settings": "Ajustes anteriores",
  "{when}, {author}: {title}, port {port}, allowed {allowed}":
    "{when}, {author}: {title}, puerto {port}, permitidos {allowed}",
  "{when}, {author}: turned off; {title}, port {port}, allowed {allowed}":
    "{when}, {author}: desactivado; {title}, puerto {port}, permitidos {allowed}",
  "Put the settings of {when} into the form": "Poner los ajustes del {when} en el formulario",
  "Use again …": "Usar de nuevo…",
  "Recorded: instruments that are allowed may send.":
    "Registrado: los instrumentos permitidos pueden enviar.",
  "Recorded: instruments get no answer.": "Registrado: los instrumentos no reciben respuesta.",
  "Settings of instruments": "Ajustes de los instrumentos",
  "What is allowed": "Qué se permite",
  "Filled in for you and not recorded yet: look it over, then record it.":
    "Rellenado para usted y aún sin registrar: revíselo y después regístrelo.",
  "Back to what is recorded": "Volver a lo registrado",
  "Receive from instruments": "Recibir de los instrumentos",
  "Title of this practice": "Título de esta consulta",
  "What instruments call Lengthwise by (AE title): 1 to 16 characters, the same on both sides.":
    "Con qué título llaman los instrumentos a Lengthwise (AE title): de 1 a 16 caracteres, igual en ambos lados.",
  Port: "Puerto",
  "11112 is registered for DICOM.": "11112 está registrado para DICOM.",

  // Whether it works
  "the state of the receiver": "el estado del receptor",
  "State of the receiver": "Estado del receptor",
  "Listens as {title} at {host}, port {port}, since {when}.":
    "Escucha como {title} en {host}, puerto {port}, desde el {when}.",
  "Turned off: instruments get no answer.": "Desactivado: los instrumentos no reciben respuesta.",
  "Not set up: instruments get no answer.": "Sin configurar: los instrumentos no reciben respuesta.",
  "The receiver is not running here.": "El receptor no está en marcha aquí.",
  "Another program of this machine has port {port}. Choose another port below.":
    "Otro programa de este equipo tiene el puerto {port}. Elija otro más abajo.",
  "This machine does not let Lengthwise have port {port}. Choose one from 1024 on.":
    "Este equipo no deja a Lengthwise usar el puerto {port}. Elija uno a partir de 1024.",
  "This machine has no address {host}, where it was to listen.":
    "Este equipo no tiene la dirección {host}, en la que debía escuchar.",
  "Port {port} at {host} could not be opened; the log of the server says more.":
    "No se pudo abrir el puerto {port} en {host}; el registro del servidor dice más.",
  "Nothing is set yet: any program of this machine may send, under any title. Once you record settings below, they alone decide.":
    "Aún no hay nada configurado: cualquier programa de este equipo puede enviar, con cualquier título. En cuanto registre ajustes más abajo, solo ellos deciden.",
  "Only programs of this machine can reach it. To let instruments of the network in, start Lengthwise with --dicom-host and the address of this machine.":
    "Solo los programas de este equipo llegan a él. Para admitir instrumentos de la red, inicie Lengthwise con --dicom-host y la dirección de este equipo.",
  "What instruments send crosses the network unencrypted. Keep it to a network of its own, or start Lengthwise with --dicom-cert and --dicom-key.":
    "Lo que envían los instrumentos cruza la red sin cifrar. Manténgalo en una red propia o inicie Lengthwise con --dicom-cert y --dicom-key.",
  "Encrypted: instruments must use TLS 1.2 or later.":
    "Cifrado: los instrumentos deben usar TLS 1.2 o posterior.",
  "The port was named when Lengthwise was started (--dicom-port) and stands above the one below.":
    "El puerto se indicó al iniciar Lengthwise (--dicom-port) y prevalece sobre el de más abajo.",
  "Was it heard?": "¿Se ha oído?",
  "No instrument was heard since Lengthwise was started. Press the test button of the instrument (often called echo or verify): it appears here within seconds. If it does not, the host, the port or a firewall in between is wrong.":
    "No se ha oído ningún instrumento desde que se inició Lengthwise. Pulse el botón de prueba del instrumento (a menudo, «echo» o «verify»): aparece aquí en segundos. Si no aparece, falla la dirección, el puerto o un cortafuegos intermedio.",
  "Last heard": "Oído por última vez",
  "Last test (echo)": "Última prueba (echo)",
  "Last object": "Último objeto",
  "May send": "Puede enviar",
  never: "nunca",
  "yes, while nothing is set": "sí, mientras no haya nada configurado",
  "Allow {title} …": "Permitir {title}…",
  "Allow …": "Permitir…",

  // How an instrument is set up
  "How to set up an instrument": "Cómo configurar un instrumento",
  "On the instrument, look for DICOM, export or network, and add a storage destination with these figures. Then press its test button and look above whether it was heard.":
    "En el instrumento, busque DICOM, exportación o red, y añada un destino de almacenamiento con estos datos. Después pulse su botón de prueba y mire más arriba si se ha oído.",
  "Title (called AE title)": "Título (called AE title)",
  "none yet: turn receiving on above": "aún ninguno: active la recepción más arriba",
  Host: "Dirección",
  "{host} (this machine only)": "{host} (solo este equipo)",
  "the address of this machine in the practice’s network":
    "la dirección de este equipo en la red de la consulta",
  "Its own title": "Su propio título",
  "any; add it above under the instruments that may send":
    "cualquiera; añádalo más arriba entre los instrumentos que pueden enviar",
  Encryption: "Cifrado",
  "TLS, 1.2 or later": "TLS, 1.2 o posterior",
  "Transfer syntax": "Sintaxis de transferencia",
  "explicit or implicit little endian, uncompressed": "little endian explícita o implícita, sin comprimir",
  "What it may send": "Qué puede enviar",
  "Everything else, such as pictures, is refused: the instrument keeps it.":
    "Todo lo demás, como las imágenes, se rechaza: el instrumento lo conserva.",

  // The list
  "Received and refused": "Recibido y rechazado",
  "Everything {count}": "Todo {count}",
  "Received {count}": "Recibidos {count}",
  "Refused {count}": "Rechazados {count}",
  "Since Lengthwise was started, the last 500 of each. What was recorded stays with the child for good.":
    "Desde que se inició Lengthwise, los últimos 500 de cada. Lo registrado queda para siempre en el niño o la niña.",
  "Search by instrument, address, kind or reason": "Buscar por instrumento, dirección, tipo o motivo",
  "Instrument, address, kind or reason": "Instrumento, dirección, tipo o motivo",
  "Nothing matches.": "Nada coincide.",
  "Nothing came yet.": "Aún no ha llegado nada.",
  When: "Cuándo",
  "What became of it": "Qué ha sido de ello",
  "{count} times in a row": "{count} veces seguidas",
  "without a title": "sin título",
}
