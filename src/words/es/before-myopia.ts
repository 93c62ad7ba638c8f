import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const beforeMyopia: Catalogue = {
  "no trial of a treatment was read for children who are not myopic, so no course of the eye under a treatment is drawn for this child":
    "no se leyó ningún ensayo de un tratamiento en niños que no son miopes, por lo que no se dibuja ninguna evolución del ojo con tratamiento para este paciente",
  "the child is or was treated: what is said before myopia does not hold any more":
    "el paciente recibe o recibió tratamiento: lo que se dice antes de la miopía ya no es válido",
  "no refraction has been measured: whether the child is myopic is not known":
    "no se ha medido ninguna refracción: no se sabe si el paciente es miope",
  "the child is myopic: an eye is at {cutOff} D or beyond":
    "el paciente es miope: un ojo está en {cutOff} D o más allá",
  "the cut-offs are of refraction with cycloplegia, and none has been measured with it":
    "los puntos de corte son de refracción con cicloplejia, y no se ha medido ninguna así",
  "Whether the parents are myopic is not recorded.": "No consta si los padres son miopes.",
  "Seen every {months, plural, one {# month} other {# months}}: {source}.":
    "Revisión cada {months, plural, one {# mes} other {# meses}}: {source}.",
  "{words}. {kind} {people}; {cited}, read as {obtained}":
    "{words}. {kind} {people}; {cited}, leído como {obtained}",
  "not shown: {what}, since {why}": "no se muestra: {what}, porque {why}",
  "Not myopic; not compared with any cut-off yet": "No es miope; aún sin comparar con ningún punto de corte",
  "Not myopic; no cut-off was read for this age":
    "No es miope; no se leyó ningún punto de corte para esta edad",
  "Not myopic, and past no cut-off that was read":
    "No es miope y no ha pasado ningún punto de corte de los leídos",
  "Not myopic; past {atRisk} of {count, plural, one {# cut-off} other {# cut-offs}} for becoming so":
    "No es miope; ha pasado {atRisk} de {count, plural, one {# punto de corte} other {# puntos de corte}} de riesgo de llegar a serlo",
  "{eye, select, right {Right} other {Left}} eye {mm} mm on {date}; {why}":
    "Ojo {eye, select, right {derecho} other {izquierdo}}: {mm} mm el {date}; {why}",
  "{eye, select, right {Right} other {Left}} eye {mm} mm on {date}: {side, select, equal {as long as} longer {{difference} mm longer than} other {{difference} mm shorter than}} the mean of emmetropic eyes at that age, {mean} mm":
    "Ojo {eye, select, right {derecho} other {izquierdo}}: {mm} mm el {date}, {side, select, equal {tan largo como} longer {{difference} mm más largo que} other {{difference} mm más corto que}} la media de los ojos emétropes a esa edad, {mean} mm",
  "{eye, select, right {Right} other {Left}} eye {mm} mm on {date}: {side, select, equal {as long as} longer {{difference} mm longer than} other {{difference} mm shorter than}} the mean of emmetropic eyes at that age, {mean} mm, from which such eyes differ with a standard deviation of {sd} mm":
    "Ojo {eye, select, right {derecho} other {izquierdo}}: {mm} mm el {date}, {side, select, equal {tan largo como} longer {{difference} mm más largo que} other {{difference} mm más corto que}} la media de los ojos emétropes a esa edad, {mean} mm, de la que tales ojos difieren con una desviación estándar de {sd} mm",
  "No cut-off was read for this age.": "No se leyó ningún punto de corte para esta edad.",
  "{power} with cycloplegia on {date}, the more myopic eye.":
    "{power} con cicloplejia el {date}, el ojo más miope.",
  "Of {n} children of {age} with {band}, {became} became {outcome}: {percent} (95 % {low} to {high} %). {population}; {cited}.":
    "De {n} niños de {age} años con {band}, {became} llegaron a tener {outcome}: {percent} (95 %: {low} a {high} %). {population}; {cited}.",
  "{quantity, select, sphere {Sphere} other {Spherical equivalent}} {value} {place, select, below {is below} at-or-below {is at or below} among {lies among} not-below {is not below} other {is not at or below}} {edge} ({whom}).":
    "{quantity, select, sphere {La esfera} other {El equivalente esférico}}, {value}, {place, select, below {está por debajo de} at-or-below {está en o por debajo de} among {está entre} not-below {no está por debajo de} other {no está en ni por debajo de}} {edge} ({whom}).",
  "the cut-offs tried, {low} to {high}": "los puntos de corte probados, {low} a {high}",
  "{grade}, taken here for {ages}": "{grade}, tomado aquí como {ages}",
  "The cut-off for {outcome}.": "Es el punto de corte para {outcome}.",
  "Told {outcome} with sensitivity {sensitivity}, specificity {specificity}.":
    "Distinguió {outcome} con sensibilidad de {sensitivity} y especificidad de {specificity}.",
  "second-hand, {obtained}; the study's own text was not read":
    "de segunda mano, {obtained}; no se leyó el texto del propio estudio",
  "read as {obtained}": "leído como {obtained}",
  "age {age}": "{age} años",
  "ages {youngest} to {oldest}": "de {youngest} a {oldest} años",
  "less than {power}": "menos de {power}",
  "{power} or more": "{power} o más",
  "{from} to less than {below}": "{from} a menos de {below}",
  "Neither parent is myopic.": "Ninguno de los padres es miope.",
  "{ratio} (95 % {low} to {high}; {cited})": "{ratio} (95 %: {low} a {high}; {cited})",
  "{myopicParents, plural, one {One parent is myopic} other {Both parents are myopic}}. Odds of myopia against children of parents without it: {ratios}.":
    "{myopicParents, plural, one {Uno de los padres es miope} other {Ambos padres son miopes}}. Razón de posibilidades (odds ratio) de miopía frente a hijos de padres sin ella: {ratios}.",
  "grade 3": "tercer curso",
  "myopia at 8 to 14 years": "la miopía entre los 8 y los 14 años",
  "myopia later": "la miopía posterior",
  "a child at risk of myopia": "un niño con riesgo de miopía",
  "−0.75 D or more myopic at some time within 5 years":
    "−0,75 D o más miopía en algún momento de los 5 años siguientes",
  "USA, 4512 children": "EE. UU., 4512 niños",
  "Orinda, California, 554 children, 45 of whom became myopic":
    "Orinda, California, 554 niños, 45 de los cuales llegaron a ser miopes",
  "USA, grades 1 to 8, 4512 children, 414 of whom became myopic":
    "EE. UU., cursos 1 a 8, 4512 niños, 414 de los cuales llegaron a ser miopes",
  "California, 1989 to 2001, not myopic at entry, right eye":
    "California, 1989 a 2001, no miopes al inicio, ojo derecho",
  "Orinda Longitudinal Study of Myopia, public file of 618 children":
    "Orinda Longitudinal Study of Myopia, archivo público de 618 niños",
  "Zhang et al. 2015, cohorts": "Zhang et al. 2015, cohortes",
  "abstract (summary page)": "resumen (página de resumen)",
  "secondary citation (professional-press answer quoting the 2015 study)":
    "cita secundaria (respuesta en prensa profesional que cita el estudio de 2015)",
  "About 2 hours outdoors a day": "Unas 2 horas al día al aire libre",
  "Time outdoors at school against none, trials pooled: 0.09 mm less growth (95 % 0.05 to 0.13)":
    "Tiempo al aire libre en la escuela frente a ninguno, ensayos agrupados: 0,09 mm menos de crecimiento (95 %: 0,05 a 0,13)",
  "Becoming myopic, with time outdoors at school against without: risk ratio 0.76 (95 % 0.67 to 0.87)":
    "Llegar a ser miope, con tiempo al aire libre en la escuela frente a sin él: riesgo relativo 0,76 (95 %: 0,67 a 0,87)",
  "40 minutes more outdoors on school days: 30.4 % myopic after 3 years against 39.5 %; the length did not differ for certain":
    "40 minutos más al aire libre los días de escuela: 30,4 % de miopes a los 3 años frente a 39,5 %; la longitud no difirió con certeza",
  "randomised trials, pooled": "ensayos aleatorizados, agrupados",
  "one randomised trial": "un ensayo aleatorizado",
  "9437 children, mostly not yet myopic": "9437 niños, la mayoría aún no miopes",
  "3014 children": "3014 niños",
  "1903 children of about 6 in Guangzhou": "1903 niños de unos 6 años en Guangzhou",
  "A break from near work every 20 to 30 minutes, and the page more than 30 cm away":
    "Un descanso del trabajo de cerca cada 20 a 30 minutos, y la página a más de 30 cm",
  "More near work against less, in children: odds ratio of myopia 1.31 (95 % 1.21 to 1.42)":
    "Más trabajo de cerca frente a menos, en niños: odds ratio de miopía 1,31 (95 %: 1,21 a 1,42)",
  "observations, pooled: they show a link, not that less near work helps":
    "observaciones, agrupadas: muestran una asociación, no que ayude trabajar menos de cerca",
  "78 studies": "78 estudios",
  "the bounds of pre-myopia": "los límites de la premiopía",
  "the text of the definition was not read, and it needs other risk factors beside the refraction":
    "no se leyó el texto de la definición, y requiere otros factores de riesgo además de la refracción",
  "how well the age cut-offs of 2015 tell who becomes myopic":
    "lo bien que los puntos de corte por edad de 2015 distinguen quién llega a ser miope",
  "the figures were not read in any text": "las cifras no se leyeron en ningún texto",
}
