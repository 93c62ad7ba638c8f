import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const protocol: Catalogue = {
  "first bottle": "primer frasco",
  "record the first bottle of {drops}": "registrar el primer frasco de {drops}",
  "next bottle": "próximo frasco",
  "a bottle of {drops}; the last one was good until {last}":
    "un frasco de {drops}; el último servía hasta el {last}",
  "a bottle of {drops}; the last one is good until {last}":
    "un frasco de {drops}; el último sirve hasta el {last}",
  "a bottle of {drops} in date": "un frasco de {drops} sin caducar",
  "consent to {treatment}": "consentimiento para {treatment}",
  "a consent that covers {treatment}": "un consentimiento que abarque {treatment}",
  "consent to {treatment} again": "nuevo consentimiento para {treatment}",
  "consent is dated {late}, after the start on {from}":
    "el consentimiento es del {late}, posterior al inicio el {from}",
  "whether to stop or to go on, recorded as a decision, an end of the treatment or a new treatment entry":
    "si se interrumpe o se continúa, registrado como decisión, fin del tratamiento o nuevo tratamiento",
  "whether treatment is taken up again or not, recorded as a decision":
    "si se retoma el tratamiento o no, registrado como decisión",
  "whether to give fewer nights from here on, recorded as a decision or a new treatment entry with its nights":
    "si en adelante se dan menos noches, registrado como decisión o como nuevo tratamiento con sus noches",
  "decision to stop after 12 more months": "decisión de interrumpir tras 12 meses más",
  "decision on 12 more months": "decisión sobre 12 meses más",
  "decision to stop at {months} months": "decisión de interrumpir a los {months} meses",
  "step down to {nights, plural, one {# night} other {# nights}} a week":
    "reducir a {nights, plural, one {# noche} other {# noches}} por semana",
  "common practice, no source; one night a week fewer each month was not shown to help after 0.01 % (one retrospective study)":
    "práctica habitual, sin fuente; no se demostró que sirva una noche menos por semana cada mes tras 0,01 % (un estudio retrospectivo)",
  "mesopic pupil": "pupila mesópica",
  "amplitude of accommodation": "amplitud de acomodación",
  "corneal radius": "radio de la córnea",
  "refraction with cycloplegia": "refracción cicloplégica",
  "Examine the fundus again while the programme goes on.":
    "Volver a explorar el fondo de ojo mientras continúa el programa.",
  "Look at how the drops are given before doubting their effect.":
    "Observar cómo se ponen las gotas antes de dudar de su efecto.",
  "Look whether pupil, accommodation and near acuity came back after the stop.":
    "Comprobar si la pupila, la acomodación y la agudeza visual cercana se recuperaron tras interrumpir.",
  "{name} ({eye, select, right {right eye} other {left eye}})":
    "{name} ({eye, select, right {ojo derecho} other {ojo izquierdo}})",
  "{path} must be {allowed}; it is {value}": "{path} debe ser {allowed}; es {value}",
  "protocol|file": "el protocolo",
  "a JSON object": "un objeto JSON",
  "a list of at least one step": "una lista de al menos un paso",
  "at least one measure for an examination": "al menos una medida en un examen",
  "one of {list}": "uno de {list}",
  "empty for a decision": "una lista vacía en una decisión",
  "false for a decision": "false en una decisión",
  "the nights of the week from then on": "las noches por semana a partir de entonces",
  "absent, except for a step down": "algo ausente, salvo en una reducción gradual",
  "start or restart for a step down": "start o restart en una reducción gradual",
  "0 for a step before the start": "0 en un paso anterior al inicio",
  "0 or absent for a step before the start": "0 o algo ausente en un paso anterior al inicio",
  "at least 1 for a step counted from the last visit": "al menos 1 en un paso contado desde la última visita",
  "start, restart or stop for a decision": "start, restart o stop en una decisión",
  "absent; known are {names}": "algo ausente; los campos conocidos son {names}",
  "a text that is not empty": "un texto que no esté vacío",
  "a whole number of days from 0 to {most}": "un número entero de días de 0 a {most}",
  "a list of any of {list}": "una lista con cualquiera de {list}",
  "{allowed}, or absent": "{allowed}, o estar ausente",
  "a whole number of months from 0 to {most}": "un número entero de meses de 0 a {most}",
  "true or false": "true o false",
  "a list of at least one of {list}": "una lista con al menos uno de {list}",
  "a whole number of nights from 1 to 6": "un número entero de noches de 1 a 6",
  "missing|value": "falta",
  "An unlikely figure was measured again, and it stands?":
    "¿Se volvió a medir una cifra improbable y se confirma?",
  "which, by whom": "cuál, por quién",
  "Squint, poor stereopsis or poor focus at near?": "¿Estrabismo, mala estereopsis o mal enfoque de cerca?",
  "cover test far and near, stereopsis, lag":
    "cover test de lejos y de cerca, estereopsis, retraso acomodativo",
  "Allergy, conjunctivitis or keratitis of lids or surface?":
    "¿Alergia, conjuntivitis o queratitis de párpados o superficie?",
  "what, how severe": "qué, con qué gravedad",
  "Sign of keratoconus or another irregular cornea?": "¿Signos de queratocono u otra córnea irregular?",
  "what was seen": "qué se vio",
  "Narrow angle or shallow chamber?": "¿Ángulo estrecho o cámara poco profunda?",
  "how it was judged": "cómo se valoró",
  "Other drops that widen the pupil within the last 24 hours?":
    "¿Otras gotas que dilatan la pupila en las últimas 24 horas?",
  "which, when": "cuáles, cuándo",
  "Did the drops have their time before the reading?": "¿Se dio a las gotas su tiempo antes de la lectura?",
  "minutes from first drop to reading": "minutos de la primera gota a la lectura",
  "agent, strength, drops, times": "fármaco, concentración, gotas, horas",
  "Are the spectacles right for today’s refraction?": "¿Sirven las gafas para la refracción de hoy?",
  "Fundus examined through a wide pupil?": "¿Se exploró el fondo de ojo con la pupila dilatada?",
  "category and extra signs of myopic change, each eye":
    "categoría y signos añadidos de cambio miópico, en cada ojo",
  "Any finding in the fundus, disc or macula?": "¿Algún hallazgo en el fondo de ojo, la papila o la mácula?",
  "what, which eye": "qué, en qué ojo",
  "Advised on time outdoors?": "¿Se aconsejó sobre el tiempo al aire libre?",
  "Advised on breaks and distance at near work?":
    "¿Se aconsejó sobre pausas y distancia en el trabajo de cerca?",
  "Explained the long-term risk, with figures?": "¿Se explicó el riesgo a largo plazo, con cifras?",
  "Shown how to give the drops at bedtime?": "¿Se mostró cómo poner las gotas al acostarse?",
  "Told: out of children’s reach, when to discard, whom to call if swallowed?":
    "¿Se dijo: fuera del alcance de los niños, cuándo desechar, a quién llamar si se tragan?",
  "Warned of glare and near blur at sport, cycling and school?":
    "¿Se advirtió del deslumbramiento y la visión borrosa de cerca en el deporte, la bicicleta y la escuela?",
  "Advised on hat and sunglasses?": "¿Se aconsejó sobre sombrero y gafas de sol?",
  "Told what to do in fever or great heat?": "¿Se dijo qué hacer con fiebre o mucho calor?",
  "Told how to report an unwanted effect, and to whom?":
    "¿Se dijo cómo notificar un efecto no deseado, y a quién?",
  "Given the warning signs of the retina in writing?":
    "¿Se entregaron por escrito los signos de alarma de la retina?",
  "Agreed on checks after the programme ends?": "¿Se acordaron controles para cuando termine el programa?",
  "Plain report given to the family?": "¿Se dio a la familia un informe sencillo?",
  "Has your child a heart condition, or a heart that races?":
    "¿Tiene su hijo o hija alguna enfermedad del corazón, o palpitaciones?",
  "which one": "cuál",
  "Has your child a disease of the lungs or airways that needs care?":
    "¿Tiene su hijo o hija alguna enfermedad de los pulmones o las vías respiratorias que requiera atención?",
  "Does your child take a medicine that acts like atropine?":
    "¿Toma su hijo o hija algún medicamento que actúe como la atropina?",
  "every medicine taken": "todos los medicamentos que toma",
  "Did your child ever react badly to eye drops, their preservative or a local anaesthetic?":
    "¿Ha reaccionado mal alguna vez su hijo o hija a un colirio, a su conservante o a un anestésico local?",
  "to what, how, when": "a qué, cómo, cuándo",
  "Has your child Down syndrome?": "¿Tiene su hijo o hija síndrome de Down?",
  "Has your child a spastic paralysis?": "¿Tiene su hijo o hija una parálisis espástica?",
  "Has your child had an injury of the brain?": "¿Ha tenido su hijo o hija una lesión cerebral?",
  "which one, when": "cuál, cuándo",
  "Could there be a pregnancy?": "¿Podría haber un embarazo?",
  "Is there another eye disease, such as one of the retina, or glaucoma?":
    "¿Hay otra enfermedad de los ojos, por ejemplo de la retina, o glaucoma?",
  "Was an eye ever operated on?": "¿Se ha operado alguna vez un ojo?",
  "what, when": "qué, cuándo",
  "Was your child born early?": "¿Nació su hijo o hija antes de tiempo?",
  "weeks at birth": "semanas al nacer",
  "Are there joint, bone, hearing, palate or developmental problems?":
    "¿Hay problemas de articulaciones, huesos, audición, paladar o desarrollo?",
  "which ones": "cuáles",
  "Does your child wear contact lenses?": "¿Usa su hijo o hija lentes de contacto?",
  "soft or rigid, worn when": "blandas o rígidas, cuándo las usa",
  "Have both parents been asked about their own myopia?":
    "¿Se ha preguntado a ambos padres por su propia miopía?",
  "Were earlier prescriptions, lengths and treatments asked for and entered?":
    "¿Se pidieron y registraron graduaciones, longitudes y tratamientos anteriores?",
  "New flashes of light?": "¿Destellos de luz nuevos?",
  "since when": "desde cuándo",
  "New floating spots?": "¿Moscas volantes nuevas?",
  curtain: "cortina sobre la vista",
  "A curtain or shadow over part of the sight?": "¿Una cortina o sombra sobre parte de la vista?",
  "Pain in an eye, or a painful red eye?": "¿Dolor en un ojo, o un ojo rojo y doloroso?",
  "A sudden loss of vision?": "¿Una pérdida repentina de visión?",
  "Flushing, fever, a racing heart, dry mouth, constipation, trouble passing water, changed behaviour or sleep?":
    "¿Enrojecimiento de la piel, fiebre, palpitaciones, boca seca, estreñimiento, dificultad para orinar, cambios de conducta o de sueño?",
  "which, since when": "cuáles, desde cuándo",
  "Fever, or days of great heat, while on the drops?":
    "¿Fiebre, o días de mucho calor, mientras usaba las gotas?",
  "when, what was done": "cuándo, qué se hizo",
  "How many drops are missed?": "¿Cuántas gotas se omiten?",
  "nights a week": "noches por semana",
  "Was it shown how the drops are given at home?": "¿Se mostró cómo se ponen las gotas en casa?",
  "Was the family asked in a standard way how the child lives with the treatment?":
    "¿Se preguntó a la familia de forma estandarizada cómo vive el niño con el tratamiento?",
  "form used, score": "cuestionario usado, puntuación",
  "How long outdoors by day, on average?": "¿Cuánto tiempo al aire libre de día, en promedio?",
  "hours a day": "horas al día",
  "How long at page or screen held close, outside school?":
    "¿Cuánto tiempo con libros o pantallas de cerca, fuera de la escuela?",
  "How far away is the page or screen held?": "¿A qué distancia se sostiene el libro o la pantalla?",
  cm: "cm",
  "Are there breaks from near work?": "¿Hay pausas en el trabajo de cerca?",
  "minutes between breaks": "minutos entre pausas",
}
