import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const reference: Catalogue = {
  "two numbers above 0 with a slash between, such as 6/12 or 20/40":
    "dos números mayores que 0 separados por una barra, como 6/12 o 20/40",
  '{path} must be {allowed}, not "{value}"': "{path} debe ser {allowed}, no «{value}»",
  'sphere, or sphere cylinder x axis, such as "-3.00" or "-2.25 -0.50 x 180"':
    "esfera, o esfera cilindro x eje, como «-3,00» o «-2,25 -0,50 x 180»",
  "a whole degree from 1 to 180, or 0 for 180": "un grado entero de 1 a 180, o 0 en lugar de 180",
  "an axis from 1 to 180 after the cylinder {cylinder}": "un eje de 1 a 180 después del cilindro {cylinder}",
  "a cylinder before the axis {axis}": "un cilindro antes del eje {axis}",
  "a power with its sign from -{strongest} to +{strongest} D":
    "una potencia con su signo de -{strongest} a +{strongest} D",
  "{path} is missing: {allowed} is needed": "falta {path}: hace falta {allowed}",
  "at least one prescription": "al menos una refracción escrita",
  "readings must hold at least one prescription": "readings debe contener al menos una refracción escrita",
  "a distance from 0 to {most} mm": "una distancia de 0 a {most} mm",
  "{path} must be {allowed}, not {value}": "{path} debe ser {allowed}, no {value}",
  approximate: "aproximada",
  "the reference mixes the sexes": "la referencia mezcla los sexos",
  "measured optically, the reference by ultrasound": "medida óptica, la referencia por ultrasonidos",
  "measured by ultrasound, the reference optically": "medida por ultrasonidos, la referencia óptica",
  "with cycloplegia, the reference without": "con cicloplejia, la referencia sin ella",
  "without cycloplegia, the reference with": "sin cicloplejia, la referencia con ella",
  "the reference mixes the sexes: a girl reads too low":
    "la referencia mezcla los sexos: una niña queda demasiado baja",
  "the reference mixes the sexes: a boy reads too high":
    "la referencia mezcla los sexos: un niño queda demasiado alto",
  "fewer than two centiles are printed for age {age}":
    "hay menos de dos percentiles publicados para la edad de {age} años",
  "centiles cross at age {age}, at centile {centile}":
    "los percentiles se cruzan a la edad de {age} años, en el percentil {centile}",
  "L, M, S by sex of Wuhan 2022 (doi 10.1038/s41598-022-08907-5)":
    "L, M y S por sexo de Wuhan 2022 (doi 10.1038/s41598-022-08907-5)",
  "centiles of Shanghai 2023 (doi 10.1136/bjophthalmol-2021-319431)":
    "percentiles de Shanghái 2023 (doi 10.1136/bjophthalmol-2021-319431)",
  "centiles of Leipzig 2021 (doi 10.1111/opo.12817)": "percentiles de Leipzig 2021 (doi 10.1111/opo.12817)",
  "centiles of the European 2018 paper (PMC6002955)": "percentiles del artículo europeo de 2018 (PMC6002955)",
  "rows 14 to 17 of Leipzig 2020 (doi 10.1371/journal.pone.0230291)":
    "filas 14 a 17 de Leipzig 2020 (doi 10.1371/journal.pone.0230291)",
  "no {measure, select, axial-length {length} other {refraction}} reference is chosen while the child's ancestry is unstated":
    "no se elige ninguna referencia de {measure, select, axial-length {longitud} other {refracción}} mientras no conste la ascendencia del paciente",
  "no {measure, select, axial-length {length} other {refraction}} reference at hand fits a child of {ancestry}":
    "ninguna referencia de {measure, select, axial-length {longitud} other {refracción}} disponible corresponde a un niño de {ancestry}",
  "no {measure, select, axial-length {length} other {refraction}} reference at hand fits a child of {ancestry} and this age":
    "ninguna referencia de {measure, select, axial-length {longitud} other {refracción}} disponible corresponde a un niño de {ancestry} y de esta edad",
  "state it, or name a reference": "indíquela, o nombre una referencia",
  "a published L-M-S or centile table of that population can be loaded":
    "puede cargarse una tabla L-M-S o de percentiles publicada de esa población",
  "a published L-M-S or centile table of that population can be loaded, for example {tables}":
    "puede cargarse una tabla L-M-S o de percentiles publicada de esa población, por ejemplo {tables}",
  "East Asian ancestry": "ascendencia de Asia oriental",
  "European ancestry": "ascendencia europea",
  "South Asian ancestry": "ascendencia de Asia meridional",
  "African ancestry": "ascendencia africana",
  "other ancestry": "otra ascendencia",
  "the reference {id} has grade D: for plausibility only, never for a centile":
    "la referencia {id} tiene grado D: solo para comprobar la verosimilitud, nunca para un percentil",
  "the emmetropic curve {id} covers {youngest} to {oldest} years; age {age} lies outside":
    "la curva emetrópica {id} abarca de {youngest} a {oldest} años; la edad de {age} años queda fuera",
  "fit to show": "apta para mostrarse",
  "to be read with its limits": "para leer con sus límites",
  "for plausibility only": "solo para comprobar la verosimilitud",
  "the infancy curve {id} covers {youngest} to {oldest} years; age {age} lies outside":
    "la curva de la primera infancia {id} abarca de {youngest} a {oldest} años; la edad de {age} años queda fuera",
  "a length from {shortest} to {longest} mm": "una longitud de {shortest} a {longest} mm",
  "an age from 0 to 25 years": "una edad de 0 a 25 años",
  "a number": "un número",
  "a coefficient of variation above 0 and up to {most}":
    "un coeficiente de variación mayor que 0 y de hasta {most}",
  "line {line}, {column}": "línea {line}, {column}",
  "{path} must be {allowed}, and is missing": "{path} debe ser {allowed}, y falta",
  "a header and rows below it, up to {lines} lines and {characters} characters in all":
    "un encabezado y filas debajo, hasta {lines} líneas y {characters} caracteres en total",
  "a column": "una columna",
  "sex, age_years, n, L, M, S, or a centile such as p3 or p2.5":
    "sex, age_years, n, L, M, S o un percentil como p3 o p2.5",
  "a column that stands only once": "una columna que aparezca una sola vez",
  "either L, M and S together, or three or more centiles, and not both":
    "o bien L, M y S juntas, o bien tres o más percentiles, y no ambas cosas",
  "as many cells as the header, {count}": "tantas celdas como el encabezado, {count}",
  "F, M, female, male, or all": "F, M, female, male o all",
  "an age above {before}, the one before for {sex, select, female {girls} male {boys} other {both sexes}}":
    "una edad mayor que {before}, la anterior para {sex, select, female {niñas} male {niños} other {ambos sexos}}",
  "an L that with M and S puts the centiles 2 and 98 from {shortest} to {longest} mm":
    "una L que con M y S sitúe los percentiles 2 y 98 de {shortest} a {longest} mm",
  "two or more printed centiles": "dos o más percentiles publicados",
  "above {column} of the same row, {value}": "mayor que {column} de la misma fila, {value}",
  "above {column} at every age from {from} to {to}": "mayor que {column} a todas las edades de {from} a {to}",
  "axial length": "longitud axial",
  "spherical equivalent": "equivalente esférico",
  "the reference {id} measures {measured}, not {asked}": "la referencia {id} mide {measured}, no {asked}",
  "{measure} must be from {low} to {high} {unit} to be placed, not {value}":
    "{measure} debe estar entre {low} y {high} {unit} para situarse, no {value}",
  "below p{centile}": "por debajo del p{centile}",
  "above p{centile}": "por encima del p{centile}",
  "a text that is not empty": "un texto que no esté vacío",
  "small letters, digits and hyphens, such as wuhan2022-al":
    "letras minúsculas, cifras y guiones, como wuhan2022-al",
  "a whole year from 1900 to 2100": "un año entero de 1900 a 2100",
  'UCUM codes with mm for the lengths, such as "a; mm"':
    "códigos UCUM con mm para las longitudes, como «a; mm»",
  "a date such as 2026-03-31": "una fecha como 2026-03-31",
  "the SHA-256 of the file, 64 hexadecimal digits": "el SHA-256 del archivo, 64 cifras hexadecimales",
  "a text, which may be empty": "un texto, que puede estar vacío",
  "{allowed}, or null": "{allowed}, o null",
  "European children, centiles {low} to {high}{grade, select, C {, approximate} other {}}":
    "niños europeos, percentiles {low} a {high}{grade, select, C {, aproximados} other {}}",
  "the reference {id} has no rows for a {sex, select, female {female} other {male}} child":
    "la referencia {id} no tiene filas para {sex, select, female {una niña} other {un niño}}",
  "the reference {id} has cells for children of {ages} completed years only; age {age} lies outside":
    "la referencia {id} solo tiene celdas para niños de {ages} años cumplidos; la edad de {age} años queda fuera",
  "the reference {id} covers age {only} only for a {sex, select, female {female} other {male}} child; age {age} lies outside":
    "la referencia {id} solo abarca la edad de {only} años para {sex, select, female {una niña} other {un niño}}; la edad de {age} años queda fuera",
  "the reference {id} covers {youngest} to {oldest} years for a {sex, select, female {female} other {male}} child; age {age} lies outside":
    "la referencia {id} abarca de {youngest} a {oldest} años para {sex, select, female {una niña} other {un niño}}; la edad de {age} años queda fuera",
  "the reference {id} gives centiles {lowest} to {highest} for this age and sex; p{centile} lies outside":
    "la referencia {id} da los percentiles {lowest} a {highest} para esta edad y sexo; el p{centile} queda fuera",
}
