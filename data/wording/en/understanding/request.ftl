# the explanations that may be meant, by their titles
one-reason = Do you mean { SMALL($title) }?
either-reason = Do you mean { SMALL($title) }, or { SMALL($other) }?
# $eaters: who eat, $meals: how many times, $all: portions in all
meals = Counted for { $eaters } at { $meals } meals, { $all } portions in all.
