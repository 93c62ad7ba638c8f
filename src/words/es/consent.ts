import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const consent: Catalogue = {
  atropine: "atropina",
  "defocus spectacles": "gafas con desenfoque periférico",
  "lenslet spectacles": "gafas con microlentes",
  "dual-focus lenses": "lentes de contacto de doble foco",
  "multifocal lenses": "lentes de contacto multifocales",
  orthokeratology: "ortoqueratología",
  "no treatment": "ningún tratamiento",
  "{name} {percent} %": "{name} al {percent} %",
  "{treatment}, {eye, select, right {right eye} other {left eye}}":
    "{treatment}, {eye, select, right {ojo derecho} other {ojo izquierdo}}",
  "{treatment}, {nights, plural, one {# night} other {# nights}} a week":
    "{treatment}, {nights, plural, one {# noche} other {# noches}} por semana",
  "{treatment}, {eye, select, right {right eye} other {left eye}}, {nights, plural, one {# night} other {# nights}} a week":
    "{treatment}, {eye, select, right {ojo derecho} other {ojo izquierdo}}, {nights, plural, one {# noche} other {# noches}} por semana",
}
