import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const estimate: Catalogue = {
  "months must be a whole number from 1 to {most}, not {months}":
    "los meses deben ser un número entero de 1 a {most}, no {months}",
  "Estimate of costs": "Estimación de costes",
  "An estimate made on {date}, not an invoice.": "Estimación hecha el {date}; no es una factura.",
  "For|the child": "Para",
  "your child": "su hijo o hija",
  "Born|day of birth": "Fecha de nacimiento",
  Plan: "Plan",
  Time: "Periodo",
  "{from} to {to}": "{from} a {to}",
  "This is an estimate made on {date}, not an invoice.":
    "Esto es una estimación hecha el {date}, no una factura.",
  "What is paid in the end depends on the visits that take place and on the fees of their day.":
    "Lo que se pague al final depende de las visitas que se hagan y de las tarifas de ese día.",
  "Still to come in {months, plural, one {# month} other {# months}}":
    "Lo que está por venir en {months, plural, one {# mes} other {# meses}}",
  "You pay {sum}, and up to {more} more if nothing uncertain is paid for.":
    "Usted paga {sum}, y hasta {more} más si no se paga nada de lo que tiene cobertura incierta.",
  "You pay {sum}.": "Usted paga {sum}.",
  "Paid so far: {sum}. The sums above are what is still to come.":
    "Pagado hasta ahora: {sum}. Las sumas de arriba son lo que está por venir.",
  "{count, plural, one {One payment in another currency ({currencies}) is not counted here.} other {# payments in another currency ({currencies}) are not counted here.}}":
    "{count, plural, one {Un pago en otra moneda ({currencies}) no se cuenta aquí.} other {# pagos en otra moneda ({currencies}) no se cuentan aquí.}}",
  "Not counted, because no fee is set for it:": "No se cuenta, porque no hay tarifa fijada para ello:",
  "The sums are too small by that.": "Las sumas quedan cortas en esa parte.",
  "What falls due when, in {currency}": "Qué se paga y cuándo, en {currency}",
  "Sum of each column": "Suma de cada columna",
  "{what}, free of charge": "{what}, gratuito",
  "What falls due when": "Qué se paga y cuándo",
  "Nothing falls due in these months.": "En estos meses no hay nada que pagar.",
  Day: "Día",
  What: "Concepto",
  "Taken for granted": "Lo que se da por supuesto",
}
