/** What company costs, against 2 for a step over a free cell. */
const COST = {
  cross: 20,
  /** Beside another lead, one cell away. */
  beside: 8,
  /** Along another lead, and more for every time that this was tried in the same cell. */
  along: 300,
  again: 120,
} as const;

/** Which leads run through each cell of a maze, and what that costs the next one to come. */
export class Traffic {
  /** Leads running through a cell, by direction. */
  private readonly level: Uint8Array;
  private readonly upright: Uint8Array;
  /** Times that leads met along in a cell, by direction. */
  private readonly pastLevel: Uint16Array;
  private readonly pastUpright: Uint16Array;
  private readonly width: number;

  constructor(width: number, height: number) {
    this.width = width;
    this.level = new Uint8Array(width * height);
    this.upright = new Uint8Array(width * height);
    this.pastLevel = new Uint16Array(width * height);
    this.pastUpright = new Uint16Array(width * height);
  }

  /** Other leads in or beside a cell that is passed with this heading. */
  company(cell: number, heading: number): number {
    const isLevel = heading % 2 === 0;
    const same = isLevel ? this.level : this.upright;
    const other = isLevel ? this.upright : this.level;
    const past = isLevel ? this.pastLevel : this.pastUpright;
    const aside = isLevel ? this.width : 1;
    return (
      (same[cell] ? COST.along : 0) +
      past[cell]! * COST.again +
      (other[cell] ? COST.cross : 0) +
      (same[cell - aside] ? COST.beside : 0) +
      (same[cell + aside] ? COST.beside : 0)
    );
  }

  /** Notes a lead as running from cell to cell, or takes it back. A corner counts in both directions. */
  run(cells: Int32Array, by: 1 | -1): void {
    for (let i = 1; i < cells.length; i++) {
      const runs = Math.abs(cells[i]! - cells[i - 1]!) === 1 ? this.level : this.upright;
      runs[cells[i]!]! += by;
      runs[cells[i - 1]!]! += by;
    }
  }

  /** Calls back for every cell in which the track meets another: along, or only across. */
  private meetings(cells: Int32Array, met: (i: number, along: boolean) => void): void {
    for (let i = 1; i < cells.length; i++) {
      const cell = cells[i]!;
      const step = Math.abs(cell - cells[i - 1]!);
      const runs = step === 1 ? this.level : this.upright;
      const across = step === 1 ? this.upright : this.level;
      const straight = i + 1 < cells.length && Math.abs(cells[i + 1]! - cell) === step;
      const corner = i + 1 < cells.length && !straight;
      // Each track counts twice in a cell that it passes, once in one where it ends or turns.
      if (runs[cell]! > (straight ? 2 : 1) || (corner && across[cell]! > 1)) met(i, true);
      else if (straight && across[cell]! > 0) met(i, false);
    }
  }

  shares(cells: Int32Array): boolean {
    let found = false;
    this.meetings(cells, (_, along) => {
      found ||= along;
    });
    return found;
  }
  crosses(cells: Int32Array): boolean {
    let found = false;
    this.meetings(cells, () => {
      found = true;
    });
    return found;
  }
  /** Raises the price of the cells where this track runs along another. */
  remember(cells: Int32Array): void {
    this.meetings(cells, (i, along) => {
      if (!along) return;
      const cell = cells[i]!;
      const level = Math.abs(cell - cells[i - 1]!) === 1;
      (level ? this.pastLevel : this.pastUpright)[cell]! += 1;
    });
  }
}
