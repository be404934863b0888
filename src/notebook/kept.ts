/** What every record has that is kept under an id. */
export interface Kept {
  readonly id: string;
}

export interface Dated {
  /** ISO 8601. */
  readonly changedAt: string;
}
