/** What the command that renews the plans beside a part has to say. */
export interface Refresh {
  readonly parts: readonly string[];
  readonly json?: string | undefined;
  readonly markdown?: string | undefined;
  readonly workings: boolean;
  readonly figures: boolean;
  readonly wave: boolean;
  readonly plant?: string | undefined;
  readonly set: readonly string[];
}

/** The command line for a shell of the POSIX kind, to be run in the folder that the names count from. */
export function refreshCommand({ parts, json, markdown, workings, figures, wave, plant, set }: Refresh): string {
  const words = [
    'diewright',
    'plan',
    ...parts,
    ...(plant === undefined ? [] : ['--plant', plant]),
    ...set.flatMap((edit) => ['--set', edit]),
    ...(json === undefined ? [] : ['--format', `json=${json}`]),
    ...(markdown === undefined ? [] : ['--format', `markdown=${markdown}`]),
    ...(markdown !== undefined && !figures ? ['--figures', 'none'] : []),
    ...(workings ? ['--workings'] : []),
    ...(wave ? ['--wave'] : []),
    '--fail-on',
    'never',
  ];
  return words.map(quoted).join(' ');
}

function quoted(word: string): string {
  return /^[\w@%+=:,./-]+$/.test(word) ? word : `'${word.replaceAll("'", "'\\''")}'`;
}
