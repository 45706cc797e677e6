bath-label = Bath
ceiling-label = Hottest bath worth setting here
bath-headline = Set the bath for { $food } to { $bath } at { $place }, as at any elevation.
too-hot-headline = No bath gets to { $asked } at { $place }: set it to { $ceiling } at most, just under the boil, or cook it under pressure.
ceiling-headline = A bath at { $place } goes no higher than { $ceiling }: set it there.
bath-step = Set the bath to { $bath } and check it with a second thermometer.
under-the-boil =
    A bath under the boil is as hot as it is set, and the boil is { $boil } here. So times and temperatures stay as
    tested, pasteurisation too: germs die by temperature and time, not by air pressure.
over-the-boil =
    You want { $wanted }, but the boil, { $boil } here, stands in the way: the bath would boil, rattle and boil dry.
    Stay under it and give it longer, or steam it under pressure.
cooler-bath = The bath cannot be as hot as at the baseline, so the time grows as in any cooler pot.

# The piece that a printed time is read for.
thickness =
    { $piece ->
        [thick] 70 mm (2¾ in) thick
        [egg] in the shell
       *[thin] 25 mm (1 in) thick
    }
pasteurised-label = Pasteurised, { $piece }, in a bath at { $bath }
pasteurised =
    Published tables pasteurise { $kind } { $piece } in { $time } at { $bath }, counted from the refrigerator. That
    holds at every elevation; a thicker piece takes longer.

cover-the-bath = Cover the bath with a lid, foil or floating balls, and top it up with hot water.
weigh-down = Press the air out of the bags and weigh them down: what gas is left swells and floats them.
water =
    An open bath loses water about { $more } % faster in air this thin, and gas left in a bag takes about { $more } %
    more room.

held-long-enough =
    Under the usual safe temperature the food has to be held long enough to be pasteurised: follow a tested table for
    its thickness, and serve nothing less to the old, the very young, the pregnant or the ill. A restaurant needs the
    health department's approval.
served-raw =
    Under { $safe } fish and seafood are not pasteurised, however long they stay: then they are served as raw, frozen
    first against worms, at once, and to guests who are told.
four-hours = Never hold food under { $danger } for more than 4 h in all.
hot-bath =
    { CAPITAL($doing) } wants a hot bath, and here it stands only { $room } under the boil: cover it well, or it loses
    water fast.

instead-label = Bath instead, at the least
never =
    No. { CAPITAL($food) } at { $asked } { COUNT($food) ->
        [many] are
       *[one] is
    } not safe after { $stated ->
        [yes] { $time }, nor after any other time
       *[no] any time
    }: what is printed for { $kind } starts at { $least }.
too-short =
    No. { $time } at { $asked } is too short for { $food } { $piece }: { COUNT($food) ->
        [many] they take
       *[one] it takes
    } { $needs }.
instead-held =
    Set the bath to { $bath } and leave it there { $needs }, { $thickness } and counted from the refrigerator{ $piece ->
        [egg] { "" }
       *[thin] ; a thicker piece takes longer
    }.
instead-centre = Set the bath to { $bath } or hotter and take the centre to it, by thermometer.
printed-times =
    Germs die by temperature and time, not by air pressure, so the printed times hold at every elevation. Nothing is
    read between their rows.
stop-too-short = Too short at { $asked }: germs can be left alive. Do not serve it.
stop-never =
    { $asked } is under every printed row for { $kind }: no time makes it safe.{ $worms ->
        [outlive-freezing] { " " }Freezing does not make it safe.
       *[none] { "" }
    }
safe =
    Yes. { $time } at { $asked } makes { $food } { $piece } safe, at { $place } as anywhere; the tables ask for
    { $needs }.

lectin-headline =
    No. Never cook dry { $beans } in a bath: it does not boil, and only a hard boil destroys their poison.
cook-on = Then cook them on in the pot or the pressure cooker until they crush.
lectin =
    A bath stays under the boil, and beans that are warmed without boiling can poison worse than raw ones.
lectin-caution = A few beans of this kind that have not boiled hard make people ill.
sear = Pat it dry and sear it 1 to 2 min a side in a very hot pan just before it is served: that is for the crust, the bath has done the cooking.
