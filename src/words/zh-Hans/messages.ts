import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const messages: Catalogue = {
  "Time to book a visit": "请预约下次到访",
  "A visit is coming up": "下次到访快到了",
  "A visit has not been made yet": "还有一次到访未完成",
  "Something to arrange with us soon": "有一件事请您尽快与我们约定",
  "You agreed to such messages on {day}. To stop them, answer this message with the word stop, or call us.":
    "您于{day}同意接收此类消息。如不想再收到，请回复本邮件“停止”，或给我们打电话。",
  "You agreed to such messages on {day}. To stop them, call us.":
    "您于{day}同意接收此类消息。如不想再收到，请给我们打电话。",
  "Hello {name},": "{name}，您好：",
  "You reach us by telephone at {telephone}.": "我们的电话是 {telephone}。",
  "Please do not write to us about anything urgent: call us.": "如有急事，请不要写信，请直接给我们打电话。",
  "Please do not write to us about anything urgent. Urgent contact: {urgent}.":
    "如有急事，请不要写信。急事联系：{urgent}。",
  "{practice}, telephone {telephone}. To stop these messages, call us.":
    "{practice}，电话 {telephone}。如不想再收到此类消息，请给我们打电话。",
  "Please call us to find a new day.": "请给我们打电话，另约一个日期。",
  "Please call us about the next one.": "请给我们打电话，约定下一瓶。",
  "Please do not use a bottle after its date.": "过了日期的瓶子请不要再用。",
  "If a day is agreed already, there is nothing else to do.": "如果您已经约好日期，就不需要再做什么。",
  "It is time to book the next visit of {child}: please call us for a day until {until}.":
    "该为{child}预约下次到访了：请给我们打电话，约定{until}之前（含当日）的一天。",
  "It is time to book your child’s next visit: please call us for a day until {until}.":
    "该为您的孩子预约下次到访了：请给我们打电话，约定{until}之前（含当日）的一天。",
  "It is time to book the next visit of {child}: please call us for a day from {from} to {until}.":
    "该为{child}预约下次到访了：请给我们打电话，约定{from}至{until}之间的一天。",
  "It is time to book your child’s next visit: please call us for a day from {from} to {until}.":
    "该为您的孩子预约下次到访了：请给我们打电话，约定{from}至{until}之间的一天。",
  "The next visit of {child} is planned for about {day}: please call us if no day is agreed yet.":
    "{child}的下次到访计划在{day}前后：如果还没有约好日期，请给我们打电话。",
  "Your child’s next visit is planned for about {day}: please call us if no day is agreed yet.":
    "您孩子的下次到访计划在{day}前后：如果还没有约好日期，请给我们打电话。",
  "By our records the visit of {child} that was planned for about {day} has not been made yet.":
    "根据我们的记录，{child}原计划在{day}前后的到访还没有完成。",
  "By our records your child’s visit that was planned for about {day} has not been made yet.":
    "根据我们的记录，您孩子原计划在{day}前后的到访还没有完成。",
  "By our records the last bottle for {child} was good until {day}.":
    "根据我们的记录，{child}最后一瓶的使用期限到{day}为止，现已过期。",
  "By our records your child’s last bottle was good until {day}.":
    "根据我们的记录，您孩子最后一瓶的使用期限到{day}为止，现已过期。",
  "By our records the last bottle for {child} is good until {day}.":
    "根据我们的记录，{child}最后一瓶可以用到{day}。",
  "By our records your child’s last bottle is good until {day}.":
    "根据我们的记录，您孩子最后一瓶可以用到{day}。",
}
