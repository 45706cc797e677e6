cooked-food = cooked food
# $where: here, where somebody has said where the kitchen is, or anywhere
headline =
    Chill { $food }{ $where ->
        [here] { " " }at { $place }
       *[anywhere] { "" }
    } from { $hot } to { $first } within { $early } and to { $cold } within { $total } in all, the same as at any
    elevation.
first = First down to
within = Within
then = Then down to
within-in-all = Within, in all
shallow = Cut it up or pour it out shallow, 5 cm (2 in) deep at most, and set it in ice and water, stirring.
refrigerate =
    Into the refrigerator uncovered until cold, then covered. Not at { $first } after { $early }: reheat to { $reheat }
    and start again, or throw it away.

keep-under = Keep at or under
cold-made = Keep { $food } at { $cold } or colder from the start, the same as at any elevation.
date-it = Keep a thermometer in the refrigerator, and date what you put in it.
raw-fish =
    Raw fish and shellfish are not made safe by salt, acid or cold: use fish sold to be eaten raw, and serve none to the
    pregnant, the very young, the old or the ill.
in-oil =
    { COUNT($food) ->
        [one]
            { CAPITAL($food) } grows botulism at room temperature without looking or smelling bad. Make it fresh,
            refrigerate it at once, use it within 4 days or freeze it, and throw out what stood warm for 2 h. Never store
            it in the cupboard.
       *[many]
            { CAPITAL($food) } grow botulism at room temperature without looking or smelling bad. Make them fresh,
            refrigerate them at once, use them within 4 days or freeze them, and throw out what stood warm for 2 h. Never
            store them in the cupboard.
    }
thin-air =
    Thin air carries off less heat: a pan in a cold room cools about { $slower } % slower at { $place }. An ice bath does
    not mind, since ice melts at 32 °F (0 °C) everywhere.
rice = Spread cooked rice thin and chill it at once: its spores outlive boiling, and reheating does not undo harm.
