import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const safety: Catalogue = {
  "child number": "número del niño",
  "name|column": "nombre",
  "opened|column": "abierto",
  "closed|column": "cerrado",
  "kind|column": "tipo",
  "what|column": "qué ocurrió",
  "seriousness|column": "gravedad",
  "relatedness|column": "relación causal",
  "outcome|column": "desenlace",
  "looked after by": "a cargo de",
  "treatment that day": "tratamiento ese día",
  "treatment since": "tratamiento desde",
  "strength, % w/v": "concentración, % p/v",
  "lot in use": "lote en uso",
  "pharmacy|column": "farmacia",
  "bottle opened": "frasco abierto",
  "bottle beyond use after": "último día de uso del frasco",
  "light sensitivity": "sensibilidad a la luz",
  "blurred near vision": "visión cercana borrosa",
  "blurred vision": "visión borrosa",
  "allergic conjunctivitis": "conjuntivitis alérgica",
  "irritation of the eye": "irritación ocular",
  headache: "dolor de cabeza",
  "{rate} % on {arm}": "{rate} % con {arm}",
  "{trial}: {name} in {rates}.": "{trial}: {name} en {rates}.",
  "{trial}: {name} in {rates} ({source}, {obtained}).": "{trial}: {name} en {rates} ({source}, {obtained}).",
  "The trials asked in different ways: rates compare only within one trial.":
    "Los ensayos preguntaron de maneras distintas: las tasas solo se comparan dentro de un mismo ensayo.",
  "{mean} mm on {arm}": "{mean} mm con {arm}",
  "{trial}: the photopic pupil widened by {means} on average ({source}, abstract).":
    "{trial}: la pupila fotópica se dilató {means} de media ({source}, resumen).",
  "{mean} D on {arm}": "{mean} D con {arm}",
  "{trial}: accommodation fell by {means} on average ({source}, abstract).":
    "{trial}: la acomodación disminuyó {means} de media ({source}, resumen).",
  placebo: "placebo",
  "{percent} %": "{percent} %",
  "vehicle|of a trial": "vehículo",
  "tapering {percent} %": "{percent} % en retirada gradual",
  "{trial}, {months, plural, one {# month} other {# months}}":
    "{trial}, {months, plural, one {# mes} other {# meses}}",
  "{trial}, {months} months (dosing)": "{trial}, {months} meses (con gotas)",
  "{trial}, year {year}": "{trial}, año {year}",
  "verified: product text of 1 % drops, excerpt": "verificado: ficha técnica de las gotas al 1 %, extracto",
  "narrow angle or shallow chamber": "ángulo estrecho o cámara poco profunda",
  "atropine is not given with a narrow angle or closed-angle glaucoma":
    "la atropina no se administra con ángulo estrecho ni con glaucoma de ángulo cerrado",
  "allergy to drops": "alergia a las gotas",
  "atropine is not given with an allergy to any ingredient of the bottle, preservative included":
    "la atropina no se administra con alergia a algún componente del frasco, incluido el conservante",
  "under 3 months of age": "menos de 3 meses de edad",
  "atropine is not used under 3 months of age": "la atropina no se usa antes de los 3 meses de edad",
  "verified: product text of 1 % drops, secondary":
    "verificado: ficha técnica de las gotas al 1 %, fuente secundaria",
  "near blur": "visión borrosa de cerca",
  stinging: "escozor",
  redness: "enrojecimiento",
  itching: "picor",
  "other|symptom": "otro síntoma",
  "{symptom} grade {grade} of 3 on {date}; before the drops, on {day}, grade {earlier}.":
    "{symptom}, grado {grade} de 3 el {date}; antes de las gotas, el {day}, grado {earlier}.",
  "{symptom} grade {grade} of 3 on {date}.": "{symptom}, grado {grade} de 3 el {date}.",
  "{eye, select, right {Right photopic pupil} other {Left photopic pupil}} {now} mm on {on}, {wider} mm wider than {before} mm on {day} before the drops. The limit of comfort taken is {limit} mm (one small study, n = 12, known from a news summary only; its 3 mm is a difference between the eyes after drops in one eye); two measurements of one pupil may differ by {retest} mm.":
    "{eye, select, right {Pupila fotópica derecha} other {Pupila fotópica izquierda}} de {now} mm el {on}, {wider} mm más ancha que los {before} mm del {day}, antes de las gotas. El límite de comodidad adoptado es de {limit} mm (un estudio pequeño, n = 12, conocido solo por un resumen de prensa; sus 3 mm son una diferencia entre los ojos tras poner gotas en uno solo); dos mediciones de una misma pupila pueden diferir en {retest} mm.",
  "It was not measured before the drops.": "No se midió antes de las gotas.",
  "It was {before} D on {day} before the drops, by the same method.":
    "Era de {before} D el {day}, antes de las gotas, con el mismo método.",
  "The one on {day} before the drops is not compared: the method is another or not stated.":
    "La del {day}, antes de las gotas, no se compara: el método es otro o no consta.",
  "{eye, select, right {Right amplitude of accommodation} other {Left amplitude of accommodation}} {now} D on {on}{method, select, push-up { by push-up} retinoscopy { by retinoscopy} other {, method not stated}}, below the {limit} D taken as the limit of comfort (one small study, n = 12, known from a news summary only).":
    "{eye, select, right {Amplitud de acomodación derecha} other {Amplitud de acomodación izquierda}} de {now} D el {on}{method, select, push-up { por acercamiento} retinoscopy { por retinoscopia} other {, método no indicado}}, por debajo de las {limit} D adoptadas como límite de comodidad (un estudio pequeño, n = 12, conocido solo por un resumen de prensa).",
  "{eye, select, right {Right near acuity} other {Left near acuity}} {now} logMAR on {on}, {worse} worse than {before} on {day} before the drops. A loss of {limit} or more is looked into (common practice, no source).":
    "{eye, select, right {Agudeza visual cercana derecha} other {Agudeza visual cercana izquierda}} de {now} logMAR el {on}, {worse} peor que {before} el {day}, antes de las gotas. Una pérdida de {limit} o más se estudia (práctica habitual, sin fuente).",
  "Pupil in daylight": "Pupila con luz de día",
  Accommodation: "Acomodación",
  "Near acuity": "Agudeza visual cercana",
  "Distance acuity": "Agudeza visual lejana",
  "Pressure in the eye": "Presión del ojo",
  "born {day}": "nacimiento: {day}",
  "{name}: yes on {on}, while {treatment} is in use. {says} ({grade}).":
    "{name}: sí el {on}, mientras se usa {treatment}. {says} ({grade}).",
  "{name}: yes on {on} ({note}), while {treatment} is in use. {says} ({grade}).":
    "{name}: sí el {on} ({note}), mientras se usa {treatment}. {says} ({grade}).",
  "{before}, {next}": "{before}, {next}",
  "A lower strength can be considered": "Puede considerarse una concentración menor",
  "The product text of 1 % drops asks for the lowest dose that achieves the aim in a child (CD-062).":
    "La ficha técnica de las gotas al 1 % pide en niños la dosis más baja que logre el objetivo (CD-062).",
  "A treatment without drops can be considered": "Puede considerarse un tratamiento sin gotas",
  "Expected share of growth withheld: {shares}.": "Parte del crecimiento que se espera frenar: {shares}.",
  "conflicting|evidence": "contradictoria",
  "weak|evidence": "débil",
  "one trial|evidence": "un solo ensayo",
  "good|evidence": "buena",
  "moderate|evidence": "moderada",
  "moderate, mostly East Asian|evidence": "moderada, sobre todo de Asia oriental",
  "moderate; not for routine use|evidence": "moderada; no para uso habitual",
  "{name}: {share} (SD {sd}, may be nil, evidence {confidence})":
    "{name}: {share} (DE {sd}, puede ser nula, evidencia {confidence})",
  "{name}: {share} (SD {sd}, evidence {confidence})": "{name}: {share} (DE {sd}, evidencia {confidence})",
  abstract: "resumen",
  "full text table 2": "texto completo, tabla 2",
  "full text table 3": "texto completo, tabla 3",
  "full-text excerpt": "extracto del texto completo",
  "full-text excerpt + secondary": "extracto del texto completo y fuente secundaria",
  "full-text excerpt (reaction list); common practice for the rest":
    "extracto del texto completo (lista de reacciones); lo demás, práctica habitual",
  "abstract + secondary": "resumen y fuente secundaria",
  "abstract + expert opinion + secondary": "resumen, opinión de expertos y fuente secundaria",
  "secondary (trial entry limit 0.2) + common practice for the rest":
    "fuente secundaria (límite de inclusión de un ensayo, 0,2); lo demás, práctica habitual",
  "Care on the same day": "Atención el mismo día",
  "A detachment, pigment in the front vitreous, bleeding, or a break with symptoms is an emergency.":
    "Un desprendimiento, pigmento en el vítreo anterior, una hemorragia o un desgarro con síntomas son una urgencia.",
  "An examination that is not complete is followed by a referral to someone who can complete it.":
    "Tras una exploración incompleta se deriva a quien pueda completarla.",
  "To stop the drops and to assess can be considered": "Puede considerarse suspender las gotas y evaluar",
  "The rule behind it: any effect outside the eye, stop and assess.":
    "La regla en que se basa: ante cualquier efecto fuera del ojo, suspender y evaluar.",
  "a loss of corrected acuity": "una pérdida de agudeza visual corregida",
  "raised pressure": "presión elevada",
  "To stop the drops for safety can be considered": "Puede considerarse suspender las gotas por seguridad",
  "The product text of 1 % drops names it a contraindication; stopping at once is common practice, no source.":
    "La ficha técnica de las gotas al 1 % lo señala como contraindicación; suspender de inmediato es práctica habitual, sin fuente.",
  "Tinted or photochromic lenses, a hat and sunglasses can be considered":
    "Pueden considerarse lentes tintadas o fotocromáticas, un sombrero y gafas de sol",
  "Of {children} children on {low} or {high} %, {share} % had light sensitivity; with photochromic spectacles symptoms were better in {better} % after 2 months. No control group ({source}, {obtained}).":
    "De {children} niños con {low} o {high} %, el {share} % tenía sensibilidad a la luz; con gafas fotocromáticas los síntomas mejoraron en el {better} % a los 2 meses. Sin grupo de control ({source}, {obtained}).",
  "An addition for reading can be considered": "Puede considerarse una adición para leer",
  "Expert opinion; no figure was read.": "Opinión de expertos; no se leyó ninguna cifra.",
  "allergy of the lid or the eye": "alergia del párpado o del ojo",
  "The duty names {reaction}. Of its source the list of reactions to 1 % drops was read; to stop is common practice, no source.":
    "La norma nombra: {reaction}. De su fuente se leyó la lista de reacciones a las gotas al 1 %; suspender es práctica habitual, sin fuente.",
  "A referral can be considered": "Puede considerarse una derivación",
  "The principle was read; the figure is the entry limit of a trial.":
    "Se leyó el principio; la cifra es el límite de inclusión de un ensayo.",
  "{duty}: no source was read": "{duty}: no se leyó ninguna fuente",
  "{duty}, verified: {obtained}": "{duty}, verificado: {obtained}",
  "{duty}, read in part: {obtained}": "{duty}, leído en parte: {obtained}",
  "sudden loss of vision": "pérdida súbita de visión",
  "a curtain over the sight": "una cortina sobre la vista",
  flashes: "destellos",
  floaters: "moscas volantes",
  "pain in the eye": "dolor en el ojo",
  "{signs}: told on {date}. Same-day care: the front vitreous and the dilated retina are looked at, or the child goes to someone who can. Nobody reassures without an examination.":
    "{signs}: referido el {date}. Atención el mismo día: se exploran el vítreo anterior y la retina con la pupila dilatada, o el niño acude a quien pueda hacerlo. Nadie tranquiliza sin haber explorado.",
  "{signs}: told on {date}. Noted: {notes}. Same-day care: the front vitreous and the dilated retina are looked at, or the child goes to someone who can. Nobody reassures without an examination.":
    "{signs}: referido el {date}. Nota: {notes}. Atención el mismo día: se exploran el vítreo anterior y la retina con la pupila dilatada, o el niño acude a quien pueda hacerlo. Nadie tranquiliza sin haber explorado.",
  "verified: product texts of 1 % drops, one an excerpt and one secondary":
    "verificado: fichas técnicas de las gotas al 1 %, una en extracto y otra por fuente secundaria",
  "raises the sensitivity to atropine; a specialist decides":
    "aumenta la sensibilidad a la atropina; decide un especialista",
  "was a reason to leave a child out of the trials; a specialist decides":
    "fue motivo para excluir a un niño de los ensayos; decide un especialista",
  "verified: registry record of one trial, secondary list of another":
    "verificado: registro de un ensayo, lista secundaria de otro",
  "Down syndrome": "síndrome de Down",
  "verified: product text of 1 % drops, secondary, and the exclusion list of a trial":
    "verificado: ficha técnica de las gotas al 1 %, fuente secundaria, y lista de exclusión de un ensayo",
  "spastic paralysis": "parálisis espástica",
  "brain injury": "lesión cerebral",
  "other disease of the eye, glaucoma included": "otra enfermedad del ojo, incluido el glaucoma",
  "keratoconus or another irregular cornea": "queratocono u otra córnea irregular",
  "earlier operation on an eye": "operación previa de un ojo",
  "signs of a wider condition": "signos de una afección más amplia",
  "heart condition": "enfermedad del corazón",
  "care with conditions of a fast heart rate; a reason is recorded":
    "cuidado con las afecciones con ritmo cardíaco rápido; se registra un motivo",
  "disease of the lungs or airways": "enfermedad de los pulmones o de las vías respiratorias",
  "asked before atropine is considered; it was a reason to leave a child out of the trials":
    "se pregunta antes de considerar la atropina; fue motivo para excluir a un niño de los ensayos",
  "verified: secondary list of a trial, excerpt of a product text, registry record":
    "verificado: lista secundaria de un ensayo, extracto de una ficha técnica, registro de un ensayo",
  "other medicines that act like atropine": "otros medicamentos que actúan como la atropina",
  "their effects add up": "sus efectos se suman",
  "other drops that widen the pupil": "otras gotas que dilatan la pupila",
  "severe reactions of children, some of them fatal, were reported, mostly with several such drops at once":
    "se han comunicado reacciones graves en niños, algunas mortales, la mayoría con varias de estas gotas a la vez",
  "verified: excerpt of a regulator's page": "verificado: extracto de la página de una autoridad reguladora",
  "raised pressure in the eye": "presión elevada en el ojo",
  "care with raised pressure; {limit} mmHg was the entry limit of a trial (secondary)":
    "cuidado con la presión elevada; {limit} mmHg fue el límite de inclusión de un ensayo (fuente secundaria)",
  "contact lenses": "lentes de contacto",
  "one product text of 1 % drops says no soft lenses during treatment; another, to wait 15 minutes after preserved drops":
    "una ficha técnica de las gotas al 1 % dice que no se usen lentes blandas durante el tratamiento; otra, que se esperen 15 minutos tras gotas con conservante",
  pregnancy: "embarazo",
  "talked through before drops are started": "se habla antes de empezar las gotas",
  "common practice, no source": "práctica habitual, sin fuente",
  "intraocular pressure": "presión intraocular",
  "21 mmHg or more, or more than 5 mmHg between the eyes":
    "21 mmHg o más, o más de 5 mmHg de diferencia entre los ojos",
  "21 mmHg is the entry limit of a trial, seen in a secondary list; 5 mmHg was read in an abstract":
    "21 mmHg es el límite de inclusión de un ensayo, visto en una lista secundaria; 5 mmHg se leyó en un resumen",
  "distance acuity": "agudeza visual lejana",
  "worse than 0.20 logMAR": "peor que 0,20 logMAR",
  "0.20 logMAR is the entry limit of a trial, seen in a secondary list; a figure for a loss was not read":
    "0,20 logMAR es el límite de inclusión de un ensayo, visto en una lista secundaria; no se leyó una cifra para una pérdida",
  "return to the values before the drops after a stop":
    "regreso, tras la suspensión, a los valores de antes de las gotas",
  "pupil within 0.25 mm, amplitude within 2.8 D by the same method, near acuity within 0.2 logMAR":
    "pupila a menos de 0,25 mm, amplitud a menos de 2,8 D con el mismo método, agudeza visual cercana a menos de 0,2 logMAR",
  "no source was read for this check; the figures are errors of measurement and common practice":
    "no se leyó ninguna fuente para esta comprobación; las cifras son errores de medición y práctica habitual",
  "{eye, select, right {right {mmHg} mmHg} other {left {mmHg} mmHg}}":
    "{eye, select, right {derecho {mmHg} mmHg} other {izquierdo {mmHg} mmHg}}",
  "Intraocular pressure on {on}: {figures}; {limit} mmHg and more is looked into (entry limit of a trial, secondary).":
    "Presión intraocular el {on}: {figures}; desde {limit} mmHg se estudia (límite de inclusión de un ensayo, fuente secundaria).",
  "Intraocular pressure on {on}: {figures}; {limit} mmHg and more is looked into (entry limit of a trial, secondary); the eyes differ by {apart} mmHg, and more than {most} is looked into (one study, n = 578, abstract).":
    "Presión intraocular el {on}: {figures}; desde {limit} mmHg se estudia (límite de inclusión de un ensayo, fuente secundaria); los ojos difieren en {apart} mmHg, y más de {most} se estudia (un estudio, n = 578, resumen).",
  "Intraocular pressure on {on}: {figures}; the eyes differ by {apart} mmHg, and more than {most} is looked into (one study, n = 578, abstract).":
    "Presión intraocular el {on}: {figures}; los ojos difieren en {apart} mmHg, y más de {most} se estudia (un estudio, n = 578, resumen).",
  "{eye, select, right {Right distance acuity} other {Left distance acuity}} {now} logMAR on {on}, worse than {limit} (entry limit of a trial, secondary), if it was taken with the best correction.":
    "{eye, select, right {Agudeza visual lejana derecha} other {Agudeza visual lejana izquierda}} de {now} logMAR el {on}, peor que {limit} (límite de inclusión de un ensayo, fuente secundaria), si se tomó con la mejor corrección.",
  "{eye, select, right {Right photopic pupil} other {Left photopic pupil}} {now} mm on {on}, after the stop, has not come back to photopic pupil {before} mm of {day} before the drops (further than the error of measurement; no source for this check).":
    "{eye, select, right {Pupila fotópica derecha} other {Pupila fotópica izquierda}} de {now} mm el {on}, tras la suspensión: no ha vuelto a los {before} mm del {day}, antes de las gotas (más que el error de medición; sin fuente para esta comprobación).",
  "{eye, select, right {Right amplitude of accommodation} other {Left amplitude of accommodation}} {now} D on {on}, after the stop, has not come back to amplitude of accommodation {before} D of {day} before the drops (further than the error of measurement; no source for this check).":
    "{eye, select, right {Amplitud de acomodación derecha} other {Amplitud de acomodación izquierda}} de {now} D el {on}, tras la suspensión: no ha vuelto a las {before} D del {day}, antes de las gotas (más que el error de medición; sin fuente para esta comprobación).",
  "{eye, select, right {Right near acuity} other {Left near acuity}} {now} logMAR on {on}, after the stop, has not come back to near acuity {before} logMAR of {day} before the drops (further than the error of measurement; no source for this check).":
    "{eye, select, right {Agudeza visual cercana derecha} other {Agudeza visual cercana izquierda}} de {now} logMAR el {on}, tras la suspensión: no ha vuelto a {before} logMAR del {day}, antes de las gotas (más que el error de medición; sin fuente para esta comprobación).",
  "Effects outside the eye told on {date}. The product texts of 1 % atropine name flushing, fever, fast pulse, dry mouth, constipation, trouble passing water, change of behaviour or sleep.":
    "Efectos fuera del ojo referidos el {date}. Las fichas técnicas de la atropina al 1 % nombran enrojecimiento de la piel, fiebre, pulso rápido, boca seca, estreñimiento, dificultad para orinar, cambios de conducta o del sueño.",
  "Effects outside the eye ({note}) told on {date}. The product texts of 1 % atropine name flushing, fever, fast pulse, dry mouth, constipation, trouble passing water, change of behaviour or sleep.":
    "Efectos fuera del ojo ({note}) referidos el {date}. Las fichas técnicas de la atropina al 1 % nombran enrojecimiento de la piel, fiebre, pulso rápido, boca seca, estreñimiento, dificultad para orinar, cambios de conducta o del sueño.",
}
