import {
  addDependencies,
  create,
  divideDependencies,
  type FactoryFunctionMap,
  type MathNode,
  multiplyDependencies,
  parseDependencies,
  subtractDependencies,
  type Unit,
  unitDependencies,
} from 'mathjs';

/**
 * The parts of mathjs that an entry needs, as one chunk that is loaded when the first expression is
 * typed: never on the way to the first screen.
 */
const math = create({
  parseDependencies,
  unitDependencies,
  addDependencies,
  subtractDependencies,
  multiplyDependencies,
  divideDependencies,
} as FactoryFunctionMap);

/** A number, or a number with a unit. */
export type Term = number | Unit;

export const parse = (text: string): MathNode => math.parse(text);
export const unit = (name: string): Unit => math.unit(1, name);
export const add = (a: Term, b: Term): Term => math.add(a as number, b as number);
export const subtract = (a: Term, b: Term): Term => math.subtract(a as number, b as number);
export const multiply = (a: Term, b: Term): Term => math.multiply(a as number, b as number);
export const divide = (a: Term, b: Term): Term => math.divide(a as number, b as number) as Term;
