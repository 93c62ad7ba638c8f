import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const order: Catalogue = {
  // How long a bottle serves
  "{low} to {high}": "{low} a {high}",
  "The drops of one bottle last {low} to {high} nights (drop sizes that were measured, nothing spilled); after opening it is used for {days, plural, one {# day} other {# days}} at most: the days of use after opening end it before its drops do.":
    "Las gotas de un frasco duran de {low} a {high} noches (tamaños de gota que se midieron, sin derramar nada); una vez abierto se usa {days, plural, one {# día} other {# días}} como máximo: los días de uso tras abrirlo se acaban antes que sus gotas.",
  "The drops of one bottle last {low} to {high} nights (drop sizes that were measured, nothing spilled); after opening it is used for {days, plural, one {# day} other {# days}} at most: its drops end before the days of use after opening do.":
    "Las gotas de un frasco duran de {low} a {high} noches (tamaños de gota que se midieron, sin derramar nada); una vez abierto se usa {days, plural, one {# día} other {# días}} como máximo: sus gotas se acaban antes que los días de uso tras abrirlo.",
  "The drops of one bottle last {low} to {high} nights (drop sizes that were measured, nothing spilled); after opening it is used for {days, plural, one {# day} other {# days}} at most: large drops end it early, small ones last to the end of its days of use.":
    "Las gotas de un frasco duran de {low} a {high} noches (tamaños de gota que se midieron, sin derramar nada); una vez abierto se usa {days, plural, one {# día} other {# días}} como máximo: con gotas grandes se acaba antes; con gotas pequeñas dura hasta el final de sus días de uso.",
  "{most, plural, one {# bottle of {volume} mL covers} other {{range} bottles of {volume} mL cover}} {nights, plural, one {# night} other {# nights}} with drops in {eyes, plural, =1 {one eye} other {both eyes}}.":
    "{most, plural, one {# frasco de {volume} mL cubre} other {{range} frascos de {volume} mL cubren}} {nights, plural, one {# noche} other {# noches}} con gotas en {eyes, plural, =1 {un ojo} other {ambos ojos}}.",

  // What may stand in a figure of an order
  "{path} must be {allowed}; it is {value}": "{path} debe ser {allowed}; es {value}",
  "a whole number of at least 1": "un número entero de al menos 1",
  "a number above 0 (mL)": "un número mayor que 0 (mL)",
  "1 or 2": "1 o 2",
  "a whole number from 1 to 7": "un número entero del 1 al 7",
  "enough for at least one night of the largest drops that were measured":
    "suficiente para al menos una noche con las gotas más grandes que se midieron",
  "volumeMl must be enough for at least one night of drops in {eyes, plural, =1 {one eye} other {both eyes}}; it is {volume}":
    "volumeMl debe ser suficiente para al menos una noche de gotas en {eyes, plural, =1 {un ojo} other {ambos ojos}}; es {volume}",
  "a number above 0 and at most 100 (% w/v)": "un número mayor que 0 y de 100 como máximo (% p/v)",
  "at most the stock's {percent} %": "como máximo la de la solución madre, {percent} %",
  "a share from 0 to below 1": "una proporción desde 0 hasta menos de 1",
  "at least its smallest volume, {volume} mL": "al menos su volumen mínimo, {volume} mL",
  "such that every volume of {total} mL in all is measured by one of them":
    "tal que uno de ellos mida cada volumen de los {total} mL en total",
  "no device measures a volume that {total} mL in all need; the largest measures {largest} mL":
    "ningún instrumento mide un volumen que hace falta para {total} mL en total; el mayor mide {largest} mL",
  "so much that every measured volume is at least {smallest} mL":
    "lo bastante grande para que cada volumen medido sea de al menos {smallest} mL",
  "{total} mL in all at this strength cannot be made without measuring less than {smallest} mL; order more at once or measure smaller volumes":
    "{total} mL en total con esta concentración no se pueden preparar sin medir menos de {smallest} mL; pida más de una vez o mida volúmenes más pequeños",

  // The order itself
  "An order for a pharmacist, who decides on formula, sterility and beyond-use date; not to be made at home or in the practice.":
    "Pedido para un farmacéutico, que decide la fórmula, la esterilidad y la fecha límite de uso; no debe prepararse en casa ni en la consulta.",
  "The interval holds the error of measuring only; the stock's own strength may differ from its label as well.":
    "El intervalo contiene solo el error de las mediciones; la concentración de la propia solución madre también puede diferir de su etiqueta.",
  "One bottle holds {milligrams} mg of atropine: from {severe} mg severe poisoning of a child who swallows it is possible.":
    "Un frasco contiene {milligrams} mg de atropina: a partir de {severe} mg, un niño que la ingiera puede sufrir una intoxicación grave.",
  "Order: atropine sulfate eye drops {percent} % for this child":
    "Pedido: colirio de sulfato de atropina al {percent} % para este paciente",
  "Order: atropine sulfate eye drops {percent} % for {child}":
    "Pedido: colirio de sulfato de atropina al {percent} % para {child}",
  "What is ordered": "Qué se pide",
  Dilution: "Dilución",
  "Content and caution": "Contenido y precaución",
  "Preservative, storage, stability": "Conservante, conservación, estabilidad",
  "On each label": "En cada etiqueta",
  "Two people check": "Comprobación por dos personas",
  Prescribed: "Prescrito por",
  "Made and measured": "Elaborado y medido por",
  "Checked by a second person": "Comprobado por una segunda persona",
  "For|whom": "Para",
  "{name}, born {born}, number {number}": "{name}, fecha de nacimiento {born}, número {number}",
  "{name}, born {born}": "{name}, fecha de nacimiento {born}",
  Bottles: "Frascos",
  "{bottles, plural, one {# bottle} other {# bottles}} of {volume} mL, atropine sulfate {percent} % w/v ({milligrams} mg in 1 mL)":
    "{bottles, plural, one {# frasco} other {# frascos}} de {volume} mL, sulfato de atropina al {percent} % p/v ({milligrams} mg en 1 mL)",
  "Use|of drops": "Uso",
  "one drop in {eye, select, right {the right eye} left {the left eye} other {each eye}} at bedtime":
    "una gota en {eye, select, right {el ojo derecho} left {el ojo izquierdo} other {cada ojo}} al acostarse",
  "one drop in {eye, select, right {the right eye} left {the left eye} other {each eye}} at bedtime, {nights, plural, one {# night} other {# nights}} a week":
    "una gota en {eye, select, right {el ojo derecho} left {el ojo izquierdo} other {cada ojo}} al acostarse, {nights, plural, one {# noche} other {# noches}} por semana",
  "Ordered by": "Pedido por",
  Pharmacy: "Farmacia",
  "Expected by": "Se espera para",
  "{days, plural, one {# day} other {# days}} after it is ordered":
    "{days, plural, one {# día} other {# días}} después del pedido",
  Consent: "Consentimiento",
  "not ordered yet": "aún sin pedir",
  "{practice}, on {date}": "{practice}, el {date}",
  "{prescriber}, {practice}, on {date}": "{prescriber}, {practice}, el {date}",
  "{most, plural, one {# night.} other {{range} nights.}}":
    "{most, plural, one {# noche.} other {{range} noches.}}",
  Lasting: "Duración",
  "The practice has not set this pharmacy: its stock, what it measures with, its days to deliver and its days of use after opening are taken as usual (common practice, no source).":
    "La consulta no ha configurado esta farmacia: su solución madre, con qué mide, sus días de entrega y sus días de uso tras abrir el frasco se toman como es habitual (práctica común, sin fuente).",
  "stock {percent} %": "solución madre al {percent} %",
  "step {step}, {percent} %": "paso {step}, al {percent} %",
  "This order was called off on {date}.": "Este pedido se anuló el {date}.",

  // Label
  "Atropine sulfate eye drops {percent} % w/v ({milligrams} mg in 1 mL), {volume} mL":
    "Colirio de sulfato de atropina al {percent} % p/v ({milligrams} mg en 1 mL), {volume} mL",
  "For {name}, born {born}": "Para {name}, fecha de nacimiento {born}",
  "Contains a preservative": "Contiene conservante",
  "Without preservative": "Sin conservante",
  "Lot {blank}  Beyond use {blank}": "Lote {blank}  Fecha límite de uso {blank}",
  "Opened on {blank}  Throw away {days, plural, one {# day} other {# days}} after opening":
    "Abierto el {blank}  Desechar {days, plural, one {# día} other {# días}} después de abrirlo",
  "Made by {pharmacy}": "Elaborado por {pharmacy}",
  "One drop in {eye, select, right {the right eye} left {the left eye} other {each eye}} at bedtime. For the eyes only.":
    "Una gota en {eye, select, right {el ojo derecho} left {el ojo izquierdo} other {cada ojo}} al acostarse. Solo para los ojos.",
  "One drop in {eye, select, right {the right eye} left {the left eye} other {each eye}} at bedtime, {nights, plural, one {# night} other {# nights}} a week. For the eyes only.":
    "Una gota en {eye, select, right {el ojo derecho} left {el ojo izquierdo} other {cada ojo}} al acostarse, {nights, plural, one {# noche} other {# noches}} por semana. Solo para los ojos.",
  "Poisonous when swallowed. Keep out of sight and reach of children. Poison centre: {number}":
    "Tóxico si se ingiere. Mantener fuera de la vista y del alcance de los niños. Centro de toxicología: {number}",
  "Poisonous when swallowed. Keep out of sight and reach of children.":
    "Tóxico si se ingiere. Mantener fuera de la vista y del alcance de los niños.",

  // Consent and remarks
  "given on {date}, in force": "otorgado el {date}, vigente",
  "none in force: {why}": "ninguno vigente: {why}",
  "none in force; ordered all the same: {reason}": "ninguno vigente; se pide de todos modos: {reason}",
  "No drops are running or decided on for this child.": "Este paciente no tiene gotas en curso ni decididas.",
  "{treatment} from {date}": "{treatment} desde el {date}",
  "The order is for {percent} %; the treatment in use is {inUse}.":
    "El pedido es al {percent} %; el tratamiento en curso es {inUse}.",
  "The order is for {percent} %; decided on is {coming}.":
    "El pedido es al {percent} %; lo decidido es {coming}.",
  "The order is for {percent} %; the treatment in use is {inUse}; decided on is {coming}.":
    "El pedido es al {percent} %; el tratamiento en curso es {inUse}; lo decidido es {coming}.",
  "{bottles, plural, one {# bottle of {percent} % ordered on {date} has} other {# bottles of {percent} % ordered on {date} have}} not come yet.":
    "{bottles, plural, one {# frasco al {percent} % pedido el {date} no ha} other {# frascos al {percent} % pedidos el {date} no han}} llegado todavía.",

  // Content, preservative, storage
  "Each bottle holds {milligrams} mg of atropine sulfate; strengths are % w/v of the sulfate.":
    "Cada frasco contiene {milligrams} mg de sulfato de atropina; las concentraciones son % p/v del sulfato.",
  "All {bottles, plural, one {# bottle} other {# bottles}}: {milligrams} mg.":
    "{bottles, plural, one {El frasco} other {Los # frascos}} en total: {milligrams} mg.",
  "Poison centre: {number}.": "Centro de toxicología: {number}.",
  "The practice has not set the number of its poison centre.":
    "La consulta no ha indicado el número de su centro de toxicología.",
  "Storage and beyond-use date as the pharmacist states them on the label.":
    "Conservación y fecha límite de uso según las indique el farmacéutico en la etiqueta.",
  "Thrown away {days, plural, one {# day} other {# days}} after opening.":
    "Se desecha {days, plural, one {# día} other {# días}} después de abrirlo.",
  "Opened bottles were followed for {days, plural, one {# day} other {# days}} in the studies read.":
    "En los estudios leídos, los frascos abiertos se siguieron durante {days, plural, one {# día} other {# días}}.",
  "With a preservative.": "Con conservante.",
  "Without preservative.": "Sin conservante.",
  "Without preservative. From a 1 % stock preserved with 0.01 % benzalkonium chloride {percent} % would be carried over, which counts as unpreserved.":
    "Sin conservante. De una solución madre al 1 % conservada con cloruro de benzalconio al 0,01 % se arrastraría un {percent} %, que cuenta como sin conservante.",
  "Without preservative. From a 1 % stock preserved with 0.01 % benzalkonium chloride {percent} % would be carried over.":
    "Sin conservante. De una solución madre al 1 % conservada con cloruro de benzalconio al 0,01 % se arrastraría un {percent} %.",

  // Dilution
  "USP monograph of the solution": "monografía USP de la solución",
  Step: "Paso",
  Take: "Tomar",
  "From|stock": "De",
  "Add diluent": "Añadir diluyente",
  Gives: "Resulta",
  "Final strength {final} %, 95 % between {low} and {high} %, within the limits {lowest} to {highest} % ({lowOfLabel} to {highOfLabel} % of the label, {source}). Worked back from the milligrams of each step: {check} %.":
    "Concentración final {final} %, 95 % entre {low} y {high} %, dentro de los límites de {lowest} a {highest} % (de {lowOfLabel} a {highOfLabel} % de lo declarado en la etiqueta, {source}). Recalculada con los miligramos de cada paso: {check} %.",
  "Final strength {final} %, 95 % between {low} and {high} %. Worked back from the milligrams of each step: {check} %.":
    "Concentración final {final} %, 95 % entre {low} y {high} %. Recalculada con los miligramos de cada paso: {check} %.",
  "The interval leaves the limits {lowest} to {highest} % ({lowOfLabel} to {highOfLabel} % of the label, {source}).":
    "El intervalo se sale de los límites de {lowest} a {highest} % (de {lowOfLabel} a {highOfLabel} % de lo declarado en la etiqueta, {source}).",
  "It would lie inside: {words}.": "Quedaría dentro así: {words}.",
  "No larger batch, other stock or closer measuring that was tried brings it inside.":
    "Ningún lote mayor, otra solución madre ni medición más exacta de las que se probaron lo lleva dentro.",
  "{volume} mL": "{volume} mL",
  "none|diluent": "nada",
  "{volume} mL ({low} to {high})": "{volume} mL ({low} a {high})",
  "{volume} mL ({low} to {high}), {device}": "{volume} mL ({low} a {high}), {device}",
  "{percent} %; discard the {volume} mL left over": "{percent} %; desechar los {volume} mL sobrantes",
  "make {volume} mL in one batch ({count, plural, one {# bottle} other {# bottles}}), or discard what is left of it":
    "preparar {volume} mL en un solo lote ({count, plural, one {# frasco} other {# frascos}}), o desechar lo que sobre",
  "start from a stock of {percent} %": "partir de una solución madre al {percent} %",
  "measure every volume within {closer} % instead of {now} %":
    "medir cada volumen con un error de {closer} % como máximo en lugar de {now} %",
  "use a stock whose strength was measured, and reckon with that strength":
    "usar una solución madre cuya concentración se haya medido, y calcular con ella",
  "use a stock known to within {closer} % of its label instead of {now} %":
    "usar una solución madre que difiera de su etiqueta {closer} % como máximo en lugar de {now} %",

  // Studies of stability
  "0.9% sodium chloride, filtered, isolator, 5 mL polyethylene bottles":
    "cloruro de sodio al 0,9 %, filtrado, aislador, frascos de polietileno de 5 mL",
  "two formulas, with and without preservative, LDPE multidose droppers":
    "dos fórmulas, con y sin conservante, goteros multidosis de LDPE",
  "artificial tears; balanced salt solution": "lágrimas artificiales; solución salina balanceada",
  "injection diluted in saline or lubricant": "inyectable diluido en solución salina o lubricante ocular",
  "5 and 25 C": "5 y 25 °C",
  "within 5% of target, pH 5.88, 285 mOsm/kg, sterile":
    "a menos del 5 % del valor previsto, pH 5,88, 285 mOsm/kg, estéril",
  ">=94.7% of start; tropic acid rose slowly; stable in use":
    "al menos 94,7 % del valor inicial; el ácido trópico aumentó despacio; estable en uso",
  "2-8 C: 90-110% for 6 mo; 25 C: below 90% at 4 mo; opened: 90-110% for 30 d at both":
    "2-8 °C: 90-110 % durante 6 meses; 25 °C: menos del 90 % a los 4 meses; abierto: 90-110 % durante 30 días a ambas temperaturas",
  "like fresh at week 12, no growth": "como recién preparado en la semana 12, sin crecimiento microbiano",
  abstract: "resumen",
  "{months, plural, one {# month} other {# months}}": "{months, plural, one {# mes} other {# meses}}",
  "{where}: {result} ({study}, {how}).": "{where}: {result} ({study}, {how}).",
  "{where}: {result} ({strengths} %; {study}, {how}).": "{where}: {result} ({strengths} %; {study}, {how}).",
  "None of the studies read is of {percent} %.": "Ninguno de los estudios leídos es del {percent} %.",
  "Compounding pharmacy": "Farmacia de formulación magistral",

  // The document
  "An order for a pharmacist to check; the prescriber answers for it. Local law, product licences and the pharmacist decide. Not a medical device.":
    "Pedido para que lo compruebe un farmacéutico; quien prescribe responde de él. Deciden la ley local, las autorizaciones de los productos y el farmacéutico. No es un producto sanitario.",
  "there is no order {number}; {count, plural, =0 {none is} one {# is} other {# are}} recorded":
    "no existe el pedido {number}; {count, plural, =0 {no hay ninguno registrado} one {hay # registrado} other {hay # registrados}}",
  "nothing is on order, and no drops are in use or decided on for this child":
    "no hay nada pedido, y este paciente no tiene gotas en curso ni decididas",
  "nothing is on order, and the strength of the drops in use is not recorded":
    "no hay nada pedido, y la concentración de las gotas en curso no está registrada",
  "the order cannot be worked out with what its pharmacy states it has: {why}":
    "el pedido no se puede calcular con lo que su farmacia indica que tiene: {why}",
  "Not yet ordered: worked out for the treatment in use, {treatment}.":
    "Aún sin pedir: calculado para el tratamiento en curso, {treatment}.",
  "Not yet ordered: worked out for {treatment}, which begins on {date}.":
    "Aún sin pedir: calculado para {treatment}, que empieza el {date}.",
  "It is not to go out before a consent is in force: {why}.":
    "No debe enviarse antes de que haya un consentimiento vigente: {why}.",
  "{treatment} is given or decided on as well: it needs a sheet of its own.":
    "También se usa o está decidido {treatment}: necesita una hoja propia.",
  "The bottles are counted from {from} to the next review after delivery, on {date}: {nights, plural, one {# night} other {# nights}}. Bottles in hand are not taken off.":
    "Los frascos se cuentan desde el {from} hasta la próxima revisión tras la entrega, el {date}: {nights, plural, one {# noche} other {# noches}}. No se descuentan los frascos disponibles.",
  "The bottles are counted from {from} to the end of the treatment on {date}: {nights, plural, one {# night} other {# nights}}. Bottles in hand are not taken off.":
    "Los frascos se cuentan desde el {from} hasta el final del tratamiento, el {date}: {nights, plural, one {# noche} other {# noches}}. No se descuentan los frascos disponibles.",
  "No review is planned: the bottles are counted for {nights, plural, one {# night} other {# nights}} from {from}. Bottles in hand are not taken off.":
    "No hay ninguna revisión prevista: los frascos se cuentan para {nights, plural, one {# noche} other {# noches}} desde el {from}. No se descuentan los frascos disponibles.",
}
