import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const webSupply: Catalogue = {
  // Bottles
  "in date": "vigente",
  spare: "de reserva",
  "past its date": "caducado",
  "not counted": "no se cuenta",
  "No bottle is recorded.": "No hay ningún frasco registrado.",
  "Bottles handed out": "Frascos entregados",
  "Handed out, latest first": "Entregado, el último primero",
  "Handed out, earliest first": "Entregado, el más antiguo primero",
  "Opened|on": "Abierto",
  "Last day of use": "Último día de uso",
  "Strength|of drops": "Concentración",
  "Now|state": "Ahora",
  "not recorded": "no registrado",
  "Record opening": "Registrar apertura",
  "not stated": "no consta",
  "{date}, taken as a month": "{date}, se toma un mes",
  "Bottle opened": "Frasco abierto",
  "Recorded: bottle opened, {date}.": "Registrado: frasco abierto, {date}.",
  "opened on {date}": "abierto el {date}",
  "{pharmacy} states {days, plural, one {# day} other {# days}} after opening.":
    "{pharmacy} indica {days, plural, one {# día} other {# días}} tras abrirlo.",
  "As on its label.": "Como en su etiqueta.",
  "A bottle": "Un frasco",
  "A bottle of {percent} %": "Un frasco al {percent} %",
  "handed out on {date}": "entregado el {date}",
  "lot {lot}": "lote {lot}",
  "Bottle handed out": "Frasco entregado",
  "the orders": "los pedidos",

  // Nights covered
  "Nights covered": "Noches cubiertas",
  "No drops were prescribed before today.": "No se prescribieron gotas antes de hoy.",
  Gaps: "Interrupciones",
  "{span}: {count, plural, one {# night} other {# nights}}":
    "{span}: {count, plural, one {# noche} other {# noches}}",
  "In a gap there was no drop, or one from a bottle past its date. The growth is judged as untreated there.":
    "En una interrupción no hubo gota, o fue de un frasco caducado. Ahí el crecimiento se juzga como sin tratamiento.",
  "Proportion of days covered: {definition}. Here {rule}. Bottles tell how many nights could have had a drop, not how many had one.":
    "Proporción de días cubiertos: {definition}. Aquí, {rule}. Los frascos dicen cuántas noches pudieron tener una gota, no cuántas la tuvieron.",
  "Not known: no bottle is recorded": "No se sabe: no hay ningún frasco registrado",
  "{share} of nights, poor coverage": "{share} de las noches, cobertura baja",
  "{share} of nights": "{share} de las noches",
  "{nights, plural, one {# night} other {# nights}} of prescription, {span}.":
    "{nights, plural, one {# noche} other {# noches}} de prescripción, {span}.",
  "{covered} of {nights, plural, one {# night} other {# nights}} had a bottle in date, {span}: {share}.":
    "{covered} de {nights, plural, one {# noche} other {# noches}} con un frasco vigente, {span}: {share}.",
  "The family told of {nights, plural, one {# missed night} other {# missed nights}}: {share} with those taken off.":
    "La familia refirió {nights, plural, one {# noche sin gota} other {# noches sin gota}}: {share} al descontarlas.",
  "Nights covered of each prescription": "Noches cubiertas de cada prescripción",
  Prescription: "Prescripción",
  "From|day": "Desde",
  Nights: "Noches",
  "With a bottle in date": "Con un frasco vigente",
  "Share|of nights": "Proporción",
  "no bottle on record": "ningún frasco registrado",
  "not known": "no se sabe",
  "{from} to {to}": "{from} a {to}",

  // A lot
  "Lot {lot}": "Lote {lot}",
  "the children": "los pacientes",
  "No other child had a bottle of this lot.": "Ningún otro paciente tuvo un frasco de este lote.",
  "{children, plural, one {# child} other {# children}} had a bottle of this lot.":
    "{children, plural, one {# paciente tuvo} other {# pacientes tuvieron}} un frasco de este lote.",
  "Bottles of this lot are recorded with {strengths}: one lot is one making, so check the labels.":
    "Los frascos de este lote están registrados con {strengths}: un lote es una sola preparación, así que revise las etiquetas.",
  "Children with a bottle of this lot": "Pacientes con un frasco de este lote",
  Child: "Paciente",
  "Number|of the child": "Número",
  "no strength": "ninguna concentración",
  "handed out {date}": "entregado el {date}",
  "not recorded as opened": "apertura no registrada",
  "opened {date}": "abierto el {date}",

  // Missed nights
  "Recorded: {nights, plural, one {# missed night} other {# missed nights}}, {from} to {to}.":
    "Registrado: {nights, plural, one {# noche sin gota} other {# noches sin gota}}, del {from} al {to}.",
  "Missed nights": "Noches sin gota",
  "Missed nights told of": "Noches sin gota referidas",
  "To, included": "Hasta, incluido",
  "Nights without a drop": "Noches sin gota",
  "They are spread evenly over the nights with a bottle in date and count as untreated. In a pilot of seven children parents told of fewer than an electronic cap counted.":
    "Se reparten por igual entre las noches con un frasco vigente y cuentan como sin tratamiento. En un estudio piloto con siete niños, los padres refirieron menos de las que contó un tapón electrónico.",
  "Record missed nights": "Registrar noches sin gota",

  // The next bottle
  "Next bottle": "Próximo frasco",
  "{treatment} begins on {date}: its bottles have to be there by then":
    "{treatment} empieza el {date}: sus frascos deben estar disponibles para entonces",
  "No bottle is owed: no drops go on past the bottles in hand.":
    "No hace falta ningún frasco: no siguen gotas más allá de los frascos disponibles.",
  "To look at": "Por revisar",
  "Bottle of {date}: {fault}": "Frasco del {date}: {fault}",
  "{days, plural, one {# day} other {# days}} without a bottle, needed by {needed}.":
    "{days, plural, one {# día} other {# días}} sin frasco, hacía falta para el {needed}.",
  "needed by {needed}, was to be asked for by {asked}.":
    "hace falta para el {needed}, había que pedirlo a más tardar el {asked}.",
  "needed by {needed}, to be asked for by {asked}.":
    "hace falta para el {needed}, hay que pedirlo a más tardar el {asked}.",
  "{pharmacy} takes {days, plural, one {# day} other {# days}} from order to family.":
    "{pharmacy} tarda {days, plural, one {# día} other {# días}} desde el pedido hasta la familia.",
  "By the protocol a bottle takes {days, plural, one {# day} other {# days}} from order to family.":
    "Según el protocolo, un frasco tarda {days, plural, one {# día} other {# días}} desde el pedido hasta la familia.",
}
