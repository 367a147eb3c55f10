/** Colours of the drawings by their job; on the page as variables, in a saved picture as plain colours. */
export const colourNames = ['ground', 'sheet', 'ink', 'soft', 'rule', 'lit', 'tint', 'band', 'cursor', 'warn', 'steel', 'edge'] as const;
export type Paint = Record<(typeof colourNames)[number], string>;

export const pagePaint = Object.fromEntries(colourNames.map((n) => [n, `var(--${n})`])) as Paint;

/** The colours as they are now, in the theme the reader sees. */
export function resolvedPaint(): Paint {
  const probe = document.createElement('span');
  document.body.append(probe);
  const entries = colourNames.map((name) => {
    probe.style.color = `var(--${name})`;
    return [name, getComputedStyle(probe).color];
  });
  probe.remove();
  return Object.fromEntries(entries) as Paint;
}
