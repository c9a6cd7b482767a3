/** Links to a cause, and things that are causes by themselves in the sentence of a finding. */
export const CAUSE_LINKS = {
  clause:
    "because of?, =cause, cuz, coz, bc, since the|they|it|some|we|water|i|he|his|people, due to, owing to, on account of, thanks to, caused by, so that, result of, seeing as, as a result of, where the surface, from where, the reason be?, in the wake of, 'cause, on accounta, triggered by, blame, blamed on, down to the, after someone|somebody",
  phrase: "from the?, by the wind, in yesterday's, after the|a|last, in the? storm, laid to, put down to",
} as const;
export const RISK_LINKS =
  'if, should a|the|it|we, when the|wind|rain|it, unless, once the, in case of?, in this, with this|the|all, in the event of, because of?, cuz, due to, with more, given, as soon as, after, so';
export const CAUSES_WITHOUT_LINK =
  'wind, storm, typhoon, cyclone, hail, cold snap, cold night, cold spell, cold water, hot wind, heat wave, heavy rain, drizzle, rain, crab, crab hole, crawfish, crawdad, craw dad, muskrat, buffalo, clomazone drift, drift, propanil, herbicide, forecast of # degree, frost, heat, gust, squall, thunderstorm, downpour, rats, goats, cattle, cows, flood, tank ran out, canal closed, pump failure, pump broke, thick straw, late spray, boom, wind comes';
export const ELEMENTS =
  'zinc, zn, nitrogen, potash, potassium, phosphorus, phosphate, iron, sulphur, sulfur, sulfide, =n, sink, not enough sink|zinc|nitrogen|n|feed, zinc or just cold, too much nitrogen|urea|n, excess water, cold water, hunger, iron toxicity, the iron, low n, short of n, standing water, cold, too much water';
