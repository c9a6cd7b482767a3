import { onPicture, type Place, pxPerM } from './perspective.ts';

/** Strokes of the letters and figures that are painted on pegs, on a grid 4 wide and 6 high: no fonts needed. */
const STROKES: Record<string, string> = {
  E: 'M4,0H0V6H4M0,3H3',
  W: 'M0,0L1,6L2,2L3,6L4,0',
  '0': 'M0,0H4V6H0Z',
  '1': 'M1,1L2.5,0V6',
  '2': 'M0,1Q0,0 2,0T4,1.6Q4,3 0,6H4',
  '3': 'M0,0H4L2,2.6Q4,2.8 4,4.3Q4,6 2,6H0',
  '4': 'M3,6V0L0,4H4',
  '5': 'M4,0H0V2.6H3Q4,3 4,4.3Q4,6 2,6H0',
  '6': 'M4,0Q0,1 0,4V6H4V3H0',
  '7': 'M0,0H4L1.5,6',
  '8': 'M0,0H4V6H0ZM0,3H4',
  '9': 'M0,6Q4,5 4,2V0H0V3H4',
};

/** A white board on a stake with the plot's code in dark paint. */
export function drawPeg(code: string, foot: Place): string {
  const { x, y } = onPicture(foot);
  const scale = pxPerM(foot);
  const board = { width: scale * (0.1 + 0.075 * code.length), height: scale * 0.2 };
  const top = y - scale * 0.62;
  const cell = board.height / 10;
  const start = x - (code.length * 5.6 - 1.6) * cell * 0.5;
  const letters = [...code]
    .map(
      (letter, index) =>
        `<path d="${STROKES[letter]}" transform="translate(${(start + index * 5.6 * cell).toFixed(1)} ${(top + cell * 2).toFixed(1)}) scale(${cell.toFixed(2)})" fill="none" stroke="#26324a" stroke-width="1.1" stroke-linejoin="round"/>`,
    )
    .join('');
  return `<rect x="${(x - scale * 0.018).toFixed(1)}" y="${top.toFixed(1)}" width="${(scale * 0.036).toFixed(1)}" height="${(y - top).toFixed(1)}" fill="#8d7350"/>
<rect x="${(x - board.width / 2).toFixed(1)}" y="${top.toFixed(1)}" width="${board.width.toFixed(1)}" height="${board.height.toFixed(1)}" rx="2" fill="#f3efe2" stroke="#a8a08c"/>${letters}`;
}
