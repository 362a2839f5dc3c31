/** Words of a cavity, a casting and a part, and what they are called where all castings of a shot are one set. */
const SET_WORDS: readonly (readonly [RegExp, string])[] = [
  [/\b(of|under) one (cavity|casting)\b/, '$1 all castings'],
  [/\b(from|into) one cavity\b/, '$1 all cavities'],
  [/, one cavity$/, ', whole shot'],
  [/\bfor one casting\b/, 'for a set'],
  [/\bkilogram of good parts\b/, 'kilogram of good castings'],
  [/^Good parts\b/, 'Good sets'],
  [/\bgood part\b/, 'good set'],
  [/\bCastings an hour\b/, 'Sets an hour'],
  [/\bcastings an hour\b/, 'sets an hour'],
  [/\bfor each (part|casting)\b/, 'for each set'],
  [/\bmass of the part\b/, 'mass of the castings'],
];

/** What a title or label of any plan says of one casting, said of all castings of a shot. */
export function ofTheSet(text: string): string {
  return SET_WORDS.reduce((said, [from, to]) => said.replace(from, to), text);
}
