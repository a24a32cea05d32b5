/** Labels side by side in their order, in as few rows as possible, so that none overlaps another. */

export interface Placeable {
  /** Where its middle should be. */
  readonly at: number;
  readonly width: number;
}

export interface PlacedLabel<T> {
  readonly label: T;
  /** Its middle, pushed aside as far as its neighbours and the edges of the picture ask. */
  readonly at: number;
  /** 0 is next to what it names. */
  readonly row: number;
}

interface Cluster {
  readonly from: number;
  readonly width: number;
  readonly wanted: number;
  readonly count: number;
}

/** Pushes neighbours apart as little as possible: those that touch move together, to the mean of where they should be. */
function pushedApart(labels: readonly Placeable[], left: number, right: number, gap: number): readonly number[] {
  const held = (from: number, width: number): number => Math.max(left, Math.min(right - width, from));
  const clusters: Cluster[] = [];
  for (const { at, width } of labels) {
    let next: Cluster = { from: held(at - width / 2, width), width, wanted: at - width / 2, count: 1 };
    for (
      let last = clusters.at(-1);
      last !== undefined && last.from + last.width + gap > next.from;
      last = clusters.at(-1)
    ) {
      clusters.pop();
      const count = last.count + next.count;
      const wanted = (last.wanted * last.count + (next.wanted - last.width - gap) * next.count) / count;
      const wide = last.width + gap + next.width;
      next = { from: held(wanted, wide), width: wide, wanted, count };
    }
    clusters.push(next);
  }
  const middles: number[] = [];
  for (const { from, count } of clusters) {
    let edge = from;
    for (const { width } of labels.slice(middles.length, middles.length + count)) {
      middles.push(edge + width / 2);
      edge += width + gap;
    }
  }
  return middles;
}

/** Places labels between two edges; where one row does not hold them they take turns in two or more. */
export function stacked<T extends Placeable>(
  labels: readonly T[],
  left: number,
  right: number,
  gap = 8,
): readonly PlacedLabel<T>[] {
  const inOrder = [...labels].sort((a, b) => a.at - b.at);
  const whole = inOrder.reduce((sum, { width }) => sum + width + gap, 0);
  const rows = Math.min(inOrder.length, Math.max(1, Math.ceil(whole / Math.max(1, right - left))));
  return Array.from({ length: rows }, (_, row) => inOrder.filter((_label, i) => i % rows === row)).flatMap(
    (own, row) => {
      const middles = pushedApart(own, left, right, gap);
      return own.map((label, i) => ({ label, at: middles[i] ?? label.at, row }));
    },
  );
}
