/**
 * What `make` gives, made when it is first asked for. A machine takes several milliseconds to be made on a slow phone: it is not made
 * while its script loads, which another screen may be waiting for.
 */
export function once<Made extends object>(make: () => Made): () => Made {
  let made: Made | undefined;
  return () => {
    made ??= make();
    return made;
  };
}
