import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const enter: Catalogue = {
  "Handed out": "Entregado",
  "Opened|bottle": "Abierto",
  "Blank while it is not open.": "En blanco mientras no esté abierto.",
  "Last day of use": "Último día de uso",
  "Once opened. A month is taken where none is given.": "Una vez abierto. Si no se indica, se toma un mes.",
  "Volume, mL": "Volumen, mL",
  Lot: "Lote",
  "This lot stands in the record with another strength. One lot is one making: look at the label of both bottles.":
    "Este lote consta con otra concentración. Un lote es una sola elaboración: mire la etiqueta de ambos frascos.",
  "Recorded: bottle of {day}.": "Registrado: frasco del {day}.",
  Bottle: "Frasco",
  "Nights with a bottle in date are what counts as treated. Drops are poisonous when swallowed.":
    "Como tratadas cuentan las noches con un frasco sin caducar. Las gotas son tóxicas si se tragan.",
  "Record bottle": "Registrar el frasco",
  "Recorded: {treatment} in place of {former} from {day}.":
    "Registrado: {treatment} en lugar de {former} desde el {day}.",
  "the former": "lo anterior",
  "Change of a treatment": "Cambio de un tratamiento",
  "No treatment is running. Enter the start of one instead.":
    "No hay ningún tratamiento en curso. Registre el inicio de uno.",
  "In place of": "En lugar de",
  "New treatment": "Tratamiento nuevo",
  "Not required.": "No es obligatorio.",
  "The old treatment ends on the day the new one starts. Off-label use needs consent to the new strength; it is entered apart, with its own date.":
    "El tratamiento anterior termina el día en que empieza el nuevo. El uso fuera de ficha técnica requiere consentimiento para la nueva concentración; se registra aparte, con su propia fecha.",
  "Record change": "Registrar el cambio",
  "Recorded: details of the child.": "Registrado: datos del niño.",
  "Details of the child": "Datos del niño",
  Protocol: "Protocolo",
  "In force now: {protocol}.": "Vigente ahora: {protocol}.",
  "the one that fits the treatment": "el propio del tratamiento",
  "Why is it changed?": "¿Por qué se cambia?",
  Right: "Derecho",
  Left: "Izquierdo",
  "Where from": "Procedencia",
  "Recorded: {count, plural, one {# pair} other {# pairs}} of earlier glasses.":
    "Registrado: {count, plural, one {# par} other {# pares}} de gafas anteriores.",
  "Earlier glasses": "Gafas anteriores",
  "Prescriptions from before the treatment are a second witness of how fast the eyes grew. Type them as −1.25 −0.50 x 180; where from is not required.":
    "Las graduaciones de antes del tratamiento son un segundo testimonio del ritmo de crecimiento de los ojos. Escríbalas como −1,25 −0,50 x 180; la procedencia no es obligatoria.",
  "{field}, glasses {number}": "{field}, gafas {number}",
  "Record glasses": "Registrar las gafas",
  "One more row": "Una fila más",
  "Start of a treatment": "Inicio de un tratamiento",
  "Stop of a treatment": "Fin de un tratamiento",
  Enter: "Registrar",
  "the form": "el formulario",
  "the day of the prescription is needed": "falta el día de la graduación",
  "one eye's prescription is needed at least": "hace falta la graduación de al menos un ojo",
  "Enter a date and a prescription to see what it adds to the chance of an answer.":
    "Escriba una fecha y una graduación para ver qué añade a la probabilidad de una respuesta.",
  "If {treatment} began today: {effect}": "Si {treatment} empezara hoy: {effect}",
  "With these glasses the answer changes at once, from “{before}” to “{after}”.":
    "Con estas gafas la respuesta cambia de inmediato, de «{before}» a «{after}».",
  "There is an answer already; these glasses do not change it.":
    "Ya hay una respuesta; estas gafas no la cambian.",
  "There is no chance to tell yet: {reason}.": "Aún no se puede dar ninguna probabilidad: {reason}.",
  "No review is planned by which an answer could come.":
    "No hay prevista ninguna revisión en la que pudiera llegar una respuesta.",
  "With these glasses the chance of an answer by {month} {ifItWorks, select, same {stays at {nowWorks}} other {goes from {works} to {nowWorks}}} if it works, and {ifNot, select, same {stays at {nowFails}} other {goes from {fails} to {nowFails}}} if not.":
    "Con estas gafas la probabilidad de una respuesta para {month} {ifItWorks, select, same {se queda en {nowWorks}} other {pasa de {works} a {nowWorks}}} si funciona, y {ifNot, select, same {se queda en {nowFails}} other {pasa de {fails} a {nowFails}}} si no.",
  "{treatment}, since {day}": "{treatment}, desde el {day}",
  "Recorded: {treatment} from {day}.": "Registrado: {treatment} desde el {day}.",
  "{treatment} is running since {day}. For another strength, close this and choose “Change of a treatment”.":
    "{treatment}: en curso desde el {day}. Para otra concentración, cierre esto y elija «Cambio de un tratamiento».",
  "Off-label use needs consent; it is entered apart, with its own date.":
    "El uso fuera de ficha técnica requiere consentimiento; se registra aparte, con su propia fecha.",
  "Record start": "Registrar el inicio",
  "Recorded: {treatment} stopped, {day}.": "Registrado: fin de {treatment}, {day}.",
  treatment: "tratamiento",
  "No treatment is running.": "No hay ningún tratamiento en curso.",
  "First day without it": "Primer día sin él",
  "Record stop": "Registrar el fin",
}
