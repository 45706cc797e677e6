gauge-label =
    { $gauge ->
        [dial] Dial gauge
       *[weighted] Weighted gauge
    }
process-label = Process time, unchanged
on-gauge =
    { $gauge ->
        [dial] { $pressure } on a dial gauge
       *[weighted] the { $pressure } weight on a weighted gauge
    }

no-table =
    No table gives a { $gauge ->
        [dial] dial
       *[weighted] weighted
    } gauge pressure here.
unnamed =
    Only if you have a tested recipe for a pressure canner: at { $place } low-acid food takes { $wanted }.
headline =
    { $way ->
        [never_boiled] Never in boiling water, only under pressure: at
       *[here] At
    } { $place } pressure-can { $food } at { $wanted }; { $time ->
        [left_out] take the time from a tested recipe for a pressure canner.
       *[unchanged] the process time does not change.
    }
process-one =
    Process { $named ->
        [yes] { $jars } of { $food }
       *[no] { $food }
    } for { $time } min{ $way ->
        [never_boiled] { " " }in a pressure canner, never in boiling water,
       *[here] { "" }
    } at { $wanted } at { $place }{ $named ->
        [yes] .
       *[no] , { $jars }.
    }
process-each =
    Process { $food }{ $way ->
        [never_boiled] { " " }in a pressure canner, never in boiling water,
       *[here] { "" }
    } at { $wanted } at { $place }: { $each }.
takes = By the printed table: { $each }.
judged =
    { $pressure } { $verdict ->
        [too_low] is too low
        [enough] is enough
        [more] is safe and more than enough, only the food comes out softer
       *[dial_only] is enough on a dial gauge only
    } at { $place }: { $named ->
        [yes] it takes
       *[no] by a tested recipe low-acid food takes
    } { $wanted }.

same-time =
    Process for the time in the tested recipe: it is the same at every elevation. Only the pressure changes.
vent =
    Lock the lid on and let steam pour out of the open vent for 10 min; then put the weight on or close the petcock.
    Start the clock when the pressure is reached, not before.
pressure-falls = If the pressure falls under the mark, bring it back and start the time again from nothing.
pairs =
    The tables print pairs of time and pressure; take one pair whole. The pressure above is right for every pair. Only a
    time printed beside 6 psi (dial) or 5 psi (weight) may go at { $here }.

# why: the cook's time was read for another canner, is printed for none of this food, or the food was not named
left-out =
    The time you gave is left out: { $why ->
        [unnamed] name the food, since each has its own.
        [not_printed] it is none that is printed for { $food } in a pressure canner.
       *[other_canner] nothing says that it was read for a pressure canner.
    } A time for boiling water is never carried into a pressure canner.
beyond-usda =
    The USDA dial-gauge table ends at 8,000 ft; { $dial ->
        [printed]
            extension texts go on to 10,000 ft with 15 psi, which is given here. Confirm it with your extension office.
       *[none]
            there is no tested dial pressure for this food here. Use a weighted gauge or boiling water, by a tested
            recipe.
    }
dial-check = Have a dial gauge checked every year; extension offices do it. Follow the canner's own instructions.
never-boiled =
    Never can { $food } in boiling water or open steam, at any elevation and for any length of time: it is low in acid,
    and botulism spores live through the boil.

other-canner =
    Vegetables, meat, fish, beans, soup and stock: in a pressure canner, for the minutes of the tested recipe, at
    { $wanted }.
as-printed = The minutes are the same at every elevation; only the pressure goes up. As printed: { $each }.
printed =
    { $gauge ->
        [dial] dial
       *[weighted] weighted
    } gauge { $psi } psi for { $band }
acid-food = Acid food in a pressure canner needs less pressure than vegetables and meat.
botulism =
    Botulism spores in low-acid food die at { $dies }, which takes pressure: a gauge reads what is added to the thinner
    air outside, and { $pressure } gives { $inside } here.
