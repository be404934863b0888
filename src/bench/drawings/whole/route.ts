import type { Box } from '../geometry.ts';
import { type Errand, Maze, type Track, type Way } from './maze.ts';

/** Rounds in which leads that share a stretch are laid anew. */
const ROUNDS = 14;

/**
 * Level and upright ways for leads around boxes on a grid of cells. Each is the cheapest by A* with costs for bends,
 * crossings and company; leads that share a stretch are laid again, at a price for the contested cells that grows
 * from round to round (negotiated congestion: McMurchie and Ebeling, FPGA 1995). Deterministic: shorter leads first,
 * then by name.
 */
export function route(errands: readonly Errand[], boxes: readonly Box[]): ReadonlyMap<string, Way> {
  if (errands.length === 0) return new Map();
  const maze = new Maze(boxes, errands);
  const length = ({ from, to }: Errand): number =>
    Math.min(...from.flatMap((a) => to.map((b) => Math.abs(a.x - b.x) + Math.abs(a.y - b.y))));
  const order = errands
    .map((errand) => ({ errand, length: length(errand) }))
    .sort(
      (a, b) =>
        a.length - b.length || (a.errand.id < b.errand.id ? -1 : a.errand.id > b.errand.id ? 1 : 0),
    )
    .map(({ errand }) => errand);
  const tracks = new Map<string, Track>();
  const lay = (errand: Errand): void => {
    const before = tracks.get(errand.id);
    if (before) maze.use(before, -1);
    const track = maze.search(errand);
    maze.use(track, 1);
    tracks.set(errand.id, track);
  };
  for (const errand of order) lay(errand);
  for (let round = 0; round < ROUNDS; round++) {
    const again = order.filter(({ id }) => {
      const track = tracks.get(id)!;
      return maze.traffic.shares(track.cells) || (round < 1 && maze.traffic.crosses(track.cells));
    });
    if (again.length === 0) break;
    for (const { id } of again) maze.traffic.remember(tracks.get(id)!.cells);
    for (const errand of again) lay(errand);
  }
  return new Map(errands.map(({ id }) => [id, maze.wayOf(tracks.get(id)!)]));
}
