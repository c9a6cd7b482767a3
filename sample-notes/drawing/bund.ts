import { bladePath } from './blade.ts';
import { type Colour, css, GRASS_GREEN, lighter } from './colour.ts';
import { type SeededRandom, seededRandom } from './seeded-random.ts';

/** What there is to see at a bund from two steps away, drawn face on. */
export type BundSubject = 'crab-hole' | 'mended' | 'runway' | 'rat-holes' | 'inlet-snails' | 'slump';

export interface SeenAtBund {
  seed: string;
  subject: BundSubject;
  /** The crop behind the bund. */
  colour: Colour;
  cropHeightCm: number;
}

const CREST_PX = 215;
const FOOT_PX = 440;

export function drawBund(seen: SeenAtBund): string {
  const random = seededRandom(seen.seed);
  const dry = seen.subject === 'mended' || seen.subject === 'runway';
  return `<svg xmlns="http://www.w3.org/2000/svg" width="800" height="600">${defs}
<rect width="800" height="600" fill="${css(lighter(seen.colour, -8))}"/>${tufts(random, 150, CREST_PX + 20, seen.cropHeightCm * 4.2, seen.colour)}
<path d="${crest(random)}L800,${FOOT_PX}H0Z" fill="url(#earth)"/>${clods(random)}
<rect y="${FOOT_PX}" width="800" height="${600 - FOOT_PX}" fill="url(#${dry ? 'drySoil' : 'ditch'})"/>
<rect y="${FOOT_PX - 14}" width="800" height="26" fill="#4c3020" opacity="0.45" filter="url(#soft)"/>
${tufts(random, 70, CREST_PX + 22, 52, GRASS_GREEN)}${SUBJECTS[seen.subject](random)}
<rect width="800" height="600" fill="url(#light)"/></svg>`;
}

const SUBJECTS: Record<BundSubject, (random: SeededRandom) => string> = {
  'crab-hole': (random) =>
    `<ellipse cx="432" cy="400" rx="95" ry="62" fill="#4a2b1b" opacity="0.55" filter="url(#soft)"/>${hole(random, 430, 345, 34)}
<path d="M418,368Q404,400 416,432Q398,462 372,480L486,482Q462,456 448,430Q450,398 442,368Z" fill="#d9ddd4" opacity="0.75"/>
<path d="M426,372Q420,410 428,446" stroke="#fff" stroke-width="5" fill="none" opacity="0.6"/>
${[0, 1, 2].map((ring) => `<ellipse cx="428" cy="498" rx="${70 + ring * 46}" ry="${12 + ring * 9}" fill="none" stroke="#eef1ea" stroke-width="2.5" opacity="${0.5 - ring * 0.12}"/>`).join('')}${pencil(520, 372)}`,
  mended: (random) =>
    `<path d="M330,310Q352,268 432,276Q520,272 536,330Q552,404 498,426Q418,446 352,420Q310,384 330,310Z" fill="#8f8272"/>
<path d="M330,310Q352,268 432,276Q520,272 536,330" fill="none" stroke="#b3a794" stroke-width="7" opacity="0.7"/>
${[0, 1, 2, 3].map((index) => bootMark(364 + (index % 2) * 92 + random.between(-8, 8), 318 + Math.floor(index / 2) * 58)).join('')}`,
  runway: (random) => `${thornTree(random)}
<path d="M470,206Q520,260 486,330Q468,390 520,442L590,442Q540,392 560,330Q590,262 536,204Z" fill="#c3936a"/>
<path d="M500,214Q546,262 520,330Q504,390 552,440" fill="none" stroke="#dcb48c" stroke-width="16" opacity="0.6"/>
${droppings(random, 530, 350, 14)}${pawMarks(random)}`,
  'rat-holes': (
    random,
  ) => `${earthFan(292, 378)}${hole(random, 292, 336, 40)}${earthFan(548, 398)}${hole(random, 548, 356, 36)}
${droppings(random, 420, 410, 16)}${cutStems(random)}`,
  'inlet-snails': (
    random,
  ) => `<ellipse cx="400" cy="350" rx="92" ry="86" fill="#b9b6ad"/><ellipse cx="400" cy="350" rx="70" ry="65" fill="#2d2a26"/>
<path d="M334,366Q400,352 466,366L500,490H300Z" fill="#c7cec8" opacity="0.85"/>${snails(random)}${eggs(226, 250)}${eggs(604, 262)}`,
  slump: (random) =>
    `<path d="M258,200Q318,240 336,302Q360,354 404,352Q458,352 480,302Q500,240 566,200Q404,222 258,200Z" fill="#a3a595"/>
<path d="M262,206Q318,240 336,302Q360,354 404,352Q458,352 480,302Q500,240 562,206" fill="none" stroke="#6b3a22" stroke-width="14" opacity="0.7"/>
<path d="M322,262Q404,250 494,262Q480,300 470,318Q460,400 506,478H302Q352,400 344,318Z" fill="#cdd3cb" opacity="0.9"/>
<path d="M366,290Q378,380 346,470M412,286V474M452,290Q438,380 470,470" stroke="#fff" stroke-width="5" fill="none" opacity="0.5"/>
${earthFan(262, 424)}${earthFan(556, 428)}${[0, 1, 2].map((ring) => `<ellipse cx="404" cy="500" rx="${130 + ring * 60}" ry="${14 + ring * 11}" fill="none" stroke="#eef1ea" stroke-width="2.5" opacity="${0.5 - ring * 0.12}"/>`).join('')}${clodsIn(random)}`,
};

function tufts(random: SeededRandom, count: number, footPx: number, tallPx: number, colour: Colour): string {
  return Array.from({ length: count }, () => {
    const foot = { x: random.between(-10, 810), y: footPx + random.between(-14, 10) };
    const tall = tallPx * random.between(0.5, 1);
    const over = random.between(-0.35, 0.35) * tall;
    const bend = { x: foot.x + over * 0.3, y: foot.y - tall * 0.7 };
    const tip = { x: foot.x + over, y: foot.y - tall * random.between(0.85, 1) };
    return `<path d="${bladePath(foot, bend, tip, random.between(5, 9))}" fill="${css(lighter(colour, random.between(-8, 9)))}"/>`;
  }).join('');
}

function crest(random: SeededRandom): string {
  let path = `M0,${CREST_PX}`;
  for (let x = 40; x <= 800; x += 40) path += `L${x},${(CREST_PX + random.between(-7, 7)).toFixed(0)}`;
  return path;
}

const clods = (random: SeededRandom): string =>
  Array.from({ length: 90 }, () => {
    const across = random.between(5, 26);
    const fill = random.chance(0.5) ? '#7d4327' : '#c07f57';
    return `<ellipse cx="${random.between(0, 800).toFixed(0)}" cy="${random.between(CREST_PX + 24, FOOT_PX - 6).toFixed(0)}" rx="${across.toFixed(0)}" ry="${(across * 0.55).toFixed(0)}" fill="${fill}" opacity="0.35"/>`;
  }).join('');

function hole(random: SeededRandom, x: number, y: number, across: number): string {
  const pellets = Array.from({ length: 16 }, () => {
    const angle = random.between(0.2, 2.9);
    const out = across * random.between(1.05, 1.5);
    return `<circle cx="${(x + Math.cos(angle) * out).toFixed(0)}" cy="${(y + Math.sin(angle) * out * 0.7).toFixed(0)}" r="${random.between(4, 9).toFixed(1)}" fill="#95593a"/>`;
  });
  return `${pellets.join('')}<ellipse cx="${x}" cy="${y}" rx="${across}" ry="${(across * 0.78).toFixed(0)}" fill="#1d110b"/>
<path d="M${x - across},${y}A${across},${(across * 0.78).toFixed(0)} 0 0 1 ${x + across},${y}" fill="none" stroke="#d39a70" stroke-width="5" opacity="0.55"/>`;
}

const pencil = (x: number, y: number): string =>
  `<g transform="translate(${x} ${y}) rotate(-14)"><rect width="150" height="13" rx="2" fill="#d9b13b"/><rect width="150" height="5" fill="#f0d37a"/><path d="M150,0l22,6.5l-22,6.5Z" fill="#e6cfa4"/><path d="M165,4.4l7,2.1l-7,2.1Z" fill="#2b2b2b"/></g>`;

const bootMark = (x: number, y: number): string =>
  `<g transform="translate(${x.toFixed(0)} ${y}) rotate(18)" fill="#6d6253" opacity="0.8"><rect x="-17" y="-24" width="34" height="44" rx="15"/><g fill="#9a8d7b">${[-14, -5, 4].map((row) => `<rect x="-11" y="${row}" width="22" height="4"/>`).join('')}</g></g>`;

function thornTree(random: SeededRandom): string {
  const roots = Array.from({ length: 6 }, (_, index) => {
    const x = 120 + index * 34;
    return `<path d="M${x},226Q${(x + random.between(-30, 50)).toFixed(0)},270 ${(x + random.between(-60, 90)).toFixed(0)},330" stroke="#5b4734" stroke-width="${(15 - index).toFixed(0)}" fill="none" stroke-linecap="round"/>`;
  });
  return `<path d="M128,0L112,236Q200,262 300,236L262,0Z" fill="#65503b"/><path d="M150,0L142,232M196,0L204,240M236,0L256,232" stroke="#4c3b2b" stroke-width="5" fill="none"/>${roots.join('')}`;
}

const droppings = (random: SeededRandom, x: number, y: number, count: number): string =>
  Array.from(
    { length: count },
    () =>
      `<ellipse rx="6" ry="2.6" fill="#2a1b12" transform="translate(${(x + random.between(-70, 70)).toFixed(0)} ${(y + random.between(-26, 26)).toFixed(0)}) rotate(${random.between(0, 180).toFixed(0)})"/>`,
  ).join('');

const pawMarks = (random: SeededRandom): string =>
  Array.from({ length: 7 }, (_, index) => {
    const x = 508 + (index % 2) * 22 + random.between(-4, 4);
    const y = 460 + index * 17;
    return `<g fill="#5b452f" opacity="0.8"><circle cx="${x.toFixed(0)}" cy="${y}" r="4.5"/>${[-5, 0, 5].map((toe) => `<circle cx="${(x + toe).toFixed(0)}" cy="${y - 8}" r="1.9"/>`).join('')}</g>`;
  }).join('');

/** Lumps that the water has carried down. */
const clodsIn = (random: SeededRandom): string =>
  Array.from({ length: 12 }, () => {
    const across = random.between(8, 22);
    return `<ellipse cx="${random.between(230, 600).toFixed(0)}" cy="${random.between(470, 540).toFixed(0)}" rx="${across.toFixed(0)}" ry="${(across * 0.6).toFixed(0)}" fill="#8a4d2f"/>`;
  }).join('');

const earthFan = (x: number, y: number): string =>
  `<path d="M${x - 42},${y - 22}Q${x - 92},${y + 36} ${x - 78},${y + 66}H${x + 84}Q${x + 88},${y + 30} ${x + 42},${y - 22}Z" fill="#b9744a"/><path d="M${x - 60},${y + 40}H${x + 60}" stroke="#d99b70" stroke-width="9" opacity="0.4"/>`;

const cutStems = (random: SeededRandom): string =>
  Array.from({ length: 12 }, () => {
    const x = random.between(90, 720);
    const y = random.between(470, 575);
    const tip = { x: x + random.between(70, 140), y: y + random.between(-24, 24) };
    const bend = { x: (x + tip.x) / 2, y: y - 12 };
    return `<path d="${bladePath({ x, y }, bend, tip, 7)}" fill="${css(lighter(GRASS_GREEN, random.between(0, 14)))}"/>`;
  }).join('');

const snails = (random: SeededRandom): string =>
  Array.from({ length: 8 }, () => {
    const x = random.between(120, 690);
    const y = random.between(478, 566);
    const size = random.between(15, 25);
    const whorls = [1, 0.66, 0.36]
      .map(
        (share) =>
          `<circle cx="${(size * 0.14 * (1 - share)).toFixed(1)}" r="${(size * share).toFixed(1)}" fill="none" stroke="#4a3216" stroke-width="2.2"/>`,
      )
      .join('');
    return `<g transform="translate(${x.toFixed(0)} ${y.toFixed(0)})"><ellipse cx="${(size * 0.9).toFixed(0)}" cy="${(size * 0.62).toFixed(0)}" rx="${(size * 0.9).toFixed(0)}" ry="${(size * 0.32).toFixed(0)}" fill="#6b5a45"/><circle r="${size.toFixed(1)}" fill="#a9772f"/>${whorls}</g>`;
  }).join('');

/** Egg masses stand out pink above the water line. */
function eggs(x: number, y: number): string {
  const beads = Array.from({ length: 33 }, (_, index) => {
    const column = index % 3;
    const row = Math.floor(index / 3);
    return `<circle cx="${x + column * 7 + (row % 2) * 3.5}" cy="${y + row * 6.4}" r="4.2" fill="${index % 2 ? '#e58ba4' : '#d9708f'}"/>`;
  });
  return `<path d="M${x + 8},${y - 60}V${y + 210}" stroke="#8a7350" stroke-width="9"/>${beads.join('')}`;
}

const defs = `<defs>
<filter id="soft" x="-30%" y="-60%" width="160%" height="220%"><feGaussianBlur stdDeviation="9"/></filter>
<linearGradient id="earth" x2="0" y2="1"><stop stop-color="#c08358"/><stop offset="0.35" stop-color="#a9623b"/><stop offset="1" stop-color="#7a4228"/></linearGradient>
<linearGradient id="ditch" x2="0" y2="1"><stop stop-color="#8f8673"/><stop offset="1" stop-color="#a9a898"/></linearGradient>
<linearGradient id="drySoil" x2="0" y2="1"><stop stop-color="#8d7352"/><stop offset="1" stop-color="#a68c69"/></linearGradient>
<linearGradient id="light" x2="0.4" y2="1"><stop stop-color="#fff2c8" stop-opacity="0.16"/><stop offset="0.6" stop-color="#fff2c8" stop-opacity="0"/><stop offset="1" stop-color="#101408" stop-opacity="0.18"/></linearGradient>
</defs>`;
