export { Dice } from './dice.ts';
export { type SimulatedGuitar, type SimulationOptions, simulate } from './guitar.ts';
