# What is said where a hazard of data/lexicon/danger/water.toml was heard, by its id: the verdict, what to
# do instead, why, and whom to ask. The verdict is the first sentence, and it holds no figure of what is refused.

polluted_water =
    .verdict =
        No. Boiling does not make that water safe: it kills germs, but fuel, metals, salt, algae poisons and chemicals
        stay and grow stronger.
    .instead = Use bottled water or another source, also for cooking, ice and formula.
    .why = They do not boil off with the water, at any elevation.
    .ask = The local health office or water utility; the poison line if somebody has drunk it.

untreated_water =
    .verdict =
        No. Clear, cold, high or fast water is not clean water: treat it before anybody drinks it, freezes it or eats
        what was rinsed in it.
    .instead =
        Bring it to a rolling boil for 1 minute, for 3 minutes above 6,500 ft (2,000 m), and let it cool; that holds for
        snow and ice too.
    .instead-2 =
        Without fuel: a filter rated for parasites and bacteria, then chlorine dioxide by the pack. For drinks, ice and
        salad use only that water, or bottled.
    .why =
        Animals above you are enough for Giardia, Cryptosporidium and worse; cold, acid, alcohol and freezing do not
        kill them.
    .ask = A doctor for diarrhoea, above all of a child, an old or a weak person.

underheated_water =
    .verdict =
        No. Warm, steaming or first bubbles is not enough for raw water: bring it to a full rolling boil, then let it
        cool to what you want.
    .instead = 1 minute of rolling boil, 3 minutes above 6,500 ft (2,000 m). A lid saves more fuel than stopping early.
    .why =
        Without a thermometer the boil is the only sign that all of it was hot enough; it boils cooler up here, so the
        minutes matter more.

short_of_boil =
    .verdict =
        Only if it comes to a full rolling boil, whatever a thermometer reads up there: then 1 minute, or 3 minutes above
        6,500 ft (2,000 m). What stops short of a boil is not relied on.
    .instead =
        Without a boil drink bottled water, or treat clear water with a filter and chlorine dioxide by the pack, and boil as
        soon as there is a stove.
    .instead-2 =
        As a stopgap, clear water of which all was held at { TEMP(158) } or hotter for 10 minutes, by a thermometer, has lost
        its usual germs; not for a baby, and not for the sick while there is anything better.
    .why =
        Germs die well below a boil, but only where all of the water is that hot for long enough; a boil shows it, a warm
        kettle does not. A pot that boils cooler up here still boils.
    .ask = A doctor for diarrhoea or vomiting, soon for a child, an old or a weak person; keep them drinking.

short_boil =
    .verdict =
        Only if you stand below 6,500 ft (2,000 m) does one minute of rolling boil do; above it is 3 minutes, and
        seconds never.
    .instead = Count from the rolling boil, lid on to save fuel, and let it cool by itself.
    .why = The boil is cooler up here, so the water is given longer.

weak_filter =
    .verdict = No. A cloth, a jug or refrigerator filter, lemon, vinegar, settling or freezing does not make water safe.
    .instead =
        Strain it through the cloth first if it is cloudy, then bring it to a rolling boil: 1 minute, 3 minutes above
        6,500 ft (2,000 m).
    .why = Those take out grit, taste and smell; germs are far smaller or live on.

boil_notice =
    .verdict =
        No. Under a notice nothing goes into a mouth that is not boiled or bottled: no tap, ice, rinsing, machine coffee
        or filter jug.
    .instead =
        Rolling boil for 1 minute, 3 minutes above 6,500 ft (2,000 m), for drinks, ice, salad, teeth and small children.
        Discard ice and drinks made since the trouble began, the ice in the bin too.
    .instead-2 =
        Espresso machines, brewers, dispensers and ice machines stay off unless fed with boiled water, and are flushed
        and cleaned after the notice ends.
    .why = Filters for taste, hot taps, coffee machines and freezing do not kill what the notice is about.
    .ask = The water utility or health office, above all before a kitchen opens.

algae_water =
    .verdict =
        No. Keep away from water with scum or a bloom on it: boiling does not take out the poison and can set more of it
        free.
    .instead = Use another source or bottled water, for cooking, washing and animals too.
    .why = The poison of blue-green algae stands heat; it harms liver and nerves.
    .ask = The local health office; the poison line if somebody has drunk it.

nitrate_water =
    .verdict =
        No. Boiling makes nitrate stronger, not weaker: none of that water for a baby's bottle or food, nor for a
        pregnant woman.
    .instead = Use bottled water low in nitrate, or another supply; have the well looked at.
    .why = The water boils off and the nitrate stays. In a baby it stops the blood from carrying oxygen.
    .ask = Your doctor and the health office; emergency services for a baby that looks blue or grey.

lead_water =
    .verdict = No. Never cook or drink from the hot tap of old or lead pipes, and boiling does not help.
    .instead =
        Use cold water that has run until it is as cold as it gets, through a filter rated for lead, or bottled water;
        for children and pregnant women bottled only, until it is tested.
    .why = Hot water takes more lead out of pipe and tank, and boiling makes it stronger.
    .ask = The water utility or health office, for a test.

sea_water =
    .verdict = No. Boiling salt water down makes it saltier: the salt stays in the pot.
    .instead =
        Use fresh water, ask a neighbour, a tap of the town or the hostel; a splash of clean sea water only in place of
        salt, in plenty of fresh.
    .why = Salt does not leave with the steam; drinking or eating it dries you out.
    .ask = The town or health office, where free drinking water is to be had.

technical_water =
    .verdict =
        No. Water from heating, radiators, cars, toilet tanks, pools or machines is not for eating or drinking, boiled
        or not.
    .instead =
        Use bottled water, or ask the utility or a neighbour; melted clean snow or stream water is better once it is
        boiled.
    .why = It holds antifreeze, inhibitors, dyes, metals or pool chemicals, which boiling makes stronger.
    .ask = The poison line if somebody has had some.

hot_spring_water =
    .verdict = No. Do not drink or cook in the water of a hot spring.
    .instead =
        Cook in brought water in a closed pot that stands in the spring, if it is allowed there; drink treated water
        from elsewhere.
    .why =
        It often carries arsenic, fluoride and metals that heat leaves in, and it is not hot enough everywhere to kill
        germs.
    .ask = The local health office.

flood_water =
    .verdict = No. Water, a well or food that a flood has reached is not used until it was disinfected and tested.
    .instead =
        Drink, cook and wash food with bottled water. Discard food in jars, paper, plastic or with screw lids that stood
        in it; undamaged commercial cans can be cleaned and disinfected.
    .why = Flood water carries sewage, fuel and chemicals; boiling takes only the germs, and lemon or vinegar nothing.
    .ask = The health office, for disinfecting and testing the well.

fouled_water =
    .verdict = No. Take another source: not below a sewer, a latrine, a carcass or a dung heap, boiled or not.
    .instead =
        Bottled water, or a source well above it, brought to a rolling boil for 1 minute, 3 minutes above 6,500 ft
        (2,000 m). Empty and clean the jugs that held it.
    .why =
        Boiling kills germs, but not all that rots or drains into it, and the load of germs is so high that every slip
        counts.
    .ask = The local health office; a doctor for fever or diarrhoea.

coloured_snow =
    .verdict = No. Coloured, dirty or roadside snow is not for melting, drinking or eating.
    .instead =
        Take fresh white snow from well away from roads, pistes, huts and animals, melt it, and bring it to a rolling
        boil: 1 minute, 3 minutes above 6,500 ft (2,000 m).
    .why = Pink snow is algae, and the rest holds salt, fuel, dust or dung; boiling leaves all but the germs in it.

tainted_container =
    .verdict =
        No. A can or drum that has held fuel, weedkiller or any chemical never holds water or food, however often it was
        rinsed.
    .instead = Discard that water and use containers made for food or drinking water.
    .why = Plastic soaks it up and gives it back for months, and boiling the water does not take it out.
    .ask = The poison line if somebody has drunk of it.

wrong_bleach =
    .verdict =
        No. Scented, thick or splashless bleach and pool chemicals are not for drinking water, and never by the cup.
    .instead =
        Boil it instead: rolling, 1 minute, 3 minutes above 6,500 ft (2,000 m). Without fire use only plain, unscented
        household bleach in drops, as its label or the health office says, or tablets made for drinking water.
    .why = They hold perfume, thickener or stabiliser, or are so strong that they burn the throat.
    .ask = The poison line if somebody has drunk it.

iodine_long =
    .verdict = No. Iodine is for some weeks at most, and not for pregnancy, a baby or a thyroid that is ill.
    .instead = Boil the water, or filter it and use chlorine dioxide, for a long stay.
    .why =
        The thyroid takes up far more iodine than it can deal with, the unborn child's too; it also does not kill
        Cryptosporidium.
    .ask = Your doctor or midwife.

tablet_cut =
    .verdict = No. Cold or cloudy water needs longer with tablets, never less.
    .instead =
        Let it settle and strain it, warm it or take the longest time on the pack (for chlorine dioxide four hours), or
        bring it to a rolling boil: 1 minute, 3 minutes above 6,500 ft (2,000 m).
    .why = Cold slows the chemical down, and silt uses it up.

frozen_filter =
    .verdict =
        No. Discard that cartridge: a hollow-fibre or ceramic filter that was wet and froze, or cracked, is not to be
        trusted.
    .instead =
        Boil until you have a new one: rolling, 1 minute, 3 minutes above 6,500 ft (2,000 m). On cold nights take the
        filter into the sleeping bag.
    .why = Ice splits the fibres where nobody can see it, and germs go straight through.

uv_turbid =
    .verdict = No. UV works only in clear water.
    .instead =
        Settle and filter it until it is clear, then use the lamp for its full time; or bring it to a rolling boil: 1
        minute, 3 minutes above 6,500 ft (2,000 m).
    .why = Germs hide in the shade of every grain of silt.

sodis_weak =
    .verdict = No. Sun treatment fails under cloud, in cloudy water and in tinted or large bottles.
    .instead =
        Boil it: rolling, 1 minute, 3 minutes above 6,500 ft (2,000 m). Otherwise clear water in clear small bottles,
        six hours of full sun or two whole days under cloud; not in rain or snow.
    .why = It is the ultraviolet light that kills, and cloud takes most of it.

plastic_over_fire =
    .verdict = No. Do not boil water in a plastic bottle or bag.
    .instead = Use a metal cup, pot or open can; without one, use tablets or a filter.
    .why = Above the water line it melts into the fire, spills scalding water, and gives off plastic into what is left.

sinus_rinse =
    .verdict = No. Never rinse a nose with plain tap or raw water, however warm.
    .instead =
        Use distilled or sterile water, or water boiled for 1 minute, 3 minutes above 6,500 ft (2,000 m), cooled in a
        clean covered pot, with a measured saline packet.
    .why = Rarely tap water holds an amoeba that is harmless to drink and deadly in the nose.
    .ask = A doctor for a headache, fever or stiff neck after a rinse.

water_overload =
    .verdict = No. Nobody should drink water by the litre against the clock or to flush the body.
    .instead = Drink to thirst, a few glasses over the day and more with work at elevation, and eat salted food with it.
    .why = Too much water thins the salt in the blood, and the brain swells; salt added at home does not mend that.
    .ask = Emergency services, at once, for headache, confusion, vomiting or a fit after much water.
