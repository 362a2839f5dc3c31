/** What people write for a key of ours, by the words of drawings, spreadsheets and other languages of data. */
const OTHER_WORDS: Readonly<Record<string, readonly string[]>> = {
  annual: ['per_year'],
  area: ['projected_area', 'face_area'],
  clearance: ['tie_bar_clearance'],
  clamp_force: ['locking_force'],
  clamping_force: ['locking_force'],
  depth: ['height'],
  dia: ['diameter'],
  draft_angle: ['draft'],
  height: ['depth'],
  material: ['alloy'],
  max: ['greatest'],
  maximum: ['greatest'],
  min: ['least'],
  minimum: ['least'],
  nom: ['nominal'],
  number: ['count'],
  path: ['file'],
  pcs: ['count', 'per_year'],
  quantity: ['count', 'per_year'],
  qty: ['count', 'per_year'],
  size: ['envelope', 'nominal', 'diameter'],
  surface: ['surface_area'],
  thickness: ['nominal', 'root_width', 'wall'],
  typical: ['nominal'],
  tol: ['tolerance'],
  tonnage: ['locking_force'],
  wall_thickness: ['wall'],
  weight: ['mass'],
  yearly: ['per_year'],
};

/** The key that a mapping knows for a word that means the same, whatever its case. */
export function otherWordFor(word: string, known: readonly string[]): string | undefined {
  const lower = word.toLowerCase();
  return Object.hasOwn(OTHER_WORDS, lower) ? OTHER_WORDS[lower]?.find((key) => known.includes(key)) : undefined;
}
