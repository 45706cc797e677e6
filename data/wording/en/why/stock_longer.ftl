line =
    { $side ->
        [above] Stock takes { $pace_of_stock } { $at } because it simmers at only { $simmer }, and gelatin comes out
            more slowly.
        [level] Stock keeps its usual time { $at }; higher up it simmers cooler and gelatin comes out more slowly.
       *[below] Stock takes { $pace_of_stock } { $at } because it simmers a little hotter.
    }
paragraph =
    The body of a stock is gelatin, and hot water draws it from skin and joints by temperature and time. { $boils }
    A bare simmer is a few degrees under that, { $simmer }. { $side ->
        [above] So give it more time: { $pace_of_stock }, with the vegetables in for the last hour as ever.
        [level] So the usual time holds.
       *[below] So the usual time holds, or a little less.
    } Do not make it up with a harder boil, which only beats fat into the stock and clouds it. A pressure cooker
    gives as much body in a fraction of the time, and stays clear because nothing moves inside.
equations = { $boiling_equation } { $rate_of_stock }
time-factor-of-stock-label = Time against sea level, stock
belief-longer-is-better =
    { $side ->
        [above] { CAPITAL($at) } it simmers at only { $simmer } and takes { $pace_of_stock }, but once the bones fall apart
            it gains no more body and turns dull and bitter.
       *[other] More hours draw more gelatin until the bones fall apart; after that a stock only turns dull and bitter.
    }
