import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const calendar: Catalogue = {
  "Appointment to book": "请预约时间",
  "Something to collect": "有物品待领取",
  "Something to sign": "有文件待签字",
  "Reminders|calendar": "提醒",
  "Any day from {from} to {to}.": "{from}至{to}之间任意一天均可。",
  "On {day} at the latest.": "最迟于{day}。",
  "As soon as you can: it was due by {day}.": "请尽快办理：原定期限为{day}。",
  "This is a reminder: it books no day.": "这只是提醒，并未预约具体日期。",
  "Please ask {practice}.": "请咨询{practice}。",
}
