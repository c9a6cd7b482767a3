/** Words of which a plot that was not looked at is told. Phrases as in the other tables of the lexicon. */

/** Say no: in front of a verb of going or looking. */
export const DENIALS =
  "not, never, didn't, didnt, didnae, wasn't, wasnt, wasnae, weren't, couldn't, couldnt, couldnae, cannot, can't, cant, haven't, havent, hasn't, hadn't, ain't, aint, isn't, won't, unable, failed, fail, without, no fit, nobody, no chance, no time, no way, not able, wasn't able, no be able";
/** Between the two: helping words and persons. */
export const BETWEEN = new Set(
  'be been being get got manage managed to able even yet ever really actually quite i we could was is had have has make made do did fit can time for in the time today still then also'.split(
    ' ',
  ),
);
/** Going to a plot: enough where a plot stands in the sentence. */
export const GOING =
  'visit, reach, enter, inspect, walk, cover, access, approach, get to|at|in|into|inside|over|by|through|round|around|across|there|near, get out|over|up|down there|here|to, go to|in|into|inside|there|over|near|round|around?, been to|in|into|there|round|around|near|out|over|inside|by?, make it, made it, go, pass, come to|near, tour, set foot, step in|into, stop at|by, got round|around';
/** Looking: only where the plot itself is what was not looked at. */
export const LOOKING =
  'see, look, look at|in|into, check, observe, assess, view, survey, do, scout, examine, count, score, sample, monitor, read, watch, seen to';
/** Whole phrases that need a plot in their sentence. */
export const PLAIN = `ran|run|running out of time|light|daylight|day|fuel, run|ran short of time, out of time for|before, no time for|to|left, short of time for, for want|lack of time, drove|rode|walked|went|passed right|straight? past|by, go|went past it, left for tomorrow|later|another day, left till|until tomorrow, tomorrow for,
   will have to wait, will see tomorrow, not on the walk today, give|gave it? a miss, bother with, still i skip, no visit, no look, ran out before, could not go, remain to be seen|visited|walked|inspected, yet to be seen|visited|walked|inspected, pass|passed over, pass|passed over for lack|want of time|light, for lack|want of time, pass|passed it|them? over, bypass|bypassed, unvisited, uninspected, not there today, pas visité, skipped it,
   i|we skip|skipped, from the truck|road|gig|car|bike only, only from the truck|road|gig|car|bike`;
/** Say it of a plot that stands right before or behind them. */
export const BESIDE_PLOT =
  "skip, skipped, skipping, not done, no time today?, not today, not yet, left out today?, unseen, missed today?, passed by, drove by|past, rode by|past, walked past, drove right past, no go|see|look|reach|enter there?, no idea, no news, can not say|tell, i|we can't say|tell, i no go|see|look|reach|enter there?, i no fit enter|reach|see, deferred, postponed to|till|until tomorrow";
