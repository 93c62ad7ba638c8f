import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const consent: Catalogue = {
  atropine: "atropina",
  "defocus spectacles": "gafas con desenfoque periférico",
  "lenslet spectacles": "gafas con microlentes",
  "dual-focus lenses": "lentes de contacto de doble foco",
  "multifocal lenses": "lentes de contacto multifocales",
  orthokeratology: "ortoqueratología",
  "no treatment": "ningún tratamiento",
  "{name} {percent} %": "{name} al {percent} %",
  "{treatment}, {eye, select, right {right eye} other {left eye}}":
    "{treatment}, {eye, select, right {ojo derecho} other {ojo izquierdo}}",
  "{treatment}, {nights, plural, one {# night} other {# nights}} a week":
    "{treatment}, {nights, plural, one {# noche} other {# noches}} por semana",
  "{treatment}, {eye, select, right {right eye} other {left eye}}, {nights, plural, one {# night} other {# nights}} a week":
    "{treatment}, {eye, select, right {ojo derecho} other {ojo izquierdo}}, {nights, plural, one {# noche} other {# noches}} por semana",
  "For this treatment no figures of what follows a stop were read.":
    "De este tratamiento no se leyeron cifras de lo que sigue a su interrupción.",
  "Within {months} months after stopping, {percent} % of children became more short-sighted by half a dioptre (0.5 D) or more.":
    "En los {months} meses después de dejarlo, la miopía del {percent} % de los niños aumentó media dioptría (0,5 D) o más.",
  "In the two years after stopping, {percent} % of children became more short-sighted by half a dioptre (0.5 D) or more within a year, the sign to treat again.":
    "En los dos años después de dejarlo, la miopía del {percent} % de los niños aumentó media dioptría (0,5 D) o más en un año, la señal para volver a tratar.",
  "In the {months} months after stopping eyes grew {grownMm} mm.":
    "En los {months} meses después de dejarlo, los ojos crecieron {grownMm} mm.",
  "In the {months} months after stopping eyes grew {grownMm} mm, {group, select, continued {eyes of children who went on} other {eyes that never had the drug}} {otherMm} mm.":
    "En los {months} meses después de dejarlo, los ojos crecieron {grownMm} mm; {group, select, continued {los de los niños que siguieron con el tratamiento} other {los que nunca recibieron el medicamento}}, {otherMm} mm.",
  "In the {months} months after stopping eyes grew {side, select, more {{differenceMm} mm more} other {{differenceMm} mm less}} than eyes that never had the drug{clear, select, no {, too little to be told from no difference} other {}}.":
    "En los {months} meses después de dejarlo, los ojos crecieron {side, select, more {{differenceMm} mm más} other {{differenceMm} mm menos}} que los que nunca recibieron el medicamento{clear, select, no {, demasiado poco para distinguirlo de ninguna diferencia} other {}}.",
  "In the {months} months after stopping eyes became {dioptres} D more short-sighted, eyes that never had the drug {control} D.":
    "En los {months} meses después de dejarlo, la miopía aumentó {dioptres} D; en los ojos que nunca recibieron el medicamento, {control} D.",
  "A review of studies of stopping found that what follows differs from study to study; what returns fades with time.":
    "Una revisión de estudios sobre la interrupción encontró que lo que sigue varía de un estudio a otro; lo que vuelve se atenúa con el tiempo.",
  "A review of studies of stopping found a strong return of growth; what returns fades with time.":
    "Una revisión de estudios sobre la interrupción encontró que el crecimiento vuelve con fuerza; lo que vuelve se atenúa con el tiempo.",
  "A review of studies of stopping found a weak return of growth; what returns fades with time.":
    "Una revisión de estudios sobre la interrupción encontró que el crecimiento vuelve con poca fuerza; lo que vuelve se atenúa con el tiempo.",
  "A review of studies of stopping found a weak return of growth for soft lenses of this sort; what returns fades with time.":
    "Una revisión de estudios sobre la interrupción encontró que, con lentes blandas de este tipo, el crecimiento vuelve con poca fuerza; lo que vuelve se atenúa con el tiempo.",
  "In the year after stopping eyes grew {extra} mm more than expected ({low} to {high} mm).":
    "En el año después de dejarlo, los ojos crecieron {extra} mm más de lo esperado (de {low} a {high} mm).",
  "In a trial over {months} months eyes on {percent} % drops grew {treated} mm on average, eyes on drops without the drug {control} mm: {side, select, more {{difference} mm more} other {a difference of {difference} mm}}.":
    "En un ensayo de {months} meses, los ojos con gotas al {percent} % crecieron {treated} mm de promedio; los ojos con gotas sin el medicamento, {control} mm: {side, select, more {{difference} mm más} other {una diferencia de {difference} mm}}.",
  "In a trial over {months} months eyes with {treatment} grew {treated} mm on average, eyes with ordinary glasses or lenses {control} mm: {side, select, more {{difference} mm more} other {a difference of {difference} mm}}.":
    "En un ensayo de {months} meses, los ojos con {treatment} crecieron {treated} mm de promedio; los ojos con gafas o lentes de contacto corrientes, {control} mm: {side, select, more {{difference} mm más} other {una diferencia de {difference} mm}}.",
  "{treatment}: {treated} mm of growth against {control} mm in the group without, over {months} months in one trial.":
    "{treatment}: {treated} mm de crecimiento frente a {control} mm en el grupo sin este tratamiento, a lo largo de {months} meses en un ensayo.",
  "A joint evaluation of many trials of different length puts the difference at {difference} mm; it may be anything from {least} to {most} mm.":
    "Una evaluación conjunta de muchos ensayos de distinta duración sitúa la diferencia en {difference} mm; puede ser cualquier valor entre {least} y {most} mm.",
  "For this strength the trials give no figure; what was found at other strengths may not hold for it.":
    "Para esta concentración los ensayos no dan ninguna cifra; lo que se encontró con otras concentraciones puede no valer para ella.",
  "All in all we reckon that {mean} % of the growth is held back on average; that average may lie anywhere from {low} to {high} %. How good the evidence is: {confidence}.":
    "En conjunto calculamos que de promedio se frena el {mean} % del crecimiento; ese promedio puede estar en cualquier punto entre el {low} y el {high} %. Solidez de las pruebas: {confidence}.",
  "At this strength the effect is small and may be nothing at all: the trials disagree.":
    "Con esta concentración el efecto es pequeño y puede que no exista: los ensayos no coinciden.",
  "the trials contradict each other": "los ensayos se contradicen",
  "weak|evidence": "débil",
  "one trial only|evidence": "un solo ensayo",
  "moderate|evidence": "moderada",
  "moderate, mostly from children of East Asia": "moderada, sobre todo en niños de Asia oriental",
  "moderate; this strength is not for routine use": "moderada; esta concentración no es para uso habitual",
  "good|evidence": "buena",
  "consent to {name} was withdrawn on {withdrawn}": "el consentimiento para {name} se retiró el {withdrawn}",
  "consent to {name} of {date} was given on an earlier wording; version {version} holds since {from}":
    "el consentimiento para {name} del {date} se dio con un texto anterior; la versión {version} rige desde el {from}",
  "no consent to {name} is recorded": "no consta ningún consentimiento para {name}",
  "no strength": "ninguna concentración",
  "consent to {treatment} names {strengths}, not {asked}":
    "el consentimiento para {treatment} nombra {strengths}, no {asked}",
  "{percent} %": "{percent} %",
  "the treatment with its strength": "el tratamiento con su concentración",
  "what trials found that it holds back": "lo que según los ensayos llega a frenar",
  "unwanted effects at this strength": "efectos no deseados con esta concentración",
  "what other treatments hold back": "lo que frenan otros tratamientos",
  "what follows a stop": "lo que sigue a la interrupción",
  "how exact bottles made to order were found to be":
    "qué exactitud se encontró en los frascos preparados por encargo",
  "milligrams in a bottle, and from how many it is dangerous":
    "los miligramos de un frasco y a partir de cuántos hay peligro",
  "what the family pays": "lo que paga la familia",
  "the poison centre's number": "el número del centro de toxicología",
  "where to call for same-day care": "adónde llamar para que le atiendan el mismo día",
  'Wording "{id}", version {version}, {language}': 'Texto "{id}", versión {version}, {language}',
  "Where the figures come from": "De dónde salen las cifras",
  "When {samples} bottles of {percent} % drops from {pharmacies} pharmacies were measured, they held between {min} and {max} % of the strength on their label.":
    "Cuando se midieron {samples} frascos de gotas al {percent} % de {pharmacies} farmacias, contenían entre el {min} y el {max} % de la concentración de su etiqueta.",
  "We give you the full cost in writing before you decide: the visits, the measuring and what is used up.":
    "Antes de que decida le damos por escrito el costo completo: las visitas, las mediciones y lo que se consume.",
  "the poison centre of your country; ask us for its number":
    "el centro de toxicología de su país; pídanos el número",
  "this practice, or an emergency eye service when we are closed":
    "esta consulta o, cuando esté cerrada, un servicio de urgencias oftalmológicas",
  "a bottle of {volume} mL holds {mg} mg of it": "un frasco de {volume} mL contiene {mg} mg",
  "At this strength {bottles}; from {mg} mg a child may be severely poisoned.":
    "Con esta concentración, {bottles}; a partir de {mg} mg un niño puede sufrir una intoxicación grave.",
  "From {from} to {to}, by our fees “{title}” of {day}: {notCovered} that no insurance covers, {uncertain} of which it is uncertain, {covered} that is covered.":
    "Del {from} al {to}, según nuestras tarifas «{title}» del {day}: {notCovered} que ningún seguro cubre, {uncertain} de los que no es seguro, {covered} que están cubiertos.",
  "Not counted, because no fee is set for it: {what}.":
    "No se cuenta, porque no tiene tarifa fijada: {what}.",
  "No figures of side effects at this strength were read.":
    "No se leyeron cifras de efectos no deseados con esta concentración.",
  "{since, select, months {After {months} months} other {On these drops}} the pupil in bright light was {wider} mm wider, on average.":
    "{since, select, months {Después de {months} meses} other {Con estas gotas}}, la pupila con luz intensa era de promedio {wider} mm más ancha.",
  "{since, select, months {After {months} months} other {On these drops}} the power to focus near was {low} to {high} D weaker, on average.":
    "{since, select, months {Después de {months} meses} other {Con estas gotas}}, la capacidad de enfocar de cerca era de promedio de {low} a {high} D menor.",
  "{since, select, months {After {months} months} other {On these drops}} the power to focus near was {lost} D weaker{beside, select, yes { ({without} D on drops without the drug)} other {}}, on average.":
    "{since, select, months {Después de {months} meses} other {Con estas gotas}}, la capacidad de enfocar de cerca era de promedio {lost} D menor{beside, select, yes { ({without} D con gotas sin el medicamento)} other {}}.",
  "bothered by light": "molestias por la luz",
  "blurred sight near by": "visión borrosa de cerca",
  "blurred sight": "visión borrosa",
  "trouble with reading": "dificultad para leer",
  "allergy of lids or eyes": "alergia de los párpados o los ojos",
  "irritated eyes": "ojos irritados",
  "stopped because of it": "abandono por ello",
  "{complaint} {percent} %": "{complaint} {percent} %",
  "{complaint} {percent} % ({without} %)": "{complaint} {percent} % ({without} %)",
  "In a trial{beside, select, yes {, in brackets on drops without the drug} other {}}: {complaints}.":
    "En un ensayo{beside, select, yes { (entre paréntesis, con gotas sin el medicamento)} other {}}: {complaints}.",
  "In a trial over {months} months{beside, select, yes {, in brackets on drops without the drug} other {}}: {complaints}.":
    "En un ensayo de {months} meses{beside, select, yes { (entre paréntesis, con gotas sin el medicamento)} other {}}: {complaints}.",
  "In year {year} of a trial with {n} children on this strength{beside, select, yes {, in brackets on drops without the drug} other {}}: {complaints}.":
    "En el año {year} de un ensayo con {n} niños con esta concentración{beside, select, yes { (entre paréntesis, con gotas sin el medicamento)} other {}}: {complaints}.",
  "In a group of {n} children on this strength{beside, select, yes {, in brackets on drops without the drug} other {}}: {complaints}.":
    "En un grupo de {n} niños con esta concentración{beside, select, yes { (entre paréntesis, con gotas sin el medicamento)} other {}}: {complaints}.",
  "In a trial over {months} months with {n} children on this strength{beside, select, yes {, in brackets on drops without the drug} other {}}: {complaints}.":
    "En un ensayo de {months} meses con {n} niños con esta concentración{beside, select, yes { (entre paréntesis, con gotas sin el medicamento)} other {}}: {complaints}.",
  "In a group of {n} children on {low} % or {high} %, {bothered} % were bothered by light; glasses that darken in the sun helped {helped} %.":
    "En un grupo de {n} niños con {low} % o {high} %, al {bothered} % le molestaba la luz; las gafas que se oscurecen al sol ayudaron al {helped} %.",
  "No figures of side effects of such glasses were read.":
    "No se leyeron cifras de efectos no deseados de gafas de este tipo.",
  "Contact lenses can lead to an infection of the cornea: in {low} to {high} of 10 000 wearers a year. About {percent} % of those lose some sight by it.":
    "Las lentes de contacto pueden causar una infección de la córnea: en {low} a {high} de cada 10 000 usuarios al año. Alrededor del {percent} % de ellos pierde por ello algo de visión.",
  "{path} must be {allowed}; it is {value}": "{path} debe ser {allowed}; es {value}",
  "one of {names}": "uno de {names}",
  "a version that has not been used before, or the very name of the one it translates":
    "una versión que no se haya usado antes, o el nombre exacto de la que traduce",
  "text with no other names in braces than {names}": "texto sin más nombres entre llaves que {names}",
  "Who consents": "Quién consiente",
  "Who signs": "Quién firma",
  "Relation to the child": "Relación con el niño o la niña",
  "The child, asked in the four steps of the text": "El niño o la niña, según los cuatro pasos del texto",
  "The child says no. That is recorded with the consent; talk it over before anything is started.":
    "El niño o la niña dice que no. Eso se registra con el consentimiento; háblenlo antes de empezar nada.",
  "Sign here with a pen, a finger or the mouse.": "Firme aquí con un lápiz, un dedo o el ratón.",
  "Signed.": "Firmado.",
  "clear the signature": "borrar la firma",
  "Name, typed by who signs in place of a signature": "Nombre, escrito por quien firma en lugar de una firma",
  "Something is still missing; see below.": "Todavía falta algo; vea abajo.",
  "must be the name of who signs": "debe ser el nombre de quien firma",
  "must say how who signs is related to the child":
    "debe decir qué relación tiene quien firma con el niño o la niña",
  "must be chosen": "se debe elegir",
  "must be the name, typed by who signs": "debe ser el nombre, escrito por quien firma",
  "must be signed; with a keyboard choose “{way}”": "se debe firmar; con teclado, elija «{way}»",
  "Name of the parent or guardian": "Nombre de la madre, el padre o el tutor",
  "The child agrees: yes / no / was not asked":
    "El niño o la niña está de acuerdo: sí / no / no se le preguntó",
  agrees: "está de acuerdo",
  "does not agree": "no está de acuerdo",
  "was not asked": "no se le preguntó",
  mother: "madre",
  father: "padre",
  "legal guardian": "tutor legal",
  "the young person": "la persona joven",
  "{practice}. Child: {name}, born {born}.": "{practice}. Niño o niña: {name}, fecha de nacimiento: {born}.",
  "your child": "su hijo o hija",
  "For your decision with your eye doctor, whose advice it does not replace. Local law, product licences and the pharmacist decide. Not a medical device.":
    "Para su decisión junto con su oftalmólogo, cuyo consejo no sustituye. Deciden la ley local, las autorizaciones de los productos y el farmacéutico. No es un producto sanitario.",
  "nobody consents to having no treatment": "nadie da su consentimiento para no recibir tratamiento",
  "a consent to drops names their strength, and none is given":
    "un consentimiento para gotas nombra su concentración, y no se indica ninguna",
  "no treatment that needs a consent is asked about, in use, planned or decided for this child":
    "para este niño o niña no se pregunta por ningún tratamiento que necesite consentimiento, ni hay ninguno en uso, planeado o decidido",
  Born: "Fecha de nacimiento",
  Number: "Número",
  Treatment: "Tratamiento",
  "Printed on": "Impreso el",
  "Flashes, floaters, a curtain over the sight, pain or sudden loss of sight: have the eye seen on the same day. Call: {urgent}.":
    "Destellos, manchas que flotan, una cortina delante de la vista, dolor o pérdida repentina de la visión: haga que revisen el ojo el mismo día. Llame a: {urgent}.",
  "These drops are poisonous when swallowed: keep them from children. If a child may have swallowed some, do not wait. Call: {poisonCentre}.":
    "Estas gotas son venenosas si se tragan: manténgalas lejos de los niños. Si un niño puede haber tragado algo, no espere. Llame a: {poisonCentre}.",
  "I have read this text or had it read to me, my questions were answered, and I consent. I may change my mind at any time.":
    "He leído este texto o me lo han leído, han respondido a mis preguntas y doy mi consentimiento. Puedo cambiar de opinión en cualquier momento.",
  "Parent or guardian, and relation to the child": "Madre, padre o tutor, y relación con el niño o la niña",
  "The child, if able and willing to sign": "El niño o la niña, si puede y quiere firmar",
  "Clinician who explained it": "Profesional que lo explicó",
  "The practice has no wording of its own in force in this language: this is the one that ships.":
    "La consulta no tiene un texto propio vigente en este idioma: este es el que viene con el programa.",
  "in use": "en uso",
  "planned from {date}": "planeado desde el {date}",
  "decided on {date}": "decidido el {date}",
  Consents: "Consentimientos",
  "None is recorded.": "No consta ninguno.",
  "Consents of the family": "Consentimientos de la familia",
  Given: "Dado",
  Covers: "Cubre",
  State: "Estado",
  "By|person": "Por",
  "The child": "El niño o la niña",
  Wording: "Texto",
  "Look at it or withdraw it": "Verlo o retirarlo",
  "version {version}": "versión {version}",
  "show the consent of {date} to {treatment}": "mostrar el consentimiento del {date} para {treatment}",
  show: "mostrar",
  "withdraw the consent of {date} to {treatment}": "retirar el consentimiento del {date} para {treatment}",
  withdraw: "retirar",
  "in force until {date}": "vigente hasta el {date}",
  "withdrawn on {date}": "retirado el {date}",
  "the wording and its figures": "el texto y sus cifras",
  "What is owed": "Lo que se debe",
  "New consent": "Nuevo consentimiento",
  "Nothing. Whatever is in use or planned is covered.":
    "Nada. Todo lo que está en uso o planeado está cubierto.",
  "Close without recording": "Cerrar sin registrar",
  "Language the family reads": "Idioma en que lee la familia",
  "The text is shown here once the strength is entered.":
    "El texto se muestra aquí una vez introducida la concentración.",
  "{language}, as it ships": "{language}, el que viene con el programa",
  "The figures in this text are told in English: this language is not spoken here.":
    "Las cifras de este texto se dan en inglés: este idioma no se habla aquí.",
  "must be {limit}": "debe ser {limit}",
  "must be a file: {types}": "debe ser un archivo: {types}",
  "must be {types}; {name} is none of them": "debe ser {types}; {name} no es ninguno de ellos",
  "must be at most {most}; {name} has {size} MB": "debe ser como máximo de {most}; {name} tiene {size} MB",
  "Scan of the signed paper": "Imagen del papel firmado",
  "{types}; at most {most}.": "{types}; como máximo {most}.",
  "drawn on this screen": "trazada en esta pantalla",
  "name typed": "nombre escrito",
  "on paper, scanned": "en papel, digitalizado",
  "on paper, kept elsewhere": "en papel, guardado en otro sitio",
  "Recorded: consent to {treatment}.": "Registrado: consentimiento para {treatment}.",
  Signed: "Firma",
  "Print the text to sign on paper": "Imprimir el texto para firmarlo en papel",
  "Given on": "Dado el",
  "What was signed is the text shown here": "Lo que se firmó es el texto que se muestra aquí",
  "Record consent": "Registrar el consentimiento",
  "Consent of {date} to {treatment}": "Consentimiento del {date} para {treatment}",
  "What was read": "Lo que se leyó",
  "The text that was read is not in this record.": "El texto que se leyó no está en este registro.",
  "Recorded by {author} on {date}; last changed because: {reason}.":
    "Registrado por {author} el {date}; último cambio porque: {reason}.",
  "Recorded by {author} on {date}.": "Registrado por {author} el {date}.",
  "On paper, which is kept outside of this record.": "En papel, que se guarda fuera de este registro.",
  "None is in this record.": "No hay ninguna en este registro.",
  "Signature of {name}": "Firma de {name}",
  "Signature of who consented": "Firma de quien consintió",
  "Download the drawing": "Descargar el trazo",
  "Download the scan of the signed paper": "Descargar la imagen del papel firmado",
  "the text": "el texto",
  "The text that was read": "El texto que se leyó",
  "Read in: {language}.": "Leído en: {language}.",
  "Download the text": "Descargar el texto",
  "Consent to": "Consentimiento para",
  "Another treatment or strength": "Otro tratamiento u otra concentración",
  "Withdrawn from {date}: the consent to {treatment}. It stays in the record.":
    "Retirado desde el {date}: el consentimiento para {treatment}. Permanece en el registro.",
  "Withdraw the consent to {treatment}": "Retirar el consentimiento para {treatment}",
  "First day it no longer holds": "Primer día en que ya no vale",
  "Why, as the family says": "Por qué, según la familia",
  "No family has to give a reason: “none given” is one.":
    "Ninguna familia tiene que dar un motivo: «sin motivo indicado» vale.",
  "{treatment} {verb, select, plural {are in use} other {is in use}}. The stop is entered apart, on the child’s page; until then a consent is owed.":
    "{treatment} {verb, select, plural {están en uso} other {está en uso}}. La interrupción se registra aparte, en la página del niño o la niña; hasta entonces se debe un consentimiento.",
  "Withdraw consent": "Retirar el consentimiento",
  "Recorded: version {version} of the wording “{id}”.": "Registrado: versión {version} del texto «{id}».",
  "New version of “{id}”": "Nueva versión de «{id}»",
  Version: "Versión",
  "Never used before; a translation bears the name of the version it translates.":
    "Nunca usada antes; una traducción lleva el nombre de la versión que traduce.",
  "In force from": "Vigente desde",
  "As a code: en, es, zh-Hans. Figures in any other language are told in English.":
    "Como código: en, es, zh-Hans. En cualquier otro idioma las cifras se dan en inglés.",
  "As a code: en, es, zh-Hans.": "Como código: en, es, zh-Hans.",
  "Material: families who signed an earlier version, in any language, are asked again":
    "Sustancial: se pregunta de nuevo a las familias que firmaron una versión anterior, en cualquier idioma",
  Title: "Título",
  "What is filled in": "Lo que se rellena",
  "Record this version": "Registrar esta versión",
  "Section {number}": "Sección {number}",
  Heading: "Encabezado",
  Text: "Texto",
  "move section {number} up": "subir la sección {number}",
  "up|order": "subir",
  "move section {number} down": "bajar la sección {number}",
  "down|order": "bajar",
  "take section {number} out": "quitar la sección {number}",
  "take out": "quitar",
  "Add a section": "Añadir una sección",
}
