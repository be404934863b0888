export { Dice } from '../../src/practice/dice.ts';
