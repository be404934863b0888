/** Units as types: a number with a brand, so that ohms never meet farads unnoticed. All values are SI. */
declare const unit: unique symbol;
export type Quantity<Unit extends string> = number & { readonly [unit]: Unit };

export type Ohms = Quantity<'ohm'>;
export type Farads = Quantity<'farad'>;
export type Henries = Quantity<'henry'>;
/** Degrees. */
export type Celsius = Quantity<'celsius'>;
export type Seconds = Quantity<'second'>;
export type Bits = Quantity<'bit'>;
/** A number in 0..1. */
export type Probability = Quantity<'probability'>;

export const ohms = (value: number): Ohms => value as Ohms;
export const farads = (value: number): Farads => value as Farads;
export const henries = (value: number): Henries => value as Henries;
export const celsius = (value: number): Celsius => value as Celsius;
export const seconds = (value: number): Seconds => value as Seconds;
export const bits = (value: number): Bits => value as Bits;
export const probability = (value: number): Probability => value as Probability;
