import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const calendar: Catalogue = {
  "Appointment to book": "Cita por reservar",
  "Something to collect": "Algo que recoger",
  "Something to sign": "Algo que firmar",
  "Reminders|calendar": "Recordatorios",
  "Any day from {from} to {to}.": "Cualquier día, del {from} al {to}.",
  "On {day} at the latest.": "A más tardar el {day}.",
  "As soon as you can: it was due by {day}.": "Lo antes posible: el plazo terminó el {day}.",
  "This is a reminder: it books no day.": "Esto es un recordatorio: no reserva ningún día.",
  "Please ask {practice}.": "Consulte con {practice}.",
}
