/** Linear light of a colour, sRGB (IEC 61966-2-1). */
export function light(colour: string): number[] {
  return [1, 3, 5].map((at) => {
    const share = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
}

export const mix = (weights: readonly number[], colour: readonly number[]): number => weights.reduce((sum, weight, i) => sum + weight * (colour[i] ?? 0), 0);

/** Contrast ratio, WCAG 2.2 (relative luminance with its coefficients). */
export function contrast(one: string, other: string): number {
  const [dark = 0, bright = 0] = [one, other].map((colour) => mix([0.2126, 0.7152, 0.0722], light(colour))).sort((a, b) => a - b);
  return (bright + 0.05) / (dark + 0.05);
}

/** What is seen without one kind of cone: Machado, Oliveira and Fernandes 2009, severity 1; the matrices are typed from memory. */
export const VISIONS: Readonly<Record<string, readonly (readonly number[])[]>> = {
  usual: [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  'without long-wave cones': [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  'without middle-wave cones': [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  'without short-wave cones': [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

/** CIE 1976 L*a*b* under D65. */
export function lab(colour: readonly number[]): number[] {
  const root = (t: number): number => (t > 0.008856 ? Math.cbrt(t) : 7.787 * t + 16 / 116);
  const [x = 0, y = 0, z = 0] = [
    mix([0.4124, 0.3576, 0.1805], colour) / 0.9505,
    mix([0.2126, 0.7152, 0.0722], colour),
    mix([0.0193, 0.1192, 0.9505], colour) / 1.089,
  ].map(root);
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}

/** How far apart two colours look in a vision: their straight distance in L*a*b* (CIE 1976). */
export function distance(one: string, other: string, matrix: readonly (readonly number[])[]): number {
  const [seen, beside] = [one, other].map((colour) => lab(matrix.map((row) => Math.min(1, Math.max(0, mix(row, light(colour)))))));
  return Math.hypot(...(seen ?? []).map((value, i) => value - (beside?.[i] ?? 0)));
}
