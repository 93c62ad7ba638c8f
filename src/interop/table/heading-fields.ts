/**
 * What headings mean, by their words without eye and unit, English and Spanish. Trade words only. A heading that fits two
 * fields is left unmapped: a person knows better.
 */
const HEADINGS: Readonly<Record<string, readonly string[]>> = {
  number: [
    "id,no,nr,num,number,numero,code,codigo,nhc,mrn,expediente,historia",
    "patient id,patient no,patient number,child id,child no,child number,chart no,chart number,file no,record number",
    "n historia,no historia,numero historia,numero de historia,historia clinica,numero de paciente,id paciente",
  ],
  name: ["name,patient,child,paciente,full name,patient name,child name,nombre completo,nombre y apellidos"],
  givenName: ["given name,first name,forename,nombre de pila,nombre"],
  familyName: ["family name,last name,surname,apellido,apellidos"],
  born: [
    "born,dob,birth date,birthdate,date of birth,birthday,birth",
    "fecha de nacimiento,fecha nacimiento,nacimiento,nacido,nacida,f nac,fnac,fecha nac,f nacimiento",
  ],
  sex: ["sex,gender,sexo,genero"],
  ancestry: ["ancestry,ethnicity,ethnic origin,ascendencia,etnia,origen"],
  myopicParents: ["myopic parents,parents myopic,parental myopia,padres miopes,miopia parental"],
  date: [
    "date,visit date,date of visit,exam date,examination date,date of exam,visit,examined,measured",
    "fecha,fecha visita,fecha de visita,fecha de la visita,fecha examen,fecha de examen,fecha revision,visita",
  ],
  eye: ["eye,ojo,side,laterality,lateralidad"],
  axialLengthMm: ["al,axl,axial length,axial,length,longitud axial,long axial,lax,axial eye length"],
  axialLengthSdMm: [
    "al sd,sd al,axial length sd,sd axial length,sd,de longitud axial,desviacion longitud axial",
  ],
  signalToNoise: ["snr,signal to noise,signal noise,senal ruido,relacion senal ruido"],
  readings: ["readings,number of readings,n readings,lecturas,numero de lecturas"],
  lengthMethod: ["al method,length method,axial length method,metodo longitud axial,metodo al"],
  lengthDevice: ["biometer,al device,biometro,length device"],
  sphere: ["sph,sphere,s,esf,esfera,sfera"],
  cylinder: ["cyl,cylinder,c,cil,cilindro"],
  axis: ["axis,ax,a,eje"],
  prescription: ["rx,prescription,refraction,refraccion,graduacion,receta"],
  sphericalEquivalent: ["se,ser,seq,spherical equivalent,equivalente esferico,ee,eq esf,sph eq,spheq"],
  cycloplegic: ["cycloplegic,cycloplegia,cyclo,cicloplejia,cicloplejico,cycloplegic refraction,ciclo"],
  refractionMethod: ["refraction method,metodo refraccion,metodo de refraccion"],
  corneaFlatMm: ["k1,kf,flat k,k flat,flat,flat radius,r1,radius 1,radio plano,k plano,k plana,rf"],
  corneaSteepMm: ["k2,ks,steep k,k steep,steep,steep radius,r2,radius 2,radio curvo,k curvo,k curva,rs"],
  pupilPhotopicMm: ["photopic pupil,pupil photopic,pupila fotopica,photopic"],
  pupilMesopicMm: ["mesopic pupil,pupil mesopic,pupila mesopica,mesopic"],
  accommodationD: [
    "accommodation,amplitude of accommodation,accommodation amplitude,aa,acomodacion,amplitud de acomodacion",
  ],
  distanceLogMAR: [
    "logmar,va logmar,acuity logmar,distance logmar,distance va logmar,av logmar,agudeza logmar,logmar distance",
  ],
  distanceDecimal: ["va decimal,acuity decimal,decimal va,decimal acuity,av decimal,agudeza decimal"],
  distanceSnellen: ["va snellen,snellen,snellen va,av snellen,agudeza snellen"],
  nearLogMAR: ["near logmar,near va logmar,near acuity logmar,av cerca logmar,agudeza cerca logmar"],
  pressureMmHg: ["iop,pio,intraocular pressure,pressure,tonometry,presion intraocular,presion,tonometria"],
  oldGlasses: ["old glasses,is old glasses,earlier glasses,gafas previas,gafas anteriores"],
  glassesDate: [
    "glasses date,date of glasses,glasses prescribed,date prescribed,fecha gafas,fecha de las gafas,fecha prescripcion",
  ],
  glassesSphere: [
    "glasses sph,glasses sphere,old sph,old sphere,gafas esf,gafas esfera,esf gafas,esfera gafas",
  ],
  glassesCylinder: [
    "glasses cyl,glasses cylinder,old cyl,old cylinder,gafas cil,gafas cilindro,cil gafas,cilindro gafas",
  ],
  glassesAxis: ["glasses axis,glasses ax,old axis,gafas eje,eje gafas"],
  glassesPrescription: ["glasses,glasses rx,old rx,spectacles,gafas,rx gafas,graduacion gafas"],
  treatmentKind: ["treatment,therapy,tratamiento,terapia"],
  concentrationPercent: [
    "concentration,strength,atropine,atropina,concentracion,atropine concentration,atropine strength",
  ],
  treatmentFrom: [
    "treatment start,treatment from,start of treatment,started,start,inicio tratamiento,inicio del tratamiento,inicio",
  ],
  treatmentTo: [
    "treatment end,treatment to,end of treatment,stopped,fin tratamiento,fin del tratamiento,treatment stop",
  ],
  comment: [
    "comment,comments,remark,remarks,note,notes,comentario,comentarios,observaciones,observacion,notas",
  ],
}

const fieldByWords = new Map(
  Object.entries(HEADINGS).flatMap(([field, lists]) =>
    lists.flatMap((list) => list.split(",").map((words) => [words, field] as const)),
  ),
)

/** The field that the words of a heading name; null when they are not among the known ones. */
export const fieldOfWords = (words: readonly string[]): string | null =>
  fieldByWords.get(words.join(" ")) ?? null
