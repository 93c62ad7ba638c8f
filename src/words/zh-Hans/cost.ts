import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const cost: Catalogue = {
  "{count, plural, =1 {bottle of {drops}} other {# bottles of {drops}}}":
    "{count, plural, =1 {1 瓶{drops}} other {# 瓶{drops}}}",
  "{months, plural, one {# month} other {# months}}, from {from} to {to}.":
    "共 {months, plural, other {#}} 个月，从{from}到{to}。",
  'Examinations as the protocol "{title}" plans them, each on its due date; no further visits.':
    "检查按照“{title}”安排，每次都在应做的日期；不计其他就诊。",
  "A measurement without a fee of its own is part of its examination.":
    "没有单独收费的测量包含在该次检查之内。",
  "The {visit} has begun: only what is still to be measured is counted.":
    "“{visit}”已经开始：只计算尚未测量的项目。",
  "No treatment is begun.": "不开始任何治疗。",
  "Spectacles and lenses are replaced when their months are over; loss and breakage are not counted.":
    "框架眼镜和接触镜到期更换；遗失和损坏不计在内。",
  "Whether something uncertain is paid for is decided by the insurer.":
    "不确定能否报销的项目，由保险机构决定是否支付。",
  'from {day} by "{title}"': "从{day}起按“{title}”",
  'Fees by "{title}", in force from {day}; later changes of fees are not known yet.':
    "收费按“{title}”，自{day}起生效；以后收费是否变动尚不清楚。",
  "{before}; {next}": "{before}；{next}",
  'Fees by "{title}", in force from {day}; {changes}.': "收费按“{title}”，自{day}起生效；{changes}。",
  "Treatment goes on through all of these months, without a change of strength.":
    "这几个月里治疗一直继续，浓度不变。",
  "Treatment ends on {day}, as planned, without a change of strength; if growth returns and treatment is taken up again, that is not counted.":
    "治疗按计划在{day}结束，浓度不变；如果眼轴又开始增长而恢复治疗，费用不计在内。",
  'One bottle of {drops} serves {eye, select, right {the right eye} left {the left eye} other {both eyes}} for {days, plural, one {# day} other {# days}} after opening, as stated by the protocol "{title}".':
    "一瓶{drops}供{eye, select, right {右眼} left {左眼} other {双眼}}在开瓶后使用 {days, plural, other {#}} 天，按“{title}”的规定。",
  "One bottle of {drops} serves {eye, select, right {the right eye} left {the left eye} other {both eyes}} for {days, plural, one {# day} other {# days}} after opening, as stated by the pharmacy {name}.":
    "一瓶{drops}供{eye, select, right {右眼} left {左眼} other {双眼}}在开瓶后使用 {days, plural, other {#}} 天，按药房（{name}）的说明。",
  "One bottle of {drops} serves {eye, select, right {the right eye} left {the left eye} other {both eyes}} for {days, plural, one {# day} other {# days}} until {ml} mL of large drops are used up.":
    "一瓶{drops}供{eye, select, right {右眼} left {左眼} other {双眼}}使用 {days, plural, other {#}} 天，直到 {ml} mL 以大滴用完为止。",
  "no growth is expected to be withheld, so there is no cost per {tenth} mm.":
    "预计不会减少眼轴增长，因此没有每 {tenth} mm 的费用。",
  "what is withheld may be nothing ({mm} mm, 95 % between {low} and {high}), so a cost per {tenth} mm would say more than is known.":
    "减少的增长可能为零（{mm} mm，95% 区间 {low} 到 {high}），因此给出每 {tenth} mm 的费用会超出已知的范围。",
  "the plan is not complete: there is no fee for {what}.": "计划不完整：以下项目没有收费标准：{what}。",
  "No fee schedule is in force.": "没有生效的收费标准。",
  "observation without treatment": "不治疗，只观察",
  "{what} ({count, plural, one {# time} other {# times}})": "{what}（{count, plural, other {#}} 次）",
  "covered|by an insurer": "可报销",
  "uncertain whether covered": "不确定能否报销",
  "not covered": "不能报销",
  'a day on which no other schedule begins ("{title}" begins then)':
    "没有其他收费标准开始生效的一天（“{title}”在那天开始）",
  "the ISO 4217 code of a currency in use, such as EUR": "一种现行货币的 ISO 4217 代码，例如 EUR",
  "{currency}, the currency of the schedule from {day}": "{currency}，即自{day}起的收费标准所用的货币",
  "{currency}, the currency in which payments are recorded": "{currency}，即已记录付款所用的货币",
  "unlike every other id ({place} has it)": "与其他标识都不同（{place} 已使用）",
  'an occasion that no other fee is for ("{title}" is charged for it already)':
    "没有其他收费的项目（已经收取“{title}”）",
  "a treatment with spectacles or lenses; {name} has no device": "使用框架眼镜或接触镜的治疗；{name}没有器具",
  "{path} must be {allowed}": "{path} 必须是{allowed}",
  "Standard protocol": "标准方案",
  "Optical treatments": "光学治疗",
  "Step down before the stop": "停药前逐步减量",
  "Watchful waiting before myopia": "近视前的密切观察",
  baseline: "基线检查",
  "check after the first night": "首夜后检查",
  "1-week check": "1 周检查",
  "1-month check": "1 个月检查",
  "check 6 months after the stop": "停止治疗后 6 个月检查",
  "review while treatment goes on": "治疗期间的复查",
  observation: "观察",
  "Fees of the demo practice (invented)": "演示诊所的收费标准（虚构）",
  "Length measurement": "眼轴长度测量",
  "Refraction|fee": "验光",
  "Defocus spectacles": "周边离焦框架眼镜",
  "Pair of night lenses": "夜戴型接触镜一副",
  "{months}-month review": "{months} 个月复查",
  "{visit} after the {what, select, strength {change of strength} other {change of treatment}}":
    "更换{what, select, strength {浓度} other {治疗}}后的{visit}",
  "{visit} after the {what, select, strength {change of strength} other {change of treatment}} ({eye, select, right {right eye} other {left eye}})":
    "更换{what, select, strength {浓度} other {治疗}}后的{visit}（{eye, select, right {右眼} other {左眼}}）",
  "an amount such as {example}": "一个金额，例如 {example}",
  "an amount without decimals, such as {example}": "没有小数的金额，例如 {example}",
  "an amount with at most {decimals} decimals, such as {example}":
    "最多 {decimals} 位小数的金额，例如 {example}",
  "at most {most}": "不超过 {most}",
  "{currency}, the currency of the fee schedule": "{currency}，即收费标准所用的货币",
  "{path} must be {currency}, the currency of the fee schedule; the payment of {day} is in {other}":
    "{path} 必须是 {currency}，即收费标准所用的货币；{day}的付款用的是 {other}",
  "No fee schedule has been entered.": "还没有录入收费标准。",
  "No fee schedule is in force on {day}; the first one begins on {next}.":
    "{day}没有生效的收费标准；最早的一份从{next}开始。",
  "Two fee schedules begin on {day}; which of them is in force cannot be told.":
    "有两份收费标准都从{day}开始；无法判断哪一份有效。",
  'The fee schedule "{title}" is in {currency}, a currency not known here.':
    "收费标准“{title}”使用 {currency}，这种货币在这里不认识。",
  "The fee schedule from {first} is in {currency}, the one from {other} in {otherCurrency}; amounts in two currencies are not added up.":
    "自{first}起的收费标准使用 {currency}，自{other}起的使用 {otherCurrency}；两种货币的金额不会相加。",
  "uncertain|whether covered": "不确定",
}
