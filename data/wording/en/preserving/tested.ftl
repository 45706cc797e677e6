# Printed times as they are told: what each jar, pack and style takes, and what they hold for.

jar = { $size ->
    [half_pint] half-pints
    [pint] pints
    [quart] quarts
   *[half_gallon] half-gallons
}
pack = { $pack ->
    [hot] hot pack
    [raw] raw pack
   *[either] hot or raw pack
}
packed = { $pack ->
    [raw] raw-pack { $food }
   *[hot] hot-pack { $food }
}
style = { $style ->
    [crushed] crushed
    [in_water] whole or halved in water
    [in_juice] whole in tomato juice
    [no_liquid] raw with no liquid added
    [boneless] boneless
    [with_bones] with bones
    [fresh] fresh
   *[dried] dried
}
styled = { $style ->
    [crushed] crushed { $food }
    [in_water] { $food } packed in water
    [in_juice] { $food } packed in tomato juice
    [no_liquid] { $food } packed with no liquid added
    [boneless] boneless { $food }
    [with_bones] { $food } with bones
    [fresh] fresh { $food }
   *[dried] dried { $food }
}
jar-of = { $jar } jars
jars-take = { $jars } { $time } min
of-way = { $way }, { $times }

# one: a single time is meant, of the jars that were named or of all that are printed
water-one =
    { $lead ->
        [yes] Yes: process
       *[no] Process
    } { $named ->
        [yes] { $jars } of { $food }
       *[no] { $food }
    } for { $time } min { $vessel ->
        [steam] in open steam
       *[boiling_water] in boiling water
    } at { $place }{ $named ->
        [yes] .
       *[no] , { $jars }.
    }
water-each =
    { $lead ->
        [yes] Yes: process
       *[no] Process
    } { $food } { $vessel ->
        [steam] in open steam
       *[boiling_water] in boiling water
    } at { $place }: { $each }.

because =
    Water boils at { $boil } here, so jars need longer to get the same kill. The minutes are those that the USDA guide
    prints for { $band }.
beyond =
    The guide's last column begins above 6,000 ft; Utah State's tables go on to { $band } with 5 min more, which are
    given here.

jar-as =
    A { $own ->
        [half_pint] half-pint
        [pint] pint
        [quart] quart
       *[other] jar of { $jar }
    } takes the time of a { $size ->
        [half_pint] half-pint
        [pint] pint
        [quart] quart
       *[half_gallon] half-gallon
    }, the next size that is printed, never less.
pack-not-printed =
    No { $pack ->
        [raw] raw-pack
       *[hot] hot-pack
    } time is printed for { $food }; this is the other pack.

headspace = { $inches } ({ $cm } cm)
holds-for =
    Holds only for the tested recipe "{ $recipe }"{ $guide ->
        [none] { "" }
       *[other] { " " }of the USDA guide, part { $guide }
    }: its food, acid and pack, this jar, { $headspace } of headspace, a lid that is new.
