import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const supply: Catalogue = {
  "opened on {opened}, past its last day of use on {last}: its nights are not counted":
    "se abrió el {opened}, pasado su último día de uso, el {last}: sus noches no se cuentan",
  "its last day of use was {last}, {days, plural, one {# day} other {# days}} ago, and no other bottle is in date: it must not be used any more":
    "su último día de uso fue el {last}, hace {days, plural, one {# día} other {# días}}, y no hay otro frasco vigente: no debe usarse más",
  "{treatment} was not prescribed while this bottle could be used":
    "{treatment} no estaba prescrita mientras este frasco podía usarse",
  "nobody recorded when it was opened: it counts from {first}, the day it was handed out":
    "nadie registró cuándo se abrió: cuenta desde el {first}, el día en que se entregó",
  "days with an in-date opened bottle of the prescribed strength, divided by the days of prescription; nothing is carried over from one bottle to the next, days with two bottles count once, and a bottle whose opening nobody recorded counts from the day it was handed out":
    "días con un frasco abierto y vigente de la concentración prescrita, divididos por los días de prescripción; nada se traslada de un frasco al siguiente, los días con dos frascos cuentan una vez, y un frasco cuya apertura nadie registró cuenta desde el día en que se entregó",
  "below 80 % counts as poor in one trial's rules":
    "menos del 80 % cuenta como cobertura baja según las reglas de un ensayo",
}
