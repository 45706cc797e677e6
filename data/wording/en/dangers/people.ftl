# What is said where a hazard of data/lexicon/danger/people.toml was heard, by its id: the verdict, what to
# do instead, why, and whom to ask. The verdict is the first sentence, and it holds no figure of what is refused.

honey_infant =
    .verdict = No honey under twelve months: not a lick, not on a pacifier, not cooked or baked in.
    .instead =
        Sweeten with mashed banana, apple or pear, or leave it plain. From the first birthday on honey is allowed; up here or
        at sea level makes no difference.
    .why =
        Honey can carry spores of botulism; a baby's gut cannot hold them down, and neither an oven nor boiling, least
        of all up here, kills them.
    .ask = A doctor at once for a baby who has had honey and is constipated, floppy or feeds poorly.

formula_thin =
    .verdict = No. Never thin formula: powder and water in the amounts on the tin, every time.
    .instead =
        If the tin is running out, ask today: a clinic, pharmacy, food bank or neighbour with the same powder.
        Ready-made liquid formula will do until then.
    .why = Thinned feeds starve a baby and wash the salts out of its blood, which brings fits.
    .ask = Your doctor, midwife or clinic; emergency services for a baby who is limp, hard to wake or has fits.

formula_thick =
    .verdict = No. Never add powder beyond the scoops on the tin.
    .instead = Make it by the label; a baby who gains slowly needs a doctor's plan, not a stronger bottle.
    .why = Concentrated feeds dry a baby out and strain its kidneys.
    .ask = Your doctor, midwife or clinic; emergency services for a baby who is limp, hard to wake or has fits.

formula_kept =
    .verdict =
        No. Made-up formula does not wait at room temperature, in a flask, a warmer or a bath, and a started bottle is
        not kept, topped up or warmed again.
    .instead =
        Make one feed at a time and use it within 2 h. For outings carry boiled water hot in a flask and the powder dry,
        and mix there while the water is { TEMP(158) } or hotter; then cool it.
    .instead-2 = Throw away what is left after a feed.
    .why = The powder is not sterile, and lukewarm milk breeds what is in it within hours.
    .ask = Your doctor, midwife or clinic; emergency services for a baby who is limp, hard to wake or has fits.

formula_cool =
    .verdict =
        Only if the water is boiled first and still { TEMP(158) } or hotter when the powder goes in: no cool, lukewarm
        or unboiled water.
    .instead =
        Bring the water to a full rolling boil: 1 minute by CDC, 3 minutes above 6,500 ft (2,000 m); WHO asks for the
        rolling boil alone. Let it stand no longer than to { TEMP(158) }, make up the bottle, cool it under the tap and
        test it on your wrist. Water boils hotter than that wherever people live.
    .why =
        The powder is not sterile, and it is the hot water that kills what is in it; a small or early baby can die of
        it.
    .ask = Your doctor, midwife or clinic; emergency services for a baby who is limp, hard to wake or has fits.

formula_other =
    .verdict =
        No. Nothing stands in for formula or breast milk in the first year: no animal or plant milk, cereal or rice
        water, broth or home-made mix.
    .instead =
        Ask today for infant formula: clinic, pharmacy, food bank, hospital; ready-made liquid or another brand will do.
        Until then breast milk, also a nurse's or donor bank's.
    .why =
        Such drinks lack or overload salts, iron, fat and vitamins; babies on them have had fits, rickets and worse, and
        diluting or boiling does not mend it.
    .ask = Your doctor, midwife or clinic; emergency services for a baby who is limp, hard to wake or has fits.

formula_microwave =
    .verdict = No. Do not warm a baby's milk in a microwave.
    .instead = Stand the bottle in warm water a few minutes, swirl, test it on your wrist. Breast milk likewise.
    .why = It heats in streaks that scald a mouth while the bottle feels cool.
    .ask = Your doctor, midwife or clinic.

bottle_sealed =
    .verdict = No. Never heat a bottle that is screwed shut.
    .instead =
        Boil bottle, teat and cap open and apart in a pan; warm a feed in a bowl of warm water with the lid loose.
    .why = Steam bursts it, or sprays scalding milk when it is opened.
    .ask = Your doctor, midwife or clinic.

bottle_cereal =
    .verdict = No. No cereal or thickener in a bottle, and no cutting of the teat.
    .instead =
        Milk only until about six months, and solids from a spoon, sitting up. A baby who wakes hungry needs another
        feed.
    .why = It makes a baby choke and does not make it sleep; thickeners need a doctor's order.
    .ask = Your doctor, midwife or clinic; emergency services for a baby who is limp, hard to wake or has fits.

breast_milk =
    .verdict =
        Only if it stood no more than 4 h at room temperature: breast milk that was warm for longer is discarded, and boiling
        does not bring it back.
    .instead =
        Fresh milk keeps 4 h at room temperature up to { TEMP(77) }, 4 days in the refrigerator, 6 months and more
        frozen. Carry it on ice. Warm it in a bowl of warm water, never in a bath overnight, and use it within 2 h.
    .why = Germs grow in it as in any milk, and what they leave is not boiled away.
    .ask = Your doctor, midwife or clinic.

infant_bad_water =
    .verdict = No. Boiling does not make that water fit for a baby.
    .instead =
        Use bottled water low in sodium and nitrate, or tested mains water, boiled, for feeds, porridge and drinks; or
        ready-made liquid formula.
    .why =
        Boiling kills germs and leaves nitrate, salt, metals and mine waste, and makes them stronger; nitrate turns a
        young baby blue. A filter jug does not take them out. Water that is only warmed is not even free of germs.
    .ask = The water or health office for a test; emergency services for a baby whose lips or skin look blue or grey.

infant_unsterile =
    .verdict = No. Go on sterilising: boiling works at every elevation.
    .instead =
        Wash with soap and a brush, then keep bottle, teat and cap under a rolling boil 5 to 10 min, or use a steam or
        cold-water steriliser; above all under two months or for a baby born early.
    .why = Water that boils at the cooler temperatures up here still kills what milk leaves behind; a rinse does not.
    .ask = Your doctor, midwife or clinic.

infant_herb =
    .verdict = No herb or star anise tea for a baby.
    .instead = Breast milk or formula only; for colic hold it upright, rub its belly, and see the doctor.
    .why =
        Star anise is often mixed with a poisonous kind and has given babies fits; other teas fill without feeding and
        may harm heart or liver. Boiling does not change that.
    .ask = Your doctor, midwife or clinic; emergency services for a baby who is limp, hard to wake or has fits.

infant_alcohol =
    .verdict = No alcohol for a baby, not on a spoon, a gum or a dummy, warmed or not.
    .instead = A cold clean cloth or a cooled teething ring; a pain syrup only as the doctor says.
    .why = Drops of spirits lower a baby's blood sugar and breathing.
    .ask = Your doctor, midwife or clinic; emergency services for a baby who is limp, hard to wake or has fits.

infant_salt =
    .verdict = No salt, and no home-mixed salt water, for a baby.
    .instead =
        Leave food plain, or give it taste with vegetable and fruit. For diarrhoea use ready oral rehydration sachets in
        the printed amount of boiled water, keep feeding milk, and see a doctor the same day.
    .why = A baby's kidneys cannot clear it; a fistful in a litre can kill.
    .ask = Your doctor, midwife or clinic; emergency services for a baby who is limp, hard to wake or has fits.

infant_water =
    .verdict = No plain water before about six months.
    .instead = Offer the breast or a bottle of properly made formula more often in heat; shade and a cool cloth help.
    .why = Water fills a baby without feeding it and thins its blood, which brings fits.
    .ask = Your doctor, midwife or clinic; emergency services for a baby who is limp, hard to wake or has fits.

infant_canned =
    .verdict = No home-canned food for a baby.
    .instead = Cook it fresh and soft, or freeze it in small portions, and heat it through once.
    .why =
        No tested process exists for purées, they are too dense for the heat, and a baby has no defence against
        botulism.
    .ask = Your doctor, midwife or clinic.

infant_stored =
    .verdict = No. Spinach, beet and chard purée is not kept for days and warmed again for a young baby.
    .instead =
        Make it fresh or freeze it the same hour, thaw one portion, warm it once; before about six months give none of
        them.
    .why = Nitrate in these leaves turns to nitrite while they stand, which robs the blood of oxygen.
    .ask = Emergency services for a baby whose lips or skin look blue or grey; your doctor or clinic.

milk_only =
    .verdict = No. A baby so young gets milk alone: breast milk or formula, no solids, no honey, nothing in the bottle but milk.
    .instead =
        Feed it more often if it is hungry; solids begin at about six months, never before four, from a spoon and sitting
        up. Honey waits until the first birthday.
    .why =
        It cannot yet swallow or digest more, and what fills it up keeps it from the milk that feeds it. Elevation
        changes nothing in that.
    .ask = Your doctor, midwife or clinic; the same day for a baby who feeds poorly or is limp or feverish.

infant_food =
    .verdict = No. That is not for a baby.
    .instead =
        Under twelve months: breast milk or formula to drink; egg, meat and fish cooked through; food soft, without
        salt, honey or pieces that can block the throat. A food the child reacted to, or a first nut after egg trouble,
        waits for the doctor.
    .why =
        A baby has little defence against germs that an adult gets over, and chokes easily. Elevation does not change
        it.
    .ask = Your doctor, midwife or clinic.

infant_named =
    .verdict = Only if it suits a baby: smooth or soft, cooked through, no salt, no honey, nothing whole or hard.
    .caution = For a baby: smooth or soft, cooked through, no salt, no honey, nothing whole or hard.
    .instead = Your doctor or clinic knows what this child may have.
    .why = Under twelve months food is no matter of taste alone.

choking =
    .verdict =
        No. Popcorn, whole nuts, whole grapes, hard sweets, jelly cups, pearls, raw hard fruit and round slices of
        sausage are not for children under four, longer cooked or not.
    .instead =
        Quarter grapes lengthwise, grate or steam apple and carrot soft, spread nut butter thin, cut sausage in thin
        strips, and have them sit upright while they eat, never in a moving car.
    .instead-2 = For low blood sugar follow the child's plan: juice or glucose gel.
    .why = They fit a small windpipe and seal it; a softer or bigger piece does the same.
    .ask = Your doctor or clinic; emergency services for a child who cannot breathe or cry.

swallowing =
    .verdict =
        No. For somebody who chokes or coughs at meals, no sticky, dry, hard or mixed food, and the thickener stays in.
    .instead =
        Keep to the texture that the speech therapist set; sit upright, small spoons. Where it tastes bad ask for
        another thickener. Rice cake, konjac and the like are left out whatever the cooking time.
    .why =
        What slips into the lungs brings pneumonia, and a sticky piece blocks the throat; cooking longer does not change
        it.
    .ask = Their speech and language therapist or dietitian; emergency services for choking.

tube_feed =
    .verdict = No. Blended food does not hang for hours, and a home blend goes into a tube only by the dietitian's plan.
    .instead =
        Ready feed as prescribed; a blend only fresh, strained, given at once or within 2 h, the rest refrigerated at
        { TEMP(40) } or below and thrown away after 24 h.
    .why = Warm food breeds germs that go straight into the gut, and lumps block the tube.
    .ask = Their dietitian or tube nurse.

grapefruit_medicine =
    .verdict = No grapefruit, pomelo or Seville orange with such medicine, raw, grilled, or as juice or marmalade.
    .instead = Serve sweet orange, mandarin or melon instead.
    .why =
        They keep the drug in the body, to several times its strength, for more than a day; heat does not change that.
    .ask = The guest's pharmacist or transplant team, before any is eaten.

thinner_food =
    .verdict = No. With a blood thinner no herb teas or extracts, cranberry by the jug, or sudden heaps of greens.
    .instead =
        Keep leafy greens the same from week to week; leave ginkgo, dong quai, ginseng, turmeric capsules and St John's
        wort out. Ordinary tea or ginger cordial in small cups will do.
    .why = Some make blood thinner, some thicker; both bleed or clot where nobody sees it.
    .ask = Their pharmacist or clotting clinic; emergency services for bleeding that does not stop.

maoi_food =
    .verdict =
        No. With an MAO inhibitor no aged cheese, tap or craft beer, cured meat, soy or yeast extract, or anything
        fermented or old.
    .instead =
        Fresh cheese such as ricotta or cream cheese, fresh meat and fish cooked the same day; no alcohol without the
        doctor's word.
    .why = Tyramine in them shoots the blood pressure up, and cooking does not remove it.
    .ask = Their pharmacist or doctor; emergency services for a sudden pounding headache.

renal_food =
    .verdict = No. With failing kidneys no star fruit at all, and no salt substitute of potassium.
    .instead =
        Season with lemon, vinegar, herbs, garlic and pepper; choose apple, berries or grapes, in the amount of their
        plan.
    .why =
        Star fruit holds a nerve poison and potassium stops the heart when the kidneys cannot clear them; cooking
        removes neither.
    .ask = Their renal dietitian; emergency services for hiccups that do not stop, confusion or weakness.

pku_food =
    .verdict = No aspartame and no ordinary protein food for somebody with PKU.
    .instead =
        Sweeten with sugar or honey, or a sweetener their dietitian allows; use the low-protein flour and pasta of their
        diet.
    .why = Both give phenylalanine, which harms the brain; cooking leaves it in.
    .ask = Their metabolic dietitian.

favism =
    .verdict = No broad (fava) beans in any form with favism or G6PD deficiency, however long they cook.
    .instead = Use peas or green beans instead, from a clean pot; read labels for fava flour.
    .why = What breaks the blood cells stands cooking.
    .ask = Their doctor; emergency services for dark urine, yellow skin or breathlessness.

alpha_gal =
    .verdict = No. With alpha-gal allergy (tick bite) lard, tallow, gelatine, broth and often dairy count as red meat.
    .instead = Use vegetable oil or shortening, poultry or fish, and poultry or vegetable stock, from clean pans.
    .why = The allergen is a sugar that stays in fat and gelatine and stands heat; the reaction comes hours later.
    .ask = Their allergist; emergency services and their adrenaline pen for swelling, wheezing or faintness.

medicine_food =
    .verdict = No. Leave that out until their pharmacist has said yes: it meets their medicine.
    .instead =
        Cook the dish without the alcohol, liquorice, seaweed or salt substitute; keep salt and meal times as their plan
        says.
    .why = Food can raise, lower or turn a drug, and cooking off is never complete.
    .ask = Their pharmacist or doctor.

preg_herb =
    .verdict = No. Such herbs, liquorice and oils are not for a pregnancy.
    .instead = Ginger in food, lemon or mint in small cups, and what the midwife allows.
    .why = They can bring on bleeding or labour or harm the child; steeping does not weaken them.
    .ask = Their midwife, doctor or pharmacist; emergency services for bleeding or pain.

liver_pregnant =
    .verdict = No liver, liver pâté or cod-liver oil in pregnancy.
    .instead =
        For iron take well-cooked red meat, lentils and beans with something sour, and the tablets the doctor gives.
    .why =
        Liver holds so much vitamin A that it can harm the child, and pâté and pink liver carry germs besides; cooking
        does not lower the vitamin.
    .ask = Their midwife or doctor.

mercury =
    .verdict =
        No swordfish, shark, king mackerel, marlin, tilefish or bigeye tuna in pregnancy, while nursing or for small
        children.
    .instead = Salmon, trout, sardines, cod or pollock, cooked to { TEMP(145) }, two or three times a week.
    .why = They hold mercury, which cooking does not remove and which harms a growing brain.
    .ask = Their midwife, doctor or clinic.

at_risk_alcohol =
    .verdict =
        No alcohol in food or drink for somebody pregnant or nursing without the doctor's word: cooking never takes all
        of it out.
    .instead = Stock with a little vinegar or verjuice, grape or apple juice, or vanilla in its place.
    .why = No safe amount is known, and uncooked wine or spirits in cream or fruit stay whole.
    .ask = Their midwife or doctor.

at_risk =
    .verdict =
        No. For somebody pregnant, ill, very young or old, leave out raw and undercooked food, raw milk and its cheeses,
        sprouts, cold smoked fish, and alcohol.
    .instead =
        Eggs until white and yolk are firm, or pasteurised eggs; poultry { TEMP(165) }, ground meat and egg dishes
        { TEMP(160) }, fish and whole cuts { TEMP(145) }; sliced meats and leftovers steaming hot, { TEMP(165) }.
    .why =
        Listeria, salmonella and toxoplasma that a healthy adult gets over can kill them or an unborn child. These
        temperatures are the food's own and do not drop with elevation.
    .ask = Their doctor, midwife or dietitian; the kitchen's own rules where you cook for a home or a ward.

at_risk_kept =
    .verdict =
        Discard it for them: food that stood warm, or was opened days ago, is not for the old, the ill, the pregnant or
        small children, reheated or not.
    .instead =
        Cook or open fresh. Hot food stays at { TEMP(140) } or above from stove to table, cold food at { TEMP(40) } or
        below, opened meats 3 days at most and then steaming hot, { TEMP(165) }.
    .why = They die of germs that others get over, and some poisons stand any reheating.
    .ask = The kitchen's own rules, or their doctor or dietitian.

child_rare =
    .verdict = No. Minced meat for a child is never pink, and milk never raw, however fresh.
    .instead =
        Burgers, kofta and meatballs to { TEMP(160) } in the middle, by a thermometer; milk pasteurised. These
        temperatures do not drop with elevation.
    .why = E. coli sits all through mince and in raw milk, and in small children it destroys the kidneys.
    .ask = A doctor at once for bloody diarrhoea.

ate_soft_egg =
    .verdict =
        Only if fever, vomiting, diarrhoea or belly pain comes within three days does it need a doctor: most who ate a runny
        egg stay well.
    .instead = From now on cook white and yolk until both are set; give plenty to drink if the stomach is upset.
    .why = Few eggs carry salmonella, but it makes small, old and pregnant people far sicker, and I cannot tell which egg.
    .ask =
        A doctor at once for blood in the stool, no drinking, a limp or drowsy child, a fever under three months of age, or
        signs that last.

frail_egg =
    .verdict =
        Only if white and yolk are firm right through, or the egg was pasteurised in its shell: for somebody old, ill or
        pregnant a runny egg is a risk.
    .caution =
        For somebody old, ill or pregnant: never a runny or soft yolk, but firm right through, or eggs pasteurised in the
        shell. Give it the whole time, and count from when the water boils again.
    .instead = Give the egg its whole time, until the yolk is firm to the middle.
    .why = Salmonella in a runny egg makes somebody with weak defences far sicker than others.

toddler_egg =
    .verdict =
        Only if the white and the yolk are set, or the egg was pasteurised in its shell: under five a runny egg is a
        risk.
    .caution =
        For a child under five the yolk is set too, unless the eggs are pasteurised in the shell or from flocks that are
        vaccinated against salmonella.
    .instead = Give the egg another minute or two, until the yolk no longer runs.
    .why = Salmonella in a runny egg makes a small child far sicker than an adult.

honey_toddler =
    .verdict = Only if the first birthday is past, as it is here: then yes, honey is allowed, at any elevation.
    .instead =
        A little of it, stirred in or spread thin. Under twelve months not a lick, and not cooked or baked in: neither an
        oven nor boiling kills its spores.
    .why = From about twelve months on the gut holds down the spores of botulism that honey can carry.

at_risk_named =
    .verdict = Only if it is fresh, cooked right through and allowed in their diet.
    .caution =
        For somebody small, old, pregnant or ill: fresh, cooked right through, and what their diet allows.
    .instead = Their doctor, midwife or dietitian decides what they may have.
    .why = For somebody ill, old, pregnant or small the usual margins are not enough.

allergy =
    .verdict =
        No. Heat does not destroy an allergen, and neither does picking it out, wiping or fresh use of the same oil.
    .instead =
        Cook it apart: clean pan, clean tools, fresh oil, other ingredients, labels read. If that cannot be done, say so
        and do not serve it.
    .why = A trace is enough for a reaction, and proteins live through any frying or baking, at any elevation.
    .ask = The guest and their doctor; emergency services and their adrenaline pen for swelling, wheezing or faintness.

allergy_cross =
    .verdict = No. That is the same allergen by another name, or its near kin.
    .instead =
        For coeliacs only food marked gluten free: spelt, rye, barley and a long ferment are not. Ghee and goat milk are
        milk, cashew goes with pistachio and walnut with pecan, lupin with peanut, duck egg with hen's. Take something
        from another family and a label that says free of it.
    .why = The body takes the relative for the allergen, and neither heat, clarifying nor fermenting removes it.
    .ask =
        The guest and their allergist; emergency services and their adrenaline pen for swelling, wheezing or faintness.

allergy_trial =
    .verdict = No. Do not try an allergen at home after a reaction, baked, boiled or in a crumb.
    .instead =
        Leave it out altogether until an allergist has set the place, dose and form; a first peanut for a child with
        eczema or egg allergy waits for them too.
    .why = Baking changes an allergen for some and not for others, and the next reaction can be the worst.
    .ask = Their allergist; emergency services and the adrenaline pen for swelling, wheezing or faintness.

allergy_named =
    .verdict = Only if every ingredient, pan, oil and tool is free of it; read each label.
    .caution = For an allergy: every ingredient, pan, oil and tool free of it, each label read.
    .instead = If you cannot be sure, tell the guest before you serve.
    .why = A trace is enough, and heat does not destroy it.

mountain_mild =
    .verdict =
        Nobody goes higher with a headache, vomiting or no appetite at height: it counts as altitude sickness until it has gone.
    .instead = Rest, warm drinks, and what goes down: broth, plain rice or noodles, sweet tea, a little and often; no alcohol.
    .instead-2 = Not better by the next day, or worse, confused, stumbling or breathless at rest: go down at once, with company.
    .why = Food does not cure it; it passes by waiting at the same height, or by going down.
    .ask = A doctor or the mountain rescue, where you are not sure.

mountain_sick =
    .verdict =
        No. This is no case for tea, soup or sleep: blue lips, a rattling chest, stumbling or confused talk at height is
        an emergency.
    .instead = Take the person down at once, by night too, as far as they last felt well and further, never alone.
    .instead-2 = Give oxygen if there is any, keep them warm and sitting up, and let them walk as little as can be.
    .why = Fluid in the lungs or brain from elevation kills within hours; only going down mends it.
    .ask = Emergency services or mountain rescue, now.

ill_cook =
    .verdict =
        No. Who vomits, has the runs or has yellow eyes cooks for nobody, gloves or no gloves, and no cooking time makes
        up for it.
    .instead =
        Go home, tell the kitchen, and stay away until 48 h after the last sign; with yellow eyes until a doctor clears
        you. Throw away ready-to-eat food you handled.
    .why =
        A few germs from hands are enough for a whole dining room, and gloves, sanitizer and cold dishes do not stop
        norovirus or hepatitis A.
    .ask = A doctor, and the health office before you go back with jaundice.

refeeding =
    .verdict = No. Someone starved gets no big or rich meal: the first food belongs in medical hands.
    .instead =
        Keep them warm, give small sips and very small amounts often on the way to help; in a camp or clinic the
        therapeutic milk or paste by its chart.
    .why = Much food at once shifts the salts of the blood and can stop the heart within days.
    .ask = A doctor, a feeding programme or emergency services, today.

crushed_pill =
    .verdict =
        No. Do not crush, open or hide a medicine in food until a pharmacist says that this one may be, and never a
        slow-release one.
    .instead = Ask for a liquid or another form; give the dish without it.
    .why = Crushed, a slow-release dose comes all at once, and hot or milky food may spoil others.
    .ask = The pharmacist or doctor before the next dose.

ors_salt =
    .verdict = No. Never mix rehydration drink by handfuls or by eye: too much salt can kill a child.
    .instead =
        Use a sachet in exactly the water it names. Without one: 6 level teaspoons of sugar and half a level teaspoon of
        salt in 1 L of clean water, no saltier than tears, in small sips.
    .why = Salty drink draws water out of a body that lacks it and brings fits.
    .ask = A clinic or emergency services, now, for a child who is limp, has sunken eyes or passes no water.

fructose =
    .verdict =
        No. With fructose intolerance from birth there is no sugar, honey, fruit, sorbitol or invert syrup, in any
        amount or at any heat.
    .instead = Use glucose (dextrose) alone where the guest's plan allows it, and read labels for sorbitol and sucrose.
    .why =
        Sorbitol and table sugar become fructose in the body, which harms liver and kidneys and drops the blood sugar.
    .ask = The guest's dietitian or doctor; emergency services for drowsiness or vomiting after sweets.
