headline =
    Boil the syrup to { $syrup } at { $place }, against { $sea } at sea level. The whites are not safe by the syrup alone, here
    or at sea level: all of the meringue must reach { $safe }.
syrup-label = Syrup
whites-label = Whites safe at
read =
    Read the meringue itself, in the middle of the bowl, while the last syrup goes in. Under { $safe }: stir it over simmering
    water until it reads that, then whip it cool.
otherwise =
    Or begin with pasteurised whites; or make it the Swiss way, whites and sugar stirred over simmering water to { $safe }
    before they are whipped.
because =
    The syrup is as thick as at sea level but cooler at { $place }, since everything boils cooler there (water at { $boil }), so
    it brings the whites less heat; what kills germs in them does not move.
at-risk = For the pregnant, the ill, the very young and the old: pasteurised whites, or whites that were read at that temperature.
