/**
 * Words for work in the field. `verbs` begin with the word whose tense tells how the work stands; `nouns` name the
 * work or its means and need a cue, a time or a dose beside them. Patterns as in engine/pattern.ts.
 */
import type { ActionKind } from '../record.ts';

export interface WorkRow {
  id: string;
  kind: ActionKind | 'remove' | 'fill' | 'finish' | 'mend';
  /** Patterns, one a line. `verb`: tense of the first word tells; `object first`: tense of the last word tells. */
  verb?: string;
  objectFirst?: string;
  noun?: string;
  yes: string[];
  no: string[];
}

export const WORKS: readonly WorkRow[] = [
  {
    id: 'weed-by-hand',
    kind: 'hand_weed',
    verb: `hand weed
      weed by hand
      chip|hook|grub it|em|them|out|by
      chip
      send ..3 to weed
      =weed out|up|it|this|that|the|them|again|both|all|here|half|first|before|after|now|today|tomorrow
      =weeded
      =weed
      hoe
      handweed
      pull|hand-pull|uproot|pick|remove|clean|clear|grub|yank|rip|take|cut|slash ..2 {weed} out|up?
      pull|take|dig ..3 out ..2 {weed}
      pull by hand
      =pulled|=pulling|=pull the|out ..2 {weed}
      rogue ..2 {weed}
      run|push ..3 weeder
      cono weed`,
    objectFirst: '{weed} ..3 =pulled|=weeded|=removed|=cleared|=hoed|=uprooted|=cleaned',
    noun: `hand weeding
      hand weed
      =weeding by hand
      =weeding
      =weed by hand
      weeder|weeders
      hand pulling
      =hoeing
      rotary|cono|mechanical weeder|weeding
      weeding gang|crew|labour
      handweeding
      hand hoeing
      chipping|=chipping ..1 gang?
      {people} ..2 for weeding`,
    yes: ['hand weed this by Friday', 'the women weeded it on Monday', 'pull the sedges tomorrow'],
    no: ['weeds are thick', 'weed pressure is low'],
  },
  {
    id: 'spray',
    kind: 'spray',
    verb: `spray
      =treated|=treat|=treating ..3 it|them|this|plot|for|with|the|now|tomorrow|today|seed?
      =treat
      apply|put|use|give|broadcast|throw|fly|spread ..4 {product}
      spot spray
      fog
      over spray
      knock down|back ..2 with
      call|hire|book|order|get|send ..2 plane|drone|applicator|pilot|sprayer
      make|run another|one|a pass|application|trip`,
    objectFirst: `rig|plane|drone|helicopter ..1 put|go|goes|went out|over|on
      {product} ..3 =applied|=sprayed|=put|=given|=used`,
    noun: `=spraying
      =spray
      herbicide|insecticide|fungicide|pesticide|weedicide|propanil|clomazone
      granule|granules
      another|one|second|first pass|application|treatment|shot|spray
      treatment
      application
      sprayer
      spot spray|spraying
      {product}
      dusting
      weed killer
      burndown`,
    yes: ['spray tomorrow', 'herbicide was Monday', 'fungicide on Friday', 'we treated it yesterday'],
    no: ['the treatment plots', 'sprayed with gravel'],
  },
  {
    id: 'replant',
    kind: 'replant',
    verb: `replant
      refill
      fill ..2 {gap}|in|gaps|up
      fill|filling by|from hand|nursery|the
      gap fill
      infill
      plug ..2 {gap}
      plant ..3 again
      transplant ..3 again
      plant ..3 {gap}
      patch ..2 {gap}
      reseed|resow|redrill|re-seed|replug
      put ..2 seedling|seedlings|plants in|into|back
      overseed
      spot plant|seed|transplant
      re plant|seed|drill|sow`,
    objectFirst: '{gap} ..4 =filled|=replanted|=refilled|=patched',
    noun: `gap filling
      =filling
      =refilling
      =replanting
      replant|refill
      reseeding
      infilling`,
    yes: ['fill the gaps by Thursday', 'replant tomorrow', 'missing hills to be filled today'],
    no: ['fill the tank', 'filling in the form'],
  },
  {
    id: 'fertilise',
    kind: 'fertilise',
    verb: `fertilise|fertilize|topdress|refertilise
      top dress
      side dress
      feed ..3 urea|n|nitrogen|it|them|again|now
      apply|put|give|broadcast|throw|fly|spread|add|incorporate|drop|pour ..5 {fertiliser}
      deep place
      =fed
      {fertiliser} go on|out|in|down`,
    objectFirst: '{fertiliser} ..4 =applied|=broadcast|=put|=given|=spread|=flown|=added|=incorporated',
    noun: `top dressing|dress
      topdressing|topdress
      top trust
      fertiliser|fertilizer
      urea|potash|dap|npk|mop|muriate|manure|compost|ammonia
      nitrogen
      =n
      zinc sulphate|sulfate
      ammonium sulphate|sulfate
      side dress|dressing
      deep placement
      second|first|last|final|panicle|next shot|split|dose|round of? urea|n|nitrogen|fertilizer|fertiliser
      =feeding
      basal
      second|panicle split|dose|nitrogen
      gypsum|lime|ash
      zinc`,
    yes: ['topdress on Friday', 'urea went on last Tuesday', 'no more N here'],
    no: ['nitrogen is short', 'feeding the dog'],
  },
  {
    id: 'irrigate',
    kind: 'irrigate',
    verb: `irrigate
      reflood|re-flood
      re flood
      flood it|this|that|up|back|the|again|right|them|after|tomorrow|tonight|today|plot|on|first|now|before|by|when|once|both|them
      =flooded
      let|put|bring|take|run|get|give|add|pump|send|turn ..3 {water} ..2 in|on|back|up|over|into|onto|again|to
      let|put|give|add|pump|send|run ..4 water
      bring|raise|top|lift|hold|keep|pull ..3 {water} up|higher|at|on
      bring|take|raise it|her|them|him|this up
      keep|put|hold ..3 inch|inches|cm|centimetre|centimetres|centimeters ..3 on
      raise ..2 {water}
      hold|keep ..3 # ..2 water
      open ..3 {inlet}
      open it
      fill it|the plot|bay|field|check|paddy
      top it|them|up
      water it|this|them|tonight|tomorrow|again
      flush
      start|run|turn|cut|kick|put|switch ..3 pump|motor|well ..2 on
      start|run|switch|turn on? ..2 pump|motor|well
      pump
      put it back under
      we|to|will|then|and|'ll|they =flood`,
    objectFirst: `{inlet} ..6 =opened|=open
      water i|we|they|he put|gave|pumped|let
      {water} ..4 =let|=given|=put|=pumped|=turned in|on|back
      motor|pump be? run
      water on|back in|on
      {water} goes|go|comes|coming|went|gone back? in|on|up|back`,
    noun: `irrigation
      irritation to be given
      water can|must|will wait
      + water
      to water
      water back
      another|more|some|little|bit water
      inch|inches|centimetres|cm of? water over|onto it|them|the|these|her
      pumping
      =flooding
      flush
      next|first irrigation
      the flood
      permanent flood`,
    yes: ['let water in tonight', 'irrigate tomorrow', 'open the inlet on Friday'],
    no: ['water is nil', 'water stands at 5 cm'],
  },
  {
    id: 'drain',
    kind: 'drain',
    verb: `drain
      let|take|get|run|draw|bring|pull|drop|lower|turn|put|pump|drain|cut|release|knock ..3 {water} ..2 out|off|down|go|away
      let|take it|this|them out|off|go|dry down?
      open ..4 {outlet}
      let|draw|bring|take|drop|lower ..1 down to # cm|centimetre|centimeter|inch|inches
      let|draw|bring|take|drop|lower ..1 down to
      let|run|draw|take|pump off|out|down the? {water}
      pull|lift|drop|take|remove ..2 board|boards|plug|plugs|stop
      lower it|level|water|the water
      lower ..2 {water}
      draw down ..2 water?
      let|bring|take|pull|draw|drop it|her|them|him|this down
      =brought down to
      dry ..2 down|off|it|back
      let ..2 dry
      release ..2 water
      dewater
      cut ..3 bund|dike|levee ..4 water out|off
      let ..3 go out`,
    objectFirst: `{outlet} ..6 =opened|=open|=pulled
      {water} ..6 =drained|=lowered|=released|=let|=taken|=pulled out|off|down?
      {water} go|goes|comes|coming off|out|down
      {water} off`,
    noun: `drainage
      =draining
      draw down
      drawdown
      drain down
      dry down
      mid season|midseason drainage|drying
      draining out`,
    yes: ['drain it on Friday', 'pull the boards tomorrow', 'let the water out tonight'],
    no: ['by the drain', 'the tank drained my patience'],
  },
  {
    id: 'control-snails',
    kind: 'control_snails',
    verb: `pick|collect|hand-pick|gather|handpick|crush|remove|catch|trap|kill|treat|destroy|clear ..3 {snail}
      pick|collect|gather tonight|again
      put|apply|spread|broadcast|throw|scatter ..3 snail bait|pellet|pellets|powder
      put|apply|use|broadcast ..2 molluscicide|metaldehyde|niclosamide|saponin|tea
      release|put|let|bring|send ..2 duck|ducks
      hand pick|collect`,
    objectFirst: `{snail} ..3 =picked|=collected|=crushed
      duck|ducks go|goes|went in|into
      snail bait|pellets ..3 =put|=spread|=applied
      copper ..1 goes|went on|out|in
      done for snails`,
    noun: `snail bait|pellets|picking|control|collection
      molluscicide
      hand picking|collection
      duck|ducks in
      metaldehyde|niclosamide|saponin
      copper`,
    yes: ['pick the snails tonight', 'snail bait tomorrow', 'we picked up the snails on Monday'],
    no: ['pick up the phone', 'ducks are eating the grain'],
  },
  {
    id: 'control-rodents',
    kind: 'control_rodents',
    verb: `trap ..2 rat|rats|them|tonight|again|here|it|along|tomorrow|for
      =trapped|=trapping
      bait it|them|the|along|tonight|again|around|for
      =baited
      set|put|place|lay|get|run|move|reset|keep|install|empty|emptied|check|collect ..5 {trap}
      smoke|gas|fumigate|dig|flood|plug|close|fill|bomb|ferret ..3 {rodent}
      dig|digging and smoke|smoking
      hunt ..2 rat|rats
      burn|light ..2 sulphur|sulfur
      gas|smoke|bomb em|them|it|the
      repair|mend|fix|close|put|raise|check ..3 fence|barrier
      poison ..2 rat|rats`,
    objectFirst: `{trap} ..3 =set|=put|=placed|=laid|=out|=up|=down|=reset
      {trap} go|goes|went|going out|in|up|down|again|tonight
      {rodent} ..3 =smoked|=gassed|=dug|=fumigated
      must|to|shall be? gas|gassed|smoked|smoke|fumigated|baited|bait|trapped
      {trap} ..1 =caught|=catch|=took|=killed`,
    noun: `{trap}
      rat control|hunt|drive|campaign
      =baiting
      =trapping
      fumigation
      owl box`,
    yes: ['set traps tonight', 'bait the bund tomorrow', 'smoke the burrows on Monday'],
    no: ['caught in a trap of paperwork', 'ran traps in the crawfish pond'],
  },
  {
    id: 'scare-birds',
    kind: 'scare_birds',
    verb: `scare|shoo|frighten ..3 {bird}|them|it|off|away|from
      =scare|=scaring
      children|boys|boy|pupils|kids ..2 shout
      going out with ..2 gun|cannon|net|drum
      shout at|them|from
      net ..2 it|end|side|that|the|plot
      =netted|=netting
      put|hang|tie|string|stretch|set|move|get|fix|spread|install ..4 {net}
      guard ..3 plot|field|it|against|from|all|grain|heads
      chase|run|drive|keep ..2 {bird}
      run|drive|chase|keep ..2 them|em off|away|out
      sit|sitting|stand|standing|go ..3 with ..2 tin|tins|drum|rattle|rattles|can|cans
      put|hang|tie|string|stretch ..4 rope|string|tape|line with ..2 plastic|can|cans|tin|tins|bottle|bottles|flags
      run ..2 cannon
      will pull it`,
    objectFirst: `{net} ..3 =tied|=put|=set|=hung|=up|=out|=fixed|=moved
      {net} go|goes|went|going up|out|on|over
      {people} move|go across|there|from|to`,
    noun: `bird scaring|boy|boys|scarer|scarers|net|netting|guard
      =scaring
      =netting
      =net|=nets
      {net}
      boys with slings|tins
      cannon|cannons
      somebody|someone to shout
      watchman ..2 birds`,
    yes: ['net that end tomorrow', 'propane cannon goes out tomorrow', 'boys to scare from Monday'],
    no: ['net return per hectare', 'scared of snakes'],
  },
  {
    id: 'mend-bund',
    kind: 'mend_bund',
    verb: `mend|repair|patch|plug|seal|fix|close|rebuild|stop|block|raise|strengthen|reinforce|plaster|pack|build|pull|push|firm|shore|top|dam|caulk|line|fill|compact ..4 {bund} up|back|new?
      pack|patch|plug|seal|close|block|stuff ..2 with|clay|mud
      stuff ..3 mud|clay|straw
      put|place|throw|pack|dump|add ..3 mud|clay|soil|sandbag|sandbags|dirt|plastic
      mud up|it|the
      =packed|=patched|=plugged|=mended|=plastered`,
    objectFirst:
      '{bund} ..5 =mended|=repaired|=patched|=plugged|=sealed|=fixed|=closed|=rebuilt|=packed|=plastered|=blocked',
    noun: `repair|repairs
      packing
      bund repair|mending|plastering
      levee work|repair
      sandbags|sandbag`,
    yes: ['mend the bund tomorrow', 'the outlet was mended on Saturday', 'patch the levee this afternoon'],
    no: ['fix the laptop', 'the pack of cards'],
  },
  {
    id: 'rogue',
    kind: 'rogue',
    verb: `=rogue|=roguing|=rogued|=roging|=rogueing
      rogue out|them|em|it|the|again
      pull|remove|take|uproot|cut|pick|weed|cull ..4 {offtype} out?
      pull|remove|uproot|take|burn|rogue|bury|destroy ..4 {sick}`,
    objectFirst: `{offtype} ..4 =pulled|=removed|=rogued|=uprooted|=taken|=culled
      {sick} ..4 =pulled|=removed|=rogued|=uprooted|=burned`,
    noun: `=roguing|=rogueing
      second|another|first roguing|rogue|passage
      rogueing pass`,
    yes: ['rogue it tomorrow', 'we removed 14 tall off-types', 'red rice was pulled on Saturday'],
    no: ['rogue trader', 'off-types are few'],
  },
  {
    id: 'support',
    kind: 'support',
    verb: `tie ..3 up|together|bundle|bunches|bundles|in|back|hills|straw|it|them
      prop|stake|prop-up ..2 up|it|them|hills|plants
      lift ..3 tie
      stand it|them up
      bundle|bunch it|them|up|the
      =propped|=staked
      tie|tied|tying
      raise ..2 lodged|fallen`,
    objectFirst: 'hills|plants|patch|stems|rice|corner|lodged ..7 =tied|=propped|=staked|=bundled up?',
    noun: `lifting and tying
      =tying
      =propping|=staking
      tie up`,
    yes: ['tie it up tomorrow', 'the flat patch has been tied up', 'prop them on Friday'],
    no: ['tied up in meetings', 'my tie'],
  },
  {
    id: 'inspect',
    kind: 'inspect',
    verb: `look ..1 again|back
      look at it|that|this|them|here|the ..2 again?
      look in|over|into|closer|at
      have|take|want ..2 look
      recheck|reinspect|inspect|monitor|scout|revisit|observe|verify|re-inspect|reassess
      check ..4 again|back|on|it|this|that|them|tomorrow|whether|if|the|for|regrowth|with|when|next|after|how|in|up|by
      =check
      keep ..2 eye
      eye on
      watch it|this|that|closely|the|how|whether|if|them
      keep watch|watching|checking|looking|tabs
      see ..3 again
      see how|whether|if it|they|the
      come|go|be ..2 back ..3 see|look|check
      follow up
      walk it|this ..2 again
      visit ..2 again
      visit
      re visit|check|examine|inspect|assess|look|walk
      reexamine|examine
      second look
      go|will go tomorrow
      give it another look
      to|will|'ll =look
      only watch
      =watch only
      confirm`,
    noun: `one more look|check|visit
      another|second|closer look|visit|check|inspection
      recheck|reinspection|inspection
      to be watched|checked|seen
      follow up
      scouting
      monitoring
      keep an eye
      to see again`,
    yes: ['look again on Monday', 'keep an eye on the corner', 'check it next week'],
    no: ['the check plot is heading', 'looks like blast'],
  },
  {
    id: 'measure',
    kind: 'measure',
    verb: `count ..5 tillers|tiller|panicles|panicle|hoppers|hills|weeds|again|once|it|them|the|hopper|on|heads|rats|insects|tomorrow|stems|plants|snails
      recount|re-count|remeasure|sample
      measure
      weigh
      take|pull|send|collect|get|dig|bring|grab|do|submit ..4 {sample}
      take|do|get|read|make|finish ..4 spad|lcc|tube|count|counts|reading|readings|height|heights|moisture
      check ..3 moisture|spad|lcc|tube|height|heights
      read ..2 {instrument}
      test ..3 moisture|soil|tissue|grain|seed|leaf
      send ..4 lab|laboratory
      re count
      want|wants|wanted the|a? {instrument}`,
    objectFirst: `{sample} ..4 =taken|=pulled|=sent|=collected|to lab|the
      {instrument} ..3 =taken|=counted|=measured|=read|to
      counts we will do`,
    noun: `hopper|tiller|panicle|plant|stand|weed|rat|insect|snail|head count|counts
      =counts
      =recount
      =sampling
      =sample
      {sample}
      the count of
      =measuring
      =weighing
      spad|lcc round|reading|readings
      hopper count`,
    yes: ['count tillers on Friday', 'leaf samples to the lab tomorrow', 'weigh the straw tomorrow'],
    no: ['sample chocolates', 'tiller counts were 14 and 16'],
  },
  {
    id: 'harvest',
    kind: 'harvest',
    verb: `harvest|thresh|reap
      combine it|this|that|them|the|all|plot
      cut it|this|that|them|the|early|tomorrow|today|yesterday|on|in|by|first|when|all|now|plot|next|before|#|friday|monday|tuesday|wednesday|thursday|saturday|sunday
      =cutting
      crop cut|cutting
      cut ..2 sample|samples|quadrat|quadrats|square|squares
      panen
      bring it in
      take|took ..4 off
      =came|=comes|=come off yesterday|today|tomorrow|on|at|this|saturday|monday|friday
      gets|get cut
      =cut
      take it off
      shell
      =harvested|=threshed|=reaped|=combined
      panen done|today|tomorrow|on`,
    objectFirst: `plot|field|bay|rice|block|strip|crop ..3 =cut|=harvested|=threshed|=reaped|=combined
      combine|combiner|harvester|thresher|cutter|header ..3 =coming|=comes|=come|=booked|=arrives|=goes|=rolled|=ran|=came|=started|=went`,
    noun: `harvest|=harvesting
      crop cut|cutting|cuts
      =cutting
      =threshing
      cutting and threshing
      combine|harvester
      in the bin
      reaping`,
    yes: ['harvest on Saturday', 'crop cut is done', 'we cut it yesterday'],
    no: ['rats cut four hills', 'cut leaves'],
  },
  {
    id: 'land-prep',
    kind: 'land_prep',
    verb: `plough|plow|puddle|harrow|rotavate|rototill|disk|disc|cultivate|laser|chisel|subsoil|rotovate
      level it|this|that|again|the|plot|field|with|tomorrow|today|once|by|low|high
      =levelled|=leveled|=levelling|=leveling
      prepare ..2 land|field|plot|bed
      roll it|straw|stubble
      land plane|level
      plane it|the
      work ..2 ground|it up|land
      =ruts ..2 disk
      second rotavation`,
    objectFirst:
      'land|plot|field|ground|soil|it ..4 =ploughed|=plowed|=puddled|=levelled|=leveled|=harrowed|=rotavated|=disked|=disced|=tilled',
    noun: `=puddling|=levelling|=leveling|=ploughing|=plowing|=harrowing
      land prep|preparation
      field preparation
      rotavation
      =rotavating|=disking|=discing
      laser levelling|leveling
      second|first ploughing|rotavation|puddling|pass
      rotavator`,
    yes: ['plough it on Thursday', 'puddling finished yesterday', 'level it again tomorrow'],
    no: ['the water level is low', 'ploughed through the reports'],
  },
  {
    id: 'plant',
    kind: 'plant',
    verb: `transplant|sow
      =drilled|=drilling|=drill it|this|the|on|tomorrow
      planted na
      plant it|this|that|the|on|tomorrow|today|next|by|from|plot|here|in|all|them|again?|monday|tuesday|wednesday|thursday|friday|saturday|sunday
      =planted|=transplanted|=seeded|=sown|=sowed|=drilled
      =seed|=seeding it|this|the|tomorrow|on|by|next
      broadcast ..2 seed
      fly|flew|flown ..2 seed on|in
      put ..2 seed in|on
      direct|drum|wet|dry|water seeded|seed|sown`,
    objectFirst: 'plot|field|it|rice|bay ..3 =planted|=transplanted|=sown|=seeded|=drilled',
    noun: `=transplanting
      =planting
      =sowing
      =seeding
      =drilling
      transplanting gang
      tp`,
    yes: ['transplanting is over', 'we have finished planting today', 'sow it on Monday'],
    no: ['26 days after transplanting', 'plants are tall', 'planting depth 3 cm'],
  },
  {
    id: 'tell',
    kind: 'tell',
    verb: `tell|inform|ask|warn|call|report|notify|remind|phone|text|message|ring|advise|alert|consult|show|brief|email|talk|speak|mention|let ..2 {people}
      chase|nag|badger|hound|press him|her|them|{people} about|for|on
      =consulted|=notified|=informed
      tell|inform|warn|notify|remind|alert|call|ask|phone|ring
      let ..2 know
      have warned|informed|told|called|asked
      talk|speak to|with
      pass ..2 word|on
      report to|it|this`,
    noun: 'to be informed|told|warned|notified|asked',
    yes: ['inform pathology', 'I will tell Ana tomorrow', 'warn the neighbour'],
    no: ['hard to tell', 'call it a day'],
  },
  {
    id: 'leave',
    kind: 'leave',
    verb: `=leave|=leaving|=left it|them|this|that|alone|em|=be
      =leaf it|them|=be
      =leave|=leaving ..3 alone|as is|like this|for now
      we =leave like
      let|leave it|them be|ride|go|stand|grow
      live with it|that|this|them|em
      forget it
      forget about it|that|this
      can|will live with
      ignore
      let ..2 be
      do nothing
      sit tight
      not touching
      wait and see|watch
      leaving it|them|this|alone
      nothing for it
      put up with
      accept it|this|that
      just =leave
      tolerate
      let nature`,
    noun: `nothing to be? do|done
      nothing # do
      nothing doable|possible|useful
      don't you|y'all|anybody|nobody|anyone|anything? do|touch nothing|anything|it
      nothing can be done
      nothing we|i|you|one|anyone|more can|could do
      nothing we can do but
      no action|treatment|intervention needed|required|necessary|taken|at|for|here
      no action
      nothing needed|required
      not going to do anything
      nothing to do about it?
      nothing doing about
      no need to do anything
      i'll live with
      not worth|worthwhile doing|bothering|chasing
      not doing anything
      no treatment needed|necessary|required
      not worth the trouble|bother|effort|worry`,
    yes: ['leave it', 'live with it', 'nothing to be done'],
    no: ['casual leave till monday', 'leaves are pale', 'they leave at noon'],
  },
  // Verbs whose work depends on what stands in the field
  {
    id: 'remove-it',
    kind: 'remove',
    verb: `get|hook|grab em|them|it ..1 tomorrow|out|by
      pull|remove|uproot|pick|take|collect|gather ..1 it|them|em|those|out|up|that|these|by|rest|all
      =pulled|=pull|=pulling|=removed|=uproot|=uprooted`,
    objectFirst: `all|they|these|those =pulled|=removed|=uprooted|=burnt|=burned
      all|they be|were|was =pulled|=removed|=uprooted|=burnt|=burned`,
    yes: ['pull them out'],
    no: ['pull over'],
  },
  {
    id: 'mend-it',
    kind: 'mend',
    verb: `patch|pack|plug|fix|repair|mend|close|seal|shim|sack|sandbag|block it|that|them|this|em ..1 up?
      =patching|=packing|=plugging|=fixing`,
    objectFirst: `must|to be =closed|=plugged|=mended|=fixed|=repaired|=patched|=packed|=sealed
      needs|need =packing|=plugging|=mending|=patching|=fixing|=sealing`,
    yes: ['bund leaks, patch it tomorrow'],
    no: ['pack up and go home'],
  },
  {
    id: 'fill-it',
    kind: 'fill',
    verb: 'fill it|them|em|by|again|in|those|that|tomorrow|today',
    objectFirst: 'to be =filled',
    yes: ['fill it after rain'],
    no: ['fill out the form'],
  },
  {
    id: 'finish-it',
    kind: 'finish',
    verb: `finish it|rest|half|them|tomorrow|this|remaining|other|today
      finish the rest|other|remaining|half
      rest finish|tomorrow|monday|tuesday|friday
      do the|that rest|other
      get|receive|have|need|take|do|give ..1 the same
      get|receive|have|need|take ..1 hers|his|theirs|its turn|share
      =follow|=follows|=remain|=remains ..1 <time>
      same job|again|there tomorrow|today|monday|tuesday|wednesday|thursday|friday|saturday
      second|another round|passage at|tomorrow|next|on
      do it|them|that tomorrow|today|later|monday|tuesday|wednesday|thursday|friday|then|next|first
      other half|side|rest ..2 tomorrow|monday`,
    yes: ['finish the rest tomorrow'],
    no: ['finished for today'],
  },
];
