import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const order: Catalogue = {
  // How long a bottle serves
  "{low} to {high}": "{low} 至 {high}",
  "The drops of one bottle last {low} to {high} nights (drop sizes that were measured, nothing spilled); after opening it is used for {days, plural, one {# day} other {# days}} at most: the days of use after opening end it before its drops do.":
    "一瓶的滴数可用 {low} 至 {high} 晚（按实测滴液大小，无洒漏）；开封后最多使用 {days, plural, other {# 天}}：药液滴完之前，开封后的使用天数先到。",
  "The drops of one bottle last {low} to {high} nights (drop sizes that were measured, nothing spilled); after opening it is used for {days, plural, one {# day} other {# days}} at most: its drops end before the days of use after opening do.":
    "一瓶的滴数可用 {low} 至 {high} 晚（按实测滴液大小，无洒漏）；开封后最多使用 {days, plural, other {# 天}}：开封后的使用天数到期之前，药液先滴完。",
  "The drops of one bottle last {low} to {high} nights (drop sizes that were measured, nothing spilled); after opening it is used for {days, plural, one {# day} other {# days}} at most: large drops end it early, small ones last to the end of its days of use.":
    "一瓶的滴数可用 {low} 至 {high} 晚（按实测滴液大小，无洒漏）；开封后最多使用 {days, plural, other {# 天}}：滴液大则提前用完，滴液小则可用到使用天数结束。",
  "{most, plural, one {# bottle of {volume} mL covers} other {{range} bottles of {volume} mL cover}} {nights, plural, one {# night} other {# nights}} with drops in {eyes, plural, =1 {one eye} other {both eyes}}.":
    "{most, plural, other {{range} 瓶（每瓶 {volume} mL）}}可供{eyes, plural, =1 {一只眼} other {双眼}}用药 {nights, plural, other {# 晚}}。",

  // What may stand in a figure of an order
  "{path} must be {allowed}; it is {value}": "{path} 必须是 {allowed}；现为 {value}",
  "a whole number of at least 1": "不小于 1 的整数",
  "a number above 0 (mL)": "大于 0 的数（mL）",
  "1 or 2": "1 或 2",
  "a whole number from 1 to 7": "1 至 7 的整数",
  "enough for at least one night of the largest drops that were measured": "按实测最大滴液至少够用一晚的量",
  "volumeMl must be enough for at least one night of drops in {eyes, plural, =1 {one eye} other {both eyes}}; it is {volume}":
    "volumeMl 必须至少够{eyes, plural, =1 {一只眼} other {双眼}}用药一晚；现为 {volume}",
  "a number above 0 and at most 100 (% w/v)": "大于 0 且不超过 100 的数（% w/v）",
  "at most the stock's {percent} %": "不高于原液浓度 {percent}% 的数",
  "a share from 0 to below 1": "从 0 到小于 1 的比例",
  "at least its smallest volume, {volume} mL": "不小于其最小量取体积 {volume} mL 的数",
  "such that every volume of {total} mL in all is measured by one of them":
    "能够量取总量 {total} mL 所需各体积的器具",
  "no device measures a volume that {total} mL in all need; the largest measures {largest} mL":
    "总量 {total} mL 所需的某个体积没有器具可以量取；最大的器具可量取 {largest} mL",
  "so much that every measured volume is at least {smallest} mL":
    "足以使每次量取的体积不小于 {smallest} mL 的量",
  "{total} mL in all at this strength cannot be made without measuring less than {smallest} mL; order more at once or measure smaller volumes":
    "要配制此浓度共 {total} mL，必须量取不足 {smallest} mL 的体积；请一次多订一些，或改用可量取更小体积的器具",

  // The order itself
  "An order for a pharmacist, who decides on formula, sterility and beyond-use date; not to be made at home or in the practice.":
    "本配制单交由药师，配方、无菌要求和使用期限由药师决定；不得在家中或诊所自行配制。",
  "The interval holds the error of measuring only; the stock's own strength may differ from its label as well.":
    "该区间只包含量取误差；原液本身的浓度也可能与标签不同。",
  "One bottle holds {milligrams} mg of atropine: from {severe} mg severe poisoning of a child who swallows it is possible.":
    "一瓶含阿托品 {milligrams} mg：儿童误服 {severe} mg 起即可能严重中毒。",
  "Order: atropine sulfate eye drops {percent} % for this child":
    "配制单：{percent}% 硫酸阿托品滴眼液（供此儿童使用）",
  "Order: atropine sulfate eye drops {percent} % for {child}":
    "配制单：{percent}% 硫酸阿托品滴眼液（供 {child} 使用）",
  "What is ordered": "订购内容",
  Dilution: "稀释",
  "Content and caution": "含量与警示",
  "Preservative, storage, stability": "防腐剂、储存与稳定性",
  "On each label": "每张标签上",
  "Two people check": "双人核对",
  Prescribed: "开具",
  "Made and measured": "配制与量取",
  "Checked by a second person": "第二人核对",
  "For|whom": "使用者",
  "{name}, born {born}, number {number}": "{name}，出生日期 {born}，编号 {number}",
  "{name}, born {born}": "{name}，出生日期 {born}",
  Bottles: "瓶数",
  "{bottles, plural, one {# bottle} other {# bottles}} of {volume} mL, atropine sulfate {percent} % w/v ({milligrams} mg in 1 mL)":
    "{bottles, plural, other {# 瓶}}，每瓶 {volume} mL，硫酸阿托品 {percent}% w/v（1 mL 含 {milligrams} mg）",
  "Use|of drops": "用法",
  "one drop in {eye, select, right {the right eye} left {the left eye} other {each eye}} at bedtime":
    "睡前{eye, select, right {右眼} left {左眼} other {每只眼}}滴一滴",
  "one drop in {eye, select, right {the right eye} left {the left eye} other {each eye}} at bedtime, {nights, plural, one {# night} other {# nights}} a week":
    "睡前{eye, select, right {右眼} left {左眼} other {每只眼}}滴一滴，每周 {nights, plural, other {# 晚}}",
  "Ordered by": "订购人",
  Pharmacy: "药房",
  "Expected by": "预计到货",
  "{days, plural, one {# day} other {# days}} after it is ordered": "订购后 {days, plural, other {# 天}}",
  Consent: "知情同意",
  "not ordered yet": "尚未订购",
  "{practice}, on {date}": "{practice}，{date}",
  "{prescriber}, {practice}, on {date}": "{prescriber}，{practice}，{date}",
  "{most, plural, one {# night.} other {{range} nights.}}": "{most, plural, other {{range} 晚。}}",
  Lasting: "可用时间",
  "The practice has not set this pharmacy: its stock, what it measures with, its days to deliver and its days of use after opening are taken as usual (common practice, no source).":
    "诊所尚未设置此药房：其原液、量取器具、交货天数和开封后使用天数均按通常情况处理（惯例，无文献来源）。",
  "stock {percent} %": "{percent}% 原液",
  "step {step}, {percent} %": "第 {step} 步所得，{percent}%",
  "This order was called off on {date}.": "此订单已于 {date} 取消。",

  // Label
  "Atropine sulfate eye drops {percent} % w/v ({milligrams} mg in 1 mL), {volume} mL":
    "硫酸阿托品滴眼液 {percent}% w/v（1 mL 含 {milligrams} mg），{volume} mL",
  "For {name}, born {born}": "使用者：{name}，出生日期 {born}",
  "Contains a preservative": "含防腐剂",
  "Without preservative": "不含防腐剂",
  "Lot {blank}  Beyond use {blank}": "批号 {blank}  使用期限 {blank}",
  "Opened on {blank}  Throw away {days, plural, one {# day} other {# days}} after opening":
    "开封日期 {blank}  开封 {days, plural, other {# 天}}后丢弃",
  "Made by {pharmacy}": "配制：{pharmacy}",
  "One drop in {eye, select, right {the right eye} left {the left eye} other {each eye}} at bedtime. For the eyes only.":
    "睡前{eye, select, right {右眼} left {左眼} other {每只眼}}滴一滴。仅供眼用。",
  "One drop in {eye, select, right {the right eye} left {the left eye} other {each eye}} at bedtime, {nights, plural, one {# night} other {# nights}} a week. For the eyes only.":
    "睡前{eye, select, right {右眼} left {左眼} other {每只眼}}滴一滴，每周 {nights, plural, other {# 晚}}。仅供眼用。",
  "Poisonous when swallowed. Keep out of sight and reach of children. Poison centre: {number}":
    "误服有毒。请放在儿童看不到、拿不到的地方。中毒急救中心：{number}",
  "Poisonous when swallowed. Keep out of sight and reach of children.":
    "误服有毒。请放在儿童看不到、拿不到的地方。",

  // Consent and remarks
  "given on {date}, in force": "于 {date} 签署，有效",
  "none in force: {why}": "无有效的知情同意：{why}",
  "none in force; ordered all the same: {reason}": "无有效的知情同意；仍予订购：{reason}",
  "No drops are running or decided on for this child.": "此儿童目前没有使用滴眼液，也没有决定使用。",
  "{treatment} from {date}": "{treatment}（{date} 起）",
  "The order is for {percent} %; the treatment in use is {inUse}.":
    "订购的浓度为 {percent}%；目前使用的治疗是{inUse}。",
  "The order is for {percent} %; decided on is {coming}.": "订购的浓度为 {percent}%；已决定的是{coming}。",
  "The order is for {percent} %; the treatment in use is {inUse}; decided on is {coming}.":
    "订购的浓度为 {percent}%；目前使用的治疗是{inUse}；已决定的是{coming}。",
  "{bottles, plural, one {# bottle of {percent} % ordered on {date} has} other {# bottles of {percent} % ordered on {date} have}} not come yet.":
    "{date} 订购的 {bottles, plural, other {# 瓶}} {percent}% 滴眼液尚未到货。",

  // Content, preservative, storage
  "Each bottle holds {milligrams} mg of atropine sulfate; strengths are % w/v of the sulfate.":
    "每瓶含硫酸阿托品 {milligrams} mg；浓度均为硫酸盐的 % w/v。",
  "All {bottles, plural, one {# bottle} other {# bottles}}: {milligrams} mg.":
    "{bottles, plural, other {# 瓶}}合计：{milligrams} mg。",
  "Poison centre: {number}.": "中毒急救中心：{number}。",
  "The practice has not set the number of its poison centre.": "诊所尚未设置中毒急救中心的电话。",
  "Storage and beyond-use date as the pharmacist states them on the label.":
    "储存条件和使用期限以药师在标签上注明的为准。",
  "Thrown away {days, plural, one {# day} other {# days}} after opening.":
    "开封 {days, plural, other {# 天}}后丢弃。",
  "Opened bottles were followed for {days, plural, one {# day} other {# days}} in the studies read.":
    "在查阅的研究中，开封后的瓶子观察了 {days, plural, other {# 天}}。",
  "With a preservative.": "含防腐剂。",
  "Without preservative.": "不含防腐剂。",
  "Without preservative. From a 1 % stock preserved with 0.01 % benzalkonium chloride {percent} % would be carried over, which counts as unpreserved.":
    "不含防腐剂。若使用以 0.01% 苯扎氯铵防腐的 1% 原液，会带入 {percent}%，视为不含防腐剂。",
  "Without preservative. From a 1 % stock preserved with 0.01 % benzalkonium chloride {percent} % would be carried over.":
    "不含防腐剂。若使用以 0.01% 苯扎氯铵防腐的 1% 原液，会带入 {percent}%。",

  // Dilution
  "USP monograph of the solution": "美国药典（USP）该溶液专论",
  Step: "步骤",
  Take: "量取",
  "From|stock": "取自",
  "Add diluent": "加稀释液",
  Gives: "得到",
  "Final strength {final} %, 95 % between {low} and {high} %, within the limits {lowest} to {highest} % ({lowOfLabel} to {highOfLabel} % of the label, {source}). Worked back from the milligrams of each step: {check} %.":
    "最终浓度 {final}%，95% 区间 {low}% 至 {high}%，在限度 {lowest}% 至 {highest}% 之内（标示量的 {lowOfLabel}% 至 {highOfLabel}%，{source}）。按每步的毫克数反算：{check}%。",
  "Final strength {final} %, 95 % between {low} and {high} %. Worked back from the milligrams of each step: {check} %.":
    "最终浓度 {final}%，95% 区间 {low}% 至 {high}%。按每步的毫克数反算：{check}%。",
  "The interval leaves the limits {lowest} to {highest} % ({lowOfLabel} to {highOfLabel} % of the label, {source}).":
    "该区间超出限度 {lowest}% 至 {highest}%（标示量的 {lowOfLabel}% 至 {highOfLabel}%，{source}）。",
  "It would lie inside: {words}.": "这样做可在限度之内：{words}。",
  "No larger batch, other stock or closer measuring that was tried brings it inside.":
    "已试过加大批量、换用其他原液和更精确的量取，都不能使其在限度之内。",
  "{volume} mL": "{volume} mL",
  "none|diluent": "无",
  "{volume} mL ({low} to {high})": "{volume} mL（{low} 至 {high}）",
  "{volume} mL ({low} to {high}), {device}": "{volume} mL（{low} 至 {high}），{device}",
  "{percent} %": "{percent}%",
  "{percent} %; discard the {volume} mL left over": "{percent}%；剩余 {volume} mL 丢弃",
  "make {volume} mL in one batch ({count, plural, one {# bottle} other {# bottles}}), or discard what is left of it":
    "一批配制 {volume} mL（{count, plural, other {# 瓶}}），或将多余部分丢弃",
  "start from a stock of {percent} %": "改用 {percent}% 的原液",
  "measure every volume within {closer} % instead of {now} %":
    "每次量取的误差不超过 {closer}%，而不是 {now}%",
  "use a stock whose strength was measured, and reckon with that strength":
    "使用实测过浓度的原液，并按实测浓度计算",
  "use a stock known to within {closer} % of its label instead of {now} %":
    "使用与标签相差不超过 {closer}% 的原液，而不是 {now}%",

  // Studies of stability
  "0.9% sodium chloride, filtered, isolator, 5 mL polyethylene bottles":
    "0.9% 氯化钠，过滤，隔离器内操作，5 mL 聚乙烯瓶",
  "two formulas, with and without preservative, LDPE multidose droppers":
    "两种配方，含与不含防腐剂，LDPE 多剂量滴瓶",
  "artificial tears; balanced salt solution": "人工泪液；平衡盐溶液",
  "injection diluted in saline or lubricant": "注射液用生理盐水或眼用润滑液稀释",
  "5 and 25 C": "5 和 25 °C",
  "within 5% of target, pH 5.88, 285 mOsm/kg, sterile": "与目标值相差不超过 5%，pH 5.88，285 mOsm/kg，无菌",
  ">=94.7% of start; tropic acid rose slowly; stable in use":
    "不低于初始值的 94.7%；托品酸缓慢升高；使用中稳定",
  "2-8 C: 90-110% for 6 mo; 25 C: below 90% at 4 mo; opened: 90-110% for 30 d at both":
    "2-8 °C：6 个月内 90-110%；25 °C：4 个月时低于 90%；开封后：两种温度下 30 天内 90-110%",
  "like fresh at week 12, no growth": "第 12 周时与新配制的相同，无微生物生长",
  abstract: "摘要",
  "{months, plural, one {# month} other {# months}}": "{months, plural, other {# 个月}}",
  "{where}: {result} ({study}, {how}).": "{where}：{result}（{study}，{how}）。",
  "{where}: {result} ({strengths} %; {study}, {how}).": "{where}：{result}（{strengths}%；{study}，{how}）。",
  "None of the studies read is of {percent} %.": "查阅的研究中没有 {percent}% 浓度的。",
  "Compounding pharmacy": "配制药房",

  // The document
  "An order for a pharmacist to check; the prescriber answers for it. Local law, product licences and the pharmacist decide. Not a medical device.":
    "本配制单供药师核对；由开具者负责。以当地法律、产品许可和药师的决定为准。不是医疗器械。",
  "there is no order {number}; {count, plural, =0 {none is} one {# is} other {# are}} recorded":
    "没有第 {number} 份订单；{count, plural, =0 {尚无记录} other {共记录 # 份}}",
  "nothing is on order, and no drops are in use or decided on for this child":
    "没有订单，此儿童目前也没有使用或决定使用滴眼液",
  "nothing is on order, and the strength of the drops in use is not recorded":
    "没有订单，也没有记录目前所用滴眼液的浓度",
  "the order cannot be worked out with what its pharmacy states it has: {why}":
    "按该药房说明的条件无法计算此订单：{why}",
  "Not yet ordered: worked out for the treatment in use, {treatment}.":
    "尚未订购：按目前使用的治疗（{treatment}）计算。",
  "Not yet ordered: worked out for {treatment}, which begins on {date}.":
    "尚未订购：按将于 {date} 开始的{treatment}计算。",
  "It is not to go out before a consent is in force: {why}.": "知情同意生效之前不得发出：{why}。",
  "{treatment} is given or decided on as well: it needs a sheet of its own.":
    "另外还使用或已决定使用{treatment}：需要单独一份配制单。",
  "The bottles are counted from {from} to the next review after delivery, on {date}: {nights, plural, one {# night} other {# nights}}. Bottles in hand are not taken off.":
    "瓶数按 {from} 至到货后的下次复查（{date}）计算：{nights, plural, other {# 晚}}。未扣除现有的瓶数。",
  "The bottles are counted from {from} to the end of the treatment on {date}: {nights, plural, one {# night} other {# nights}}. Bottles in hand are not taken off.":
    "瓶数按 {from} 至治疗结束（{date}）计算：{nights, plural, other {# 晚}}。未扣除现有的瓶数。",
  "No review is planned: the bottles are counted for {nights, plural, one {# night} other {# nights}} from {from}. Bottles in hand are not taken off.":
    "没有计划的复查：瓶数自 {from} 起按 {nights, plural, other {# 晚}}计算。未扣除现有的瓶数。",
}
