import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const family: Catalogue = {
  "{named, select, yes {How {name}'s eyes are doing} other {How your child's eyes are doing}}":
    "{named, select, yes {Cómo están los ojos de {name}} other {Cómo están los ojos de su hijo o hija}}",
  "This page helps you to talk with your eye doctor. It does not replace an examination, and it is not a medical device.":
    "Esta hoja le ayuda a hablar con su oftalmólogo. No sustituye una revisión y no es un producto sanitario.",
  "Made on {date} from what {practice} measured. No measurement is exact. Usual growth and what may come are worked out from published studies of groups of children; your child may do better or worse. Harm in later life: {source}.":
    "Preparado el {date} con lo que midió {practice}. Ninguna medida es exacta. El crecimiento habitual y lo que puede venir se calculan a partir de estudios publicados de grupos de niños; a su hijo o hija puede irle mejor o peor. Daños más adelante en la vida: {source}.",
  "How well known: several trials taken together ({sources}).":
    "Cuánto se sabe: varios ensayos en conjunto ({sources}).",
  "How well known: one trial ({sources}).": "Cuánto se sabe: un ensayo ({sources}).",
  "How well known: a review of studies ({sources}).": "Cuánto se sabe: una revisión de estudios ({sources}).",
  "How well known: studies that watched children. They show a link, not a cause ({sources}).":
    "Cuánto se sabe: estudios que observaron a niños. Muestran una relación, no una causa ({sources}).",
  "How well known: worked out from several studies ({sources}).":
    "Cuánto se sabe: calculado a partir de varios estudios ({sources}).",
  "How well known: not known. We have read no trial of it.":
    "Cuánto se sabe: no se sabe. No hemos leído ningún ensayo sobre ello.",
  "Eyes to scale": "Ojos a escala",
  "A usual eye at {age}": "Un ojo habitual a los {age}",
  "sees far without glasses; drawn to scale": "ve bien de lejos sin gafas; a escala",
  "{named, select, yes {{name}, {eye, select, right {right eye} other {left eye}}} other {{eye, select, right {Right eye now} other {Left eye now}}}}":
    "{named, select, yes {{name}, {eye, select, right {ojo derecho} other {ojo izquierdo}}} other {{eye, select, right {Ojo derecho ahora} other {Ojo izquierdo ahora}}}}",
  "measured, the longer of the two": "medido, el más largo de los dos",
  measured: "medido",
  "At {age}, without treatment": "A los {age}, sin tratamiento",
  "9 of 10 such eyes end between {low} and {high} mm": "9 de cada 10 ojos así acaban entre {low} y {high} mm",
  "The longer eye is {now} mm long.": "El ojo más largo mide {now} mm.",
  "The longer eye is {now} mm long, a usual eye of this age {usual} mm.":
    "El ojo más largo mide {now} mm; un ojo habitual de esta edad, {usual} mm.",
  "The longer eye is {now} mm long. Without treatment it may be {ahead} mm long at {age}, most likely between {low} and {high} mm.":
    "El ojo más largo mide {now} mm. Sin tratamiento puede medir {ahead} mm a los {age} años, muy probablemente entre {low} y {high} mm.",
  "The longer eye is {now} mm long, a usual eye of this age {usual} mm. Without treatment it may be {ahead} mm long at {age}, most likely between {low} and {high} mm.":
    "El ojo más largo mide {now} mm; un ojo habitual de esta edad, {usual} mm. Sin tratamiento puede medir {ahead} mm a los {age} años, muy probablemente entre {low} y {high} mm.",
  "{named, select, yes {{name} in {months, plural, one {# month} other {# months}}} other {Your child in {months, plural, one {# month} other {# months}}}}":
    "{named, select, yes {{name} en {months, plural, one {# mes} other {# meses}}} other {Su hijo o hija en {months, plural, one {# mes} other {# meses}}}}",
  "{sex, select, female {Short-sighted girls of this age without treatment} other {Short-sighted boys of this age without treatment}}":
    "{sex, select, female {Niñas miopes de esta edad sin tratamiento} other {Niños miopes de esta edad sin tratamiento}}",
  "Eyes that are not short-sighted": "Ojos sin miopía",
  "Growth over the same time": "Crecimiento en el mismo tiempo",
  "The eyes grew {mm} mm; eyes that are not short-sighted grow {usual} mm in that time.":
    "Los ojos crecieron {mm} mm; los ojos sin miopía crecen {usual} mm en ese tiempo.",
  "The eyes grew {mm} mm; short-sighted eyes grow {natural} mm in that time without treatment, eyes that are not short-sighted {usual} mm.":
    "Los ojos crecieron {mm} mm; los ojos miopes crecen {natural} mm en ese tiempo sin tratamiento, y los ojos sin miopía {usual} mm.",
  "age in years": "edad en años",
  "length of the longer eye, mm": "longitud del ojo más largo, mm",
  "usual eyes": "ojos habituales",
  "without treatment": "sin tratamiento",
  "with the treatment going on": "si el tratamiento sigue",
  "Length of the eye over the years": "Longitud del ojo a lo largo de los años",
  "The longer eye grew from {first} mm to {now} mm between the first and the last visit.":
    "El ojo más largo creció de {first} mm a {now} mm entre la primera y la última visita.",
  "{named, select, yes {{name}'s eyes} other {Your child's eyes}} grew slowly in {months, plural, one {the month} other {the # months}} before the last visit, almost like eyes that are not short-sighted.":
    "Los ojos de {named, select, yes {{name}} other {su hijo o hija}} crecieron despacio en {months, plural, one {el mes anterior} other {los # meses anteriores}} a la última visita, casi como los ojos sin miopía.",
  "Since the treatment stopped, {named, select, yes {{name}'s eyes} other {your child's eyes}} have grown slowly, almost like eyes that are not short-sighted.":
    "Desde que acabó el tratamiento, los ojos de {named, select, yes {{name}} other {su hijo o hija}} han crecido despacio, casi como los ojos sin miopía.",
  "{named, select, yes {{name}'s eyes} other {Your child's eyes}} grew in {months, plural, one {the month} other {the # months}} before the last visit, but more slowly than is usual without treatment.":
    "Los ojos de {named, select, yes {{name}} other {su hijo o hija}} crecieron en {months, plural, one {el mes anterior} other {los # meses anteriores}} a la última visita, pero más despacio de lo habitual sin tratamiento.",
  "{named, select, yes {{name}'s eyes} other {Your child's eyes}} grew in {months, plural, one {the month} other {the # months}} before the last visit, but more slowly than is usual in short-sighted children of this age.":
    "Los ojos de {named, select, yes {{name}} other {su hijo o hija}} crecieron en {months, plural, one {el mes anterior} other {los # meses anteriores}} a la última visita, pero más despacio de lo habitual en niños miopes de esta edad.",
  "Since the treatment stopped, {named, select, yes {{name}'s eyes} other {your child's eyes}} have grown, but more slowly than is usual in short-sighted children of this age.":
    "Desde que acabó el tratamiento, los ojos de {named, select, yes {{name}} other {su hijo o hija}} han crecido, pero más despacio de lo habitual en niños miopes de esta edad.",
  "{named, select, yes {{name}'s eyes} other {Your child's eyes}} grew in {months, plural, one {the month} other {the # months}} before the last visit about as fast as is usual without treatment.":
    "Los ojos de {named, select, yes {{name}} other {su hijo o hija}} crecieron en {months, plural, one {el mes anterior} other {los # meses anteriores}} a la última visita más o menos tan deprisa como es habitual sin tratamiento.",
  "{named, select, yes {{name}'s eyes} other {Your child's eyes}} grew in {months, plural, one {the month} other {the # months}} before the last visit about as fast as is usual in short-sighted children of this age.":
    "Los ojos de {named, select, yes {{name}} other {su hijo o hija}} crecieron en {months, plural, one {el mes anterior} other {los # meses anteriores}} a la última visita más o menos tan deprisa como es habitual en niños miopes de esta edad.",
  "Since the treatment stopped, {named, select, yes {{name}'s eyes} other {your child's eyes}} have grown about as fast as is usual without treatment.":
    "Desde que acabó el tratamiento, los ojos de {named, select, yes {{name}} other {su hijo o hija}} han crecido más o menos tan deprisa como es habitual sin tratamiento.",
  "{named, select, yes {{name}'s eyes} other {Your child's eyes}} grew faster in {months, plural, one {the month} other {the # months}} before the last visit than is usual without treatment.":
    "Los ojos de {named, select, yes {{name}} other {su hijo o hija}} crecieron en {months, plural, one {el mes anterior} other {los # meses anteriores}} a la última visita más deprisa de lo habitual sin tratamiento.",
  "{named, select, yes {{name}'s eyes} other {Your child's eyes}} grew faster in {months, plural, one {the month} other {the # months}} before the last visit than is usual in short-sighted children of this age.":
    "Los ojos de {named, select, yes {{name}} other {su hijo o hija}} crecieron en {months, plural, one {el mes anterior} other {los # meses anteriores}} a la última visita más deprisa de lo habitual en niños miopes de esta edad.",
  "Since the treatment stopped, {named, select, yes {{name}'s eyes} other {your child's eyes}} have grown faster than is usual without treatment.":
    "Desde que acabó el tratamiento, los ojos de {named, select, yes {{name}} other {su hijo o hija}} han crecido más deprisa de lo habitual sin tratamiento.",
  "We cannot be sure yet whether {named, select, yes {{name}'s eyes} other {your child's eyes}} grow slowly or fast.":
    "Todavía no podemos estar seguros de si los ojos de {named, select, yes {{name}} other {su hijo o hija}} crecen despacio o deprisa.",
  "It is too early to say how fast {named, select, yes {{name}'s eyes} other {your child's eyes}} grow.":
    "Es demasiado pronto para decir lo deprisa que crecen los ojos de {named, select, yes {{name}} other {su hijo o hija}}.",
  "{named, select, yes {{name}'s eyes} other {Your child's eyes}} have little growing left to do, so we can no longer tell slow from fast.":
    "A los ojos de {named, select, yes {{name}} other {su hijo o hija}} les queda poco por crecer, así que ya no podemos distinguir lo lento de lo rápido.",
  "One of our figures looks wrong, so we measure {named, select, yes {{name}'s eyes} other {your child's eyes}} again before we say how fast they grow.":
    "Una de nuestras cifras parece equivocada, así que volvemos a medir los ojos de {named, select, yes {{name}} other {su hijo o hija}} antes de decir lo deprisa que crecen.",
  "{named, select, yes {{name} is} other {Your child is}} not short-sighted so far.":
    "{named, select, yes {{name} no tiene} other {Su hijo o hija no tiene}} miopía por ahora.",
  "We have measured {named, select, yes {{name}'s eyes} other {your child's eyes}} once, so we cannot say yet how fast they grow.":
    "Hemos medido una vez los ojos de {named, select, yes {{name}} other {su hijo o hija}}, así que aún no podemos decir lo deprisa que crecen.",
  "We have not measured the length of {named, select, yes {{name}'s eyes} other {your child's eyes}} yet, so we cannot say how fast they grow.":
    "Aún no hemos medido la longitud de los ojos de {named, select, yes {{name}} other {su hijo o hija}}, así que no podemos decir lo deprisa que crecen.",
  "We have no figures for this age to compare {named, select, yes {{name}'s eyes} other {your child's eyes}} with.":
    "No tenemos cifras de esta edad con las que comparar los ojos de {named, select, yes {{name}} other {su hijo o hija}}.",
  "{named, select, yes {{name}'s eyes} other {Your child's eyes}} have most likely grown more slowly than is usual without treatment, but we cannot be sure yet by how much.":
    "Los ojos de {named, select, yes {{name}} other {su hijo o hija}} probablemente han crecido más despacio de lo habitual sin tratamiento, pero aún no sabemos cuánto.",
  "{named, select, yes {{name}'s eyes} other {Your child's eyes}} have most likely not grown faster than is usual without treatment, but we cannot be sure yet whether they grew more slowly.":
    "Los ojos de {named, select, yes {{name}} other {su hijo o hija}} probablemente no han crecido más deprisa de lo habitual sin tratamiento, pero aún no sabemos si más despacio.",
  "{named, select, yes {{name}'s eyes} other {Your child's eyes}} have most likely grown at least as fast as is usual without treatment, but we cannot be sure yet.":
    "Los ojos de {named, select, yes {{name}} other {su hijo o hija}} probablemente han crecido al menos tan deprisa como es habitual sin tratamiento, pero aún no es seguro.",
  "Code that opens this page on a phone": "Código que abre esta página en un teléfono",
  "This page on your phone, with more answers: scan the code.":
    "Esta página en su teléfono, con más respuestas: escanee el código.",
  "It opens after the birth date of your child is typed in.":
    "Se abre después de escribir la fecha de nacimiento de su hijo o hija.",
  "What families ask": "Lo que preguntan las familias",
  "In trials with {children} children, most of them not short-sighted, eyes grew {less} mm less with more time outdoors. One study of short-sighted children saw no such link. As a rule of thumb: about 2 hours a day.":
    "En ensayos con {children} niños, la mayoría sin miopía, los ojos crecieron {less} mm menos con más tiempo al aire libre. Un estudio de niños miopes no vio esa relación. Como regla práctica: unas 2 horas al día.",
  "Does daylight help?": "¿Ayuda la luz del día?",
  "We have read no trial that shows it. Children who do more close work are more often short-sighted: their odds are about {odds} times as high. As a rule of thumb: a break every 20 to 30 minutes, and more than 30 cm to the page.":
    "No hemos leído ningún ensayo que lo demuestre. Los niños que hacen más trabajo de cerca son miopes más a menudo: la razón de probabilidades es de unas {odds} veces. Como regla práctica: una pausa cada 20 a 30 minutos y más de 30 cm hasta la página.",
  "Do screens and close work do harm?": "¿Hacen daño las pantallas y el trabajo de cerca?",
  "Do eye exercises, vision training or a diet help?":
    "¿Ayudan los ejercicios, el entrenamiento visual o una dieta?",
  "We have read no trial that shows that eye exercises, vision training or any diet slows the growth of the eye. So we do not advise them for this.":
    "No hemos leído ningún ensayo que demuestre que los ejercicios, el entrenamiento visual o alguna dieta frenen el crecimiento del ojo. Por eso no los aconsejamos para esto.",
  "As long as the eyes grow, most likely: 1 mm of growth makes about {dioptres} D. Weaker glasses did not slow the growth in trials with {children} children.":
    "Mientras los ojos crezcan, lo más probable es que sí: 1 mm de crecimiento supone alrededor de {dioptres} D. Unas gafas más flojas no frenaron el crecimiento en ensayos con {children} niños.",
  "Will the glasses get stronger?": "¿Harán falta gafas más fuertes?",
  "{on, select, yes {May we stop early?} other {What follows after a stop?}}":
    "{on, select, yes {¿Podemos dejarlo antes?} other {¿Qué pasa al dejarlo?}}",
  "{on, select, yes {You may stop at any time, but tell us first. We have read no trial that shows how eyes grow after a stop of this strength.} other {We have read no trial that shows how eyes grow after a stop of this strength.}}":
    "{on, select, yes {Puede dejarlo cuando quiera, pero avísenos antes. No hemos leído ningún ensayo que muestre cómo crecen los ojos después de dejar esta concentración.} other {No hemos leído ningún ensayo que muestre cómo crecen los ojos después de dejar esta concentración.}}",
  "{on, select, yes {You may stop at any time, but tell us first.} other {We go on measuring after a stop.}} After a stop of this treatment {growth, select, strong {growth often came back strongly} weak {growth came back a little} other {studies did not agree on what follows}}.":
    "{on, select, yes {Puede dejarlo cuando quiera, pero avísenos antes.} other {Seguimos midiendo después de dejarlo.}} Después de dejar este tratamiento {growth, select, strong {el crecimiento volvió a menudo con fuerza} weak {el crecimiento volvió un poco} other {los estudios no coinciden en lo que pasa}}.",
  "{on, select, yes {You may stop at any time, but tell us first.} other {We go on measuring after a stop.}} In one trial of {percent} % drops, eyes that stopped after {years, plural, one {# year} other {# years}} grew {stopped} mm in the next year. Eyes that went on grew {wentOn} mm.":
    "{on, select, yes {Puede dejarlo cuando quiera, pero avísenos antes.} other {Seguimos midiendo después de dejarlo.}} En un ensayo de gotas al {percent} %, los ojos que lo dejaron después de {years, plural, one {# año} other {# años}} crecieron {stopped} mm en el año siguiente. Los ojos que siguieron crecieron {wentOn} mm.",
  "Go on the next night with one drop. We have read no trial that shows what missed nights cost. Tell us of them, since it changes how we read the figures.":
    "Siga la noche siguiente con una gota. No hemos leído ningún ensayo que muestre cuánto cuestan las noches perdidas. Cuéntenoslas, porque cambian cómo leemos las cifras.",
  "What if we miss a night?": "¿Y si se nos olvida una noche?",
  "Are the drops safe?": "¿Son seguras las gotas?",
  "In one trial of this strength, light bothered about {light} of 100 children, and {without} of 100 on drops without the drug. The longest trial of drops that we have read took {years, plural, one {# year} other {# years}}.":
    "En un ensayo de esta concentración, la luz molestó a unos {light} de cada 100 niños, y a {without} de cada 100 con gotas sin el fármaco. El ensayo de gotas más largo que hemos leído duró {years, plural, one {# año} other {# años}}.",
  "In one trial of this strength, light bothered about {light} of 100 children, and {blur} of 100 saw less clearly close up. The longest trial of drops that we have read took {years, plural, one {# year} other {# years}}.":
    "En un ensayo de esta concentración, la luz molestó a unos {light} de cada 100 niños, y {blur} de cada 100 vieron peor de cerca. El ensayo de gotas más largo que hemos leído duró {years, plural, one {# año} other {# años}}.",
  "We have read no figures of unwanted effects at this strength. We look for them at the visits.":
    "No hemos leído cifras de efectos no deseados con esta concentración. Los buscamos en las visitas.",
  "In one trial of this strength, the power to focus close up was {lost} D weaker after a year, and {without} D weaker on drops without the drug. The longest trial of drops that we have read took {years, plural, one {# year} other {# years}}.":
    "En un ensayo de esta concentración, la capacidad de enfocar de cerca fue {lost} D menor al cabo de un año, y {without} D menor con gotas sin el fármaco. El ensayo de gotas más largo que hemos leído duró {years, plural, one {# año} other {# años}}.",
  "Of {people} people who wear contact lenses for a year, {fewest} to {most} get a germ in the clear front of the eye.":
    "De cada {people} personas que llevan lentes de contacto durante un año, entre {fewest} y {most} sufren una infección de la parte transparente del ojo.",
  "Are the lenses safe?": "¿Son seguras las lentes?",
  "{means, select, drops {Call us when light bothers your child more than before, reading close up is hard, or the drops make the eyes red, sore or itchy.} lenses {Call us when a lens is lost or torn, or when sight through the lenses gets worse.} glasses {Call us when the glasses break, no longer fit, or do not give clear sight any more.} several {Call us when light bothers your child more than before, reading close up is hard, the eyes get red, sore or itchy, or sight gets worse.} other {Call us when your child sees less well: when the eyes are narrowed to see far, or the board at school is hard to read.}}":
    "{means, select, drops {Llámenos si la luz molesta más que antes, si cuesta leer de cerca o si las gotas dejan los ojos rojos, doloridos o con picor.} lenses {Llámenos si se pierde o se rompe una lente, o si se ve peor con las lentes.} glasses {Llámenos si las gafas se rompen, ya no quedan bien o ya no dejan ver con claridad.} several {Llámenos si la luz molesta más que antes, si cuesta leer de cerca, si los ojos se ponen rojos, doloridos o con picor, o si se ve peor.} other {Llámenos si se ve peor: si hay que entrecerrar los ojos para ver de lejos o cuesta leer la pizarra en la escuela.}}",
  "What to watch for": "En qué fijarse",
  "At a visit we noted something that we want to keep an eye on. Tell us at once if it gets worse.":
    "En una visita anotamos algo que queremos vigilar. Avísenos enseguida si empeora.",
  "On {date} you told us of a warning sign. If nobody has looked into the eye since then, come in today.":
    "El {date} nos habló de un signo de alarma. Si desde entonces nadie ha mirado dentro del ojo, venga hoy mismo.",
  "Same day: flashes, floating spots, a curtain, pain or sudden loss of sight. Call us at once; if you cannot reach us, go to an eye clinic.":
    "El mismo día: destellos, manchas que flotan, una cortina, dolor o pérdida repentina de visión. Llámenos enseguida; si no nos localiza, vaya a un servicio de urgencias de oftalmología.",
  "Same day: flashes, floating spots, a curtain, pain or sudden loss of sight. Call at once: {urgent}.":
    "El mismo día: destellos, manchas que flotan, una cortina, dolor o pérdida repentina de visión. Llame enseguida: {urgent}.",
  "A red or sore eye with a contact lens: take the lens out and have the eye seen the same day.":
    "Ojo rojo o dolorido con una lente de contacto: quite la lente y que vean el ojo el mismo día.",
  "The drops are poison when swallowed. Keep the bottle away from all children. If any was swallowed, call the poison centre of your country at once. If a child is confused, hot and flushed or has a fit, call an ambulance.":
    "Las gotas son venenosas si se tragan. Guarde el frasco lejos de todos los niños. Si alguien las ha tragado, llame enseguida al centro de toxicología de su país. Si un niño está confuso, caliente y enrojecido o tiene convulsiones, llame a una ambulancia.",
  "The drops are poison when swallowed. Keep the bottle away from all children. If any was swallowed, call the poison centre at once: {centre}. If a child is confused, hot and flushed or has a fit, call an ambulance.":
    "Las gotas son venenosas si se tragan. Guarde el frasco lejos de todos los niños. Si alguien las ha tragado, llame enseguida al centro de toxicología: {centre}. Si un niño está confuso, caliente y enrojecido o tiene convulsiones, llame a una ambulancia.",
  "What it means": "Qué significa",
  "In {months, plural, one {# month} other {# months}}, eyes that are not short-sighted grow about {usual} mm at this age.":
    "En {months, plural, one {# mes} other {# meses}}, los ojos sin miopía crecen unos {usual} mm a esta edad.",
  "In {months, plural, one {# month} other {# months}}, the eyes of {sex, select, female {short-sighted girls} other {short-sighted boys}} of this age grow about {natural} mm without treatment, and eyes that are not short-sighted about {usual} mm.":
    "En {months, plural, one {# mes} other {# meses}}, los ojos de {sex, select, female {niñas miopes} other {niños miopes}} de esta edad crecen unos {natural} mm sin tratamiento, y los ojos sin miopía unos {usual} mm.",
  "In one study of {children} children of this age with eyes like these, {became} became short-sighted within 5 years.":
    "En un estudio de {children} niños de esta edad con ojos como estos, {became} llegaron a ser miopes en 5 años.",
  "Why length counts: among adults, harm at the back of the eye was about {percent} % less common for each dioptre (D) less of short sight.":
    "Por qué cuenta la longitud: en adultos, los daños en el fondo del ojo fueron alrededor de un {percent} % menos frecuentes por cada dioptría (D) menos de miopía.",
  "{means, select, drops {Is it the drops?} glasses {Is it the glasses?} lenses {Is it the lenses?} other {Is it the treatment?}}":
    "{means, select, drops {¿Es por las gotas?} glasses {¿Es por las gafas?} lenses {¿Es por las lentes?} other {¿Es por el tratamiento?}}",
  "Most likely yes. What we measured is {many, select, yes {more than 100 times} other {about {times} times}} as likely with a treatment that works as in the trials as with one that does nothing. No answer for one child is ever certain.":
    "Probablemente sí. Lo que medimos es {many, select, yes {más de 100 veces} other {unas {times} veces}} más probable con un tratamiento que funciona como en los ensayos que con uno que no hace nada. En un solo niño ninguna respuesta es segura.",
  "Probably not. What we measured is {many, select, yes {more than 100 times} other {about {times} times}} as likely with a treatment that does nothing as with one that works as in the trials. No answer for one child is ever certain.":
    "Probablemente no. Lo que medimos es {many, select, yes {más de 100 veces} other {unas {times} veces}} más probable con un tratamiento que no hace nada que con uno que funciona como en los ensayos. En un solo niño ninguna respuesta es segura.",
  "We will look at this when the figure that looks wrong has been measured again.":
    "Lo miraremos cuando se haya vuelto a medir la cifra que parece equivocada.",
  "We cannot tell. On many nights there was no bottle in date, and that alone may explain what we saw.":
    "No lo podemos saber. Muchas noches no hubo ningún frasco en fecha, y eso solo puede explicar lo que vimos.",
  "We cannot tell. In one child it is hard to tell a treatment from the child's own pace. What counts most is how fast the eyes grow.":
    "No lo podemos saber. En un solo niño es difícil distinguir un tratamiento del ritmo propio del niño. Lo que más cuenta es lo deprisa que crecen los ojos.",
  "We cannot tell yet. Of 10 children like {named, select, yes {{name}} other {your child}} whose treatment works, {share, select, under {fewer than {count}} over {more than {count}} other {about {count}}} would give us a clear answer by {date}.":
    "Todavía no lo sabemos. De cada 10 niños como {named, select, yes {{name}} other {su hijo o hija}} a los que el tratamiento les funciona, {share, select, under {menos de {count} nos daría} over {más de {count} nos darían} other {{count, plural, one {alrededor de # nos daría} other {alrededor de # nos darían}}}} una respuesta clara para el {date}.",
  "Perhaps, but we cannot tell yet. Of 10 children like {named, select, yes {{name}} other {your child}} whose treatment works, {share, select, under {fewer than {count}} over {more than {count}} other {about {count}}} would give us a clear answer by {date}.":
    "Quizá, pero todavía no lo sabemos. De cada 10 niños como {named, select, yes {{name}} other {su hijo o hija}} a los que el tratamiento les funciona, {share, select, under {menos de {count} nos daría} over {más de {count} nos darían} other {{count, plural, one {alrededor de # nos daría} other {alrededor de # nos darían}}}} una respuesta clara para el {date}.",
  "Perhaps not, but we cannot tell yet. Of 10 children like {named, select, yes {{name}} other {your child}} whose treatment works, {share, select, under {fewer than {count}} over {more than {count}} other {about {count}}} would give us a clear answer by {date}.":
    "Quizá no, pero todavía no lo sabemos. De cada 10 niños como {named, select, yes {{name}} other {su hijo o hija}} a los que el tratamiento les funciona, {share, select, under {menos de {count} nos daría} over {más de {count} nos darían} other {{count, plural, one {alrededor de # nos daría} other {alrededor de # nos darían}}}} una respuesta clara para el {date}.",
  "So far the eyes do not seem to catch up what the treatment held back. To grow again as without treatment is what we expect.":
    "Por ahora los ojos no parecen recuperar lo que el tratamiento frenó. Que vuelvan a crecer como sin tratamiento es lo que esperamos.",
  "The eyes seem to have grown faster than eyes that were never treated. Some of what was held back may be lost again.":
    "Los ojos parecen haber crecido más deprisa que los ojos que nunca se trataron. Parte de lo que se frenó puede perderse de nuevo.",
  "We cannot tell yet whether the eyes catch up what the treatment held back. The next visits will help to show it.":
    "Todavía no sabemos si los ojos recuperan lo que el tratamiento frenó. Las próximas visitas ayudarán a verlo.",
  "Do the eyes catch up after the stop?": "¿Crecen de más los ojos al dejarlo?",
  "We measure the eyes again as soon as you can come.": "Volvemos a medir los ojos en cuanto puedan venir.",
  "We talk with you about what the last visit showed, and whether to change anything.":
    "Hablamos con ustedes de lo que mostró la última visita y de si hay que cambiar algo.",
  "What we do next": "Qué hacemos ahora",
  "No visit is planned. Call us when something about the eyes worries you.":
    "No hay ninguna visita prevista. Llámenos si algo de los ojos le preocupa.",
  "Go on with the treatment as we showed you: {treatment}.":
    "Siga con el tratamiento como le enseñamos: {treatment}.",
  "Put one drop into {eye, select, right {the right eye} left {the left eye} other {each eye}} every night: {treatment}.":
    "Ponga una gota en {eye, select, right {el ojo derecho} left {el ojo izquierdo} other {cada ojo}} todas las noches: {treatment}.",
  "Put one drop into {eye, select, right {the right eye} left {the left eye} other {each eye}} on {nights, plural, one {# night} other {# nights}} a week: {treatment}.":
    "Ponga una gota en {eye, select, right {el ojo derecho} left {el ojo izquierdo} other {cada ojo}} {nights, plural, one {# noche} other {# noches}} por semana: {treatment}.",
  "The treatment begins on {date}: {treatment}.": "El tratamiento empieza el {date}: {treatment}.",
  "You need a new bottle now: the last one was good until {due}.":
    "Necesita un frasco nuevo ya: el último valía hasta el {due}.",
  "Ask for the next bottle now: the one you have is good until {due}.":
    "Pida ya el próximo frasco: el que tiene vale hasta el {due}.",
  "Ask for the next bottle by {order}: the one you have is good until {due}.":
    "Pida el próximo frasco a más tardar el {order}: el que tiene vale hasta el {due}.",
  "A visit is late: it was due by {closes}. Please call us for a date.":
    "Hay una visita atrasada: debía ser a más tardar el {closes}. Llámenos para fijar una fecha.",
  "Come to the next visit between now and {closes}.": "Venga a la próxima visita entre hoy y el {closes}.",
  "Come to the next visit between {opens} and {closes}.":
    "Venga a la próxima visita entre el {opens} y el {closes}.",
  "We still have to decide with you {what, select, restart {whether to treat again} fewer {whether fewer nights are enough} other {whether to stop the treatment}}.":
    "Aún tenemos que decidir con ustedes {what, select, restart {si tratar de nuevo} fewer {si bastan menos noches} other {si acabar el tratamiento}}.",
  "By {closes} we decide with you {what, select, restart {whether to treat again} fewer {whether fewer nights are enough} other {whether to stop the treatment}}.":
    "A más tardar el {closes} decidimos con ustedes {what, select, restart {si tratar de nuevo} fewer {si bastan menos noches} other {si acabar el tratamiento}}.",
  "Between {opens} and {closes} we decide with you {what, select, restart {whether to treat again} fewer {whether fewer nights are enough} other {whether to stop the treatment}}.":
    "Entre el {opens} y el {closes} decidimos con ustedes {what, select, restart {si tratar de nuevo} fewer {si bastan menos noches} other {si acabar el tratamiento}}.",
  "What we saw": "Qué vimos",
  "Nothing has been measured yet.": "Aún no se ha medido nada.",
  "Length of the eyes": "Longitud de los ojos",
  "right {right} mm, left {left} mm on {date}": "derecho {right} mm, izquierdo {left} mm el {date}",
  "{eye, select, right {Length of the right eye} other {Length of the left eye}}":
    "{eye, select, right {Longitud del ojo derecho} other {Longitud del ojo izquierdo}}",
  "{mm} mm on {date}": "{mm} mm el {date}",
  Growth: "Crecimiento",
  "{eye, select, right {Growth of the right eye} other {Growth of the left eye}}":
    "{eye, select, right {Crecimiento del ojo derecho} other {Crecimiento del ojo izquierdo}}",
  "{mm} mm in {months, plural, one {# month} other {# months}}, very likely (95 of 100) {low} to {high} mm":
    "{mm} mm en {months, plural, one {# mes} other {# meses}}, muy probable (95 de 100): {low} a {high} mm",
  "Glasses, mean strength": "Graduación media",
  "right {right} D, left {left} D on {date}": "derecho {right} D, izquierdo {left} D el {date}",
  "{eye, select, right {right eye} other {left eye}} {power} D on {date}":
    "{eye, select, right {ojo derecho} other {ojo izquierdo}} {power} D el {date}",
}
