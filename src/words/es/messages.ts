import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const messages: Catalogue = {
  "Time to book a visit": "Es hora de pedir una cita",
  "A visit is coming up": "Se acerca una cita",
  "A visit has not been made yet": "Queda una cita pendiente",
  "Something to arrange with us soon": "Algo que debemos acordar pronto",
  "You agreed to such messages on {day}. To stop them, answer this message with the word stop, or call us.":
    "Usted aceptó recibir estos mensajes el {day}. Para dejar de recibirlos, responda a este mensaje con la palabra «alto» o llámenos.",
  "You agreed to such messages on {day}. To stop them, call us.":
    "Usted aceptó recibir estos mensajes el {day}. Para dejar de recibirlos, llámenos.",
  "Hello {name},": "Hola, {name}:",
  "You reach us by telephone at {telephone}.": "Puede llamarnos por teléfono al {telephone}.",
  "Please do not write to us about anything urgent: call us.":
    "Si es algo urgente, no nos escriba: llámenos.",
  "Please do not write to us about anything urgent. Urgent contact: {urgent}.":
    "Si es algo urgente, no nos escriba. Contacto para urgencias: {urgent}.",
  "{practice}, telephone {telephone}. To stop these messages, call us.":
    "{practice}, teléfono {telephone}. Para dejar de recibir estos mensajes, llámenos.",
  "Please call us to find a new day.": "Por favor, llámenos para acordar otro día.",
  "Please call us about the next one.": "Por favor, llámenos para acordar el siguiente.",
  "Please do not use a bottle after its date.": "Por favor, no use ningún frasco después de su fecha.",
  "If a day is agreed already, there is nothing else to do.":
    "Si ya tiene una fecha acordada, no tiene que hacer nada más.",
  "It is time to book the next visit of {child}: please call us for a day until {until}.":
    "Es hora de pedir la próxima cita de {child}: por favor, llámenos para acordar un día hasta el {until}.",
  "It is time to book your child’s next visit: please call us for a day until {until}.":
    "Es hora de pedir la próxima cita de su hijo o hija: por favor, llámenos para acordar un día hasta el {until}.",
  "It is time to book the next visit of {child}: please call us for a day from {from} to {until}.":
    "Es hora de pedir la próxima cita de {child}: por favor, llámenos para acordar un día entre el {from} y el {until}.",
  "It is time to book your child’s next visit: please call us for a day from {from} to {until}.":
    "Es hora de pedir la próxima cita de su hijo o hija: por favor, llámenos para acordar un día entre el {from} y el {until}.",
  "The next visit of {child} is planned for about {day}: please call us if no day is agreed yet.":
    "La próxima cita de {child} está prevista hacia el {day}: por favor, llámenos si aún no hay un día acordado.",
  "Your child’s next visit is planned for about {day}: please call us if no day is agreed yet.":
    "La próxima cita de su hijo o hija está prevista hacia el {day}: por favor, llámenos si aún no hay un día acordado.",
  "By our records the visit of {child} that was planned for about {day} has not been made yet.":
    "Según nuestros registros, la cita de {child} prevista hacia el {day} aún no se ha realizado.",
  "By our records your child’s visit that was planned for about {day} has not been made yet.":
    "Según nuestros registros, la cita de su hijo o hija prevista hacia el {day} aún no se ha realizado.",
  "By our records the last bottle for {child} was good until {day}.":
    "Según nuestros registros, el último frasco de {child} se podía usar hasta el {day}.",
  "By our records your child’s last bottle was good until {day}.":
    "Según nuestros registros, el último frasco de su hijo o hija se podía usar hasta el {day}.",
  "By our records the last bottle for {child} is good until {day}.":
    "Según nuestros registros, el último frasco de {child} se puede usar hasta el {day}.",
  "By our records your child’s last bottle is good until {day}.":
    "Según nuestros registros, el último frasco de su hijo o hija se puede usar hasta el {day}.",
  "Postal address": "Dirección postal",
  "Telephone, digits only": "Teléfono, solo cifras",
  "a mail server named at the start, and the practice’s settings of messages":
    "un servidor de correo indicado al iniciar y los ajustes de mensajes de la consulta",
  "no mail server was named when this server was started":
    "no se indicó ningún servidor de correo al iniciar este servidor",
  "the practice has not recorded its settings of messages yet":
    "la consulta aún no ha registrado sus ajustes de mensajes",
  "Test of the mail server": "Prueba del servidor de correo",
  "This is a test. Messages from {practice} to families can be sent.":
    "Esto es una prueba. Los mensajes de {practice} a las familias se pueden enviar.",
}
