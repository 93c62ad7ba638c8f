import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const research: Catalogue = {
  Research: "Investigación",
  "the table": "la tabla",
  "Table without names": "Tabla sin nombres",
  "{rows, plural, one {# row} other {# rows}} of {children, plural, one {# child} other {# children}}: one row for each eye that was examined. Names, numbers, birth dates, free text, pharmacies, lots and the makers of instruments are not in it. All days of a child are moved by the same secret number of days, so intervals and ages are exact and seasons are not.":
    "{rows, plural, one {# fila} other {# filas}} de {children, plural, one {# niño} other {# niños}}: una fila por cada ojo examinado. No contiene nombres, números, fechas de nacimiento, texto libre, farmacias, lotes ni fabricantes de instrumentos. Todos los días de un niño se desplazan el mismo número secreto de días: los intervalos y las edades son exactos, las estaciones no.",
  "Taking out names does not make data anonymous by itself. Local law and the ethics committee decide what may be shared.":
    "Quitar los nombres no basta para que los datos sean anónimos. La ley local y el comité de ética deciden qué se puede compartir.",
  "Download the table": "Descargar la tabla",
  "No group of children is small.": "Ningún grupo de niños es pequeño.",
  "Caution: {few, plural, one {# child is} other {# children are}} in groups of fewer than {smallestCell} and could be recognised by who knows them":
    "Atención: {few, plural, one {# niño está} other {# niños están}} en grupos de menos de {smallestCell} y quien los conozca podría reconocerlos",
  "Age at the first visit (years)": "Edad en la primera visita (años)",
  "What its columns mean": "Qué significan sus columnas",
  "Search the columns": "Buscar en las columnas",
  "Small groups": "Grupos pequeños",
  Columns: "Columnas",
  Column: "Columna",
  Meaning: "Significado",
  Unit: "Unidad",
  "What may stand there": "Qué puede figurar",
  "No column is called that.": "Ninguna columna se llama así.",
}
