/** Sizes no guitar reaches; they keep a hostile file from holding up the phone, and the editor within what a file may hold. */
export const MOST = {
  parts: 120,
  leads: 300,
  pickups: 12,
  coils: 8,
  positions: 24,
  joins: 64,
  rows: 12,
  /** Lugs in a row of a switch. */
  row: 24,
  /** Characters. */
  title: 200,
  colour: 60,
} as const;
