import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const tables: Catalogue = {
  "at most {most} columns": "como máximo {most} columnas",
  "The table has no row with a figure of a day.": "La tabla no tiene ninguna fila con una medida de un día.",
  "Number of the child": "Número del niño",
  "Name, given name first": "Nombre completo, con el nombre de pila delante",
  "Given name": "Nombre de pila",
  "Family name": "Apellidos",
  "Which eye the row is of": "De qué ojo es la fila",
  "Number of readings": "Número de lecturas",
  "Standard deviation of the length": "Desviación estándar de la longitud",
  "Signal to noise": "Relación señal-ruido",
  "Method of the length": "Método de la longitud",
  "Instrument of the length": "Instrumento de la longitud",
  Sphere: "Esfera",
  Cylinder: "Cilindro",
  Axis: "Eje",
  "Sphere, cylinder and axis in one cell": "Esfera, cilindro y eje en una sola celda",
  "Spherical equivalent": "Equivalente esférico",
  Cycloplegic: "Con cicloplejia",
  "Method of the refraction": "Método de la refracción",
  "Flat radius of the cornea": "Radio plano de la córnea",
  "Steep radius of the cornea": "Radio curvo de la córnea",
  "Photopic pupil": "Pupila fotópica",
  "Mesopic pupil": "Pupila mesópica",
  "Amplitude of accommodation": "Amplitud de acomodación",
  "Distance acuity, logMAR": "Agudeza de lejos, logMAR",
  "Distance acuity, decimal": "Agudeza de lejos, decimal",
  "Distance acuity, Snellen fraction": "Agudeza de lejos, fracción de Snellen",
  "Near acuity, logMAR": "Agudeza de cerca, logMAR",
  "Pressure of the eye": "Presión del ojo",
  "Whether the row is of earlier glasses": "Si la fila es de gafas anteriores",
  "Day the earlier glasses were prescribed": "Día en que se prescribieron las gafas anteriores",
  "Sphere of the earlier glasses": "Esfera de las gafas anteriores",
  "Cylinder of the earlier glasses": "Cilindro de las gafas anteriores",
  "Axis of the earlier glasses": "Eje de las gafas anteriores",
  "Earlier glasses in one cell": "Gafas anteriores en una sola celda",
  "Strength of the drops": "Concentración de las gotas",
  "First day of the treatment": "Primer día del tratamiento",
  "First day no longer treated": "Primer día sin tratamiento",
  "Remark, which is left out": "Observación, que no se toma",
  "only one radius of the cornea is given; it was left out": "solo se da un radio de la córnea; no se tomó",
  "the radii were calculated from powers by the index 1.3375 (common practice, no source)":
    "los radios se calcularon a partir de las potencias con el índice 1,3375 (práctica habitual, sin fuente)",
  "the flat radius is the larger one: the two columns were exchanged in this row":
    "el radio plano es el mayor: en esta fila se intercambiaron las dos columnas",
  "a power of a radius from {low} to {high} mm": "una potencia de un radio de {low} a {high} mm",
  "The text is written in none of the ways that are read here; it may be {name}. Please save it as CSV (UTF-8).":
    "El texto no está escrito en ninguna de las codificaciones que se leen aquí; puede ser {name}. Guárdelo como CSV (UTF-8).",
  "The text is written in none of the ways that are read here: UTF-8, UTF-16, windows-1252. Please save it as CSV (UTF-8).":
    "El texto no está escrito en ninguna de las codificaciones que se leen aquí: UTF-8, UTF-16, windows-1252. Guárdelo como CSV (UTF-8).",
  "This is a workbook of the older kind (.xls) or one with a password. Please save it as CSV (UTF-8).":
    "Es un libro de cálculo del tipo antiguo (.xls) o con contraseña. Guárdelo como CSV (UTF-8).",
  "This is a zip file. Please save the table as CSV (UTF-8).":
    "Es un archivo zip. Guarde la tabla como CSV (UTF-8).",
  "This is a PDF. Please save the table as CSV (UTF-8).": "Es un PDF. Guarde la tabla como CSV (UTF-8).",
  "This is a web page and no table of text. Please save it as CSV (UTF-8).":
    "Es una página web y no una tabla de texto. Guárdela como CSV (UTF-8).",
  "This is no table of text. Please save it as CSV (UTF-8).":
    "No es una tabla de texto. Guárdela como CSV (UTF-8).",
  "only the spherical equivalent is given: it was taken as a sphere without a cylinder":
    "solo se da el equivalente esférico: se tomó como una esfera sin cilindro",
  "the table gives a spherical equivalent of {given} D; sphere and cylinder make {own} D and were kept":
    "la tabla da un equivalente esférico de {given} D; la esfera y el cilindro dan {own} D y se conservaron",
  "A figure stands alone in its cell: without a unit and without words.":
    "La cifra va sola en su celda: sin unidad y sin palabras.",
  'It was said that decimals are written with "{sign}".':
    "Se indicó que los decimales se escriben con «{sign}».",
  "Thousands are written without a sign between them.": "Los millares se escriben sin signo de separación.",
  "Its year needs four digits.": "El año necesita cuatro cifras.",
  "It was said that days are written with the year first.":
    "Se indicó que las fechas se escriben con el año delante.",
  "It is the number a spreadsheet keeps for a day: show the column as a date and save it again.":
    "Es el número con que una hoja de cálculo guarda un día: muestre la columna como fecha y guárdela de nuevo.",
  "It was said that the month stands before the day.": "Se indicó que el mes va delante del día.",
  "It was said that the day stands before the month.": "Se indicó que el día va delante del mes.",
  "the child's number or name": "el número o el nombre del niño",
  "what the column {other} holds for the same field":
    "lo que contiene la columna {other} para el mismo campo",
  'Line {line}, column "{heading}"': "Línea {line}, columna «{heading}»",
  "a day of the calendar": "un día del calendario",
  "There are more cells than headings: a cell that holds the delimiter needs quotation marks.":
    "Hay más celdas que encabezados: una celda que contiene el separador necesita comillas.",
  "the last of {most} cells": "la última de {most} celdas",
  "right or left (OD or OS)": "derecho o izquierdo (OD u OI)",
  "the row is of earlier glasses: only the prescription was taken":
    "la fila es de gafas anteriores: solo se tomó la prescripción",
  "A quotation mark in line {line} is never closed.": "Unas comillas de la línea {line} no se cierran.",
  "In line {line} something follows a closing quotation mark inside a cell.":
    "En la línea {line} hay algo detrás de las comillas de cierre dentro de una celda.",
  "A cell of the row in line {line} has more than {most} characters.":
    "Una celda de la fila de la línea {line} tiene más de {most} caracteres.",
  "The row in line {line} has more than {most} characters.":
    "La fila de la línea {line} tiene más de {most} caracteres.",
  "The row in line {line} has more than {most} columns.":
    "La fila de la línea {line} tiene más de {most} columnas.",
  "The text is read as windows-1252.": "El texto se lee como windows-1252.",
  "The file is empty.": "El archivo está vacío.",
  "The table has no headings: its columns are called #1, #2 and so on.":
    "La tabla no tiene encabezados: sus columnas se llaman #1, #2, etc.",
  "Line {line} holds what is no text.": "La línea {line} contiene algo que no es texto.",
  "After line {line} the text is no longer {encoding}.":
    "Después de la línea {line} el texto deja de ser {encoding}.",
  "a treatment, such as atropine": "un tratamiento, como atropina",
  "the strength of the atropine": "la concentración de la atropina",
  "the first day of the treatment": "el primer día del tratamiento",
  "on or after the first day of the treatment": "el primer día del tratamiento o después",
  "an earlier row says {first}, line {line} says {second}; the first was kept":
    "una fila anterior dice {first}, la línea {line} dice {second}; se conservó lo primero",
  "earlier glasses of this day were left out, since the eyes were examined on it":
    "las gafas anteriores de este día no se tomaron, porque ese día se examinaron los ojos",
  "Which column says whose row it is: a number or a name?":
    "¿Qué columna dice de quién es la fila: un número o un nombre?",
  "Which column holds the day of the visit?": "¿Qué columna contiene el día de la visita?",
  "Which eye are these columns of, or which column says so: {headings}?":
    "¿De qué ojo son estas columnas, o qué columna lo dice: {headings}?",
  "The days of {headings} are written in no one order, or each column has its own. Please write them all alike.":
    "Las fechas de {headings} no siguen un mismo orden, o cada columna tiene el suyo. Escríbalas todas igual.",
  "Which stands first in {headings}, the day or the month? No value shows it.":
    "¿Qué va delante en {headings}, el día o el mes? Ningún valor lo muestra.",
  "The days of {headings} cannot be written in the order that was said.":
    "Las fechas de {headings} no pueden estar escritas en el orden indicado.",
  "Are decimals written with a point or with a comma? The values do not show it.":
    "¿Los decimales se escriben con punto o con coma? Los valores no lo muestran.",
  'Decimals are written with "{sign}" in this table, not as was said.':
    "En esta tabla los decimales se escriben con «{sign}», no como se indicó.",
  "What does M mean in {heading}: male, or mujer?":
    "¿Qué significa M en {heading}: masculino (male) o mujer?",
  "Is {heading} in millimetres or in dioptres? Its values are no radii.":
    "¿{heading} está en milímetros o en dioptrías? Sus valores no son radios.",
  "Which column holds the first day of the treatment? Without it {headings} cannot be read.":
    "¿Qué columna contiene el primer día del tratamiento? Sin él no se puede leer {headings}.",
  "The table has more than {most} MB: import it instead.": "La tabla tiene más de {most} MB: impórtela.",
  "line {line}": "línea {line}",
  "Say it with --date-order {choices}.": "Indíquelo con --date-order {choices}.",
  'Say it with --decimal "{choices}".': 'Indíquelo con --decimal "{choices}".',
  "Say it with a mapping, which the page for imports writes.":
    "Indíquelo con una asignación de columnas, que se hace en la página de importación.",
  'The column "{heading}" is left out.': "La columna «{heading}» no se toma.",
  "in another unit than {unit}": "en otra unidad que {unit}",
  "The workbook has more than {most} MB.": "El libro de cálculo tiene más de {most} MB.",
  "{why} Please save the sheet as CSV (UTF-8).": "{why} Guarde la hoja como CSV (UTF-8).",
  "The workbook is damaged or no workbook.": "El libro de cálculo está dañado o no lo es.",
  "The workbook has more than {most} parts.": "El libro de cálculo tiene más de {most} partes.",
  "The workbook is protected by a password.": "El libro de cálculo está protegido con contraseña.",
  "This is a document of another office program (.ods).":
    "Es un documento de otro programa de oficina (.ods).",
  "A part of the workbook has more than {most} MB.": "Una parte del libro de cálculo tiene más de {most} MB.",
  "A cell of the workbook has more than {most} characters.":
    "Una celda del libro de cálculo tiene más de {most} caracteres.",
  "A sheet has at most {most} rows.": "Una hoja tiene como máximo {most} filas.",
  "The workbook has no sheet that can be read.":
    "El libro de cálculo no tiene ninguna hoja que se pueda leer.",
  'The workbook has no sheet called "{named}".':
    "El libro de cálculo no tiene ninguna hoja llamada «{named}».",
  "The workbook holds more text than a table of measurements.":
    "El libro de cálculo contiene más texto que una tabla de medidas.",
}
