export { ControlsStrip } from './controls-strip.tsx';
export { MeterFace } from './meter-face.tsx';
export { PlaceDrawing } from './place-drawing.tsx';
export { ProbeDrawing, SceneDrawing } from './probe-drawing.tsx';
export { sceneInSteps } from './scene.ts';
