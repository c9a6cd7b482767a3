/** Words that show that a sentence is about something else than the crop: office, household, travel, money, festivals. */
export const OFF_TOPIC = new Set(
  `generator pickup epoxy customs reviewer printer vacant pub overhead lion canada visitors hotel's grandmother laptop internet router cable horse races gelding cat canteen   joke moto  bunkhouse supper elks lodge's porch dish medals lions elephants professor professors lectured  spelling  cyclists camped professor    bazaar dealer loan parking paint picnic laptop computer phone printer email spreadsheet excel file files   receipts receipt wedding birthday seminar lecture meeting workshop festival budget allowance salary payroll invoice
   movie film radio tv television music party song songs church sermon kitchen garden tomatoes tomato beans cabbage    restaurant hotel hostel guesthouse guest loan payment payments contract minister
   dictionary story joke game football cricket soccer match airport flight  ticket  holiday mosquito mosquitoes dipping marriage palace boiler pandal banners election vote court lawyer barber hair haircut doctor clinic hospital
   dentist tooth teeth toe toes knee ankle cough fever museum  slides powerpoint presentation mattress sofa  plumber  bathroom curtain  chimney guitar drummer  bride groom stapler toner coffee`
    .split(/\s+/)
    .filter(Boolean),
);
/** Further words that show it where a whole note names no plot and no part of a crop. */
export const OFF_FIELD = new Set(
  `trouser trousers tailor zip dress slippers shoes motorcycle motorbike bicycle bike tyre tire truck car jeep bus taxi engine electricity power reception handbook furnace thesis chapter reviewer
   ribbon snack snacks lunch dinner breakfast hall dignitaries booking stitch jug insurance dent scrap sold auction rented rent rooms room porridge tick stove coal interstate highway cousin uncle's aunt's husband wife's
   jackal joke boots barefoot bread beer boudin blower sofa thesis tale sawing seminar gelding assumption supervisor agency speech choir priest imam teacher exam grades shop market price prices customs passport police thief stolen dog cat puppy`.split(
    /\s+/,
  ),
);
/** Words of a crop and its field that no other matter uses much. */
export const OF_THE_FIELD =
  /^(hills?|panicles?|tillers?|tillering|leaf|leaves|crop|crops|plots?|stand|seedlings?|canopy|stems?|grains?|heads?|necks?|sheaths?|bunds?|levees?|dikes?|dykes?|ails?|inlet|outlet|sluice|patch|patches|rows?|hoppers?|borers?|sedges?|grass|weeds|urea|dat|das|cm|ha|hectare|acre|drain|irrigate|topdress|transplant\w*|water|paddy|booting|flowering|milk|dough|tubes?|boards?|bay|field|plants?|roots?|traps?)$/;
