# $later: a list of the messages below
first = First at { $place }: { $first }, about { $time }. Then { $later }.
later = { $doing }, { $time }, about { $gap } after it
# $each: what takes as long
together = Either one, or both at once: { $each } take about as long at { $place }, { $time }.
