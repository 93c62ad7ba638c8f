/** Settings and a family that the tests of messages begin with. */
export const RULES = {
  isOn: true,
  sender: "Quiet Harbour",
  from: "desk@harbour.example",
  replyTo: "answers@harbour.example",
  telephone: "+353 1 555 0100",
  timeZone: "Europe/Dublin",
  quietFrom: "21:00",
  quietTo: "08:00",
  daysBefore: 14,
}
export const CONTACT = {
  name: "Ines Solberg",
  relation: "mother",
  language: "en",
  email: "ines@family.example",
  telephone: "+353 1 555 0199",
  address: "1 Harbour Lane\nSmalltown",
  reachedBy: "email",
  childCalled: "Mira",
  agreed: { on: "2025-01-10", to: ["visits", "bottles"] },
}
