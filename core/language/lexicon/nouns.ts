/** What is spoken of: sense → nouns, separated by commas; plurals are made from these. */
export const nouns: Readonly<Record<string, string>> = {
  tip: 'tip, mirror tip, scanner tip, scan tip, scanning tip, reusable tip, intraoral tip, tipp, scanner sleeve, sleeve tip, tip sleeve, io tip, tippy, wee tip',
  scanner:
    'scanner, intraoral scanner, intra oral scanner, intra-oral scanner, io scanner, ios, scannr, oral scanner, handheld scanner, mouth scanner, digital scanner, scaner, 3d scanner, scanner unit, dental scanner',
  unit: 'unit, machine, device, one, kit',
  caltip:
    'calibration tip, cal tip, calibrating tip, calib tip, calibration piece, cal piece, calibration head, calibration attachment, calibration target',
  cover:
    'cover, protective tip, protective cover, protective sleeve, protector, idle sleeve, dust cover, protection sleeve, scanner cover, tip cover, cap, protective cap, plain sleeve, sleeve, lens cover, blank tip, dummy tip, protection cap, protective one, protecting sleeve, idle cover, lens cap',
  base: 'base, cradle, dock, stand, holder, charging base, docking station, rest, base unit, base station, charger, base plate, base bit',
  lens: 'lens, lense, window, scanner window, glass, scanner glass, camera, optic, optics, camera window, scanner lens, front glass, lens window',
  mirror: 'mirror, tip mirror, mirror glass, mirrors',
  pouch:
    'pouch, pack, packet, packaging, wrapper, sterile pouch, autoclave bag, autoclave pouch, pouch seal, wrapping, little bag, wee bag, sterile bag, tip bag, peel pouch, pouch paper, bag seal, pouch seam, steri bag, steri pouch, sterilisation pouch, sterilisation bag, bag, pouch seal, pouch seam',
  strip:
    'indicator, strip, indicator strip, chemical indicator, chem strip, integrator, indicator tape, colour change, test strip, ci, class 5, tst strip, chemical strip, steri tape, process indicator, indicator dot, color change, class 6, helix strip, indicator patch, stripe, tst, type 5, type 6, class five, emulating indicator',
  cable: 'cable, lead, cord, wire, usb, usb cable, usb lead, scanner cable, power cable, power lead, flex',
  button: 'button, light, screen, led, laptop, pc, computer, software, port, plug, trolley',
  heater: 'heater, tip warmer, warmer, tip heating, heating, heating element, tip heater',
  load: 'load, cycle, batch, run, ld, autoclave load, autoclave cycle, sterilisation cycle, autoclave run, steri load, steriliser load, autoclave batch, sterilizer load, steri cycle, sterilization load, sterilization cycle',
  autoclave:
    'autoclave, steriliser, sterilizer, clave, auto clave, autoclaver, vacuum autoclave, autoclav, ac, steam steriliser, steam sterilizer, autocalve, steri machine',
  seal: 'door seal, seal, gasket, door gasket, door, chamber, drain, vacuum pump, printer of the autoclave, water reservoir, door handle, reservoir',
  spore:
    'spore test, bi, bi test, biological indicator, spore strip, spores, spore, spore vial, bi vial, spore check, biological test, biological, attest, biologicals, spore result, spore test result, biological indicator test, bio indicator, weekly spore test, weekly spore, spore testing, weekly bi, b.i., bio test, bis, vial, spore vial',
  penetration:
    'helix, helix test, bowie dick, bowie-dick, bowie and dick, bowie dick test, bowie-dick test, bd test, steam penetration test, steam penetration, penetration test, air removal test, bowie & dick, pcd, pcd test, helix pcd, bowie, process challenge device, penetration, helix device, bowie dicks, helix check, bd, steam pen test, steam pen, pen test',
  control:
    'act, automatic control test, auto control test, act test, automatic control, auto control, control test, daily control test',
  leak: 'leak test, leak rate, leak rate test, leakage test, air leak test, air leakage test, vacuum leak test, vacuum test, vac test, vac leak test, leak check, air leak, leak, leakage rate, vacuum leak, air leakage, pressure leak test',
  temp: 'temperature, temp, room temp, room temperature, thermometer, air temp, air temperature, ambient, temp reading, temperature reading, ambient temp, ambient temperature, reading, tmp, tempature, temprature, room thermometer, thermostat, thermostat reading',
  degree:
    'degree, deg, celsius, centigrade, degrees c, deg c, degs, degrees celsius, degrees centigrade, degc',
  fahrenheit: 'fahrenheit, degrees f, deg f, degrees fahrenheit, farenheit, degf',
  minute: 'minute, min, mins',
  magnifier:
    'microscope, x3.5, mag, magnifier, magnification, magnifying glass, magnifying lamp, loupe, illuminated magnifier, mag lamp, mag light, loupes, maglight, mag lens, inspection lamp, magnifying light, magnifer, under glass, under the glass, lit magnifier, maglamp, inspection light, under the lamp, under lamp, under the light, under light',
  inspection:
    'inspection, visual inspection, visual check, mag check, visual, inspection check, magnifier check, look-over, lookover',
  debris:
    "debris, residue, gunk, blood, saliva, muck, dirt, gunge, crud, plaque, calculus, stain, staining, impression material, protein, soiling, bit of gunk, gunky bits, a bit left, smudges, visible debris, dried blood, goo, schmutz, cement, cement residue, bond, bonding, speck, fleck, film, scum, rest of composite, rests of composite, bits of composite, composite left, composite still, alginate left, still alginate, alginate still, bits of alginate, dried alginate, cement left, something on it, something on the mirror, still something on, something still on, something stuck, stuff on it, bits on it, bits still on, marks on it, didn't come clean, won't come clean, hasn't come clean, did not come clean, not come clean",
  shelf:
    'shelf, drawer, cupboard, storage, tray, box, rack, cabinet, sterile store, container, bench, worktop, counter, side, table, trolley, tub, tidy, bracket',
  patient: 'patient, pt, px, pat, pnt, pts',
  incident: 'incident, sharps incident, tip incident, case',
  booking:
    'booking, appointment, appt, scan appointment, scan slot, scan booking, scan patient, scanning appointment, booked scan, scan appt, ios appointment',
  clinic: 'clinic, site, branch, practice, surgery site, office, location, place, premises',
  roomword: 'room, surgery, surg, rm, op, operatory, treatment room, chair, suite, bay, opp, srg, sx, ops',
  bin: 'bin, sharps bin, clinical waste, waste, sharps, trash, rubbish',
  car: 'car, van, taxi, boot, courier, bike, bus, train, ute, cab',
  service: 'service, use, action, circulation',
  record:
    'record, log, report, logbook, log book, printout, records, audit trail, register, log sheet, history, paperwork, audit, export, summary, overview, reports',
  due: 'due, outstanding, overdue, to do, to-do, todo, pending, due today, left to do',
  reminder: 'reminder, alert',
};

/** Who comes for our things, and what is sold for them: "the steriliser fella's coming Thursday". */
const people = ['autoclave', 'steriliser', 'sterilizer', 'scanner']
  .flatMap((thing) =>
    'fella fellas man guy bloke lady engineer technician tech rep repairman people service contract company supplier salesman training course manual brochure invoice quote warranty lease'
      .split(' ')
      .map((who) => `${thing} ${who}`),
  )
  .join(', ');

/** Things that share our words but are none of ours: they take the word before them away. Plurals are made. */
export const others = `
${people},
another clinic, another practice, other practice, some practice, some clinic, another surgery down, sleeping bag, handbag, hand bag, tote bag, goody bag, bin bag, carrier bag, tea bag, lunch bag, gym bag, bean bag, bag of crisps, bag of chips, bag for life, party bag, my bag, his bag, her bag, laptop bag, shopping bag, sports bag,
barcode scanner, bar code scanner, paper scanner, document scanner, x-ray scanner, xray scanner, x ray scanner, ct scanner, reception scanner, flatbed scanner,
card scanner, qr scanner, plate scanner, phosphor plate scanner, photo scanner, body scanner, mri scanner, cbct scanner, office scanner, face scanner, passport scanner, film scanner, label scanner, id scanner,
scanner at reception, scanner on reception, scanner in reception, scanner on the front desk, scanner at the front desk, scanner at front desk, scanner in the office, scanner in the back office, scanner for the paper, scanner printer, printer scanner, desk scanner, opg scanner, psp scanner, baggage scanner, airport scanner, fingerprint scanner, network scanner, receipt scanner, stock scanner, hand scanner at reception, reception's scanner, scanner upstairs in the office, temperature scanner, virus scanner, port scanner, lab scanner, model scanner, desktop scanner,
suction tip, suction, scaler tip, scaler, ultrasonic tip, ultrasonic scaler, handpiece tip, handpiece, aspirator tip, aspirator, saliva ejector, hve tip, surgical tip, mixing tip, syringe tip, three in one tip, 3 in 1 tip, 3-in-1 tip, 3in1 tip, triple syringe tip, applicator tip, etch tip, composite tip, cavitron tip, piezo tip, irrigation tip, air water tip, bur, needle, cotton tip, finger tip, pen tip, endo tip, curing light tip, microbrush, pipette tip, perio tip, intraoral tip for the impression, evac tip, gutta percha tip, disposable tip, felt tip, rubbish tip, polishing tip, rubber tip, q-tip, nail tip, bleaching tip, flowable tip, curing tip, diamond tip,
top tip, hot tip, a tip for getting, tips for getting, tip for you, a tip off, anonymous tip off, got a tip off, tip off from, useful tip, handy tip, great tip, good tip for, tip jar, tips jar, tip box, gratuity, tip money, christmas tip, tip from the patient, parking tip, revision tip, study tip, tip about, tip on how, tips on how, tips about, any tips on, took me to the tip, run to the tip, council tip, tip run, tips welcome, tips and tricks, tip of the day, tip of the iceberg, tip of my tongue, tip of the tongue, tip of the week, asparagus tip, good tip,
ct scan, mri scan, mri, ct, cbct, body scan, baby scan, 12 week scan, 20 week scan, bone scan, brain scan, ultrasound scan, ultrasound, pregnancy scan, hospital scan, dating scan, scan the form, scan the letter, scan the consent, scan the barcode, scan the document, barcode, virus scan, heart scan, scan report, anomaly scan, cat scan, scan the referral, scan the paperwork, badge, qr code, pet scan,
fridge, freezer, kettle, oven, microwave, dishwasher, radiator, boiler, air con, aircon, air conditioning, tap, water temp, water temperature, hot tap, incubator, ultrasonic bath, water bath, bath, outside, outdoors, out there, body temp, patient's temp, patient temp, patients temp, car park, washing machine, tumble dryer, coffee, tea, composite warmer, compressor, weather, forecast, garden, wax bath, hot water, cold water, feels like, fever,
x-ray, xray, x ray, radiograph, opg, bitewing, shade, composite, vita shade, bleach shade, company rep, sales rep, pa, photocopier, printer, fax, phone, invoice, bill, payroll, payslip, wage, rota, holiday, annual leave, sick, gloves, mask, gown, scrubs, apron, paper, barcode, cheque, receipt, letter, form, consent form, referral, email, e-mail, password, login, website, wifi, wi-fi, kitchen, toilet, loo, staff room, staffroom, washroom, dog, cat, kid, baby, husband, wife, mum, mom, dad, sister, brother, school, football, match, telly, tv, film, song, book, exam, homework, driving test, driving lesson, pregnancy test, covid test, lateral flow, blood test, eye test, hearing test, alarm test, fire alarm, fire drill, fire alarm test, pat test, pat testing, water test, smoke alarm, electrical test, legionella, dipslide, bank holiday, birthday, party, cake, biscuit, pub, dinner, breakfast, pizza, wine, beer, curry, train ticket, bike, shop, shopping, money, bank, rent, mortgage, insurance, hmrc, accountant, solicitor, lab, labs, lab work, denture, crown, bridge, veneer, aligner, retainer, impression tray, alginate, filling, extraction, implant, root canal, whitening, botox, amalgam, composite order, lab box, lab docket, washing up, washing-up, dry cleaning, washing line, laundry, door lock, lift, elevator, stairs, window cleaner, cleaner, plumber, electrician, builder, landlord, parking, permit, charger for my phone, my phone, phone charger, meeting, course, cpd, webinar, module, lecture, assignment, interview, candidate, gdc, cqc, hse, nhs, ofsted, hygienist appointment, complaint, refund, deposit, till, petty cash, post, parcel, stamp, sofa, chair cover, sofa cover, cover letter, cover reception, book cover, duvet cover, cover story, front cover, loading bay, load of rubbish, load of old, loads of, a load of, work load, workload, load of washing, washing load, load of laundry, load the dishwasher, home base, customer base, based, data base, database, base layer, pizza base, knowledge base, lens solution, contact lens, contact lenses, camera phone, phone camera, glasses, mouth mirror, bathroom mirror, wing mirror, rear view mirror, dental mirror, hand mirror, mirror image, bus pass, day pass, boarding pass, pass the salt, mountain pass, gym, yoga, run club, marathon, 10k, 5k, parkrun, fun run, life cycle, motor cycle, cycle lane, cycle path, cycle to work, spin class, menstrual cycle, cycle home, cycled home, bicycle, cycle ride, wash cycle, spin cycle, rinse cycle, dishwasher cycle
`;
