import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const response: Catalogue = {
  "no length of the {eye, select, right {right} other {left}} eye has been measured":
    "no se ha medido ninguna longitud del ojo {eye, select, right {derecho} other {izquierdo}}",
  "pace, multiple of natural growth": "ritmo, múltiplo del crecimiento natural",
  "share of natural growth withheld by {treatment}":
    "fracción del crecimiento natural retenida por {treatment}",
  "this child is not myopic: no forecast from untreated myopia is made":
    "este paciente no es miope: no se hace ningún pronóstico a partir de la miopía sin tratamiento",
  "no length has been measured, so there is nothing to start from":
    "no se ha medido ninguna longitud, así que no hay punto de partida",
  "forecasts end at {oldest} years; {asked} was asked for":
    "los pronósticos terminan a los {oldest} años; se pidió {asked}",
  "a forecast looks ahead: this child is past {years} years on {asOf}":
    "un pronóstico mira hacia delante: este paciente ya ha pasado los {years} años el {asOf}",
  "{doubt}: check it before this forecast is used": "{doubt}: compruébela antes de usar este pronóstico",
  "beyond {years} years the natural curve is run on from younger ages":
    "más allá de los {years} años la curva natural se prolonga desde edades menores",
  "the fan holds what this child may do, not the doubt about the average curve":
    "el abanico contiene lo que puede hacer este paciente, no la duda sobre la curva media",
  "as treated: the same treatment {nights, select, every {every night} other {on as many nights as so far}} to that age; no trial lasted so long, and effects tend to fade":
    "con el tratamiento: el mismo tratamiento {nights, select, every {todas las noches} other {tantas noches como hasta ahora}} hasta esa edad; ningún ensayo duró tanto, y los efectos tienden a disminuir",
  "{treatment} with {other}": "{treatment} con {other}",
  "the growth evidence covers children of {youngest} to {oldest} years; this child is {years, plural, one {# year} other {# years}} and {months, plural, one {# month} other {# months}} old on {asOf}":
    "la evidencia sobre el crecimiento abarca niños de {youngest} a {oldest} años; este paciente tiene {years, plural, one {# año} other {# años}} y {months, plural, one {# mes} other {# meses}} el {asOf}",
  "{treatment} in the {eye, select, right {right} other {left}} eye":
    "{treatment} en el ojo {eye, select, right {derecho} other {izquierdo}}",
  "no trial of this treatment at this strength was read, so its effect is left open":
    "no se leyó ningún ensayo de este tratamiento a esta concentración, así que su efecto se deja abierto",
  "no trial of this combination was read; the larger single effect is used, never a sum":
    "no se leyó ningún ensayo de esta combinación; se usa el mayor de los efectos por separado, nunca una suma",
  "no length has been measured since the stop on {date}":
    "no se ha medido ninguna longitud desde la suspensión del {date}",
  "no report was read of growth above untreated after {treatment}":
    "no se leyó ningún informe de crecimiento superior al natural después de {treatment}",
  "too early: natural growth since the stop is {natural} mm, less than the {detectable} mm that can be told":
    "demasiado pronto: el crecimiento natural desde la suspensión es de {natural} mm, menos que los {detectable} mm que pueden distinguirse",
  "{grown} mm since the stop, natural growth {natural} mm: {odds} for a rebound of {extra} mm above natural growth in the {months} months after the stop, {report}":
    "{grown} mm desde la suspensión, crecimiento natural {natural} mm: {odds} a favor de un rebote de {extra} mm por encima del crecimiento natural en los {months} meses tras la suspensión, {report}",
  "{grown} mm since the stop, natural growth {natural} mm: {odds} against a rebound of {extra} mm above natural growth in the {months} months after the stop, {report}; growth that only returns to natural is loss of effect, not rebound":
    "{grown} mm desde la suspensión, crecimiento natural {natural} mm: {odds} en contra de un rebote de {extra} mm por encima del crecimiento natural en los {months} meses tras la suspensión, {report}; un crecimiento que solo vuelve al natural es pérdida de efecto, no rebote",
  "{grown} mm since the stop, natural growth {natural} mm: {odds} {side, select, for {for} other {against}} a rebound of {extra} mm above natural growth in the {months} months after the stop, {report}; {wanted} is asked for":
    "{grown} mm desde la suspensión, crecimiento natural {natural} mm: {odds} {side, select, for {a favor} other {en contra}} de un rebote de {extra} mm por encima del crecimiento natural en los {months} meses tras la suspensión, {report}; se exige {wanted}",
  "as was reported": "como se ha comunicado",
  "as was reported (but {against})": "como se ha comunicado (pero {against})",
  "ATOM-J found none at 0.01 %: -0.02 mm (95 % -0.12 to 0.09) in the year off":
    "ATOM-J no halló ninguno con 0,01 %: -0,02 mm (95 %: -0,12 a 0,09) en el año sin tratamiento",
  "a Chinese trial of 0.05 % found no clear rebound: 0.31 against 0.28 mm in the year off (P > 0.05)":
    "un ensayo chino con 0,05 % no halló un rebote claro: 0,31 frente a 0,28 mm en el año sin tratamiento (P > 0,05)",
  "the {eye, select, right {right} other {left}} eye has {now} D on {date} where {before} D stood on {day}: is a sign lost?":
    "el ojo {eye, select, right {derecho} other {izquierdo}} tiene {now} D el {date}, donde constaban {before} D el {day}: ¿se perdió un signo?",
  "{count, plural, one {# visit} other {# visits}} after {asOf} left out of this answer":
    "{count, plural, one {# visita posterior al {asOf} queda} other {# visitas posteriores al {asOf} quedan}} fuera de esta respuesta",
  "{count, plural, one {# visit} other {# visits}} outside the ages {youngest} to {oldest} that the growth evidence covers: shown, and left out of the answers":
    "{count, plural, one {# visita} other {# visitas}} fuera de las edades de {youngest} a {oldest} años que abarca la evidencia sobre el crecimiento: se muestran, pero no entran en las respuestas",
  "{count, plural, one {# visit} other {# visits}} with a length whose method is not stated: taken as optical biometry":
    "{count, plural, one {# visita} other {# visitas}} con una longitud cuyo método no consta: se toma como biometría óptica",
  "{count, plural, one {# visit} other {# visits}} with autorefraction without cycloplegia: it makes children look more myopic, and before a treatment it counts for less":
    "{count, plural, one {# visita} other {# visitas}} con autorrefracción sin cicloplejia: hace que los niños parezcan más miopes, y antes de un tratamiento cuenta menos",
  "no refraction is recorded: the child is taken as myopic":
    "no hay refracción registrada: el paciente se toma como miope",
  "the latitude is not stated: growth is not corrected for the season":
    "no consta la latitud: el crecimiento no se corrige por la estación del año",
  "ancestry is not stated: natural growth is that of children who are not East Asian, which is the slower one":
    "no consta la ascendencia: se toma el crecimiento natural de los niños que no son de Asia oriental, que es el más lento",
  "a figure of {days} is in doubt": "una cifra del {days} está en duda",
  "{doubt}: no answer until it has been measured again or put right":
    "{doubt}: no hay respuesta hasta que se mida de nuevo o se corrija",
  "right and left look exchanged on {date}: the lengths fit more than a million times better the other way round":
    "derecho e izquierdo parecen intercambiados el {date}: al revés, las longitudes encajan más de un millón de veces mejor",
  "right and left look exchanged on {date}: the lengths fit {times} times better the other way round":
    "derecho e izquierdo parecen intercambiados el {date}: al revés, las longitudes encajan {times} veces mejor",
  "no treatment has begun": "no ha empezado ningún tratamiento",
  "no myopia before the treatment: the trials behind this test were of myopic children":
    "sin miopía antes del tratamiento: los ensayos en que se basa esta prueba fueron con niños miopes",
  "no length has been measured": "no se ha medido ninguna longitud",
  "the figures fit both: {odds} : 1 {side, select, for {for} other {against}} an effect, {wanted} : 1 is asked for":
    "las cifras encajan con ambas cosas: {odds} : 1 {side, select, for {a favor} other {en contra}} de un efecto; se exige {wanted} : 1",
  "the figures speak against an effect, but with so many nights without a drop that is no verdict on the drops":
    "las cifras hablan en contra de un efecto, pero con tantas noches sin gota eso no es un veredicto sobre las gotas",
  "only {share} of nights had a bottle in date{told, select, yes { and were not reported missed} other {}} (proportion of days covered since the start; {rule}){explains, select, yes {: missed nights may explain what is seen} other {}}":
    "solo el {share} de las noches tuvo un frasco vigente{told, select, yes { y no se refirió como noche sin gota} other {}} (proporción de días cubiertos desde el inicio; {rule}){explains, select, yes {: las noches sin gota pueden explicar lo que se observa} other {}}",
  "asked of the {eye, select, right {right eye, whose treatment began last; the left} other {left eye, whose treatment began last; the right}} eye has {treatment}":
    "la pregunta es sobre el ojo {eye, select, right {derecho, cuyo tratamiento empezó el último; el ojo izquierdo} other {izquierdo, cuyo tratamiento empezó el último; el ojo derecho}} tiene {treatment}",
  "asked of the {eye, select, right {right eye, the only one treated; the left} other {left eye, the only one treated; the right}} eye shows the child's own pace":
    "la pregunta es sobre el ojo {eye, select, right {derecho, el único tratado; el ojo izquierdo} other {izquierdo, el único tratado; el ojo derecho}} muestra el ritmo propio del paciente",
  "only one length has been measured": "solo se ha medido una longitud",
  "too early: untreated, the eye would have grown {natural} mm since the start, less than the {detectable} mm that can be told":
    "demasiado pronto: sin tratamiento, el ojo habría crecido {natural} mm desde el inicio, menos que los {detectable} mm que pueden distinguirse",
  "there are not yet two lengths of the same eye to tell growth from":
    "aún no hay dos longitudes del mismo ojo para conocer el crecimiento",
  "the eyes are not treated alike: this is the {eye, select, right {right} other {left}} eye, the one that grows faster":
    "los ojos no reciben el mismo tratamiento: este es el ojo {eye, select, right {derecho} other {izquierdo}}, el que crece más rápido",
  "no myopia: the growth is set against the emmetropic curve alone, never against untreated myopia":
    "sin miopía: el crecimiento se compara solo con la curva emetrópica, nunca con la miopía sin tratamiento",
  "the likeliest state, {state}, is only {certainty} certain; {wanted} is asked for":
    "el estado más probable, {state}, tiene una certeza de solo {certainty}; se exige {wanted}",
  "{one} or {other} together: {certainty} certain": "{one} o {other}, en conjunto: certeza de {certainty}",
  "near normal|growth": "casi normal",
  "slowed growth|growth": "crecimiento frenado",
  "as untreated|growth": "como sin tratar",
  "faster|growth": "más rápido",
  "{why, select, ending {growth is ending} other {too early or too coarse to tell}}: natural and emmetropic growth lie only {gap} mm apart over these dates, less than the {detectable} mm that this instrument can tell":
    "{why, select, ending {el crecimiento está terminando} other {demasiado pronto o con demasiado poca precisión para decirlo}}: el crecimiento natural y el emetrópico distan solo {gap} mm entre estas fechas, menos que los {detectable} mm que este instrumento puede distinguir",
  "the lengths of {one} mm ({oneEye, select, right {right} other {left}}) and {other} mm ({otherEye, select, right {right} other {left}}) on {date} do not go with this child's other figures: check the entry, the eye, the child and the instrument":
    "las longitudes de {one} mm ({oneEye, select, right {derecho} other {izquierdo}}) y {other} mm ({otherEye, select, right {derecho} other {izquierdo}}) del {date} no concuerdan con las demás cifras de este paciente: compruebe el registro, el ojo, el paciente y el instrumento",
  "the {eye, select, right {right} other {left}} eye's {measure, select, length {length of {value} mm} other {refraction of {value} D}} on {date} does not go with this child's other figures: check the entry, the eye, the child and the instrument":
    "la {measure, select, length {longitud de {value} mm} other {refracción de {value} D}} del ojo {eye, select, right {derecho} other {izquierdo}} del {date} no concuerda con las demás cifras de este paciente: compruebe el registro, el ojo, el paciente y el instrumento",
  "under 1 %": "<1 %",
  "over 99 %": ">99 %",
  "over 1000 : 1": "más de 1000 : 1",
}
