/**
 * What is done: sense → verbs in their base form, separated by commas; every ending is made from these.
 * A verb that takes a particle apart ("wiped A down", "took tip 5 off") is listed bare here and joined with
 * its particle by the frame that needs it.
 */
export const verbs: Readonly<Record<string, string>> = {
  // everyday verbs that mean one thing or another by what stands beside them
  be: '',
  have: 'have',
  do: 'do, redo, make',
  happen: 'happen',
  go: 'go, head, pop over, nip',
  come: 'come, arrive, land, get here, get there, show up',
  get: 'get, grab, fetch, collect, pick up',
  take: 'take, carry, pull, slip, slide, lift',
  bring: 'bring, bring back, return, bring over, bring up, bring down',
  put: 'put, pop, place, stick, set, bung, chuck, shove, whack, stuff, lob, plonk, throw, sling, slot, drop in, drop into, put in, put into',
  leave: 'leave, set off, head off, head out, depart, set out',
  travel: 'travel, drive, drive over, transport, courier',
  drop: 'drop, let drop, let fall, knock, bang, bash, knock off, knock over, hit the floor, hit the deck',
  fall: 'fall, fall off, fall over, tumble, fall out',
  dropoff:
    'drop off, drop over, hand over, hand in, hand, pass over, deliver, drop round, drop up, drop down',
  move: 'move, shift, relocate, transfer, swap over, move over, move up, move down, move back, shift over, rehome',
  swap: 'swap, change, switch, exchange, replace, change over',
  start:
    'start, begin, restart, kick off, commence, start up, start off, set going, get going, fire up, set running',
  run: 'run, run through, cycle, rerun',
  finish: 'finish, complete, wrap up, end, conclude, finish off, finish up',
  pass: 'pass',
  fail: 'fail, abort, bomb, flunk, conk out, crash, cut out, error out, stop, bomb out, trip out, fall over',
  use: 'use, reuse, utilise',
  work: 'work',
  check: 'check, look at, look over, examine, inspect, review, look, assess, eyeball, check over',
  clean: 'clean, clean down, clean up, clean off, clean over, cln, spruce',
  give: 'give',
  keep: 'keep',
  say: 'say, tell, mention, report, text, message, ring, phone, ask',
  show: 'show, teach, train, walk, walk through, talk, talk through, demo, demonstrate, coach, take through, explain',
  know: 'know, remember, recall',
  need: 'need, require, want',
  turn: 'turn, change colour, change color, change the colour, change the color, change its colour',
  open: 'open, open up, reopen',
  shut: 'shut, close, shut down, close up, close down, shut up, lock up, knock off early, finish up',
  see: 'see, notice, spot, clock',
  // senses of our trade
  calibrate: 'calibrate, recalibrate, cal, calib, recal, callibrate, calabrate, caliberate, calibrat',
  scan: 'scan, rescan, image',
  wipe: 'wipe, wipe down, disinfect, sanitise, sanitize, wipe off, wipe over, wipe clean, clinell, cavi wipe, surface clean, decontaminate, wipe up, rewipe, swab, alcowipe, dust down, polish',
  cover: 'cover, cover up, cap, sleeve, recover, re-cover',
  fit: 'fit, attach, clip, mount, click, snap, refit, affix, push, clip on, connect',
  remove:
    'remove, detach, unclip, dismount, unfit, strip, whip, unmount, take off, pull off, whip off, slip off, pop off, come off, disconnect, slide off',
  wash: 'wash, scrub, rinse, hand wash, handwash, pre clean, preclean, pre-clean, soak, ultrasonic, rinse off, scrub up, wash up, presoak, rinse out, prewash, hand clean, manual clean, degunk, brush',
  bag: 'bag, pouch, pack, pack in pouches, pack in pouch, bag up, wrap, seal, pouch up, package, rebag, repouch, wrap up, seal up, heat seal, pack up, re-bag, re-pouch, double bag, envelope',
  send: 'send, send off, send down, send up, send over, send through, send out, resend, post, ferry',
  load: 'load, load up, reload',
  sterilise: 'sterilise, sterilize, autoclave, resterilise, resterilize, re-sterilise, reautoclave',
  hold: 'quarantine, hold, isolate, impound, hold back, ground, put aside, set aside, put to one side, park, embargo, put on hold, take out of service, take out of use, pull from use, pull from service, take out of circulation, withdraw, sideline, tag out, red tag, set to one side',
  release:
    'release, unhold, reinstate, clear for use, release from hold, put back in service, take off hold, put back into service, unquarantine, put back in use, bring back into service, return to service, put back into use, okay for use',
  retire:
    'bin, turf, turf out, biff, bin out, retire, discard, dispose of, scrap, chuck out, throw out, throw away, chuck away, trash, toss, junk, ditch, write off, decommission, dispose, put in the bin, chuck in the bin, throw in the bin, toss out, bin off, condemn, pop in the bin, get rid of, sling out',
  add: 'unpack, unbox, take delivery of, add, order in, receive, deliver',
  lose: 'lose, misplace, mislay, go missing, go walkabout, go astray, go awol, vanish, disappear',
  find: 'find, locate, turn up, track down, resurface, reappear, come to light, unearth',
  repair:
    'mend, repair, fix, service, come back from repair, sort out, patch up, get fixed, get mended, get repaired',
  fog: 'fog, mist, fog up, mist up, steam up, steam, cloud, cloud up, cloud over, mist over, fog over, steam over',
  crack: 'crack, smash, shatter, break, chip, damage, snap off, bend, warp, split, fracture',
  scratch: 'scratch, scuff, score, smear, smudge, mark',
  tear: 'tear, rip, puncture, burst, pop open, come open, come undone, come unsealed, perforate, come apart, unseal, peel open',
  fray: 'fray, kink, twist, trap, pinch',
  disconnect:
    'disconnect, cut out, drop out, lose connection, freeze, lag, stop connecting, keep disconnecting, hang, unpair',
  connect: 'connect, pair, sync, link up, reconnect',
  heat: 'heat, heat up, warm, warm up, preheat',
  cancel: 'cancel, call off, pull out, cry off, dna, fta, rebook, reschedule, postpone, no-show, scrub off',
  book: 'book, schedule, book in, pencil in, slot in, squeeze in, have booked',
  incubate: 'incubate, put in to incubate, culture',
};

/** Forms that no rule makes, or that stand for a verb without its endings: sense → form:phrase. */
export const verbForms: Readonly<Record<string, string>> = {
  start: 'd:under way; d:underway; d:in progress; d:on the go',
  be: "b:be; s:is; s:are; s:am; d:was; d:were; d:been; g:being; s:i'm; s:we're; s:they're; s:you're; s:it's; s:its; s:he's; s:she's; s:that's; s:thats; s:there's; s:theres; s:r; s:iz",
  have: "s:i've; s:we've; s:they've; s:you've; s:ive; s:weve; d:had; d:i'd",
  calibrate:
    "d:cal'd; d:cald; d:calibd; d:calib'd; d:clb; d:clbd; d:clb'd; d:recal'd; d:recald; d:callibrated; d:calabrated; d:caliberated; d:calibrted; g:cal'ing; n:calibration; n:recalibration; n:cal; n:calib; n:calibrations; n:re-calibration; n:callibration; n:calibrate; n:calibraton; n:clbr; d:clbrtd; n:clb; d:did the calibration; d:did calibration; d:did the cal; d:done the calibration; d:done the cal",
  scan: 'n:scan; n:scans; g:scanning; d:scand; n:scanning; n:rescan; n:impression scan; n:intraoral scan; n:digital impression; n:digital impressions; n:full arch; n:full arch scan; n:upper and lower scan; n:io scan; n:bite scan; n:scan session',
  wipe: 'd:clinelled; n:wipe; n:wipe down; n:wipedown; n:wipe-down; n:wiping; n:disinfection; n:wiping down; n:a wipe; n:wipe over; n:clean down; d:wipped; d:wipd; d:wiped; n:cleandown; d:gave a wipe; d:deconned; d:sani wiped; d:caviwiped',
  clean: 'n:clean; n:cleaning; d:cleand; d:clnd',
  move: 'n:move; d:mvd; d:moved; d:movd',
  fit: 'n:fitting; d:fitted',
  check:
    'd:had a look at; d:had a wee look at; d:had a good look at; d:had a quick look at; d:took a look at; d:second look at; d:another look at; d:gave a once over; d:having a look at; d:been over',
  wash: 'n:wash; d:hand scrubbed; d:put through the washer; d:through the washer; d:been through the washer; d:through the ultrasonic; d:in the ultrasonic; d:washer disinfected; d:out of the washer; d:put through the ultrasonic; d:through the washer disinfector; n:scrub; d:had a wash; d:had a scrub',
  bag: 'd:pouched; d:packed in pouches; d:packed in a pouch; d:double bagged; d:double pouched; d:bagged up and sealed; d:in pouches; d:in bags; d:in a pouch; d:in pouch; d:in its pouch; d:in their pouches; d:in a bag; d:in bag; n:bagging; d:bagged n tagged; d:bagged and tagged; d:in sterilisation pouches; d:in sealed pouches',
  sterilise:
    'd:sterilised; d:been sterilised; d:autoclaved; d:cooked; n:sterilisation cycle; d:through the autoclave; d:been through the autoclave; d:fully autoclaved',
  send: 'd:sent; d:snt',
  retire:
    'd:in the bin; d:gone in the bin; d:in bin; d:in the sharps; d:in clinical waste; d:out of circulation for good; d:in the clinical waste; d:for the bin; d:went in the bin; d:gone in bin; d:in the trash; d:end of life; d:past it; d:reached end of life; d:at end of life; d:gone for good',
  hold: "d:taken out of use; d:off the rota; d:taking out of use; d:nobody touch; d:no one touch; d:don't touch; d:dont touch; d:do not touch; d:not to be touched; d:out of service; d:out of action; d:out of order; d:out of use; d:out of commission; d:oos; d:on hold; d:off limits; d:in quarantine; d:quarantined; d:not to be used; d:do not use; d:dont use; d:not for use; d:out of bounds; d:off the road; d:not safe to use; d:not fit for use; d:unfit for use; d:nobody use; d:no one use; d:nobody is to use; d:no one is to use; d:not useable; d:not usable; d:unusable; d:unsafe to use; d:unsafe; d:must not be used; d:mustnt be used; d:should not be used; d:shouldnt be used; d:cant be used; d:cannot be used; d:stop using; d:no using; d:not to use; d:hands off; d:leave alone; d:stay off; d:steer clear of; d:avoid using; d:never use; d:please avoid; d:out of circulation; d:not in service; d:not in use until; d:taken out of service; d:pulled from service; d:is a no go; d:please dont use; d:please do not use; d:pls dont use; d:plz dont use; d:pls do not use; d:keep off; d:no one to use; d:nobody to use; d:noone use; d:everyone avoid; d:avoid; d:ooo; d:not useable; d:under quarantine",
  release:
    'd:may be used again; d:all right to use again; d:alright to use again; d:may go back into use; d:can go back to use; d:ok to be used again; d:fine to be used again; d:safe to be used again; d:may be put back into use; d:ok to go back into use; d:ok to go back in use; d:okay to go back into use; d:fine to go back into use; d:good to go back into use; d:can come off hold; d:back in the rotation; d:back in rotation; d:back in service; d:back in action; d:back in use; d:back into service; d:back into use; d:off hold; d:out of quarantine; d:fine to use again; d:ok to use again; d:okay to use again; d:good to use again; d:safe to use again; d:good to go again; d:usable again; d:useable again; d:can be used again; d:cleared for use; d:cleared to use; d:clear to use again; d:ready to use again; d:fit for use again; d:back up and running; d:up and running again; d:can go back into use; d:can go back in use; d:can go back into service; d:back on the road; d:back in circulation; d:back to normal; d:in service again; d:in use again; d:fine again; d:ok again; d:okay again; d:working again; d:good again; d:all good again; d:no longer on hold; d:no longer held; d:no longer out of service; d:free to use again; d:fine to use now; d:ok to use now; d:safe to use now; d:okay to use now; d:good to use now; d:can use again; d:able to be used again; d:alright to use again; d:back online; d:back in play; d:back on; d:cleared; d:back in business; d:out of quarantine now; d:fit to use again; d:allowed again; d:usable now; d:safe again; d:fine to use; d:ok to use; d:okay to use; d:good to use; d:safe to use; d:alright to use; d:can be used; d:fit for use',
  add: 'd:new in; d:just in; d:in the post today; d:come in the post; d:turned up in the post; d:in the delivery; d:in stock now; d:brand new',
  lose: "d:do not find; d:don't find; d:dont find; d:not finding; d:does not find; d:can't be found; d:cant be found; d:cannot be found; d:not been found; d:nowhere in sight; d:vanished; d:missing; d:can't find; d:cant find; d:cannot find; d:can't see; d:cant locate; d:can't locate; d:can not find; d:nowhere to be found; d:nowhere to be seen; d:couldn't find; d:couldnt find; d:unable to find; d:unable to locate; d:unaccounted for; d:no sign of; d:gone walkies; d:awol; d:m.i.a; d:mia; d:not found; d:cannot locate; d:still can't find; d:cant see; d:lost track of; d:can't seem to find; d:cant seem to find; d:no idea where; d:couldn't locate; d:gone missing; d:gone astray; d:gone awol; d:not in its place; d:can't track down; d:struggling to find; d:not able to find; d:don't know where; d:dont know where",
  find: 'd:has turned up; d:was hiding; d:turned up; d:found; d:was found; d:no longer missing; d:here all along',
  repair:
    'd:back from repair; d:back from the repairers; d:back from being fixed; d:up and running; d:back from the engineer; d:back from service; d:been seen to; d:as good as new; d:been serviced; d:back from servicing; d:back from the menders; d:back from the manufacturer; d:new software; d:got new software; d:software updated; d:had its software updated',
  cancel:
    'd:fell through; d:fallen through; d:dropped out; d:pulled out; d:a no go; d:no go; d:cried off; d:dropped off the schedule; d:canceled; g:canceling; d:cancld; n:cancellation',
  fog: 'n:steam; g:fogin; g:foggin; g:fogging up; n:fogging; g:misting; n:fog; n:condensation; d:foggy; d:misty; d:steamy; d:cloudy; d:hazy; d:blurry; n:mist; d:all fogged up; d:steamed up; n:blurring',
  crack:
    'n:crack; n:chip; n:damage; d:cracked; d:smashed; n:hairline crack; d:bust; d:busted; d:knackered; d:broke; d:bent; d:loose; d:in two; d:in pieces; d:shattered; d:crazed; n:hairline; d:hairline cracked; d:clouded; d:corroded; d:discoloured; d:discolored; d:delaminated; d:pitted; d:peeling; d:rusty',
  scratch: 'n:scratch; n:scratches; n:smear; n:smears; d:smeary; d:scratched; d:smeared',
  tear: 'd:torn; d:has come open; d:come loose; d:coming open; d:come away; d:coming apart; d:not stuck down; d:split open; d:open; d:opened; d:not sealed; d:unsealed; n:hole; n:tear; n:rip; n:split; d:split; n:holes; d:damp; d:wet; d:soaked; d:soggy; d:moist; d:still wet; d:ripped; d:pierced; d:came open; d:been opened; n:pinhole; d:not dry; d:wet through; d:burst',
  fray: 'd:frayed; d:kinked; d:damaged cable; d:exposed',
  dead: "d:won't turn on; d:wont turn on; d:won't switch on; d:wont switch on; d:dead; d:won't power on; d:wont power on; d:won't power up; d:won't start; d:wont start; d:not turning on; d:not switching on; d:no power; d:wont power up; d:won't come on; d:wont come on; d:not powering up; d:not powering on",
  disconnect:
    "d:drops off the wifi; d:drops off the network; d:dropped off the wifi; d:drops off the wifi link; d:keeps dropping off; d:drops out; d:dropped out mid scan; d:loses connection; d:loses signal; d:dropped off the laptop; d:dropped off the pc; d:dropped off the network; d:dropped off the computer; d:keeps dropping off the laptop; d:off the laptop; d:loses its connection; d:loses connection constantly; d:dropped connection; d:drops connection; d:drops its connection; d:lost the connection; d:won't connect; d:wont connect; d:not connecting; d:keeps disconnecting; d:keeps dropping out; d:keeps cutting out; d:not connected; d:no connection; d:lost connection; d:lost its connection; d:not recognised; d:not being recognised; d:not detected; d:not showing up; d:not picked up; d:not pairing; d:won't pair; d:wont pair; d:no signal; d:keeps freezing; d:frozen; d:disconnecting; d:can't connect; d:cant connect; d:unresponsive; d:not responding; d:keeps losing connection; d:connection dropping; d:connection problems; d:connection issues; d:connection issue; d:connection fault; d:connection problem; d:isn't connecting; d:isnt connecting; d:offline; d:doesn't connect; d:doesnt connect; d:laggy; d:keeps losing signal; d:dropping connection; d:keeps dropping connection; d:keeps dropping; d:not talking to the laptop; d:not talking to the pc; d:not found by the laptop; d:bad connection; d:loose connection; d:not linking; d:dropping out; d:cutting out; d:disconnected; d:wouldn't connect; d:wouldnt connect",
  cold: "d:does not heat; d:do not heat; d:does not warm; d:does not heat up; d:does not warm up; d:will not heat; d:no heat; d:not heating; d:isn't warming; d:isnt warming; d:isn't warming the tips; d:not warming the tips; d:no heat; d:not heating up; d:not warming up; d:not warming; d:won't heat; d:wont heat; d:won't heat up; d:wont heat up; d:won't warm up; d:wont warm up; d:isn't heating; d:isnt heating; d:heater not working; d:heater's not working; d:heating not working; d:heating's not working; d:stays cold; d:staying cold; d:stone cold; d:not getting warm; d:isn't warming up; d:isnt warming up; d:heating fault; d:heating failed; d:heater failed; d:heater gone; d:heating gone; d:heater fault; d:isn't getting warm; d:not heating properly; d:heater broken; d:heater's gone; d:heating's gone; d:heater has gone; d:heating isn't working; d:heater isn't working; d:doesn't heat up; d:doesnt heat up; d:doesn't warm up; d:overheating; d:too hot; d:heating is not working; d:heater is not working; d:heating up not working; d:isn't heating up; d:isnt heating up; d:never warms up; d:doesn't heat; d:heating element gone; d:heating packed in; d:heating's packed in; d:heater packed in; d:heater's packed in; d:not getting hot; d:wouldn't heat up; d:wouldn't warm up; d:overheats; d:overheated; d:heater dead",
  sick: "d:throws error; d:throwing error; d:throws an error; d:error on boot; d:throws up an error; d:won't boot; d:wont boot; d:shows an error; d:intermittent; d:throws errors; d:making a grinding noise; d:grinding noise; d:making a clicking noise; d:clicking noise; d:button sticking; d:sticking; d:won't hold vacuum; d:wont hold vacuum; d:not holding vacuum; d:leaking; d:mushy; d:leaking water; d:door seal split; d:stuck on; d:carked it; d:cark it; d:playing silly beggars; d:gone on the blink; d:making a strange noise; d:makes a strange noise; d:makes a noise; d:making noises; d:makes strange noise; d:strange noise; d:weird noise; d:stuffed; d:rooted; d:munted; d:shagged; d:snafu; d:gone kaput; d:gone bang; d:ropey; d:dodgy; d:out of whack; d:temperamental; d:playing up; d:acting up; d:faulty; d:not working; d:isn't working; d:isnt working; d:doesn't work; d:doesnt work; d:broken; d:not right; d:on the blink; d:on the fritz; d:playing silly; d:making a funny noise; d:making a noise; d:making a weird noise; d:acting weird; d:acting strange; d:acting funny; d:on its last legs; d:packed in; d:stopped working; d:buggered; d:kaput; d:cactus; d:had it; d:crook; d:misbehaving; d:glitching; d:glitchy; d:not scanning properly; d:not working properly; d:malfunctioning; d:giving errors; d:throwing errors; d:error message; d:error code; d:showing an error; d:banjaxed; d:not scanning; d:wonky; d:not itself; d:having issues; d:has a fault; d:has a problem; d:got a fault; d:giving trouble; d:giving up; d:buzzing; d:rattling; d:beeping; d:flickering; d:button stuck; d:has issues; d:being funny; d:giving an error; d:won't work; d:wont work; d:giving me grief; d:giving grief; d:throwing an error; d:gone funny; d:given up; d:died; d:on strike; d:doesn't fit; d:doesnt fit; d:won't fit; d:wont fit; d:wont stay on; d:won't stay on; d:doesn't stay on; d:loose; d:won't click on; d:wont click on; d:having problems; d:has problems; d:gone wrong; d:bust; d:isn't right; d:isnt right; d:has gone wrong; d:keeps crashing; d:keeps beeping; d:banjaxed; d:image is distorted; d:image distorted; d:funny noise; d:keeps stitching badly; d:not stitching",
  fail: "d:not succeeded; d:not succeed; d:has not succeeded; d:didn't succeed; d:did not succeed; d:faild; d:abortd; d:does not want to calibrate; d:doesn't want to calibrate; d:failing; d:refused; d:refuses; d:rejected; d:no-go; d:a no; n:failure; d:didn't pass; d:didnt pass; d:did not pass; d:wouldn't pass; d:not passed; d:hasn't passed; d:hasnt passed; d:has not passed; d:aborted; d:no pass; d:not pass; d:won't pass; d:wont pass; d:no good; n:fail; d:doesn't pass; d:unsuccessful; d:didn't work; d:didnt work; d:didn't go through; d:didnt go through; d:not successful; d:went wrong; d:was rejected; d:gone wrong; d:keeps failing; n:a fail; d:not ok; d:not okay; d:not good; d:isn't right; d:wasn't right; d:no joy; d:wasn't happy; d:errored; d:errored out; d:faulted; d:never passed; d:didn't complete; d:didnt complete; d:didn't finish; d:didnt finish; d:did not complete; d:not right; d:cut out; d:stopped halfway; d:stopped half way; d:stopped mid cycle; d:stopped midway; d:wasn't a pass; d:isn't a pass; d:wasnt a pass; d:not a pass; d:unsatisfactory; d:out of spec; d:out of tolerance; d:off spec; d:was no good; d:not happy; d:fail'd; d:didn't take; d:didnt take; d:wouldn't take; d:went red; d:came up red; d:red light; d:red cross; d:❌; d:👎",
  pass: "n:pass; d:passed; d:spotless; d:immaculate; d:pristine; d:sparkling; d:pased; d:passd; d:gd; d:all gd; d:all okay; d:both fine; d:both ok; d:both good; d:both passed; d:all correct; d:succeeded; d:succesful; d:all good; d:all ok; d:all fine; d:good; d:ok; d:okay; d:fine; d:fine now; d:successful; d:success; d:successfully; d:all clear; d:clear; d:no issues; d:no problems; d:no problem; d:within range; d:in range; d:happy; d:perfect; d:perfectly; d:sound; d:grand; d:spot on; d:all grand; d:all passed; d:a pass; d:satisfactory; d:green tick; d:green light; d:tick; d:ticked; d:came back ok; d:came back fine; d:went through; d:went fine; d:went well; d:went ok; d:worked; d:worked fine; d:all green; d:sweet; d:good to go; d:came good; d:went through fine; d:no worries; d:✅; d:👍; d:👌; d:✔; d:☑; d:no dramas; d:all well; d:well; d:lovely; d:great; d:brilliant; d:nice; d:fab; d:no errors; d:without a hitch; d:without issue; d:without issues; d:no faults; d:all correct; d:all as it should be; d:as expected; d:no bother; d:beautiful; d:beautifully; d:first time; d:alright; d:within limits; d:within tolerance; d:sweet as; d:came up green; d:went green; d:gone green; d:💚; d:🟢; d:bang on; d:good as gold; d:no fuss; d:no hiccups; d:no hassle; d:mint; d:tickety boo; d:in spec; d:within spec; d:it's happy; d:acceptable",
  finish:
    'd:done; d:finished; n:end of; n:end; d:ended; d:over; d:complete; d:all done; d:completed; d:fin; d:wrapped; d:is up',
  use: 'd:dirty; d:contaminated; d:soiled; d:used; d:been in a mouth; d:been in someones mouth; d:in the dirty tray; d:in the dirty box; d:in the dirties; d:manky; d:in the used tray; d:in the used box; d:are dirties; d:been used; d:mucky; d:used up; d:need reprocessing; d:needs reprocessing; d:in the dirty pile; d:in the dirty bin; d:has been in a mouth; d:for reprocessing; d:unclean; d:been in the mouth; d:in the dirty container; d:went in a mouth; d:touched a patient; d:in the dirty zone',
  sterile:
    'd:sterile; d:steril; d:back from steri; d:back from the steri room; d:back from the autoclave; d:back from autoclave; d:back from sterilisation; d:back from decon; d:out of the autoclave; d:out the autoclave; d:out of autoclave; d:back from the steri; d:back from cssd; d:back from sterilising; d:out of the steriliser; d:out of the sterilizer; d:back from the steriliser; d:back from the sterilizer; d:back from hssu; d:back sterile; d:sterile and ready; d:clean and sterile; d:sterile again; d:back on the shelf; d:on the shelf; d:back in the clean drawer; d:in the clean drawer; d:in the sterile drawer; d:back in the sterile drawer; d:on the sterile shelf; d:on the clean shelf; d:ready on the shelf; d:in the sterile cupboard; d:back in the sterile cupboard; d:in the clean cupboard; d:on shelf; d:back on shelf; d:in the sterile box; d:in clean storage; d:in sterile storage; d:in the clean store; d:in the sterile store; d:shelved; d:all sterile; d:out of steri; d:ready to use; d:ready for use; d:in the clean box; d:clean and ready; d:clean and on the shelf; d:clean on the shelf; d:clean and back on the shelf; d:came out sterile; d:out of the steri; d:back out of the autoclave; d:back from the sterilisation room; d:back from sterilization; d:in the ready drawer; d:came back from steri; d:back out of steri; d:out of decon; d:back from the big autoclave; d:from the autoclave; d:from steri; d:from decon; d:from the steri room; d:from sterilisation; d:from autoclave; d:back from sterilizing; d:away on the shelf; d:sterilised and ready; d:sterilised and on the shelf; d:put away clean; d:put away sterile; d:away in the clean drawer; d:away in the sterile drawer; d:away in the drawer sterile',
  travel:
    "d:on his way; d:on her way; d:on my way; d:on our way; d:gone out of the door for; d:out the door for; d:out of the door for; d:out the door to; d:off out to; d:on its way; d:on their way; d:on the way; d:on it's way; d:en route; d:in transit; d:in the car; d:in my car; d:in the van; d:in the boot; d:in the taxi; d:in his car; d:in her car; d:in a taxi; d:with the courier; d:on the road; d:in my boot; d:in the trunk; d:in the ute; d:on the move; d:packed in the car; d:out for delivery; d:enroute; d:otw; d:gone in the car; d:bound for; d:headed to; d:headed for; d:heading for; d:heading to; d:travelling to; d:in the bag for; d:gone off to; d:has left; d:just left; d:left here; d:off up to; d:off down to; d:off over to; d:in the courier bag; d:just off to; d:'s off to; d:setting off; d:in the car with me; d:in our car; d:with the driver; d:on the bus; d:on the train; d:on my way with; d:on way; d:on its way over; d:on its way up; d:on its way down; d:on our way with; d:packed and in the car; d:in the back of the car; d:on the back seat; d:in back of the car; d:on way to; d:in a cab; d:in the cab",
};
