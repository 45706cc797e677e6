# $name is one of the two kitchens below.
at = at { $elevation }
at-named = at { $name }, { $elevation }
lodge = Timberfold Lodge
bakery = the lodge's bakery

in-degrees = Answer in { $units ->
    [us] °F
   *[metric] °C
}.
yes-or-no = Yes or no?
yes = yes
no = no
within = within { $room }
over-only = no lower, and at most { $room } higher
option = { $letter }, { $option }
in-order = { $letters }: { $things }
