/**
 * Cues: words that change what was found. A row has no code: phrases, what they say, on which list, to which side
 * they work and how far. `next` reaches the next thing found and what is joined to it by `or`, `nor`, a comma; `clause`
 * up to the end of the clause or a `but`; `sentence` up to the full stop; `touch` only what stands beside it.
 */
export type CueSays =
  | 'absent'
  | 'cleared'
  | 'suspected'
  | 'risk'
  | 'past'
  | 'passing'
  | 'no_more'
  | 'done'
  | 'planned'
  | 'proposed'
  | 'ruled_out'
  | 'hearsay'
  | 'general'
  | 'later'
  | 'spare';

export interface CueRow {
  id: string;
  words: string;
  says: CueSays;
  on: 'finding' | 'action' | 'both';
  side: 'after' | 'before' | 'either';
  reach: 'touch' | 'next' | 'clause' | 'sentence';
}

export const CUES: readonly CueRow[] = [
  // Looked for and not there
  {
    id: 'no …',
    says: 'absent',
    on: 'finding',
    side: 'after',
    reach: 'next',
    words:
      "=no, no sign|trace|evidence|hint|symptom of, not any, no any, zero, =0, nil, without any?, free of|from, clean of|from, clear of, none of the?, not a single, not one, never a|any|one, never saw|seen any?, nary a?, neither, nor, no visible|obvious|real|active|apparent|new|serious, no more sign of, lack any, =n't any, ain't no|any, ain't, nothing like, devoid of, never a, no such thing as, nothing, nothing actually|really|else?, walang, wala pang, without real, no live, not even one|a",
  },
  {
    id: 'neither …',
    says: 'absent',
    on: 'finding',
    side: 'after',
    reach: 'clause',
    words: 'neither has|have|had|shows|show|of|plot any?, neither',
  },
  {
    id: 'not seen …',
    says: 'absent',
    on: 'finding',
    side: 'after',
    reach: 'clause',
    words:
      "can't|cannot|couldn't|didn't|don't|doesn't|haven't|hasn't|cant|couldnt|didnt|dont|havent see|find|found|seen|seeing|spot|notice|noticed|observe|detect any|a|the|one|single?, could|can|did|do|does|have|has|am|i'm not see|find|found|seen|seeing|spot|notice|noticed|observe|detect any|a|the|one|single?, not see|find|found|seen|seeing|spot|notice|observe|detect any|a|one|single?, saw|see|seen|found|find no|none|nothing of?, failed to find, never found|saw|seen, looked for, checked for, searched for, searched in vain, hunted for, i'm not seeing any, not seeing, don't have any?, doesn't have any?, haven't got any?, hasn't got any?, there isn't|aren't|wasn't|weren't any?, there be? not any|a?, there's not any|a?, there's no, isn't|aren't|isnt|arent any?, do not have any?, does not have any?, not showing any?, shows no, doesn't show, don't see, didn't see, not a, not have any?",
  },
  {
    id: '… none',
    says: 'absent',
    on: 'finding',
    side: 'before',
    reach: 'touch',
    words:
      "=none, none yet|so? far?, nothing, nothing yet, zero for, not a one, still|is|are|remains? =nil|=zero|=0|=none, :? =nil, =zero, =0, absent, not found|seen|there|present|visible|noticed|detected|observed, be? not found|seen|there|present|visible|observed|noticed|detected, i'm|am not seeing|finding|see any?, not one, not any, nowhere, could not be? found|seen, not yet seen|found|come|came|there, be? absent, zero, none seen|found|yet|to be? seen, be? nil, wala, wala na, haven't come|shown|arrived|reached, =have|=has not|never come|shown|arrived|reached yet?, hasn't come|shown, has not come, not come|arrived yet, i don't see any?, i didn't see any?, i see none, i saw none, i could not find, i couldn't find, not a problem here, no where",
  },
  { id: '… no', says: 'absent', on: 'finding', side: 'before', reach: 'touch', words: '=no' },
  // Was there and is gone
  {
    id: '… gone',
    says: 'cleared',
    on: 'finding',
    side: 'before',
    reach: 'clause',
    words:
      'be all? gone now?, all gone, be =finished|=finish|=over now?, =finish here|already, be over now?, has|have gone|left|cleared|recovered|disappeared|stopped|healed|passed, be dead|dying now?, cleared up?, disappeared, be history, be under control, no longer, is no more, be? solved|fixed|sorted, have left, be? upright again, be? all? cleaned out|up?, be? cleared, be? cleaned, knocked out, be? killed, all gone, gone, be away now, dried out|off now, grew out, grown out, be? a thing of the past, have moved|flown on|off|away, moved on|off, went away, burned|burnt down, now|since|fully|all|completely|mostly recovered|gone|healed|cleared, has|have ceased|subsided|died, be? closed|mended|repaired|plugged|sealed',
  },
  {
    id: 'no more …',
    says: 'cleared',
    on: 'finding',
    side: 'after',
    reach: 'next',
    words:
      'has|have stopped|quit|ceased, no more, no longer any?, not any more, no further, gone are the, got rid of, rid of, cleared of, recovered from, free of it|them now, be? over the, none of the earlier|old, no longer see|seeing|seen any?',
  },
  // Hedges
  {
    id: 'maybe …',
    says: 'suspected',
    on: 'finding',
    side: 'after',
    reach: 'next',
    words:
      "maybe, may be, mebbe, what i took for, perhaps, possibly, possible, probably, probable, might be|have, could be|have, might well be, may have|well, think, i|we think it? be?, i reckon, reckon, guess, i'd guess, suspect, suspected, suspicion of, suspecting, looks|look like, it looks|looked like, looking like, seems|seem like|to be?, seems, appears to be?, appear to be, smells like, sounds like, feels like, resembles, similar to, not sure if|whether|but|it's, unsure if|whether, wonder if|whether, wondering if|whether, whether, is it, could it be, might it be, likely, some kind of, kind of looks like, i|we believe, i'd say, presumably, if i'm not wrong, i fear, i'm afraid it's, i assume, what looks|appears like|to be?, signs that look like, idk if, dunno if, hard to say if|whether, can't tell if|whether|is, cannot tell if|whether, can't rule out, cannot exclude, cannot rule out, suspicious, or maybe, it may|might|could be, must be, apparently",
  },
  {
    id: '… maybe',
    says: 'suspected',
    on: 'finding',
    side: 'before',
    reach: 'touch',
    words:
      "maybe, perhaps, possibly, ?, i think, i guess, i suspect, i suppose, i assume, i reckon, suspected, question mark, or something, or so, not sure, probably, i believe, is possible, likely, it looks like, it seems, im not sure, i'm not sure, not sure tho?, not certain, to be? confirmed, unconfirmed, could be, might be, it might be, be? also possible, be? possible, presumably",
  },
  // May come
  {
    id: 'risk of …',
    says: 'risk',
    on: 'finding',
    side: 'after',
    reach: 'next',
    words:
      'risk|danger|threat|chance of, scared of, prob, probably, at risk of|from, prone to, susceptible to, vulnerable to, liable to, likely to, about to, watch|look out? for, watch out for, watch, beware of?, careful of|with, on the lookout for, worry|worried|worries|concern|concerned|concerns about|of|for, afraid of|it|the|this, fear of|that, expect|expecting, if not then, apt to, want to, wants to, liable for, a lot of|real danger of, invites, inviting, asking for, tend to, bound to, ready to, risk that, fit to, on the verge of, may get|have|see',
  },
  {
    id: 'may …',
    says: 'risk',
    on: 'finding',
    side: 'after',
    reach: 'touch',
    words:
      "could, =cd, will, would, might, =may, going to, gonna, she'll, it'll, they'll, can, may get|have|see, will get|have|start to?|begin to?, could get|start to?, might get|start to?, will all, may all, could all, will soon, may well, could well, might well",
  },
  {
    id: '… risk',
    says: 'risk',
    on: 'finding',
    side: 'before',
    reach: 'touch',
    words:
      'risk, =likely, be? likely, be? a? real|big? danger|risk|threat|worry|concern, may come|start|spread|follow|appear, might come|start|follow|appear, could come|start|follow|become, will come|follow|start, can come|follow, be? going to come|follow|start, could be a? problem, is to be expected, weather, pressure will|may|could, could|may|might move in|build|arrive, may arrive, next if, prone, to be? expected, season be? coming',
  },
  // Not of this crop or this walk
  {
    id: 'last season …',
    says: 'past',
    on: 'both',
    side: 'either',
    reach: 'clause',
    words:
      'last|previous|past season|year|crop|harvest|winter|monsoon|kharif|rabi|boro|aman, last yr, the year before, years ago, the season before, back in, this time last year, year before last, previous crop, in the last|previous season|crop|year, dry season of, used to, two|three|few year|season ago, a year ago',
  },
  {
    id: 'last week …',
    says: 'past',
    on: 'finding',
    side: 'either',
    reach: 'clause',
    words:
      'last week|month|wk, had been, earlier, the other day, two week ago, week|month ago, previously, at tillering|flowering|booting|heading|milk|planting|transplanting we|there|had|it, before it|we|they',
  },
  // Only mentioned
  {
    id: 'for …',
    says: 'passing',
    on: 'finding',
    side: 'after',
    reach: 'touch',
    words:
      'except|except for the, had|have taken|mistaken for, took|mistook it|them|this? for, false alarm on|about the?, instead of, than|like|as in, talk|talked|talking|lecture|seminar|training|meeting|poster|paper|report|question|asked|workshop|class|chapter|manual|story|stories about|on|of, name|word for, money, lesson on, film|movie|video about|on, drawing|picture of, budget, difference between',
  },

  // Work decided against
  {
    id: 'not to …',
    says: 'ruled_out',
    on: 'action',
    side: 'after',
    reach: 'next',
    words:
      "nobody, noone, no one, make|let nobody|noone, ain't, aint, not yet, no need|use|question of, =no, not, =don't, dont, =do not, won't, wont, =will not, =n't, no need to|for|of|two|too?, not worth a|the|it|another?, too late to|for|now?, no sense, no sense in, no point in?, no use, rather than, instead of, without, cancel, cancelled, canceled, skip, skip the, hold off on?, hold the?, =stop, forget, never mind, not going to, was|were going to|thinking, =no we|more, decided against|not to, no longer need, needn't, need not, leave the =spraying|weeding|topdressing|draining, avoid, postpone, put off, must not, mustn't, can't, cannot, cant, no more, delay, no =second, forgo, call off, called off, called the off, refuse to, against, no reason to|for, not enough to justify|warrant, doesn't|don't|does|do not? warrant|justify|need|deserve|pay|require a|any?, there's no|not enough, not gonna, ain't gonna, aint gonna, not bother|bothering with?, won't bother with?, no money for, no budget for, not recommend|recommended|advise|advised|allowed, not be? justified, ruled out, rule out, no call for, keep the? away from, hardly worth, isn't|aren't|wasn't worth, let's|let us not, said|say no to|replant?, know need|worth, save the, scrap the, drop the, spare the, no cause for|to, we skip, leave off, not doing|do any, never",
  },
  {
    id: 'but no …',
    says: 'ruled_out',
    on: 'action',
    side: 'before',
    reach: 'sentence',
    words:
      "not worth the money|trouble|effort|cost|diesel|twine|string|labour|labor|time|chemical, but no, finally no, but i|we|he|they did not, but i|we|he|they didn't, and we shall not, but not now|today|yet, but it is too late, too late for that, no never, never in, but decided against, but not in this, but changed my mind",
  },
  {
    id: '… not needed',
    says: 'ruled_out',
    on: 'action',
    side: 'before',
    reach: 'clause',
    words:
      "be off, be? not needed|necessary|required|justified|warranted|worth|recommended|allowed|advised, not needed|necessary|required|justified|warranted, be? not be? justified|warranted|worth|needed, isn't|aren't|wasn't|isnt needed|necessary|required|justified|warranted|worth, be? unnecessary|pointless, can|must|will|should|could wait, can|will have to wait, be? out of the question, cancelled, canceled, not worth it|the?, won't pay, doesn't pay, would|will|won't not? pay, no use, too late, be? too late, forbidden, not allowed, off the table, would be a? waste, be? a waste, can be skipped, be? called off, be? postponed, no more, no need, no too|money|time, not now, not this time, ? no, ? =no, ? not worth, ? not needed, ? nah, ? nope, ? not yet, ? too late, holds off, be? ruled out, makes|make no sense, not an option, wouldn't help|pay, won't help, will not help|pay, be? overkill, no thanks, be? not my|our job, would do more harm, not before, not yet",
  },
  // Work that has happened
  {
    id: 'did …',
    says: 'done',
    on: 'action',
    side: 'after',
    reach: 'next',
    words:
      "=have|=has|=had|='ve just|already|now|all|finally?, have been|already been, has been, had been, was|were|got|been|being already|just|all|only?, =received its|the|their|a?, got it, did|did the|a, finished|finish|completed|complete|done the|with|our|all?, just, we just, already, did my, spent the|all morning|day, =had, put in, made a|the, gave it a, =have =had, =has =had, =don, got a|its|his|her|the, got the, done with, through with, wrapped up, ran",
  },
  {
    id: '… done',
    says: 'done',
    on: 'action',
    side: 'before',
    reach: 'next',
    words:
      '=done, be? done, finished, finish already|yesterday?, be? finished, complete, completed, be? completed, be over, =went on|out|in|down|up, be? already, already, has|have been done|completed|finished|applied|given, got =done, happened, took place, carried out, be? applied|given, was|were|had monday|tuesday|wednesday|thursday|friday|saturday|sunday|yesterday, was|were last, passed, has gone|went on|out|in|down, gone on|out|in, were|was given, has|have been, went in, be? behind us, be through with?, all in, got finished, was|were run',
  },
  // Work decided
  {
    id: 'will …',
    says: 'planned',
    on: 'action',
    side: 'after',
    reach: 'next',
    words:
      "will, 'll, shall, going to, gonna, let's, lets, let us, must, have|has|got to, gotta, =to be, be|is|are to, plan|plans|planned|planning to|on|for|the?, intend to, booked for|to?, scheduled for|to?, ordered|order, arranged for|to?, arrange for|to?, set to|for, decided on|to|for, agreed to|on, about to, supposed to, due for|to|a?, please, plz, pls, kindly, requested|directed|advised to, may kindly, remember to, don't forget to, make sure to|that|they|he|she?, i'm going to, i am going to, ask|asked|told|tell|instruct|instructed|remind|reminded for|to?, call|called|get|got|send|sent for|to, time for|to, ready to, starting to?, start|starts|begin|beginning the?, next is, then, now, go, go and|to, come to, coming to|for, comes to, put in for, be on for, 'll have to, will have to, am to, have him|her|them, assign|assigned to|for, on the list to, needs doing, i will, we will, i'll, we'll, he'll, she'll, they'll, it'll, somebody's gonna, dont forget, finish the|it, be? getting, gets, get, needs to be done, move on to, continue with|to?, carry on with|the?",
  },
  {
    id: 'is …ing',
    says: 'planned',
    on: 'action',
    side: 'after',
    reach: 'touch',
    words: "i'm, we're, he's, she's, they're, =am, =are, =is, ='re, =r, keep",
  },
  {
    id: '… tomorrow',
    says: 'planned',
    on: 'action',
    side: 'before',
    reach: 'next',
    words:
      "=to be, will be|go|come|start|begin|happen|follow|take|get, =goes on|out|in|up|down|today|monday|tuesday|wednesday|thursday|friday|saturday|sunday|tomorrow, going on|out|in|up|down, be? coming, be booked|scheduled|planned|set|ordered|arranged|due|on|next, booked, scheduled, ordered, it is, must be|go|start|come, booked for|to?, scheduled for?, planned, start|starts|starting|begins|beginning, =comes, =come, has to be|go, have to be|go, shall be|go, gets, =go back|in|up|on|out, =goes, be? getting, 'll go|be",
  },
  // Work weighed
  {
    id: 'should …',
    says: 'proposed',
    on: 'action',
    side: 'after',
    reach: 'next',
    words:
      "should, shld, =shd, could, cd, might, may, need|needs|needing|needed to|a|some|more|another?, worth a|the|another?, consider|considering a|the?, suggest|suggests a|the|we?, recommend|recommends a|the|one|that|we?, propose|proposes a|the?, maybe a|we|the|put|do?, perhaps a|we|the?, would, ought to, oughta, had better, better to?, can we|i|you|they, shall we|i, should we|i, do we|i, is it okay|ok|possible|good|time|better|worth to|if|for?, ok|okay if|to, whether to, thinking|think|thought of|about|we|maybe?, possibly a?, probably, either, want|wants|wanted|wanting to?, would like to?, advise|advises a|to?, i'd, we'd, might as well, not sure whether to, unless we, wonder|wondering if|whether|about, what about, how about, why not, would be good|better|wise|nice to, if we could, if only we, may want to, might need to?, may need to?, could use a|some|another|more?, could do with, would benefit from, in need of, begging for, crying for, asking for, asks for, my opinion, vote for, in favour of, tempted to, inclined to, be? wise to, would rather, dunno if|whether, idk if|whether, option be? to, calls|call for, i would, i'd be inclined to, should|shall|could|can|may we|i not, shouldn't|couldn't|can't|oughtn't we|i, why don't we, may we|i, would have to, a case for, overdue for, time we, somebody|someone should|shld",
  },
  {
    id: '… perhaps',
    says: 'proposed',
    on: 'action',
    side: 'before',
    reach: 'next',
    words:
      'perhaps, maybe, i|we propose|suggest|recommend|advise, would be my advice, need new|another|replacing|fixing|some, ?, may|might|will|would|shall|can|could|to be considered|needed|useful|discussed|decided|weighed|reviewed|thought, or be? it be? too late, or maybe|perhaps|may not, would help, would be good|better|best|useful|wise|worth, be? an option, might|could help, might|may protect, be? recommended|suggested|advised|advisable|needed|required|wanted|worth|necessary|overdue, needed, required, should be|go, needs to be?, needs doing, worth a|it?, would do it|good, could be|go, might be|go, may be, ought to be|go, be? considered, or not, might pay, could be worth, if possible, to be considered|discussed|decided, recommended',
  },
  // Somebody else's word
  {
    id: 'says …',
    says: 'hearsay',
    on: 'action',
    side: 'after',
    reach: 'sentence',
    words:
      "say|says|said that?, is saying, are saying, report|reports|reported that?, claim|claims|claimed, tell|tells|told me|us, apparently, according to, assure|assures|assured me, i|we hear, i'm told, im told, i am told, i was told, we were told, they say, i|we understand from|that, cannot vouch for, heard, i heard, swears, swear, supposedly, reckons, texted|texts|messaged that?, phoned to say, word is, insists, informs me, mentioned that?, promise|promises|promised me?, allegedly, by his|her|their account, boys say, confirms, confirmed that",
  },
  {
    id: '… he says',
    says: 'hearsay',
    on: 'action',
    side: 'before',
    reach: 'clause',
    words:
      "he says|said, she says|said, they say|said|tell me|told me, so he|she|they says|said|say|tell, says the crew|foreman|driver, according to, i'm told, i am told, i hear, supposedly, allegedly, or so i'm told, haven't seen it|verified, have not seen|verified|checked it?, not verified, reportedly, not seen it myself, so i hear, i was told",
  },
  {
    id: 'you …',
    says: 'general',
    on: 'action',
    side: 'after',
    reach: 'touch',
    words: 'you, farmers, people, one must|should|may, those who',
  },
  {
    id: 'we treat …',
    says: 'general',
    on: 'action',
    side: 'after',
    reach: 'sentence',
    words:
      'we usually|always|normally|=treat, you|people|one usually|always|normally, as a rule, rule is, rule of thumb, the book says, in general, farmers usually, you hand|spray|weed|drain, policy is, every year we',
  },
  {
    id: 'next season …',
    says: 'later',
    on: 'both',
    side: 'either',
    reach: 'sentence',
    words:
      'next|following|coming season|year|yr|time|crop|kharif|rabi|boro|aman|samba|spring|summer|cycle|trial we?, for next samba|time, in future, the next crop, another year, from next season|year, lesson be?, in the future, note for next, season 2, second season we, should have, shoulda, ought to have, could have, would have, might have',
  },
];
