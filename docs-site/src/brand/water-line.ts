/** The curve of a swim as SVG paths, cut at halfway: the mark of this site. */
export interface WaterLine {
  readonly front: string;
  readonly back: string;
  /** Where each lap stands on the curve. */
  readonly points: readonly (readonly [x: number, y: number])[];
}

/**
 * Draws laps as one line, the faster the higher: a point at the middle of each lap, one where the
 * swim is half done, and a curve through them that never overshoots a point.
 */
export function waterLine(laps: readonly number[], width: number, height: number): WaterLine {
  const fastest = Math.min(...laps);
  const spread = Math.max(...laps) - fastest || 1;
  const at = (i: number, lap: number) =>
    [round(((i + 0.5) / laps.length) * width), round(((lap - fastest) / spread) * height)] as const;
  const points = laps.map((lap, i) => at(i, lap));

  const half = laps.length / 2;
  const middle = [laps[Math.ceil(half) - 1] ?? 0, laps[Math.floor(half)] ?? 0];
  const nodes = [
    [0, points[0]?.[1] ?? 0] as const,
    ...points,
    [width, points.at(-1)?.[1] ?? 0] as const,
  ];
  if (Number.isInteger(half)) {
    nodes.splice(half + 1, 0, at(half - 0.5, ((middle[0] ?? 0) + (middle[1] ?? 0)) / 2));
  }
  const cut = Math.floor(nodes.length / 2);
  return { front: curve(nodes.slice(0, cut + 1)), back: curve(nodes.slice(cut)), points };
}

/** Level at every point, so that two neighbours bound the curve between them. */
function curve(nodes: readonly (readonly [number, number])[]): string {
  return nodes
    .map(([x, y], i) => {
      const left = nodes[i - 1];
      if (left === undefined) return `M${x} ${y}`;
      const bend = round((left[0] + x) / 2);
      return `C${bend} ${left[1]} ${bend} ${y} ${x} ${y}`;
    })
    .join('');
}

const round = (n: number): number => Math.round(n * 100) / 100;
