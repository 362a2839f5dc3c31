/** Time that this process has worked, in ms: a machine with other work to do is no hang of the program. */
export function cpuTime(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}
