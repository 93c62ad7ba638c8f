import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const why: Catalogue = {
  "Why these figures?": "¿Por qué estas cifras?",
  Options: "Opciones",
  "none|options": "ninguna",
  "Growth expected in the next year without treatment":
    "Crecimiento esperado en el próximo año sin tratamiento",
  "{mm} mm": "{mm} mm",
  "Every option starts from the same study of this child: the lengths, the own pace and what was learned of treatments already given.":
    "Todas las opciones parten del mismo estudio de este paciente: las longitudes, su propio ritmo y lo aprendido de los tratamientos ya dados.",
  "Under an option everything in use ends today and the option begins; going on leaves the record as it is. From then on the eye grows its natural growth times the pace times (1 - share withheld x share of nights).":
    "Con una opción, todo lo que está en uso termina hoy y empieza la opción; seguir deja el registro como está. A partir de entonces el ojo crece su crecimiento natural por el ritmo por (1 - fracción retenida x proporción de noches).",
  "The share withheld is what this child's figures say of a treatment already given, otherwise what the trials report, with the doubt about the average and the spread between children.":
    "La fracción retenida es lo que dicen las cifras de este paciente de un tratamiento ya dado; si no, lo que comunican los ensayos, con la duda sobre la media y la dispersión entre niños.",
  "Growth withheld in the next year = pace x natural growth of that year x share withheld x share of nights; the interval holds the doubt about pace and share.":
    "Crecimiento retenido en el próximo año = ritmo x crecimiento natural de ese año x fracción retenida x proporción de noches; el intervalo contiene la duda sobre el ritmo y la fracción.",
  "Length at 18: the distribution of the length, wobble included; its middle and where 95 % of such children fall. The chance of 26 mm is the part of it beyond 26 mm, of the likelier eye.":
    "Longitud a los 18: la distribución de la longitud, incluida su irregularidad; su centro y dónde queda el 95 % de los niños así. La probabilidad de 26 mm es la parte que pasa de 26 mm, en el ojo con mayor probabilidad.",
  "The bracket of a chance: what the chance would be if pace and share were known and lay at the ends of their 95 % interval.":
    "El paréntesis de una probabilidad: cuál sería si el ritmo y la fracción se conocieran y estuvieran en los extremos de su intervalo del 95 %.",
  "Cost: the plan of the coming months by the fee schedule; cost of each {tenth} mm: that sum divided by the growth withheld over the same months.":
    "Coste: el plan de los próximos meses según las tarifas; coste de cada {tenth} mm: esa suma dividida por el crecimiento retenido en los mismos meses.",
  "Unwanted effects are the rows that were read at exactly this strength, each beside its own comparison; rates of two trials cannot be compared.":
    "Los efectos no deseados son las filas leídas exactamente a esta concentración, cada una junto a su propia comparación; las tasas de dos ensayos no pueden compararse.",
  "Withheld in the next year by {treatment}": "Retenido en el próximo año: {treatment}",
  "{eye, select, right {right} other {left}} {mm} mm ({method})":
    "{eye, select, right {derecho} other {izquierdo}} {mm} mm ({method})",
  "{eye, select, right {right} other {left}} {mm} mm ({readings, plural, one {# reading} other {# readings}}, {method})":
    "{eye, select, right {derecho} other {izquierdo}} {mm} mm ({readings, plural, one {# lectura} other {# lecturas}}, {method})",
  "Length on {date}": "Longitud el {date}",
  "optical-biometry|method": "biometría óptica",
  "ultrasound|method": "ultrasonidos",
  "method not stated": "método no indicado",
  "Refractions that count (before treatment)": "Refracciones que cuentan (antes del tratamiento)",
  "none|refractions": "ninguna",
  "from {from} to {to}": "del {from} al {to}",
  "from {from} to now": "desde el {from} hasta ahora",
  "before the measurements {before}, after them {after} (mean ± SD)":
    "antes de las mediciones {before}, después de ellas {after} (media ± DE)",
  "Why these duties?": "¿Por qué estas tareas?",
  "As of": "A fecha de",
  Protocol: "Protocolo",
  "Next duty": "Próxima tarea",
  "{title} ({id}), version {version}: {source}": "{title} ({id}), versión {version}: {source}",
  "Step {id}": "Paso {id}",
  "Each step is counted in calendar months from its anchor (start, restart, stop or last visit) and may be done within its window.":
    "Cada paso se cuenta en meses naturales desde su referencia (inicio, reinicio, suspensión o última visita) y puede hacerse dentro de su plazo.",
  "It is done when visits within its reach measured everything it asks for; open within its window, overdue once the window has closed, missed when measuring now would serve a later step.":
    "Está hecho cuando las visitas a su alcance midieron todo lo que pide; abierto dentro de su plazo, atrasado una vez cerrado el plazo, omitido cuando medir ahora serviría a un paso posterior.",
  "Consent and a bottle in date are owed while a treatment needs them.":
    "El consentimiento y un frasco vigente se deben mientras un tratamiento los necesite.",
  "Next is what has been overdue longest, else what has been open longest, else what comes first.":
    "La próxima es la que lleva más tiempo atrasada; si no, la que lleva más tiempo abierta; si no, la que llega primero.",
  "{step}: due {due}, from {opens} to {closes}, {state, select, done {done} open {open} overdue {overdue} upcoming {upcoming} other {missed}}":
    "{step}: para el {due}, del {opens} al {closes}, {state, select, done {hecha} open {abierta} overdue {atrasada} upcoming {próxima} other {omitida}}",
  "Counted as": "Se cuenta así",
  "by the first day of the treatment it covers, asked for consentLeadDays before; again at once when it was withdrawn or a material new wording came into force":
    "a más tardar el primer día del tratamiento que cubre, se pide consentLeadDays días antes; de nuevo, de inmediato, si se retiró o si entró en vigor un texto nuevo con cambios de fondo",
  "by the last day of the bottle in use, asked for bottleLeadDays before; without a beyond-use date a bottle lasts bottleDaysAfterOpening":
    "a más tardar el último día del frasco en uso, se pide bottleLeadDays días antes; sin fecha de caducidad tras abrir, un frasco dura bottleDaysAfterOpening días",
  "the start, before the first drop": "el inicio, antes de la primera gota",
  "the start": "el inicio",
  "the restart": "el reinicio",
  "the stop": "la suspensión",
  "the last visit on treatment": "la última visita con tratamiento",
  "the last visit off treatment": "la última visita sin tratamiento",
  "the change of strength": "el cambio de concentración",
  "{months, plural, one {# month} other {# months}} and {days, plural, one {# day} other {# days}} from {anchor}":
    "{months, plural, one {# mes} other {# meses}} y {days, plural, one {# día} other {# días}} desde {anchor}",
  "{months, plural, one {# month} other {# months}} from {anchor}":
    "{months, plural, one {# mes} other {# meses}} desde {anchor}",
  "{days, plural, one {# day} other {# days}} from {anchor}":
    "{days, plural, one {# día} other {# días}} desde {anchor}",
  "at {anchor}": "en {anchor}",
  "from {before, plural, one {# day} other {# days}} before to {after, plural, one {# day} other {# days}} after":
    "desde {before, plural, one {# día} other {# días}} antes hasta {after, plural, one {# día} other {# días}} después",
  "A gap in treatment of up to this many days is a pause; a longer one is a stop.":
    "Una interrupción del tratamiento de hasta estos días es una pausa; una más larga es una suspensión.",
  "A consent is asked for this many days before the treatment begins.":
    "El consentimiento se pide estos días antes de que empiece el tratamiento.",
  "The next bottle is asked for this many days before the last one ends.":
    "El próximo frasco se pide estos días antes de que termine el último.",
  "Days of use after opening where the pharmacy gave no beyond-use date.":
    "Días de uso tras abrir cuando la farmacia no dio fecha de caducidad.",
  "Why this answer about the treatment?": "¿Por qué esta respuesta sobre el tratamiento?",
  "Likelihood ratio": "Razón de verosimilitud",
  "Said to be slowed at": "Se dice que frena con",
  "{odds} or more for the treatment": "{odds} o más a favor del tratamiento",
  "Said not to be slowed at": "Se dice que no frena con",
  "{odds} or more against it": "{odds} o más en contra",
  "Two accounts of the same measurements are compared: in one the treatment withholds what the trials report, in the other it withholds nothing. Each allows for the child's own pace, the irregularity of growth, the season and the noise of the instrument.":
    "Se comparan dos explicaciones de las mismas mediciones: en una el tratamiento retiene lo que comunican los ensayos, en la otra no retiene nada. Ambas tienen en cuenta el ritmo propio del paciente, la irregularidad del crecimiento, la estación del año y el ruido del instrumento.",
  "The likelihood ratio says how many times likelier the measurements are under the first account than under the second (Wald's sequential test).":
    "La razón de verosimilitud dice cuántas veces más probables son las mediciones según la primera explicación que según la segunda (prueba secuencial de Wald).",
  "The limits follow from the accepted error rates, settings of the practice: alpha {alpha} to call a treatment effective that does nothing, beta {beta} to call one useless that works. The upper limit is (1 - beta) / alpha, the lower beta / (1 - alpha).":
    "Los límites se derivan de las tasas de error aceptadas, ajustes de la consulta: alfa {alpha} para llamar eficaz a un tratamiento que no hace nada, beta {beta} para llamar inútil a uno que funciona. El límite superior es (1 - beta) / alfa; el inferior, beta / (1 - alfa).",
  "Between the limits nothing is claimed. A lean is only mentioned beyond 3 : 1 (Kass and Raftery 1995).":
    "Entre los límites no se afirma nada. Una inclinación solo se menciona a partir de 3 : 1 (Kass y Raftery 1995).",
  "The chances are computed from the same model: how often the ratio would pass a limit by each planned review, if the treatment works and if it does not.":
    "Las probabilidades se calculan con el mismo modelo: con qué frecuencia la razón pasaría un límite en cada revisión prevista, si el tratamiento funciona y si no.",
  "Once treatment has begun refraction is shown but does not count; under atropine above all, since the drug changes refraction more than length.":
    "Una vez empezado el tratamiento, la refracción se muestra pero no cuenta; sobre todo con atropina, porque el fármaco cambia más la refracción que la longitud.",
  "none|ratio": "ninguna",
  "{odds} {side, select, for {for the treatment} other {against the treatment}}":
    "{odds} {side, select, for {a favor del tratamiento} other {en contra del tratamiento}}",
  "Why this forecast?": "¿Por qué este pronóstico?",
  "To age": "Hasta la edad de",
  "{years, plural, one {# year} other {# years}}": "{years, plural, one {# año} other {# años}}",
  "Chance of 26 mm by 18": "Probabilidad de 26 mm a los 18",
  "Chance of -6 D by 18": "Probabilidad de -6 D a los 18",
  "The eye is carried forward from its last length along the natural growth of an untreated myope of this age, sex and population, with its season, times the child's own pace.":
    "El ojo se proyecta desde su última longitud siguiendo el crecimiento natural de un miope sin tratamiento de esta edad, sexo y población, con su estación del año, por el ritmo propio del paciente.",
  "Untreated: no treatment from this day on. As treated: the treatment of this day goes on and withholds its share of natural growth.":
    "Sin tratamiento: ningún tratamiento a partir de este día. Con el tratamiento: el tratamiento de este día continúa y retiene su fracción del crecimiento natural.",
  "Pace and share withheld are what all of the child's measurements say, not an average alone. The irregularity of growth is added for every year ahead.":
    "El ritmo y la fracción retenida son lo que dicen todas las mediciones del paciente, no solo una media. La irregularidad del crecimiento se añade por cada año venidero.",
  "Each line of the fan is the length that the stated share of such children stays below.":
    "Cada línea del abanico es la longitud por debajo de la cual queda la proporción indicada de niños así.",
  "The chance of 26 mm is that of the eye more likely to reach it. The chance of -6 D starts from the last refraction of the more myopic eye, with dioptres per mm of growth.":
    "La probabilidad de 26 mm es la del ojo que más probablemente los alcance. La probabilidad de -6 D parte de la última refracción del ojo más miope, con las dioptrías por mm de crecimiento.",
  "{untreated} untreated, {asTreated} as treated now":
    "{untreated} sin tratamiento, {asTreated} con el tratamiento actual",
  "Why this growth state?": "¿Por qué este estado del crecimiento?",
  "Judged over": "Periodo evaluado",
  "no interval yet": "aún no hay intervalo",
  "{low} to {high} mm per year": "{low} a {high} mm por año",
  "Natural growth, same dates": "Crecimiento natural, mismas fechas",
  "Emmetropic growth, same dates": "Crecimiento emetrópico, mismas fechas",
  "Setting factor of the practice": "Factor de entorno de la consulta",
  "Growth is not the difference of two readings: it is what all lengths of both eyes, and refractions from before treatment, say together once the noise of the instrument, the season, the child's own pace and its irregularity are allowed for.":
    "El crecimiento no es la diferencia de dos lecturas: es lo que dicen en conjunto todas las longitudes de ambos ojos, y las refracciones anteriores al tratamiento, una vez considerados el ruido del instrumento, la estación del año, el ritmo propio del paciente y su irregularidad.",
  "It is placed between two published lines over the same dates: f is the growth less emmetropic growth, divided by natural growth less emmetropic growth; 0 is an eye without myopia, 1 an untreated myopic eye.":
    "Se sitúa entre dos líneas publicadas en las mismas fechas: f es el crecimiento menos el emetrópico, dividido por el natural menos el emetrópico; 0 es un ojo sin miopía, 1 un ojo miope sin tratamiento.",
  "Near-normal is f below {nearNormal}, slowed growth below {slowed}, as untreated below {asUntreated}, faster above. These cuts are this program's own and a setting of the practice.":
    "Casi normal es f por debajo de {nearNormal}; crecimiento frenado, por debajo de {slowed}; como sin tratar, por debajo de {asUntreated}; más rápido, por encima. Estos cortes son propios de este programa y un ajuste de la consulta.",
  "A state is said when its probability reaches {certainty}; otherwise, or when the two lines are closer than the detectable change, the growth is called unclear.":
    "Un estado se afirma cuando su probabilidad alcanza {certainty}; si no, o cuando las dos líneas están más cerca que el cambio detectable, el crecimiento se llama incierto.",
  "Probability: near normal": "Probabilidad: casi normal",
  "Probability: slowed growth": "Probabilidad: crecimiento frenado",
  "Probability: as untreated": "Probabilidad: como sin tratar",
  "Probability: faster": "Probabilidad: más rápido",
  "{derivation} Confidence: {confidence}.{nil, select, yes { The effect may be nil.} other {}}":
    "{derivation} Confianza: {confidence}.{nil, select, yes { El efecto puede ser nulo.} other {}}",
  "version {method}, parameters {parameters}": "versión {method}, parámetros {parameters}",
  "Why these steps?": "¿Por qué estos pasos?",
  "Strength ordered": "Concentración pedida",
  "Strength of the stock": "Concentración de partida",
  "{bottles} of {volume} mL": "{bottles} de {volume} mL",
  "Smallest volume measured": "Volumen mínimo que se mide",
  "Tolerance of the stock": "Tolerancia de la solución de partida",
  "not stated|tolerance": "no consta",
  "{percent} % of its label": "{percent} % de lo rotulado",
  "Nights to be covered": "Noches por cubrir",
  "Strength times volume is the same before and after diluting (C1 V1 = C2 V2).":
    "La concentración por el volumen es igual antes y después de diluir (C1 V1 = C2 V2).",
  "Where one transfer would be smaller than the measuring device allows, an intermediate strength is made first.":
    "Cuando un trasvase sería menor de lo que permite el instrumento de medida, primero se prepara una concentración intermedia.",
  "Every measured volume may be off by the tolerance of its device; the errors are independent, each weighs with the diluent's share of its step, and with the stock's own they add as squares to the interval of the final strength.":
    "Cada volumen medido puede desviarse según la tolerancia de su instrumento; los errores son independientes, cada uno pesa según la parte de diluyente de su paso y, junto con el de la solución de partida, se suman como cuadrados en el intervalo de la concentración final.",
  "The check follows the milligrams that each step carries over, another way to the same strength.":
    "La comprobación sigue los miligramos que pasan en cada paso, otro camino hacia la misma concentración.",
  "Limits: {low} to {high} % of the label (evidence {source}).":
    "Límites: {low} a {high} % de lo rotulado (evidencia {source}).",
  "A bottle serves until its drops are used up or its days after opening are over, whichever comes first; the bottles are the nights divided by that, rounded up.":
    "Un frasco sirve hasta que se acaban sus gotas o sus días tras abrir, lo que ocurra antes; los frascos son las noches divididas por eso, redondeadas hacia arriba.",
  "by device, below": "según el instrumento, abajo",
  "{volume} mL ({source})": "{volume} mL ({source})",
  "{note} Device: {name}.": "{note} Instrumento: {name}.",
  "What is measured at the least.": "Lo mínimo que se mide.",
  "95 % limit of the error of one measured volume, as a share of it.":
    "Límite del 95 % del error de un volumen medido, como fracción de este.",
  "Volumes are given to this graduation.": "Los volúmenes se dan con esta graduación.",
  "The largest drop of 19 bottles, 63.4 microlitres.": "La gota más grande de 19 frascos, 63,4 microlitros.",
  "The smallest drops of a second study.": "Las gotas más pequeñas de un segundo estudio.",
  "{note} Other eye drops, read in the abstract; none was compounded atropine.":
    "{note} Otros colirios, leído en el resumen; ninguno era atropina de formulación magistral.",
  "Why this position among peers?": "¿Por qué esta posición entre sus iguales?",
  "{sex, select, female {female} other {male}}": "{sex, select, female {femenino} other {masculino}}",
  "Reference|growth table": "Referencia",
  "none fits": "ninguna corresponde",
  "The length is compared with children of the same age, and of the same sex where the reference has the sexes apart.":
    "La longitud se compara con niños de la misma edad, y del mismo sexo cuando la referencia separa los sexos.",
  "Outside the ages and sexes of a reference, when it is of grade D, or when none is of the child's population, no position is given: a child is never placed on the table of another population in silence.":
    "Fuera de las edades y los sexos de una referencia, cuando es de grado D o cuando ninguna es de la población del paciente, no se da posición: nunca se sitúa en silencio a un paciente en la tabla de otra población.",
  "A reference is not a target: a myopic eye on the 50th centile is still myopic, and children on treatment are not the reference population.":
    "Una referencia no es un objetivo: un ojo miope en el percentil 50 sigue siendo miope, y los niños en tratamiento no son la población de referencia.",
  "Reference {id}, grade {grade} ({words}): {population}; n {n}; {instrument}. {note}":
    "Referencia {id}, grado {grade} ({words}): {population}; n {n}; {instrument}. {note}",
  "{eye, select, right {right eye} other {left eye}} on {date}":
    "{eye, select, right {ojo derecho} other {ojo izquierdo}} el {date}",
  "Length, {what}": "Longitud, {what}",
  "Age, {what}": "Edad, {what}",
  "{age} years": "{age} años",
  "Position, {what}": "Posición, {what}",
  "centile {number}": "percentil {number}",
  "east-asian|ancestry": "Asia oriental",
  "european|ancestry": "europea",
  "south-asian|ancestry": "Asia meridional",
  "african|ancestry": "africana",
  "other|ancestry": "otra",
  "unstated|ancestry": "no consta",
  "not given|ancestry": "no indicada",
  "With L, M and S of the age and sex, z is ((length / M) to the power L, less 1) divided by L times S; the centile is the normal share below z.":
    "Con L, M y S de la edad y el sexo, z es ((longitud / M) elevado a L, menos 1) dividido por L por S; el percentil es la proporción normal por debajo de z.",
  "With mean and SD of the age and sex, z is the length less the mean, divided by the SD; the centile is the normal share below z.":
    "Con la media y la DE de la edad y el sexo, z es la longitud menos la media, dividida por la DE; el percentil es la proporción normal por debajo de z.",
  "The z is interpolated between the printed centiles, each at its own z; beyond the outermost centile only that is said.":
    "La z se interpola entre los percentiles publicados, cada uno en su propia z; más allá del percentil extremo solo se dice eso.",
  "The z is the distance from the median, divided by the SD of that side as its outer centile gives it.":
    "La z es la distancia a la mediana, dividida por la DE de ese lado según su percentil extremo.",
  "Why this refraction?": "¿Por qué esta refracción?",
  "Reading {number}": "Lectura {number}",
  "Vertex distance": "Distancia al vértice",
  "none given, powers left as read": "no indicada, potencias como se leyeron",
  "Each principal power F is taken to the cornea as F / (1 - d F), with the vertex distance d in metres.":
    "Cada potencia principal F se lleva a la córnea como F / (1 - d F), con la distancia al vértice d en metros.",
  "M is the sphere and half the cylinder; J0 is minus half the cylinder times the cosine of twice the axis; J45 is minus half the cylinder times the sine of twice the axis.":
    "M es la esfera más la mitad del cilindro; J0 es menos la mitad del cilindro por el coseno del doble del eje; J45 es menos la mitad del cilindro por el seno del doble del eje.",
  "Several readings are averaged as vectors, so that axes of 179 and 1 average to 180 and never to 90.":
    "Varias lecturas se promedian como vectores, de modo que los ejes 179 y 1 promedian 180 y nunca 90.",
  "The spherical equivalent is M. The printed prescription is the mean to the nearest quarter dioptre.":
    "El equivalente esférico es M. La refracción escrita es la media al cuarto de dioptría más próximo.",
}
