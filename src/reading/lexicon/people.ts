/** Words around people. */
export const TITLES = new Set(
  "mr mrs ms miss sir ma'am maam mang pak bu bapak ibu aling kuya ate uncle auntie aunt aunty old madam dr engr mzee mama baba tio don doña bhai bhaiya didi dada mister monsieur madame m chef brother sister cousin kak bang haji".split(
    ' ',
  ),
);

/** Verbs that people do in the field. */
export const PEOPLE_BEFORE_VERB = new Set(
  'weed weeds weeding spray sprays spraying fill fills filling replant replants open opens opening close closes closing pull pulls pulling drain drains check checks checking count counts net nets scare scares shout shouts mend mends mending patch patches patching fix fixes fixing cut cuts cutting harvest pack packs trap traps trapping set sets put puts come comes coming go goes start starts finish finishes do does weigh weighs move moves pick picks picking tie ties topdress topdresses apply applies level levels plough ploughs plow take takes bring brings again next now for with from pump pumps rogue rogues'.split(
    ' ',
  ),
);
