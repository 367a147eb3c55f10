/** Hands a file to the browser. */
export function download(blob: Blob, name: string) {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}

const quoted = (cell: string) => (/[",\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);

/** As RFC 4180, with a mark by which spreadsheets know the encoding. */
export const csv = (head: string[], rows: string[][]) =>
  new Blob(['\ufeff', ...[head, ...rows].map((row) => `${row.map(quoted).join(',')}\r\n`)], { type: 'text/csv' });
