# $each: a list of the message below, the most changed first
ranked = From most to least changed at { $place }: { $each }.
by-share = { $doing }, { $way ->
        [same] as at sea level
        [shorter] about { $share } % less time
       *[longer] about { $share } % longer
    }
# $foods: what has no time to be ranked by
unranked = Not ranked, because no one time tells it: { $foods }.
