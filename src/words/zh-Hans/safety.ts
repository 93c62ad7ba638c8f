import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const safety: Catalogue = {
  "light sensitivity": "畏光",
  headache: "头痛",
  "near blur": "看近模糊",
  stinging: "刺痛",
  redness: "眼红",
  itching: "眼痒",
  "other|symptom": "其他症状",
  "verified: product text of 1 % drops, excerpt": "已核实：1% 滴眼液说明书，节选",
  "narrow angle or shallow chamber": "房角狭窄或前房浅",
  "atropine is not given with a narrow angle or closed-angle glaucoma": "房角狭窄或闭角型青光眼者不用阿托品",
  "allergy to drops": "对滴眼液过敏",
  "atropine is not given with an allergy to any ingredient of the bottle, preservative included":
    "对瓶内任何成分（包括防腐剂）过敏者不用阿托品",
  "under 3 months of age": "不足 3 个月大",
  "atropine is not used under 3 months of age": "不足 3 个月大的婴儿不用阿托品",
  "verified: product text of 1 % drops, secondary": "已核实：1% 滴眼液说明书，二手来源",
  "{symptom} grade {grade} of 3 on {date}; before the drops, on {day}, grade {earlier}.":
    "{symptom}：{date} 为 {grade} 级（最高 3 级）；用药前 {day} 为 {earlier} 级。",
  "{symptom} grade {grade} of 3 on {date}.": "{symptom}：{date} 为 {grade} 级（最高 3 级）。",
  "{eye, select, right {Right photopic pupil} other {Left photopic pupil}} {now} mm on {on}, {wider} mm wider than {before} mm on {day} before the drops. The limit of comfort taken is {limit} mm (one small study, n = 12, known from a news summary only; its 3 mm is a difference between the eyes after drops in one eye); two measurements of one pupil may differ by {retest} mm.":
    "{eye, select, right {右眼} other {左眼}}明视瞳孔在 {on} 为 {now} mm，比用药前 {day} 的 {before} mm 大 {wider} mm。所采用的舒适限度为 {limit} mm（一项小型研究，n = 12，仅见于新闻摘要；其 3 mm 是单眼用药后两眼之差）；同一瞳孔两次测量可相差 {retest} mm。",
  "It was not measured before the drops.": "用药前没有测量。",
  "It was {before} D on {day} before the drops, by the same method.":
    "用药前 {day} 以同样方法测得 {before} D。",
  "The one on {day} before the drops is not compared: the method is another or not stated.":
    "用药前 {day} 的测量不作比较：方法不同或未注明。",
  "{eye, select, right {Right amplitude of accommodation} other {Left amplitude of accommodation}} {now} D on {on}{method, select, push-up { by push-up} retinoscopy { by retinoscopy} other {, method not stated}}, below the {limit} D taken as the limit of comfort (one small study, n = 12, known from a news summary only).":
    "{eye, select, right {右眼} other {左眼}}调节幅度在 {on} 为 {now} D{method, select, push-up {（移近法）} retinoscopy {（检影法）} other {（方法未注明）}}，低于作为舒适限度的 {limit} D（一项小型研究，n = 12，仅见于新闻摘要）。",
  "{eye, select, right {Right near acuity} other {Left near acuity}} {now} logMAR on {on}, {worse} worse than {before} on {day} before the drops. A loss of {limit} or more is looked into (common practice, no source).":
    "{eye, select, right {右眼} other {左眼}}近视力在 {on} 为 {now} logMAR，比用药前 {day} 的 {before} 差 {worse}。下降 {limit} 或以上需要查明（通行做法，无来源）。",
  "born {day}": "出生于 {day}",
  "{name}: yes on {on}, while {treatment} is in use. {says} ({grade}).":
    "{name}：{on} 回答“是”，而目前正在使用{treatment}。{says}（{grade}）。",
  "{name}: yes on {on} ({note}), while {treatment} is in use. {says} ({grade}).":
    "{name}：{on} 回答“是”（{note}），而目前正在使用{treatment}。{says}（{grade}）。",
  "{before}, {next}": "{before}、{next}",
  "sudden loss of vision": "视力突然丧失",
  "a curtain over the sight": "眼前像有幕布遮挡",
  flashes: "闪光",
  floaters: "飞蚊",
  "pain in the eye": "眼痛",
  "{signs}: told on {date}. Same-day care: the front vitreous and the dilated retina are looked at, or the child goes to someone who can. Nobody reassures without an examination.":
    "{signs}：于 {date} 告知。须当天就诊：检查前部玻璃体，并散瞳检查视网膜；做不到时，请孩子当天去能做的地方。未经检查，不作任何安慰性的保证。",
  "{signs}: told on {date}. Noted: {notes}. Same-day care: the front vitreous and the dilated retina are looked at, or the child goes to someone who can. Nobody reassures without an examination.":
    "{signs}：于 {date} 告知。备注：{notes}。须当天就诊：检查前部玻璃体，并散瞳检查视网膜；做不到时，请孩子当天去能做的地方。未经检查，不作任何安慰性的保证。",
  "verified: product texts of 1 % drops, one an excerpt and one secondary":
    "已核实：1% 滴眼液的两份说明书，一份为节选，一份为二手来源",
  "raises the sensitivity to atropine; a specialist decides": "对阿托品更敏感；由专科医生决定",
  "was a reason to leave a child out of the trials; a specialist decides": "是试验的排除条件；由专科医生决定",
  "verified: registry record of one trial, secondary list of another":
    "已核实：一项试验的注册记录，另一项试验的二手清单",
  "Down syndrome": "唐氏综合征",
  "verified: product text of 1 % drops, secondary, and the exclusion list of a trial":
    "已核实：1% 滴眼液说明书（二手来源）和一项试验的排除清单",
  "spastic paralysis": "痉挛性瘫痪",
  "brain injury": "脑损伤",
  "other disease of the eye, glaucoma included": "其他眼病，包括青光眼",
  "keratoconus or another irregular cornea": "圆锥角膜或其他角膜不规则",
  "earlier operation on an eye": "曾做过眼部手术",
  "signs of a wider condition": "全身性疾病的征象",
  "heart condition": "心脏病",
  "care with conditions of a fast heart rate; a reason is recorded": "心率过快的疾病须谨慎；须记录理由",
  "disease of the lungs or airways": "肺或呼吸道疾病",
  "asked before atropine is considered; it was a reason to leave a child out of the trials":
    "考虑使用阿托品前须询问；曾是试验的排除条件",
  "verified: secondary list of a trial, excerpt of a product text, registry record":
    "已核实：一项试验的二手清单、一份说明书的节选、一份注册记录",
  "other medicines that act like atropine": "与阿托品作用相似的其他药物",
  "their effects add up": "作用会叠加",
  "other drops that widen the pupil": "其他散瞳滴眼液",
  "severe reactions of children, some of them fatal, were reported, mostly with several such drops at once":
    "曾有儿童出现严重反应的报告，其中有死亡病例，多为同时使用几种此类滴眼液",
  "verified: excerpt of a regulator's page": "已核实：监管机构网页的节选",
  "raised pressure in the eye": "眼压升高",
  "care with raised pressure; {limit} mmHg was the entry limit of a trial (secondary)":
    "眼压升高者须谨慎；{limit} mmHg 是一项试验的入组上限（二手来源）",
  "contact lenses": "隐形眼镜",
  "one product text of 1 % drops says no soft lenses during treatment; another, to wait 15 minutes after preserved drops":
    "1% 滴眼液的一份说明书写明治疗期间不戴软性隐形眼镜；另一份写明使用含防腐剂的滴眼液后须等 15 分钟",
  pregnancy: "怀孕",
  "talked through before drops are started": "开始用药前先谈清楚",
  "common practice, no source": "通行做法，无来源",
  "{eye, select, right {right {mmHg} mmHg} other {left {mmHg} mmHg}}":
    "{eye, select, right {右眼 {mmHg} mmHg} other {左眼 {mmHg} mmHg}}",
  "Intraocular pressure on {on}: {figures}; {limit} mmHg and more is looked into (entry limit of a trial, secondary).":
    "{on} 的眼压：{figures}；达到 {limit} mmHg 需要查明（一项试验的入组上限，二手来源）。",
  "Intraocular pressure on {on}: {figures}; {limit} mmHg and more is looked into (entry limit of a trial, secondary); the eyes differ by {apart} mmHg, and more than {most} is looked into (one study, n = 578, abstract).":
    "{on} 的眼压：{figures}；达到 {limit} mmHg 需要查明（一项试验的入组上限，二手来源）；两眼相差 {apart} mmHg，超过 {most} 需要查明（一项研究，n = 578，摘要）。",
  "Intraocular pressure on {on}: {figures}; the eyes differ by {apart} mmHg, and more than {most} is looked into (one study, n = 578, abstract).":
    "{on} 的眼压：{figures}；两眼相差 {apart} mmHg，超过 {most} 需要查明（一项研究，n = 578，摘要）。",
  "{eye, select, right {Right distance acuity} other {Left distance acuity}} {now} logMAR on {on}, worse than {limit} (entry limit of a trial, secondary), if it was taken with the best correction.":
    "{eye, select, right {右眼} other {左眼}}远视力在 {on} 为 {now} logMAR，差于 {limit}（一项试验的入组上限，二手来源），前提是以最佳矫正测得。",
  "{eye, select, right {Right photopic pupil} other {Left photopic pupil}} {now} mm on {on}, after the stop, has not come back to photopic pupil {before} mm of {day} before the drops (further than the error of measurement; no source for this check).":
    "停药后，{eye, select, right {右眼} other {左眼}}明视瞳孔在 {on} 为 {now} mm，没有恢复到用药前 {day} 的 {before} mm（超出测量误差；此项检查无来源）。",
  "{eye, select, right {Right amplitude of accommodation} other {Left amplitude of accommodation}} {now} D on {on}, after the stop, has not come back to amplitude of accommodation {before} D of {day} before the drops (further than the error of measurement; no source for this check).":
    "停药后，{eye, select, right {右眼} other {左眼}}调节幅度在 {on} 为 {now} D，没有恢复到用药前 {day} 的 {before} D（超出测量误差；此项检查无来源）。",
  "{eye, select, right {Right near acuity} other {Left near acuity}} {now} logMAR on {on}, after the stop, has not come back to near acuity {before} logMAR of {day} before the drops (further than the error of measurement; no source for this check).":
    "停药后，{eye, select, right {右眼} other {左眼}}近视力在 {on} 为 {now} logMAR，没有恢复到用药前 {day} 的 {before} logMAR（超出测量误差；此项检查无来源）。",
  "Effects outside the eye told on {date}. The product texts of 1 % atropine name flushing, fever, fast pulse, dry mouth, constipation, trouble passing water, change of behaviour or sleep.":
    "{date} 告知有眼部以外的反应。1% 阿托品的说明书列有：皮肤潮红、发热、心跳加快、口干、便秘、排尿困难、行为或睡眠改变。",
  "Effects outside the eye ({note}) told on {date}. The product texts of 1 % atropine name flushing, fever, fast pulse, dry mouth, constipation, trouble passing water, change of behaviour or sleep.":
    "{date} 告知有眼部以外的反应（{note}）。1% 阿托品的说明书列有：皮肤潮红、发热、心跳加快、口干、便秘、排尿困难、行为或睡眠改变。",
}
