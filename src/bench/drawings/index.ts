export { ControlsStrip } from './controls-strip.tsx';
export { MeterFace } from './meter-face.tsx';
export { LAYERS } from './panel.tsx';
export { PlacesDrawing, shownPlaces } from './place-drawing.tsx';
export { placesInSteps } from './places-scene.ts';
export { ProbeDrawing, SceneDrawing } from './probe-drawing.tsx';
export { type Panel, sceneInSteps } from './scene.ts';
