import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const choices: Catalogue = {
  "treated until 18: the same treatment to that age; no trial lasted so long, and effects tend to fade":
    "tratamiento hasta los 18: el mismo tratamiento hasta esa edad; ningún ensayo duró tanto, y los efectos tienden a disminuir",
  "treated as planned: to the stop that the protocol plans for this course, then nothing; faster growth after a stop is not counted in":
    "tratamiento según lo previsto: hasta la suspensión que el protocolo prevé para este caso, después nada; no se cuenta un crecimiento más rápido tras la suspensión",
  "drops every night, spectacles and lenses as in the trials; no bottle is recorded that could tell":
    "gotas todas las noches, gafas y lentes como en los ensayos; no hay ningún frasco registrado que pueda indicarlo",
  "drops on {share} of the nights, as covered by bottles so far; spectacles and lenses as in the trials":
    "gotas en el {share} de las noches, según las cubiertas por frascos hasta ahora; gafas y lentes como en los ensayos",
  "withheld in the next year: growth that the treatment takes away, at this child's own pace; a negative figure would be growth added":
    "retenido en el próximo año: crecimiento que el tratamiento evita, al ritmo propio de este paciente; una cifra negativa sería crecimiento añadido",
  "what this child's own figures say counts for a treatment that the child has had; otherwise what the trials report":
    "de un tratamiento que el paciente ha tenido cuenta lo que dicen sus propias cifras; de los demás, lo que comunican los ensayos",
  "two treatments together only where a trial of both was read; effects are never added up":
    "dos tratamientos juntos solo donde se leyó un ensayo de ambos; los efectos nunca se suman",
  "no refraction is recorded: the child is taken to be myopic":
    "no hay refracción registrada: se considera que el paciente es miope",
  "beyond {years} years the natural curve is run on from younger ages; the doubt about the average curve is not in the intervals":
    "más allá de los {years} años la curva natural se prolonga desde edades menores; la duda sobre la curva media no está en los intervalos",
  "stopped on {date}": "suspendido el {date}",
  "Chance of 26 mm by 18, treated as planned": "Probabilidad de 26 mm a los 18, según lo previsto",
  "Chance of 26 mm by 18, kept up until then":
    "Probabilidad de 26 mm a los 18, si se mantiene hasta entonces",
  "Growth withheld in the next year": "Crecimiento retenido en el próximo año",
  "How well the effect is known": "Certeza sobre el efecto",
  "no trial was read": "no se leyó ningún ensayo",
  "Unwanted effects": "Efectos no deseados",
  "each trial asked in its own way": "cada ensayo preguntó a su manera",
  "no figure was read; that does not mean none": "no se leyó ninguna cifra; eso no significa que no haya",
  "over the same months": "en los mismos meses",
  "none needed": "no hace falta",
  "Before it is started": "Antes de empezar",
  "95 % interval in brackets": "intervalo del 95 % entre paréntesis",
  "in brackets: between, as pace and effect may be (95 %)":
    "entre paréntesis: margen según el ritmo y el efecto (95 %)",
  "Length of the {eye, select, right {right} other {left}} eye at 18, treated as planned":
    "Longitud del ojo {eye, select, right {derecho} other {izquierdo}} a los 18, según lo previsto",
  "Length of the {eye, select, right {right} other {left}} eye at 18, kept up until then":
    "Longitud del ojo {eye, select, right {derecho} other {izquierdo}} a los 18, si se mantiene hasta entonces",
  "Cost of each {tenth} mm withheld": "Coste de cada {tenth} mm retenido",
  "{mm} mm ({low} to {high})": "{mm} mm ({low} a {high})",
  "{middle} ({low} to {high})": "{middle} ({low} a {high})",
  "not given: {why}": "no se indica: {why}",
  "none; {mm} mm of growth is expected": "ninguno; se esperan {mm} mm de crecimiento",
  "not given: the evidence ends at 18 years": "no se indica: la evidencia termina a los 18 años",
  "small, may be nil": "pequeño, puede ser nulo",
  "Cost of the next {months, plural, one {# month} other {# months}}":
    "Coste {months, plural, one {del próximo mes} other {de los próximos # meses}}",
  "not covered {sum}": "no cubierto: {sum}",
  "uncertain {sum}": "incierto: {sum}",
  "covered {sum}": "cubierto: {sum}",
  "without a fee, not counted: {what}": "sin tarifa, no se cuenta: {what}",
  "with what is uncertain {sum}": "con lo incierto: {sum}",
  "{name}: yes; {says}": "{name}: sí; {says}",
  "{name}: yes ({note}); {says}": "{name}: sí ({note}); {says}",
  "{open, plural, one {# caution} other {# cautions}} not asked about yet":
    "{open, plural, one {# precaución} other {# precauciones}} sin preguntar todavía",
  "this child is not myopic: no treatment is compared, since none was studied in eyes like these":
    "este paciente no es miope: no se compara ningún tratamiento, porque ninguno se estudió en ojos como estos",
  "no length has been measured, so there is nothing to start from":
    "no se ha medido ninguna longitud, así que no hay punto de partida",
  "the evidence ends at {years} years": "la evidencia termina a los {years} años",
  "no trial of these together was read, and effects are never added up":
    "no se leyó ningún ensayo de estos juntos, y los efectos nunca se suman",
  "no trial of this treatment at this strength was read":
    "no se leyó ningún ensayo de este tratamiento a esta concentración",
  "consent to {treatment} is in force since {date}":
    "el consentimiento para {treatment} está vigente desde el {date}",
  "a decision that keeps what is planned, or {treatments} withdrawn first":
    "una decisión que mantenga lo previsto, o retirar antes {treatments}",
  "a decision that fits: {what, select, drops {drops in use} other {a treatment in use}} would be needed":
    "una decisión que corresponda: haría falta {what, select, drops {tener gotas en uso} other {tener un tratamiento en uso}}",
  "{what, select, drops {drops in use} other {a treatment in use}}":
    "{what, select, drops {gotas en uso} other {un tratamiento en uso}}",
  "at least one of what is in use: {treatments}": "al menos uno de los que están en uso: {treatments}",
  "what is to be given from then on": "lo que se dará a partir de entonces",
  "add, switch or change of strength, since {treatments} {many, select, yes {are} other {is}} in use":
    "añadir, cambiar de tratamiento o cambiar la concentración, porque {many, select, yes {están} other {está}} en uso {treatments}",
  "start: nothing was given before": "empezar: antes no se dio nada",
  "start: nothing is in use that something could be added to":
    "empezar: no hay nada en uso a lo que añadir algo",
  "drops; anything else is a switch": "gotas; cualquier otra cosa es un cambio de tratamiento",
  "another than the {treatment} in use": "otro distinto del que está en uso ({treatment})",
  "a whole number from 1 to 6 nights of the week": "un número entero de 1 a 6 noches por semana",
  "{path} is missing: it must be {allowed}.": "{path} falta: debe ser {allowed}.",
  "{path} must be {allowed}, not {value}.": "{path} debe ser {allowed}, no {value}.",
  "start a treatment": "empezar un tratamiento",
  "go on as now": "seguir como ahora",
  "change the strength": "cambiar la concentración",
  "add a treatment": "añadir un tratamiento",
  "switch to another treatment": "cambiar a otro tratamiento",
  "stop a treatment": "suspender un tratamiento",
  "taper: fewer nights of the week": "reducir: menos noches por semana",
  "start again after a stop": "empezar de nuevo tras una suspensión",
  refer: "derivar",
  "discharge: end everything in use": "dar de alta: terminar todo lo que se usa",
  "the family declines": "la familia lo rechaza",
  "pooled estimates only": "solo estimaciones agrupadas",
  "{count, plural, one {# trial} other {# trials}}: {trials}":
    "{count, plural, one {# ensayo} other {# ensayos}}: {trials}",
  "moderate; extra over orthokeratology 0.06 (0.03) mm/a|evidence":
    "moderada; 0,06 (0,03) mm/año más que la ortoqueratología sola",
  "Nothing is withheld.": "No se retiene nada.",
  "No figure is given for what is withheld.": "No se da ninguna cifra de lo que se retiene.",
  "going on with {treatment}": "seguir con {treatment}",
  "the strengths were studied at {youngest} to {oldest} years of age (common practice, no source); this child is {age}":
    "las concentraciones se estudiaron de los {youngest} a los {oldest} años (práctica habitual, sin fuente); este paciente tiene {age}",
  "drops with an optical treatment: the evidence is promising but limited":
    "gotas con un tratamiento óptico: la evidencia es prometedora pero limitada",
  "this child is {age}": "este paciente tiene {age} años",
  "no refraction is recorded": "no hay refracción registrada",
  "this child has {power} D": "este paciente tiene {power} D",
  "no two refractions about a year apart are recorded":
    "no hay dos refracciones registradas con un año de diferencia aproximada",
  "this child changed by {power} D a year": "este paciente cambió {power} D al año",
  "a European regulator's criterion for starting its authorised {percent} % product: at least {progression} D a year, {least} to {most} D, {youngest} to {oldest} years; {answer}":
    "criterio de una autoridad reguladora europea para empezar su producto autorizado al {percent} %: al menos {progression} D al año, de {least} a {most} D, de {youngest} a {oldest} años; {answer}",
  "met|criterion": "se cumple",
  "trouble reading": "dificultad para leer",
  "wide pupil": "pupila ancha",
  "irritated eyes": "ojos irritados",
  "stopped for an unwanted effect": "abandono por un efecto no deseado",
  "stopped within 12 months": "abandono antes de 12 meses",
  "108 events in the 6-month loading period (mostly the 0.1 % arm), 14 in the 6 months after the switch to 0.01 %":
    "108 eventos en el periodo inicial de 6 meses (la mayoría en el grupo del 0,1 %), 14 en los 6 meses tras el cambio al 0,01 %",
  "the pupil stays wide for about a week": "la pupila sigue dilatada alrededor de una semana",
  "a lens on the eye: pain, redness or worse sight is looked at the same day":
    "una lente sobre el ojo: el dolor, el enrojecimiento o la peor visión se examinan el mismo día",
  "{n, plural, one {# child} other {# children}}": "{n, plural, one {# niño} other {# niños}}",
  "year {year}": "año {year}",
  "{event} {rate} %": "{event} {rate} %",
  "{event} {rate} % ({arm} {beside} %)": "{event} {rate} % ({arm} {beside} %)",
  "pupil in bright light {mm} mm wider": "pupila con luz intensa {mm} mm más ancha",
  "accommodation {low} to {high} D less": "acomodación de {low} a {high} D menor",
  "accommodation {loss} D less": "acomodación {loss} D menor",
  "accommodation {loss} D less (placebo {beside} D)": "acomodación {loss} D menor (placebo {beside} D)",
  "{trial}, {span}, with orthokeratology": "{trial}, {span}, con ortoqueratología",
  "pupil in bright light {mm} mm wider (orthokeratology alone {beside} mm)":
    "pupila con luz intensa {mm} mm más ancha (ortoqueratología sola {beside} mm)",
}
