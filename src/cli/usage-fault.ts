import type { Command } from 'commander';

/** A fault of the command line as the library words it, with what an argument may be where it is missing or wrong. */
export function usageFault(text: string, command: Command | undefined): string {
  const missing = /^error: missing required argument '(.+)'\n$/.exec(text);
  const wrong = /^error: command-argument value '([\s\S]*)' is invalid for argument '(.+)'\. Allowed choices are/.exec(text);
  const name = missing?.[1] ?? wrong?.[2];
  if (name === undefined) return text;
  const choices = command?.registeredArguments.find((argument) => argument.name() === name)?.argChoices;
  const advice = choices === undefined ? '' : `; write one of ${choices.join(', ')}`;
  return missing === null ? `error: "${wrong?.[1]}" is not known as <${name}>${advice}\n` : `error: <${name}> is missing${advice}\n`;
}
