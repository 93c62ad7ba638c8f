import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const family: Catalogue = {
  "{named, select, yes {How {name}'s eyes are doing} other {How your child's eyes are doing}}":
    "{named, select, yes {{name} 的眼睛情况} other {您孩子的眼睛情况}}",
  "This page helps you to talk with your eye doctor. It does not replace an examination, and it is not a medical device.":
    "本页帮助您与眼科医生交流。它不能代替检查，也不是医疗器械。",
  "Made on {date} from what {practice} measured. No measurement is exact. Usual growth and what may come are worked out from published studies of groups of children; your child may do better or worse. Harm in later life: {source}.":
    "{date}根据{practice}的测量结果制作。任何测量都不是绝对精确的。通常的增长和今后的可能情况由已发表的儿童群体研究推算；您的孩子可能更好，也可能更差。成年后的损害：{source}。",
  "How well known: several trials taken together ({sources}).": "可靠程度：多项试验合并分析（{sources}）。",
  "How well known: one trial ({sources}).": "可靠程度：一项试验（{sources}）。",
  "How well known: a review of studies ({sources}).": "可靠程度：一篇研究综述（{sources}）。",
  "How well known: studies that watched children. They show a link, not a cause ({sources}).":
    "可靠程度：观察儿童的研究，只能说明有关联，不能说明因果（{sources}）。",
  "How well known: worked out from several studies ({sources}).": "可靠程度：由多项研究推算（{sources}）。",
  "How well known: not known. We have read no trial of it.": "可靠程度：尚不清楚。我们没有读到这方面的试验。",
  "Eyes to scale": "按比例画的眼睛",
  "A usual eye at {age}": "{age} 岁时常见的眼睛",
  "sees far without glasses; drawn to scale": "不戴眼镜也能看清远处；按比例绘制",
  "{named, select, yes {{name}, {eye, select, right {right eye} other {left eye}}} other {{eye, select, right {Right eye now} other {Left eye now}}}}":
    "{named, select, yes {{name}，{eye, select, right {右眼} other {左眼}}} other {{eye, select, right {右眼现在} other {左眼现在}}}}",
  "measured, the longer of the two": "实测，两眼中较长的一只",
  measured: "实测",
  "At {age}, without treatment": "{age} 岁时，若不治疗",
  "9 of 10 such eyes end between {low} and {high} mm": "10 只这样的眼睛中有 9 只会在 {low} 至 {high} mm 之间",
  "The longer eye is {now} mm long.": "较长的眼睛长 {now} mm。",
  "The longer eye is {now} mm long, a usual eye of this age {usual} mm.":
    "较长的眼睛长 {now} mm，这个年龄常见的眼睛长 {usual} mm。",
  "The longer eye is {now} mm long. Without treatment it may be {ahead} mm long at {age}, most likely between {low} and {high} mm.":
    "较长的眼睛长 {now} mm。若不治疗，{age} 岁时可能长 {ahead} mm，很可能在 {low} 至 {high} mm 之间。",
  "The longer eye is {now} mm long, a usual eye of this age {usual} mm. Without treatment it may be {ahead} mm long at {age}, most likely between {low} and {high} mm.":
    "较长的眼睛长 {now} mm，这个年龄常见的眼睛长 {usual} mm。若不治疗，{age} 岁时可能长 {ahead} mm，很可能在 {low} 至 {high} mm 之间。",
  "{named, select, yes {{name} in {months, plural, one {# month} other {# months}}} other {Your child in {months, plural, one {# month} other {# months}}}}":
    "{named, select, yes {{name}，{months} 个月} other {您的孩子，{months} 个月}}",
  "{sex, select, female {Short-sighted girls of this age without treatment} other {Short-sighted boys of this age without treatment}}":
    "{sex, select, female {同龄近视女孩，未治疗} other {同龄近视男孩，未治疗}}",
  "Eyes that are not short-sighted": "没有近视的眼睛",
  "Growth over the same time": "同一时间内的增长",
  "The eyes grew {mm} mm; eyes that are not short-sighted grow {usual} mm in that time.":
    "眼睛增长了 {mm} mm；没有近视的眼睛在这段时间增长 {usual} mm。",
  "The eyes grew {mm} mm; short-sighted eyes grow {natural} mm in that time without treatment, eyes that are not short-sighted {usual} mm.":
    "眼睛增长了 {mm} mm；在这段时间里，未治疗的近视眼增长 {natural} mm，没有近视的眼睛增长 {usual} mm。",
  "age in years": "年龄（岁）",
  "length of the longer eye, mm": "较长眼的长度，mm",
  "usual eyes": "常见的眼睛",
  "without treatment": "不治疗",
  "with the treatment going on": "继续治疗",
  "Length of the eye over the years": "历年的眼睛长度",
  "The longer eye grew from {first} mm to {now} mm between the first and the last visit.":
    "从第一次到最近一次检查，较长的眼睛从 {first} mm 长到 {now} mm。",
  "{named, select, yes {{name}'s eyes} other {Your child's eyes}} grew slowly in {months, plural, one {the month} other {the # months}} before the last visit, almost like eyes that are not short-sighted.":
    "在最近一次检查之前的 {months} 个月里，{named, select, yes {{name}} other {您的孩子}}的眼睛长得慢，几乎和没有近视的眼睛一样。",
  "Since the treatment stopped, {named, select, yes {{name}'s eyes} other {your child's eyes}} have grown slowly, almost like eyes that are not short-sighted.":
    "停止治疗以后，{named, select, yes {{name}} other {您的孩子}}的眼睛长得慢，几乎和没有近视的眼睛一样。",
  "{named, select, yes {{name}'s eyes} other {Your child's eyes}} grew in {months, plural, one {the month} other {the # months}} before the last visit, but more slowly than is usual without treatment.":
    "在最近一次检查之前的 {months} 个月里，{named, select, yes {{name}} other {您的孩子}}的眼睛有所增长，但比通常未治疗时慢。",
  "{named, select, yes {{name}'s eyes} other {Your child's eyes}} grew in {months, plural, one {the month} other {the # months}} before the last visit, but more slowly than is usual in short-sighted children of this age.":
    "在最近一次检查之前的 {months} 个月里，{named, select, yes {{name}} other {您的孩子}}的眼睛有所增长，但比同龄近视儿童通常的增长慢。",
  "Since the treatment stopped, {named, select, yes {{name}'s eyes} other {your child's eyes}} have grown, but more slowly than is usual in short-sighted children of this age.":
    "停止治疗以后，{named, select, yes {{name}} other {您的孩子}}的眼睛有所增长，但比同龄近视儿童通常的增长慢。",
  "{named, select, yes {{name}'s eyes} other {Your child's eyes}} grew in {months, plural, one {the month} other {the # months}} before the last visit about as fast as is usual without treatment.":
    "在最近一次检查之前的 {months} 个月里，{named, select, yes {{name}} other {您的孩子}}的眼睛增长速度与通常未治疗时差不多。",
  "{named, select, yes {{name}'s eyes} other {Your child's eyes}} grew in {months, plural, one {the month} other {the # months}} before the last visit about as fast as is usual in short-sighted children of this age.":
    "在最近一次检查之前的 {months} 个月里，{named, select, yes {{name}} other {您的孩子}}的眼睛增长速度与同龄近视儿童通常的速度差不多。",
  "Since the treatment stopped, {named, select, yes {{name}'s eyes} other {your child's eyes}} have grown about as fast as is usual without treatment.":
    "停止治疗以后，{named, select, yes {{name}} other {您的孩子}}的眼睛增长速度与通常未治疗时差不多。",
  "{named, select, yes {{name}'s eyes} other {Your child's eyes}} grew faster in {months, plural, one {the month} other {the # months}} before the last visit than is usual without treatment.":
    "在最近一次检查之前的 {months} 个月里，{named, select, yes {{name}} other {您的孩子}}的眼睛增长得比通常未治疗时快。",
  "{named, select, yes {{name}'s eyes} other {Your child's eyes}} grew faster in {months, plural, one {the month} other {the # months}} before the last visit than is usual in short-sighted children of this age.":
    "在最近一次检查之前的 {months} 个月里，{named, select, yes {{name}} other {您的孩子}}的眼睛增长得比同龄近视儿童通常的速度快。",
  "Since the treatment stopped, {named, select, yes {{name}'s eyes} other {your child's eyes}} have grown faster than is usual without treatment.":
    "停止治疗以后，{named, select, yes {{name}} other {您的孩子}}的眼睛增长得比通常未治疗时快。",
  "We cannot be sure yet whether {named, select, yes {{name}'s eyes} other {your child's eyes}} grow slowly or fast.":
    "我们还不能确定{named, select, yes {{name}} other {您的孩子}}的眼睛长得慢还是快。",
  "It is too early to say how fast {named, select, yes {{name}'s eyes} other {your child's eyes}} grow.":
    "现在说{named, select, yes {{name}} other {您的孩子}}的眼睛长得多快还为时过早。",
  "{named, select, yes {{name}'s eyes} other {Your child's eyes}} have little growing left to do, so we can no longer tell slow from fast.":
    "{named, select, yes {{name}} other {您的孩子}}的眼睛已经长不了多少，所以我们分不出快慢了。",
  "One of our figures looks wrong, so we measure {named, select, yes {{name}'s eyes} other {your child's eyes}} again before we say how fast they grow.":
    "我们有一个数据看来不对，所以要重新测量{named, select, yes {{name}} other {您的孩子}}的眼睛，然后才能说它们长得多快。",
  "{named, select, yes {{name} is} other {Your child is}} not short-sighted so far.":
    "{named, select, yes {{name}} other {您的孩子}}目前没有近视。",
  "We have measured {named, select, yes {{name}'s eyes} other {your child's eyes}} once, so we cannot say yet how fast they grow.":
    "我们只测量过一次{named, select, yes {{name}} other {您的孩子}}的眼睛，所以还不能说它们长得多快。",
  "We have not measured the length of {named, select, yes {{name}'s eyes} other {your child's eyes}} yet, so we cannot say how fast they grow.":
    "我们还没有测量过{named, select, yes {{name}} other {您的孩子}}的眼睛长度，所以不能说它们长得多快。",
  "We have no figures for this age to compare {named, select, yes {{name}'s eyes} other {your child's eyes}} with.":
    "我们没有这个年龄的数据可以和{named, select, yes {{name}} other {您的孩子}}的眼睛比较。",
  "{named, select, yes {{name}'s eyes} other {Your child's eyes}} have most likely grown more slowly than is usual without treatment, but we cannot be sure yet by how much.":
    "{named, select, yes {{name}} other {您的孩子}}的眼睛很可能长得比通常未治疗时慢，但慢多少我们还不能确定。",
  "{named, select, yes {{name}'s eyes} other {Your child's eyes}} have most likely not grown faster than is usual without treatment, but we cannot be sure yet whether they grew more slowly.":
    "{named, select, yes {{name}} other {您的孩子}}的眼睛很可能没有长得比通常未治疗时快，但是否更慢我们还不能确定。",
  "{named, select, yes {{name}'s eyes} other {Your child's eyes}} have most likely grown at least as fast as is usual without treatment, but we cannot be sure yet.":
    "{named, select, yes {{name}} other {您的孩子}}的眼睛很可能至少长得和通常未治疗时一样快，但我们还不能确定。",
  "Code that opens this page on a phone": "在手机上打开本页的二维码",
  "This page on your phone, with more answers: scan the code.": "在手机上查看本页和更多回答：请扫描二维码。",
  "It opens after the birth date of your child is typed in.": "输入您孩子的出生日期后即可打开。",
  "What families ask": "家长常问的问题",
  "In trials with {children} children, most of them not short-sighted, eyes grew {less} mm less with more time outdoors. One study of short-sighted children saw no such link. As a rule of thumb: about 2 hours a day.":
    "在共有 {children} 名儿童（多数没有近视）的试验中，户外时间更多的儿童眼睛少增长 {less} mm。一项针对近视儿童的研究没有看到这种关联。经验做法：每天约 2 小时。",
  "Does daylight help?": "多晒日光有用吗？",
  "We have read no trial that shows it. Children who do more close work are more often short-sighted: their odds are about {odds} times as high. As a rule of thumb: a break every 20 to 30 minutes, and more than 30 cm to the page.":
    "我们没有读到能证明这一点的试验。近距离用眼更多的儿童更常近视：其比值约为 {odds} 倍。经验做法：每 20 至 30 分钟休息一次，离书本 30 cm 以上。",
  "Do screens and close work do harm?": "屏幕和近距离用眼有害吗？",
  "Do eye exercises, vision training or a diet help?": "眼保健操、视觉训练或饮食有用吗？",
  "We have read no trial that shows that eye exercises, vision training or any diet slows the growth of the eye. So we do not advise them for this.":
    "我们没有读到能证明眼保健操、视觉训练或任何饮食可以减慢眼睛增长的试验。所以我们不为此推荐它们。",
  "As long as the eyes grow, most likely: 1 mm of growth makes about {dioptres} D. Weaker glasses did not slow the growth in trials with {children} children.":
    "只要眼睛还在增长，很可能会：每增长 1 mm 约增加 {dioptres} D。在共有 {children} 名儿童的试验中，度数不足的眼镜没有减慢增长。",
  "Will the glasses get stronger?": "眼镜度数还会加深吗？",
  "{on, select, yes {May we stop early?} other {What follows after a stop?}}":
    "{on, select, yes {可以提前停吗？} other {停止治疗后会怎样？}}",
  "{on, select, yes {You may stop at any time, but tell us first. We have read no trial that shows how eyes grow after a stop of this strength.} other {We have read no trial that shows how eyes grow after a stop of this strength.}}":
    "{on, select, yes {您随时可以停，但请先告诉我们。我们没有读到说明停用这种浓度后眼睛如何增长的试验。} other {我们没有读到说明停用这种浓度后眼睛如何增长的试验。}}",
  "{on, select, yes {You may stop at any time, but tell us first.} other {We go on measuring after a stop.}} After a stop of this treatment {growth, select, strong {growth often came back strongly} weak {growth came back a little} other {studies did not agree on what follows}}.":
    "{on, select, yes {您随时可以停，但请先告诉我们。} other {停止治疗后我们会继续测量。}}停止这种治疗后，{growth, select, strong {增长往往明显回升} weak {增长略有回升} other {各项研究的结果不一致}}。",
  "{on, select, yes {You may stop at any time, but tell us first.} other {We go on measuring after a stop.}} In one trial of {percent} % drops, eyes that stopped after {years, plural, one {# year} other {# years}} grew {stopped} mm in the next year. Eyes that went on grew {wentOn} mm.":
    "{on, select, yes {您随时可以停，但请先告诉我们。} other {停止治疗后我们会继续测量。}}在一项 {percent} % 滴眼液的试验中，用药 {years} 年后停药的眼睛在下一年增长 {stopped} mm，继续用药的眼睛增长 {wentOn} mm。",
  "Go on the next night with one drop. We have read no trial that shows what missed nights cost. Tell us of them, since it changes how we read the figures.":
    "第二天晚上照常滴一滴。我们没有读到说明漏用有多大影响的试验。请把漏用的情况告诉我们，因为这会影响我们怎样解读数据。",
  "What if we miss a night?": "漏滴一晚怎么办？",
  "Are the drops safe?": "滴眼液安全吗？",
  "In one trial of this strength, light bothered about {light} of 100 children, and {without} of 100 on drops without the drug. The longest trial of drops that we have read took {years, plural, one {# year} other {# years}}.":
    "在一项使用这种浓度的试验中，每 100 名儿童中约有 {light} 名怕光，使用不含药物的滴眼液的则有 {without} 名。我们读到的最长的滴眼液试验历时 {years} 年。",
  "In one trial of this strength, light bothered about {light} of 100 children, and {blur} of 100 saw less clearly close up. The longest trial of drops that we have read took {years, plural, one {# year} other {# years}}.":
    "在一项使用这种浓度的试验中，每 100 名儿童中约有 {light} 名怕光，{blur} 名看近处不如以前清楚。我们读到的最长的滴眼液试验历时 {years} 年。",
  "We have read no figures of unwanted effects at this strength. We look for them at the visits.":
    "我们没有读到这种浓度的不良反应数据。每次检查时我们都会留意。",
  "In one trial of this strength, the power to focus close up was {lost} D weaker after a year, and {without} D weaker on drops without the drug. The longest trial of drops that we have read took {years, plural, one {# year} other {# years}}.":
    "在一项使用这种浓度的试验中，一年后看近处的调节力减弱了 {lost} D，使用不含药物的滴眼液的减弱了 {without} D。我们读到的最长的滴眼液试验历时 {years} 年。",
  "Of {people} people who wear contact lenses for a year, {fewest} to {most} get a germ in the clear front of the eye.":
    "每 {people} 名戴隐形眼镜一年的人中，有 {fewest} 至 {most} 人眼睛前面的透明部分会被感染。",
  "Are the lenses safe?": "隐形眼镜安全吗？",
  "{means, select, drops {Call us when light bothers your child more than before, reading close up is hard, or the drops make the eyes red, sore or itchy.} lenses {Call us when a lens is lost or torn, or when sight through the lenses gets worse.} glasses {Call us when the glasses break, no longer fit, or do not give clear sight any more.} several {Call us when light bothers your child more than before, reading close up is hard, the eyes get red, sore or itchy, or sight gets worse.} other {Call us when your child sees less well: when the eyes are narrowed to see far, or the board at school is hard to read.}}":
    "{means, select, drops {如果孩子比以前更怕光、看近处吃力，或滴药后眼睛发红、疼痛、发痒，请给我们打电话。} lenses {如果镜片丢失或破损，或戴镜片看东西变差，请给我们打电话。} glasses {如果眼镜坏了、不合适了，或戴着不再看得清，请给我们打电话。} several {如果孩子比以前更怕光、看近处吃力，眼睛发红、疼痛、发痒，或看东西变差，请给我们打电话。} other {如果孩子看东西变差，例如眯着眼看远处，或看不清学校的黑板，请给我们打电话。}}",
  "What to watch for": "需要留意什么",
  "At a visit we noted something that we want to keep an eye on. Tell us at once if it gets worse.":
    "有一次检查时我们记下了一个需要留意的情况。如果加重，请马上告诉我们。",
  "On {date} you told us of a warning sign. If nobody has looked into the eye since then, come in today.":
    "{date}您告诉过我们一个警示症状。如果此后还没有人检查过眼底，请今天就来。",
  "Same day: flashes, floating spots, a curtain, pain or sudden loss of sight. Call us at once; if you cannot reach us, go to an eye clinic.":
    "当天就诊：闪光、飘动的黑点、像帘子遮住视线、疼痛或突然看不见。请马上给我们打电话；如果联系不上，请去眼科急诊。",
  "Same day: flashes, floating spots, a curtain, pain or sudden loss of sight. Call at once: {urgent}.":
    "当天就诊：闪光、飘动的黑点、像帘子遮住视线、疼痛或突然看不见。请马上联系：{urgent}。",
  "A red or sore eye with a contact lens: take the lens out and have the eye seen the same day.":
    "戴隐形眼镜的眼睛发红或疼痛：取出镜片，当天就诊。",
  "The drops are poison when swallowed. Keep the bottle away from all children. If any was swallowed, call the poison centre of your country at once. If a child is confused, hot and flushed or has a fit, call an ambulance.":
    "滴眼液吞下会中毒。请把药瓶放在所有孩子都够不到的地方。如果有人吞下，请马上给所在国家的中毒急救中心打电话。如果孩子神志不清、发热潮红或抽搐，请叫救护车。",
  "The drops are poison when swallowed. Keep the bottle away from all children. If any was swallowed, call the poison centre at once: {centre}. If a child is confused, hot and flushed or has a fit, call an ambulance.":
    "滴眼液吞下会中毒。请把药瓶放在所有孩子都够不到的地方。如果有人吞下，请马上给中毒急救中心打电话：{centre}。如果孩子神志不清、发热潮红或抽搐，请叫救护车。",
  "What it means": "这说明什么",
  "In {months, plural, one {# month} other {# months}}, eyes that are not short-sighted grow about {usual} mm at this age.":
    "{months} 个月里，这个年龄没有近视的眼睛大约增长 {usual} mm。",
  "In {months, plural, one {# month} other {# months}}, the eyes of {sex, select, female {short-sighted girls} other {short-sighted boys}} of this age grow about {natural} mm without treatment, and eyes that are not short-sighted about {usual} mm.":
    "{months} 个月里，同龄{sex, select, female {近视女孩} other {近视男孩}}的眼睛在未治疗时大约增长 {natural} mm，没有近视的眼睛大约增长 {usual} mm。",
  "In one study of {children} children of this age with eyes like these, {became} became short-sighted within 5 years.":
    "在一项研究中，{children} 名眼睛情况相似的同龄儿童里有 {became} 名在 5 年内变成近视。",
  "Why length counts: among adults, harm at the back of the eye was about {percent} % less common for each dioptre (D) less of short sight.":
    "为什么要看长度：在成人中，近视每少 1 屈光度（D），眼底损害大约少 {percent} %。",
  "{means, select, drops {Is it the drops?} glasses {Is it the glasses?} lenses {Is it the lenses?} other {Is it the treatment?}}":
    "{means, select, drops {是滴眼液的作用吗？} glasses {是眼镜的作用吗？} lenses {是隐形眼镜的作用吗？} other {是治疗的作用吗？}}",
  "Most likely yes. What we measured is {many, select, yes {more than 100 times} other {about {times} times}} as likely with a treatment that works as in the trials as with one that does nothing. No answer for one child is ever certain.":
    "很可能是。治疗像试验中那样有效时，出现我们测到的结果的可能性是治疗无效时的{many, select, yes { 100 倍以上} other {约 {times} 倍}}。对单个孩子来说，没有哪个回答是绝对肯定的。",
  "Probably not. What we measured is {many, select, yes {more than 100 times} other {about {times} times}} as likely with a treatment that does nothing as with one that works as in the trials. No answer for one child is ever certain.":
    "大概不是。治疗无效时，出现我们测到的结果的可能性是治疗像试验中那样有效时的{many, select, yes { 100 倍以上} other {约 {times} 倍}}。对单个孩子来说，没有哪个回答是绝对肯定的。",
  "We will look at this when the figure that looks wrong has been measured again.":
    "等重新测量那个看来不对的数据以后，我们再看这个问题。",
  "We cannot tell. On many nights there was no bottle in date, and that alone may explain what we saw.":
    "我们无法判断。许多晚上没有在有效期内的药瓶，仅此一点就可能解释我们看到的情况。",
  "We cannot tell. In one child it is hard to tell a treatment from the child's own pace. What counts most is how fast the eyes grow.":
    "我们无法判断。在单个孩子身上，很难把治疗的作用和孩子自己的生长速度分开。最重要的是眼睛长得多快。",
  "We cannot tell yet. Of 10 children like {named, select, yes {{name}} other {your child}} whose treatment works, {share, select, under {fewer than {count}} over {more than {count}} other {about {count}}} would give us a clear answer by {date}.":
    "现在还无法判断。像{named, select, yes {{name}} other {您的孩子}}这样治疗有效的孩子，10 名中{share, select, under {不到 {count} 名} over {超过 {count} 名} other {大约 {count} 名}}到{date}时会给我们一个明确的答案。",
  "Perhaps, but we cannot tell yet. Of 10 children like {named, select, yes {{name}} other {your child}} whose treatment works, {share, select, under {fewer than {count}} over {more than {count}} other {about {count}}} would give us a clear answer by {date}.":
    "也许是，但现在还无法判断。像{named, select, yes {{name}} other {您的孩子}}这样治疗有效的孩子，10 名中{share, select, under {不到 {count} 名} over {超过 {count} 名} other {大约 {count} 名}}到{date}时会给我们一个明确的答案。",
  "Perhaps not, but we cannot tell yet. Of 10 children like {named, select, yes {{name}} other {your child}} whose treatment works, {share, select, under {fewer than {count}} over {more than {count}} other {about {count}}} would give us a clear answer by {date}.":
    "也许不是，但现在还无法判断。像{named, select, yes {{name}} other {您的孩子}}这样治疗有效的孩子，10 名中{share, select, under {不到 {count} 名} over {超过 {count} 名} other {大约 {count} 名}}到{date}时会给我们一个明确的答案。",
  "So far the eyes do not seem to catch up what the treatment held back. To grow again as without treatment is what we expect.":
    "目前看来，眼睛没有把治疗抑制的增长补回来。恢复到未治疗时的增长速度在我们预料之中。",
  "The eyes seem to have grown faster than eyes that were never treated. Some of what was held back may be lost again.":
    "眼睛似乎比从未治疗过的眼睛长得快。之前抑制的增长可能有一部分又补回来了。",
  "We cannot tell yet whether the eyes catch up what the treatment held back. The next visits will help to show it.":
    "现在还无法判断眼睛会不会把治疗抑制的增长补回来。接下来的检查会帮助我们看清。",
  "Do the eyes catch up after the stop?": "停止治疗后眼睛会反弹吗？",
  "We measure the eyes again as soon as you can come.": "请尽快来，我们重新测量眼睛。",
  "We talk with you about what the last visit showed, and whether to change anything.":
    "我们和您谈谈最近一次检查的结果，以及是否需要改变。",
  "What we do next": "接下来做什么",
  "No visit is planned. Call us when something about the eyes worries you.":
    "目前没有安排检查。如果眼睛有什么让您担心，请给我们打电话。",
  "Go on with the treatment as we showed you: {treatment}.": "请按我们教您的方法继续治疗：{treatment}。",
  "Put one drop into {eye, select, right {the right eye} left {the left eye} other {each eye}} every night: {treatment}.":
    "每晚在{eye, select, right {右眼} left {左眼} other {每只眼睛}}滴一滴：{treatment}。",
  "Put one drop into {eye, select, right {the right eye} left {the left eye} other {each eye}} on {nights, plural, one {# night} other {# nights}} a week: {treatment}.":
    "每周 {nights} 个晚上在{eye, select, right {右眼} left {左眼} other {每只眼睛}}滴一滴：{treatment}。",
  "The treatment begins on {date}: {treatment}.": "{date}开始治疗：{treatment}。",
  "You need a new bottle now: the last one was good until {due}.":
    "您现在需要一瓶新的：上一瓶的有效期到{due}。",
  "Ask for the next bottle now: the one you have is good until {due}.":
    "请现在就要下一瓶：您手里的这瓶有效期到{due}。",
  "Ask for the next bottle by {order}: the one you have is good until {due}.":
    "最晚{order}请要下一瓶：您手里的这瓶有效期到{due}。",
  "A visit is late: it was due by {closes}. Please call us for a date.":
    "有一次检查过期了：本应最晚在{closes}完成。请打电话预约。",
  "Come to the next visit between now and {closes}.": "请从现在到{closes}之间来做下一次检查。",
  "Come to the next visit between {opens} and {closes}.": "请在{opens}至{closes}之间来做下一次检查。",
  "We still have to decide with you {what, select, restart {whether to treat again} fewer {whether fewer nights are enough} other {whether to stop the treatment}}.":
    "我们还要和您一起决定{what, select, restart {是否再次治疗} fewer {是否可以减少用药的晚数} other {是否停止治疗}}。",
  "By {closes} we decide with you {what, select, restart {whether to treat again} fewer {whether fewer nights are enough} other {whether to stop the treatment}}.":
    "我们最晚在{closes}和您一起决定{what, select, restart {是否再次治疗} fewer {是否可以减少用药的晚数} other {是否停止治疗}}。",
  "Between {opens} and {closes} we decide with you {what, select, restart {whether to treat again} fewer {whether fewer nights are enough} other {whether to stop the treatment}}.":
    "我们在{opens}至{closes}之间和您一起决定{what, select, restart {是否再次治疗} fewer {是否可以减少用药的晚数} other {是否停止治疗}}。",
  "What we saw": "我们看到了什么",
  "Nothing has been measured yet.": "还没有测量。",
  "Length of the eyes": "眼睛长度",
  "right {right} mm, left {left} mm on {date}": "{date}右眼 {right} mm，左眼 {left} mm",
  "{eye, select, right {Length of the right eye} other {Length of the left eye}}":
    "{eye, select, right {右眼长度} other {左眼长度}}",
  "{mm} mm on {date}": "{date} {mm} mm",
  Growth: "增长",
  "{eye, select, right {Growth of the right eye} other {Growth of the left eye}}":
    "{eye, select, right {右眼增长} other {左眼增长}}",
  "{mm} mm in {months, plural, one {# month} other {# months}}, very likely (95 of 100) {low} to {high} mm":
    "{months} 个月增长 {mm} mm，很可能（100 次中有 95 次）在 {low} 至 {high} mm 之间",
  "Glasses, mean strength": "平均度数",
  "right {right} D, left {left} D on {date}": "{date}右眼 {right} D，左眼 {left} D",
  "{eye, select, right {right eye} other {left eye}} {power} D on {date}":
    "{date}{eye, select, right {右眼} other {左眼}} {power} D",
}
