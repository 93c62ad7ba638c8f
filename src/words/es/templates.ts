import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const templates: Catalogue = {
  "a picture of at most {megabytes} MB": "una imagen de {megabytes} MB como máximo",
  "a picture of at most {pixels} pixels a side": "una imagen de {pixels} píxeles por lado como máximo",
  "a PNG or JPEG that can be read; its content is damaged":
    "un PNG o JPEG que se pueda leer; su contenido está dañado",
  "there is no document “{document}”; there are {known}":
    "no existe el documento «{document}»; existen {known}",
  "the template has {length} characters; it may have {most}":
    "la plantilla tiene {length} caracteres; puede tener {most}",
  "there is no part [{name}]; the parts are {known}": "no existe la parte [{name}]; las partes son {known}",
  "[{name}] stands in line {first} already": "[{name}] ya está en la línea {first}",
  "a brace stands alone: a name to fill in is written '{name}'":
    "hay una llave suelta: un nombre que se completa se escribe '{name}'",
  "nothing is called {name} here; known are {known}": "aquí nada se llama {name}; se conocen {known}",
  "[{name}] must stand somewhere: it keeps the child safe, or says who answers for this":
    "[{name}] tiene que estar en algún lugar: protege al niño o dice quién responde de esto",
  "a stored PNG or JPEG": "un PNG o JPEG guardado",
  "line {line}: {message}": "línea {line}: {message}",
  "Recorded: the letterhead. It stands on every paper from now on.":
    "Guardado: el membrete. Figura en todos los documentos desde ahora.",
  Letterhead: "Membrete",
  "Stands at the head of every paper, below the practice’s name.":
    "Figura en el encabezado de cada documento, bajo el nombre de la consulta.",
  "Address and telephone": "Dirección y teléfono",
  "A line each; at most 8 lines of 120 characters.":
    "Una línea para cada cosa; hasta 8 líneas de 120 caracteres.",
  Picture: "Imagen",
  "PNG or JPEG, at most 1 MB. It stands at the right, 16 mm high.":
    "PNG o JPEG, 1 MB como máximo. Va a la derecha, con 16 mm de alto.",
  "The picture as it is stored": "La imagen tal como está guardada",
  "Take the picture off": "Quitar la imagen",
  "Record letterhead": "Guardar el membrete",
  "must be a PNG or JPEG; {name} is neither": "debe ser un PNG o JPEG; {name} no es ninguno de los dos",
  "must be a file that is not empty": "debe ser un archivo que no esté vacío",
  "must be at most 1 MB; {name} has {megabytes} MB":
    "debe tener 1 MB como máximo; {name} tiene {megabytes} MB",
  "Recorded: the template. Documents follow it from now on.":
    "Guardada: la plantilla. Los documentos la siguen desde ahora.",
  Template: "Plantilla",
  "Record template": "Guardar la plantilla",
  "Recorded: the order that ships holds again.": "Guardado: vuelve a valer el orden incluido.",
  "Go back to the order that ships": "Volver al orden incluido",
  "What may stand in it": "Qué puede contener",
  "Parts, each on a line of its own": "Partes, cada una en su propia línea",
  "A part with a star must stand somewhere.": "Una parte con asterisco tiene que estar en algún lugar.",
  "Filled into sentences": "Se completa dentro de las frases",
  Lines: "Líneas",
  "# begins a heading, ## a smaller one, - an item of a list, ! a caution, --- a new page.":
    "# empieza un título, ## uno menor, - un punto de una lista, ! una advertencia, --- una página nueva.",
  Preview: "Vista previa",
  "Preview for": "Vista previa para",
  "the parts of the documents": "las partes de los documentos",
  "A template orders the parts of a document and puts the practice’s own sentences between them. Where there is none, the order that ships holds. What keeps a child safe cannot be left out.":
    "Una plantilla ordena las partes de un documento y pone entre ellas las frases propias de la consulta. Donde no la hay, vale el orden incluido. Lo que protege al niño no se puede omitir.",
  Document: "Documento",
  Versions: "Versiones",
  "in force": "en vigor",
  "The order that ships.": "El orden incluido.",
  "not recorded: each fault stands in the preview with its line":
    "no se guardó: cada falta figura en la vista previa con su línea",
  "letterhead changed": "membrete cambiado",
  "template changed": "plantilla cambiada",
}
