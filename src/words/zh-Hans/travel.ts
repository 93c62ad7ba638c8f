import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const travel: Catalogue = {
  "no treatment is in use on {date}: there is nothing that such a note could say":
    "{date}没有正在使用的治疗：这样的说明没有内容可写",
  "Note for school and travel": "学校与旅行说明",
  "Made on {date} from the record of {practice}. It is not a prescription.":
    "{date}根据{practice}的病历制作。本说明不是处方。",
  "Child|of the note": "孩子",
  "Born|day of birth": "出生日期",
  "This child is treated so that short-sightedness increases more slowly.":
    "这个孩子正在接受治疗，使近视加深得慢一些。",
  "{name} is treated so that short-sightedness increases more slowly.":
    "{name}正在接受治疗，使近视加深得慢一些。",
  "The treatment is in the care of {practice}. This note says what was in use on {date}; ask for a new one after a change.":
    "治疗由{practice}负责。本说明写明{date}正在使用的治疗；有变动后请索取新的说明。",
  "What the child uses": "使用的治疗",
  "What may be noticed": "可能出现的情况",
  "We have read no report of what may be noticed at this strength. Please tell the parents of anything unusual.":
    "关于这种浓度可能出现的情况，我们没有读到报告。如有异常，请告知家长。",
  "Some children on drops of this strength told of this; others noticed nothing. Please tell the parents when it is new or gets worse.":
    "使用这种浓度滴眼液的孩子中，有些提到过下列情况，有些没有任何感觉。如果新近出现或加重，请告知家长。",
  "What to do": "怎样做",
  "Sunglasses and a hat or cap may be worn, at school too.": "可以戴太阳镜和帽子，在学校也可以。",
  "Reading glasses may be used if the child has them.": "孩子如有阅读眼镜，可以使用。",
  "No drops are needed during school hours: they are given at bedtime by an adult.":
    "上学时间不需要滴眼药水：由成年人在睡前滴。",
  "Keeping and carrying the drops": "滴眼液的保管和携带",
  "Keep the bottle closed, with its label on, and out of the reach of children.":
    "药瓶要盖紧，保留标签，放在儿童拿不到的地方。",
  "On a journey the bottle goes in hand luggage, with its label, together with this note.":
    "旅行时药瓶放在随身行李中，保留标签，并与本说明放在一起。",
  "An eye with a contact lens turns red or hurts: the lens comes out, the parents are called, and the eye is seen by a doctor the same day.":
    "戴接触镜的眼睛发红或疼痛：取下镜片，通知家长，当天请医生检查。",
  "Flashes, floating spots, a curtain, pain in the eye or sudden loss of sight: call the parents; the eye must be seen by a doctor the same day.":
    "出现闪光、漂浮黑点、眼前像有帘子遮挡、眼痛或突然看不见：请通知家长；当天必须请医生检查。",
  "Flashes, floating spots, a curtain, pain in the eye or sudden loss of sight: call the parents; the eye must be seen by a doctor the same day. Urgent contact: {urgent}.":
    "出现闪光、漂浮黑点、眼前像有帘子遮挡、眼痛或突然看不见：请通知家长；当天必须请医生检查。紧急联系：{urgent}。",
  "The drops are poisonous when swallowed. If any was swallowed, call the poison centre of the country you are in at once. A child who is confused, hot and flushed or has a fit needs an ambulance.":
    "滴眼液误服有毒。如有误服，请立即拨打所在国家中毒急救中心的电话。孩子若神志不清、发热潮红或抽搐，请叫救护车。",
  "The drops are poisonous when swallowed. If any was swallowed, call the poison centre at once: {centre}; abroad, that of the country you are in. A child who is confused, hot and flushed or has a fit needs an ambulance.":
    "滴眼液误服有毒。如有误服，请立即拨打中毒急救中心：{centre}；在国外请拨打所在国家的。孩子若神志不清、发热潮红或抽搐，请叫救护车。",
  "Questions to": "咨询",
  "For the practice|signature": "诊所",
  "What to do, and how to keep and carry the drops, is common practice without a published source.":
    "怎样做以及如何保管和携带滴眼液，属于通行做法，没有发表的来源。",
  "What may be noticed: reported of drops of this strength by {sources}.":
    "可能出现的情况：关于这种浓度滴眼液的报告来自 {sources}。",
  "Glasses ({name}): worn all day, in class and outdoors.": "眼镜（{name}）：全天佩戴，课内课外都戴。",
  "Soft contact lenses ({name}), {eye, select, right {in the right eye} left {in the left eye} other {in both eyes}}: put in after getting up, taken out before sleep.":
    "软性接触镜（{name}），{eye, select, right {右眼} left {左眼} other {双眼}}：起床后戴上，睡前取下。",
  "Hard contact lenses ({name}), {eye, select, right {in the right eye} left {in the left eye} other {in both eyes}}: worn during sleep, taken out after getting up.":
    "硬性接触镜（{name}），{eye, select, right {右眼} left {左眼} other {双眼}}：睡眠时佩戴，起床后取下。",
  "Atropine eye drops (the strength is on the label of the bottle): one drop at bedtime {eye, select, right {in the right eye} left {in the left eye} other {in each eye}}, {nights, plural, =7 {every night} one {# night a week} other {# nights a week}}.":
    "阿托品滴眼液（浓度见瓶签）：{nights, plural, =7 {每晚} other {每周 # 晚}}睡前{eye, select, right {右眼} left {左眼} other {双眼各}}滴一滴。",
  "Atropine eye drops {percent} %: one drop at bedtime {eye, select, right {in the right eye} left {in the left eye} other {in each eye}}, {nights, plural, =7 {every night} one {# night a week} other {# nights a week}}.":
    "{percent}% 阿托品滴眼液：{nights, plural, =7 {每晚} other {每周 # 晚}}睡前{eye, select, right {右眼} left {左眼} other {双眼各}}滴一滴。",
  "The pupils may look wider than usual.": "瞳孔看起来可能比平时大。",
  "Reading and writing close up may be harder or blurred.": "近处看书写字可能比较吃力或模糊。",
  "Bright light may bother the child.": "强光可能使孩子不舒服。",
  "Sight may be blurred at times.": "视力有时可能模糊。",
  "The child may have a headache.": "孩子可能头痛。",
  "The eyes or lids may be red, itchy or sore.": "眼睛或眼皮可能发红、发痒或疼痛。",
}
