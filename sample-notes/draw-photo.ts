import { drawAlongRows } from './drawing/along-rows.ts';
import { drawBund } from './drawing/bund.ts';
import { type Colour, DARK_GREEN, FED_GREEN, HUNGRY_YELLOW, lighter, YOUNG_GREEN } from './drawing/colour.ts';
import { growthAt } from './drawing/crop-growth.ts';
import { drawFromAbove } from './drawing/from-above.ts';
import { drawLeavesClose } from './drawing/leaves-close.ts';
import type { SamplePhoto } from './photo-list.ts';
import type { SamplePlot } from './read-season.ts';

/** The photo as SVG; `plants` is there where it was taken straight down and its cover can be counted. */
export function drawPhoto(photo: SamplePhoto, plot: SamplePlot): { picture: string; plants?: string } {
  const { scene, file: seed } = photo;
  const stand = standOf(photo, plot);
  if (scene.view === 'from above') return drawFromAbove({ seed, ...stand, ground: 'water', ...scene.seen });
  if (scene.view === 'along the rows') {
    const halfWidthM = Math.min(6, plot.size.widthM / 2);
    return {
      picture: drawAlongRows({ seed, code: plot.code, halfWidthM, ...stand, ground: 'water', ...scene.seen }),
    };
  }
  if (scene.view === 'leaves') return { picture: drawLeavesClose(seed) };
  const { colour, growth } = stand;
  return {
    picture: drawBund({ seed, subject: scene.subject, colour, cropHeightCm: Math.min(60, growth.heightCm) }),
  };
}

function standOf(photo: SamplePhoto, plot: SamplePlot) {
  const day = daysAfterPlanting(photo, plot);
  const unfed = plot.treatment?.nitrogen === '0N';
  const tall = plot.crop.variety === 'Besa Tall' ? 1.15 : 1;
  const headed = 'headed' in photo.scene ? photo.scene.headed : 0;
  return {
    growth: growthAt(day, unfed && day > 14 ? 0.62 : tall, headed),
    colour: colourOf(day, unfed, plot),
    rowCm: plot.crop.spacing.rowCm,
    hillCm: plot.crop.spacing.hillCm,
  };
}

/** A crop sown in place is about two weeks ahead of its own count from sowing (no shock, no seedbed). */
function daysAfterPlanting(photo: SamplePhoto, plot: SamplePlot): number {
  const from = Date.parse(plot.crop.planted ?? plot.crop.sown);
  const days = Math.floor((Date.parse(photo.takenAt.slice(0, 10)) - from) / 86_400_000);
  return plot.crop.planted ? days : Math.max(0, days - 14);
}

function colourOf(day: number, unfed: boolean, plot: SamplePlot): Colour {
  if (day < 12) return YOUNG_GREEN;
  if (unfed) return HUNGRY_YELLOW;
  if (plot.code === 'E12' || plot.code === 'W2') return DARK_GREEN;
  return plot.treatment?.nitrogen === 'by leaf colour' ? lighter(FED_GREEN, 3) : FED_GREEN;
}
