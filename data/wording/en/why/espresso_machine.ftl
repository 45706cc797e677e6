line =
    The boiler is sealed but the spout is not: water set above { $boil } flashes to steam as it leaves the group
    { $at }.
paragraph =
    Inside the boiler pressure keeps water liquid far above the open boil, as in a pressure cooker, so the machine
    makes its heat and steam as anywhere. { $boils } Coffee is brewed at { $coffee }. { $coffee_boil ->
        [above] That is under the boil, so set the brew temperature as usual; only the gauge of the boiler counts from
            the outside air.
        [inside] That is right at the boil, so set the brew temperature a degree or two under it, or the shot spits
            and tastes of steam.
       *[under] That is over the boil, so the machine has to be set under it, with a finer grind and a longer shot to
            make up.
    } The pump's pressure and the crema are next to the same, though crema stands a little higher and falls sooner in
    thin air.
equations = { $boiling_equation } Middle of the band for coffee: 93.0 °C.
brew-temperature-label = Brewing water, middle of the band
