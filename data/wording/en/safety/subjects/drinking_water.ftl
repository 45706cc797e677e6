label = { $agency } asks for
asks = { $agency } { $time }
headline = { $asked ->
        [whether] Yes, once it has been kept at a full rolling boil for { $time }: that makes water safe to drink at { $place }.
       *[how-long] To make water safe to drink at { $place }, keep it at a full rolling boil for { $time }.
    }
count = Start the clock once it boils hard, and count { $time }. Cloudy water: let it settle and filter it first.
cool = Let it cool by itself, covered, in the clean vessel you will keep it in.
because =
    The agencies differ: { $each }; WHO asks only for a rolling boil. Where they differ the longest is given, since a boil
    at { $boil } is cooler.
only-germs =
    Boiling kills germs at any elevation: even { $boil } is far more than they live through. It does not take out fuel, metals or salts; follow the local notice.
