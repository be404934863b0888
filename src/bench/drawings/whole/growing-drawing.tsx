import type { ComponentProps } from 'preact';
import { useGrowing } from '../../growing.ts';
import { LAYERS, WholeDrawing } from './whole-drawing.tsx';

/** The whole wiring, drawn layer by layer when it is first shown. */
export function GrowingDrawing(props: ComponentProps<typeof WholeDrawing>) {
  return <WholeDrawing {...props} layers={useGrowing(LAYERS)} />;
}
