# $way: firmer or softer; $kind: what time does to it; $end: that end of its time; $usual: the likely time; $core: the safe temperature
end =
    { $kind ->
        [custard] { $way ->
            [firmer] Firmer: give { $food } the late end, about { $end } at { $place } rather than { $usual }, until only the middle still trembles.
           *[softer] Softer: take { $food } out at the early end, about { $end } at { $place } rather than { $usual }, when the edge is set and the middle trembles as one piece.
        }
        [egg] { $way ->
            [firmer] Firmer: give { $food } the late end, about { $end } at { $place } rather than { $usual }.
           *[softer] Softer: take { $food } at the early end, about { $end } at { $place } rather than { $usual }, with the white just set. A runny yolk is not for small children, the old or whoever is ill.
        }
        [meat] { $way ->
            [firmer] Less done: look at the early end, about { $end } at { $place } rather than { $usual }; it is safe from { $core } in the centre.
           *[softer] More done: give { $food } the late end, about { $end } at { $place } rather than { $usual }, and go by the centre.
        }
       *[softens] { $way ->
            [firmer] Firmer: take { $food } at the early end, about { $end } at { $place } rather than { $usual }, and try a piece each minute from then on.
           *[softer] Softer: give { $food } the late end, about { $end } at { $place } rather than { $usual }. More flame does not hurry it.
        }
    }
not-less = Not less done than this: { $food } underdone can make people ill.
