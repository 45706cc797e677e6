bring-to-the-boil =
    { $of ->
        [own] Bring it to a full boil, { $boil }, and stir so that it does not catch.
       *[water] Bring plenty of water to a full boil, { $boil }: more flame makes more bubbles, not more heat.
    }

roots-label = Of that, until the centre of a whole one, 6 cm (2½ in) thick, is at { $target }
roots =
    Two things take time. Heat reaches the centre of a whole potato 6 cm (2½ in) thick in { $here }, against { $sea } at
    sea level; then the flesh softens, slower in cooler water. Cut it small and only the softening is left.
roots-maths =
    t = (r²/(π²·α))·ln(2·({ $boil } − 15)/({ $boil } − 80)) with r = 30 mm, α = 1.7·10⁻⁷ m²/s: { $here } min.

salt =
    Salt the water for taste only: 10 g in a litre (2 tsp in a quart) raises the boil by { $rise_c } °C ({ $rise_f }
    °F), which no clock shows.
salt-maths = ΔT = 2·0.512·10/58.44 = { $rise } K.
