import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const webOrder: Catalogue = {
  // A new order
  "Consent in force, given on {date}.": "Consentimiento vigente, otorgado el {date}.",
  "Held back for consent.": "Retenido por falta de consentimiento.",
  "To the consent": "Ir al consentimiento",
  "Reason to order all the same": "Motivo para pedir de todos modos",
  "Kept with the order. Without it the order is not taken.":
    "Se guarda con el pedido. Sin él, el pedido no se acepta.",
  "both eyes": "ambos ojos",
  "right eye": "ojo derecho",
  "left eye": "ojo izquierdo",
  "{bottles} needed for {nights, plural, one {# night} other {# nights}}.":
    "Hacen falta {bottles} para {nights, plural, one {# noche} other {# noches}}.",
  "Ordered on": "Pedido el",
  "None is set: what is usual is assumed (common practice, no source).":
    "No hay ninguna configurada: se supone lo habitual (práctica común, sin fuente).",
  "{days, plural, one {# day} other {# days}} to deliver.":
    "{days, plural, one {# día} other {# días}} de plazo de entrega.",
  "Strength, % w/v": "Concentración, % p/v",
  "From stock of": "Desde solución madre al",
  "Nights to cover": "Noches que cubrir",
  "Volume of one, mL": "Volumen de uno, mL",
  "Drops in": "Gotas en",
  Preservative: "Conservante",
  "without|preservative": "sin",
  "with|preservative": "con",
  "Recorded: {bottles, plural, one {# bottle} other {# bottles}} of {treatment} ordered. The sheet for the pharmacist is in the list.":
    "Registrado: {bottles, plural, one {# frasco} other {# frascos}} de {treatment} en pedido. La hoja para el farmacéutico está en la lista.",
  "New order": "Nuevo pedido",
  "Record order": "Registrar pedido",
  Close: "Cerrar",
  "Sheet for the pharmacist": "Hoja para el farmacéutico",
  "The sheet appears here once a strength is given.":
    "La hoja aparece aquí en cuanto se indica una concentración.",
  "the strength": "la concentración",
  "the stock": "la solución madre",
  "the number of bottles": "el número de frascos",
  "the volume of a bottle": "el volumen de un frasco",
  "{path} must be {allowed}": "{path} debe ser {allowed}",
  "The order cannot be worked out yet:": "El pedido todavía no se puede calcular:",

  // Orders as they stand
  Orders: "Pedidos",
  "Nothing has been ordered yet.": "Todavía no se ha pedido nada.",
  "What was ordered": "Lo que se pidió",
  "Ordered|on": "Pedido",
  "What|ordered": "Qué",
  "State|of an order": "Estado",
  "Next step": "Paso siguiente",
  "Without a consent in force: {reason}": "Sin consentimiento vigente: {reason}",
  "Confirm the order of {date}": "Confirmar el pedido del {date}",
  "Confirm|an order": "Confirmar",
  "Receive the order of {date}": "Recibir el pedido del {date}",
  "Receive|an order": "Recibir",
  "receive the order of {date}": "recibir el pedido del {date}",
  "receive|an order": "recibir",
  "sheet of the order of {date}": "hoja del pedido del {date}",
  "sheet|of an order": "hoja",
  "call off the order of {date}": "anular el pedido del {date}",
  "call off|an order": "anular",
  "{bottles, plural, one {# bottle} other {# bottles}} of {volume} mL, {treatment}":
    "{bottles, plural, one {# frasco} other {# frascos}} de {volume} mL, {treatment}",
  "called off on {date}: {reason}": "anulado el {date}: {reason}",
  "called off on {date}": "anulado el {date}",
  "received on {date}": "recibido el {date}",
  "confirmed on {date}, {late, plural, one {# day} other {# days}} late, expected by {expected}":
    "confirmado el {date}, con {late, plural, one {# día} other {# días}} de retraso, se esperaba para el {expected}",
  "confirmed on {date}, expected by {expected}": "confirmado el {date}, se espera para el {expected}",
  "not confirmed yet, {late, plural, one {# day} other {# days}} late, expected by {expected}":
    "aún sin confirmar, con {late, plural, one {# día} other {# días}} de retraso, se esperaba para el {expected}",
  "not confirmed yet, expected by {expected}": "aún sin confirmar, se espera para el {expected}",
  "This order can no longer be worked out with what its pharmacy states it has. Look at the pharmacy in the settings.":
    "Este pedido ya no se puede calcular con lo que su farmacia indica que tiene. Revise la farmacia en los ajustes.",
  Print: "Imprimir",

  // Its steps
  "Confirmed by the pharmacy": "Confirmado por la farmacia",
  "Confirmed on": "Confirmado el",
  Record: "Registrar",
  "Recorded: the pharmacy confirmed the order of {date}.":
    "Registrado: la farmacia confirmó el pedido del {date}.",
  "Call off the order": "Anular el pedido",
  "Called off on": "Anulado el",
  "Call off": "Anular",
  "Called off: the order of {date}.": "Anulado: el pedido del {date}.",
  "the pharmacy confirmed it": "la farmacia lo confirmó",
  "Why?": "¿Por qué?",

  // Bottles that came
  "the bottles came": "llegaron los frascos",
  "Recorded: {bottles, plural, one {# bottle} other {# bottles}} received, lot {lot}.":
    "Registrado: {bottles, plural, one {# frasco recibido} other {# frascos recibidos}}, lote {lot}.",
  "Recorded: {bottles, plural, one {# bottle} other {# bottles}} received.":
    "Registrado: {bottles, plural, one {# frasco recibido} other {# frascos recibidos}}.",
  "{bottles, plural, one {# bottle} other {# bottles}} received":
    "{bottles, plural, one {# frasco recibido} other {# frascos recibidos}}",
  "Each is entered as a bottle of its own.": "Cada uno se registra como un frasco aparte.",
  "Received|on": "Recibido",
  Lot: "Lote",
  "As on the label.": "Como en la etiqueta.",
  "Handed out|on": "Entregado",
  "First one opened": "Primero abierto",
  "Left empty until it is.": "Se deja vacío hasta que lo esté.",
  "Its last day of use": "Su último día de uso",
  "Check strength, lot and date on every label against the order. Drops are poisonous when swallowed.":
    "Compruebe en cada etiqueta la concentración, el lote y la fecha contra el pedido. Las gotas son tóxicas si se ingieren.",
  "Atropine {percent} %, {volume} mL, from {pharmacy}.":
    "Atropina al {percent} %, {volume} mL, de {pharmacy}.",
  "Atropine {percent} %, {volume} mL.": "Atropina al {percent} %, {volume} mL.",
}
