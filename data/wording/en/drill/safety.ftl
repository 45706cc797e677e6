# Questions about safety. $place says "at 7,000 ft (2,130 m)" or names a kitchen with it.

# $rests is yes where the food has to rest too
centre = To what temperature must the centre of { $food } come { $place } to be safe?
centre-why =
    { $safe } in the centre{ $rests ->
        [yes] , then { $rest } of rest
       *[no] { "" }
    }, { $place } as anywhere: germs die by the heat of the food, not by the weight of the air. Water boils at { $boil } there,
    still far over it.

moves = Water boils cooler { $place }. Is { $food } safe at a lower temperature there, too?
moves-why =
    No. It is { $safe } { $place } too. The boil falls to { $boil }, so food gets there more slowly in a pot, but no earlier is
    it safe.

agency-time = { $agency } { $time }
boil-water = How many minutes at a rolling boil does { $agency } ask for { $place }, to make water safe to drink?
boil-water-why =
    { $agency } asks for { $time } { $place }. The agencies differ: { $agencies }; WHO only for a rolling boil. Where they
    differ keep to the longest.
which-agency = Which agency asks for { $time } of boiling { $place }, to make water safe to drink?
which-agency-why = For { $elevation } they ask for: { $agencies }. Keep to the longest.

cool-first = Within how long must cooked { $food } cool from { $hot } to { $warm }? Answer in hours.
cool-first-why =
    { $time }: that is the stretch in which germs grow fastest. Then it has until { $in_all } in all to come to { $cold }. At
    every elevation.
cool-in-all = Within how long in all must cooked { $food } come from { $hot } to { $cold }? Answer in hours.
cool-in-all-why =
    { $time } in all, of which no more than { $first } down to { $warm }. Thin air cools a pan a little more slowly, so use
    ice, which melts at { $ice } everywhere.
on-course =
    { $lodge }: { $first } after it stood at { $hot } the { $food } reads { $reading }. May it go on cooling?
on-course-why =
    Yes. It had to be at { $limit } or under within { $first }, and it is. Go on, to { $cold } within { $in_all } in all.
late-why =
    No. It had to be at { $limit } within { $first }. Reheat it to { $hot } at once and start again in ice, or throw it away.

hold-hot = No lower than which temperature is hot food held for service { $place }?
hold-hot-why =
    At or over { $limit }, { $place } as anywhere. Water boils at { $boil } there, so a steam table still reaches it with ease.
hold-cold = No warmer than which temperature is cold food held for service { $place }?
under-only = no higher, and at most { $room } lower
hold-cold-why = At or under { $limit }, { $place } as anywhere: germs go by the heat of the food alone.
reheat = To what temperature is yesterday's { $food } reheated for hot holding { $place }?
reheat-why = { $limit } within { $time }, { $place } as anywhere. A full boil, { $boil } there, is well over it.

canner =
    You pressure-can { $food } by a tested recipe { $place }. What pressure { $gauge ->
        [dial] on a dial gauge
       *[weighted] with a weighted gauge
    }? Answer in psi.
as-printed = the printed figure
canner-why =
    { $pressure } { $gauge ->
        [dial] on a dial gauge
       *[weighted] with a weighted gauge
    }: the printed band is { $band }, and { $place } a kitchen stands in it. The time stays as the tested recipe prints it.
    Bands are read as printed, never in between.

minutes = { $minutes } min
boiling-water-time =
    The tested recipe for { $food } prints { $minutes } min in boiling water for 0 to 1,000 ft. How long by the USDA guide
    { $place }? Answer in minutes.
boiling-water-time-why =
    { $time }. The band { $band } adds { $more } min to a process of 20 min or more, because the water around the jars boils at
    { $boil } { $place }. Never shorten it, and can only by a tested recipe.

between-bands =
    A recipe prints { $low } min for 3,001 to 6,000 ft and { $high } min above. A kitchen stands { $elevation } high, only just
    over. May it process for { $between } min?
between-bands-why =
    No. { $feet } ft is in the band { $band }, so it is { $minutes } min. The printed times were tested band by band; a time in
    between was not. If in doubt take the higher band.

low-acid = How do you put up jars of { $food } { $place }, to keep on the shelf?
under-pressure = in a pressure canner, by a tested recipe
boiled-twice = in boiling water, for twice the time
upside-down = hot into hot jars, turned upside down
in-the-oven = in the oven at { $setting }
low-acid-why =
    The spores of botulism live through any boil, and the boil { $place } is only { $boil }. Low-acid food goes into a pressure
    canner, { $pressure } with a weighted gauge there, for the time of a tested recipe.

empty-jars =
    The guide sterilises empty jars in boiling water for 10 min at sea level. How long at { $elevation }? Answer in minutes.
empty-jars-why =
    { $time }: 10 min, and one more for each 1,000 ft (305 m), at { $elevation } as in the guide's own words.

kidney-beans = May soaked raw red kidney beans go straight into a slow cooker { $place }?
kidney-beans-why =
    No. Raw kidney beans hold a poison that only a hard boil destroys, and a slow cooker never gets there; even a full boil
    { $place } is only { $boil }. Soak them, pour the water away, boil them hard for 30 min in fresh water, then cook on.
