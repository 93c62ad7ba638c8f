import type { ConsentWording } from "../../practice-rules.js"

// Machine-made; not yet reviewed by a clinician whose own language this is. Section for section as in English.

const drops: ConsentWording = {
  id: "drops",
  version: "1",
  from: "2026-11-25",
  language: "es",
  title: "Consentimiento para el tratamiento con gotas oculares de {treatment}",
  isMaterial: false,
  sections: [
    {
      heading: "De qué se trata",
      text: "Su hijo o hija tiene miopía porque sus ojos han crecido demasiado a lo largo para su edad, y siguen creciendo. Una gota de {treatment} en cada ojo tratado al acostarse puede frenar este crecimiento. Es poco probable que lo detenga, y no deshace lo que ya ha crecido: seguirá necesitando gafas o lentes de contacto.\nCada dioptría menos reduce el riesgo de enfermedades de los ojos más adelante en la vida; la miopía baja y la moderada también conllevan cierto riesgo.\nNo se puede saber de antemano cuánto servirá en este caso. Tampoco se puede saber después cuánto habrían crecido los ojos sin tratamiento. Nosotros medimos y le decimos lo que las mediciones permiten afirmar.",
    },
    {
      heading: "Sin autorización para este uso y preparadas por encargo",
      text: "Salvo que le digamos otra cosa, estas gotas no están autorizadas para frenar la miopía donde usted vive. Usar así un medicamento se llama uso fuera de indicación. Eso no quiere decir que sea incorrecto ni experimental; quiere decir que ninguna autoridad ha sopesado los beneficios y los daños para este uso.\nEl frasco lo prepara por encargo una farmacia y no es un producto de fábrica. {quality}\nLas autoridades no están de acuerdo sobre el beneficio: en la Unión Europea, en 2025, se autorizó un producto de atropina al 0,01 % y se rechazó otro producto de atropina distinto.",
    },
    {
      heading: "Lo que puede lograr, en cifras",
      text: "{benefit}\nSon promedios de grupos. A su hijo o hija puede irle mejor o peor.",
    },
    {
      heading: "Efectos no deseados con esta concentración",
      text: "{sideEffects}\nLa frecuencia de las molestias depende mucho de cómo se pregunta, así que fíjese en la diferencia con el grupo sin el medicamento. Pueden ayudar las gafas que se oscurecen al sol. Avísenos si algo le molesta; siempre es posible bajar la concentración o dejarlo.\nDestellos, manchas que flotan, una cortina delante de la vista, dolor o pérdida repentina de la visión: haga que revisen el ojo el mismo día. Llame a: {urgent}.",
    },
    {
      heading: "Otras opciones",
      text: "{alternatives}\nNingún tratamiento: las gafas corrientes dan una visión nítida y no están pensadas para frenar el crecimiento. Los ojos se siguen midiendo, y el tratamiento puede empezar más adelante.",
    },
    {
      heading: "Lo que cuesta",
      text: "{cost}\nSi tenemos un interés propio en alguno de estos tratamientos, se lo decimos.",
    },
    {
      heading: "Cómo guardar el frasco, y el riesgo de intoxicación",
      text: "Guarde el frasco como dice su etiqueta y deséchelo en la fecha indicada en ella, aunque quede algo. Lávese las manos después de usarlo y mantenga las gotas lejos de la boca.\nLa atropina es un veneno si se traga. {contents} Guarde el frasco fuera de la vista y del alcance de todos los niños de la casa.\nSi un niño puede haber tragado algo, no espere. Llame a: {poisonCentre}. Confusión, fiebre, piel roja y seca, pulso rápido o convulsiones: llame a una ambulancia.",
    },
    {
      heading: "Lo que le pedimos",
      text: "Una gota al acostarse en cada ojo tratado, todas las noches. Venga a las revisiones; sin mediciones nadie puede decir si da resultado. Díganos las noches que se saltaron: cambia la manera de leer las mediciones, y no se culpa a nadie.",
    },
    {
      heading: "Su derecho a dejarlo, y lo que sigue",
      text: "Puede dejarlo en cualquier momento, sin dar un motivo y sin que por ello pierda atención alguna. Por favor, avísenos, para que podamos medir los ojos después de dejarlo.\n{afterStopping}\nLas guías no están de acuerdo sobre cuándo dejarlo. Planeamos el final juntos y lo revisamos cada año.",
    },
    {
      heading: "Para su hijo o hija",
      text: "También preguntamos a su hijo o hija, con palabras adecuadas a su edad:\n1. Estas gotas pueden ayudar a que tus ojos crezcan más despacio. ¿Sabes por qué hablamos de eso?\n2. Se pone una gota al acostarse. La luz fuerte puede molestarte, y la letra pequeña de cerca puede verse borrosa.\n3. Cuéntanos con tus palabras qué va a pasar. ¿Alguien te está presionando?\n4. ¿Te gustaría probarlo? Puedes decir que no, y puedes cambiar de opinión.",
    },
  ],
}

const optical: ConsentWording = {
  id: "optical",
  version: "1",
  from: "2026-11-25",
  language: "es",
  title: "Consentimiento para el tratamiento con {treatment}",
  isMaterial: false,
  sections: [
    {
      heading: "De qué se trata",
      text: "Su hijo o hija tiene miopía porque sus ojos han crecido demasiado a lo largo para su edad, y siguen creciendo. El tratamiento con {treatment} puede frenar este crecimiento. Es poco probable que lo detenga, y no deshace lo que ya ha crecido.\nNo se puede saber de antemano cuánto servirá en este caso. Tampoco se puede saber después cuánto habrían crecido los ojos sin tratamiento. Que el producto esté autorizado para frenar la miopía depende del país y del producto: se lo decimos.",
    },
    {
      heading: "Lo que puede lograr, en cifras",
      text: "{benefit}\nSon promedios de grupos. A su hijo o hija puede irle mejor o peor.",
    },
    {
      heading: "Efectos no deseados",
      text: "{sideEffects}\nDestellos, manchas que flotan, una cortina delante de la vista, dolor, un ojo rojo si usa lentes de contacto o pérdida repentina de la visión: haga que revisen el ojo el mismo día. Llame a: {urgent}.",
    },
    {
      heading: "Otras opciones",
      text: "{alternatives}\nNingún tratamiento: las gafas corrientes dan una visión nítida y no están pensadas para frenar el crecimiento. Los ojos se siguen midiendo, y el tratamiento puede empezar más adelante.",
    },
    {
      heading: "Lo que cuesta",
      text: "{cost}\nSi tenemos un interés propio en alguno de estos tratamientos, se lo decimos.",
    },
    {
      heading: "Su derecho a dejarlo, y lo que sigue",
      text: "Puede dejarlo en cualquier momento, sin dar un motivo y sin que por ello pierda atención alguna. Por favor, avísenos, para que podamos medir los ojos después de dejarlo.\n{afterStopping}",
    },
    {
      heading: "Para su hijo o hija",
      text: "También preguntamos a su hijo o hija, con palabras adecuadas a su edad:\n1. Esto puede ayudar a que tus ojos crezcan más despacio. ¿Sabes por qué hablamos de eso?\n2. Se lleva como te enseñamos, todos los días o todas las noches. Hay que acostumbrarse.\n3. Cuéntanos con tus palabras qué va a pasar. ¿Alguien te está presionando?\n4. ¿Te gustaría probarlo? Puedes decir que no, y puedes cambiar de opinión.",
    },
  ],
}

export const spanish: readonly ConsentWording[] = [drops, optical]
