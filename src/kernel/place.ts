/** A text that was read: its name as the user wrote it, and its content. */
export interface SourceText {
  readonly name: string;
  readonly text: string;
}

/** Line and column, both counted from 1; columns in UTF-16 code units; the end is one past the last character. */
export interface Position {
  readonly line: number;
  readonly column: number;
  readonly endLine: number;
  readonly endColumn: number;
}

/**
 * Where in a text something stands. Rules and steps carry places about without ever counting lines: the offsets are
 * asked for, and turned into line and column, only when a finding is printed.
 */
export class Place {
  constructor(
    readonly source: SourceText,
    /** Readable path, such as `holes[0].diameter`; empty for the whole text. */
    readonly path: string,
    private readonly offsets: () => readonly [number, number],
  ) {}

  position(): Position {
    const [start, end] = this.offsets();
    const from = lineAndColumn(this.source.text, start);
    const to = lineAndColumn(this.source.text, Math.max(start, end));
    return { line: from.line, column: from.column, endLine: to.line, endColumn: to.column };
  }

  /** Characters `from` to `to` of a piece of this place; all of the place where the piece is written in another way, such as folded over lines. */
  within(piece: string, from: number, to: number): Place {
    return new Place(this.source, this.path, () => {
      const [start, end] = this.offsets();
      const at = this.source.text.slice(start, end).indexOf(piece);
      return at < 0 ? [start, end] : [start + at + from, start + at + to];
    });
  }
}

function lineAndColumn(text: string, offset: number): { line: number; column: number } {
  let line = 1;
  let lineStart = 0;
  for (let at = text.indexOf('\n'); at !== -1 && at < offset; at = text.indexOf('\n', at + 1)) {
    line += 1;
    lineStart = at + 1;
  }
  return { line, column: Math.max(0, offset - lineStart) + 1 };
}
