const MARGIN = '200px';
const waiting = new WeakMap<Element, () => void>();

const observer = new IntersectionObserver((entries) => {
  for (const { target, isIntersecting } of entries) {
    if (!isIntersecting) continue;
    observer.unobserve(target);
    waiting.get(target)?.();
  }
}, { rootMargin: MARGIN });

/** Calls back once, when the element comes near the part of the page that is in view. */
export const onceSeen = (then: () => void) => (element: Element) => {
  waiting.set(element, then);
  observer.observe(element);
  return () => observer.unobserve(element);
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
