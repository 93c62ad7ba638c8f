import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const imports: Catalogue = {
  "What will be recorded": "Lo que se registrará",
  "{file}: {rows, plural, one {# row} other {# rows}}":
    "{file}: {rows, plural, one {# fila} other {# filas}}",
  "There is nothing to record before you have decided whose the rows are.":
    "No hay nada que registrar hasta que usted decida de quién son las filas.",
  "There is nothing to record in this file.": "En este archivo no hay nada que registrar.",
  "Of the new visits {count, plural, one {# is} other {# are}} of earlier glasses.":
    "De las visitas nuevas, {count, plural, one {# es} other {# son}} de gafas anteriores.",
  "{count, plural, one {# treatment} other {# treatments}}":
    "{count, plural, one {# tratamiento} other {# tratamientos}}",
  "Record what is sound": "Registrar lo que es correcto",
  "Record all of it": "Registrarlo todo",
  "Back to the columns": "Volver a las columnas",
  "What is listed below and what is not decided above is left out.":
    "Lo que figura abajo y lo que arriba queda sin decidir no se registra.",
  "The first rows as they will be recorded": "Las primeras filas tal como se registrarán",
  Line: "Línea",
  "Whose it is": "De quién es",
  "{date}: {figures}": "{date}: {figures}",
  "a child of the practice": "un niño de la consulta",
  "a new child": "un niño nuevo",
  "to be decided": "por decidir",
  "not taken": "no se toma",
  "left out": "omitido",
  "The visit": "La visita",
  "Figures of an eye": "Medidas de un ojo",
  "Earlier glasses": "Gafas anteriores",
  "Left out": "Omitido",
  "What the columns are": "Qué son las columnas",
  "Read as saved: {title}": "Leído como se guardó: {title}",
  "Each row holds": "Cada fila contiene",
  "a visit with both eyes": "una visita con ambos ojos",
  "one eye": "un ojo",
  "Decimal sign": "Signo decimal",
  "point: 24.12": "punto: 24.12",
  "comma: 24,12": "coma: 24,12",
  "Still open": "Queda por responder",
  "First rows of the file": "Primeras filas del archivo",
  "Check the whole file": "Comprobar todo el archivo",
  "Saved for the next file": "Guardado para el próximo archivo",
  "Save for the next file like this": "Guardar para el próximo archivo igual",
  "{day} is": "{day} es",
  "Days are written": "Los días se escriben",
  "year, month, day": "año, mes, día",
  "day, month, year": "día, mes, año",
  "month, day, year": "mes, día, año",
  "M is male": "M es masculino",
  "M is mujer, female": "M es mujer",
  choose: "elegir",
  "chosen by {name}": "elegido por {name}",
  "at least one decision": "al menos una decisión",
  "at most {most} decisions": "como máximo {most} decisiones",
  "nobody decided whose {rows, plural, one {this row is} other {these # rows are}}":
    "nadie decidió de quién {rows, plural, one {es esta fila} other {son estas # filas}}",
  "{rows, plural, one {# row was} other {# rows were}} left out by a person":
    "{rows, plural, one {una persona omitió # fila} other {una persona omitió # filas}}",
  "No column is named yet that holds a figure of an eye, earlier glasses or a treatment.":
    "Todavía no se ha indicado ninguna columna con medidas de un ojo, gafas anteriores o un tratamiento.",
  "{count, plural, one {Left out is # column} other {Left out are # columns}}: {headings}":
    "{count, plural, one {Se omite # columna} other {Se omiten # columnas}}: {headings}",
  "leave out": "omitir",
  "Unit of {heading}": "Unidad de {heading}",
  "{field}, right": "{field}, derecho",
  "{field}, left": "{field}, izquierdo",
  "{field}, the row’s eye": "{field}, el ojo de la fila",
  "Left as they are, because more was recorded of them since: {names}":
    "Se dejan como están, porque desde entonces se registró algo más de ellos: {names}",
  "The import was taken back.": "La importación se deshizo.",
  "Cancelled; what had been recorded was taken back.": "Cancelada; lo que se había registrado se retiró.",
  "It failed.": "Ha fallado.",
  "Everything in this file was recorded already; nothing changed.":
    "Todo lo de este archivo ya estaba registrado; no ha cambiado nada.",
  "Earlier imports": "Importaciones anteriores",
  "Search by file": "Buscar por archivo",
  "Name of the file": "Nombre del archivo",
  "No import matches.": "Ninguna importación coincide.",
  "Nothing was imported yet.": "Todavía no se ha importado nada.",
  File: "Archivo",
  "What it did": "Qué hizo",
  Later: "Posteriores",
  Earlier: "Anteriores",
  "{day}, {name}": "{day}, {name}",
  "Take back|import": "Deshacer",
  "Take it back|import": "Deshacerla",
  "Take back {file}": "Deshacer {file}",
  "what it would do": "lo que haría",
  "{count, plural, one {# child goes} other {# children go}} that this import made":
    "{count, plural, one {Se retira # niño} other {Se retiran # niños}} que creó esta importación",
  "{count, plural, one {# entry is} other {# entries are}} withdrawn":
    "{count, plural, one {Se retira # entrada} other {Se retiran # entradas}}",
  "{count, plural, one {# visit is} other {# visits are}} as before":
    "{count, plural, one {# visita queda} other {# visitas quedan}} como antes",
  "It can be taken back once. The record keeps that it was there.":
    "Se puede deshacer una vez. El registro conserva que estuvo ahí.",
  "Import a table": "Importar una tabla",
  "the imports": "las importaciones",
  "Choose a file": "Elegir un archivo",
  "Lengths, refractions and years of old glasses from another program: CSV, tab-separated text or an Excel workbook, up to 200 MB.":
    "Longitudes, refracciones y años de gafas antiguas de otro programa: CSV, texto separado por tabuladores o un libro de Excel, de hasta 200 MB.",
  "Nothing is recorded before you have seen what will be, and the whole import can be taken back in one step.":
    "No se registra nada antes de que usted haya visto lo que será, y toda la importación puede deshacerse en un solo paso.",
  "Sending the file …": "Enviando el archivo …",
  "or drop it here": "o suéltelo aquí",
  "Leave this file": "Dejar este archivo",
  "{count, plural, one {# new child} other {# new children}}":
    "{count, plural, one {# niño nuevo} other {# niños nuevos}}",
  "{count, plural, one {# child known already} other {# children known already}}":
    "{count, plural, one {# niño ya conocido} other {# niños ya conocidos}}",
  "{count, plural, one {# new visit} other {# new visits}}":
    "{count, plural, one {# visita nueva} other {# visitas nuevas}}",
  "{count, plural, one {# visit filled in} other {# visits filled in}}":
    "{count, plural, one {# visita completada} other {# visitas completadas}}",
  "Under way": "En curso",
  "Cancelled, taken back": "Cancelada y deshecha",
  "Taken back": "Deshecha",
  "Interrupted, taken back": "Interrumpida y deshecha",
  "Whose rows are these?": "¿De quién son estas filas?",
  "{count, plural, one {The rows of # child are} other {The rows of # children are}} nearly, but not surely, those of a child that is known. They are taken once you decide; checking the file again asks anew.":
    "{count, plural, one {Las filas de # niño son} other {Las filas de # niños son}} casi, pero no con seguridad, las de un niño conocido. Se toman cuando usted decida; si comprueba el archivo otra vez, se le pregunta de nuevo.",
  "{details}; line {line}, {rows, plural, one {# row} other {# rows}}":
    "{details}; línea {line}, {rows, plural, one {# fila} other {# filas}}",
  "It is {who}, born {born}: {why}": "Es {who}, con fecha de nacimiento {born}: {why}",
  "All of these {count} are the child that is suggested": "Los {count} son el niño que se sugiere",
  "The {count} with one suggestion are the child that is suggested":
    "Los {count} con una sola sugerencia son el niño que se sugiere",
  "Another child": "Otro niño",
  "Leave these rows out": "Omitir estas filas",
  "Not taken": "No se toma",
  "{count, plural, one {# thing is not taken} other {# things are not taken}}":
    "{count, plural, one {# cosa no se toma} other {# cosas no se toman}}",
  "The first {count} are listed.": "Se muestran las primeras {count}.",
  "Search what is not taken": "Buscar en lo que no se toma",
  "Line, column, value": "Línea, columna, valor",
  "As a table (CSV)": "Como tabla (CSV)",
  "List of what is not taken": "Lista de lo que no se toma",
  "Column or child": "Columna o niño",
  Value: "Valor",
  "Reading {file}": "Leyendo {file}",
  "Recording {file}": "Registrando {file}",
  "Taking {file} back": "Deshaciendo {file}",
  "Cancel and take back what was recorded": "Cancelar y retirar lo registrado",
  "a child of whom nothing else holds": "un niño del que no siga vigente nada más",
  "{count, plural, one {# entry of this child still holds} other {# entries of this child still hold}}":
    "{count, plural, one {# entrada de este niño sigue vigente} other {# entradas de este niño siguen vigentes}}",
  "the name of the file": "el nombre del archivo",
  "a child that was suggested, another child, or left out":
    "un niño de los sugeridos, otro niño, o que se omita",
  "{name} is importing {file}; one import at a time":
    "{name} está importando {file}; una importación a la vez",
  "{name} is about to import {file}; one import at a time":
    "{name} está a punto de importar {file}; una importación a la vez",
  "the import of {file} was taken back": "la importación de {file} se deshizo",
  "it failed on our side; nothing of it was recorded":
    "ha fallado de nuestro lado; no se registró nada de ella",
  "{path} of {date} is recorded as {recorded}; what is recorded stays":
    "{path} del {date} está registrado como {recorded}; se conserva lo registrado",
  "filled in from {file}": "completado con {file}",
  "more than {most} rows are said to be of one child; none of them was taken":
    "más de {most} filas figuran como de un solo niño; no se tomó ninguna",
  "the row does not say whose it is: a number or a name is needed":
    "la fila no dice de quién es: hace falta un número o un nombre",
  "line {line} says {other} of the same child; the row was not taken":
    "la línea {line} dice {other} del mismo niño; la fila no se tomó",
  "a child like this one was recorded meanwhile; import the file once more to decide":
    "entretanto se registró un niño parecido; importe el archivo otra vez para decidir",
  "the import of {file} was interrupted": "la importación de {file} se interrumpió",
  "the import of {file} was cancelled": "la importación de {file} se canceló",
  "no child of the practice is meant, and to record a new one date of birth and sex are missing; {rows, plural, one {# row was} other {# rows were}} not taken":
    "no se trata de ningún niño de la consulta, y para registrar uno nuevo faltan la fecha de nacimiento y el sexo; {rows, plural, one {# fila no se tomó} other {# filas no se tomaron}}",
  "no child of the practice is meant, and to record a new one the date of birth is missing; {rows, plural, one {# row was} other {# rows were}} not taken":
    "no se trata de ningún niño de la consulta, y para registrar uno nuevo falta la fecha de nacimiento; {rows, plural, one {# fila no se tomó} other {# filas no se tomaron}}",
  "no child of the practice is meant, and to record a new one the sex is missing; {rows, plural, one {# row was} other {# rows were}} not taken":
    "no se trata de ningún niño de la consulta, y para registrar uno nuevo falta el sexo; {rows, plural, one {# fila no se tomó} other {# filas no se tomaron}}",
  "this import was taken back already; that can be done once":
    "esta importación ya se deshizo; solo puede hacerse una vez",
  "{file} is being worked on; wait for it or cancel it": "{file} está en proceso; espere o cancélelo",
  "{file} has to be checked first": "{file} debe comprobarse primero",
  "an import of this practice": "una importación de esta consulta",
  "no such import": "no existe esa importación",
  "The file may have at most {most} MB.": "El archivo puede tener como máximo {most} MB.",
}
