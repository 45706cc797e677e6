line =
    Steam in an ordinary steamer is { $boil } { $at }, exactly as hot as the boil, so steaming is no way around the
    elevation.
paragraph =
    Steam is as hot as the water it comes from, as long as the lid lets it out. { $boils } { $side ->
        [above] So steamed vegetables are slowed as boiled ones are: tender ones take { $pace_of_tender_vegetables }.
        [level] So steaming takes about as long as boiling, as the recipe says.
       *[below] So tender vegetables take { $pace_of_tender_vegetables }.
    } Steaming has other merits: it washes out less flavour and breaks nothing. Start with more water under the
    basket, and pack loosely so the steam gets around. A steamer that is sealed and works under pressure is another
    matter, and is much hotter.
equations = { $boiling_equation } { $rate_of_tender_vegetables }
time-factor-of-tender-vegetables-label = Time against sea level, tender vegetables
belief-hotter = Steam from an open pot is { $boil } { $at }, exactly as hot as the boil.
