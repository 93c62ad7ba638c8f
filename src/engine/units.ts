declare const unit: unique symbol

/** A number that carries its unit in its type. It can be read as a plain number; the way in is `branded`. */
type Branded<Unit extends string> = number & { readonly [unit]: Unit }

export type Millimetres = Branded<"mm">
export type Dioptres = Branded<"D">
export type LogMAR = Branded<"logMAR">
/** Acuity as a decimal: 1 is 6/6, 0.5 is 6/12. */
export type DecimalAcuity = Branded<"decimal acuity">

/** The one place where a plain number is declared to have a unit. */
function branded<B extends Branded<string>>(): (value: number) => B {
  return (value) => value as B
}

export const millimetres = branded<Millimetres>()
export const dioptres = branded<Dioptres>()
export const logMAR = branded<LogMAR>()
export const decimalAcuity = branded<DecimalAcuity>()
