export { spotOf } from './dots.ts';
export { GrowingDrawing } from './growing-drawing.tsx';
export { placeParts } from './place-parts.ts';
export { GRID, type Place, type Places, standOf, type Turn } from './places.ts';
export { type LeadPath, routeLeads } from './route-leads.ts';
export { useLayout } from './use-layout.ts';
export { WholeDrawing } from './whole-drawing.tsx';
export { wholeLayout } from './whole-layout.ts';
export { ZoomFrame } from './zoom-frame.tsx';
