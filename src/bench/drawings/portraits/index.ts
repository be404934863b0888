export { jackPortrait, plugPortrait } from './jack.tsx';
export { metalPortrait } from './metal.tsx';
export { coilCentres, pickupPortrait } from './pickup.tsx';
export { potPortrait } from './pot.tsx';
export { splicePortrait } from './splice.tsx';
export { switchPortrait } from './switch.tsx';
export { BODY_ABOVE_LEGS, twoLegsPortrait } from './two-legs.tsx';
