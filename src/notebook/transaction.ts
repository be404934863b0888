interface Transaction {
  readonly done: Promise<void>;
  abort(): void;
}

/**
 * What `act` does in the transaction happens whole or not at all: where it throws, also before the database could refuse,
 * what it had asked for already is taken back. Await each request in `act`.
 */
export async function wholly<Tx extends Transaction, T>(
  tx: Tx,
  act: (tx: Tx) => Promise<T>,
): Promise<T> {
  try {
    const result = await act(tx);
    await tx.done;
    return result;
  } catch (error) {
    try {
      tx.abort();
    } catch {
      // The database has done so by itself.
    }
    await tx.done.catch(() => undefined);
    throw error;
  }
}
