const context = document.createElement('canvas').getContext('2d');

/** Width of a text in pixels, in the page's typeface. */
export function textWidth(text: string, sizePx: number, weight = 400): number {
  if (!context) return text.length * sizePx * 0.56;
  context.font = `${weight} ${sizePx}px Archivo, sans-serif`;
  return context.measureText(text).width;
}

/** Breaks a text into lines no wider than `widthPx`. */
export function wrap(text: string, sizePx: number, weight: number, widthPx: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line ? `${line} ${word}` : word;
    if (line && textWidth(longer, sizePx, weight) > widthPx) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  if (line) lines.push(line);
  return lines;
}
