line =
    { $side ->
        [above] Air { $at } is on average { $colder } colder than at sea level, and cold air carries little water.
        [level] Air { $at } carries what moisture the weather brings; higher up it is colder and carries less.
       *[below] Air { $at } is on average { $colder } warmer than at sea level; how damp it is depends on the
            country.
    }
paragraph =
    Warm air can carry a lot of water and cold air very little. Air cools as one climbs, so most of the moisture
    stays near the sea. { $side ->
        [above] In standard air it is { $colder } colder { $at } than at sea level.
        [level] In a kitchen near sea level the weather decides.
       *[below] In standard air it is { $colder } warmer { $at }, but a desert is dry at any height.
    } Bring cold air indoors and heat it, and it has hardly any more water but room for far more: it takes that from
    flour, dough, bread and your hands. Published guidance puts the change at about { $dry_air_starts }. Keep flour
    sealed and dough covered.
equations = Standard air: T = 15 − 6.5·{ $elevation_km } = { FIXED($air_temperature, 1) } °C.
air-temperature-label = Standard air temperature outdoors
belief-drier = Cold, thin air carries little water, and warmed indoors it takes more from flour, dough and you.
