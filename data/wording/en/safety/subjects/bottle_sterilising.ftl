headline =
    Boil clean bottles and teats for { $span }, as agencies ask; at { $place } take the longer time, and ask your doctor
    or clinic.
label = Boil bottles for
wash = Wash and rinse first, take them apart, sink every part with no air inside, and count from the full boil.
dry = Lift them out with clean tongs and let them dry on a clean rack.
because =
    U.S. advice is 5 min and British advice 10. Neither that I know of prints a change for elevation; water boils at
    { $boil } here, so the longer one is the careful choice. A steam steriliser also stops at the boil here.
ask-first =
    This is for your doctor, clinic or public-health office to decide, above all for a baby under two months, born early,
    or ill. Follow the makers of bottle and steriliser.
