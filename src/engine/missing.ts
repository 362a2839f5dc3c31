/** A value that a step needs and that is not there, because an earlier step could not work it out. */
export class Missing extends Error {
  constructor(readonly id: string) {
    super(`${id} is not known`);
    this.name = 'Missing';
  }
}
