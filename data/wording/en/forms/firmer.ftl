# $way: firmer or softer; $sets: whether it sets in the heat, where others soften; $end: that end of its time; $usual: the likely time
end =
    { $sets ->
        [yes] { $way ->
            [firmer] Firmer: give { $food } the late end, about { $end } at { $place } rather than { $usual }, until only the middle still trembles.
           *[softer] Softer: take { $food } out at the early end, about { $end } at { $place } rather than { $usual }, when the edge is set and the middle trembles as one piece.
        }
       *[no] { $way ->
            [firmer] Firmer: take { $food } at the early end, about { $end } at { $place } rather than { $usual }, and try a piece each minute from then on.
           *[softer] Softer: give { $food } the late end, about { $end } at { $place } rather than { $usual }. More flame does not hurry it.
        }
    }
not-less = Not less done than this: { $food } underdone can make people ill.
