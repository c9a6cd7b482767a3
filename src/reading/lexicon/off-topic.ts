/** Words that show that a sentence is about something else than the crop: office, household, travel, money, festivals. */
export const OFF_TOPIC = new Set(
  `generator pickup epoxy customs reviewer printer vacant pub overhead lion canada visitors hotel's grandmother laptop internet router cable horse races gelding cat canteen   joke moto  bunkhouse supper elks lodge's porch dish medals lions elephants professor professors lectured  spelling  cyclists camped professor    bazaar dealer loan parking paint picnic laptop computer phone printer email spreadsheet excel file files   receipts receipt wedding birthday seminar lecture meeting workshop festival budget allowance salary payroll invoice
   movie film radio tv television music party song songs church sermon kitchen garden tomatoes tomato beans cabbage    restaurant hotel hostel guesthouse guest loan payment payments contract minister
   dictionary story joke game football cricket soccer match airport flight  ticket  holiday mosquito mosquitoes dipping marriage palace boiler pandal banners election vote court lawyer barber hair haircut doctor clinic hospital
   dentist tooth teeth toe toes knee ankle cough fever museum  slides powerpoint presentation mattress sofa  plumber  bathroom curtain  chimney guitar drummer  bride groom stapler toner coffee`
    .split(/\s+/)
    .filter(Boolean),
);
