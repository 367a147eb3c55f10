import { flushSync } from 'svelte';

const MARGIN = '200px';
const waiting = new Map<Element, () => void>();

const observer = new IntersectionObserver((entries) => {
  for (const { target, isIntersecting } of entries) {
    if (!isIntersecting) continue;
    see(target);
  }
}, { rootMargin: MARGIN });

function see(element: Element) {
  const then = waiting.get(element);
  forget(element);
  then?.();
}

function forget(element: Element) {
  observer.unobserve(element);
  waiting.delete(element);
}

// Paper shows everything at once.
addEventListener('beforeprint', () => flushSync(() => [...waiting.keys()].forEach(see)));

/** Calls back once, when the element comes near the part of the page that is in view. */
export const onceSeen = (then: () => void) => (element: Element) => {
  waiting.set(element, then);
  observer.observe(element);
  return () => forget(element);
};

const AT_LATEST_MS = 100;

/** Runs when the browser has drawn what is there now; in a page that nobody sees, nearly at once. */
export function afterPaint(then: () => void) {
  let done = false;
  const once = () => {
    if (!done) then();
    done = true;
  };
  requestAnimationFrame(() => setTimeout(once));
  setTimeout(once, AT_LATEST_MS);
}
