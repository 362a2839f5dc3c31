/** Thickness of `count` cells of the steel, the first `first` thick and each a little thicker than the one before, in m. */
export function gradedDepths(first: number, ratio: number, count: number): Float64Array {
  return Float64Array.from({ length: count }, (_, i) => first * ratio ** i);
}
