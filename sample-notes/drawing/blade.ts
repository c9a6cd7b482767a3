export interface Point {
  x: number;
  y: number;
}

/** A leaf as one closed path: broad at the foot, bent through `bend`, pointed at the tip. Pixels. */
export function bladePath(foot: Point, bend: Point, tip: Point, widthPx: number): string {
  const footSide = sideways(foot, bend, widthPx * 0.35);
  const bendSide = sideways(foot, tip, widthPx * 0.65);
  const left = `M${at(foot, footSide, 1)}Q${at(bend, bendSide, 1)} ${at(tip, footSide, 0)}`;
  return `${left}Q${at(bend, bendSide, -1)} ${at(foot, footSide, -1)}Z`;
}

function sideways(from: Point, to: Point, length: number): Point {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const distance = Math.hypot(dx, dy) || 1;
  return { x: (-dy / distance) * length, y: (dx / distance) * length };
}

const at = (point: Point, side: Point, sign: number) =>
  `${(point.x + sign * side.x).toFixed(1)},${(point.y + sign * side.y).toFixed(1)}`;
