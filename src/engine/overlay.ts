/**
 * A map laid over another one: what is set stays here, what is not found here is looked for below. The one below must not
 * change while this one is in use. It lets a trial begin with all that a plan holds, without a copy of it.
 */
export class Overlay<V> extends Map<string, V> {
  readonly below: ReadonlyMap<string, V>;

  /** Over an overlay, the little that was set there is copied, so that no look-up ever passes through more than two maps. */
  constructor(below: ReadonlyMap<string, V>) {
    super();
    this.below = below instanceof Overlay ? below.below : below;
    copyOwn(below, this);
  }

  /** What was set here. */
  own(): MapIterator<[string, V]> {
    return super.entries();
  }

  override get(key: string): V | undefined {
    return super.get(key) ?? this.below.get(key);
  }

  override has(key: string): boolean {
    return super.has(key) || this.below.has(key);
  }

  override get size(): number {
    let size = this.below.size;
    for (const key of super.keys()) if (!this.below.has(key)) size += 1;
    return size;
  }

  /** As in a map in which all had been set one after the other: a key keeps its place when it is set again. */
  override entries(): MapIterator<[string, V]> {
    return new Map([...this.below, ...super.entries()]).entries();
  }

  override keys(): MapIterator<string> {
    return [...this.below.keys(), ...[...super.keys()].filter((key) => !this.below.has(key))].values();
  }

  override values(): MapIterator<V> {
    return new Map([...this.below, ...super.entries()]).values();
  }

  override [Symbol.iterator](): MapIterator<[string, V]> {
    return this.entries();
  }

  override forEach(visit: (value: V, key: string, map: Map<string, V>) => void): void {
    for (const [key, value] of this.entries()) visit(value, key, this);
  }
}

/** Sets elsewhere what was set in an overlay, and nothing of a map that lies over no other. */
export function copyOwn<V>(from: ReadonlyMap<string, V>, to: Map<string, V>): void {
  if (from instanceof Overlay) for (const [key, value] of (from as Overlay<V>).own()) to.set(key, value);
}
