import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const dicom: Catalogue = {
  "The file does not say whether the acuity is for distance or near, or gives another distance.":
    "El archivo no dice si la agudeza es de lejos o de cerca, o indica otra distancia.",
  "The acuity is of a kind that is not taken: {kind}.":
    "La agudeza es de un tipo que no se incorpora: {kind}.",
  "The file does not say whether the acuity is with or without glasses.":
    "El archivo no dice si la agudeza es con gafas o sin ellas.",
  "Near acuity without glasses is not taken: the course file keeps it with the distance correction.":
    "La agudeza de cerca sin gafas no se incorpora: el archivo de curso la guarda con la corrección de lejos.",
  "taken with the glasses worn, which may not be the distance correction":
    "medida con las gafas que lleva, que pueden no ser la corrección de lejos",
  "{eye}: there is no decimal acuity.": "{eye}: no hay agudeza decimal.",
  "acuity in logMAR, from decimal {decimal},": "la agudeza en logMAR, a partir de la decimal {decimal},",
  "the file adds letters to the line ({first} and {second}); they were not counted in":
    "el archivo añade letras a la línea ({first} y {second}); no se han contado",
  "a decimal acuity of {value} with both eyes open was left out: the course file keeps each eye's":
    "se dejó fuera una agudeza decimal de {value} con ambos ojos abiertos: el archivo de curso guarda la de cada ojo",
  "{count, plural, one {# reading is} other {# readings are}} of parts of the eye or a sum of them and {count, plural, one {was} other {were}} left out":
    "{count, plural, one {se dejó fuera # lectura que es} other {se dejaron fuera # lecturas que son}} de partes del ojo o de su suma",
  "the file gives {count} readings; the first {most} were kept":
    "el archivo trae {count} lecturas; se conservaron las primeras {most}",
  "a reading of the axial length": "una lectura de la longitud axial",
  "{count, plural, one {# reading was} other {# readings were}} not made by this instrument: {source}":
    "{count, plural, one {# lectura no fue hecha} other {# lecturas no fueron hechas}} por este instrumento: {source}",
  "{eye}: the file does not say whether it was measured by light or by ultrasound.":
    "{eye}: el archivo no dice si se midió con luz o con ultrasonido.",
  "{eye}: the file holds no total length of the eye.":
    "{eye}: el archivo no contiene ninguna longitud total del ojo.",
  "{eye}: every reading was changed by hand and none was chosen.":
    "{eye}: todas las lecturas se modificaron a mano y no se eligió ninguna.",
  "{eye}: the file gives two chosen lengths, {first} mm and {second} mm.":
    "{eye}: el archivo da dos longitudes elegidas, {first} mm y {second} mm.",
  "no length was chosen in the file; the mean of {count, plural, one {# reading} other {# readings}} was taken":
    "en el archivo no se eligió ninguna longitud; se tomó la media de {count, plural, one {# lectura} other {# lecturas}}",
  "{count, plural, one {# reading was} other {# readings were}} changed by hand":
    "{count, plural, one {# lectura se modificó} other {# lecturas se modificaron}} a mano",
  "its signal-to-noise ratio is {ratio}, below {cut} (common practice, no source): look at the readings before it is used":
    "su relación señal-ruido es {ratio}, inferior a {cut} (práctica habitual, sin fuente): revise las lecturas antes de usarla",
  "measured by ultrasound{way, select, contact { in contact with the eye} immersion { in immersion} other {}}: not to be compared with lengths measured by light":
    "medida por ultrasonido{way, select, contact { de contacto} immersion { de inmersión} other {}}: no debe compararse con longitudes medidas con luz",
  "the file says of the vitreous: {status}; a length then means something else":
    "el archivo dice del vítreo: {status}; entonces la longitud significa otra cosa",
  "The document is of the kind {kind}; only PDF is taken.":
    "El documento es del tipo {kind}; solo se incorporan PDF.",
  "The document is not a PDF.": "El documento no es un PDF.",
  "Document without a title": "Documento sin título",
  "the file gives the sex as {sex}, which is not F or M":
    "el archivo indica el sexo como {sex}, que no es F ni M",
  "the name is in letters that the file's character set does not hold; it was left out":
    "el nombre está en letras que el juego de caracteres del archivo no contiene; se dejó fuera",
  'the birth date "{text}" is no day of the calendar; it was left out':
    "la fecha de nacimiento «{text}» no es un día del calendario; se dejó fuera",
  "The file does not say on which day it was measured.": "El archivo no dice qué día se midió.",
  "The file says it was measured on {date}: the instrument's clock was wrong.":
    "El archivo dice que se midió el {date}: el reloj del instrumento estaba mal.",
  "The file says it was measured on {date}, before the child was born ({born}).":
    "El archivo dice que se midió el {date}, antes de que naciera el niño ({born}).",
  "The file says it was measured on {date}, a day that is still to come.":
    "El archivo dice que se midió el {date}, un día que aún no ha llegado.",
  "{eye}: a corneal radius needs both meridians, and one is missing.":
    "{eye}: el radio corneal necesita ambos meridianos, y falta uno.",
  "{eye}: the flat radius ({flat} mm) is smaller than the steep one ({steep} mm).":
    "{eye}: el radio plano ({flat} mm) es menor que el curvo ({steep} mm).",
  "corneal power": "la potencia corneal",
  "corneal meridian": "el meridiano corneal",
  "the file says of the lens: {status}; the course file has no word for it":
    "el archivo dice del cristalino: {status}; el archivo de curso no tiene palabra para ello",
  "the widened pupil": "la pupila dilatada",
  "the file names a drop that the course file has no word for: {drop}":
    "el archivo nombra unas gotas para las que el archivo de curso no tiene palabra: {drop}",
  "the file does not say whether the atropine was given for the examination or is the child's treatment":
    "el archivo no dice si la atropina se puso para el examen o es el tratamiento del niño",
  "the strength of a drop was left out: {value} {unit} is not read as a strength in %":
    "se dejó fuera la concentración de unas gotas: {value} {unit} no se lee como concentración en %",
  sphere: "la esfera",
  "{eye}: there is no sphere, so the rest was not taken.":
    "{eye}: no hay esfera, por lo que el resto no se incorporó.",
  cylinder: "el cilindro",
  "axis of the cylinder": "el eje del cilindro",
  "{eye}: a cylinder needs power and axis, and one is missing.":
    "{eye}: un cilindro necesita potencia y eje, y falta uno.",
  "{eye}: sphere and cylinder together are stronger than a lens can be.":
    "{eye}: la esfera y el cilindro juntos son más potentes de lo que puede ser una lente.",
  "the file gives a plus cylinder; the same lens is written with a minus cylinder":
    "el archivo da un cilindro positivo; la misma lente se escribe con cilindro negativo",
  "The file gives a lens without saying for which eye.": "El archivo da una lente sin decir para qué ojo.",
  "the file says of the lenses: {description}": "el archivo dice de las lentes: {description}",
  addition: "la adición",
  "a further addition of {value} D was left out": "se dejó fuera otra adición de {value} D",
  "The file ends in the middle of a value: it was cut off on its way or is damaged. Send it again.":
    "El archivo termina en medio de un valor: se cortó en el camino o está dañado. Envíelo de nuevo.",
  "The file is damaged: its parts do not add up. Send it again from the instrument.":
    "El archivo está dañado: sus partes no cuadran. Envíelo de nuevo desde el instrumento.",
  "The file holds far more than a measurement can: it is not read.":
    "El archivo contiene mucho más de lo que cabe en una medición: no se lee.",
  "The file is larger than {most} MB: it is no measurement and is not read.":
    "El archivo supera los {most} MB: no es una medición y no se lee.",
  "It looks like DICOM without the header of a DICOM file. Save it again as a DICOM file (Part 10).":
    "Parece DICOM sin la cabecera de un archivo DICOM. Guárdelo de nuevo como archivo DICOM (Parte 10).",
  "It is not a DICOM file.": "No es un archivo DICOM.",
  "The file does not say how it is encoded (transfer syntax).":
    "El archivo no dice cómo está codificado (sintaxis de transferencia).",
  "The file is encoded in big endian, which is retired. Save it again in explicit little endian.":
    "El archivo está codificado en big endian, que está retirado. Guárdelo de nuevo en little endian explícito.",
  "The file is compressed or encoded in a way that is not read ({syntax}). Save it again in explicit little endian.":
    "El archivo está comprimido o codificado de una forma que no se lee ({syntax}). Guárdelo de nuevo en little endian explícito.",
  "The file does not say what it holds (SOP class).": "El archivo no dice qué contiene (clase SOP).",
  "The file has no identifier of its own, so that it could be taken twice.":
    "El archivo no tiene identificador propio, por lo que podría incorporarse dos veces.",
  "The file holds no figure of either eye.": "El archivo no contiene cifras de ningún ojo.",
  "Right eye": "Ojo derecho",
  "Left eye": "Ojo izquierdo",
  "{eye}: the file gives it twice, which the standard does not allow.":
    "{eye}: el archivo lo da dos veces, lo que la norma no permite.",
  "a figure that cannot be read": "una cifra que no se puede leer",
  "{eye}: {what} must be {allowed}, not {value}.": "{eye}: {what} debe ser {allowed}, no {value}.",
  "vertex distance": "la distancia al vértice",
  "the file does not say whether accommodation was relaxed by drops":
    "el archivo no dice si la acomodación se relajó con gotas",
  "an addition for near of {value} D was left out: it is no part of the distance refraction":
    "se dejó fuera una adición de cerca de {value} D: no es parte de la refracción de lejos",
  "an addition for middle distance of {value} D was left out: it is no part of the distance refraction":
    "se dejó fuera una adición de distancia intermedia de {value} D: no es parte de la refracción de lejos",
  "an addition of {value} D was left out: it is no part of the distance refraction":
    "se dejó fuera una adición de {value} D: no es parte de la refracción de lejos",
  "a pupil of {value} mm was left out: the file does not say in what light":
    "se dejó fuera una pupila de {value} mm: el archivo no dice con qué luz",
  "a prism was left out: the course file keeps prism for glasses only":
    "se dejó fuera un prisma: el archivo de curso guarda prismas solo de las gafas",
  "It holds no measurement that is read here: an object of the class {uid}.":
    "No contiene ninguna medición que se lea aquí: un objeto de la clase {uid}.",
  "It holds no measurement that is read here: {name}.":
    "No contiene ninguna medición que se lea aquí: {name}.",
  "the file says that this eye was measured, and no figure of it was taken":
    "el archivo dice que este ojo se midió, y no se incorporó ninguna cifra suya",
  "the file says that only the other eye was measured, and yet gives a figure of this one":
    "el archivo dice que solo se midió el otro ojo, y sin embargo da una cifra de este",
  "The file is empty.": "El archivo está vacío.",
  "A PDF by itself does not say whose it is: add it on the child's page.":
    "Un PDF por sí solo no dice de quién es: añádalo en la página del niño.",
  "It is a picture; figures are not read from pictures.": "Es una imagen; de las imágenes no se leen cifras.",
  "It is compressed: unpack it and read what is in it.":
    "Está comprimido: descomprímalo y lea lo que contiene.",
  "It is a workbook of an old kind (.xls): save it as .xlsx or CSV.":
    "Es un libro de un tipo antiguo (.xls): guárdelo como .xlsx o CSV.",
  "XML is not read. Save FHIR as JSON, and a table as CSV.":
    "XML no se lee. Guarde FHIR como JSON, y una tabla como CSV.",
  "It is no kind of file that is read here.": "No es un tipo de archivo que se lea aquí.",
  "It is an archive of Lengthwise: take it in with lengthwise import.":
    "Es un archivo completo de Lengthwise: incorpórelo con lengthwise import.",
  "It is a ZIP archive: unpack it and read what is in it.":
    "Es un archivo ZIP: descomprímalo y lea lo que contiene.",
}
