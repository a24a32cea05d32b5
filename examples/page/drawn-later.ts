/** Figures in view are drawn at once; the others when the page is idle, in their latest state. */

const inView = new WeakSet<Element>();
const waiting = new Map<HTMLElement, () => void>();
let asked = false;

const watcher = new IntersectionObserver(
  (entries) => {
    for (const { target, isIntersecting } of entries) {
      if (isIntersecting) inView.add(target);
      else inView.delete(target);
    }
  },
  { rootMargin: '100px' },
);
const watched = new WeakSet<Element>();

const whenIdle: (work: () => void) => unknown =
  'requestIdleCallback' in window
    ? (work) => requestIdleCallback(work, { timeout: 500 })
    : (work) => setTimeout(work, 100);

function drawWaiting(): void {
  asked = false;
  const all = [...waiting.values()];
  waiting.clear();
  for (const draw of all) draw();
}

/** Draws into a place now where it can be seen, else later; a later drawing takes the place of one that still waits. */
export function drawInto(place: HTMLElement, draw: () => void): void {
  if (!watched.has(place)) {
    watched.add(place);
    watcher.observe(place);
  }
  if (inView.has(place) || place.childElementCount === 0) {
    waiting.delete(place);
    draw();
    return;
  }
  waiting.set(place, draw);
  if (!asked) {
    asked = true;
    whenIdle(drawWaiting);
  }
}

/** Draws what waits: before something is printed. */
export const drawAll = drawWaiting;
