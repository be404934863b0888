/** Small dense algebra on symmetric positive definite matrices, row-major n x n. */

/** Lower Cholesky factor, or null where the matrix is not positive definite. */
export function cholesky(matrix: Float64Array, n: number): Float64Array | null {
  const l = new Float64Array(n * n);
  for (let i = 0; i < n; i += 1)
    for (let j = 0; j <= i; j += 1) {
      let sum = matrix[i * n + j] as number;
      for (let k = 0; k < j; k += 1) sum -= (l[i * n + k] as number) * (l[j * n + k] as number);
      if (i === j) {
        if (!(sum > 0)) return null;
        l[i * n + i] = Math.sqrt(sum);
      } else l[i * n + j] = sum / (l[j * n + j] as number);
    }
  return l;
}

/** Solves l x = b in place of a copy. */
export function forward(l: Float64Array, n: number, b: Float64Array): Float64Array {
  const x = b.slice(0, n);
  for (let i = 0; i < n; i += 1) {
    let sum = x[i] as number;
    for (let k = 0; k < i; k += 1) sum -= (l[i * n + k] as number) * (x[k] as number);
    x[i] = sum / (l[i * n + i] as number);
  }
  return x;
}

/** Solves l' x = b in place of a copy. */
export function backward(l: Float64Array, n: number, b: Float64Array): Float64Array {
  const x = b.slice(0, n);
  for (let i = n - 1; i >= 0; i -= 1) {
    let sum = x[i] as number;
    for (let k = i + 1; k < n; k += 1) sum -= (l[k * n + i] as number) * (x[k] as number);
    x[i] = sum / (l[i * n + i] as number);
  }
  return x;
}

export const logNormal = (residual: number, variance: number): number =>
  -0.5 * (Math.log(2 * Math.PI * variance) + (residual * residual) / variance);

/** ln(sum of exponentials). */
export function logSum(values: readonly number[]): number {
  let top = Number.NEGATIVE_INFINITY;
  for (const value of values) if (value > top) top = value;
  if (top === Number.NEGATIVE_INFINITY) return top;
  let sum = 0;
  for (const value of values) sum += Math.exp(value - top);
  return top + Math.log(sum);
}
