import type { ConsentWording } from "../../practice-rules.js"

const drops: ConsentWording = {
  id: "drops",
  version: "1",
  from: "2026-11-25",
  language: "en",
  title: "Consent to treatment with {treatment} eye drops",
  isMaterial: false,
  sections: [
    {
      heading: "What this is about",
      text: "Your child is short-sighted because the eyes have grown long for their age, and they are still growing. A drop of {treatment} in each treated eye at bedtime may slow this growth. It is unlikely to stop it, and it does not undo what has grown already: your child will still need glasses or lenses.\nEach dioptre less lowers the risk of eye disease later in life; low and moderate short-sightedness carry some risk too.\nHow well it works in this child can't be known beforehand. How far the eyes would have grown without treatment can't be known afterwards either. We measure, and tell you what the measurements support.",
    },
    {
      heading: "Not licensed for this, and made to order",
      text: "Unless we tell you otherwise, these drops are not licensed for slowing short-sightedness where you live. Using a medicine so is called off-label. That is not the same as improper or experimental; it means that no authority has weighed benefit and harm for this use.\nThe bottle is made to order by a pharmacy and is not a factory product. {quality}\nRegulators do not agree on the benefit: in the European Union in 2025 one atropine product of 0.01 % was authorised and a different atropine product was refused.",
    },
    {
      heading: "What it may do, in figures",
      text: "{benefit}\nThese are averages of groups. Your child may do better or worse.",
    },
    {
      heading: "Side effects at this strength",
      text: "{sideEffects}\nHow often children complain depends much on how they are asked, so look at the difference to the group without the drug. Glasses that darken in the sun may help. Tell us if anything troubles your child; a lower strength or a stop is always possible.\nFlashes, floaters, a curtain over the sight, pain or sudden loss of sight: have the eye seen on the same day. Call {urgent}.",
    },
    {
      heading: "Other ways",
      text: "{alternatives}\nNo treatment: ordinary glasses give clear sight and are not meant to slow growth. The eyes go on being measured, and treatment may be started later.",
    },
    {
      heading: "What it costs",
      text: "{cost}\nIf we have an interest of our own in one of these treatments, we tell you so.",
    },
    {
      heading: "Keeping the bottle, and poison",
      text: "Keep the bottle as its label says, and throw it away on the date given there even if some is left. Wash your hands after use and keep the drops away from the mouth.\nAtropine is a poison when swallowed. {contents} Keep the bottle out of sight and reach of every child in the home.\nIf a child may have swallowed some, do not wait: call {poisonCentre}. Confusion, fever, a flushed dry skin, a fast pulse or a fit: call an ambulance.",
    },
    {
      heading: "What we ask of you",
      text: "One drop at bedtime in each treated eye, every night. Come to the examinations; without measurements nobody can say whether it works. Tell us about missed nights: it changes how we read the measurements, and nobody is blamed.",
    },
    {
      heading: "Your right to stop, and what follows",
      text: "You may stop at any time, without giving a reason and without any loss of care. Please tell us, so that the eyes can be measured after the stop.\n{afterStopping}\nGuidelines do not agree on when to stop. We plan the end together and look at it every year.",
    },
    {
      heading: "For your child",
      text: "We ask your child as well, in words that fit the age:\n1. These drops may help your eyes to grow more slowly. Do you know why we talk about that?\n2. A drop is put in at bedtime. Bright light may feel too bright, and small print close up may look blurred.\n3. Tell us in your own words what will happen. Is anybody pushing you?\n4. Would you like to try it? You may say no, and you may change your mind.",
    },
  ],
}

const optical: ConsentWording = {
  id: "optical",
  version: "1",
  from: "2026-11-25",
  language: "en",
  title: "Consent to treatment with {treatment}",
  isMaterial: false,
  sections: [
    {
      heading: "What this is about",
      text: "Your child is short-sighted because the eyes have grown long for their age, and they are still growing. Treatment with {treatment} may slow this growth. It is unlikely to stop it, and it does not undo what has grown already.\nHow well it works in this child can't be known beforehand. How far the eyes would have grown without treatment can't be known afterwards either. Whether the product is licensed for slowing short-sightedness depends on the country and the product: we tell you.",
    },
    {
      heading: "What it may do, in figures",
      text: "{benefit}\nThese are averages of groups. Your child may do better or worse.",
    },
    {
      heading: "Side effects",
      text: "{sideEffects}\nFlashes, floaters, a curtain over the sight, pain, a red eye with lenses or sudden loss of sight: have the eye seen on the same day. Call {urgent}.",
    },
    {
      heading: "Other ways",
      text: "{alternatives}\nNo treatment: ordinary glasses give clear sight and are not meant to slow growth. The eyes go on being measured, and treatment may be started later.",
    },
    {
      heading: "What it costs",
      text: "{cost}\nIf we have an interest of our own in one of these treatments, we tell you so.",
    },
    {
      heading: "Your right to stop, and what follows",
      text: "You may stop at any time, without giving a reason and without any loss of care. Please tell us, so that the eyes can be measured after the stop.\n{afterStopping}",
    },
    {
      heading: "For your child",
      text: "We ask your child as well, in words that fit the age:\n1. These may help your eyes to grow more slowly. Do you know why we talk about that?\n2. You wear them as we show you, every day or every night. That takes getting used to.\n3. Tell us in your own words what will happen. Is anybody pushing you?\n4. Would you like to try it? You may say no, and you may change your mind.",
    },
  ],
}

export const english: readonly ConsentWording[] = [drops, optical]
