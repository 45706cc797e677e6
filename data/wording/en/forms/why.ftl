# $minutes: of the recipe; $here: what they are at $place
become = Your { $minutes } become about { $here } at { $place }.
