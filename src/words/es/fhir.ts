import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const fhir: Catalogue = {
  "{rest, plural, one {# more resource was not taken.} other {# more resources were not taken.}}":
    "{rest, plural, one {No se incorporó # recurso más.} other {No se incorporaron # recursos más.}}",
  "It is about no Patient but a {type}.": "No trata de un Patient, sino de un {type}.",
  "It does not say whose it is.": "No dice de quién es.",
  "It is about a group.": "Trata de un grupo.",
  "The file is larger than {most} MB.": "El archivo ocupa más de {most} MB.",
  "The file is not JSON, nor JSON line by line.": "El archivo no es JSON, ni JSON línea por línea.",
  "The file is nested more than {most} levels deep, which no FHIR resource is.":
    "El archivo tiene más de {most} niveles anidados, lo que no ocurre en ningún recurso FHIR.",
  "It holds nothing of a child.": "No contiene nada de un niño.",
  "Another visit of this day was taken.": "Se incorporó otra visita de ese día.",
  "Another value for the same thing on {date} was taken; they differ, and which holds is not known.":
    "Se incorporó otro valor de lo mismo del {date}; son distintos y no se sabe cuál es el correcto.",
  "The glasses were prescribed on a day with figures, which were taken instead.":
    "Las gafas se prescribieron un día con medidas; se incorporaron estas.",
  "It is no FHIR resource: it has no resourceType.": "No es un recurso FHIR: no tiene resourceType.",
  "Bundles lie too deep inside each other.": "Hay demasiados Bundle unos dentro de otros.",
  "It asks to delete a resource; nothing is deleted by reading.":
    "Pide borrar un recurso; al leer no se borra nada.",
  "It holds more than {most} resources; a child's whole course is some hundred.":
    "Contiene más de {most} recursos; el curso entero de un niño tiene unos cientos.",
  "It holds no paper as PDF with a day, and words of another program are not taken over.":
    "No contiene ningún documento PDF con fecha, y los textos de otro programa no se incorporan.",
  "It does not say by a code of ours which treatment it covers.":
    "No dice con un código de este programa qué tratamiento cubre.",
  "A course file has no place for {type} of another program.":
    "Un archivo de curso no tiene lugar para {type} de otro programa.",
  "Its status is {status}.": "Su estado es {status}.",
  "It is a plan, not a prescription.": "Es un plan, no una prescripción.",
  "It says what is not to be given.": "Dice lo que no debe administrarse.",
  "It is not coded as atropine.": "No está codificado como atropina.",
  "It does not state the strength as milligrams in millilitres.":
    "No indica la concentración en miligramos por mililitros.",
  "It names no day.": "No indica ningún día.",
  "It did not happen: it is kept as possible only.": "No ocurrió: consta solo como posible.",
  "It does not say in words what happened.": "No dice con palabras qué ocurrió.",
  "It was written by rules of another program, which could change what it means.":
    "Se escribió con reglas de otro programa, que podrían cambiar su significado.",
  "It carries a modifier of another program, which could change what it means.":
    "Lleva un modificador de otro programa, que podría cambiar su significado.",
  "Its status is {status}, so it is not final.": "Su estado es {status}, así que no es definitivo.",
  "It does not say which list it belongs to.": "No dice a qué lista pertenece.",
  "Its code is not one that is understood: {codes}.": "Su código no es de los que se entienden: {codes}.",
  "It has no figure in a unit that is understood.": "No tiene ninguna medida en una unidad que se entienda.",
  "It names both eyes, so it is not clear whose figure it is.":
    "Nombra los dos ojos, así que no está claro de cuál es la medida.",
  "It does not say by a code which eye it is of.": "No dice con un código de qué ojo es.",
  "No lens in it has an eye and a sphere.": "Ninguna lente tiene ojo y esfera.",
  "It has more than {most} figures of one child.": "Tiene más de {most} medidas de un solo niño.",
  "It has too many faults to be read.": "Tiene demasiados errores para poder leerse.",
  "read from a prescription: that the drops were taken from that day on is not known":
    "leído de una prescripción: no se sabe si las gotas se usaron desde ese día",
  "taken as an open concern: another program's outcome does not close it here":
    "incorporado como asunto abierto: el desenlace en otro programa no lo cierra aquí",
  "glasses that were prescribed; read as old glasses, not as a refraction of that day":
    "gafas prescritas; leídas como gafas previas, no como refracción de ese día",
  "missing|a status": "ausente",
  "none|a code": "ninguno",
}
