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
  "For this treatment no figures of what follows a stop were read.":
    "关于停止这种治疗之后的情况，没有读到数字。",
  "Within {months} months after stopping, {percent} % of children became more short-sighted by half a dioptre (0.5 D) or more.":
    "停药后 {months} 个月内，{percent}% 的孩子近视加深了半个屈光度（0.5 D）或更多。",
  "In the two years after stopping, {percent} % of children became more short-sighted by half a dioptre (0.5 D) or more within a year, the sign to treat again.":
    "停药后的两年里，{percent}% 的孩子在一年内近视加深了半个屈光度（0.5 D）或更多，这是需要重新治疗的信号。",
  "In the {months} months after stopping eyes grew {grownMm} mm.":
    "停药后 {months} 个月里，眼轴增长了 {grownMm} 毫米。",
  "In the {months} months after stopping eyes grew {grownMm} mm, {group, select, continued {eyes of children who went on} other {eyes that never had the drug}} {otherMm} mm.":
    "停药后 {months} 个月里，眼轴增长了 {grownMm} 毫米，{group, select, continued {继续用药的孩子} other {从未用药的眼睛}}增长了 {otherMm} 毫米。",
  "In the {months} months after stopping eyes grew {side, select, more {{differenceMm} mm more} other {{differenceMm} mm less}} than eyes that never had the drug{clear, select, no {, too little to be told from no difference} other {}}.":
    "停药后 {months} 个月里，眼轴比从未用药的眼睛{side, select, more {多增长 {differenceMm} 毫米} other {少增长 {differenceMm} 毫米}}{clear, select, no {，差别太小，无法与没有差别区分开} other {}}。",
  "In the {months} months after stopping eyes became {dioptres} D more short-sighted, eyes that never had the drug {control} D.":
    "停药后 {months} 个月里，近视加深了 {dioptres} D，从未用药的眼睛加深了 {control} D。",
  "A review of studies of stopping found that what follows differs from study to study; what returns fades with time.":
    "一篇关于停止治疗的研究综述发现，停止之后的情况因研究而异；反弹会随时间减弱。",
  "A review of studies of stopping found a strong return of growth; what returns fades with time.":
    "一篇关于停止治疗的研究综述发现，眼轴增长的反弹明显；反弹会随时间减弱。",
  "A review of studies of stopping found a weak return of growth; what returns fades with time.":
    "一篇关于停止治疗的研究综述发现，眼轴增长的反弹较弱；反弹会随时间减弱。",
  "A review of studies of stopping found a weak return of growth for soft lenses of this sort; what returns fades with time.":
    "一篇关于停止治疗的研究综述发现，这一类软性接触镜停戴后眼轴增长的反弹较弱；反弹会随时间减弱。",
  "In the year after stopping eyes grew {extra} mm more than expected ({low} to {high} mm).":
    "停止后的一年里，眼轴比预期多增长了 {extra} 毫米（{low} 至 {high} 毫米）。",
  "In a trial over {months} months eyes on {percent} % drops grew {treated} mm on average, eyes on drops without the drug {control} mm: {side, select, more {{difference} mm more} other {a difference of {difference} mm}}.":
    "在一项为期 {months} 个月的试验中，使用 {percent}% 滴眼液的眼睛，眼轴平均增长 {treated} 毫米；使用不含药物的滴眼液的眼睛增长 {control} 毫米：{side, select, more {多 {difference} 毫米} other {相差 {difference} 毫米}}。",
  "In a trial over {months} months eyes with {treatment} grew {treated} mm on average, eyes with ordinary glasses or lenses {control} mm: {side, select, more {{difference} mm more} other {a difference of {difference} mm}}.":
    "在一项为期 {months} 个月的试验中，使用{treatment}的眼睛，眼轴平均增长 {treated} 毫米；使用普通眼镜或接触镜的眼睛增长 {control} 毫米：{side, select, more {多 {difference} 毫米} other {相差 {difference} 毫米}}。",
  "{treatment}: {treated} mm of growth against {control} mm in the group without, over {months} months in one trial.":
    "{treatment}：眼轴增长 {treated} 毫米，未用此治疗的组增长 {control} 毫米，来自一项为期 {months} 个月的试验。",
  "A joint evaluation of many trials of different length puts the difference at {difference} mm; it may be anything from {least} to {most} mm.":
    "对许多长短不一的试验的综合评估得出，差别为 {difference} 毫米；实际可能是 {least} 至 {most} 毫米之间的任何数值。",
  "For this strength the trials give no figure; what was found at other strengths may not hold for it.":
    "对于这一浓度，试验没有给出数字；在其他浓度上的发现不一定适用于它。",
  "All in all we reckon that {mean} % of the growth is held back on average; that average may lie anywhere from {low} to {high} %. How good the evidence is: {confidence}.":
    "总的来说，我们估计平均有 {mean}% 的增长被抑制；这个平均值可能在 {low}% 至 {high}% 之间的任何位置。证据质量：{confidence}。",
  "At this strength the effect is small and may be nothing at all: the trials disagree.":
    "在这一浓度下效果很小，也可能完全没有效果：各项试验结果不一致。",
  "the trials contradict each other": "各项试验互相矛盾",
  "weak|evidence": "弱",
  "one trial only|evidence": "仅有一项试验",
  "moderate|evidence": "中等",
  "moderate, mostly from children of East Asia": "中等，主要来自东亚儿童",
  "moderate; this strength is not for routine use": "中等；这一浓度不用于常规治疗",
  "good|evidence": "良好",
  "consent to {name} was withdrawn on {withdrawn}": "对{name}的同意已于 {withdrawn} 撤回",
  "consent to {name} of {date} was given on an earlier wording; version {version} holds since {from}":
    "{date} 对{name}的同意是依据较早的文本；{version} 版自 {from} 起生效",
  "no consent to {name} is recorded": "没有对{name}的同意记录",
  "no strength": "未写明浓度",
  "consent to {treatment} names {strengths}, not {asked}":
    "对{treatment}的同意写的是 {strengths}，不是 {asked}",
  "{percent} %": "{percent}%",
  "the treatment with its strength": "治疗及其浓度",
  "what trials found that it holds back": "试验发现它能抑制多少",
  "unwanted effects at this strength": "这一浓度的副作用",
  "what other treatments hold back": "其他治疗能抑制多少",
  "what follows a stop": "停止之后的情况",
  "how exact bottles made to order were found to be": "专门配制的药瓶浓度有多准确",
  "milligrams in a bottle, and from how many it is dangerous": "一瓶中的毫克数，以及从多少起有危险",
  "what the family pays": "家庭支付的费用",
  "the poison centre's number": "中毒急救中心的电话",
  "where to call for same-day care": "当天就诊应拨打的电话",
  'Wording "{id}", version {version}, {language}': '文本 "{id}"，版本 {version}，{language}',
  "Where the figures come from": "数字的来源",
  "When {samples} bottles of {percent} % drops from {pharmacies} pharmacies were measured, they held between {min} and {max} % of the strength on their label.":
    "对来自 {pharmacies} 家药房的 {samples} 瓶 {percent}% 滴眼液进行测量时，其浓度为标签浓度的 {min}% 至 {max}%。",
  "We give you the full cost in writing before you decide: the visits, the measuring and what is used up.":
    "在您决定之前，我们会书面告知您全部费用：就诊、测量和耗用的物品。",
  "the poison centre of your country; ask us for its number":
    "您所在国家的中毒急救中心；请向我们询问电话号码",
  "this practice, or an emergency eye service when we are closed": "本诊所；我们关门时请联系眼科急诊",
  "a bottle of {volume} mL holds {mg} mg of it": "{volume} 毫升一瓶含 {mg} 毫克",
  "At this strength {bottles}; from {mg} mg a child may be severely poisoned.":
    "在这一浓度下，{bottles}；从 {mg} 毫克起，儿童可能严重中毒。",
  "From {from} to {to}, by our fees “{title}” of {day}: {notCovered} that no insurance covers, {uncertain} of which it is uncertain, {covered} that is covered.":
    "从 {from} 到 {to}，按我们 {day} 的收费标准“{title}”：{notCovered} 不由任何保险支付，{uncertain} 是否由保险支付尚不确定，{covered} 由保险支付。",
  "Not counted, because no fee is set for it: {what}.": "因未设收费标准而没有计入：{what}。",
  "No figures of side effects at this strength were read.": "关于这一浓度的副作用，没有读到数字。",
  "{since, select, months {After {months} months} other {On these drops}} the pupil in bright light was {wider} mm wider, on average.":
    "{since, select, months {{months} 个月后} other {使用这种滴眼液时}}，强光下的瞳孔平均大了 {wider} 毫米。",
  "{since, select, months {After {months} months} other {On these drops}} the power to focus near was {low} to {high} D weaker, on average.":
    "{since, select, months {{months} 个月后} other {使用这种滴眼液时}}，看近时的调节力平均弱了 {low} 至 {high} D。",
  "{since, select, months {After {months} months} other {On these drops}} the power to focus near was {lost} D weaker{beside, select, yes { ({without} D on drops without the drug)} other {}}, on average.":
    "{since, select, months {{months} 个月后} other {使用这种滴眼液时}}，看近时的调节力平均弱了 {lost} D{beside, select, yes {（使用不含药物的滴眼液时为 {without} D）} other {}}。",
  "bothered by light": "怕光",
  "blurred sight near by": "看近模糊",
  "blurred sight": "视物模糊",
  "trouble with reading": "阅读困难",
  headache: "头痛",
  "allergy of lids or eyes": "眼睑或眼睛过敏",
  "irritated eyes": "眼睛刺激不适",
  "stopped because of it": "因此停药",
  "{complaint} {percent} %": "{complaint} {percent}%",
  "{complaint} {percent} % ({without} %)": "{complaint} {percent}%（{without}%）",
  "In a trial{beside, select, yes {, in brackets on drops without the drug} other {}}: {complaints}.":
    "在一项试验中{beside, select, yes {（括号内为使用不含药物的滴眼液者）} other {}}：{complaints}。",
  "In a trial over {months} months{beside, select, yes {, in brackets on drops without the drug} other {}}: {complaints}.":
    "在一项为期 {months} 个月的试验中{beside, select, yes {（括号内为使用不含药物的滴眼液者）} other {}}：{complaints}。",
  "In year {year} of a trial with {n} children on this strength{beside, select, yes {, in brackets on drops without the drug} other {}}: {complaints}.":
    "在一项有 {n} 名儿童使用这一浓度的试验的第 {year} 年{beside, select, yes {（括号内为使用不含药物的滴眼液者）} other {}}：{complaints}。",
  "In a group of {n} children on this strength{beside, select, yes {, in brackets on drops without the drug} other {}}: {complaints}.":
    "在 {n} 名使用这一浓度的儿童中{beside, select, yes {（括号内为使用不含药物的滴眼液者）} other {}}：{complaints}。",
  "In a trial over {months} months with {n} children on this strength{beside, select, yes {, in brackets on drops without the drug} other {}}: {complaints}.":
    "在一项为期 {months} 个月、有 {n} 名儿童使用这一浓度的试验中{beside, select, yes {（括号内为使用不含药物的滴眼液者）} other {}}：{complaints}。",
  "In a group of {n} children on {low} % or {high} %, {bothered} % were bothered by light; glasses that darken in the sun helped {helped} %.":
    "在 {n} 名使用 {low}% 或 {high}% 的儿童中，{bothered}% 怕光；在阳光下会变深色的眼镜对 {helped}% 有帮助。",
  "No figures of side effects of such glasses were read.": "关于这类眼镜的副作用，没有读到数字。",
  "Contact lenses can lead to an infection of the cornea: in {low} to {high} of 10 000 wearers a year. About {percent} % of those lose some sight by it.":
    "接触镜可能引起角膜感染：每年每 10 000 名配戴者中有 {low} 至 {high} 人。其中约 {percent}% 的人会因此丧失部分视力。",
  "{path} must be {allowed}; it is {value}": "{path} 必须是 {allowed}；现为 {value}",
  "one of {names}": "{names} 之一",
  "a version that has not been used before, or the very name of the one it translates":
    "未曾用过的版本，或它所翻译的版本的原名",
  "text with no other names in braces than {names}": "花括号内只含以下名称的文字：{names}",
  "Who consents": "谁同意",
  "Who signs": "签名人",
  "Relation to the child": "与孩子的关系",
  "The child, asked in the four steps of the text": "按文中四个步骤询问孩子",
  "The child says no. That is recorded with the consent; talk it over before anything is started.":
    "孩子说不愿意。这会与同意书一起记录；在开始任何治疗之前请先商量。",
  "Sign here with a pen, a finger or the mouse.": "请用笔、手指或鼠标在此签名。",
  "Signed.": "已签名。",
  "clear the signature": "清除签名",
  "Name, typed by who signs in place of a signature": "姓名（由签名人输入，代替签名）",
  "Something is still missing; see below.": "还有内容未填；请看下方。",
  "must be the name of who signs": "请填写签名人的姓名",
  "must say how who signs is related to the child": "请填写签名人与孩子的关系",
  "must be chosen": "请选择一项",
  "must be the name, typed by who signs": "请由签名人输入姓名",
  "must be signed; with a keyboard choose “{way}”": "请签名；只用键盘时请选择“{way}”",
  "Name of the parent or guardian": "父母或监护人姓名",
  "The child agrees: yes / no / was not asked": "孩子同意：是 / 否 / 未询问",
  agrees: "同意",
  "does not agree": "不同意",
  "was not asked": "未询问",
  mother: "母亲",
  father: "父亲",
  "legal guardian": "法定监护人",
  "the young person": "本人（青少年）",
  "{practice}. Child: {name}, born {born}.": "{practice}。孩子：{name}，出生日期：{born}。",
  "your child": "您的孩子",
  "For your decision with your eye doctor, whose advice it does not replace. Local law, product licences and the pharmacist decide. Not a medical device.":
    "供您与眼科医生一起作决定，不能代替医生的意见。以当地法律、产品许可和药剂师的决定为准。不是医疗器械。",
  "nobody consents to having no treatment": "不治疗不需要同意书",
  "a consent to drops names their strength, and none is given":
    "滴眼液的同意书要写明浓度，而这里没有给出浓度",
  "no treatment that needs a consent is asked about, in use, planned or decided for this child":
    "这个孩子没有询问、正在使用、计划或决定使用需要同意书的治疗",
  Child: "孩子",
  Born: "出生日期",
  Number: "编号",
  Treatment: "治疗",
  "Printed on": "打印日期",
  "Flashes, floaters, a curtain over the sight, pain or sudden loss of sight: have the eye seen on the same day. Call: {urgent}.":
    "眼前闪光、有飘浮的黑影、像有帘子遮住视野、眼痛或视力突然下降：请当天就让医生检查眼睛。请致电：{urgent}。",
  "These drops are poisonous when swallowed: keep them from children. If a child may have swallowed some, do not wait. Call: {poisonCentre}.":
    "这种滴眼液吞下去有毒：请放在孩子拿不到的地方。如果孩子可能吞下了药水，请不要等待。请致电：{poisonCentre}。",
  "I have read this text or had it read to me, my questions were answered, and I consent. I may change my mind at any time.":
    "我已阅读或有人为我朗读了本文，我的问题得到了回答，我表示同意。我可以随时改变主意。",
  "Parent or guardian, and relation to the child": "父母或监护人，以及与孩子的关系",
  "The child, if able and willing to sign": "孩子（如能够并愿意签名）",
  "Clinician who explained it": "作说明的医务人员",
  "The practice has no wording of its own in force in this language: this is the one that ships.":
    "本诊所没有此语言的自有文本在用：这是随程序提供的文本。",
}
