import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const share: Catalogue = {
  "Your child’s page": "您孩子的页面",
  "To open it, enter your child’s date of birth.": "请输入您孩子的出生日期以打开页面。",
  "Date of birth": "出生日期",
  "Open|the page": "打开",
  "After five wrong dates the link locks. The practice can give you a new one.":
    "日期输错五次后，链接会被锁定。诊所可以给您一个新的链接。",
  "The practice’s server cannot be reached. Try again later.": "无法连接诊所的服务器，请稍后再试。",
  "That was often in a short time. Wait a minute, then try again.":
    "短时间内尝试次数过多，请等一分钟后再试。",
  "This link and this date do not open a page. Check the date, or ask the practice for a new link.":
    "此链接与该日期无法打开页面。请核对日期，或向诊所索取新的链接。",
  Language: "语言",
  Print: "打印",
  "Save as PDF": "保存为 PDF",
  "Dates for the calendar": "日期存入日历",
}
