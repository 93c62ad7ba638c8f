import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const estimate: Catalogue = {
  "months must be a whole number from 1 to {most}, not {months}":
    "月数必须是 1 到 {most} 的整数，不能是 {months}",
  "Estimate of costs": "费用估算",
  "An estimate made on {date}, not an invoice.": "{date}所作的估算，不是账单。",
  "For|the child": "孩子",
  "your child": "您的孩子",
  "Born|day of birth": "出生日期",
  Plan: "计划",
  Time: "时间",
  "{from} to {to}": "{from}至{to}",
  "This is an estimate made on {date}, not an invoice.": "这是{date}所作的估算，不是账单。",
  "What is paid in the end depends on the visits that take place and on the fees of their day.":
    "最后支付多少，取决于实际的就诊次数和当天的收费标准。",
  "Still to come in {months, plural, one {# month} other {# months}}":
    "今后 {months, plural, other {#}} 个月的费用",
  "You pay {sum}, and up to {more} more if nothing uncertain is paid for.":
    "您支付 {sum}；如果不确定的项目都不予报销，最多再支付 {more}。",
  "You pay {sum}.": "您支付 {sum}。",
  "Paid so far: {sum}. The sums above are what is still to come.":
    "到目前为止已支付：{sum}。以上各项是今后的费用。",
  "{count, plural, one {One payment in another currency ({currencies}) is not counted here.} other {# payments in another currency ({currencies}) are not counted here.}}":
    "{count, plural, other {有 # 笔以其他货币（{currencies}）支付的款项没有计入。}}",
  "Not counted, because no fee is set for it:": "以下项目没有收费标准，因此没有计入：",
  "The sums are too small by that.": "因此以上各项偏低。",
  "What falls due when, in {currency}": "各项费用的时间（{currency}）",
  "Sum of each column": "各列合计",
  "{what}, free of charge": "{what}，免费",
  "What falls due when": "各项费用的时间",
  "Nothing falls due in these months.": "这几个月没有费用。",
  Day: "日期",
  What: "项目",
  "Taken for granted": "估算的前提",
}
