# What several explanations say. Every file of this folder may name these messages, and has the labels below.

# $sea: whether the kitchen is at the sea itself
at = { $sea ->
    [yes] here at sea level
   *[no] at { $place }
}
# $side, here and in every explanation: where the kitchen lies to the sea, `above`, `level` or `below`
boils =
    { CAPITAL($at) } water boils at { $boil }{ $side ->
        [above] , { $drop } under sea level.
        [level] .
       *[below] , { $drop } over sea level.
    }
boiling-equation =
    p = { $by ->
        [barometer] { $pressure } Pa, as measured
       *[elevation] 101,325·(1 − { $sign ->
                [minus] ({ $height })
               *[plus] { $height }
            }/44,331)^5.2559 = { $pressure } Pa
    }; T_sat(p) = { $boil } °C.

# what stands after "takes"
pace = { $span } { $way ->
    [times] times as long
    [less] % less time
   *[longer] % longer
}
span = { $ends ->
    [one] about { $low }
   *[two] { $low } to { $high }
}
# the softening rate of a food; $likely, $low and $high are factors on its time
rate =
    Time factor = 10^(({ $sea } − { $here })/z) with z = { $z } K ({ $z_low } to { $z_high } K): ×{ $likely }
    ({ $low } to { $high }).

gas-swells = { $side ->
    [above] { CAPITAL($at) } the air presses with { $percent } % of its sea-level push, so the same gas takes up
        { $ratio } times the room.
    [level] { CAPITAL($at) } the air presses as the recipe expects, so the gas takes up the room it should.
   *[below] { CAPITAL($at) } the air presses harder than at sea level, so the same gas takes up only { $ratio }
        times the room.
}
gas-equation = V_here/V_sea = p_sea/p_here = 101,325/{ $pressure } = { $ratio }, for dry gas at the same temperature.

drying-equation = Vapour spreads as 1/p: p_sea/p_here = 101,325/{ $pressure } = { $ratio }.
dries =
    { CAPITAL($at) } a surface dries about { $percent } % { $way ->
        [faster] faster
       *[slower] more slowly
    } than at sea level.

# how long an agency wants drinking water boiled
agency = { $name } { $time }

# labels of figures that several explanations have
boiling-point-label = Water boils at
air-pressure-label = Air pressure
gas-volume-label = Room the same gas takes up
drying-label = Drying against sea level, air equally damp
air-density-label = Air density against sea level
oven-air-density-label = Oven air, weight against sea level
liquid-temperature-label = Liquid at a bare simmer
open-loss-label = Lost in an hour, open
inside-cooker-label = Inside at { $cooker_gauge }
time-factor-of-beans-label = Time against sea level, dried beans

tested-recipes =
    Can only by a tested recipe, with the time and pressure printed for your elevation. Never work out your own:
    food that is underprocessed can carry botulism without looking or smelling spoiled.

# what a belief that was stated is, before the sentence that says why
verdict = { $verdict ->
    [yes] Yes
    [partly] Partly
   *[no] No
}.
# what is said where the contrary of a belief was stated that is not so
contrary = That is right.
# the same where it was asked who is right; $who: who holds it
verdict-on = { $verdict ->
    [yes] Yes, { claimant } is right.
    [partly] Partly: { claimant } is half right.
   *[no] No, { claimant } is mistaken there.
}
claimant = { $who ->
    [book] the book
    [internet] what you read
    [chef] your chef
    [sous_chef] your sous-chef
    [teacher] your teacher
    [trainee] your trainee
    [colleague] your colleague
    [mother] your mother
    [father] your father
    [grandmother] your grandmother
    [grandfather] your grandfather
    [aunt] your aunt
    [uncle] your uncle
    [sister] your sister
    [brother] your brother
    [husband] your husband
    [wife] your wife
    [friend] your friend
    [roommate] your roommate
    [neighbour] your neighbour
   *[supplier] your supplier
}
