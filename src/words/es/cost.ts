import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const cost: Catalogue = {
  "{count, plural, =1 {bottle of {drops}} other {# bottles of {drops}}}":
    "{count, plural, =1 {frasco de {drops}} other {# frascos de {drops}}}",
  "{months, plural, one {# month} other {# months}}, from {from} to {to}.":
    "{months, plural, one {# mes} other {# meses}}, del {from} al {to}.",
  'Examinations as the protocol "{title}" plans them, each on its due date; no further visits.':
    "Las exploraciones tal como las prevé el protocolo «{title}», cada una en su fecha; ninguna otra visita.",
  "A measurement without a fee of its own is part of its examination.":
    "Una medición sin tarifa propia forma parte de su exploración.",
  "The {visit} has begun: only what is still to be measured is counted.":
    "«{visit}» ya comenzó: solo se cuenta lo que falta por medir.",
  "No treatment is begun.": "No se inicia ningún tratamiento.",
  "Spectacles and lenses are replaced when their months are over; loss and breakage are not counted.":
    "Las gafas y las lentes de contacto se reponen al cumplirse sus meses; no se cuentan las pérdidas ni las roturas.",
  "Whether something uncertain is paid for is decided by the insurer.":
    "Si algo de cobertura incierta se paga o no lo decide la aseguradora.",
  'from {day} by "{title}"': "desde el {day} según «{title}»",
  'Fees by "{title}", in force from {day}; later changes of fees are not known yet.':
    "Tarifas según «{title}», vigentes desde el {day}; los cambios de tarifas posteriores aún no se conocen.",
  "{before}; {next}": "{before}; {next}",
  'Fees by "{title}", in force from {day}; {changes}.':
    "Tarifas según «{title}», vigentes desde el {day}; {changes}.",
  "Treatment goes on through all of these months, without a change of strength.":
    "El tratamiento continúa durante todos estos meses, sin cambio de concentración.",
  "Treatment ends on {day}, as planned, without a change of strength; if growth returns and treatment is taken up again, that is not counted.":
    "El tratamiento termina el {day}, como está previsto, sin cambio de concentración; si el crecimiento vuelve y se retoma el tratamiento, eso no se cuenta.",
  'One bottle of {drops} serves {eye, select, right {the right eye} left {the left eye} other {both eyes}} for {days, plural, one {# day} other {# days}} after opening, as stated by the protocol "{title}".':
    "Un frasco de {drops} alcanza {eye, select, right {para el ojo derecho} left {para el ojo izquierdo} other {para los dos ojos}} durante {days, plural, one {# día} other {# días}} después de abrirlo, según el protocolo «{title}».",
  "One bottle of {drops} serves {eye, select, right {the right eye} left {the left eye} other {both eyes}} for {days, plural, one {# day} other {# days}} after opening, as stated by the pharmacy {name}.":
    "Un frasco de {drops} alcanza {eye, select, right {para el ojo derecho} left {para el ojo izquierdo} other {para los dos ojos}} durante {days, plural, one {# día} other {# días}} después de abrirlo, según indica la farmacia {name}.",
  "One bottle of {drops} serves {eye, select, right {the right eye} left {the left eye} other {both eyes}} for {days, plural, one {# day} other {# days}} until {ml} mL of large drops are used up.":
    "Un frasco de {drops} alcanza {eye, select, right {para el ojo derecho} left {para el ojo izquierdo} other {para los dos ojos}} durante {days, plural, one {# día} other {# días}} hasta que se agotan {ml} mL en gotas grandes.",
  "no growth is expected to be withheld, so there is no cost per {tenth} mm.":
    "no se espera frenar ningún crecimiento, así que no hay coste por cada {tenth} mm.",
  "what is withheld may be nothing ({mm} mm, 95 % between {low} and {high}), so a cost per {tenth} mm would say more than is known.":
    "puede que no se frene nada ({mm} mm, 95 % entre {low} y {high}), así que un coste por cada {tenth} mm diría más de lo que se sabe.",
  "the plan is not complete: there is no fee for {what}.":
    "el plan no está completo: no hay tarifa para {what}.",
  "No fee schedule is in force.": "No hay ninguna lista de tarifas vigente.",
  "observation without treatment": "observación sin tratamiento",
  "{what} ({count, plural, one {# time} other {# times}})":
    "{what} ({count, plural, one {# vez} other {# veces}})",
  "covered|by an insurer": "cubierto",
  "uncertain whether covered": "cobertura incierta",
  "not covered": "no cubierto",
  'a day on which no other schedule begins ("{title}" begins then)':
    "un día en que no comience ninguna otra lista («{title}» comienza entonces)",
  "the ISO 4217 code of a currency in use, such as EUR": "el código ISO 4217 de una moneda en uso, como EUR",
  "{currency}, the currency of the schedule from {day}":
    "{currency}, la moneda de la lista vigente desde el {day}",
  "{currency}, the currency in which payments are recorded": "{currency}, la moneda en que constan los pagos",
  "unlike every other id ({place} has it)": "distinto de todos los demás identificadores (lo tiene {place})",
  'an occasion that no other fee is for ("{title}" is charged for it already)':
    "un motivo para el que no haya otra tarifa (ya se cobra «{title}»)",
  "a treatment with spectacles or lenses; {name} has no device":
    "un tratamiento con gafas o lentes de contacto; {name} no usa ninguno",
  "{path} must be {allowed}": "{path} debe ser {allowed}",
  "Standard protocol": "Protocolo estándar",
  "Optical treatments": "Tratamientos ópticos",
  "Step down before the stop": "Reducción gradual antes de interrumpir",
  "Watchful waiting before myopia": "Observación atenta antes de la miopía",
  baseline: "exploración inicial",
  "check after the first night": "control después de la primera noche",
  "1-week check": "control de la primera semana",
  "1-month check": "control del primer mes",
  "check 6 months after the stop": "control 6 meses después de interrumpir",
  "review while treatment goes on": "revisión mientras continúa el tratamiento",
  observation: "observación",
  "Fees of the demo practice (invented)": "Tarifas de la consulta de demostración (inventadas)",
  "Length measurement": "Medición de la longitud axial",
  "Refraction|fee": "Refracción",
  "Defocus spectacles": "Gafas con desenfoque periférico",
  "Pair of night lenses": "Par de lentes de uso nocturno",
  "{months}-month review": "revisión de los {months} meses",
  "{visit} after the {what, select, strength {change of strength} other {change of treatment}}":
    "{visit} tras el {what, select, strength {cambio de concentración} other {cambio de tratamiento}}",
  "{visit} after the {what, select, strength {change of strength} other {change of treatment}} ({eye, select, right {right eye} other {left eye}})":
    "{visit} tras el {what, select, strength {cambio de concentración} other {cambio de tratamiento}} ({eye, select, right {ojo derecho} other {ojo izquierdo}})",
  "an amount such as {example}": "un importe como {example}",
  "an amount without decimals, such as {example}": "un importe sin decimales, como {example}",
  "an amount with at most {decimals} decimals, such as {example}":
    "un importe con {decimals} decimales como máximo, como {example}",
  "at most {most}": "como máximo {most}",
  "{currency}, the currency of the fee schedule": "{currency}, la moneda de la lista de tarifas",
  "{path} must be {currency}, the currency of the fee schedule; the payment of {day} is in {other}":
    "{path} debe ser {currency}, la moneda de la lista de tarifas; el pago del {day} está en {other}",
  "No fee schedule has been entered.": "No se ha introducido ninguna lista de tarifas.",
  "No fee schedule is in force on {day}; the first one begins on {next}.":
    "No hay ninguna lista de tarifas vigente el {day}; la primera comienza el {next}.",
  "Two fee schedules begin on {day}; which of them is in force cannot be told.":
    "Dos listas de tarifas comienzan el {day}; no se puede saber cuál está vigente.",
  'The fee schedule "{title}" is in {currency}, a currency not known here.':
    "La lista de tarifas «{title}» está en {currency}, una moneda que aquí no se conoce.",
  "The fee schedule from {first} is in {currency}, the one from {other} in {otherCurrency}; amounts in two currencies are not added up.":
    "La lista de tarifas del {first} está en {currency}, la del {other} en {otherCurrency}; no se suman importes en dos monedas.",
  "uncertain|whether covered": "incierto",
}
