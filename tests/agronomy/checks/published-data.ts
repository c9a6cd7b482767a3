/** Data sets that published analyses are checked on. */

const seedRates = [25, 50, 75, 100, 125, 150];
const seedRateYields = [
  [5113, 5398, 5307, 4678],
  [5346, 5952, 4719, 4264],
  [5272, 5713, 5483, 4749],
  [5164, 4831, 4986, 4410],
  [4804, 4848, 4432, 4748],
  [5254, 4542, 4919, 4098],
];

/** Gomez & Gomez 1984 p. 26: IR8, six seed rates in kg/ha, four blocks, kg/ha. */
export const seedRateTrial = seedRateYields.flatMap((yields, row) =>
  yields.map((value, block) => ({ treatment: String(seedRates[row]), block: `R${block + 1}`, value })),
);

const larvae = [
  [9, 12, 0, 1],
  [4, 8, 5, 1],
  [6, 15, 6, 2],
  [9, 6, 4, 5],
  [27, 17, 10, 10],
  [35, 28, 2, 15],
  [1, 0, 0, 0],
  [10, 0, 2, 1],
  [4, 10, 15, 5],
];

/** Gomez & Gomez 1984, chapter 7: living larvae under nine insecticide treatments, four blocks. */
export const larvaeTrial = larvae.flatMap((counts, row) =>
  counts.map((value, block) => ({ treatment: `T${row + 1}`, block: `R${block + 1}`, value })),
);

/** R datasets::PlantGrowth: dried weight of plants under a control and two treatments, g. */
export const plantGrowth = Object.entries({
  ctrl: [4.17, 5.58, 5.18, 6.11, 4.5, 4.61, 5.17, 4.53, 5.33, 5.14],
  trt1: [4.81, 4.17, 4.41, 3.59, 5.87, 3.83, 6.03, 4.89, 4.32, 4.69],
  trt2: [6.31, 5.12, 5.54, 5.5, 5.37, 5.29, 4.92, 6.15, 5.8, 5.26],
}).flatMap(([treatment, weights]) => weights.map((value) => ({ treatment, value })));
