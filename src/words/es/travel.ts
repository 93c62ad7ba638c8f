import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const travel: Catalogue = {
  "no treatment is in use on {date}: there is nothing that such a note could say":
    "el {date} no hay ningún tratamiento en uso: una nota así no tendría nada que decir",
  "Note for school and travel": "Nota para la escuela y los viajes",
  "Made on {date} from the record of {practice}. It is not a prescription.":
    "Hecha el {date} a partir del expediente de {practice}. No es una receta.",
  "Child|of the note": "Niño o niña",
  "Born|day of birth": "Fecha de nacimiento",
  "This child is treated so that short-sightedness increases more slowly.":
    "Este niño o niña recibe un tratamiento para que la miopía aumente más despacio.",
  "{name} is treated so that short-sightedness increases more slowly.":
    "{name} recibe un tratamiento para que la miopía aumente más despacio.",
  "The treatment is in the care of {practice}. This note says what was in use on {date}; ask for a new one after a change.":
    "El tratamiento está a cargo de {practice}. Esta nota dice lo que se usaba el {date}; pida una nueva después de un cambio.",
  "What the child uses": "Lo que se usa",
  "What may be noticed": "Lo que se puede notar",
  "We have read no report of what may be noticed at this strength. Please tell the parents of anything unusual.":
    "No hemos leído ningún informe de lo que se puede notar con esta concentración. Avise a los padres de cualquier cosa fuera de lo normal.",
  "Some children on drops of this strength told of this; others noticed nothing. Please tell the parents when it is new or gets worse.":
    "Algunos niños con gotas de esta concentración contaron esto; otros no notaron nada. Avise a los padres si es nuevo o empeora.",
  "What to do": "Qué hacer",
  "Sunglasses and a hat or cap may be worn, at school too.":
    "Se pueden llevar gafas de sol y sombrero o gorra, también en la escuela.",
  "Reading glasses may be used if the child has them.": "Se pueden usar gafas de lectura si las tiene.",
  "No drops are needed during school hours: they are given at bedtime by an adult.":
    "No hacen falta gotas en el horario escolar: las pone un adulto al acostarse.",
  "Keeping and carrying the drops": "Cómo guardar y llevar las gotas",
  "Keep the bottle closed, with its label on, and out of the reach of children.":
    "Guarde el frasco cerrado, con su etiqueta y fuera del alcance de los niños.",
  "On a journey the bottle goes in hand luggage, with its label, together with this note.":
    "En un viaje el frasco va en el equipaje de mano, con su etiqueta y con esta nota.",
  "An eye with a contact lens turns red or hurts: the lens comes out, the parents are called, and the eye is seen by a doctor the same day.":
    "Si un ojo con lente de contacto se pone rojo o duele: se retira la lente, se llama a los padres y un médico ve el ojo el mismo día.",
  "Flashes, floating spots, a curtain, pain in the eye or sudden loss of sight: call the parents; the eye must be seen by a doctor the same day.":
    "Destellos, manchas flotantes, una cortina, dolor en el ojo o pérdida súbita de la vista: llame a los padres; un médico debe ver el ojo el mismo día.",
  "Flashes, floating spots, a curtain, pain in the eye or sudden loss of sight: call the parents; the eye must be seen by a doctor the same day. Urgent contact: {urgent}.":
    "Destellos, manchas flotantes, una cortina, dolor en el ojo o pérdida súbita de la vista: llame a los padres; un médico debe ver el ojo el mismo día. Contacto urgente: {urgent}.",
  "The drops are poisonous when swallowed. If any was swallowed, call the poison centre of the country you are in at once. A child who is confused, hot and flushed or has a fit needs an ambulance.":
    "Las gotas son venenosas si se tragan. Si alguien las ha tragado, llame de inmediato al centro de toxicología del país donde se encuentre. Un niño confuso, caliente y enrojecido o con una convulsión necesita una ambulancia.",
  "The drops are poisonous when swallowed. If any was swallowed, call the poison centre at once: {centre}; abroad, that of the country you are in. A child who is confused, hot and flushed or has a fit needs an ambulance.":
    "Las gotas son venenosas si se tragan. Si alguien las ha tragado, llame de inmediato al centro de toxicología: {centre}; en el extranjero, al del país donde se encuentre. Un niño confuso, caliente y enrojecido o con una convulsión necesita una ambulancia.",
  "Questions to": "Consultas a",
  "For the practice|signature": "Por la consulta",
  "What to do, and how to keep and carry the drops, is common practice without a published source.":
    "Qué hacer, y cómo guardar y llevar las gotas, es práctica habitual sin fuente publicada.",
  "What may be noticed: reported of drops of this strength by {sources}.":
    "Lo que se puede notar: descrito con gotas de esta concentración por {sources}.",
  "Glasses ({name}): worn all day, in class and outdoors.":
    "Gafas ({name}): se llevan todo el día, en clase y al aire libre.",
  "Soft contact lenses ({name}), {eye, select, right {in the right eye} left {in the left eye} other {in both eyes}}: put in after getting up, taken out before sleep.":
    "Lentes de contacto blandas ({name}), {eye, select, right {en el ojo derecho} left {en el ojo izquierdo} other {en los dos ojos}}: se ponen al levantarse y se quitan antes de dormir.",
  "Hard contact lenses ({name}), {eye, select, right {in the right eye} left {in the left eye} other {in both eyes}}: worn during sleep, taken out after getting up.":
    "Lentes de contacto rígidas ({name}), {eye, select, right {en el ojo derecho} left {en el ojo izquierdo} other {en los dos ojos}}: se llevan durante el sueño y se quitan al levantarse.",
  "Atropine eye drops (the strength is on the label of the bottle): one drop at bedtime {eye, select, right {in the right eye} left {in the left eye} other {in each eye}}, {nights, plural, =7 {every night} one {# night a week} other {# nights a week}}.":
    "Colirio de atropina (la concentración figura en la etiqueta del frasco): una gota al acostarse {eye, select, right {en el ojo derecho} left {en el ojo izquierdo} other {en cada ojo}}, {nights, plural, =7 {todas las noches} one {# noche por semana} other {# noches por semana}}.",
  "Atropine eye drops {percent} %: one drop at bedtime {eye, select, right {in the right eye} left {in the left eye} other {in each eye}}, {nights, plural, =7 {every night} one {# night a week} other {# nights a week}}.":
    "Colirio de atropina al {percent} %: una gota al acostarse {eye, select, right {en el ojo derecho} left {en el ojo izquierdo} other {en cada ojo}}, {nights, plural, =7 {todas las noches} one {# noche por semana} other {# noches por semana}}.",
  "The pupils may look wider than usual.": "Las pupilas pueden verse más grandes que de costumbre.",
  "Reading and writing close up may be harder or blurred.":
    "Leer y escribir de cerca puede costar más o verse borroso.",
  "Bright light may bother the child.": "La luz intensa puede molestarle.",
  "Sight may be blurred at times.": "La vista puede ser borrosa a veces.",
  "The child may have a headache.": "Puede tener dolor de cabeza.",
  "The eyes or lids may be red, itchy or sore.": "Los ojos o los párpados pueden estar rojos, picar o doler.",
}
