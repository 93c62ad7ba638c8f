import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const consent: Catalogue = {
  atropine: "阿托品",
  "defocus spectacles": "周边离焦框架眼镜",
  "lenslet spectacles": "微透镜框架眼镜",
  "dual-focus lenses": "双焦点接触镜",
  "multifocal lenses": "多焦点接触镜",
  orthokeratology: "角膜塑形镜",
  "no treatment": "不治疗",
  "{name} {percent} %": "{percent}% {name}",
  "{treatment}, {eye, select, right {right eye} other {left eye}}":
    "{treatment}，{eye, select, right {右眼} other {左眼}}",
  "{treatment}, {nights, plural, one {# night} other {# nights}} a week":
    "{treatment}，每周 {nights, plural, other {#}} 晚",
  "{treatment}, {eye, select, right {right eye} other {left eye}}, {nights, plural, one {# night} other {# nights}} a week":
    "{treatment}，{eye, select, right {右眼} other {左眼}}，每周 {nights, plural, other {#}} 晚",
}
