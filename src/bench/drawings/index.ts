export { ControlsStrip } from './controls-strip.tsx';
export { MeterFace } from './meter-face.tsx';
export { PlaceDrawing } from './place-drawing.tsx';
export { ProbeDrawing } from './probe-drawing.tsx';
