/** More rows than this are drawn only where they are in view, all of one height. */
export const MOST_ROWS_AT_ONCE = 150;

/** Height of a row that may be left out, in widths of the root's letters: two lines of words. */
export const ROW_REM = 3.5;

const SPARE_ROWS = 6;

export interface Window {
  first: number;
  /** One past the last row drawn. */
  end: number;
}

/** The rows drawn for a frame that is `viewPx` high and scrolled by `topPx`. */
export function windowOf(rows: number, topPx: number, viewPx: number, rowPx: number): Window {
  const first = Math.max(0, Math.min(rows, Math.floor(topPx / rowPx)) - SPARE_ROWS);
  return { first, end: Math.min(rows, first + Math.ceil(viewPx / rowPx) + 2 * SPARE_ROWS) };
}

export interface Place {
  row: number;
  column: number;
}

const PAGE_ROWS = 10;

/** Where a key leads in a grid; null for a key that does not move. Column 0 is the row's heading. */
export function moved(from: Place, key: string, whole: boolean, rows: number, columns: number): Place | null {
  const { row, column } = from;
  const to: Record<string, Place> = {
    ArrowUp: { row: row - 1, column },
    ArrowDown: { row: row + 1, column },
    ArrowLeft: { row, column: column - 1 },
    ArrowRight: { row, column: column + 1 },
    PageUp: { row: row - PAGE_ROWS, column },
    PageDown: { row: row + PAGE_ROWS, column },
    Home: { row: whole ? 0 : row, column: 0 },
    End: { row: whole ? rows - 1 : row, column: columns - 1 },
  };
  const place = to[key];
  if (!place) return null;
  const within = (value: number, count: number) => Math.max(0, Math.min(count - 1, value));
  return { row: within(place.row, rows), column: within(place.column, columns) };
}
