# The sentences that tell a cook to make a change. They open a sentence, and can go on after a colon.

# what is cooked in water: $told is yes where the cook said how long it was given
boil-times = Give it about { $times } times as long as at sea level, and go by tenderness.
boil =
    { $told ->
        [more] Go on for { $more } more after your { $given }: { $here } in all, against { $sea } at sea level.
        [yes] Allow { $here }, against { $sea } at sea level, and go by how it feels. You gave it { $given }.
       *[no] Allow { $here }, against { $sea } at sea level, and go by how it feels.
    }
cooker-by-its-book = Cook it under pressure, at { $pressure }, by the time in the cooker's own book.
cooker = Cook it under pressure for { $time } at { $pressure }, from when it is up to pressure.

# boiled sugar and jam
stage =
    { $way ->
        [printed] Take it off the heat { $by } under the reading printed for sea level.
        [sooner] Stop { $by } sooner than you did.
       *[further] Cook it { $by } further than you did.
    }
stage-to = Take it off at { $to }, { $by } under the { $said } of sea level.
stage-anywhere =
    Take it off 2 °F (1 °C) sooner for every 1,000 ft (305 m) of elevation: boil plain water, and take off what it falls short
    of 212 °F (100 °C).
gel-anywhere =
    { $way ->
        [hotter] Cook it to
       *[cooler] Take it off at
    } 8 °F (4.5 °C) over what plain water boils at where you are, and test a cold drop.
gel =
    { $way ->
        [hotter] Cook it to
       *[cooler] Take it off at
    } { $point }, 8 °F (4.5 °C) over the boil of water here, and test a cold drop.

fat-printed = Fry at { $here } where a sea-level recipe says { $sea }, and a little longer.
fat =
    { $way ->
        [hotter] Fry { $by } hotter than you did, but never above { $hottest }.
       *[cooler] Fry { $by } cooler than you did.
    }
fat-anywhere = Fry about 3 °F (1.7 °C) cooler for every 1,000 ft (305 m) of elevation, and a little longer.
brew-anywhere = Brew with water straight off the boil, in a warmed pot.
brew = Brew with water at { $water }, straight off the boil, in a warmed pot.
