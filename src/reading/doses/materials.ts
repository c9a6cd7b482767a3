/** What is put on a field, so that a dose can say of what. Trade words only, no makers' names. */
import { longestAt, phrasesOf, treeOf } from '../numbers/word-tree.ts';
import type { Token } from '../text.ts';

const MATERIALS = treeOf<true>(
  phrasesOf(
    `urea, nitrogen, potash, muriate of potash, mop, sop, dap, map, npk, complete, complete fertilizer, complete fertiliser, phosphate, phosphorus, super phosphate, superphosphate, tsp, ssp, tps, potassium,
     ammonium sulphate, ammonium sulfate, ammophos, sulphate of ammonia, ammonia, sulphur, sulfur, gypsum, zinc sulphate, zinc sulfate, zinc, lime, compost, manure, farmyard manure, fym, dung, fertilizer, fertiliser, fert,
     ammonium nitrate, calcium nitrate, can, uan, granule, granules, herbicide, weedkiller, weed killer, insecticide, fungicide, pesticide, poison, bait, rat bait, molluscicide, metaldehyde, niclosamide, saponin, tea seed cake, neem, neem oil, neem cake,
     propanil, butachlor, pretilachlor, clomazone, quinclorac, bispyribac, bispyribac sodium, penoxsulam, cyhalofop, bensulfuron, pendimethalin, glyphosate, tricyclazole, validamycin, hexaconazole, propiconazole, azoxystrobin, carbendazim, mancozeb, copper,
     carbofuran, cartap, fipronil, chlorantraniliprole, imidacloprid, buprofezin, pymetrozine, dinotefuran, lambda cyhalothrin, cypermethrin, zinc phosphide, silica, silicon, silicate, boron, seed, ash, straw, basal, topdress, top dress, topdressing, sulfate, potas, ures, oil, soap, water`,
    true,
  ),
);

export interface MaterialFound {
  first: number;
  last: number;
  of: string;
}

/** The note's own words, or what was meant where a word was misheard. */
export function materialAt(tokens: Token[], at: number): MaterialFound | null {
  const found = longestAt(MATERIALS, tokens, at);
  if (found) return { first: at, last: found.last, of: wordsOf(tokens, at, found.last) };
  return isElement(tokens, at) ? { first: at, last: at, of: wordsOf(tokens, at, at).toUpperCase() } : null;
}

/** `N`, `P`, `K` by themselves: a capital, or a small letter where only the element can stand (`kg n`, `pounds of n`). */
function isElement(tokens: Token[], at: number): boolean {
  const token = tokens[at];
  if (!token || !/^(n|p|k|p2o5|k2o|zn)$/.test(token.lower)) return false;
  return (
    token.text !== token.lower || /^(of|kg|kilo|kilos|lb|lbs|units|pounds)$/.test(tokens[at - 1]?.lower ?? '')
  );
}

function wordsOf(tokens: Token[], first: number, last: number): string {
  const words = tokens
    .slice(first, last + 1)
    .map((token) => (token.text.toLowerCase() === token.lower ? token.text : token.lower));
  return words.join(' ');
}
